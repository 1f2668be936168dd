// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/weather_sheet.h"

#include "core/input_error.h"
#include "core/units/measure.h"

namespace evenfall::weather {
namespace {

std::optional<units::Temperature> temperature(std::optional<double> value, const std::string& unit) {
    if (!value) return std::nullopt;
    if (unit == "c") return units::Temperature::celsius(*value);
    if (unit == "f") return units::Temperature::fahrenheit(*value);
    throw InputError(unit, phrase("weather", "a temperature unit, c or f"));
}

template <class Q>
std::optional<Q> quantity(std::optional<double> value, const std::string& unit) {
    if (!value) return std::nullopt;
    return *value * units::unit_named<Q>(unit).unit;
}

}  // namespace

WeatherDay converted(const SheetRow& row, const SheetUnits& sheet) {
    WeatherDay day;
    day.date = row.date;
    day.tmax = temperature(row.tmax, sheet.temperature);
    day.tmin = temperature(row.tmin, sheet.temperature);
    day.tmean = temperature(row.tmean, sheet.temperature);
    day.tdew = temperature(row.tdew, sheet.temperature);
    day.rhmax_percent = row.rhmax;
    day.rhmin_percent = row.rhmin;
    day.rhmean_percent = row.rhmean;
    if (row.ea_kpa) day.vapour_pressure = *row.ea_kpa * units::kilopascal;
    day.solar = quantity<units::Insolation>(row.solar, sheet.radiation);
    if (row.sunshine_h) day.sunshine = *row.sunshine_h * units::hour;
    day.wind = quantity<units::Speed>(row.wind, sheet.wind);
    day.rain = quantity<units::Depth>(row.rain, sheet.rain);
    day.reference_et = quantity<units::Depth>(row.reference_et, sheet.reference_et);
    return day;
}

}  // namespace evenfall::weather
