// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/reference_et.h"

#include "core/input_error.h"
#include "core/units/number.h"
#include "core/weather/limits.h"
#include "core/weather/sun.h"

#include <algorithm>
#include <cmath>

namespace evenfall::weather {
namespace {

struct Defaults {
    double albedo = reference_et_default("albedo");
    double angstrom_a = reference_et_default("angstrom_a");
    double angstrom_b = reference_et_default("angstrom_b");
    double range_interior = reference_et_default("range_interior");
    double range_coastal = reference_et_default("range_coastal");
    double missing_wind = reference_et_default("missing_wind");
    double least_wind = reference_et_default("least_wind");
    double temperature_low = weather_limit("temperature_low");
    double temperature_high = weather_limit("temperature_high");
    double humidity_high = weather_limit("humidity_sensor_excess");
    double wind_high = weather_limit("wind_impossible");
    double recorded_high = weather_limit("recorded_et_high");
};

const Defaults& defaults() {
    static const Defaults values;
    return values;
}

constexpr Phrase asce_source = citation(
    "ASCE-EWRI (2005) The ASCE standardized reference "
    "evapotranspiration equation");
constexpr Phrase fao_source = phrase("weather", "FAO Irrigation and Drainage Paper 56 (1998), Eq. 6");
constexpr Phrase range_source =
    phrase("weather", "Hargreaves & Samani (1985) Applied Engineering in Agriculture 1(2):96-99; FAO-56 Eq. 52");

using Flags = std::vector<std::string>;

/// A day's figures in the paper's units, complete.
struct Complete {
    double tmax, tmin, vapour, solar, wind_two_metres, extraterrestrial, clear_sky;
};

/// A relative humidity fit for use: nothing when it was not recorded or cannot be true.
std::optional<double> humidity(std::optional<double> percent, const char* name, Flags& flags) {
    if (!percent) return std::nullopt;
    if (!(*percent > 0.0) || *percent > defaults().humidity_high) {
        flags.push_back(std::string(name) + " not possible, not used");
        return std::nullopt;
    }
    if (*percent > 100.0) {
        flags.push_back(std::string(name) + " above 100 %, taken as 100 %");
        return 100.0;
    }
    return percent;
}

double vapour_of(const WeatherDay& day, double tmax, double tmin, const StationSetting& s,
                 Flags& flags) {
    if (day.vapour_pressure) {
        const double ea = day.vapour_pressure->in(units::kilopascal);
        if (ea > 0.0 && ea <= saturation_pressure(tmax)) return ea;
        flags.emplace_back("vapour pressure not possible, not used");
    }
    if (day.tdew) {
        const double dew = day.tdew->in_celsius();
        if (dew >= defaults().temperature_low && dew <= tmax) return saturation_pressure(dew);
        flags.emplace_back("dew point not possible, not used");
    }
    auto rhmax = humidity(day.rhmax_percent, "highest humidity", flags);
    auto rhmin = humidity(day.rhmin_percent, "lowest humidity", flags);
    if (rhmax && rhmin && *rhmin > *rhmax) {
        flags.emplace_back("lowest humidity above the highest, neither used");
        rhmax = rhmin = std::nullopt;
    }
    if (rhmax && rhmin) return vapour_from_both_humidities(tmax, tmin, *rhmax, *rhmin);
    if (rhmax) {
        flags.emplace_back("vapour pressure from the highest humidity alone (FAO-56 Eq. 18)");
        return vapour_from_highest_humidity(tmin, *rhmax);
    }
    if (rhmin) {
        flags.emplace_back("vapour pressure from the lowest humidity alone (ASCE-EWRI 2005)");
        return vapour_from_lowest_humidity(tmax, *rhmin);
    }
    if (const auto mean = humidity(day.rhmean_percent, "mean humidity", flags)) {
        flags.emplace_back("vapour pressure from the mean humidity alone (FAO-56 Eq. 19)");
        return vapour_from_mean_humidity(tmax, tmin, *mean);
    }
    flags.push_back("humidity missing: dew point assumed " +
                    (s.dew_point_offset == 0.0
                         ? std::string("at the minimum temperature")
                         : units::format_shortest(s.dew_point_offset) + " C below the minimum") +
                    " (FAO-56 Eq. 48)");
    return saturation_pressure(tmin - s.dew_point_offset);
}

double solar_of(const WeatherDay& day, double tmax, double tmin, double ra, double rso,
                const StationSetting& s, Flags& flags) {
    const Defaults& d = defaults();
    if (day.solar) {
        const double rs = day.solar->in(units::megajoule_per_m2);
        if (rs >= 0.0 && rs <= ra) return rs;
        flags.emplace_back("radiation not possible, not used");
    }
    if (day.sunshine) {
        const double n = day.sunshine->in(units::hour);
        const double possible = daylight_hours(s.latitude, calendar::day_of_year(day.date));
        // A recorder may count a little twilight; more than a quarter of an hour is an error.
        if (n >= 0.0 && n <= possible + 0.25) {
            flags.emplace_back("radiation from sunshine hours (FAO-56 Eq. 35)");
            return solar_from_sunshine(std::min(n, possible), possible, ra,
                                       s.angstrom_a.value_or(d.angstrom_a),
                                       s.angstrom_b.value_or(d.angstrom_b));
        }
        flags.emplace_back("sunshine hours not possible, not used");
    }
    const bool coastal = s.siting == Siting::coastal;
    flags.push_back(std::string("radiation missing: from the temperature range, ") +
                    (s.siting ? (coastal ? "coast" : "interior") : "interior assumed") +
                    " (FAO-56 Eq. 50)");
    return solar_from_range(tmax, tmin, ra, rso, coastal ? d.range_coastal : d.range_interior);
}

/// Daily ET [mm] with G = 0.
double combined(const Complete& w, const StationSetting& s) {
    const double tmean = 0.5 * (w.tmax + w.tmin);
    const double cloud = cloud_factor(w.solar / w.clear_sky, s.equation);
    const double shortwave = (1.0 - s.albedo.value_or(defaults().albedo)) * w.solar;
    const double longwave = longwave_of_day(w.tmax, w.tmin, w.vapour, cloud, s.equation);
    const CombinationTerms terms{
        .slope = saturation_slope(tmean, s.equation),
        .psychrometric = psychrometric_constant(pressure_at(s.elevation.in(units::metre))),
        .net_radiation = shortwave - longwave,
        .soil_heat = 0.0,
        .celsius = tmean,
        .wind_two_metres = w.wind_two_metres,
        .saturation = mean_saturation_pressure(w.tmax, w.tmin),
        .vapour = w.vapour};
    return combination_et(terms, surface_constants(s.equation, s.surface, Step::day));
}

/// Uses the station's own figure where there is one.
bool take_recorded(const WeatherDay& day, const StationSetting& s, ReferenceEt& result) {
    if (!day.reference_et || s.ignore_recorded) return false;
    const double mm = day.reference_et->in(units::millimetre);
    if (s.surface == Surface::tall_alfalfa) {
        result.flags.emplace_back("the station's ETo is for the short surface, not used");
        return false;
    }
    if (!(mm >= 0.0) || mm > defaults().recorded_high) {
        result.flags.emplace_back("the station's ETo is not possible, not used");
        return false;
    }
    result.et = day.reference_et;
    result.method = phrase("weather", "ETo as recorded by the station");
    result.source = phrase("weather", "the weather record");
    return true;
}

/// Tmax and Tmin, or why they cannot be used.
std::optional<std::pair<double, double>> temperatures(const WeatherDay& day, Flags& flags) {
    if (!day.tmax || !day.tmin) {
        flags.emplace_back("not computed: highest or lowest temperature missing");
        return std::nullopt;
    }
    const double tmax = day.tmax->in_celsius();
    const double tmin = day.tmin->in_celsius();
    if (!(tmin >= defaults().temperature_low) || !(tmax <= defaults().temperature_high)) {
        flags.emplace_back("not computed: temperature beyond any record; is it in Fahrenheit?");
        return std::nullopt;
    }
    if (!(tmin <= tmax)) {
        flags.emplace_back("not computed: lowest temperature above the highest");
        return std::nullopt;
    }
    return std::pair{tmax, tmin};
}

bool only_temperatures(const WeatherDay& d) {
    return !d.tdew && !d.vapour_pressure && !d.rhmax_percent && !d.rhmin_percent &&
           !d.rhmean_percent && !d.solar && !d.sunshine && !d.wind;
}

void set_et(ReferenceEt& result, double mm) {
    result.et = mm * units::millimetre;
    if (mm < 0.0) result.flags.emplace_back("below zero: dew or frost rather than evaporation");
}

}  // namespace

double wind_at_two_metres(std::optional<units::Speed> recorded, const StationSetting& s, Flags& flags) {
    const Defaults& d = defaults();
    double u2 = d.missing_wind;
    const double uz = recorded ? recorded->in(units::metre_per_second) : -1.0;
    if (recorded && uz >= 0.0 && uz <= d.wind_high) {
        u2 = uz * wind_share_at_two_metres(s.wind_height.in(units::metre));
    } else {
        if (recorded) flags.emplace_back("wind not possible, not used");
        flags.push_back("wind missing: " + units::format_shortest(u2) +
                        " m/s assumed (FAO-56 chapter 3)");
    }
    if (s.equation == Equation::fao_56 && u2 < d.least_wind) {
        flags.push_back("wind raised to " + units::format_shortest(d.least_wind) +
                        " m/s (FAO-56 chapter 3)");
        u2 = d.least_wind;
    }
    return u2;
}

Phrase method_name(Equation equation, Surface surface, MethodStep step) {
    const bool daily = step == MethodStep::daily;
    if (equation == Equation::fao_56) {
        return daily ? phrase("weather", "FAO-56 Penman-Monteith daily")
                     : phrase("weather", "FAO-56 Penman-Monteith hourly");
    }
    if (surface == Surface::short_grass) {
        return daily ? phrase("weather", "ASCE-EWRI 2005 daily, short surface")
                     : phrase("weather", "ASCE-EWRI 2005 hourly, short surface");
    }
    return daily ? phrase("weather", "ASCE-EWRI 2005 daily, tall surface")
                 : phrase("weather", "ASCE-EWRI 2005 hourly, tall surface");
}

void check_setting(const StationSetting& s) {
    const auto number = [](double v) { return units::format_shortest(v); };
    if (!(s.latitude >= -90.0 && s.latitude <= 90.0)) {
        throw InputError(number(s.latitude), phrase("weather", "a latitude from -90 to 90 degrees"));
    }
    const double z = s.elevation.in(units::metre);
    if (!(z >= -450.0 && z <= 9000.0)) {
        throw InputError(number(z) + " m", phrase("weather", "an elevation from -450 to 9000 m"));
    }
    const double height = s.wind_height.in(units::metre);
    if (!(height >= 0.5 && height <= 100.0)) {
        throw InputError(number(height) + " m", phrase("weather", "an anemometer 0.5 to 100 m above grass"));
    }
    if (s.angstrom_a.has_value() != s.angstrom_b.has_value()) {
        throw InputError(phrase("weather", "one Angstrom coefficient"),
                         phrase("weather", "both a and b, or neither"));
    }
    if (s.angstrom_a && !(*s.angstrom_a >= 0.0 && *s.angstrom_b >= 0.0 &&
                          *s.angstrom_a + *s.angstrom_b > 0.0 &&
                          *s.angstrom_a + *s.angstrom_b <= 1.0)) {
        throw InputError({phrase("weather", "Angstrom a %1, b %2"), number(*s.angstrom_a), number(*s.angstrom_b)},
                         phrase("weather", "two coefficients not below 0 whose sum is above 0 and at most 1"));
    }
    if (s.albedo && !(*s.albedo >= 0.0 && *s.albedo < 1.0)) {
        throw InputError(number(*s.albedo), phrase("weather", "an albedo from 0 to below 1"));
    }
    if (!(s.dew_point_offset >= 0.0 && s.dew_point_offset <= 10.0)) {
        throw InputError(number(s.dew_point_offset), phrase("weather", "a dew point 0 to 10 C below the minimum"));
    }
    static_cast<void>(surface_constants(s.equation, s.surface, Step::day));
}

ReferenceEt reference_et(const WeatherDay& day, const StationSetting& s) {
    check_setting(s);
    ReferenceEt result{day.date, std::nullopt, no_method, {}, {}};
    if (take_recorded(day, s, result)) return result;

    const auto extremes = temperatures(day, result.flags);
    if (!extremes) return result;
    const auto [tmax, tmin] = *extremes;
    const double ra = extraterrestrial(s.latitude, calendar::day_of_year(day.date));
    if (!(ra > 0.0)) {
        result.flags.emplace_back("not computed: the sun stays below the horizon");
        return result;
    }
    if (only_temperatures(day) && s.surface == Surface::short_grass) {
        result.method = citation("Hargreaves-Samani 1985");
        result.source = range_source;
        result.flags.emplace_back("temperatures only: Hargreaves-Samani in place of the full method");
        set_et(result, hargreaves_samani(tmax, tmin, ra));
        return result;
    }
    const double rso = s.angstrom_a ? clear_sky_calibrated(ra, *s.angstrom_a, *s.angstrom_b)
                                    : clear_sky(ra, s.elevation.in(units::metre));
    const double vapour = vapour_of(day, tmax, tmin, s, result.flags);
    const double solar = solar_of(day, tmax, tmin, ra, rso, s, result.flags);
    const double wind = wind_at_two_metres(day.wind, s, result.flags);
    result.method = method_name(s.equation, s.surface, MethodStep::daily);
    result.source = s.equation == Equation::fao_56 ? fao_source : asce_source;
    set_et(result, combined({tmax, tmin, vapour, solar, wind, ra, rso}, s));
    return result;
}

}  // namespace evenfall::weather
