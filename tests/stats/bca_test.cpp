// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/bca.h"

#include "core/stats/normal.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

using namespace evenfall::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

/// 999 replicates at the normal quantiles k / 1000: every interpolated quantile is then exact.
std::vector<double> normal_replicates() {
    std::vector<double> v;
    for (int k = 1; k < 1000; ++k) v.push_back(normal_quantile(k / 1000.0));
    return v;
}

}  // namespace

// DERIVED: replicates symmetric about the observed value and no acceleration leave the quantiles.
TEST_CASE("without bias or skew BCa is the percentile interval", "[stats][derived]") {
    const std::vector<double> jackknife{-1.0, 1.0};
    const Replicates r(0.0, normal_replicates(), jackknife);
    const auto i = r.interval(0.90);
    REQUIRE(i);
    CHECK(i->method == IntervalMethod::bca);
    CHECK_THAT(i->low, WithinAbs(-1.6448536269514722, 1e-9));
    CHECK_THAT(i->high, WithinAbs(1.6448536269514722, 1e-9));
    CHECK_THAT(r.percentile_interval(0.90)->low, WithinAbs(i->low, 1e-12));
    CHECK_THAT(*r.confidence_of_at_least(-1.0), WithinAbs(normal_cdf(1.0), 1e-6));
    CHECK_THAT(r.interval(0.90, 1.2)->high, WithinAbs(1.2 * 1.6448536269514722, 1e-6));
    CHECK(r.interval(0.90, 1.2)->method == IntervalMethod::bca_widened);
}

// DERIVED by hand from the formula: a = sum d^3 / (6 (sum d^2)^1.5) with jackknife values 0, 0, 3:
// mean 1, d = 1, 1, -2; cubes -6, squares 6, a = -6 / (6 x 14.6969) = -0.0680414.
// Observed 0.5: z0 = Phi^-1(share below).
TEST_CASE("bias correction and acceleration move the end points", "[stats][derived]") {
    const std::vector<double> jackknife{0.0, 0.0, 3.0};
    const Replicates r(0.5, normal_replicates(), jackknife);
    const auto i = r.interval(0.90);
    REQUIRE(i);
    CHECK_THAT(i->acceleration, WithinAbs(-0.0680414, 5e-8));
    const double z0 = i->bias_correction;
    CHECK_THAT(z0, WithinAbs(0.5, 2e-3));
    const auto end = [&](double z) { return z0 + (z0 + z) / (1.0 + 0.0680414 * (z0 + z)); };
    CHECK_THAT(i->low, WithinAbs(end(-1.6448536), 1e-6));
    CHECK_THAT(i->high, WithinAbs(end(1.6448536), 1e-6));
    // The confidence function is the inverse of the bounds.
    CHECK_THAT(*r.confidence_of_at_least(i->low), WithinAbs(0.95, 1e-6));
    CHECK_THAT(*r.confidence_of_at_least(i->high), WithinAbs(0.05, 1e-6));
}

TEST_CASE("intervals that cannot be made are absent or say so", "[stats][constructed]") {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    std::vector<double> v = normal_replicates();
    const std::vector<double> jackknife{-1.0, 1.0};
    CHECK(Replicates(99.0, v, jackknife).interval(0.9)->method == IntervalMethod::percentile);
    CHECK(Replicates(0.0, v, {}).interval(0.9)->method == IntervalMethod::percentile);
    CHECK(Replicates(7.0, std::vector<double>(500, 7.0), jackknife).interval(0.9)->method ==
          IntervalMethod::point);
    for (std::size_t k = 0; k < 40; ++k) v[k * 20] = nan;  // 4 %
    CHECK(Replicates(0.0, v, jackknife).undefined() == 40);
    CHECK(Replicates(0.0, v, jackknife).interval(0.9).has_value());
    for (std::size_t k = 0; k < 40; ++k) v[k * 20 + 7] = nan;  // 8 %
    CHECK_FALSE(Replicates(0.0, v, jackknife).interval(0.9).has_value());
    CHECK_FALSE(Replicates(0.0, std::vector<double>(50, 1.0), jackknife).interval(0.9).has_value());
}
