// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/sprinkler.h"
#include "core/units/quantity.h"

#include <string>
#include <vector>

/// Matched precipitation: do the heads that run together apply at one rate?
///
/// The rate of a head is its flow over its own sector, q / ((a / 360) pi R^2). A station matches when
/// its highest rate is no more than (1 + spread) times its lowest. Where it does not, the heads are
/// parted by rate into the fewest groups that each match; each group belongs on a station of its own.
/// Run-time ratio: lowest group rate over this group's rate, so that all apply the same depth.
/// Source: conservation of volume; the part-circle rule seen in teaching slides "Sprinkler
/// Precipitation Rates". Limit: schemas/reference/plan_limits.csv. Tests: tests/plan/layout_test.cpp
namespace evenfall::plan {

/// Heads of one station with one arc.
struct ArcGroup {
    double arc = 0.0;                ///< degrees
    std::size_t heads = 0;
    units::Rate mean, lowest, highest;
};

/// Heads of one station whose rates match.
struct RateGroup {
    std::vector<std::string> heads;  ///< ids, in plan order
    units::Rate mean;
    double run_time_ratio = 1.0;     ///< 1 for the group that runs longest
};

struct StationRates {
    std::string station;             ///< empty for heads without one
    units::Flow flow;                ///< of all its heads
    std::vector<ArcGroup> arcs;      ///< by arc, small first
    std::vector<RateGroup> groups;   ///< by rate, low first; one when the station matches
    bool matched = true;
    double spread = 0.0;             ///< highest over lowest rate, less 1
};

/// @param spread  share of the lowest rate up to which rates match
std::vector<StationRates> matched_precipitation(const Plan& plan, double spread);

/// The limit from schemas/reference/plan_limits.csv.
double usual_matched_spread();

/// A row of that file. @throws std::logic_error for a name it does not have
double plan_limit(std::string_view name);

}  // namespace evenfall::plan
