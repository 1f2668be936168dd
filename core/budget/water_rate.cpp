// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/water_rate.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>

namespace evenfall::budget {

using calendar::Date;
using calendar::Month;

namespace {

std::string dates_text(Date from, const std::optional<Date>& to) {
    return calendar::format_date(from) + " to " + (to ? calendar::format_date(*to) : "further on");
}

void check_price(double price, const std::string& what) {
    if (std::isfinite(price) && price >= 0.0) return;
    throw InputError(units::format_shortest(price), what + " of zero or more");
}

/// Rates of the site in order of date, in one currency, no two on a day.
template <class Rate>
std::vector<Rate> rates_of(std::span<const Rate> all, const std::string& site) {
    const auto pick = [&](const std::string& wanted) {
        std::vector<Rate> picked;
        for (const Rate& rate : all) {
            if (rate.site == wanted) picked.push_back(rate);
        }
        return picked;
    };
    auto rates = pick(site);
    if (rates.empty()) rates = pick("");
    std::sort(rates.begin(), rates.end(), [](const Rate& a, const Rate& b) { return a.from < b.from; });
    for (std::size_t i = 0; i < rates.size(); ++i) {
        const Rate& rate = rates[i];
        if (rate.to && *rate.to < rate.from) {
            throw InputError("rate " + rate.code + ", " + dates_text(rate.from, rate.to),
                             "dates that run forward");
        }
        if (rate.currency != rates.front().currency) {
            throw InputError("rate " + rate.code + " in " + rate.currency,
                             "the currency of the site's other rates, " + rates.front().currency);
        }
        if (i == 0) continue;
        const Rate& before = rates[i - 1];
        if (!before.to || *before.to >= rate.from) {
            throw InputError("rates " + before.code + " (" + dates_text(before.from, before.to) +
                                 ") and " + rate.code + " (" + dates_text(rate.from, rate.to) + ")",
                             "rates that do not overlap; both hold on " +
                                 calendar::format_date(rate.from));
        }
    }
    return rates;
}

void check_tiers(const WaterRate& rate) {
    if (rate.tiers.empty()) throw InputError("rate " + rate.code, "at least one tier");
    double below = 0.0;
    for (std::size_t i = 0; i < rate.tiers.size(); ++i) {
        const RateTier& tier = rate.tiers[i];
        check_price(tier.price, "rate " + rate.code + ": a price");
        const bool last = i + 1 == rate.tiers.size();
        if (last != !tier.up_to.has_value()) {
            throw InputError("rate " + rate.code, "a last tier without a limit, and only that one");
        }
        if (tier.up_to && !(*tier.up_to > below && std::isfinite(*tier.up_to))) {
            throw InputError("rate " + rate.code + ", limit " + units::format_shortest(*tier.up_to),
                             "limits that rise");
        }
        below = tier.up_to.value_or(below);
    }
}

/// Days of the month on which a range holds.
int days_within(Date from, const std::optional<Date>& to, Month month) {
    const Date first = std::max(from, calendar::first_day(month));
    const Date last = to ? std::min(*to, calendar::last_day(month)) : calendar::last_day(month);
    return std::max(0, static_cast<int>((last - first).count()) + 1);
}

Bill bill_of(const WaterRate& rate, double volume, double part_of_month) {
    Bill bill;
    double below = 0.0;
    for (const RateTier& tier : rate.tiers) {
        const double top = tier.up_to ? std::min(volume, *tier.up_to * part_of_month) : volume;
        if (top > below) bill.water += tier.price * (top - below);
        below = std::max(below, top);
    }
    bill.sewer = rate.sewer_price.value_or(0.0) * rate.sewer_share.value() * volume;
    bill.fixed = rate.fixed_per_month * part_of_month;
    return bill;
}

}  // namespace

WaterRates::WaterRates(std::span<const WaterRate> rates, const std::string& site)
    : rates_(rates_of(rates, site)) {
    for (const WaterRate& rate : rates_) {
        check_tiers(rate);
        check_price(rate.fixed_per_month, "rate " + rate.code + ": a fixed charge");
        check_price(rate.sewer_price.value_or(0.0), "rate " + rate.code + ": a sewer price");
    }
    if (!rates_.empty()) currency_ = rates_.front().currency;
}

std::string WaterRates::text() const {
    std::string text;
    for (const WaterRate& rate : rates_) {
        text += (text.empty() ? "" : "; ") + rate.code + ", " + dates_text(rate.from, rate.to);
    }
    return text;
}

std::optional<Bill> WaterRates::bill(Month month, units::Volume use) const {
    if (!(use.si() >= 0.0)) {
        throw InputError(units::format_shortest(use.si()) + " m3", "a volume of zero or more");
    }
    const int days = calendar::days_in(month);
    int billed = 0;
    Bill sum;
    for (const WaterRate& rate : rates_) {
        const int held = days_within(rate.from, rate.to, month);
        if (held == 0) continue;
        billed += held;
        const double part = static_cast<double>(held) / days;
        const Bill bill = bill_of(rate, use.in(rate.unit.unit) * part, part);
        sum.water += bill.water;
        sum.sewer += bill.sewer;
        sum.fixed += bill.fixed;
    }
    if (billed != days) return std::nullopt;
    return sum;
}

EnergyRates::EnergyRates(std::span<const EnergyRate> rates, const std::string& site)
    : rates_(rates_of(rates, site)) {
    for (const EnergyRate& rate : rates_) {
        check_price(rate.price_per_kwh, "rate " + rate.code + ": a price");
    }
    if (!rates_.empty()) currency_ = rates_.front().currency;
}

std::optional<double> EnergyRates::price_per_kwh(Month month) const {
    const int days = calendar::days_in(month);
    int held = 0;
    double sum = 0.0;
    for (const EnergyRate& rate : rates_) {
        const int n = days_within(rate.from, rate.to, month);
        held += n;
        sum += rate.price_per_kwh * n;
    }
    if (held != days) return std::nullopt;
    return sum / days;
}

}  // namespace evenfall::budget
