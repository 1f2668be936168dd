// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/season_money.h"

namespace evenfall::reports {

SeasonMoney::SeasonMoney(const budget::SeasonResult& season, const std::optional<WaterPrice>& price)
    : season_(season) {
    if (season.cost && season.cost->total.bill && !season.cost->currency.empty()) {
        cost_ = &season.cost->total;
        currency_ = season.cost->currency;
    } else if (price) {
        price_ = price;
        currency_ = price->currency;
    }
}

std::optional<double> SeasonMoney::of_line(std::size_t line, units::Volume part) const {
    if (price_) return part / price_->per * price_->amount;
    if (cost_ == nullptr || !season_.total.account) return std::nullopt;
    const auto money = cost_->money.at(line);
    const units::Volume whole = *season_.total.account.*budget::waste_lines().at(line).part;
    if (!money) return std::nullopt;
    return whole.si() > 0.0 ? *money * (part / whole) : 0.0;
}

std::optional<double> SeasonMoney::avoidable() const {
    if (price_ && season_.total.account) {
        return season_.total.account->avoidable() / price_->per * price_->amount;
    }
    return cost_ != nullptr ? cost_->avoidable : std::nullopt;
}

std::optional<double> SeasonMoney::over_budget() const {
    if (!price_ || !season_.total.over_budget) return std::nullopt;
    return *season_.total.over_budget / price_->per * price_->amount;
}

}  // namespace evenfall::reports
