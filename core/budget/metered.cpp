// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/metered.h"

#include "core/input_error.h"
#include "core/meter/screens.h"

#include <algorithm>
#include <array>
#include <set>

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

/// Adds a month's leak of one meter to that of its place; unknown only when every meter's is.
void add_leak(std::optional<Volume>& sum, std::optional<Volume> part) {
    if (part) sum = sum.value_or(Volume{}) + *part;
}

}  // namespace

MeteredSite::MeteredSite(std::span<const MeterInput> meters, const calendar::TimeZone& zone,
                         calendar::Month from, calendar::Month to)
    : meters_(meters), zone_(zone), from_(from) {
    find_places();
    std::vector<Instant> edges;
    for (auto m = from; m <= calendar::plus_months(to, 1); m = calendar::plus_months(m, 1)) {
        edges.push_back(zone.start_of_day(calendar::first_day(m)));
    }
    for (Place& place : places_) read_place(place, edges, to);
}

void MeteredSite::find_places() {
    std::vector<meter::Meter> records;
    std::set<std::string> codes;
    for (const MeterInput& input : meters_) {
        records.push_back(input.meter);
        if (!codes.insert(input.meter.code).second) {
            throw InputError({phrase("budget", "meter %1 twice"), input.meter.code},
                             phrase("budget", "each meter once"));
        }
    }
    std::vector<bool> taken(records.size());
    for (std::size_t i = 0; i < records.size(); ++i) {
        if (taken[i]) continue;
        Place place;
        for (const std::size_t k : meter::meters_in_turn(records, records[i].code)) {
            if (!taken[k]) place.meters.push_back(k);
            taken[k] = true;
        }
        places_.push_back(std::move(place));
    }
    for (std::size_t i = 0; i < places_.size(); ++i) {
        if (const auto up = above(i)) places_[*up].below.push_back(i);
        std::optional<std::size_t> up = i;
        for (std::size_t steps = 0; up; ++steps) {
            if (steps > places_.size()) {
                throw InputError({phrase("budget", "meter %1 below itself"), name(i)},
                                 phrase("budget", "a meter above it, or none"));
            }
            up = above(*up);
        }
    }
}

void MeteredSite::read_place(Place& place, std::span<const Instant> edges, calendar::Month to) {
    std::vector<meter::MeterRecord> records;
    place.months.resize(edges.size() - 1);
    for (const std::size_t i : place.meters) {
        const MeterInput& input = meters_[i];
        records.push_back(meter::meter_record(input.meter, input.readings));
        place.problems += records.back().problems.size();
        std::vector<meter::MonthLeak> screened;
        if (!input.leaks) {
            screened = meter::leak_by_month({input.meter, input.readings, records.back(), zone_},
                                            from_, to);
        }
        for (std::size_t k = 0; k < place.months.size(); ++k) {
            if (input.leaks) {
                const auto month = calendar::plus_months(from_, static_cast<int>(k));
                add_leak(place.months[k].leak, listed_leak(*input.leaks, month));
            } else if (screened[k].screened) {
                add_leak(place.months[k].leak, screened[k].volume);
            }
        }
    }
    place.intervals = records.size() == 1 ? std::move(records.front().intervals)
                                          : meter::records_in_turn(records);
    const auto uses = meter::use_between(place.intervals, edges);
    for (std::size_t k = 0; k < uses.size(); ++k) place.months[k].use = uses[k];
}

std::optional<std::size_t> MeteredSite::above(std::size_t place) const {
    for (const std::size_t i : places_[place].meters) {
        if (const auto up = index_of(meters_[i].meter.parent)) return up;
    }
    return std::nullopt;
}

bool MeteredSite::in_use(std::size_t place, DayRun run) const {
    const meter::Meter& first = meters_[places_[place].meters.front()].meter;
    const meter::Meter& last = meters_[places_[place].meters.back()].meter;
    return !(first.installed && *first.installed > run.to) &&
           !(last.removed && *last.removed < run.from);
}

