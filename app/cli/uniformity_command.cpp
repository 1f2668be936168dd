// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/cli/uniformity_text.h"
#include "core/audit/adequacy.h"
#include "core/exchange/field_notes_file.h"
#include "core/exchange/plain_files.h"
#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <ostream>

namespace evenfall::cli {
namespace {

using audit::CatchTest;
using audit::TestAnalysis;

CatchTest pick_test(const UniformityOptions& o, std::vector<std::string>& remarks) {
    auto file = exchange::read_catches(o.file);
    for (const Sentence& note : file.notes) remarks.push_back(note.english());
    if (o.test.empty() && file.tests.size() == 1) return std::move(file.tests.front());
    std::string codes;
    for (CatchTest& t : file.tests) {
        if (!o.test.empty() && t.code == o.test) return std::move(t);
        codes += (codes.empty() ? "" : ", ") + t.code;
    }
    throw InputError(o.test.empty() ? std::to_string(file.tests.size()) + " tests in " + o.file : o.test,
                     "--test with one of: " + printable(codes, 400));
}

/// The command line wins over the file, and says so.
template <class T>
void set(std::optional<T>& field, const std::optional<T>& given, const std::string& name,
         std::vector<std::string>& remarks) {
    if (!given) return;
    if (field) remarks.push_back(name + " of the command line used instead of the file's");
    field = given;
}

audit::Layout layout_named(const std::string& name) {
    if (name == "pivot") return audit::Layout::pivot;
    if (name == "lateral") return audit::Layout::lateral;
    if (name == "traveller") return audit::Layout::traveller;
    return name == "irregular" ? audit::Layout::irregular : audit::Layout::grid;
}

std::map<std::string, double> station_minutes(const std::vector<std::string>& pairs) {
    std::map<std::string, double> minutes;
    for (const std::string& pair : pairs) {
        const std::size_t equals = pair.rfind('=');
        const auto value = equals == std::string::npos
                               ? std::nullopt
                               : units::parse_number(std::string_view(pair).substr(equals + 1));
        if (!value) throw InputError(pair, "a station and its minutes, such as North=12");
        minutes[pair.substr(0, equals)] = *value;
    }
    return minutes;
}

CatchTest assembled(const UniformityOptions& o, std::vector<std::string>& remarks) {
    CatchTest t = pick_test(o, remarks);
    set(t.throat_area, o.throat_area, "throat area", remarks);
    std::optional<double> minutes;
    if (o.minutes) minutes = o.minutes->quantity().in(units::minute);
    set(t.minutes, minutes, "run time", remarks);
    set(t.lane_spacing, o.lane_spacing, "lane spacing", remarks);
    set(t.wind, o.wind, "wind", remarks);
    set(t.can_size, o.can_size, "can size", remarks);
    set(t.edge_offset, o.edge_offset, "edge offset", remarks);
    set(t.flow, o.flow, "flow", remarks);
    set(t.travel_speed, o.travel_speed, "travel speed", remarks);
    if (!o.layout.empty()) t.layout = layout_named(o.layout);
    t.opposite_pulls = t.opposite_pulls || o.opposite_pulls;
    if (!o.pressures.empty()) t.pressures = exchange::read_pressures(o.pressures);
    if (!o.findings.empty()) t.findings = exchange::read_findings(o.findings);
    if (!o.station_minutes.empty()) {
        t = audit::with_minutes(t, station_minutes(o.station_minutes));
        remarks.push_back("catches worked out for the station minutes of the command line: not measured so");
    }
    return t;
}

std::size_t whole(double value, const std::string& name) {
    if (!(value >= 0.0 && value <= 9e15 && value == std::floor(value))) {
        throw InputError(units::format_shortest(value), "a whole number for " + name);
    }
    return static_cast<std::size_t>(value);
}

audit::AnalysisChoices choices_of(const UniformityOptions& o, const CatchTest& test) {
    const auto rule = audit::quarter_rule_named(o.quarter_rule);
    if (!rule) throw InputError(o.quarter_rule, "a quarter rule");
    audit::AnalysisChoices c = audit::usual_analysis(*rule);
    if (o.pivot_weights == "ring-area") c.sample.pivot_weights = audit::PivotWeights::ring_area;
    c.sample.inner_share_left_out = o.inner_share_left_out;
    if (o.irregular_weights == "equal") c.sample.irregular_weights = audit::IrregularWeights::equal;
    if (!o.outline.empty()) {
        for (const auto& [x, y] : exchange::read_outline(o.outline)) {
            c.sample.outline.emplace_back(x.in(test.position_unit.unit), y.in(test.position_unit.unit));
        }
    }
    if (!o.window_shares.empty()) c.window_shares = o.window_shares;
    c.heads = o.heads;
    if (o.least_du_lq) c.least_du_lq = units::LowQuarterDu::of(*o.least_du_lq).value();
    c.resampling.level = o.confidence;
    c.resampling.resamples = whole(o.resamples, "the resamples");
    if (o.seed) c.resampling.seed = whole(*o.seed, "the seed");
    return c;
}

Json interval_json(const std::optional<stats::Interval>& i) {
    return i ? Json::array({i->low, i->high}) : Json(nullptr);
}

Json intervals_json(const audit::FigureIntervals& f) {
    return {{"scheme", f.scheme.english()},
            {"method", f.du_lq ? Json(text_of(f.du_lq->method).english()) : Json(nullptr)},
            {"du_lq", interval_json(f.du_lq)},
            {"du_lh", interval_json(f.du_lh)},
            {"cu", interval_json(f.cu)},
            {"scheduling_coefficient_low_quarter", interval_json(f.sc_low_quarter)},
            {"scheduling_coefficient_driest_can", interval_json(f.sc_driest_can)},
            {"mean_depth_mm", interval_json(f.mean_mm)},
            {"net_rate_mm_h", interval_json(f.net_rate_mm_h)}};
}

template <class Ratio>
Json ratio_or_null(const std::optional<Ratio>& r) {
    return r ? Json(r->value()) : Json(nullptr);
}

Json scheduling_json(const TestAnalysis& a) {
    Json all = Json::array();
    for (const auto& s : a.scheduling) {
        all.push_back({{"definition", text_of(s.spot)},
                       {"window_share", number_or_null(s.window_share)},
                       {"value", ratio_or_null(s.value)},
                       {"spot_mean_mm", s.spot_mean.in(units::millimetre)},
                       {"where", s.where},
                       {"how", s.how}});
    }
    return all;
}

Json quality_json(const TestAnalysis& a) {
    Json all = Json::array();
    for (const auto& r : a.rules) {
        Json met = nullptr;
        if (r.outcome != audit::Outcome::not_recorded) met = r.outcome == audit::Outcome::met;
        all.push_back({{"rule", r.rule}, {"met", met}, {"outcome", text_of(r.outcome)}, {"says", r.says},
                       {"observed", number_or_null(r.observed)}, {"unit", r.unit}, {"source", r.source},
                       {"mark", text_of(r.mark)}});
    }
    return all;
}

Json field_json(const TestAnalysis& a) {
    Json suspects = Json::array();
    for (const auto& s : a.suspects) {
        suspects.push_back({{"can", s.label}, {"depth_mm", s.caught.in(units::millimetre)},
                            {"neighbours_mm", s.neighbours.in(units::millimetre)}, {"score", s.score}});
    }
    Json ratings = Json::array();
    for (const auto& r : a.ratings) {
        ratings.push_back({{"system", r.system}, {"heads", r.heads}, {"figure", r.figure}, {"rating", r.rating},
                           {"at_least_percent", number_or_null(r.at_least)},
                           {"below_percent", number_or_null(r.below)}, {"source", r.source},
                           {"mark", text_of(r.mark)}});
    }
    Json findings = Json::array();
    for (const auto& f : a.findings) {
        findings.push_back({{"finding", f.kind.key}, {"name", f.kind.name}, {"count", f.count},
                            {"corrected", f.corrected}, {"severity", text_of(f.worst)}, {"places", f.places},
                            {"remedy", f.kind.remedy}, {"caution", f.kind.caution}});
    }
    Json pressures = nullptr;
    if (a.pressures) {
        const auto& p = *a.pressures;
        Json readings = Json::array();
        for (const auto& r : p.readings) {
            readings.push_back({{"place", r.reading.place}, {"psi", r.reading.pressure.quantity().in(units::psi)},
                                {"kpa", r.reading.pressure.quantity().in(units::kilopascal)},
                                {"verdict", text_of(r.verdict)}, {"relative_flow", r.relative_flow}});
        }
        Json system = Json::array();
        for (const auto& s : a.whole_system) {
            system.push_back({{"figure", s.figure}, {"form", s.form}, {"tested", s.tested},
                              {"whole_system", s.whole_system}, {"source", s.source}, {"mark", text_of(s.mark)}});
        }
        pressures = {{"readings", std::move(readings)}, {"mean_kpa", p.mean.in(units::kilopascal)},
                     {"flow_spread", p.flow_spread}, {"whole_system", std::move(system)}};
    }
    Json stations = Json::array();
    for (const auto& s : a.stations.stations) {
        stations.push_back({{"station", s.station}, {"minutes", s.run.in(units::minute)}, {"cans_wetted", s.wetted},
                            {"area_rate_mm_h", in_or_null(s.area_rate, units::millimetre_per_hour)},
                            {"wetted_rate_mm_h", in_or_null(s.wetted_rate, units::millimetre_per_hour)}});
    }
    return {{"suspect_cans", std::move(suspects)}, {"ratings", std::move(ratings)}, {"inspected", a.inspected},
            {"findings", std::move(findings)}, {"pressures", std::move(pressures)},
            {"stations", std::move(stations)}};
}

Json exclusions_json(const TestAnalysis& a) {
    Json cans = Json::array();
    for (const auto& c : a.excluded) cans.push_back({{"can", c.can}, {"reason", c.excluded}});
    Json with_all = nullptr;
    if (a.with_all) {
        with_all = {{"du_lq", a.with_all->du_lq.value()}, {"du_lh", a.with_all->du_lh.value()},
                    {"cu", a.with_all->cu.value()}, {"cv", a.with_all->cv.value()},
                    {"mean_depth_mm", a.with_all->mean.in(units::millimetre)}};
    }
    return {{"excluded", std::move(cans)}, {"with_excluded", std::move(with_all)}};
}

Json adequacy_json(const UniformityOptions& o, const TestAnalysis& a) {
    Json lines = Json::array();
    for (const auto& l : a.adequacy) {
        lines.push_back({{"share", l.share}, {"times_target", number_or_null(l.times_target)}});
    }
    Json out = {{"share_with_mean_or_more", a.share_at_mean}, {"depth_for_share", std::move(lines)}};
    if (o.target_depth) {
        const units::Depth target = o.target_depth->quantity();
        const units::Depth mean = o.mean_depth ? o.mean_depth->quantity() : target;
        out["target_mm"] = target.in(units::millimetre);
        out["mean_mm"] = mean.in(units::millimetre);
        out["share_with_target"] = audit::adequacy(a.sample, mean, target).value();
    }
    return out;
}

Json answer_json(const UniformityOptions& o, const CatchTest& test, const TestAnalysis& a,
                 const std::vector<std::string>& remarks) {
    const auto& f = a.figures;
    Json notes = Json::array();
    for (const Sentence& note : f.notes) notes.push_back(note.english());
    for (const std::string& r : remarks) notes.push_back(r);
    Json flow = nullptr;
    if (a.flow_depth) {
        flow = {{"by_flow_mm", a.flow_depth->by_flow.in(units::millimetre)},
                {"caught_mm", a.flow_depth->caught.in(units::millimetre)},
                {"caught_less_share", a.flow_depth->caught_less}};
    }
    Json cans = Json::array();
    for (const auto& c : a.sample.cans) {
        cans.push_back({{"can", c.label}, {"depth_mm", c.depth.in(units::millimetre)}, {"weight", c.weight},
                        {"x_m", c.position ? Json(c.position->x.in(units::metre)) : Json(nullptr)},
                        {"y_m", c.position ? Json(c.position->y.in(units::metre)) : Json(nullptr)}});
    }
    Json out = {{"test", test.code.empty() ? Json(nullptr) : Json(test.code)},
                {"layout", f.layout.english()},
                {"weights", f.weights.english()},
                {"cans", f.cans},
                {"cans_read", f.cans_read},
                {"mean_depth_mm", f.mean.in(units::millimetre)},
                {"mean_depth_in", f.mean.in(units::inch)},
                {"du_lq", f.du_lq.value()},
                {"quarter_rule", text_of(f.quarter_rule)},
                {"cans_in_low_quarter", f.cans_in_low_quarter},
                {"du_lq_interval", interval_json(a.intervals.du_lq)},
                {"du_lh", f.du_lh.value()},
                {"cu", f.cu.value()},
                {"cu_name", f.coefficient.english()},
                {"cv", f.cv.value()},
                {"statistical_uniformity", f.statistical_uniformity.value()},
                {"low_quarter_mean_mm", f.low_quarter_mean.in(units::millimetre)},
                {"low_half_mean_mm", f.low_half_mean.in(units::millimetre)},
                {"high_half_mean_mm", f.high_half_mean.in(units::millimetre)},
                {"scheduling_coefficient", scheduling_json(a)},
                {"net_rate_mm_h", in_or_null(f.net_rate, units::millimetre_per_hour)},
                {"net_rate_in_h", in_or_null(f.net_rate, units::inch_per_hour)},
                {"multiplier",
                 {{"low_half", ratio_or_null(a.multipliers.low_half)},
                  {"linear", a.multipliers.linear.value()},
                  {"low_quarter", ratio_or_null(a.multipliers.low_quarter)},
                  {"linear_source", a.multipliers.linear_source.english()}}},
                {"quality", quality_json(a)},
                {"confidence", o.confidence},
                {"resamples", a.resamples},
                {"seed", a.seed},
                {"intervals",
                 {{"bca", intervals_json(a.intervals)},
                  {"bca_widened", intervals_json(a.widened)},
                  {"blocks", a.blocks ? intervals_json(*a.blocks) : Json(nullptr)}}},
                {"confidence_of_least_du_lq", number_or_null(a.confidence_of_least)},
                {"more_cans_to_halve_interval", a.more_cans ? Json(*a.more_cans) : Json(nullptr)},
                {"adequacy", adequacy_json(o, a)},
                {"depth_by_flow", std::move(flow)}};
    out.update(exclusions_json(a));
    out.update(field_json(a));
    out["advice"] = audit::advice(a);
    out["notes"] = std::move(notes);
    out["catches"] = std::move(cans);
    return out;
}

}  // namespace

int run(const UniformityOptions& o, Streams& streams) {
    std::vector<std::string> remarks;
    const CatchTest test = assembled(o, remarks);
    const TestAnalysis a = audit::analyse_test(test, choices_of(o, test));
    if (o.json) {
        streams.out << print(answer_json(o, test, a, remarks));
    } else {
        print_uniformity(streams.out, test, a, remarks);
        if (o.target_depth) {
            const units::Depth target = o.target_depth->quantity();
            const units::Depth mean = o.mean_depth ? o.mean_depth->quantity() : target;
            streams.out << "  - " << units::format_fixed(mean.in(units::millimetre), 1) << " mm on average give "
                        << units::format_fixed(100.0 * audit::adequacy(a.sample, mean, target).value(), 0)
                        << " % of the ground " << units::format_fixed(target.in(units::millimetre), 1)
                        << " mm or more\n";
        }
    }
    const bool falls_short = o.least_du_lq && a.figures.du_lq.value() < *o.least_du_lq;
    return falls_short ? answer_no : done;
}

}  // namespace evenfall::cli
