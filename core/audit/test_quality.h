// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/sample.h"
#include "core/reference/table.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Was the test fit to be relied on? Rules from schemas/reference/catch_test_rules.csv, each with its
/// source; a rule about something that was not written down is "not recorded", never "met".
/// Tests: tests/audit/field_checks_test.cpp
namespace evenfall::audit {

enum class Outcome : int { met = 1, not_met = 2, not_recorded = 3 };
std::string_view text_of(Outcome outcome);

struct RuleOutcome {
    std::string rule;      ///< key, stable
    std::string says;      ///< for a person
    Outcome outcome;
    std::optional<double> observed;
    std::string unit;
    std::string source;
    reference::Mark mark;
};

/// What the rules look at, each only where it was recorded.
struct Observables {
    double cans = 0.0;
    double cans_over_a_multiple_of_four = 0.0;
    double mean_depth_mm = 0.0;
    std::optional<double> wind_m_s;
    std::optional<double> minutes;
    std::optional<double> can_spacing_m;   ///< median distance to the nearest can
    std::optional<double> edge_offset_m;
    std::optional<double> mean_catch_ml;
    std::optional<double> mean_catch_ml_per_in2;
    std::optional<double> pressures;       ///< how many places were read
    std::optional<double> open_findings;   ///< defects not put right before the test
};

/// @throws InputError as sample_of()
Observables observe(const CatchTest& test);

/// Rules that fit the layout and the kind of head.
/// @param heads  as for ratings(); rules for one kind of head need it
std::vector<RuleOutcome> judge_test(const CatchTest& test, std::string_view heads);

}  // namespace evenfall::audit
