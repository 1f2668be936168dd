// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

/// Several stations that water one area, each for its own minutes.
///
/// Every can holds the sum over the stations that reach it, so the uniformity of the area is that of
/// the summed catches. When the cans were read after every station, the rate of each can be told and
/// the area can be worked out for other minutes: catch(can) = sum of reading x new minutes / minutes.
/// When they were read once at the end it cannot, and the net rate of the area is left open, because
/// the stations ran one after another. Tests: tests/audit/stations_test.cpp
namespace evenfall::audit {

struct StationFigures {
    std::string station;
    units::Duration run;
    units::Depth mean;                       ///< over all cans that count, dry ones too
    std::size_t wetted = 0;                  ///< cans it left water in
    std::optional<units::Rate> area_rate;    ///< mean over all cans / run
    std::optional<units::Rate> wetted_rate;  ///< mean over the wetted cans / run
};

struct StationSplit {
    std::vector<StationFigures> stations;  ///< in running order; empty with fewer than two stations
    std::string why_not;                   ///< set when the rates cannot be told
};

/// @throws InputError as check()
StationSplit split_stations(const CatchTest& test);

/// The test as it would have read had the stations run for other minutes; a station that is not
/// named keeps its own, zero switches it off.
/// @throws InputError when the cans were not read after every station, for an unknown station or
///   minutes that are negative or not finite
CatchTest with_minutes(const CatchTest& test, const std::map<std::string, double>& minutes);

/// How long water fell: the test's minutes, or those of its only station.
std::optional<units::Duration> run_time(const CatchTest& test);

}  // namespace evenfall::audit
