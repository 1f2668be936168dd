// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/measure.h"
#include "core/weather/weather_day.h"

#include <array>
#include <optional>
#include <string>

/// A weather day as it was typed, in the units of its table, and its conversion for computing.
/// The book keeps the typed values; nothing is computed from them but through `converted`.
/// Tests: tests/exchange/plain_files_test.cpp, tests/store/weather_test.cpp
namespace evenfall::weather {

/// Units of a table's columns; empty where the table has no such column.
struct DayUnits {
    std::string temperature;   ///< "c" or "f"
    std::string radiation;     ///< "mj_m2", "w_m2" (mean over the day) or "langley"
    std::string wind;          ///< "m_s", "mph" or "km_d"
    std::string rain;          ///< "mm" or "in"
    std::string reference_et;  ///< "mm" or "in"
    bool operator==(const DayUnits&) const = default;
};

struct TypedDay {
    calendar::Date date;
    std::optional<double> tmax, tmin, tmean, tdew;
    std::optional<double> rhmax, rhmin, rhmean;  ///< percent
    std::optional<double> ea_kpa;
    std::optional<double> solar, sunshine_h, wind, rain, reference_et;
    bool operator==(const TypedDay&) const = default;
};

/// @throws InputError for a value whose unit is empty or unknown
WeatherDay converted(const TypedDay& day, const DayUnits& units);

/// A station as its owner describes it.
struct WeatherStation {
    std::string code;
    std::optional<double> latitude;   ///< degrees north
    std::optional<double> longitude;  ///< degrees east
    std::optional<units::Typed<units::Length>> elevation;
    std::optional<units::Typed<units::Length>> wind_height;  ///< of the anemometer
};

}  // namespace evenfall::weather
