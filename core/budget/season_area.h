// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/metered.h"
#include "core/budget/season.h"
#include "core/budget/weather_sums.h"

#include <span>

/// One area in one month: the working part of season.cpp.
namespace evenfall::budget {

/// What an area-month is made of, besides the season's inputs.
struct AreaMonthTerms {
    const site::Area& area;
    const AreaSetting& setting;
    weather::CoefficientChoice coefficient;
    const UniformityChoice& uniformity;
    std::optional<std::size_t> meter;
    double share = 1.0;          ///< of the meter's own use
    bool share_assumed = false;
    /// By day from the weather record's first on; only under the daily rule.
    std::span<const units::Depth> effective_rain = {};
};

/// Effective rain of a run of days of a month by a monthly rule, from ET and rain of that run;
/// nothing when the rule needs rain and none is known.
std::optional<units::Depth> effective_rain_of(const weather::RainRule& rule,
                                              std::optional<units::Depth> rain,
                                              units::Depth landscape_et, int days,
                                              calendar::Month month);

/// Depth to apply for the need of the turf: more where salt has to be leached.
/// @param leaching  LR, below 1; 0 for none
units::Depth need_with_leaching(units::Depth landscape_et, units::Depth effective_rain, double leaching);

AreaMonth area_month(const SeasonInputs& inputs, const DailyWeather& weather,
                     const MeteredSite& metered, const AreaMonthTerms& terms,
                     calendar::Month month);

}  // namespace evenfall::budget
