// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/weather_checks.h"

#include "core/units/number.h"
#include "core/weather/sun.h"
#include "core/weather/weather_findings.h"

#include <algorithm>
#include <optional>

namespace evenfall::weather {
namespace {

using units::format_fixed;

void check_temperatures(const WeatherDay& d, Findings& out) {
    const auto one = [&](const std::optional<units::Temperature>& t, Phrase name) {
        if (!t) return;
        const double c = t->in_celsius();
        if (c < limits().temperature_low.value) {
            out.add("temperature_impossible", limits().temperature_low, d.date,
                    {phrase("weather", "%1 of %2 C is below any record."), name, format_fixed(c, 1)});
        } else if (!(c <= limits().temperature_high.value)) {
            out.add("temperature_impossible", limits().temperature_high, d.date,
                    {phrase("weather", "%1 of %2 C is above any record: it may be in Fahrenheit."), name,
                     format_fixed(c, 1)});
        }
    };
    one(d.tmax, phrase("weather", "A highest temperature"));
    one(d.tmin, phrase("weather", "A lowest temperature"));
    one(d.tmean, phrase("weather", "A mean temperature"));
    one(d.tdew, phrase("weather", "A dew point"));
    if (d.tmin && d.tmin->in_celsius() > limits().warm_minimum.value) {
        out.add(
            "night_too_warm", limits().warm_minimum, d.date,
            {phrase("weather", "A lowest temperature of %1 C is far above usual nights: it may be in Fahrenheit."),
             format_fixed(d.tmin->in_celsius(), 1)});
    }
    if (!d.tmax || !d.tmin) return;
    const double tmax = d.tmax->in_celsius();
    const double tmin = d.tmin->in_celsius();
    if (tmin > tmax) {
        out.add("minimum_above_maximum", Severity::impossible, by_definition, d.date, d.date,
                {phrase("weather", "The lowest temperature, %1 C, is above the highest, %2 C."),
                 format_fixed(tmin, 1), format_fixed(tmax, 1)});
        return;
    }
    if (tmax - tmin > limits().range_high.value) {
        out.add("range_too_wide", limits().range_high, d.date,
                {phrase("weather", "The temperatures of the day lie %1 C apart."), format_fixed(tmax - tmin, 1)});
    }
    if (d.tmean && (d.tmean->in_celsius() > tmax || d.tmean->in_celsius() < tmin)) {
        out.add("mean_outside_extremes", Severity::suspect, by_definition, d.date, d.date,
                phrase("weather", "The mean temperature lies outside the lowest and the highest."));
    }
    if (d.tdew && d.tdew->in_celsius() > tmax) {
        out.add("dew_point_above_maximum", Severity::impossible, by_definition, d.date, d.date,
                {phrase("weather", "The dew point, %1 C, is above the highest temperature, %2 C."),
                 format_fixed(d.tdew->in_celsius(), 1), format_fixed(tmax, 1)});
    } else if (d.tdew && d.tdew->in_celsius() > tmin + limits().dew_above_minimum.value) {
        out.add("dew_point_above_minimum", limits().dew_above_minimum, d.date,
                {phrase("weather", "The dew point, %1 C, is well above the lowest temperature, %2 C."),
                 format_fixed(d.tdew->in_celsius(), 1), format_fixed(tmin, 1)});
    }
}

void check_humidity(const WeatherDay& d, Findings& out) {
    const auto one = [&](std::optional<double> rh, Phrase name) {
        if (!rh) return;
        const std::string percent = format_fixed(*rh, 1);
        const Sentence cannot_be{phrase("weather", "%1 of %2 % cannot be."), name, percent};
        if (!(*rh > 0.0)) {
            out.add("humidity_impossible", Severity::impossible, by_definition, d.date, d.date, cannot_be);
        } else if (*rh > limits().humidity_sensor_excess.value) {
            out.add("humidity_impossible", limits().humidity_sensor_excess, d.date, cannot_be);
        } else if (*rh > limits().humidity_excess.value) {
            out.add("humidity_above_100", limits().humidity_excess, d.date,
                    {phrase("weather", "%1 of %2 % counts as 100 %: the sensor reads high."), name, percent});
        }
    };
    one(d.rhmax_percent, phrase("weather", "A highest humidity"));
    one(d.rhmin_percent, phrase("weather", "A lowest humidity"));
    one(d.rhmean_percent, phrase("weather", "A mean humidity"));
    if (d.rhmax_percent && d.rhmin_percent && *d.rhmin_percent > *d.rhmax_percent) {
        out.add("humidity_swapped", Severity::impossible, by_definition, d.date, d.date,
                phrase("weather", "The lowest humidity is above the highest."));
    }
    if (d.rhmin_percent && *d.rhmin_percent > 0.0 &&
        *d.rhmin_percent < limits().rhmin_low.value) {
        out.add("humidity_very_low", limits().rhmin_low, d.date,
                {phrase("weather", "A lowest humidity of %1 % is rare even in arid places."),
                 format_fixed(*d.rhmin_percent, 1)});
    }
    if (d.rhmean_percent && *d.rhmean_percent > 0.0 &&
        *d.rhmean_percent < limits().rhmean_low.value) {
        out.add("humidity_mean_low", limits().rhmean_low, d.date,
                {phrase("weather", "A mean humidity of %1 % is low for irrigated ground."),
                 format_fixed(*d.rhmean_percent, 1)});
    }
}

void check_radiation(const WeatherDay& d, const StationSetting& s, Findings& out) {
    const int j = calendar::day_of_year(d.date);
    const double ra = extraterrestrial(s.latitude, j);
    if (d.sunshine) {
        const double n = d.sunshine->in(units::hour);
        const double possible = daylight_hours(s.latitude, j);
        if (n < 0.0 || n > possible + 0.25) {
            out.add("sunshine_impossible", Severity::impossible, by_definition, d.date, d.date,
                    {phrase("weather", "Sunshine of %1 h on a day of %2 h."), format_fixed(n, 1),
                     format_fixed(possible, 1)});
        }
    }
    if (!d.solar) return;
    const double rs = d.solar->in(units::megajoule_per_m2);
    const std::string text = format_fixed(rs, 1);
    if (rs < 0.0) {
        out.add("radiation_impossible", Severity::impossible, by_definition, d.date, d.date,
                {phrase("weather", "Radiation of %1 MJ/m2 is below zero."), text});
    } else if (rs > ra) {
        out.add("radiation_impossible", Severity::impossible, by_definition, d.date, d.date,
                {phrase("weather",
                        "Radiation of %1 MJ/m2 is more than arrives outside the atmosphere, %2: look at its unit and "
                        "at the latitude."),
                 text, format_fixed(ra, 1)});
    } else if (ra > 0.0) {
        const double rso = s.angstrom_a ? clear_sky_calibrated(ra, *s.angstrom_a, *s.angstrom_b)
                                        : clear_sky(ra, s.elevation.in(units::metre));
        if (rs > limits().solar_clear_excess.value * rso) {
            out.add(
                "radiation_above_clear_sky", limits().solar_clear_excess, d.date,
                {phrase("weather", "Radiation of %1 MJ/m2 is above a clear sky, %2."), text, format_fixed(rso, 1)});
        } else if (rs < limits().solar_low.value * ra) {
            out.add(
                "radiation_very_low", limits().solar_low, d.date,
                {phrase("weather", "Radiation of %1 MJ/m2 is less than the darkest overcast lets through."), text});
        }
    }
}

void check_wind_rain_et(const WeatherDay& d, Findings& out) {
    if (d.wind) {
        const double u = d.wind->in(units::metre_per_second);
        const std::string text = format_fixed(u, 1);
        if (!(u >= 0.0)) {
            out.add("wind_impossible", Severity::impossible, by_definition, d.date, d.date,
                    {phrase("weather", "A mean wind of %1 m/s is below zero."), text});
        } else if (u > limits().wind_impossible.value) {
            out.add("wind_impossible", limits().wind_impossible, d.date,
                    {phrase("weather", "A mean wind of %1 m/s is above any record."), text});
        } else if (u > limits().wind_high.value) {
            out.add("wind_very_high", limits().wind_high, d.date,
                    {phrase("weather", "A mean wind of %1 m/s is a storm all day."), text});
        }
    }
    if (d.rain) {
        const double p = d.rain->in(units::millimetre);
        const std::string text = format_fixed(p, 1);
        if (!(p >= 0.0)) {
            out.add("rain_impossible", Severity::impossible, by_definition, d.date, d.date,
                    {phrase("weather", "Rain of %1 mm is below zero."), text});
        } else if (p > limits().rain_impossible.value) {
            out.add("rain_impossible", limits().rain_impossible, d.date,
                    {phrase("weather", "Rain of %1 mm is above any record."), text});
        } else if (p > limits().rain_high.value) {
            out.add("rain_very_high", limits().rain_high, d.date,
                    {phrase("weather", "Rain of %1 mm in a day is rare: look at its unit."), text});
        }
    }
    if (d.reference_et) {
        const double et = d.reference_et->in(units::millimetre);
        if (!(et >= 0.0 && et <= limits().recorded_et_high.value)) {
            out.add("recorded_et_impossible", limits().recorded_et_high, d.date,
                    {phrase("weather", "A recorded ETo of %1 mm: look at its unit."), format_fixed(et, 1)});
        }
    }
}

}  // namespace

std::vector<WeatherFinding> check_weather(std::span<const WeatherDay> record,
                                          const StationSetting& setting) {
    check_setting(setting);
    std::vector<WeatherDay> all(record.begin(), record.end());
    std::stable_sort(all.begin(), all.end(),
                     [](const auto& a, const auto& b) { return a.date < b.date; });
    Findings out;
    for (const WeatherDay& d : all) {
        check_temperatures(d, out);
        check_humidity(d, out);
        check_radiation(d, setting, out);
        check_wind_rain_et(d, out);
    }
    check_runs(all, setting, out);
    return std::move(out).sorted();
}

}  // namespace evenfall::weather
