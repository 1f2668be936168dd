// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/normal.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <utility>

using namespace evenfall::stats;
using Catch::Matchers::WithinRel;

// Values by R 4.2.2, pnorm and qnorm, printed with 17 digits.
TEST_CASE("the normal distribution agrees with R", "[stats][published]") {
    for (const auto& [z, p] : {std::pair{-3.0, 0.0013498980316300946}, {0.5, 0.69146246127401301},
                               {1.0, 0.84134474606854293}, {1.96, 0.97500210485177963},
                               {6.0, 0.999999999013412}}) {
        CHECK_THAT(normal_cdf(z), WithinRel(p, 1e-14));
    }
    for (const auto& [p, z] : {std::pair{0.9, 1.2815515655446008}, {0.95, 1.6448536269514715},
                               {0.975, 1.9599639845400539}, {0.995, 2.5758293035488999},
                               {1e-6, -4.7534243088228987}}) {
        CHECK_THAT(normal_quantile(p), WithinRel(z, 1e-13));
    }
}

TEST_CASE("the quantile is the inverse, and infinite at the ends", "[stats][derived]") {
    for (int i = 1; i < 200; ++i) {
        const double p = i / 200.0;
        CHECK_THAT(normal_cdf(normal_quantile(p)), WithinRel(p, 1e-13));
    }
    CHECK(normal_quantile(0.0) == -INFINITY);
    CHECK(normal_quantile(1.0) == INFINITY);
}
