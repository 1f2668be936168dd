// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season_cost.h"

#include "core/budget/season.h"
#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>

namespace evenfall::budget {

using units::Energy;
using units::Volume;

namespace {

/// Energy per volume over all pumps, at their shares of the site's water. Pumps may stand one after
/// the other, so the shares need not add up to 1.
std::optional<Energy> energy_per_cubic_metre(std::span<const Pump> pumps) {
    if (pumps.empty()) return std::nullopt;
    Energy sum;
    for (const Pump& pump : pumps) {
        if (!(pump.share >= 0.0 && pump.share <= 1.0)) {
            throw InputError({phrase("budget", "pump %1, share %2"), pump.code, units::format_shortest(pump.share)},
                             phrase("budget", "a share from 0 to 1"));
        }
        sum += pump_energy(units::cubic_metre, total_head(pump), pump.efficiency) * pump.share;
    }
    return sum;
}

void add_money(const WaterRates& rates, const SeasonMonth& month, PeriodCost& cost) {
    if (rates.empty() || !month.use || *month.use < Volume{}) return;
    cost.bill = rates.bill(month.month, *month.use);
    if (!cost.bill || !month.account) return;
    const WasteAccount& account = *month.account;
    const Volume not_used = std::min(account.not_used(), *month.use);
    const auto without = rates.bill(month.month, *month.use - not_used);
    const double value = cost.bill->total() - without.value().total();
    const double per_volume = not_used.si() > 0.0 ? value / not_used.si() : 0.0;
    cost.not_used = value;
    cost.avoidable = per_volume * account.avoidable().si();
    for (std::size_t i = 0; i < cost.money.size(); ++i) {
        const WasteLine& line = waste_lines()[i];
        if (line.in_use && line.part != &WasteAccount::used_by_turf) {
            cost.money[i] = per_volume * (account.*line.part).si();
        }
    }
}

void add_energy(std::optional<Energy> per_volume, const EnergyRates& rates,
                const SeasonMonth& month, PeriodCost& cost) {
    if (!per_volume || !month.use || *month.use < Volume{}) return;
    const auto energy_of = [&](Volume volume) { return *per_volume * volume.in(units::cubic_metre); };
    cost.energy = energy_of(*month.use);
    if (month.account) {
        cost.energy_not_used = energy_of(month.account->not_used());
        cost.energy_avoidable = energy_of(month.account->avoidable());
    }
    const auto price = rates.price_per_kwh(month.month);
    if (!price) return;
    cost.energy_cost = *price * cost.energy->in(units::kilowatt_hour);
    if (cost.energy_avoidable) {
        cost.energy_cost_avoidable = *price * cost.energy_avoidable->in(units::kilowatt_hour);
    }
}

template <class T>
void add(std::optional<T>& sum, const std::optional<T>& part) {
    if (part) sum = sum.value_or(T{}) + *part;
}

void add_to(PeriodCost& sum, const PeriodCost& part) {
    if (part.bill) {
        Bill bill = sum.bill.value_or(Bill{});
        bill.water += part.bill->water;
        bill.sewer += part.bill->sewer;
        bill.fixed += part.bill->fixed;
        sum.bill = bill;
    }
    add(sum.not_used, part.not_used);
    add(sum.avoidable, part.avoidable);
    for (std::size_t i = 0; i < sum.money.size(); ++i) add(sum.money[i], part.money[i]);
    add(sum.energy, part.energy);
    add(sum.energy_not_used, part.energy_not_used);
    add(sum.energy_avoidable, part.energy_avoidable);
    add(sum.energy_cost, part.energy_cost);
    add(sum.energy_cost_avoidable, part.energy_cost_avoidable);
}

Sentence source_of(const WaterRates& water, std::span<const Pump> pumps) {
    std::vector<Sentence> parts;
    if (water.empty()) {
        parts.emplace_back(phrase("budget", "no water rates"));
    } else {
        parts.push_back({phrase("budget", "rates %1"), water.text()});
    }
    for (const Pump& pump : pumps) {
        parts.push_back({phrase("budget", "pump %1, head %2 m, efficiency %3"), pump.code,
                         units::format_fixed(total_head(pump).in(units::metre), 1),
                         units::format_shortest(pump.efficiency.value())});
    }
    return Sentence::joined(std::move(parts), "; ");
}

}  // namespace

SeasonCost season_cost(const SeasonResult& season, const WaterRates& water,
                       const EnergyRates& energy, std::span<const Pump> pumps) {
    if (!water.empty() && !energy.empty() && water.currency() != energy.currency()) {
        throw InputError({phrase("budget", "water in %1, energy in %2"), water.currency(), energy.currency()},
                         phrase("budget", "one currency"));
    }
    SeasonCost out;
    out.currency = water.empty() ? energy.currency() : water.currency();
    out.convention = phrase("budget",
                            "one account for the site, billed by calendar month; water not used by the "
                            "turf is valued at the highest tiers reached");
    out.source = source_of(water, pumps);
    const auto per_volume = energy_per_cubic_metre(pumps);
    for (const SeasonMonth& month : season.months) {
        PeriodCost cost;
        add_money(water, month, cost);
        add_energy(per_volume, energy, month, cost);
        if (!water.empty() && month.use && !cost.bill) ++out.months_without_bill;
        add_to(out.total, cost);
        out.months.push_back(std::move(cost));
    }
    return out;
}

}  // namespace evenfall::budget
