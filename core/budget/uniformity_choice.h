// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/audit/quarter_rule.h"
#include "core/calendar/date.h"
#include "core/sentence.h"
#include "core/site/site.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace evenfall::budget {

/// The cans of one test: what each got over the mean, and how much ground it stands for.
struct TestedCans {
    std::vector<double> shares;
    std::vector<double> weights;
    units::LowQuarterDu du_lq = units::LowQuarterDu::of(1.0);
    std::optional<units::Rate> net_rate{};  ///< absent without a run time and for moving machines
};

/// How evenly an area is taken to be watered, and why.
struct UniformityChoice {
    units::Multiplier achieved = units::Multiplier::of(1.0);  ///< M of the waste account
    Sentence method;  ///< "low half of the cans", "planning value of the head type"
    Sentence source;
    bool assumed = false;     ///< no test stands behind it
    bool head_type_known = true;
    units::LowQuarterDu du_lq = units::LowQuarterDu::of(1.0);
    std::optional<units::LowHalfDu> du_lh;           ///< measured only
    std::optional<units::Multiplier> linear;         ///< beside it
    std::optional<units::Multiplier> upper_bound;    ///< 1 / DU_LQ
    std::vector<std::string> tests;                  ///< codes; several of one day are averaged
    std::optional<calendar::Date> date;
    std::size_t cans = 0;
    std::vector<TestedCans> tested;                  ///< one for each test
    std::optional<units::LowQuarterDu> low, high;    ///< planning range, when assumed
};

/// The choices for one area: one per day of testing, by date, or a single planning value where
/// there is no test. The multiplier is the low-half form 1 / DU_LH from the cans; where half the
/// cans stayed dry, so that it does not exist, the linear form. Without a test: the linear form at
/// the planning value of the head type (schemas/reference/head_types.csv), flagged.
/// Several tests on one day are parts of one audit: their multipliers are averaged.
/// @param tests  of all areas; those of others are passed over
/// @throws InputError for a catch test that cannot be used
/// Tests: tests/budget/season_test.cpp
std::vector<UniformityChoice> uniformity_choices(const site::Area& area,
                                                 std::span<const audit::CatchTest> tests,
                                                 audit::QuarterRule rule);

/// Which of the choices stands for a month: the last test up to the month's end, else the first
/// one after it.
std::size_t choice_for(std::span<const UniformityChoice> choices, calendar::Month month);

}  // namespace evenfall::budget
