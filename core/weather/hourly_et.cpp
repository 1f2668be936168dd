// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/hourly_et.h"

#include "core/input_error.h"
#include "core/units/number.h"
#include "core/weather/limits.h"
#include "core/weather/sun.h"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace evenfall::weather {
namespace {

struct Defaults {
    double albedo = reference_et_default("albedo");
    double night_clearness = reference_et_default("night_clearness_arid");
    double low_sun = reference_et_default("low_sun");
    double temperature_low = weather_limit("temperature_low");
    double temperature_high = weather_limit("temperature_high");
    double humidity_high = weather_limit("humidity_sensor_excess");
};

const Defaults& defaults() {
    static const Defaults values;
    return values;
}

/// The ratio Rs/Rso that is carried through the night.
struct Clearness {
    double ratio;
    bool assumed;  ///< no good hour seen yet
};

HourPlace place_of(const WeatherHour& hour, const HourlySetting& s) {
    using namespace std::chrono;
    const auto half = seconds{std::lround(0.5 * hour.length.in(units::second))};
    const auto middle = hour.start + half;
    // The day of the year is the local solar one.
    const auto solar = middle + seconds{std::lround(s.longitude * 240.0)};
    const auto utc_day = floor<days>(middle);
    return {.latitude = s.station.latitude,
            .longitude_west = -s.longitude,
            .zone_west = 0.0,
            .day_of_year = calendar::day_of_year(floor<days>(solar)),
            .midpoint_hour = duration<double, hours::period>(middle - utc_day).count(),
            .length_hours = hour.length.in(units::hour)};
}

void check_hours(std::span<const WeatherHour> hours, const HourlySetting& s) {
    check_setting(s.station);
    if (!(s.longitude >= -180.0 && s.longitude <= 180.0)) {
        throw InputError(units::format_shortest(s.longitude),
                         phrase("weather", "a longitude from -180 to 180 degrees"));
    }
    if (s.night_clearness && !(*s.night_clearness >= 0.3 && *s.night_clearness <= 1.0)) {
        throw InputError(units::format_shortest(*s.night_clearness),
                         phrase("weather", "a night clearness from 0.3 to 1"));
    }
    for (std::size_t i = 0; i < hours.size(); ++i) {
        const double length = hours[i].length.in(units::second);
        if (!(length > 0.0 && length <= 3600.0)) {
            throw InputError(units::format_shortest(length) + " s",
                             phrase("weather", "a period above zero and at most an hour"));
        }
        if (i > 0 && hours[i].start <
                         hours[i - 1].start + std::chrono::seconds{std::lround(
                                                  hours[i - 1].length.in(units::second))}) {
            throw InputError(calendar::format_instant(hours[i].start),
                             phrase("weather", "periods in order of time that do not overlap"));
        }
    }
}

std::optional<double> temperature_of(const WeatherHour& hour, std::vector<std::string>& flags) {
    if (!hour.temperature) {
        flags.emplace_back("not computed: temperature missing");
        return std::nullopt;
    }
    const double t = hour.temperature->in_celsius();
    if (!(t >= defaults().temperature_low && t <= defaults().temperature_high)) {
        flags.emplace_back("not computed: temperature beyond any record; is it in Fahrenheit?");
        return std::nullopt;
    }
    return t;
}

std::optional<double> vapour_of(const WeatherHour& hour, double t,
                                std::vector<std::string>& flags) {
    // A sensor in saturated air may read a little high: up to 5 % is taken as saturation.
    const double saturated = saturation_pressure(t);
    const auto accept = [&](double ea) -> std::optional<double> {
        if (ea > 0.0 && ea <= saturated * defaults().humidity_high / 100.0) {
            return std::min(ea, saturated);
        }
        return std::nullopt;
    };
    std::optional<double> ea;
    if (hour.vapour_pressure) {
        ea = accept(hour.vapour_pressure->in(units::kilopascal));
        if (!ea) flags.emplace_back("vapour pressure not possible, not used");
    }
    if (!ea && hour.tdew) {
        ea = accept(saturation_pressure(hour.tdew->in_celsius()));
        if (!ea) flags.emplace_back("dew point not possible, not used");
    }
    if (!ea && hour.rh_percent) {
        ea = accept(saturated * *hour.rh_percent / 100.0);
        if (!ea) flags.emplace_back("humidity not possible, not used");
    }
    if (!ea) flags.emplace_back("not computed: humidity missing");
    return ea;
}

/// Incoming radiation [MJ/m2/h]. In the dark it is zero whatever a drifting sensor says.
std::optional<double> solar_of(const WeatherHour& hour, double ra, std::vector<std::string>& flags) {
    if (!(ra > 0.0)) return 0.0;
    if (!hour.solar) {
        flags.emplace_back("not computed: radiation missing");
        return std::nullopt;
    }
    const double rs = hour.solar->in(units::megajoule_per_m2) / hour.length.in(units::hour);
    // The edge of a cloud or a low sun may send more than the sky's own share for some minutes.
    const double most = std::max(1.1 * ra, ra + 0.2);
    if (!(rs >= 0.0 && rs <= most)) {
        flags.emplace_back("not computed: radiation not possible");
        return std::nullopt;
    }
    return rs;
}

void compute(const WeatherHour& hour, const HourlySetting& setting, Clearness& clearness,
             HourlyEt& out) {
    const StationSetting& s = setting.station;
    const HourPlace place = place_of(hour, setting);
    const double ra = extraterrestrial(place) / place.length_hours;
    const auto solar = solar_of(hour, ra, out.flags);
    const double rso = s.angstrom_a ? clear_sky_calibrated(ra, *s.angstrom_a, *s.angstrom_b)
                                    : clear_sky(ra, s.elevation.in(units::metre));
    // Kept before anything else can make the hour fail, so that the night after is right.
    if (solar && rso > 0.0 && sine_of_height(place) >= std::sin(defaults().low_sun)) {
        clearness = {*solar / rso, false};
    }
    const auto t = temperature_of(hour, out.flags);
    if (!solar || !t) return;
    const auto ea = vapour_of(hour, *t, out.flags);
    if (!ea) return;
    if (clearness.assumed) {
        out.flags.push_back("cloud cover before the first bright hour assumed, Rs/Rso " +
                            units::format_shortest(clearness.ratio));
    }
    const double cloud = cloud_factor(clearness.ratio, s.equation);
    const double rn = (1.0 - s.albedo.value_or(defaults().albedo)) * *solar -
                      longwave_of_hour(*t, *ea, cloud, s.equation);
    const bool daylight = s.equation == Equation::asce_2005 ? rn > 0.0 : ra > 0.0;
    const auto& constants = surface_constants(
        s.equation, s.surface, daylight ? Step::hour_in_daylight : Step::hour_at_night);
    const CombinationTerms terms{
        .slope = saturation_slope(*t, s.equation),
        .psychrometric = psychrometric_constant(pressure_at(s.elevation.in(units::metre))),
        .net_radiation = rn,
        .soil_heat = constants.soil_heat_share * rn,
        .celsius = *t,
        .wind_two_metres = wind_at_two_metres(hour.wind, s, out.flags),
        .saturation = saturation_pressure(*t),
        .vapour = *ea};
    out.et = combination_et(terms, constants) * place.length_hours * units::millimetre;
    out.method = method_name(s.equation, s.surface, MethodStep::hourly);
    out.source = constants.source;
}

}  // namespace

