// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/test_quality.h"

#include "core/audit/traveller.h"
#include "core/reference/word_list.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>

namespace evenfall::audit {
namespace {

using reference::lists;

std::string_view word_of(Layout layout) {
    switch (layout) {
        case Layout::grid: return "grid";
        case Layout::pivot: return "pivot";
        case Layout::traveller: return "traveller";
        case Layout::irregular: return "irregular";
        case Layout::lateral: return "lateral";
    }
    return "";
}

std::optional<double> spacing_of(const CatchTest& test) {
    if (test.layout == Layout::traveller) return overlap_lanes(test).can_spacing.si();
    std::vector<std::pair<double, double>> at;
    for (const Catch& c : test.catches) {
        if (!c.excluded.empty()) continue;
        if (c.distance) at.emplace_back(*c.distance, 0.0);
        else if (c.x && c.y) at.emplace_back(*c.x, *c.y);
        else return std::nullopt;
    }
    std::vector<double> nearest;
    for (std::size_t i = 0; i < at.size(); ++i) {
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t j = 0; j < at.size(); ++j) {
            if (i != j) {
                least = std::min(least,
                                 std::hypot(at[i].first - at[j].first, at[i].second - at[j].second));
            }
        }
        nearest.push_back(least);
    }
    std::sort(nearest.begin(), nearest.end());
    return nearest[nearest.size() / 2] * test.position_unit.unit.si();
}

std::optional<double> value_of(const Observables& o, std::string_view name) {
    if (name == "cans") return o.cans;
    if (name == "cans_over_a_multiple_of_four") return o.cans_over_a_multiple_of_four;
    if (name == "mean_depth_mm") return o.mean_depth_mm;
    if (name == "wind_m_s") return o.wind_m_s;
    if (name == "minutes") return o.minutes;
    if (name == "can_spacing_m") return o.can_spacing_m;
    if (name == "edge_offset_m") return o.edge_offset_m;
    if (name == "mean_catch_ml") return o.mean_catch_ml;
    if (name == "mean_catch_ml_per_in2") return o.mean_catch_ml_per_in2;
    if (name == "pressures") return o.pressures;
    if (name == "open_findings") return o.open_findings;
    throw std::logic_error("unknown observable in catch_test_rules.csv: " + std::string(name));
}

}  // namespace

std::string_view text_of(Outcome outcome) {
    switch (outcome) {
        case Outcome::met: return "met";
        case Outcome::not_met: return "not met";
        case Outcome::not_recorded: return "not recorded";
    }
    return "";
}

Observables observe(const CatchTest& test) {
    if (auto issues = check(test); !issues.empty()) throw InputError(std::move(issues));
    Observables o;
    const std::vector<units::Depth> depths = depths_of(test);
    o.cans = static_cast<double>(depths.size());
    o.cans_over_a_multiple_of_four = static_cast<double>(depths.size() % 4);
    units::Depth mean;
    for (const units::Depth d : depths) mean += d / o.cans;
    o.mean_depth_mm = mean.in(units::millimetre);
    if (test.wind) o.wind_m_s = test.wind->quantity().si();
    o.minutes = test.minutes;
    o.can_spacing_m = spacing_of(test);
    if (test.edge_offset) o.edge_offset_m = test.edge_offset->quantity().si();
    if (test.throat_area) {
        o.mean_catch_ml = (mean * test.throat_area->quantity()).in(units::millilitre);
        o.mean_catch_ml_per_in2 = (mean * units::square_inch).in(units::millilitre);
    }
    if (test.pressures) o.pressures = static_cast<double>(test.pressures->size());
    if (test.findings) {
        o.open_findings = static_cast<double>(
            std::count_if(test.findings->begin(), test.findings->end(),
                          [](const Finding& f) { return !f.corrected; }));
    }
    return o;
}

std::vector<RuleOutcome> judge_test(const CatchTest& test, std::string_view heads) {
    const Observables observed = observe(test);
    std::vector<RuleOutcome> outcomes;
    for (const auto& row : reference::Table::named("catch_test_rules.csv").rows()) {
        if (!lists(row.text("layouts"), word_of(test.layout))) continue;
        const std::string_view for_heads = row.text("heads");
        if (for_heads != "any" && !lists(for_heads, heads)) continue;
        RuleOutcome r{std::string(row.text("rule")), std::string(row.text("says")),
                      Outcome::not_recorded, value_of(observed, row.text("observable")),
                      std::string(row.text("unit")), std::string(row.source()), row.mark()};
        if (r.observed) {
            const auto at_least = row.maybe_number("at_least");
            const auto at_most = row.maybe_number("at_most");
            const auto slack = [](double limit) { return 1e-9 * std::max(1.0, std::abs(limit)); };
            const bool met = !(at_least && *r.observed < *at_least - slack(*at_least)) &&
                             !(at_most && *r.observed > *at_most + slack(*at_most));
            r.outcome = met ? Outcome::met : Outcome::not_met;
        }
        outcomes.push_back(std::move(r));
    }
    return outcomes;
}

}  // namespace evenfall::audit
