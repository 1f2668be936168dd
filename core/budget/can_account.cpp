// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/can_account.h"

#include "core/budget/soil.h"
#include "core/input_error.h"

#include <algorithm>
#include <numeric>

namespace evenfall::budget {

using units::Depth;
using units::Volume;

namespace {

/// All buckets in one balance: the cans, the cans drawn together, one even, one with rain alone.
struct Buckets {
    std::vector<double> shares;
    std::vector<double> weights;  ///< of the cans, adding up to 1
    std::size_t cans() const { return weights.size(); }
    std::size_t drawn() const { return cans(); }
    std::size_t even() const { return 2 * cans(); }
    std::size_t rain_alone() const { return 2 * cans() + 1; }
};

Buckets buckets_of(std::span<const TestedCans> tests, units::LowQuarterDu target) {
    Buckets out;
    std::vector<double> drawn;
    for (const TestedCans& test : tests) {
        const double sum = std::accumulate(test.weights.begin(), test.weights.end(), 0.0);
        const double spread = 1.0 - test.du_lq.value();
        const double k = spread > 0.0 ? std::min(1.0, (1.0 - target.value()) / spread) : 1.0;
        for (std::size_t i = 0; i < test.shares.size(); ++i) {
            out.shares.push_back(test.shares[i]);
            out.weights.push_back(test.weights[i] / sum / static_cast<double>(tests.size()));
            drawn.push_back(std::max(0.0, 1.0 + (test.shares[i] - 1.0) * k));
        }
    }
    if (out.shares.empty())
        throw InputError(phrase("budget", "no cans"), phrase("budget", "the cans of a catch test"));
    out.shares.insert(out.shares.end(), drawn.begin(), drawn.end());
    out.shares.push_back(1.0);
    out.shares.push_back(0.0);
    return out;
}

struct Means {
    Depth et, drainage, gain, lack;
    double stress_days = 0.0;
};

void add_bucket(Means& means, const BucketTotals& bucket, double weight) {
    means.et += bucket.actual_et * weight;
    means.drainage += bucket.drainage * weight;
    means.gain += (bucket.start_depletion - bucket.depletion) * weight;
    means.lack += (bucket.crop_et - bucket.actual_et) * weight;
    means.stress_days += bucket.stress_days * weight;
}

Means mean_of_cans(const RootZoneBalance& balance, const Buckets& buckets, std::size_t first) {
    Means means;
    for (std::size_t i = 0; i < buckets.cans(); ++i) {
        add_bucket(means, balance.can(first + i), buckets.weights[i]);
    }
    return means;
}

Means of_one(const RootZoneBalance& balance, std::size_t bucket) {
    Means means;
    add_bucket(means, balance.can(bucket), 1.0);
    return means;
}

CanAccount account_of(const RootZoneBalance& balance, const Buckets& buckets,
                      const CanPeriod& period, units::Area size) {
    const Means cans = mean_of_cans(balance, buckets, 0);
    const Means drawn = mean_of_cans(balance, buckets, buckets.drawn());
    const Means even = of_one(balance, buckets.even());
    const Means rain = of_one(balance, buckets.rain_alone());
    CanAccount account;
    account.used_by_turf = (cans.et - rain.et) * size;
    account.over_scheduled = (even.drainage - rain.drainage) * size;
    account.uneven_unavoidable = (drawn.drainage - even.drainage) * size;
    account.uneven_avoidable = (cans.drainage - drawn.drainage) * size;
    account.stored = (cans.gain - rain.gain) * size;
    account.off_target = period.off_target;
    account.leak = period.leak;
    account.short_of_need = cans.lack * size;
    account.stress_days = cans.stress_days;
    return account;
}

/// The day's mean depth: metered within the periods, elsewhere what keeps the turf watered.
std::vector<Depth> irrigation_of(const CanCase& area) {
    std::vector<Depth> irrigation(area.crop_et.size());
    for (std::size_t i = 0; i < irrigation.size(); ++i) {
        irrigation[i] = std::max(Depth{}, area.crop_et[i] - area.rain[i]);
    }
    for (const CanPeriod& period : area.periods) {
        const auto days = std::span(area.by_day).subspan(period.first, period.days);
        const double sum = std::accumulate(days.begin(), days.end(), 0.0);
        const Depth mean = period.reached / area.size;
        for (std::size_t i = 0; i < period.days; ++i) {
            const double part = sum > 0.0 ? days[i] / sum : 1.0 / static_cast<double>(period.days);
            irrigation[period.first + i] = mean * part;
        }
    }
    return irrigation;
}

/// Mean over the cans of what a day's water leaves on the ground in one run.
Depth left_on_ground(const TestedCans& test, Depth day, units::Rate intake, Depth accumulation) {
    const Depth limit = most_infiltrated(day, *test.net_rate, intake, accumulation, 1);
    Depth sum;
    double weights = 0.0;
    for (std::size_t i = 0; i < test.shares.size(); ++i) {
        sum += std::max(Depth{}, day * test.shares[i] - limit) * test.weights[i];
        weights += test.weights[i];
    }
    return sum / weights;
}

}  // namespace

Volume CanAccount::use() const {
    return used_by_turf + uneven_unavoidable + uneven_avoidable + off_target + leak +
           over_scheduled + stored;
}

CanAccount& CanAccount::operator+=(const CanAccount& other) {
    for (const CanLine& line : can_lines()) this->*line.part += other.*line.part;
    stress_days += other.stress_days;
    return *this;
}

const std::array<CanLine, 8>& can_lines() {
    static constexpr std::array<CanLine, 8> lines{{
        {"used_by_turf", phrase("budget", "used by the turf"), &CanAccount::used_by_turf, true},
        {"uneven_unavoidable", phrase("budget", "uneven application, unavoidable"), &CanAccount::uneven_unavoidable,
         true},
        {"uneven_avoidable", phrase("budget", "uneven application, avoidable"), &CanAccount::uneven_avoidable, true},
        {"off_target", phrase("budget", "off target"), &CanAccount::off_target, true},
        {"leak", phrase("budget", "leak"), &CanAccount::leak, true},
        {"over_scheduled", phrase("budget", "over-scheduled"), &CanAccount::over_scheduled, true},
        {"stored", phrase("budget", "left in the soil"), &CanAccount::stored, true},
        {"short", phrase("budget", "short of the need"), &CanAccount::short_of_need, false},
    }};
    return lines;
}

std::vector<CanAccount> can_accounts(const CanCase& area, std::span<const TestedCans> tests) {
    const Buckets buckets = buckets_of(tests, area.target);
    const auto irrigation = irrigation_of(area);
    RootZoneBalance balance(area.zone, buckets.shares);
    const auto run = [&](std::size_t first, std::size_t days) {
        balance.advance({std::span(area.crop_et).subspan(first, days),
                         std::span(area.rain).subspan(first, days),
                         std::span(irrigation).subspan(first, days)});
    };
    std::vector<CanAccount> accounts;
    std::size_t done = 0;
    for (const CanPeriod& period : area.periods) {
        run(done, period.first - done);
        balance.clear_totals();
        run(period.first, period.days);
        accounts.push_back(account_of(balance, buckets, period, area.size));
        done = period.first + period.days;
    }
    return accounts;
}

std::optional<Volume> runoff_in_one_run(const CanCase& area, std::span<const TestedCans> tests,
                                        units::Rate intake, Depth accumulation) {
    const auto irrigation = irrigation_of(area);
    Depth sum;
    int with_rate = 0;
    for (const TestedCans& test : tests) {
        if (!test.net_rate) continue;
        ++with_rate;
        for (const CanPeriod& period : area.periods) {
            for (std::size_t i = period.first; i < period.first + period.days; ++i) {
                if (!(irrigation[i] > Depth{})) continue;
                sum += left_on_ground(test, irrigation[i], intake, accumulation);
            }
        }
    }
    if (with_rate == 0) return std::nullopt;
    return sum * area.size / static_cast<double>(with_rate);
}

}  // namespace evenfall::budget
