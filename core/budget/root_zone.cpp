// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/root_zone.h"

#include "core/budget/soil.h"
#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <exception>
#include <limits>
#include <string>
#include <thread>

namespace evenfall::budget {
namespace {

using units::Depth;

std::string mm(Depth d) { return units::format_shortest(d.in(units::millimetre)) + " mm"; }

/// The arrays of all buckets; none overlaps another.
struct Buckets {
    std::size_t count;
    const double* __restrict__ share;
    double* __restrict__ depletion;
    double* __restrict__ drainage;
    double* __restrict__ runoff;
    double* __restrict__ actual_et;
    double* __restrict__ stress;
};

/// What all buckets of a day have in common [m].
struct Day {
    double crop_et, rain, irrigation, limit, available, stress_scale;  // scale: 1/((1 - p) TAW)
};

// Comparisons in place of branches: the compiler turns them into selects and works on several
// buckets at a time. The arithmetic per bucket is the same whatever its neighbours are.
template <DayOrder order>
void run_day(const Buckets& b, const Day& d) {
    for (std::size_t i = 0; i < b.count; ++i) {
        const double applied = d.irrigation * b.share[i];
        const double taken = applied < d.limit ? applied : d.limit;
        const double in = d.rain + taken;
        double depletion = b.depletion[i];
        double drained = 0.0;
        if constexpr (order == DayOrder::water_first) {
            depletion -= in;
            drained = depletion < 0.0 ? -depletion : 0.0;
            depletion = depletion < 0.0 ? 0.0 : depletion;
        }
        const double left = d.available - depletion > 0.0 ? d.available - depletion : 0.0;
        const double factor = left * d.stress_scale;
        const double wanted = factor < 1.0 ? factor * d.crop_et : d.crop_et;
        const double et = wanted < left ? wanted : left;
        depletion += et;
        if constexpr (order == DayOrder::water_last) {
            depletion -= in;
            drained = depletion < 0.0 ? -depletion : 0.0;
            depletion = depletion < 0.0 ? 0.0 : depletion;
        }
        b.depletion[i] = depletion;
        b.drainage[i] += drained;
        b.runoff[i] += applied - taken;
        b.actual_et[i] += et;
        b.stress[i] += factor < 1.0 ? 1.0 : 0.0;
    }
}

void check_zone(const RootZone& z) {
    const double taw = z.available.si();
    if (!(taw > 0.0 && taw <= 2.0)) {
        throw InputError(mm(z.available), phrase("budget", "available water above 0 and at most 2000 mm"));
    }
    if (!(z.depletion_share > 0.0 && z.depletion_share < 1.0)) {
        throw InputError(units::format_shortest(z.depletion_share),
                         phrase("budget", "a depletion share p between 0 and 1"));
    }
    if (!(z.start_depletion.si() >= 0.0 && z.start_depletion <= z.available)) {
        throw InputError(
            mm(z.start_depletion),
            {phrase("budget", "a starting depletion from 0 to the available water, %1"), mm(z.available)});
    }
}

void check_buckets(std::span<const double> shares, std::span<const double> weights) {
    if (shares.empty()) throw InputError(phrase("budget", "no can"), phrase("budget", "at least one can"));
    for (const double s : shares) {
        if (!(s >= 0.0 && s < 1e6)) {
            throw InputError(units::format_shortest(s), phrase("budget", "a share of the mean of 0 or more"));
        }
    }
    if (!weights.empty() && weights.size() != shares.size()) {
        throw InputError({phrase("budget", "%1 weights"), weights.size()},
                         {phrase("budget", "one weight for each of the %1 cans"), shares.size()});
    }
    double total = 0.0;
    for (const double w : weights) {
        if (!(w >= 0.0 && w < 1e12)) {
            throw InputError(units::format_shortest(w), phrase("budget", "a weight of 0 or more"));
        }
        total += w;
    }
    if (!weights.empty() && !(total > 0.0)) throw InputError("0", phrase("budget", "weights with a sum above 0"));
}

void check_span(std::span<const Depth> values, std::size_t days, Phrase what, bool optional) {
    if (optional && values.empty()) return;
    if (values.size() != days) {
        throw InputError({phrase("budget", "%1 values of %2"), values.size(), what},
                         {phrase("budget", "%1, one for each day"), days});
    }
}

void check_values(std::span<const Depth> values, Phrase what, double low) {
    for (std::size_t i = 0; i < values.size(); ++i) {
        const double v = values[i].si();
        if (!(v >= low && std::isfinite(v))) {
            throw InputError(units::format_shortest(values[i].in(units::millimetre)) + " mm",
                             {phrase("budget", "%1 of 0 mm or more on day %2"), what, i + 1});
        }
    }
}

double weighted_mean(const std::vector<double>& values, const std::vector<double>& weights) {
    double sum = 0.0;
    double total = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        sum += weights[i] * values[i];
        total += weights[i];
    }
    return sum / total;
}

}  // namespace

RootZoneBalance::RootZoneBalance(const RootZone& zone, std::span<const double> shares,
                                 std::span<const double> weights)
    : zone_(zone) {
    check_zone(zone);
    check_buckets(shares, weights);
    const std::size_t n = shares.size();
    share_.assign(shares.begin(), shares.end());
    if (weights.empty()) {
        weight_.assign(n, 1.0);
    } else {
        weight_.assign(weights.begin(), weights.end());
    }
    depletion_.assign(n, zone.start_depletion.si());
    clear_totals();
}

