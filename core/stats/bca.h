// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

/// Bootstrap intervals from replicates of a statistic.
///
///     z0 = Phi^-1(share of replicates below the observed value, ties counted half)
///     a  = sum d^3 / (6 (sum d^2)^1.5),  d = mean of the jackknife values - jackknife value
///     end points: replicate quantiles at Phi(z0 + (z0 + z) / (1 - a (z0 + z))), z = Phi^-1(alpha)
///
/// A quantile between two ordered replicates is interpolated on the normal scale, which is what
/// R's package boot does, so that both programs agree to the noise of the draws.
///
/// Sources: Efron, Better bootstrap confidence intervals, JASA 82, 1987; Davison & Hinkley,
/// Bootstrap Methods and Their Application, 1997, section 5.3 and (5.8) for the interpolation
/// [memory]. Tests: tests/stats/bca_test.cpp, tests/published/bootstrap_test.cpp
namespace evenfall::stats {

enum class IntervalMethod : int {
    bca = 1,         ///< bias corrected and accelerated
    percentile = 2,  ///< plain quantiles of the replicates
    point = 3,       ///< every replicate equal: there is nothing to estimate
    bca_widened = 4  ///< BCa with its normal quantiles multiplied by a factor above one
};
Phrase text_of(IntervalMethod method);

struct Interval {
    double low = 0.0;
    double high = 0.0;
    double level = 0.0;  ///< two-sided, such as 0.90
    IntervalMethod method = IntervalMethod::bca;
    double bias_correction = 0.0;  ///< z0
    double acceleration = 0.0;     ///< a
};

/// Sorted replicates of a statistic with what BCa needs besides.
class Replicates {
  public:
    /// @param observed    the statistic of the data
    /// @param values      of the resamples; those that are not finite were undefined, left out here
    /// @param jackknife   of the data without one value each; empty: no acceleration
    Replicates(double observed, std::vector<double> values, std::span<const double> jackknife);

    std::size_t defined() const { return sorted_.size(); }
    std::size_t undefined() const { return undefined_; }
    double observed() const { return observed_; }

    /// BCa; percentile with the method saying so when the observed value lies outside of all
    /// replicates or without jackknife values. Nothing when over 5 % of the resamples were
    /// undefined or fewer than 100 are left.
    /// @param widening  multiplies the normal quantile of the tails; 1 is plain BCa
    std::optional<Interval> interval(double level, double widening = 1.0) const;
    std::optional<Interval> percentile_interval(double level) const;

    /// Confidence that the true value is `threshold` or more: one minus the alpha at which a
    /// one-sided lower BCa bound would touch the threshold.
    std::optional<double> confidence_of_at_least(double threshold) const;

  private:
    double quantile(double alpha) const;
    double share_below(double threshold) const;
    bool all_alike() const;
    bool usable() const;

    double observed_;
    std::vector<double> sorted_;
    std::size_t undefined_ = 0;
    double z0_ = 0.0;
    double a_ = 0.0;
    bool correctable_ = false;
};

}  // namespace evenfall::stats
