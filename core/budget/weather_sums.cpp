// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/weather_sums.h"

#include "core/input_error.h"
#include "core/reference/table.h"
#include "core/units/number.h"

#include <algorithm>
#include <cassert>

namespace evenfall::budget {

using calendar::Date;
using units::Depth;

namespace {

constexpr double month_length = 30.0;  ///< days that the limits of a month are meant for

double limit(const char* key) {
    const auto* row = reference::Table::named("season_limits.csv").find("key", key);
    assert(row != nullptr);
    return row->number("value");
}

struct Filled {
    std::optional<Depth> sum;
    bool gaps = false;
};

Filled sum_with_gaps(std::span<const std::optional<Depth>> days) {
    static const double most = limit("most_filled_days");
    static const double longest = limit("longest_filled_run");
    Depth sum;
    int missing = 0;
    int run = 0;
    int longest_run = 0;
    for (const auto& day : days) {
        run = day ? 0 : run + 1;
        longest_run = std::max(longest_run, run);
        if (day) {
            sum += *day;
        } else {
            ++missing;
        }
    }
    const auto n = static_cast<double>(days.size());
    if (missing == 0) return {sum, false};
    if (missing > std::min(most, most * n / month_length) || longest_run > longest) {
        return {std::nullopt, true};
    }
    return {sum * (n / (n - missing)), true};
}

void check_rain(const weather::PlaceDay& day) {
    if (day.rain && !(day.rain->si() >= 0.0)) {
        throw InputError({phrase("budget", "rain of %1 mm on %2"),
                          units::format_shortest(day.rain->in(units::millimetre)), calendar::format_date(day.date)},
                         phrase("budget", "zero or more"));
    }
}

void add_day(DailyWeather& out, const weather::PlaceDay& day) {
    check_rain(day);
    const auto i = static_cast<std::size_t>((day.date - out.first).count());
    out.reference_et[i] = day.et;
    out.rain[i] = day.rain;
    out.assumed[i] = day.et && !day.flags.empty();
    for (const Sentence& said : day.remarks) {
        auto& remark = out.remarks[said.english()];
        ++remark.days;
        if (remark.days == 1) remark.said = said;
    }
    if (!day.et) return;
    auto& method = out.methods[day.method.english()];
    ++method.days;
    if (method.days > 1) return;
    method.method = day.method;
    method.source = day.source;
}

/// @param worked_out  makes a PlaceDay of a day
template <class Day, class WorkedOut>
DailyWeather collect(std::span<const Day> days, Date from, Date to, WorkedOut worked_out) {
    for (std::size_t i = 1; i < days.size(); ++i) {
        if (days[i - 1].date < days[i].date) continue;
        throw InputError({phrase("budget", "weather of %1 after %2"), calendar::format_date(days[i].date),
                          calendar::format_date(days[i - 1].date)},
                         phrase("budget", "days in order, none twice"));
    }
    const auto before = [](const Day& d, Date date) { return d.date < date; };
    auto it = std::lower_bound(days.begin(), days.end(), from, before);
    const auto end = std::lower_bound(it, days.end(), to + std::chrono::days{1}, before);
    DailyWeather out;
    out.first = from;
    out.last = from - std::chrono::days{1};
    if (it == end) return out;

    out.first = it->date;
    out.last = (end - 1)->date;
    const auto n = static_cast<std::size_t>((out.last - out.first).count() + 1);
    out.reference_et.resize(n);
    out.rain.resize(n);
    out.assumed.resize(n);
    for (; it != end; ++it) add_day(out, worked_out(*it));
    return out;
}

}  // namespace

DailyWeather daily_weather(std::span<const weather::WeatherDay> days,
                           const weather::StationSetting& station, Date from, Date to) {
    weather::check_setting(station);
    return collect(days, from, to,
                   [&](const weather::WeatherDay& d) { return weather::day_by_record(d, station); });
}

DailyWeather daily_weather(std::span<const weather::PlaceDay> days, Date from, Date to) {
    return collect(days, from, to, [](const weather::PlaceDay& d) -> const weather::PlaceDay& { return d; });
}

WeatherSums sum_weather(const DailyWeather& weather, Date from, Date to) {
    assert(weather.first <= from && to <= weather.last);
    const auto at = static_cast<std::size_t>((from - weather.first).count());
    const auto n = static_cast<std::size_t>((to - from).count() + 1);
    const auto et = sum_with_gaps(std::span(weather.reference_et).subspan(at, n));
    const auto rain = sum_with_gaps(std::span(weather.rain).subspan(at, n));
    WeatherSums sums{et.sum, rain.sum, et.gaps, rain.gaps, false};
    for (std::size_t i = at; i < at + n; ++i) sums.et_assumed = sums.et_assumed || weather.assumed[i];
    return sums;
}

}  // namespace evenfall::budget