void RootZoneBalance::clear_totals() {
    const std::size_t n = share_.size();
    crop_et_ = irrigation_ = rain_ = Depth{};
    start_ = depletion_;
    drainage_.assign(n, 0.0);
    runoff_.assign(n, 0.0);
    actual_et_.assign(n, 0.0);
    stress_.assign(n, 0.0);
}

void RootZoneBalance::check(const RootZoneDays& days) const {
    const std::size_t n = days.crop_et.size();
    check_span(days.rain, n, phrase("budget", "rain"), false);
    check_span(days.irrigation, n, phrase("budget", "irrigation"), false);
    check_span(days.intake_limit, n, phrase("budget", "intake limit"), true);
    check_span(days.available, n, phrase("budget", "available water"), true);
    check_values(days.crop_et, phrase("budget", "crop ET"), -1.0);
    check_values(days.rain, phrase("budget", "rain"), 0.0);
    check_values(days.irrigation, phrase("budget", "irrigation"), 0.0);
    check_values(days.intake_limit, phrase("budget", "an intake limit"), 0.0);
    check_values(days.available, phrase("budget", "available water"), 1e-6);
}

void RootZoneBalance::advance(const RootZoneDays& days) {
    check(days);
    const Buckets buckets{share_.size(),    share_.data(),     depletion_.data(), drainage_.data(),
                          runoff_.data(),   actual_et_.data(), stress_.data()};
    for (std::size_t t = 0; t < days.crop_et.size(); ++t) {
        const Depth etc = std::max(Depth{}, days.crop_et[t]);
        const Depth available = days.available.empty() ? zone_.available : days.available[t];
        const double p = zone_.rule == DepletionRule::fixed
                             ? zone_.depletion_share
                             : adjusted_depletion_share(zone_.depletion_share, etc);
        const Day day{etc.si(),
                      days.rain[t].si(),
                      days.irrigation[t].si(),
                      days.intake_limit.empty() ? std::numeric_limits<double>::infinity()
                                                : days.intake_limit[t].si(),
                      available.si(),
                      1.0 / ((1.0 - p) * available.si())};
        if (zone_.order == DayOrder::water_first) {
            run_day<DayOrder::water_first>(buckets, day);
        } else {
            run_day<DayOrder::water_last>(buckets, day);
        }
        crop_et_ += etc;
        rain_ += days.rain[t];
        irrigation_ += days.irrigation[t];
    }
}

BucketTotals RootZoneBalance::can(std::size_t i) const {
    const auto depth = [&](const std::vector<double>& v) { return Depth::from_si(v.at(i)); };
    return {crop_et_,          depth(actual_et_), irrigation_ * share_.at(i), rain_,
            depth(drainage_),  depth(runoff_),    stress_.at(i),              depth(depletion_),
            depth(start_)};
}

BucketTotals RootZoneBalance::mean() const {
    const auto depth = [&](const std::vector<double>& v) {
        return Depth::from_si(weighted_mean(v, weight_));
    };
    return {crop_et_,
            depth(actual_et_),
            irrigation_ * weighted_mean(share_, weight_),
            rain_,
            depth(drainage_),
            depth(runoff_),
            weighted_mean(stress_, weight_),
            depth(depletion_),
            depth(start_)};
}

std::vector<double> shares_of_mean(std::span<const Depth> depths, std::span<const double> weights) {
    std::vector<double> values;
    for (const Depth d : depths) {
        if (!(d.si() >= 0.0 && std::isfinite(d.si()))) {
            throw InputError(mm(d), phrase("budget", "a catch of 0 mm or more"));
        }
        values.push_back(d.si());
    }
    check_buckets(values, weights);
    const std::vector<double> w = weights.empty()
                                      ? std::vector<double>(values.size(), 1.0)
                                      : std::vector<double>(weights.begin(), weights.end());
    const double mean = weighted_mean(values, w);
    if (!(mean > 0.0)) throw InputError("0 mm", phrase("budget", "a mean catch above 0"));
    for (double& v : values) v /= mean;
    return values;
}

UnevennessCost unevenness_cost(const RootZone& zone, const RootZoneDays& days,
                               std::span<const double> shares, std::span<const double> weights) {
    RootZoneBalance cans(zone, shares, weights);
    cans.advance(days);
    // The even bucket gets the cans' own mean, which need not be exactly 1 when some are left out.
    const double mean_share =
        weights.empty()
            ? weighted_mean({shares.begin(), shares.end()}, std::vector<double>(shares.size(), 1.0))
            : weighted_mean({shares.begin(), shares.end()}, {weights.begin(), weights.end()});
    const double one[] = {mean_share};
    RootZoneBalance even(zone, one);
    even.advance(days);
    const BucketTotals a = cans.mean();
    const BucketTotals b = even.mean();
    return {a, b, a.drainage + a.runoff - b.drainage - b.runoff, b.actual_et - a.actual_et};
}

std::vector<BucketTotals> run_cases(std::span<const RootZoneCase> cases, unsigned threads) {
    std::vector<BucketTotals> results(cases.size());
    std::vector<std::exception_ptr> errors(cases.size());
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t i = next++; i < cases.size(); i = next++) {
            try {
                RootZoneBalance balance(cases[i].zone, cases[i].shares, cases[i].weights);
                balance.advance(cases[i].days);
                results[i] = balance.mean();
            } catch (...) {
                errors[i] = std::current_exception();
            }
        }
    };
    {
        std::vector<std::jthread> others;
        for (unsigned t = 1; t < std::max(1U, threads); ++t) others.emplace_back(work);
        work();
    }
    for (const auto& error : errors) {
        if (error) std::rethrow_exception(error);
    }
    return results;
}

}  // namespace evenfall::budget
