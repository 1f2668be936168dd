// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/sentence.h"
#include "core/units/measure.h"
#include "core/units/ratio.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// What water costs: tiers, sewer, fixed charges, each with the dates between which it holds.
///
///     bill of a month = sum over tiers of price x volume in the tier
///                     + sewer price x sewer share x volume + fixed charge
///
/// Convention: one account per site, billed by calendar month. Where a rate changes within a
/// month, each part of the month is billed at its own rate with volume, tier limits and fixed
/// charge in proportion to its days. A day without a rate makes the month's bill unknown, not free.
/// Tests: tests/budget/water_rate_test.cpp
namespace evenfall::budget {

struct RateTier {
    std::optional<double> up_to;  ///< of a month's volume, in the rate's unit; empty: the last tier
    double price = 0.0;           ///< per unit of volume
};

struct WaterRate {
    std::string code;             ///< unique in a book
    std::string site;             ///< empty: for every site that has no rate of its own
    calendar::Date from;
    std::optional<calendar::Date> to;  ///< last day, included; empty: still holds
    units::NamedUnit<units::Volume> unit;
    std::string currency;         ///< ISO 4217 code
    std::vector<RateTier> tiers;
    double fixed_per_month = 0.0;
    std::optional<double> sewer_price;  ///< per unit of volume
    units::Share sewer_share = units::Share::of(1.0);  ///< of the volume that pays for sewer
};

struct EnergyRate {
    std::string code;
    std::string site;
    calendar::Date from;
    std::optional<calendar::Date> to;
    std::string currency;
    double price_per_kwh = 0.0;
};

struct Bill {
    double water = 0.0;
    double sewer = 0.0;
    double fixed = 0.0;
    double total() const { return water + sewer + fixed; }
};

/// The rates of one site, checked.
class WaterRates {
  public:
    /// Those of `rates` that name the site, else those that name none.
    /// @throws InputError when two hold on the same day (both codes and the day are named), a range
    ///   runs backward, tiers do not ascend or do not end open, a price is negative or not finite,
    ///   or currencies are mixed
    WaterRates(std::span<const WaterRate> rates, const std::string& site);

    bool empty() const { return rates_.empty(); }
    const std::string& currency() const { return currency_; }
    /// Codes and dates, for the method page.
    Sentence text() const;
    /// Nothing when a day of the month has no rate. @throws InputError for a negative volume
    std::optional<Bill> bill(calendar::Month month, units::Volume use) const;

  private:
    std::vector<WaterRate> rates_;  ///< by date
    std::string currency_;
};

class EnergyRates {
  public:
    /// As for water.
    EnergyRates(std::span<const EnergyRate> rates, const std::string& site);
    bool empty() const { return rates_.empty(); }
    const std::string& currency() const { return currency_; }
    /// Mean over the days of the month; nothing when one of them has no rate.
    std::optional<double> price_per_kwh(calendar::Month month) const;

  private:
    std::vector<EnergyRate> rates_;
    std::string currency_;
};

}  // namespace evenfall::budget
