// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/pumping.h"
#include "core/budget/waste_account.h"
#include "core/budget/water_rate.h"
#include "core/calendar/date.h"
#include "core/sentence.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace evenfall::budget {

struct SeasonResult;

/// Money and energy of one period of a site. An empty optional is "not known".
///
/// The water that the turf did not use is valued at what the bill would be less without it, so at
/// the prices of the highest tiers the site reached:
///     value = bill(use) - bill(use - not used)
/// and shared among the lines of the account in proportion to their volume. `money` and `energy`
/// of a line stand in the order of waste_lines(); the shortage has none.
struct PeriodCost {
    std::optional<Bill> bill;
    std::optional<double> not_used;        ///< money
    std::optional<double> avoidable;       ///< money
    std::array<std::optional<double>, 7> money;
    std::optional<units::Energy> energy;   ///< of all the metered water
    std::optional<units::Energy> energy_not_used;
    std::optional<units::Energy> energy_avoidable;
    std::optional<double> energy_cost;     ///< of all the metered water
    std::optional<double> energy_cost_avoidable;
};

struct SeasonCost {
    std::string currency;                  ///< empty without rates
    std::vector<PeriodCost> months;        ///< as SeasonResult::months
    PeriodCost total;                      ///< sums; a line is absent only when every month's is
    int months_without_bill = 0;           ///< months with use but no rate for some day
    Sentence convention;
    Sentence source;  ///< the rates and pumps that went in
};

/// @throws InputError when water and energy come in different currencies, or a pump's share is not
///   from 0 to 1
SeasonCost season_cost(const SeasonResult& season, const WaterRates& water,
                       const EnergyRates& energy, std::span<const Pump> pumps);

}  // namespace evenfall::budget
