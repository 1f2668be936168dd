// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/weather_checks.h"

#include "core/reference/table.h"
#include "core/units/number.h"
#include "core/weather/sun.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <functional>
#include <map>
#include <optional>
#include <stdexcept>
#include <tuple>

namespace evenfall::weather {
namespace {

using calendar::Date;
using std::chrono::days;
using units::format_fixed;

struct Limit {
    double value;
    Severity severity;
    std::string_view source;
};

const Limit& limit(std::string_view key) {
    static const auto all = [] {
        std::map<std::string, Limit, std::less<>> limits;
        for (const auto& row : reference::Table::named("weather_limits.csv").rows()) {
            limits.emplace(row.text("key"),
                           Limit{row.number("value"),
                                 row.text("kind") == "impossible" ? Severity::impossible
                                                                  : Severity::suspect,
                                 row.source()});
        }
        return limits;
    }();
    const auto it = all.find(key);
    if (it == all.end()) throw std::logic_error("no weather limit " + std::string(key));
    return it->second;
}

/// Collects findings; days of one kind that follow each other are joined.
class Findings {
  public:
    void add(std::string_view kind, Severity severity, std::string_view source, Date from, Date to,
             std::string sentence) {
        const auto last = latest_.find(kind);
        if (last != latest_.end()) {
            WeatherFinding& f = all_[last->second];
            if (from >= f.from && from <= f.to + days{1}) {
                f.days += static_cast<int>((to - std::max(from, f.to + days{1})).count()) + 1;
                f.to = std::max(f.to, to);
                return;
            }
        }
        latest_.insert_or_assign(std::string(kind), all_.size());
        all_.push_back({std::string(kind), severity, from, to,
                        static_cast<int>((to - from).count()) + 1, std::move(sentence), source});
    }
    void add(std::string_view kind, std::string_view limit_key, Date day, std::string sentence) {
        const Limit& l = limit(limit_key);
        add(kind, l.severity, l.source, day, day, std::move(sentence));
    }
    std::vector<WeatherFinding> sorted() && {
        std::stable_sort(all_.begin(), all_.end(), [](const auto& a, const auto& b) {
            return std::tie(a.from, a.kind) < std::tie(b.from, b.kind);
        });
        return std::move(all_);
    }

