// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/units/quantity.h"
#include "core/units/temperature.h"

#include <optional>

/// One day of a weather record, converted for computing; what was typed is kept in the book.
/// An empty optional is a gap in the record. Zero rain is a reading.
namespace evenfall::weather {

struct WeatherDay {
    calendar::Date date;
    std::optional<units::Temperature> tmax = {};
    std::optional<units::Temperature> tmin = {};
    std::optional<units::Temperature> tmean = {};
    std::optional<units::Temperature> tdew = {};
    std::optional<double> rhmax_percent = {};
    std::optional<double> rhmin_percent = {};
    std::optional<double> rhmean_percent = {};
    std::optional<units::Pressure> vapour_pressure = {};
    std::optional<units::Insolation> solar = {};      ///< incoming shortwave over the day
    std::optional<units::Duration> sunshine = {};
    std::optional<units::Speed> wind = {};            ///< mean over the day at the anemometer's height
    std::optional<units::Depth> rain = {};
    std::optional<units::Depth> reference_et = {};    ///< as measured or published by the station
};

}  // namespace evenfall::weather
