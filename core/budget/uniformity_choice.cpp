// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/uniformity_choice.h"

#include "core/audit/multiplier.h"
#include "core/audit/sample.h"
#include "core/audit/uniformity.h"
#include "core/budget/root_zone.h"
#include "core/reference/table.h"

#include <algorithm>
#include <map>

namespace evenfall::budget {
namespace {

Sentence with_mark(const reference::Row& row) {
    return {phrase("budget", "%1 [%2]"), row.words("source"), reference::words_of(row.mark())};
}

UniformityChoice planning_value(const site::Area& area) {
    const auto& table = reference::Table::named("head_types.csv");
    const reference::Row* row = table.find("head_type", area.head_type);
    UniformityChoice choice;
    choice.head_type_known = row != nullptr && area.head_type != "unknown";
    if (row == nullptr) row = table.find("head_type", "unknown");
    choice.du_lq = units::LowQuarterDu::of(row->number("du_lq"));
    choice.low = units::LowQuarterDu::of(row->number("low"));
    choice.high = units::LowQuarterDu::of(row->number("high"));
    choice.achieved = audit::linear_multiplier(choice.du_lq);
    choice.linear = choice.achieved;
    choice.upper_bound = units::Multiplier::of(1.0 / choice.du_lq.value());
    choice.method = {phrase("budget", "planning value for %1, linear form"), row->words("words")};
    choice.source = with_mark(*row);
    choice.assumed = true;
    return choice;
}

/// Adds up what is averaged over the tests of a day.
struct Sums {
    double achieved = 0.0, du_lq = 0.0, du_lh = 0.0, linear = 0.0, upper = 0.0;
    bool upper_known = true, low_half_known = true;
};

TestedCans tested_cans(const audit::CatchTest& test, units::LowQuarterDu du_lq) {
    const auto sample = audit::sample_of(test, audit::usual_choices());
    std::vector<units::Depth> depths;
    TestedCans tested;
    for (const audit::SampleCan& can : sample.cans) {
        depths.push_back(can.depth);
        tested.weights.push_back(can.weight);
    }
    tested.shares = shares_of_mean(depths, tested.weights);
    tested.du_lq = du_lq;
    return tested;
}

void add_test(const audit::CatchTest& test, audit::QuarterRule rule, UniformityChoice& choice,
              Sums& sums) {
    const auto result = audit::analyse_uniformity(test, rule);
    const auto forms = audit::multipliers(result.du_lq, result.du_lh);
    sums.low_half_known = sums.low_half_known && forms.low_half.has_value();
    sums.achieved += forms.low_half.value_or(forms.linear).value();
    sums.du_lq += result.du_lq.value();
    sums.du_lh += result.du_lh.value();
    sums.linear += forms.linear.value();
    sums.upper_known = sums.upper_known && forms.low_quarter.has_value();
    if (forms.low_quarter) sums.upper += forms.low_quarter->value();
    choice.tests.push_back(test.code);
    choice.cans += result.cans;
    choice.tested.push_back(tested_cans(test, result.du_lq));
    choice.tested.back().net_rate = result.net_rate;
    choice.source = forms.linear_source;
}

UniformityChoice measured(const std::vector<const audit::CatchTest*>& tests,
                          audit::QuarterRule rule) {
    UniformityChoice choice;
    Sums sums;
    for (const audit::CatchTest* test : tests) add_test(*test, rule, choice, sums);
    const auto n = static_cast<double>(tests.size());
    choice.achieved = units::Multiplier::of(sums.achieved / n);
    choice.du_lq = units::LowQuarterDu::of(std::min(1.0, sums.du_lq / n));
    choice.du_lh = units::LowHalfDu::of(std::min(1.0, sums.du_lh / n));
    choice.linear = units::Multiplier::of(sums.linear / n);
    if (sums.upper_known) choice.upper_bound = units::Multiplier::of(sums.upper / n);
    choice.date = tests.front()->date;
    choice.method = sums.low_half_known
                        ? phrase("budget", "low half of the cans, 1 / DU_LH")
                        : phrase("budget", "linear form, because half of the cans stayed dry in a test");
    if (tests.size() > 1) choice.method = {phrase("budget", "%1, mean of the tests of the day"), choice.method};
    if (sums.low_half_known) choice.source = phrase("budget", "catch test, computed from its cans");
    return choice;
}

}  // namespace

std::vector<UniformityChoice> uniformity_choices(const site::Area& area,
                                                 std::span<const audit::CatchTest> tests,
                                                 audit::QuarterRule rule) {
    std::map<calendar::Date, std::vector<const audit::CatchTest*>> by_day;
    for (const audit::CatchTest& test : tests) {
        if (test.area == area.code) by_day[test.date].push_back(&test);
    }
    std::vector<UniformityChoice> choices;
    for (auto& [day, of_day] : by_day) {
        std::sort(of_day.begin(), of_day.end(),
                  [](const auto* a, const auto* b) { return a->code < b->code; });
        choices.push_back(measured(of_day, rule));
    }
    if (choices.empty()) choices.push_back(planning_value(area));
    return choices;
}

std::size_t choice_for(std::span<const UniformityChoice> choices, calendar::Month month) {
    std::size_t index = 0;
    for (std::size_t i = 0; i < choices.size(); ++i) {
        if (choices[i].date && *choices[i].date <= calendar::last_day(month)) index = i;
    }
    return index;
}

}  // namespace evenfall::budget
