// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/can_account.h"
#include "core/budget/metered.h"
#include "core/budget/season.h"
#include "core/budget/weather_sums.h"

#include <vector>

/// The account by cans within a season.
namespace evenfall::budget {

/// One area's days with one set of cans: the months that the set stands for.
struct AreaCase {
    std::size_t area = 0;               ///< index in SeasonResult::areas
    std::size_t uniformity = 0;         ///< index in AreaSeason::uniformity
    std::vector<std::size_t> months;    ///< one for each period of the case
    CanCase days;
};

/// Every area that has a catch test and a month with an account.
std::vector<AreaCase> area_cases(const SeasonInputs& inputs, const DailyWeather& weather,
                                 const MeteredSite& metered, const SeasonResult& result);

/// Adds the account by cans to the months of each area, before they are summed.
void add_can_accounts(const SeasonInputs& record, const std::vector<AreaCase>& cases,
                      SeasonResult& result);

}  // namespace evenfall::budget
