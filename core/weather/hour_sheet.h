// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/weather/hourly_et.h"
#include "core/weather/weather_sheet.h"

#include <chrono>
#include <optional>

/// A row of an hourly weather table as it was typed, and its conversion for computing.
/// Tests: tests/weather/hour_sheet_test.cpp
namespace evenfall::weather {

struct SheetHour {
    calendar::Instant start;
    std::chrono::seconds length{3600};
    std::optional<double> temperature, tdew;
    std::optional<double> rh_percent;
    std::optional<double> ea_kpa;
    std::optional<double> solar;  ///< over the period; in "w_m2" its mean
    std::optional<double> wind;
    std::optional<double> rain;
    bool operator==(const SheetHour&) const = default;
};

/// @throws InputError for a unit name that a weather table cannot have
WeatherHour converted(const SheetHour& row, const SheetUnits& units);

}  // namespace evenfall::weather
