// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/typed_day.h"

#include "core/input_error.h"

namespace evenfall::weather {
namespace {

template <class Q>
std::optional<Q> measured(const std::optional<double>& value, const std::string& unit) {
    if (!value) return std::nullopt;
    return *value * units::unit_named<Q>(unit).unit;
}

std::optional<units::Temperature> degrees(const std::optional<double>& value,
                                          const std::string& unit) {
    if (!value) return std::nullopt;
    if (unit == "c") return units::Temperature::celsius(*value);
    if (unit == "f") return units::Temperature::fahrenheit(*value);
    throw InputError(unit, "a temperature in c or f");
}

}  // namespace

WeatherDay converted(const TypedDay& d, const DayUnits& u) {
    WeatherDay day;
    day.date = d.date;
    day.tmax = degrees(d.tmax, u.temperature);
    day.tmin = degrees(d.tmin, u.temperature);
    day.tmean = degrees(d.tmean, u.temperature);
    day.tdew = degrees(d.tdew, u.temperature);
    day.rhmax_percent = d.rhmax;
    day.rhmin_percent = d.rhmin;
    day.rhmean_percent = d.rhmean;
    if (d.ea_kpa) day.vapour_pressure = *d.ea_kpa * units::kilopascal;
    day.solar = measured<units::Insolation>(d.solar, u.radiation);
    if (d.sunshine_h) day.sunshine = *d.sunshine_h * units::hour;
    day.wind = measured<units::Speed>(d.wind, u.wind);
    day.rain = measured<units::Depth>(d.rain, u.rain);
    day.reference_et = measured<units::Depth>(d.reference_et, u.reference_et);
    return day;
}

}  // namespace evenfall::weather
