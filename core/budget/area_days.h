// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/weather_sums.h"
#include "core/calendar/date.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <span>
#include <vector>

/// One area's ET and rain day by day, for the daily balances.
/// Tests: tests/budget/area_days_test.cpp
namespace evenfall::budget {

struct AreaDays {
    calendar::Date first;
    std::vector<units::Depth> crop_et;
    std::vector<units::Depth> rain;
};

/// ETc = ETo x K of the month. Gaps are filled as in sum_weather, so that the days of a month add
/// up to its sums; where a month has no sum its missing days count as 0, and no figure of that
/// month may be used.
/// @param coefficients  of the months from `from` on, which covers the record
AreaDays area_days(const DailyWeather& weather, calendar::Month from,
                   std::span<const units::LandscapeCoefficient> coefficients);

/// Effective rain of each day when the turf is kept watered: rain less what drains because the soil
/// is full.
///
///     D <- D - rain; drained = max(0, -D); D <- max(0, D); effective = rain - drained
///     D <- D + ETc;  when D > p TAW the soil is refilled: D <- 0
///
///   D depletion below field capacity; TAW available water; p share of it that is used freely.
/// Water falls early in the day (FAO-56 example 38). Starts half way down the readily available
/// water. Source: FAO-56 chapter 8, Eq. 85 to 88, with refill at Eq. 83.
std::vector<units::Depth> effective_rain_by_balance(const AreaDays& days, units::Depth available,
                                                    double p);

}  // namespace evenfall::budget
