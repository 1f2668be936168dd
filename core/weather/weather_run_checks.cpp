// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number.h"
#include "core/weather/sun.h"
#include "core/weather/weather_findings.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <optional>

namespace evenfall::weather {
namespace {

using calendar::Date;
using std::chrono::days;
using units::format_fixed;

using Reading = std::optional<double>;

/// Runs of the same reading, where such a run is not natural.
void check_stuck(std::span<const WeatherDay> all, Phrase name, const std::function<Reading(const WeatherDay&)>& of,
                 Findings& out) {
    const Limit& least = limits().stuck_days;
    std::size_t start = 0;
    for (std::size_t i = 1; i <= all.size(); ++i) {
        const Reading first = of(all[start]);
        const bool same = i < all.size() && first && of(all[i]) == first &&
                          all[i].date == all[i - 1].date + days{1};
        if (same) continue;
        const auto run = static_cast<double>(i - start);
        if (first && run >= least.value) {
            out.add(std::string("stuck_").append(name.english()), least.severity, least.source, all[start].date,
                    all[i - 1].date,
                    {phrase("weather", "The same %1 to the last digit, %2, on %3 days in a row."), name,
                     units::format_shortest(std::round(*first * 1e6) / 1e6), format_fixed(run, 0)});
        }
        start = i;
    }
}

void check_all_stuck(std::span<const WeatherDay> all, Findings& out) {
    const auto celsius = [](const std::optional<units::Temperature>& t) {
        return t ? Reading(t->in_celsius()) : std::nullopt;
    };
    check_stuck(
        all, phrase("weather", "tmax"), [&](const WeatherDay& d) { return celsius(d.tmax); }, out);
    check_stuck(
        all, phrase("weather", "tmin"), [&](const WeatherDay& d) { return celsius(d.tmin); }, out);
    check_stuck(
        all, phrase("weather", "tdew"), [&](const WeatherDay& d) { return celsius(d.tdew); }, out);
    // Saturated air holds a sensor at its upper end for days, and dry spells hold rain at zero.
    check_stuck(
        all, phrase("weather", "rhmax"),
        [](const WeatherDay& d) {
            return d.rhmax_percent && *d.rhmax_percent < 99.0 ? d.rhmax_percent : std::nullopt;
        },
        out);
    check_stuck(
        all, phrase("weather", "rhmin"), [](const WeatherDay& d) { return d.rhmin_percent; }, out);
    check_stuck(
        all, phrase("weather", "radiation"),
        [](const WeatherDay& d) { return d.solar ? Reading(d.solar->in(units::megajoule_per_m2)) : std::nullopt; },
        out);
    check_stuck(
        all, phrase("weather", "wind"),
        [](const WeatherDay& d) { return d.wind ? Reading(d.wind->in(units::metre_per_second)) : std::nullopt; },
        out);
    check_stuck(
        all, phrase("weather", "rain"),
        [](const WeatherDay& d) {
            return d.rain && d.rain->si() > 0.0 ? Reading(d.rain->in(units::millimetre)) : std::nullopt;
        },
        out);
}

void check_calm(std::span<const WeatherDay> all, Findings& out) {
    const double low = limits().wind_low.value;
    std::size_t run = 0;
    for (std::size_t i = 0; i <= all.size(); ++i) {
        const bool calm = i < all.size() && all[i].wind && all[i].wind->si() >= 0.0 &&
                          all[i].wind->in(units::metre_per_second) < low &&
                          (run == 0 || all[i].date == all[i - 1].date + days{1});
        if (calm) {
            ++run;
            continue;
        }
        if (static_cast<double>(run) >= limits().wind_low_days.value) {
            out.add("wind_always_low", Severity::suspect, limits().wind_low.source, all[i - run].date,
                    all[i - 1].date,
                    {phrase("weather", "Wind below %1 m/s on %2 days in a row: a worn bearing or an offset?"),
                     format_fixed(low, 1), run});
        }
        run = i < all.size() && all[i].wind && all[i].wind->si() >= 0.0 &&
                      all[i].wind->in(units::metre_per_second) < low
                  ? 1
                  : 0;
    }
}

/// In each block of days some day should be clear: the best must reach the clear-sky line.
void check_envelope(std::span<const WeatherDay> all, const StationSetting& s, Findings& out) {
    const auto block = days{static_cast<int>(limits().envelope_days.value)};
    const Limit& least = limits().solar_clear_envelope;
    std::size_t i = 0;
    while (i < all.size()) {
        const Date from = all[i].date;
        double best = 0.0;
        int seen = 0;
        for (; i < all.size() && all[i].date < from + block; ++i) {
            const double ra = extraterrestrial(s.latitude, calendar::day_of_year(all[i].date));
            if (!all[i].solar || !(ra > 0.0)) continue;
            const double rso = s.angstrom_a
                                   ? clear_sky_calibrated(ra, *s.angstrom_a, *s.angstrom_b)
                                   : clear_sky(ra, s.elevation.in(units::metre));
            best = std::max(best, all[i].solar->in(units::megajoule_per_m2) / rso);
            ++seen;
        }
        if (seen >= block.count() * 3 / 4 && best < least.value) {
            out.add(
                "radiation_reads_low", least.severity, least.source, from, all[i - 1].date,
                {phrase("weather",
                        "In %1 days radiation came to no more than %2 % of a clear sky: the sensor may read low or "
                        "be dirty."),
                 seen, format_fixed(100.0 * best, 0)});
        }
    }
}

/// Figures of the record as a whole that betray a wrong unit or a bad site.
void check_whole(std::span<const WeatherDay> all, Findings& out) {
    if (all.empty()) return;
    double tmax_sum = 0.0, rhmax_best = 0.0;
    int tmax_days = 0, rhmax_days = 0;
    for (const auto& d : all) {
        if (d.tmax) {
            tmax_sum += d.tmax->in_celsius();
            ++tmax_days;
        }
        if (d.rhmax_percent) {
            rhmax_best = std::max(rhmax_best, *d.rhmax_percent);
            ++rhmax_days;
        }
    }
    const double enough = limits().series_days.value;
    if (tmax_days >= enough && tmax_sum / tmax_days > limits().series_mean_high.value) {
        out.add("temperatures_look_like_fahrenheit", Severity::suspect, limits().series_mean_high.source,
                all.front().date, all.back().date,
                {phrase("weather", "The highest temperatures average %1 C: they look like Fahrenheit."),
                 format_fixed(tmax_sum / tmax_days, 1)});
    }
    if (rhmax_days >= enough && rhmax_best < limits().rhmax_low.value) {
        out.add(
            "humidity_never_high", Severity::suspect, limits().rhmax_low.source, all.front().date, all.back().date,
            {phrase("weather",
                    "The highest humidity never passed %1 %: the sensor may read low, or the station stands on dry "
                    "ground."),
             format_fixed(rhmax_best, 0)});
    }
}

void check_sequence(std::span<const WeatherDay> all, Findings& out) {
    for (std::size_t i = 1; i < all.size(); ++i) {
        const Date before = all[i - 1].date;
        const Date day = all[i].date;
        if (day == before) {
            out.add("day_twice", Severity::impossible, by_definition, day, day,
                    {phrase("weather", "The day %1 comes twice."), calendar::format_date(day)});
        } else if (day > before + days{1}) {
            out.add("gap", Severity::suspect, by_definition, before + days{1}, day - days{1},
                    {phrase("weather", "No record from %1 to %2."), calendar::format_date(before + days{1}),
                     calendar::format_date(day - days{1})});
        }
    }
}

}  // namespace

void check_runs(std::span<const WeatherDay> all, const StationSetting& setting, Findings& out) {
    check_sequence(all, out);
    if (all.empty()) return;
    check_all_stuck(all, out);
    check_calm(all, out);
    check_envelope(all, setting, out);
    check_whole(all, out);
}

}  // namespace evenfall::weather
