// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/season.h"
#include "core/input_error.h"

#include <algorithm>
#include <iomanip>
#include <ostream>

namespace evenfall::cli {
namespace {

using budget::SeasonFigures;
using budget::WasteAccount;
using units::format_grouped;
using units::us_gallon;

Json waste_json(const std::optional<WasteAccount>& account) {
    if (!account) return nullptr;
    Json out = Json::object();
    for (const auto& line : budget::waste_lines()) {
        out[std::string(line.key) + "_gal"] = ((*account).*line.part).in(us_gallon);
    }
    return out;
}

Json figures_json(const SeasonFigures& f) {
    Json flags = Json::array();
    for (const auto flag : f.flags) flags.push_back(budget::key_of(flag));
    return {{"days", f.days},
            {"days_counted", f.days_counted},
            {"reference_et_mm", in_or_null(f.reference_et, units::millimetre)},
            {"rain_mm", in_or_null(f.rain, units::millimetre)},
            {"effective_rain_mm", in_or_null(f.effective_rain, units::millimetre)},
            {"use_gal", in_or_null(f.use, us_gallon)},
            {"need_gal", in_or_null(f.need, us_gallon)},
            {"budget_gal", in_or_null(f.budget, us_gallon)},
            {"over_budget_gal", in_or_null(f.over_budget, us_gallon)},
            {"outside_account_gal", in_or_null(f.outside_account, us_gallon)},
            {"estimated_share", f.estimated_share},
            {"waste", waste_json(f.account)},
            {"flags", std::move(flags)}};
}

Json month_json(const budget::SeasonMonth& m) {
    Json out = {{"month", calendar::format_month(m.month)}};
    out.update(figures_json(m));
    return out;
}

Json area_json(const budget::AreaSeason& area) {
    Json months = Json::array();
    for (const auto& m : area.months) months.push_back(month_json(m));
    return {{"area", area.area}, {"name", area.name}, {"months", std::move(months)},
            {"total", figures_json(area.total)}};
}

Json answer_json(const workflow::SeasonAnswer& answer, const budget::AreaSeason* only) {
    const auto& r = answer.result;
    Json months = Json::array();
    if (only != nullptr) {
        for (const auto& m : only->months) months.push_back(month_json(m));
    } else {
        for (const auto& m : r.months) months.push_back(month_json(m));
    }
    Json areas = Json::array();
    for (const auto& a : r.areas) {
        if (only == nullptr || only == &a) areas.push_back(area_json(a));
    }
    Json notes = Json::array();
    for (const auto& n : r.notes) {
        notes.push_back({{"topic", n.topic}, {"method", n.method}, {"source", n.source}, {"assumed", n.assumed}});
    }
    Json findings = Json::array();
    for (const auto& f : r.findings) findings.push_back({{"record", f.record}, {"sentence", f.sentence}});
    for (const auto& f : answer.meter_findings) {
        findings.push_back({{"record", "meter " + f.meter},
                            {"sentence", f.sentence},
                            {"kind", meter::text_of(f.kind)},
                            {"from", calendar::format_date(f.from)},
                            {"to", calendar::format_date(f.to)},
                            {"gal", in_or_null(f.volume, us_gallon)},
                            {"how_sure", meter::text_of(f.confidence)},
                            {"limit", f.limit},
                            {"source", f.source}});
    }
    return {{"site", r.site},
            {"area", only != nullptr ? Json(only->area) : Json(nullptr)},
            {"from", calendar::format_month(r.from)},
            {"to", calendar::format_month(r.to)},
            {"program", r.program.name},
            {"months", std::move(months)},
            {"total", figures_json(only != nullptr ? only->total : r.total)},
            {"areas", std::move(areas)},
            {"notes", std::move(notes)},
            {"findings", std::move(findings)}};
}

std::string gallons(const std::optional<units::Volume>& v) {
    return v ? format_grouped(v->in(us_gallon), 0) : "-";
}

void print_row(std::ostream& out, const std::string& label, const SeasonFigures& f) {
    out << std::left << std::setw(10) << label << std::right << std::setw(15) << gallons(f.use)
        << std::setw(15) << gallons(f.need) << std::setw(15) << gallons(f.budget) << std::setw(15)
        << gallons(f.over_budget) << std::setw(11)
        << units::format_fixed(100.0 * f.estimated_share, 0) + " %" << '\n';
}

void print_waste(std::ostream& out, const SeasonFigures& total) {
    if (!total.account) {
        out << "\nNo waste account: use or need is not known.\n";
        return;
    }
    out << "\nWhere the water went, gallons\n";
    for (const auto& line : budget::waste_lines()) {
        out << "  " << std::left << std::setw(44) << line.words << std::right << std::setw(15)
            << format_grouped(((*total.account).*line.part).in(us_gallon), 0) << '\n';
    }
}

void print_text(std::ostream& out, const workflow::SeasonAnswer& answer, const budget::AreaSeason* only) {
    const auto& r = answer.result;
    out << r.name << (only != nullptr ? ", " + only->name : std::string()) << ", "
        << calendar::format_month(r.from) << " to " << calendar::format_month(r.to) << "\n\n"
        << std::left << std::setw(10) << "month" << std::right << std::setw(15) << "use, gal"
        << std::setw(15) << "need, gal" << std::setw(15) << "budget, gal" << std::setw(15)
        << "over, gal" << std::setw(11) << "estimated" << '\n';
    if (only != nullptr) {
        for (const auto& m : only->months) print_row(out, calendar::format_month(m.month), m);
        print_row(out, "total", only->total);
        print_waste(out, only->total);
    } else {
        for (const auto& m : r.months) print_row(out, calendar::format_month(m.month), m);
        print_row(out, "total", r.total);
        print_waste(out, r.total);
    }
    if (!r.findings.empty() || !answer.meter_findings.empty()) out << "\nTo look at\n";
    for (const auto& f : r.findings) out << "  " << f.record << ": " << f.sentence << '\n';
    for (const auto& f : answer.meter_findings) {
        out << "  meter " << f.meter << ": " << f.sentence << " (" << meter::text_of(f.confidence) << ")\n";
    }
    out << "\nHow the figures were made\n";
    for (const auto& n : r.notes) {
        out << "  " << n.topic << ": " << n.method << (n.assumed ? " [assumed]" : "") << ". " << n.source << '\n';
    }
}

}  // namespace

int run(const SeasonOptions& o, Streams& streams) {
    const auto book = store::Book::open(o.book, store::Access::read_only);
    const auto rule = audit::quarter_rule_named(o.quarter_rule);
    if (!rule) throw InputError(o.quarter_rule, "a quarter rule");
    const auto answer = workflow::answer_season(book, {o.site, o.from, o.to, o.program, o.rain, *rule});
    const budget::AreaSeason* only = nullptr;
    if (!o.area.empty()) {
        const auto& areas = answer.result.areas;
        const auto it = std::find_if(areas.begin(), areas.end(), [&](const auto& a) { return a.area == o.area; });
        if (it == areas.end()) throw InputError(o.area, "an area of site " + o.site);
        only = &*it;
    }
    if (o.json) streams.out << print(answer_json(answer, only));
    else print_text(streams.out, answer, only);
    return done;
}

}  // namespace evenfall::cli
