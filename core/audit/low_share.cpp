// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/low_share.h"

#include <array>
#include <cmath>
#include <cstddef>
#include <utility>

namespace evenfall::audit {
namespace {

constexpr std::array rule_names{
    std::pair{QuarterRule::whole_cans, std::string_view{"whole-cans"}},
    std::pair{QuarterRule::nearest, std::string_view{"nearest"}},
    std::pair{QuarterRule::round_up, std::string_view{"round-up"}},
    std::pair{QuarterRule::part_can, std::string_view{"part-can"}}};

/// Sums of weights are compared with this relative slack: a quarter of the weight that is reached
/// but for rounding is reached.
constexpr double slack = 1e-12;

}  // namespace

std::string_view text_of(QuarterRule rule) {
    for (const auto& [r, name] : rule_names) {
        if (r == rule) return name;
    }
    return "";
}

std::optional<QuarterRule> quarter_rule_named(std::string_view name) {
    for (const auto& [r, known] : rule_names) {
        if (known == name) return r;
    }
    return std::nullopt;
}

double mean_of(std::span<const double> values, std::span<const double> weight) {
    double sum = 0.0;
    double total = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        sum += weight[i] * values[i];
        total += weight[i];
    }
    return sum / total;
}

double mean_deviation_uniformity(std::span<const double> values, std::span<const double> weight) {
    const double mean = mean_of(values, weight);
    double deviation = 0.0;
    double total = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        deviation += weight[i] * std::abs(values[i] - mean);
        total += weight[i];
    }
    return 1.0 - deviation / (mean * total);
}

double variation_of(std::span<const double> values, std::span<const double> weight) {
    const double mean = mean_of(values, weight);
    double squares = 0.0;
    double total = 0.0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        squares += weight[i] * (values[i] - mean) * (values[i] - mean);
        total += weight[i];
    }
    const auto n = static_cast<double>(values.size());
    return std::sqrt(squares / total * n / (n - 1.0)) / mean;
}

LowShare low_share(std::span<const double> sorted, std::span<const double> weight, double share,
                   QuarterRule rule) {
    double total = 0.0;
    for (const double w : weight) total += w;
    const double target = share * total;

    LowShare low;
    double sum = 0.0;
    for (std::size_t i = 0; i < sorted.size(); ++i) {
        const double before = low.weight;
        const double after = before + weight[i];
        if (after < target * (1.0 - slack)) {
            sum += weight[i] * sorted[i];
            low.weight = after;
            low.cans += 1.0;
            continue;
        }
        // This can reaches the share; the rules differ only in how much of it counts.
        double part = 1.0;
        const bool ends_here = after <= target * (1.0 + slack);
        if (!ends_here) {
            const double over = after - target;
            const double under = target - before;
            if (rule == QuarterRule::part_can) part = under / weight[i];
            if (rule == QuarterRule::nearest && under < over - slack * target) part = 0.0;
            if (rule == QuarterRule::whole_cans) part = 0.0;
            if (before <= 0.0 && part == 0.0) part = 1.0;  // at least one can
        }
        sum += part * weight[i] * sorted[i];
        low.weight += part * weight[i];
        low.cans += part;
        break;
    }
    low.mean = sum / low.weight;
    return low;
}

}  // namespace evenfall::audit
