// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/resample_kernel.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace evenfall::audit {
namespace {

constexpr double undefined = std::numeric_limits<double>::quiet_NaN();

/// How many of n equal cans make up a share: whole ones, and a part of the next.
struct Cut {
    std::size_t whole;
    double part;
};

Cut cut(std::size_t n, std::size_t denominator, QuarterRule rule) {
    const std::size_t whole = n / denominator;
    const std::size_t rest = n % denominator;
    const bool half_or_more = 2 * rest >= denominator;
    switch (rule) {
        case QuarterRule::part_can:
            return {whole, static_cast<double>(rest) / static_cast<double>(denominator)};
        case QuarterRule::whole_cans: return {std::max<std::size_t>(1, whole), 0.0};
        case QuarterRule::nearest:
            return {std::max<std::size_t>(1, whole + (half_or_more ? 1 : 0)), 0.0};
        case QuarterRule::round_up: return {whole + (rest != 0 ? 1 : 0), 0.0};
    }
    return {whole, 0.0};
}

/// Walks up from the driest can.
struct Walk {
    std::size_t can = 0;
    std::size_t passed = 0;
    double sum = 0.0;
};

}  // namespace

ResampleKernel::ResampleKernel(const Sample& sample, QuarterRule rule)
    : rule_(rule), equal_weights_(sample.equal_weights), rank_(sample.cans.size()) {
    std::vector<std::size_t> order(sample.cans.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        const SampleCan& ca = sample.cans[a];
        const SampleCan& cb = sample.cans[b];
        return ca.depth != cb.depth ? ca.depth < cb.depth : ca.weight < cb.weight;
    });
    for (std::size_t k = 0; k < order.size(); ++k) {
        rank_[order[k]] = k;
        value_.push_back(sample.cans[order[k]].depth.si());
        weight_.push_back(sample.cans[order[k]].weight);
    }
}

DrawnFigures ResampleKernel::figures(std::span<const std::int32_t> times,
                                     std::size_t draws) const {
    return equal_weights_ ? equal(times, draws) : weighted(times);
}

DrawnFigures ResampleKernel::equal(std::span<const std::int32_t> times, std::size_t draws) const {
    const std::size_t n = value_.size();
    // Four sums side by side: the order of additions is fixed, so the result is too.
    double part[4] = {0.0, 0.0, 0.0, 0.0};
    std::size_t i = 0;
    for (; i + 4 <= n; i += 4) {
        for (std::size_t k = 0; k < 4; ++k) part[k] += times[i + k] * value_[i + k];
    }
    for (; i < n; ++i) part[0] += times[i] * value_[i];
    const double mean = ((part[0] + part[1]) + (part[2] + part[3])) / static_cast<double>(draws);
    if (!(mean > 0.0)) return {mean, undefined, undefined, undefined, undefined};

    const auto low_mean = [&](Walk& walk, Cut c) {
        while (walk.passed + static_cast<std::size_t>(times[walk.can]) <= c.whole) {
            walk.passed += static_cast<std::size_t>(times[walk.can]);
            walk.sum += times[walk.can] * value_[walk.can];
            ++walk.can;
            if (walk.can == n) return walk.sum / static_cast<double>(c.whole);
        }
        const double rest = static_cast<double>(c.whole - walk.passed) + c.part;
        return (walk.sum + rest * value_[walk.can]) / (static_cast<double>(c.whole) + c.part);
    };
    Walk walk;
    const double quarter = low_mean(walk, cut(draws, 4, rule_));
    const double half = low_mean(walk, cut(draws, 2, QuarterRule::part_can));

    // sum |x - m| = 2 sum over x < m of (m - x).
    const auto above = static_cast<std::size_t>(
        std::lower_bound(value_.begin(), value_.end(), mean) - value_.begin());
    double below_sum[4] = {0.0, 0.0, 0.0, 0.0};
    std::int64_t below = 0;
    std::size_t j = 0;
    for (; j + 4 <= above; j += 4) {
        for (std::size_t k = 0; k < 4; ++k) below_sum[k] += times[j + k] * value_[j + k];
        below += times[j] + times[j + 1] + times[j + 2] + times[j + 3];
    }
    for (; j < above; ++j) {
        below_sum[0] += times[j] * value_[j];
        below += times[j];
    }
    const double deviation =
        2.0 * (mean * static_cast<double>(below) -
               ((below_sum[0] + below_sum[1]) + (below_sum[2] + below_sum[3])));

    std::size_t driest = 0;
    while (times[driest] == 0) ++driest;
    return {mean, quarter / mean, half / mean,
            1.0 - deviation / (mean * static_cast<double>(draws)),
            value_[driest] > 0.0 ? mean / value_[driest] : undefined};
}

DrawnFigures ResampleKernel::weighted(std::span<const std::int32_t> times) const {
    const std::size_t n = value_.size();
    double total = 0.0;
    double sum = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
        total += times[i] * weight_[i];
        sum += times[i] * weight_[i] * value_[i];
    }
    const double mean = sum / total;
    if (!(mean > 0.0)) return {mean, undefined, undefined, undefined, undefined};

    constexpr double slack = 1e-12;
    const auto low_mean = [&](double share, QuarterRule rule) {
        const double target = share * total;
        double weight = 0.0;
        double water = 0.0;
        for (std::size_t i = 0; i < n; ++i) {
            const double w = weight_[i];
            if (times[i] == 0 || !(w > 0.0)) continue;
            // As many copies of this can as stay below the target, then the one that reaches it.
            const double room = (target * (1.0 - slack) - weight) / w;
            if (static_cast<double>(times[i]) < room) {
                weight += times[i] * w;
                water += times[i] * w * value_[i];
                continue;
            }
            const double full = std::max(0.0, std::ceil(room) - 1.0);
            weight += full * w;
            water += full * w * value_[i];
            double part = 1.0;
            if (weight + w > target * (1.0 + slack)) {
                const double under = target - weight;
                const double over = weight + w - target;
                if (rule == QuarterRule::part_can) part = under / w;
                if (rule == QuarterRule::nearest && under < over - slack * target) part = 0.0;
                if (rule == QuarterRule::whole_cans) part = 0.0;
                if (weight <= 0.0 && part == 0.0) part = 1.0;
            }
            weight += part * w;
            water += part * w * value_[i];
            break;
        }
        return water / weight;
    };
    double deviation = 0.0;
    for (std::size_t i = 0; i < n && value_[i] < mean; ++i) {
        deviation += 2.0 * times[i] * weight_[i] * (mean - value_[i]);
    }
    std::size_t driest = 0;
    while (times[driest] == 0) ++driest;
    return {mean, low_mean(0.25, rule_) / mean, low_mean(0.5, QuarterRule::part_can) / mean,
            1.0 - deviation / (mean * total),
            value_[driest] > 0.0 ? mean / value_[driest] : undefined};
}

}  // namespace evenfall::audit