  private:
    std::vector<WeatherFinding> all_;
    std::map<std::string, std::size_t, std::less<>> latest_;
};

constexpr std::string_view by_definition = "by definition";

void check_temperatures(const WeatherDay& d, Findings& out) {
    const auto one = [&](const std::optional<units::Temperature>& t, const char* name) {
        if (!t) return;
        const double c = t->in_celsius();
        if (c < limit("temperature_low").value) {
            out.add("temperature_impossible", "temperature_low", d.date,
                    std::string(name) + " of " + format_fixed(c, 1) + " C is below any record.");
        } else if (!(c <= limit("temperature_high").value)) {
            out.add("temperature_impossible", "temperature_high", d.date,
                    std::string(name) + " of " + format_fixed(c, 1) +
                        " C is above any record: it may be in Fahrenheit.");
        }
    };
    one(d.tmax, "A highest temperature");
    one(d.tmin, "A lowest temperature");
    one(d.tmean, "A mean temperature");
    one(d.tdew, "A dew point");
    if (d.tmin && d.tmin->in_celsius() > limit("warm_minimum").value) {
        out.add("night_too_warm", "warm_minimum", d.date,
                "A lowest temperature of " + format_fixed(d.tmin->in_celsius(), 1) +
                    " C is far above usual nights: it may be in Fahrenheit.");
    }
    if (!d.tmax || !d.tmin) return;
    const double tmax = d.tmax->in_celsius();
    const double tmin = d.tmin->in_celsius();
    if (tmin > tmax) {
        out.add("minimum_above_maximum", Severity::impossible, by_definition, d.date, d.date,
                "The lowest temperature, " + format_fixed(tmin, 1) + " C, is above the highest, " +
                    format_fixed(tmax, 1) + " C.");
        return;
    }
    if (tmax - tmin > limit("range_high").value) {
        out.add("range_too_wide", "range_high", d.date,
                "The temperatures of the day lie " + format_fixed(tmax - tmin, 1) + " C apart.");
    }
    if (d.tmean && (d.tmean->in_celsius() > tmax || d.tmean->in_celsius() < tmin)) {
        out.add("mean_outside_extremes", Severity::suspect, by_definition, d.date, d.date,
                "The mean temperature lies outside the lowest and the highest.");
    }
    if (d.tdew && d.tdew->in_celsius() > tmax) {
        out.add("dew_point_above_maximum", Severity::impossible, by_definition, d.date, d.date,
                "The dew point, " + format_fixed(d.tdew->in_celsius(), 1) +
                    " C, is above the highest temperature, " + format_fixed(tmax, 1) + " C.");
    } else if (d.tdew && d.tdew->in_celsius() > tmin + limit("dew_above_minimum").value) {
        out.add("dew_point_above_minimum", "dew_above_minimum", d.date,
                "The dew point, " + format_fixed(d.tdew->in_celsius(), 1) +
                    " C, is well above the lowest temperature, " + format_fixed(tmin, 1) + " C.");
    }
}

void check_humidity(const WeatherDay& d, Findings& out) {
    const auto one = [&](std::optional<double> rh, const char* name) {
        if (!rh) return;
        const std::string text = std::string(name) + " of " + format_fixed(*rh, 1) + " %";
        if (!(*rh > 0.0)) {
            out.add("humidity_impossible", Severity::impossible, by_definition, d.date, d.date,
                    text + " cannot be.");
        } else if (*rh > limit("humidity_sensor_excess").value) {
            out.add("humidity_impossible", "humidity_sensor_excess", d.date,
                    text + " cannot be.");
        } else if (*rh > limit("humidity_excess").value) {
            out.add("humidity_above_100", "humidity_excess", d.date,
                    text + " counts as 100 %: the sensor reads high.");
        }
    };
    one(d.rhmax_percent, "A highest humidity");
    one(d.rhmin_percent, "A lowest humidity");
    one(d.rhmean_percent, "A mean humidity");
    if (d.rhmax_percent && d.rhmin_percent && *d.rhmin_percent > *d.rhmax_percent) {
        out.add("humidity_swapped", Severity::suspect, by_definition, d.date, d.date,
                "The lowest humidity is above the highest.");
    }
    if (d.rhmin_percent && *d.rhmin_percent > 0.0 &&
        *d.rhmin_percent < limit("rhmin_low").value) {
        out.add("humidity_very_low", "rhmin_low", d.date,
                "A lowest humidity of " + format_fixed(*d.rhmin_percent, 1) +
                    " % is rare even in arid places.");
    }
    if (d.rhmean_percent && *d.rhmean_percent > 0.0 &&
        *d.rhmean_percent < limit("rhmean_low").value) {
        out.add("humidity_mean_low", "rhmean_low", d.date,
                "A mean humidity of " + format_fixed(*d.rhmean_percent, 1) +
                    " % is low for irrigated ground.");
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
                    "Sunshine of " + format_fixed(n, 1) + " h on a day of " +
                        format_fixed(possible, 1) + " h.");
        }
    }
    if (!d.solar) return;
    const double rs = d.solar->in(units::megajoule_per_m2);
    const std::string text = "Radiation of " + format_fixed(rs, 1) + " MJ/m2";
    if (rs < 0.0) {
        out.add("radiation_impossible", Severity::impossible, by_definition, d.date, d.date,
                text + " is below zero.");
    } else if (rs > ra) {
        out.add("radiation_impossible", Severity::impossible, by_definition, d.date, d.date,
                text + " is more than arrives outside the atmosphere, " + format_fixed(ra, 1) +
                    ": look at its unit and at the latitude.");
    } else if (ra > 0.0) {
        const double rso = s.angstrom_a ? clear_sky_calibrated(ra, *s.angstrom_a, *s.angstrom_b)
                                        : clear_sky(ra, s.elevation.in(units::metre));
        if (rs > limit("solar_clear_excess").value * rso) {
            out.add("radiation_above_clear_sky", "solar_clear_excess", d.date,
                    text + " is above a clear sky, " + format_fixed(rso, 1) + ".");
        } else if (rs < limit("solar_low").value * ra) {
            out.add("radiation_very_low", "solar_low", d.date,
                    text + " is less than the darkest overcast lets through.");
        }
    }
}

