// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/season_report.h"

/// The tables of a season report. Keys: months, cumulative, waste_months, waste_parts, areas,
/// area_months.
namespace evenfall::reports {

Table season_months(const budget::SeasonResult& season, const Shown& shown);
Table season_cumulative(const budget::SeasonResult& season, const Shown& shown);
Table season_waste_months(const budget::SeasonResult& season, const Shown& shown);
Table season_waste_parts(const budget::SeasonResult& season,
                         const std::optional<WaterPrice>& price, const Shown& shown);
Table season_areas(const budget::SeasonResult& season, const Shown& shown);
Table season_area_months(const budget::SeasonResult& season, const Shown& shown);

/// The tone of a line of the waste account.
Tone tone_of(std::string_view waste_key);

}  // namespace evenfall::reports
