// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/quarter_rule.h"

#include <span>

/// The arithmetic under every uniformity figure: means over all cans and over the lowest share.
/// Plain numbers, so that resampling can use the same code.
/// Tests: tests/audit/low_share_test.cpp
namespace evenfall::audit {

/// The lowest cans that make up a share of the weight.
struct LowShare {
    double mean = 0.0;    ///< weighted mean of their catches
    double weight = 0.0;  ///< they stand for, in the unit of the weights
    double cans = 0.0;    ///< how many; not whole under QuarterRule::part_can
};

/// @param sorted  catches, lowest first; equal catches ordered by weight
/// @param weight  of each, none negative, their sum above zero
/// @param share   of the total weight, in (0, 1]
LowShare low_share(std::span<const double> sorted, std::span<const double> weight, double share,
                   QuarterRule rule);

/// Weighted mean, sum w x / sum w.
double mean_of(std::span<const double> values, std::span<const double> weight);

/// 1 - sum w |x - m| / (m sum w): Christiansen's coefficient with equal weights, the
/// Heermann-Hein coefficient when the weights are distances from the pivot point.
double mean_deviation_uniformity(std::span<const double> values, std::span<const double> weight);

/// s / m with s^2 = sum w (x - m)^2 / sum w x n / (n - 1): the sample standard deviation when the
/// weights are equal.
double variation_of(std::span<const double> values, std::span<const double> weight);

}  // namespace evenfall::audit
