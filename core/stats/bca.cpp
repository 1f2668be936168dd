// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/bca.h"

#include "core/stats/normal.h"

#include <algorithm>
#include <cmath>

namespace evenfall::stats {
namespace {

double acceleration_of(std::span<const double> jackknife) {
    double mean = 0.0;
    for (const double j : jackknife) mean += j;
    mean /= static_cast<double>(jackknife.size());
    double squares = 0.0;
    double cubes = 0.0;
    for (const double j : jackknife) {
        const double d = mean - j;
        squares += d * d;
        cubes += d * d * d;
    }
    return squares > 0.0 ? cubes / (6.0 * std::pow(squares, 1.5)) : 0.0;
}

}  // namespace

Phrase text_of(IntervalMethod method) {
    switch (method) {
        case IntervalMethod::bca:
            return phrase("stats", "BCa bootstrap");
        case IntervalMethod::percentile:
            return phrase("stats", "percentile bootstrap");
        case IntervalMethod::bca_widened:
            return phrase("stats", "BCa bootstrap, widened for few values");
        case IntervalMethod::point:
            return phrase("stats", "no spread in the resamples");
    }
    return {};
}

Replicates::Replicates(double observed, std::vector<double> values,
                       std::span<const double> jackknife)
    : observed_(observed), sorted_(std::move(values)) {
    const auto defined = std::partition(sorted_.begin(), sorted_.end(),
                                        [](double v) { return std::isfinite(v); });
    undefined_ = static_cast<std::size_t>(sorted_.end() - defined);
    sorted_.erase(defined, sorted_.end());
    std::sort(sorted_.begin(), sorted_.end());

    const auto [first, last] = std::equal_range(sorted_.begin(), sorted_.end(), observed);
    const double below = static_cast<double>(first - sorted_.begin()) +
                         0.5 * static_cast<double>(last - first);
    const auto n = static_cast<double>(sorted_.size());
    const bool finite = !jackknife.empty() &&
                        std::all_of(jackknife.begin(), jackknife.end(),
                                    [](double v) { return std::isfinite(v); });
    correctable_ = finite && below > 0.0 && below < n;
    if (correctable_) {
        z0_ = normal_quantile(below / n);
        a_ = acceleration_of(jackknife);
    }
}

bool Replicates::all_alike() const {
    // Equal values still differ in their last digits when they were summed in different orders.
    return sorted_.back() - sorted_.front() <= 1e-12 * std::abs(sorted_.back());
}

double Replicates::share_below(double threshold) const {
    const auto n = static_cast<double>(sorted_.size());
    const auto [first, last] = std::equal_range(sorted_.begin(), sorted_.end(), threshold);
    const auto below = static_cast<double>(first - sorted_.begin());
    const auto tied = static_cast<double>(last - first);
    // Kept off 0 and 1, which no number of resamples can show.
    if (tied > 0.0 || below == 0.0 || below == n) {
        return std::clamp((below + 0.5 * tied) / n, 1.0 / (n + 1.0), n / (n + 1.0));
    }
    // Between two replicates: the inverse of quantile().
    const double z_below = normal_quantile(below / (n + 1.0));
    const double z_above = normal_quantile((below + 1.0) / (n + 1.0));
    const double part = (threshold - *(first - 1)) / (*first - *(first - 1));
    return normal_cdf(z_below + part * (z_above - z_below));
}

bool Replicates::usable() const {
    return sorted_.size() >= 100 && undefined_ * 20 <= sorted_.size() + undefined_;
}

double Replicates::quantile(double alpha) const {
    const auto n = static_cast<double>(sorted_.size());
    const double rank = (n + 1.0) * alpha;
    if (!(rank >= 1.0)) return sorted_.front();
    if (rank >= n) return sorted_.back();
    const double k = std::floor(rank);
    const double below = sorted_[static_cast<std::size_t>(k) - 1];
    const double above = sorted_[static_cast<std::size_t>(k)];
    if (rank == k) return below;
    const double z_below = normal_quantile(k / (n + 1.0));
    const double z_above = normal_quantile((k + 1.0) / (n + 1.0));
    return below + (normal_quantile(alpha) - z_below) / (z_above - z_below) * (above - below);
}

std::optional<Interval> Replicates::percentile_interval(double level) const {
    if (!usable()) return std::nullopt;
    const double tail = (1.0 - level) / 2.0;
    if (all_alike()) {
        return Interval{observed_, observed_, level, IntervalMethod::point, 0.0, 0.0};
    }
    return Interval{quantile(tail), quantile(1.0 - tail), level, IntervalMethod::percentile, 0.0, 0.0};
}

std::optional<Interval> Replicates::interval(double level, double widening) const {
    auto plain = percentile_interval(level);
    if (!plain || plain->method == IntervalMethod::point || !correctable_) return plain;
    const double z_tail = widening * normal_quantile((1.0 - level) / 2.0);
    const auto bound = [&](double z_level) {
        const double z = z0_ + z_level;
        return quantile(normal_cdf(z0_ + z / (1.0 - a_ * z)));
    };
    const auto method = widening == 1.0 ? IntervalMethod::bca : IntervalMethod::bca_widened;
    return Interval{bound(z_tail), bound(-z_tail), level, method, z0_, a_};
}

std::optional<double> Replicates::confidence_of_at_least(double threshold) const {
    if (!usable()) return std::nullopt;
    if (all_alike()) return observed_ >= threshold ? 1.0 : 0.0;
    const double g = share_below(threshold);
    if (!correctable_) return 1.0 - g;
    // Solve Phi(z0 + (z0 + z) / (1 - a (z0 + z))) = g for z, then alpha = Phi(z).
    const double u = normal_quantile(g) - z0_;
    return 1.0 - normal_cdf(u / (1.0 + a_ * u) - z0_);
}

}  // namespace evenfall::stats
