// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/plans.h"
#include "app/workflow/print_sibling.h"
#include "core/exchange/plan_file.h"
#include "core/plan/matched.h"
#include "core/plan/overlap.h"
#include "core/plan/plan_against_audit.h"
#include "core/plan/what_if.h"
#include "core/reference/table.h"
#include "core/sentences.h"
#include "reports/text/plan_drawing.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <ostream>
#include <stdexcept>
#include <thread>

namespace evenfall::cli {
namespace {

using units::format_fixed;
using units::format_grouped;

std::optional<plan::Wind> wind_of(const OverlapOptions& o) {
    if (!o.wind_toward && !o.wind_shift && !o.wind_stretch) return std::nullopt;
    if (!o.wind_toward) throw InputError("wind without a direction", "--wind-toward as well");
    return plan::Wind{*o.wind_toward, o.wind_shift.value_or(0.0), o.wind_stretch.value_or(1.0)};
}

plan::OverlapOptions overlap_options(const OverlapOptions& o) {
    plan::OverlapOptions out;
    if (o.cell) out.cell = o.cell->quantity();
    out.wind = wind_of(o);
    for (const auto& row : reference::Table::named("scheduling_windows.csv").rows()) {
        out.window_shares.push_back(row.number("share"));
    }
    // The result is the same for any number of threads.
    out.threads = std::clamp(std::thread::hardware_concurrency(), 1U, 16U);
    return out;
}

template <class Ratio>
Json ratio_or_null(const std::optional<Ratio>& r) {
    return r ? Json(r->value()) : Json(nullptr);
}

Json stations_json(const std::vector<plan::StationRates>& stations) {
    Json out = Json::array();
    for (const auto& s : stations) {
        Json groups = Json::array();
        for (const auto& g : s.groups) {
            groups.push_back({{"heads", g.heads},
                              {"rate_mm_h", g.mean.in(units::millimetre_per_hour)},
                              {"run_time_ratio", g.run_time_ratio}});
        }
        Json arcs = Json::array();
        for (const auto& a : s.arcs) {
            arcs.push_back({{"arc", a.arc}, {"heads", a.heads}, {"rate_mm_h", a.mean.in(units::millimetre_per_hour)}});
        }
        out.push_back({{"station", s.station},
                       {"flow_gpm", s.flow.in(units::gallon_per_minute)},
                       {"matched", s.matched},
                       {"spread", s.spread},
                       {"arcs", std::move(arcs)},
                       {"groups", std::move(groups)}});
    }
    return out;
}

Json answer_json(const plan::Prediction& p, const std::vector<plan::StationRates>& stations) {
    Json windows = Json::array();
    for (const auto& w : p.scheduling) {
        windows.push_back({{"window_share", w.window_share}, {"value", ratio_or_null(w.value)}});
    }
    return {{"du_lq", ratio_or_null(p.du_lq)},
            {"du_lh", ratio_or_null(p.du_lh)},
            {"cu", ratio_or_null(p.cu)},
            {"mean_rate_mm_h", p.mean_rate.in(units::millimetre_per_hour)},
            {"mean_rate_in_h", p.mean_rate.in(units::inch_per_hour)},
            {"lowest_rate_mm_h", p.lowest_rate.in(units::millimetre_per_hour)},
            {"highest_rate_mm_h", p.highest_rate.in(units::millimetre_per_hour)},
            {"coverage",
             {{"none", p.coverage.none.value()},
              {"one", p.coverage.one.value()},
              {"two_or_more", p.coverage.two_or_more.value()},
              {"three_or_more", p.coverage.three_or_more.value()}}},
            {"off_target_share", p.off_target_share.value()},
            {"on_no_water_share", p.on_no_water_share.value()},
            {"heads", p.heads},
            {"scheduling_coefficient", std::move(windows)},
            {"turf_m2", p.turf.in(units::square_metre)},
            {"flow_m3_h", p.total_flow.in(units::cubic_metre_per_hour)},
            {"flow_gpm", p.total_flow.in(units::gallon_per_minute)},
            {"balance_error", p.balance_error},
            {"cell_m", {p.cell_width.in(units::metre), p.cell_height.in(units::metre)}},
            {"stations", stations_json(stations)},
            {"method", p.method.english()},
            {"convention", p.convention.english()},
            {"source", p.source.english()},
            {"assumed", english_of(p.assumed)}};
}

template <class Ratio>
std::string percent(const std::optional<Ratio>& r) {
    return r ? format_fixed(r->percent(), 1) + " %" : "-";
}

std::string rate_text(units::Rate rate) {
    return format_fixed(rate.in(units::inch_per_hour), 3) + " in/h (" +
           format_fixed(rate.in(units::millimetre_per_hour), 2) + " mm/h)";
}

void print_text(std::ostream& out, const std::string& name, const plan::Prediction& p,
                const std::vector<plan::StationRates>& stations) {
    out << "Predicted application" << (name.empty() ? "" : " of " + printable(name)) << ", " << p.heads
        << " heads on " << format_grouped(p.turf.in(units::square_foot), 0) << " ft2 ("
        << format_grouped(p.turf.in(units::square_metre), 0) << " m2)\n\n"
        << "  DU, low quarter           " << percent(p.du_lq) << '\n'
        << "  DU, low half              " << percent(p.du_lh) << '\n'
        << "  CU                        " << percent(p.cu) << '\n'
        << "  mean rate                 " << rate_text(p.mean_rate) << '\n'
        << "  lowest to highest         " << rate_text(p.lowest_rate) << " to " << rate_text(p.highest_rate) << '\n';
    for (const auto& w : p.scheduling) {
        out << "  SC, driest " << format_fixed(100.0 * w.window_share, 0) << " % window    "
            << (w.window_share < 0.1 ? " " : "") << (w.value ? format_fixed(w.value->value(), 2) : "-") << '\n';
    }
    out << "  reached by no head        " << format_fixed(p.coverage.none.percent(), 1) << " %\n"
        << "  by one                    " << format_fixed(p.coverage.one.percent(), 1) << " %\n"
        << "  by two or more            " << format_fixed(p.coverage.two_or_more.percent(), 1) << " %\n"
        << "  by three or more          " << format_fixed(p.coverage.three_or_more.percent(), 1) << " %\n"
        << "  off target                " << format_fixed(p.off_target_share.percent(), 1) << " % of "
        << format_grouped(p.total_flow.in(units::gallon_per_minute), 1) << " gpm ("
        << format_fixed(p.on_no_water_share.percent(), 1) << " % on paving)\n";
    for (const auto& s : stations) {
        if (s.matched) continue;
        out << "\nStation " << (s.station.empty() ? "(none)" : printable(s.station))
            << ": rates do not match. On stations of their own:\n";
        for (const auto& g : s.groups) {
            out << "  " << g.heads.size() << " heads at " << rate_text(g.mean) << ", run-time ratio "
                << format_fixed(g.run_time_ratio, 2) << ": ";
            for (std::size_t i = 0; i < std::min<std::size_t>(g.heads.size(), 12); ++i) {
                out << (i > 0 ? ", " : "") << printable(g.heads[i]);
            }
            out << (g.heads.size() > 12 ? " ...\n" : "\n");
        }
    }
    out << "\nMethod: " << p.method << "; cells of " << format_fixed(p.cell_width.in(units::metre), 3) << " by "
        << format_fixed(p.cell_height.in(units::metre), 3) << " m\nConvention: " << p.convention
        << "\nSource: " << p.source << '\n';
    for (const Sentence& a : p.assumed) out << "Assumed: " << printable(a.english(), 300) << '\n';
    out << "A prediction from a drawing: pressure, wind, wear and tilt are not in it. Keep spray off roads and paths\n"
           "where it can make people or cars slip, and follow local codes on backflow and reclaimed water.\n";
}

Json audit_json(const plan::PlanAgainstAudit& a) {
    Json cans = Json::array();
    for (const auto& c : a.cans) {
        cans.push_back({{"can", c.can},
                        {"caught_mm", c.caught.in(units::millimetre)},
                        {"predicted_mm", c.predicted.in(units::millimetre)},
                        {"fitted_mm", c.fitted.in(units::millimetre)},
                        {"heads", c.heads}});
    }
    Json heads = Json::array();
    for (const auto& h : a.heads) {
        heads.push_back({{"head", h.head},
                         {"verdict", plan::text_of(h.verdict)},
                         {"output", h.output},
                         {"error", h.error},
                         {"cans", h.cans},
                         {"evidence", h.evidence.english()}});
    }
    return {{"common_output", a.common_output},
            {"du_lq_caught", ratio_or_null(a.du_caught)},
            {"du_lq_predicted", ratio_or_null(a.du_predicted)},
            {"difference_before_mm", a.difference_before.in(units::millimetre)},
            {"difference_after_mm", a.difference_after.in(units::millimetre)},
            {"scatter", a.scatter},
            {"cans", std::move(cans)},
            {"heads", std::move(heads)},
            {"notes", english_of(a.notes)},
            {"method", a.method.english()},
            {"source", a.source.english()}};
}

void print_audit(std::ostream& out, const plan::PlanAgainstAudit& a) {
    out << "\nAgainst the catch test, " << a.cans.size() << " cans: DU caught " << percent(a.du_caught) << ", designed "
        << percent(a.du_predicted) << "; all heads together deliver " << format_fixed(100.0 * a.common_output, 0)
        << " % of the design\n";
    std::size_t untold = 0;
    for (const auto& h : a.heads) {
        if (h.verdict == plan::Verdict::cannot_tell) ++untold;
        if (h.verdict == plan::Verdict::weak || h.verdict == plan::Verdict::strong) {
            out << "  head " << printable(h.head) << ' ' << plan::text_of(h.verdict) << ": " << h.evidence << '\n';
        }
    }
    out << "  cannot tell: " << untold << " of " << a.heads.size() << " heads\n";
    for (const auto& note : a.notes) out << "  " << printable(note.english(), 300) << '\n';
}

plan::WhatIf compared(const plan::Prediction& before, const OverlapOptions& o) {
    const plan::Plan other = exchange::read_plan(o.compare);
    plan::WhatIfTerms terms;
    terms.season_need = o.season_need->quantity();
    if (o.price) terms.price_per_m3 = *o.price / o.price_per->quantity().in(units::cubic_metre);
    terms.cost_of_change = o.cost;
    return plan::compare(before, plan::overlap_of(other, overlap_options(o)).prediction, terms);
}

Json what_if_json(const plan::WhatIf& w) {
    const auto side = [](const plan::WhatIfSide& s) -> Json {
        return {{"du_lq", ratio_or_null(s.du_lq)},
                {"multiplier", ratio_or_null(s.multiplier)},
                {"off_target_share", s.off_target.value()},
                {"season_gal", in_or_null(s.season, units::us_gallon)},
                {"money", number_or_null(s.money)}};
    };
    return {{"before", side(w.before)},
            {"after", side(w.after)},
            {"saved_gal", in_or_null(w.saved, units::us_gallon)},
            {"money_saved", number_or_null(w.money_saved)},
            {"payback_seasons", number_or_null(w.payback_seasons)},
            {"method", w.method},
            {"source", w.source}};
}

void print_what_if(std::ostream& out, const plan::WhatIf& w) {
    const auto gallons = [](const std::optional<units::Volume>& v) {
        return v ? format_grouped(v->in(units::us_gallon), 0) + " gal (" + format_grouped(v->in(units::cubic_metre), 0) + " m3)"
                 : std::string("-");
    };
    out << "\nChanging to the other plan, at equal turf quality\n"
        << "  DU, low quarter           " << percent(w.before.du_lq) << " -> " << percent(w.after.du_lq) << '\n'
        << "  water a season            " << gallons(w.before.season) << " -> " << gallons(w.after.season) << '\n'
        << "  saved                     " << gallons(w.saved) << '\n';
    if (w.money_saved) out << "  money saved a season      " << format_grouped(*w.money_saved, 2) << '\n';
    if (w.payback_seasons) out << "  payback                   " << format_fixed(*w.payback_seasons, 1) << " seasons\n";
    out << "  " << w.method << ". " << w.source << '\n';
}

/// Beside its place first, so that a full disk leaves no half drawing.
void write_drawing(const plan::Plan& drawn, const plan::Overlap& overlap, const plan::PlanAgainstAudit* audit,
                   const OverlapOptions& o, const Streams& streams) {
    reports::PlanDrawing d;
    d.title = drawn.name;
    d.overlap = &overlap;
    d.audit = audit;
    d.units = o.system == "metric" ? reports::UnitsShown::metric : reports::UnitsShown::us;
    d.view = o.view == "rate"         ? reports::PlanView::rate
             : o.view == "islands"    ? reports::PlanView::islands
             : o.view == "difference" ? reports::PlanView::difference
                                      : reports::PlanView::layout;
    if (d.view == reports::PlanView::difference && !audit) {
        throw InputError("--view difference without a catch test", "--catches as well");
    }
    const std::string svg = reports::draw_plan(drawn, d);
    if (o.drawing.ends_with(".pdf")) {
        workflow::print_sheet(svg, std::filesystem::path(streams.program_folder) / "evenfall-print", o.drawing);
        return;
    }
    const std::string part = o.drawing + ".part";
    std::ofstream file(part, std::ios::binary | std::ios::trunc);
    file << svg;
    file.close();
    if (!file) throw std::runtime_error("cannot write " + o.drawing);
    std::filesystem::rename(part, o.drawing);
}

}  // namespace

int run(const OverlapOptions& o, Streams& streams) {
    const plan::Plan drawn = exchange::read_plan(o.file);
    const plan::Overlap overlap = plan::overlap_of(drawn, overlap_options(o));
    const auto stations = plan::matched_precipitation(drawn, plan::usual_matched_spread());
    std::optional<plan::PlanAgainstAudit> audit;
    if (!o.catches.empty()) {
        audit = plan::plan_against_audit(drawn, workflow::catch_test_in(o.catches, o.test));
    }
    std::optional<plan::WhatIf> change;
    if (!o.compare.empty()) change = compared(overlap.prediction, o);
    std::optional<int> revision;
    if (!o.book.empty()) {
        auto book = store::Book::open(o.book, store::Access::read_write);
        revision = workflow::keep_plan(book, drawn, o.site, o.code, o.who);
    }
    if (!o.drawing.empty()) write_drawing(drawn, overlap, audit ? &*audit : nullptr, o, streams);
    if (o.json) {
        Json out = answer_json(overlap.prediction, stations);
        if (audit) out["against_audit"] = audit_json(*audit);
        if (change) out["change"] = what_if_json(*change);
        if (!o.drawing.empty()) out["drawing"] = o.drawing;
        if (revision) out["revision"] = *revision;
        streams.out << print(out);
        return done;
    }
    print_text(streams.out, drawn.name, overlap.prediction, stations);
    if (audit) print_audit(streams.out, *audit);
    if (change) print_what_if(streams.out, *change);
    if (revision) streams.out << "\nKept as " << printable(o.code) << ", revision " << *revision << '\n';
    if (!o.drawing.empty()) streams.out << "\nDrawing: " << o.drawing << '\n';
    return done;
}

}  // namespace evenfall::cli
