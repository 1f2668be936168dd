// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/metered.h"

#include "core/input_error.h"
#include "core/meter/screens.h"

#include <algorithm>
#include <array>

namespace evenfall::budget {

using calendar::Date;
using calendar::Instant;
using std::chrono::days;
using units::Volume;

namespace {

/// Above this share of the time a period counts as covered: an hour of a month.
constexpr double covered_in_full = 0.9985;

std::optional<Volume> listed_leak(const std::vector<MonthLeak>& leaks, calendar::Month month) {
    Volume sum;
    for (const MonthLeak& leak : leaks) {
        if (leak.month == month) sum += leak.volume;
    }
    return sum;
}

bool in_place(const meter::Meter& meter, DayRun run) {
    return !(meter.installed && *meter.installed > run.to) &&
           !(meter.removed && *meter.removed < run.from);
}

}  // namespace

MeteredSite::MeteredSite(std::span<const MeterInput> meters, const calendar::TimeZone& zone,
                         calendar::Month from, calendar::Month to)
    : meters_(meters), zone_(zone), from_(from), below_(meters.size()) {
    check_tree();
    for (std::size_t i = 0; i < meters.size(); ++i) {
        if (const auto above = index_of(meters[i].meter.parent)) below_[*above].push_back(i);
    }
    std::vector<Instant> edges;
    for (auto m = from; m <= calendar::plus_months(to, 1); m = calendar::plus_months(m, 1)) {
        edges.push_back(zone.start_of_day(calendar::first_day(m)));
    }
    for (const MeterInput& input : meters) {
        records_.push_back(meter::meter_record(input.meter, input.readings));
        auto& months = months_.emplace_back();
        for (auto& use : meter::use_between(records_.back().intervals, edges)) {
            months.push_back({use, std::nullopt});
        }
        std::vector<meter::MonthLeak> screened;
        if (!input.leaks) {
            const meter::ScreenInput screen{input.meter, input.readings, records_.back(), zone};
            screened = meter::leak_by_month(screen, from, to);
        }
        for (std::size_t k = 0; k < months.size(); ++k) {
            const auto month = calendar::plus_months(from, static_cast<int>(k));
            if (input.leaks) {
                months[k].leak = listed_leak(*input.leaks, month);
            } else if (screened[k].screened) {
                months[k].leak = screened[k].volume;
            }
        }
    }
}

void MeteredSite::check_tree() const {
    for (std::size_t i = 0; i < meters_.size(); ++i) {
        const std::string& code = meters_[i].meter.code;
        if (index_of(code) != i) throw InputError("meter " + code + " twice", "each meter once");
        std::optional<std::size_t> above = i;
        for (std::size_t steps = 0; above; ++steps) {
            if (steps > meters_.size()) {
                throw InputError("meter " + code + " below itself", "a meter above it, or none");
            }
            above = index_of(meters_[*above].meter.parent);
        }
    }
}

std::optional<std::size_t> MeteredSite::index_of(const std::string& code) const {
    if (code.empty()) return std::nullopt;
    for (std::size_t i = 0; i < meters_.size(); ++i) {
        if (meters_[i].meter.code == code) return i;
    }
    return std::nullopt;
}

const MeteredSite::Month& MeteredSite::month_of(std::size_t meter, calendar::Month month) const {
    return months_[meter][static_cast<std::size_t>((month - from_).count())];
}

std::span<const meter::VolumeInterval> MeteredSite::intervals_in(std::size_t meter, Instant from,
                                                                 Instant to) const {
    const auto& all = records_[meter].intervals;
    const auto first = std::partition_point(all.begin(), all.end(),
                                            [&](const auto& v) { return v.to <= from; });
    const auto last =
        std::partition_point(first, all.end(), [&](const auto& v) { return v.from < to; });
    return {first, last};
}

std::optional<DayRun> MeteredSite::days_metered(std::size_t meter, calendar::Month month) const {
    const DayRun whole{calendar::first_day(month), calendar::last_day(month)};
    const auto& use = month_of(meter, month).use;
    if (!use.volume) return std::nullopt;
    if (use.covered_share >= covered_in_full) return whole;
    const auto inside = intervals_in(meter, zone_.start_of_day(whole.from),
                                     zone_.start_of_day(whole.to + days{1}));
    if (inside.empty()) return std::nullopt;
    // An interval that ends at midnight does not touch the day that begins there.
    const Date first = zone_.day_of(inside.front().from);
    const Date last = zone_.day_of(inside.back().to - std::chrono::seconds{1});
    return DayRun{std::max(first, whole.from), std::min(last, whole.to)};
}

meter::PeriodUse MeteredSite::use_of(std::size_t meter, DayRun run) const {
    const auto month = calendar::month_of(run.from);
    if (run.from == calendar::first_day(month) && run.to == calendar::last_day(month)) {
        return month_of(meter, month).use;
    }
    const std::array edges{zone_.start_of_day(run.from), zone_.start_of_day(run.to + days{1})};
    return meter::use_between(intervals_in(meter, edges[0], edges[1]), edges).front();
}

OwnUse MeteredSite::own_use(std::size_t meter, DayRun run) const {
    const auto whole = use_of(meter, run);
    OwnUse own{whole.volume, whole.estimated_share, whole.covered_share, false};
    if (!own.volume || below_[meter].empty()) return own;
    Volume below;
    double weight = whole.volume->si();
    double estimated = weight * whole.estimated_share;
    for (const std::size_t sub : below_[meter]) {
        if (!in_place(meters_[sub].meter, run)) continue;
        const auto use = use_of(sub, run);
        if (!use.volume) {
            own.volume.reset();
            return own;
        }
        // A submeter read for fewer days stands for the same days by its mean flow.
        const double scale = std::max(1.0, whole.covered_share / use.covered_share);
        below += *use.volume * scale;
        weight += use.volume->si();
        estimated += use.volume->si() * use.estimated_share;
    }
    own.submeters_above = below > *own.volume;
    own.volume = std::max(Volume{}, *own.volume - below);
    own.estimated_share = weight > 0.0 ? std::clamp(estimated / weight, 0.0, 1.0) : 0.0;
    return own;
}

std::optional<Volume> MeteredSite::own_leak(std::size_t meter, calendar::Month month) const {
    auto leak = month_of(meter, month).leak;
    if (!leak) return leak;
    for (const std::size_t sub : below_[meter]) {
        *leak -= month_of(sub, month).leak.value_or(Volume{});
    }
    return std::max(Volume{}, *leak);
}

}  // namespace evenfall::budget
