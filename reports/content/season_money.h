// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/frame.h"

#include "core/budget/season.h"
#include "core/budget/season_cost.h"

#include <optional>
#include <string>

/// What water of a season is worth: by the rates that were added to the result, else by one price
/// that the caller gives, else not known. Tests: tests/reports/text_test.cpp
namespace evenfall::reports {

class SeasonMoney {
  public:
    SeasonMoney(const budget::SeasonResult& season, const std::optional<WaterPrice>& price);

    /// Empty when no money is known.
    const std::string& currency() const { return currency_; }
    bool known() const { return !currency_.empty(); }
    /// The price of a unit of water where one price holds for all of it.
    const std::optional<WaterPrice>& price() const { return price_; }

    /// Worth of `part` of the water of line `line` of waste_lines(): with rates the part's share of
    /// what the whole line is worth.
    std::optional<double> of_line(std::size_t line, units::Volume part) const;
    std::optional<double> avoidable() const;
    /// With rates water over budget has no price of its own.
    std::optional<double> over_budget() const;

  private:
    const budget::SeasonResult& season_;
    const budget::PeriodCost* cost_ = nullptr;
    std::optional<WaterPrice> price_;
    std::string currency_;
};

}  // namespace evenfall::reports
