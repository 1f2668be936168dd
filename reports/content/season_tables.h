// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/season_money.h"

/// The tables of a season report. Keys: months, cumulative, waste_months, waste_parts, areas,
/// area_months, by_cans, costs.
namespace evenfall::reports {

Table season_months(const budget::SeasonResult& season, const Shown& shown);
Table season_cumulative(const budget::SeasonResult& season, const Shown& shown);
Table season_waste_months(const budget::SeasonResult& season, const Shown& shown);
Table season_waste_parts(const budget::SeasonResult& season, const SeasonMoney& money,
                         const Shown& shown);
Table season_areas(const budget::SeasonResult& season, const Shown& shown);
Table season_area_months(const budget::SeasonResult& season, const Shown& shown);

/// The account by the root-zone balance at every can, for the areas that have a test.
Table season_by_cans(const budget::CanAccount& account, const Shown& shown);
/// Bills, worth of what the turf did not use, energy, by month.
Table season_costs(const budget::SeasonResult& season);

/// "uneven, avoidable": the words of a line short enough for an axis and a legend.
std::string short_words(const budget::WasteLine& line);
/// The tone of a line of the waste account.
Tone tone_of(std::string_view waste_key);

}  // namespace evenfall::reports