std::vector<HourlyEt> hourly_reference_et(std::span<const WeatherHour> hours,
                                          const HourlySetting& setting) {
    check_hours(hours, setting);
    Clearness clearness{setting.night_clearness.value_or(defaults().night_clearness), true};
    std::vector<HourlyEt> out;
    out.reserve(hours.size());
    for (const WeatherHour& hour : hours) {
        out.push_back({hour.start, hour.length, std::nullopt, no_method, {}, {}});
        compute(hour, setting, clearness, out.back());
    }
    return out;
}

std::vector<ReferenceEt> days_of(std::span<const HourlyEt> hours, const calendar::TimeZone& zone) {
    std::vector<ReferenceEt> out;
    std::size_t i = 0;
    while (i < hours.size()) {
        const auto date = zone.day_of(hours[i].start);
        const auto from = zone.start_of_day(date);
        const auto to = zone.start_of_day(date + std::chrono::days{1});
        ReferenceEt day{date, std::nullopt, no_method, {}, {}};
        units::Depth sum;
        units::Duration covered;
        const Sentence* method = nullptr;
        for (; i < hours.size() && hours[i].start < to; ++i) {
            if (!hours[i].et) continue;
            sum += *hours[i].et;
            covered += hours[i].length;
            method = &hours[i].method;
            day.source = hours[i].source;
            for (const auto& flag : hours[i].flags) {
                if (std::find(day.flags.begin(), day.flags.end(), flag) == day.flags.end()) {
                    day.flags.push_back(flag);
                }
            }
        }
        const double whole = std::chrono::duration<double>(to - from).count();
        if (covered.in(units::second) > whole - 1.0) {
            day.et = sum;
            day.method = {phrase("weather", "%1, summed by day"), *method};
        } else {
            day.flags.push_back("not summed: " +
                                units::format_fixed(covered.in(units::hour), 1) + " of " +
                                units::format_fixed(whole / 3600.0, 0) + " hours have a value");
        }
        out.push_back(std::move(day));
    }
    return out;
}

}  // namespace evenfall::weather