std::string MeteredSite::name(std::size_t place) const {
    std::string name;
    for (const std::size_t i : places_[place].meters) {
        if (!name.empty()) name += " then ";
        name += meters_[i].meter.code;
    }
    return name;
}

std::optional<std::size_t> MeteredSite::index_of(const std::string& code) const {
    if (code.empty()) return std::nullopt;
    for (std::size_t i = 0; i < places_.size(); ++i) {
        for (const std::size_t k : places_[i].meters) {
            if (meters_[k].meter.code == code) return i;
        }
    }
    return std::nullopt;
}

const MeteredSite::Month& MeteredSite::month_of(std::size_t place, calendar::Month month) const {
    return places_[place].months[static_cast<std::size_t>((month - from_).count())];
}

std::span<const meter::VolumeInterval> MeteredSite::intervals_in(std::size_t place, Instant from,
                                                                 Instant to) const {
    const auto& all = places_[place].intervals;
    const auto first = std::partition_point(all.begin(), all.end(),
                                            [&](const auto& v) { return v.to <= from; });
    const auto last =
        std::partition_point(first, all.end(), [&](const auto& v) { return v.from < to; });
    return {first, last};
}

std::optional<DayRun> MeteredSite::days_metered(std::size_t place, calendar::Month month) const {
    const DayRun whole{calendar::first_day(month), calendar::last_day(month)};
    const auto& use = month_of(place, month).use;
    if (!use.volume) return std::nullopt;
    if (use.covered_share >= covered_in_full) return whole;
    const auto inside = intervals_in(place, zone_.start_of_day(whole.from),
                                     zone_.start_of_day(whole.to + days{1}));
    if (inside.empty()) return std::nullopt;
    // An interval that ends at midnight does not touch the day that begins there.
    const Date first = zone_.day_of(inside.front().from);
    const Date last = zone_.day_of(inside.back().to - std::chrono::seconds{1});
    return DayRun{std::max(first, whole.from), std::min(last, whole.to)};
}

meter::PeriodUse MeteredSite::use_of(std::size_t place, DayRun run) const {
    const auto month = calendar::month_of(run.from);
    if (run.from == calendar::first_day(month) && run.to == calendar::last_day(month)) {
        return month_of(place, month).use;
    }
    const std::array edges{zone_.start_of_day(run.from), zone_.start_of_day(run.to + days{1})};
    return meter::use_between(intervals_in(place, edges[0], edges[1]), edges).front();
}

OwnUse MeteredSite::own_use(std::size_t place, DayRun run) const {
    const auto whole = use_of(place, run);
    OwnUse own{whole.volume, whole.estimated_share, whole.covered_share, false};
    if (!own.volume || places_[place].below.empty()) return own;
    Volume below;
    double weight = whole.volume->si();
    double estimated = weight * whole.estimated_share;
    for (const std::size_t sub : places_[place].below) {
        if (!in_use(sub, run)) continue;
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

std::vector<Volume> MeteredSite::own_days(std::size_t place, DayRun run) const {
    std::vector<Instant> edges;
    for (Date d = run.from; d <= run.to + days{1}; d += days{1}) {
        edges.push_back(zone_.start_of_day(d));
    }
    const auto by_day = [&](std::size_t at) {
        return meter::use_between(intervals_in(at, edges.front(), edges.back()), edges);
    };
    std::vector<Volume> volumes;
    for (const auto& day : by_day(place)) volumes.push_back(day.volume.value_or(Volume{}));
    for (const std::size_t sub : places_[place].below) {
        const auto uses = by_day(sub);
        for (std::size_t i = 0; i < uses.size(); ++i) {
            volumes[i] -= uses[i].volume.value_or(Volume{});
        }
    }
    for (Volume& volume : volumes) volume = std::max(Volume{}, volume);
    return volumes;
}

std::optional<Volume> MeteredSite::own_leak(std::size_t place, calendar::Month month) const {
    auto leak = month_of(place, month).leak;
    if (!leak) return leak;
    for (const std::size_t sub : places_[place].below) {
        *leak -= month_of(sub, month).leak.value_or(Volume{});
    }
    return std::max(Volume{}, *leak);
}

}  // namespace evenfall::budget
