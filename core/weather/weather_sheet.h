// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/weather/weather_day.h"

#include <optional>
#include <string>

/// A row of a weather table as it was typed, and its conversion for computing.
/// Tests: tests/exchange/import_test.cpp
namespace evenfall::weather {

/// Units of a table's columns, by the names that headers use; empty where there is no such column.
struct SheetUnits {
    std::string temperature;   ///< "c" or "f"
    std::string radiation;     ///< "mj_m2", "w_m2" (mean over the day) or "langley"
    std::string wind;          ///< "m_s", "mph" or "km_d"
    std::string rain;          ///< "mm" or "in"
    std::string reference_et;  ///< "mm" or "in"
    bool operator==(const SheetUnits&) const = default;
};

struct SheetRow {
    calendar::Date date;
    std::optional<double> tmax, tmin, tmean, tdew;
    std::optional<double> rhmax, rhmin, rhmean;  ///< percent
    std::optional<double> ea_kpa;
    std::optional<double> solar;
    std::optional<double> sunshine_h;
    std::optional<double> wind;
    std::optional<double> rain;
    std::optional<double> reference_et;
    bool operator==(const SheetRow&) const = default;
};

/// @throws InputError for a unit name that is not in the lists above
WeatherDay converted(const SheetRow& row, const SheetUnits& units);

}  // namespace evenfall::weather
