// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

/// Start times of the stations of one day, whole minutes.
///
/// Round by round: in round r every station that still has a cycle runs it, in the order given, on
/// whichever of the `at_once` lines is free first; a station waits until its soak is over. Later
/// stations fill the time in which earlier ones soak.
/// Tests: tests/schedule/base_schedule_test.cpp
namespace evenfall::schedule {

struct DayRunOf {
    std::size_t station = 0;  ///< the caller's index
    int cycles = 1;
    int cycle_minutes = 0;
    int soak_minutes = 0;
};

struct StartTime {
    std::size_t station = 0;
    int cycle = 1;            ///< from 1
    int start = 0;            ///< minutes after the window opens
    int minutes = 0;
};

struct DayPlan {
    std::vector<StartTime> starts;  ///< in order of start
    int length = 0;                 ///< minutes from the opening to the last end
};

/// @throws InputError when `at_once` is below 1
DayPlan plan_day(std::span<const DayRunOf> runs, int at_once);

}  // namespace evenfall::schedule
