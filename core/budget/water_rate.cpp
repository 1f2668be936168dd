// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/water_rate.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace evenfall::budget {

using calendar::Date;
using calendar::Month;

namespace {

Sentence dates_text(Date from, const std::optional<Date>& to) {
    if (!to) return {phrase("budget", "%1 to further on"), calendar::format_date(from)};
    return {phrase("budget", "%1 to %2"), calendar::format_date(from), calendar::format_date(*to)};
}

void check_price(double price, const std::string& rate, PhraseOf<1> expected) {
    if (std::isfinite(price) && price >= 0.0) return;
    throw InputError(units::format_shortest(price), {expected, rate});
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
            throw InputError({phrase("budget", "rate %1, %2"), rate.code, dates_text(rate.from, rate.to)},
                             phrase("budget", "dates that run forward"));
        }
        if (rate.currency != rates.front().currency) {
            throw InputError(
                {phrase("budget", "rate %1 in %2"), rate.code, rate.currency},
                {phrase("budget", "the currency of the site's other rates, %1"), rates.front().currency});
        }
        if (i == 0) continue;
        const Rate& before = rates[i - 1];
        if (!before.to || *before.to >= rate.from) {
            throw InputError(
                {phrase("budget", "rates %1 (%2) and %3 (%4)"), before.code, dates_text(before.from, before.to),
                 rate.code, dates_text(rate.from, rate.to)},
                {phrase("budget", "rates that do not overlap; both hold on %1"), calendar::format_date(rate.from)});
        }
    }
    return rates;
}

void check_tiers(const WaterRate& rate) {
    if (rate.tiers.empty())
        throw InputError({phrase("budget", "rate %1"), rate.code}, phrase("budget", "at least one tier"));
    double below = 0.0;
    for (std::size_t i = 0; i < rate.tiers.size(); ++i) {
        const RateTier& tier = rate.tiers[i];
        check_price(tier.price, rate.code, phrase("budget", "rate %1: a price of zero or more"));
        const bool last = i + 1 == rate.tiers.size();
        if (last != !tier.up_to.has_value()) {
            throw InputError({phrase("budget", "rate %1"), rate.code},
                             phrase("budget", "a last tier without a limit, and only that one"));
        }
        if (tier.up_to && !(*tier.up_to > below && std::isfinite(*tier.up_to))) {
            throw InputError({phrase("budget", "rate %1, limit %2"), rate.code, units::format_shortest(*tier.up_to)},
                             phrase("budget", "limits that rise"));
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
        check_price(rate.fixed_per_month, rate.code, phrase("budget", "rate %1: a fixed charge of zero or more"));
        check_price(rate.sewer_price.value_or(0.0), rate.code,
                    phrase("budget", "rate %1: a sewer price of zero or more"));
    }
    if (!rates_.empty()) currency_ = rates_.front().currency;
}

Sentence WaterRates::text() const {
    std::vector<Sentence> parts;
    for (const WaterRate& rate : rates_) {
        parts.push_back(Sentence::joined({rate.code, dates_text(rate.from, rate.to)}, ", "));
    }
    return Sentence::joined(std::move(parts), "; ");
}

std::optional<Bill> WaterRates::bill(Month month, units::Volume use) const {
    if (!(use.si() >= 0.0)) {
        throw InputError(units::format_shortest(use.si()) + " m3", phrase("budget", "a volume of zero or more"));
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
        check_price(rate.price_per_kwh, rate.code, phrase("budget", "rate %1: a price of zero or more"));
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
