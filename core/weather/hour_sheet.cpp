// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/hour_sheet.h"

namespace evenfall::weather {

WeatherHour converted(const SheetHour& row, const SheetUnits& units) {
    // Temperature, wind, rain and humidity are converted as those of a day are.
    SheetRow day;
    day.tmean = row.temperature;
    day.tdew = row.tdew;
    day.ea_kpa = row.ea_kpa;
    day.wind = row.wind;
    day.rain = row.rain;
    // A mean power is energy only with the length of its period, which is a day's in a daily table.
    const bool power = units.radiation == "w_m2";
    if (!power) day.solar = row.solar;
    const WeatherDay values = converted(day, units);
    WeatherHour hour{};
    hour.start = row.start;
    const auto seconds = static_cast<double>(row.length.count());
    hour.length = seconds * units::second;
    hour.temperature = values.tmean;
    hour.tdew = values.tdew;
    hour.rh_percent = row.rh_percent;
    hour.vapour_pressure = values.vapour_pressure;
    hour.solar = values.solar;
    if (power && row.solar) hour.solar = units::Insolation::from_si(*row.solar * seconds);
    hour.wind = values.wind;
    hour.rain = values.rain;
    return hour;
}

}  // namespace evenfall::weather
