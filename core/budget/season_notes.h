// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/metered.h"
#include "core/budget/season.h"
#include "core/budget/weather_sums.h"

/// The words that go with a season: how each figure was made, and what to look at.
namespace evenfall::budget {

std::vector<Note> season_notes(const SeasonInputs& inputs, const DailyWeather& weather,
                               const SeasonResult& result);
std::vector<SeasonFinding> season_findings(const SeasonInputs& inputs, const MeteredSite& metered,
                                           const SeasonResult& result);

}  // namespace evenfall::budget
