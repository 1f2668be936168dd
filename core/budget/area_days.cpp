// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/area_days.h"

#include <algorithm>

namespace evenfall::budget {

using calendar::Date;
using std::chrono::days;
using units::Depth;

namespace {

/// The mean that stands in for a missing day, so that present days and fillings make up the sum.
Depth filling(std::optional<Depth> sum, std::span<const std::optional<Depth>> present) {
    if (!sum) return {};
    return *sum / static_cast<double>(present.size());
}

}  // namespace

AreaDays area_days(const DailyWeather& weather, calendar::Month from,
                   std::span<const units::LandscapeCoefficient> coefficients) {
    AreaDays out;
    out.first = weather.first;
    if (weather.empty()) return out;
    for (Date first = weather.first; first <= weather.last;) {
        const auto month = calendar::month_of(first);
        const Date last = std::min(weather.last, calendar::last_day(month));
        const auto sums = sum_weather(weather, first, last);
        const auto at = static_cast<std::size_t>((first - weather.first).count());
        const auto n = static_cast<std::size_t>((last - first).count() + 1);
        const auto et = std::span(weather.reference_et).subspan(at, n);
        const auto rain = std::span(weather.rain).subspan(at, n);
        const Depth mean_et = filling(sums.reference_et, et);
        const Depth mean_rain = filling(sums.rain, rain);
        const double k = coefficients[static_cast<std::size_t>((month - from).count())].value();
        for (std::size_t i = 0; i < n; ++i) {
            out.crop_et.push_back(et[i].value_or(mean_et) * k);
            out.rain.push_back(rain[i].value_or(mean_rain));
        }
        first = last + days{1};
    }
    return out;
}

std::vector<Depth> effective_rain_by_balance(const AreaDays& area, Depth available, double p) {
    const Depth readily = available * p;
    Depth depletion = readily * 0.5;
    std::vector<Depth> effective;
    effective.reserve(area.rain.size());
    for (std::size_t i = 0; i < area.rain.size(); ++i) {
        const Depth after_rain = depletion - area.rain[i];
        const Depth drained = std::max(Depth{}, -after_rain);
        effective.push_back(area.rain[i] - drained);
        depletion = std::max(Depth{}, after_rain) + area.crop_et[i];
        if (depletion > readily) depletion = Depth{};
    }
    return effective;
}

}  // namespace evenfall::budget
