// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/root_zone.h"
#include "core/budget/uniformity_choice.h"
#include "core/sentence.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

/// Where the metered water went, by a daily root-zone balance at every can of the catch test: each
/// can is a bucket that gets the day's water times its share of the mean. What drains below the
/// roots is lost.
///
/// Four runs of the same days, all with the same mean depth of irrigation but the last:
///     c  at every can                     t  at cans drawn together to the target uniformity
///     e  spread evenly                    0  rain alone
/// With I irrigation, ET actual ET, D drainage, S stored water, as means over the area,
///     I = (ET_c - ET_0) + (D_c - D_0) + (S_c - S_0)
/// because rain falls alike in both runs. From this, as volumes over the area:
///     used by the turf        ET_c - ET_0
///     over-scheduled          D_e - D_0      drains even when spread evenly
///     uneven, unavoidable     D_t - D_e      (D_c - D_e where the cans are as even as the target)
///     uneven, avoidable       D_c - D_t
///     stored                  S_c - S_0      left in the soil; below zero: taken from it
///     short                   mean of ETc - ET_c, what the dry places lacked; not a part of use
/// Over a month a line can be slightly below zero, when water of the month before drains in one run
/// and not in another; over a season the parts of unevenness are not.
///
/// Cans drawn together: share_t = 1 + (share - 1) (1 - DU_target) / (1 - DU), which has exactly the
/// target DU_LQ. Runoff is not part of it: a meter does not tell in how many runs the water fell.
/// What could have run off at most is a figure of its own, runoff_in_one_run().
/// Days without a metered volume are run with the turf kept watered and are not counted.
/// Source: FAO-56 chapter 8; the split is derived here. Tests: tests/budget/can_account_test.cpp
namespace evenfall::budget {

struct CanAccount {
    units::Volume used_by_turf;
    units::Volume uneven_unavoidable;
    units::Volume uneven_avoidable;
    units::Volume off_target;
    units::Volume leak;
    units::Volume over_scheduled;
    units::Volume stored;
    units::Volume short_of_need;
    double stress_days = 0.0;   ///< mean over the cans

    units::Volume use() const;
    CanAccount& operator+=(const CanAccount& other);
};

struct CanLine {
    std::string_view key;
    Phrase words;
    units::Volume CanAccount::* part;
    bool in_use;
};
const std::array<CanLine, 8>& can_lines();

/// Days in a row that have an account.
struct CanPeriod {
    std::size_t first = 0;      ///< index of its first day
    std::size_t days = 0;
    units::Volume reached;      ///< metered volume less leak and off target
    units::Volume off_target;
    units::Volume leak;
};

struct CanCase {
    RootZone zone;
    units::Area size;
    std::vector<units::Depth> crop_et;
    std::vector<units::Depth> rain;
    /// Metered volume of each day in any unit: within a period only its proportions count.
    std::vector<double> by_day;
    std::vector<CanPeriod> periods;      ///< in order, not overlapping
    units::LowQuarterDu target = units::LowQuarterDu::of(1.0);
};

/// One account per period.
/// @param tests  shares and weights of the cans; several tests weigh the same
/// @throws InputError as RootZoneBalance does, or without cans
std::vector<CanAccount> can_accounts(const CanCase& area, std::span<const TestedCans> tests);

/// Water of the periods that would have run off had each day's water fallen in a single run at the
/// tested rate: the sum over days and cans of max(0, irrigation of the can - most_infiltrated()).
/// An upper bound, since cycles with time to soak keep it in place.
/// @param intake, accumulation  of the ground, see soil.h
/// @return nothing when no test tells its rate; tests with a rate weigh the same
/// @throws InputError as can_accounts
std::optional<units::Volume> runoff_in_one_run(const CanCase& area, std::span<const TestedCans> tests,
                                               units::Rate intake, units::Depth accumulation);

}  // namespace evenfall::budget