void check_wind_rain_et(const WeatherDay& d, Findings& out) {
    if (d.wind) {
        const double u = d.wind->in(units::metre_per_second);
        const std::string text = "A mean wind of " + format_fixed(u, 1) + " m/s";
        if (!(u >= 0.0)) {
            out.add("wind_impossible", Severity::impossible, by_definition, d.date, d.date,
                    text + " is below zero.");
        } else if (u > limit("wind_impossible").value) {
            out.add("wind_impossible", "wind_impossible", d.date, text + " is above any record.");
        } else if (u > limit("wind_high").value) {
            out.add("wind_very_high", "wind_high", d.date, text + " is a storm all day.");
        }
    }
    if (d.rain) {
        const double p = d.rain->in(units::millimetre);
        const std::string text = "Rain of " + format_fixed(p, 1) + " mm";
        if (!(p >= 0.0)) {
            out.add("rain_impossible", Severity::impossible, by_definition, d.date, d.date,
                    text + " is below zero.");
        } else if (p > limit("rain_impossible").value) {
            out.add("rain_impossible", "rain_impossible", d.date, text + " is above any record.");
        } else if (p > limit("rain_high").value) {
            out.add("rain_very_high", "rain_high", d.date,
                    text + " in a day is rare: look at its unit.");
        }
    }
    if (d.reference_et) {
        const double et = d.reference_et->in(units::millimetre);
        if (!(et >= 0.0 && et <= limit("recorded_et_high").value)) {
            out.add("recorded_et_impossible", "recorded_et_high", d.date,
                    "A recorded ETo of " + format_fixed(et, 1) + " mm: look at its unit.");
        }
    }
}

using Reading = std::optional<double>;

/// Runs of the same reading, where such a run is not natural.
void check_stuck(std::span<const WeatherDay> all, const char* name,
                 const std::function<Reading(const WeatherDay&)>& of, Findings& out) {
    const Limit& least = limit("stuck_days");
    std::size_t start = 0;
    for (std::size_t i = 1; i <= all.size(); ++i) {
        const Reading first = of(all[start]);
        const bool same = i < all.size() && first && of(all[i]) == first &&
                          all[i].date == all[i - 1].date + days{1};
        if (same) continue;
        const auto run = static_cast<double>(i - start);
        if (first && run >= least.value) {
            out.add(std::string("stuck_") + name, least.severity, least.source, all[start].date,
                    all[i - 1].date,
                    "The same " + std::string(name) + " to the last digit, " +
                        units::format_shortest(std::round(*first * 1e6) / 1e6) + ", on " +
                        format_fixed(run, 0) + " days in a row.");
        }
        start = i;
    }
}

void check_all_stuck(std::span<const WeatherDay> all, Findings& out) {
    const auto celsius = [](const std::optional<units::Temperature>& t) {
        return t ? Reading(t->in_celsius()) : std::nullopt;
    };
    check_stuck(all, "tmax", [&](const WeatherDay& d) { return celsius(d.tmax); }, out);
    check_stuck(all, "tmin", [&](const WeatherDay& d) { return celsius(d.tmin); }, out);
    check_stuck(all, "tdew", [&](const WeatherDay& d) { return celsius(d.tdew); }, out);
    // Saturated air holds a sensor at its upper end for days, and dry spells hold rain at zero.
    check_stuck(all, "rhmax", [](const WeatherDay& d) {
        return d.rhmax_percent && *d.rhmax_percent < 99.0 ? d.rhmax_percent : std::nullopt;
    }, out);
    check_stuck(all, "rhmin", [](const WeatherDay& d) { return d.rhmin_percent; }, out);
    check_stuck(all, "radiation", [](const WeatherDay& d) {
        return d.solar ? Reading(d.solar->in(units::megajoule_per_m2)) : std::nullopt;
    }, out);
    check_stuck(all, "wind", [](const WeatherDay& d) {
        return d.wind ? Reading(d.wind->in(units::metre_per_second)) : std::nullopt;
    }, out);
    check_stuck(all, "rain", [](const WeatherDay& d) {
        return d.rain && d.rain->si() > 0.0 ? Reading(d.rain->in(units::millimetre))
                                            : std::nullopt;
    }, out);
}

