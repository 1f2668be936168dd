// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/sentence.h"
#include "core/units/quantity.h"
#include "core/weather/place_weather.h"
#include "core/weather/reference_et.h"
#include "core/weather/weather_day.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// Reference ET and rain of a site day by day, and their sums over any run of days.
/// Tests: tests/budget/area_days_test.cpp
namespace evenfall::budget {

struct DailyWeather {
    /// First and last day of the record within the range asked for; last before first when the
    /// record has no day in it.
    calendar::Date first;
    calendar::Date last;
    std::vector<std::optional<units::Depth>> reference_et;  ///< from `first` on
    std::vector<std::optional<units::Depth>> rain;
    std::vector<bool> assumed;  ///< an input of that day's reference ET was replaced or refused
    struct Method {
        int days = 0;
        Sentence method;
        Phrase source;
    };
    struct Remark {
        int days = 0;
        Sentence said;
    };
    // By their English, so that their order is the same in every language.
    std::map<std::string, Method> methods;
    std::map<std::string, Remark> remarks;  ///< what was filled, and on how many days

    bool empty() const { return last < first; }
};

/// @param days  sorted, no day twice
/// @throws InputError when they are not, for negative rain, or for an impossible station
DailyWeather daily_weather(std::span<const weather::WeatherDay> days,
                           const weather::StationSetting& station, calendar::Date from,
                           calendar::Date to);
/// The same from days that were worked out before.
DailyWeather daily_weather(std::span<const weather::PlaceDay> days, calendar::Date from,
                           calendar::Date to);

/// Sums over the days `from` to `to`, both included and inside the record. A gap is filled with
/// the mean of the other days of the run; beyond the limits of
/// schemas/reference/season_limits.csv (scaled to the length of the run) there is no sum.
struct WeatherSums {
    std::optional<units::Depth> reference_et;
    std::optional<units::Depth> rain;
    bool et_filled = false;
    bool rain_filled = false;
    bool et_assumed = false;
};
WeatherSums sum_weather(const DailyWeather& weather, calendar::Date from, calendar::Date to);

}  // namespace evenfall::budget
