// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

namespace evenfall::schedule {

/// A run cut into cycles so that water does not run off.
struct CycleSoak {
    int cycles = 1;
    units::Duration cycle;  ///< each of them
    units::Duration soak;   ///< pause between two, at least; zero with one cycle
};

/// Longest time a station may run before water leaves the ground it fell on.
///
///     t_max = A / (PR - IR) where PR > IR, else without limit
///       A   water that may stand on the ground, by texture and slope (core/budget/soil.h)
///       PR  application rate          IR  intake rate of the soil
///     cycles = ceil(run / t_max), equal; soak >= A / IR, the time for what stands to enter
///
/// A limit in a table is no promise: watch the ground and cut the cycle when water begins to run.
/// @throws InputError for a negative run, or a rate, an intake or an accumulation not above zero
/// Source: trade formula (DEVELOPERS.md, Sources), from memory; the same balance is developed by
///   Hung & Krinik 1995 on maximum sprinkler run time.
/// Tests: tests/schedule/cycle_soak_test.cpp
CycleSoak cycle_and_soak(units::Duration run, units::Rate application, units::Rate intake,
                         units::Depth accumulation);

}  // namespace evenfall::schedule