void check_calm(std::span<const WeatherDay> all, Findings& out) {
    const double low = limit("wind_low").value;
    std::size_t run = 0;
    for (std::size_t i = 0; i <= all.size(); ++i) {
        const bool calm = i < all.size() && all[i].wind && all[i].wind->si() >= 0.0 &&
                          all[i].wind->in(units::metre_per_second) < low &&
                          (run == 0 || all[i].date == all[i - 1].date + days{1});
        if (calm) {
            ++run;
            continue;
        }
        if (static_cast<double>(run) >= limit("wind_low_days").value) {
            out.add("wind_always_low", Severity::suspect, limit("wind_low").source,
                    all[i - run].date, all[i - 1].date,
                    "Wind below " + format_fixed(low, 1) + " m/s on " + std::to_string(run) +
                        " days in a row: a worn bearing or an offset?");
        }
        run = i < all.size() && all[i].wind && all[i].wind->si() >= 0.0 &&
                      all[i].wind->in(units::metre_per_second) < low
                  ? 1
                  : 0;
    }
}

/// In each block of days some day should be clear: the best must reach the clear-sky line.
void check_envelope(std::span<const WeatherDay> all, const StationSetting& s, Findings& out) {
    const auto block = days{static_cast<int>(limit("envelope_days").value)};
    const Limit& least = limit("solar_clear_envelope");
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
            out.add("radiation_reads_low", least.severity, least.source, from, all[i - 1].date,
                    "In " + std::to_string(seen) + " days radiation came to no more than " +
                        format_fixed(100.0 * best, 0) +
                        " % of a clear sky: the sensor may read low or be dirty.");
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
    const double enough = limit("series_days").value;
    if (tmax_days >= enough && tmax_sum / tmax_days > limit("series_mean_high").value) {
        out.add("temperatures_look_like_fahrenheit", Severity::suspect,
                limit("series_mean_high").source, all.front().date, all.back().date,
                "The highest temperatures average " + format_fixed(tmax_sum / tmax_days, 1) +
                    " C: they look like Fahrenheit.");
    }
    if (rhmax_days >= enough && rhmax_best < limit("rhmax_low").value) {
        out.add("humidity_never_high", Severity::suspect, limit("rhmax_low").source,
                all.front().date, all.back().date,
                "The highest humidity never passed " + format_fixed(rhmax_best, 0) +
                    " %: the sensor may read low, or the station stands on dry ground.");
    }
}

void check_sequence(std::span<const WeatherDay> all, Findings& out) {
    for (std::size_t i = 1; i < all.size(); ++i) {
        const Date before = all[i - 1].date;
        const Date day = all[i].date;
        if (day == before) {
            out.add("day_twice", Severity::impossible, by_definition, day, day,
                    "The day " + calendar::format_date(day) + " comes twice.");
        } else if (day > before + days{1}) {
            out.add("gap", Severity::suspect, by_definition, before + days{1}, day - days{1},
                    "No record from " + calendar::format_date(before + days{1}) + " to " +
                        calendar::format_date(day - days{1}) + ".");
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
    check_sequence(all, out);
    for (const WeatherDay& d : all) {
        check_temperatures(d, out);
        check_humidity(d, out);
        check_radiation(d, setting, out);
        check_wind_rain_et(d, out);
    }
    if (!all.empty()) {
        check_all_stuck(all, out);
        check_calm(all, out);
        check_envelope(all, setting, out);
        check_whole(all, out);
    }
    return std::move(out).sorted();
}

}  // namespace evenfall::weather
