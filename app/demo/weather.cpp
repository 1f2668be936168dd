// SPDX-License-Identifier: GPL-3.0-or-later
// Two years of invented daily weather for two stations: dry summers, wet winters.
#include "app/demo/random.h"
#include "app/demo/scenario.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace evenfall::demo {
namespace {

using units::format_fixed;

struct StationDay {
    double tmax_f, tmin_f, tdew_f, solar_langley, wind_mph, rain_in;
};

/// 1 at midsummer (about 15 July for temperature), -1 half a year later.
double season(int day_of_year, double peak_day) {
    return std::cos(2.0 * std::numbers::pi * (day_of_year - peak_day) / 365.25);
}

/// About what a day without cloud brings at 38.5 degrees north, 0.75 of what arrives above the air.
double clear_langley(double light) { return 504.0 + 246.0 * light; }

StationDay weather_on(int day_of_year, double warmth_f, Random& random, double& swing) {
    // A slow swing keeps warm and cool spells together; each day moves it a little.
    swing = 0.8 * swing + 0.6 * random.bell();
    const double warm = season(day_of_year, 200.0);
    const double light = season(day_of_year, 172.0);
    const double wet_chance = std::clamp(0.19 - 0.19 * season(day_of_year, 200.0), 0.005, 0.36);
    const bool wet = random.uniform() < wet_chance;
    const double cloud = wet ? random.between(0.35, 0.65) : random.between(0.86, 1.0);
    StationDay d{};
    d.rain_in = wet ? std::round(100.0 * (0.02 + 0.55 * std::pow(random.uniform(), 2.2) * 2.0)) / 100 : 0.0;
    d.tmax_f = 74.5 + 19.5 * warm + 4.2 * swing + warmth_f - (wet ? 5.0 : 0.0);
    d.tmin_f = d.tmax_f - (26.0 + 6.5 * warm) * (wet ? 0.6 : 1.0) - random.between(0.0, 4.0);
    d.tdew_f = std::min(d.tmin_f - 0.5 + (wet ? 1.5 : 0.0), 46.5 + 6.0 * warm + 2.5 * random.bell());
    d.solar_langley = clear_langley(light) * cloud;
    d.wind_mph = std::max(0.8, 4.6 + 1.3 * warm + 1.2 * random.bell());
    return d;
}

constexpr calendar::Date start = calendar::Date{std::chrono::year{2024} / 1 / 1};
constexpr calendar::Date end = calendar::Date{std::chrono::year{2026} / 1 / 1};

std::vector<StationDay> station_days(std::uint64_t seed, double warmth_f) {
    Random random(seed);
    double swing = 0.0;
    std::vector<StationDay> days;
    for (auto date = start; date < end; date += std::chrono::days{1}) {
        days.push_back(weather_on(calendar::day_of_year(date), warmth_f, random, swing));
    }
    return days;
}

struct Station {
    const char* code;
    std::uint64_t seed;
    double warmth_f;
};
constexpr Station farm{"HBW", 11, 0.0};
constexpr Station campus{"AVW", 23, 1.1};

/// Faults of the instruments: the farm's cup anemometer stood still on nine days, and the campus
/// station lost all but its thermometers for most of a month and everything for three days.
bool wind_lost(const Station& s, calendar::Date d) {
    return s.code == farm.code && d >= calendar::make_date(2024, 8, 6) && d <= calendar::make_date(2024, 8, 14);
}
bool only_temperature(const Station& s, calendar::Date d) {
    return s.code == campus.code && d >= calendar::make_date(2025, 4, 4) && d <= calendar::make_date(2025, 4, 27);
}
bool all_lost(const Station& s, calendar::Date d) {
    return s.code == campus.code && d >= calendar::make_date(2025, 10, 11) && d <= calendar::make_date(2025, 10, 13);
}

void append_station(std::string& out, const Station& station) {
    auto date = start;
    for (const StationDay& d : station_days(station.seed, station.warmth_f)) {
        if (!all_lost(station, date)) {
            const bool bare = only_temperature(station, date);
            out += std::string(station.code) + "," + calendar::format_date(date) + "," +
                   format_fixed(d.tmax_f, 1) + "," + format_fixed(d.tmin_f, 1) + "," +
                   (bare ? "" : format_fixed(d.tdew_f, 1)) + "," +
                   (bare ? "" : format_fixed(d.solar_langley, 1)) + "," +
                   (bare || wind_lost(station, date) ? "" : format_fixed(d.wind_mph, 1)) + "," +
                   format_fixed(d.rain_in, 2) + "\n";
        }
        date += std::chrono::days{1};
    }
}

}  // namespace

std::string weather_table() {
    std::string out = "station,date,tmax_f,tmin_f,tdew_f,rs_langley,wind_mph,rain_in\n";
    append_station(out, farm);
    append_station(out, campus);
    return out;
}

std::vector<DailyRain> scenario_rain() {
    std::vector<DailyRain> all;
    for (const Station& s : {farm, campus}) {
        DailyRain rain{s.code, {}};
        for (const StationDay& d : station_days(s.seed, s.warmth_f)) rain.mm.push_back(25.4 * d.rain_in);
        all.push_back(std::move(rain));
    }
    return all;
}

}  // namespace evenfall::demo
