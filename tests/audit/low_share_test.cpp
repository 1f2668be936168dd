// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/low_share.h"

#include <catch2/catch.hpp>
#include <vector>

using namespace evenfall::audit;
using Catch::Matchers::WithinRel;

// By hand: weights 3, 1, 2, 2 add to 8, a quarter is 2 and lies inside the first can.
TEST_CASE("a quarter that lies inside the first can", "[audit][constructed]") {
    const std::vector<double> x{5, 6, 7, 8};
    const std::vector<double> w{3, 1, 2, 2};
    for (const QuarterRule rule : {QuarterRule::whole_cans, QuarterRule::nearest,
                                   QuarterRule::round_up, QuarterRule::part_can}) {
        CHECK_THAT(low_share(x, w, 0.25, rule).mean, WithinRel(5.0, 1e-15));
    }
    CHECK(low_share(x, w, 0.25, QuarterRule::whole_cans).cans == 1.0);
    CHECK_THAT(low_share(x, w, 0.25, QuarterRule::part_can).weight, WithinRel(2.0, 1e-15));
}

// By hand: weights 1, 2, 1, 4 add to 8; half is 4 and ends exactly after three cans.
TEST_CASE("a share that ends between two cans is the same under every rule", "[audit][constructed]") {
    const std::vector<double> x{1, 2, 3, 9};
    const std::vector<double> w{1, 2, 1, 4};
    for (const QuarterRule rule : {QuarterRule::whole_cans, QuarterRule::nearest,
                                   QuarterRule::round_up, QuarterRule::part_can}) {
        const LowShare low = low_share(x, w, 0.5, rule);
        CHECK_THAT(low.mean, WithinRel(2.0, 1e-15));
        CHECK(low.cans == 3.0);
    }
}

// 0.1 is no binary fraction: ten of them add to a bit less than 1, and a quarter of 40 such weights
// must still be ten cans.
TEST_CASE("rounding of the weights does not move the quarter", "[audit][derived]") {
    std::vector<double> x;
    for (int i = 0; i < 40; ++i) x.push_back(i);
    const std::vector<double> w(40, 0.1);
    for (const QuarterRule rule : {QuarterRule::whole_cans, QuarterRule::nearest,
                                   QuarterRule::round_up, QuarterRule::part_can}) {
        CHECK(low_share(x, w, 0.25, rule).cans == 10.0);
        CHECK_THAT(low_share(x, w, 0.25, rule).mean, WithinRel(4.5, 1e-12));
    }
}

TEST_CASE("rule names read back", "[audit]") {
    for (const QuarterRule rule : {QuarterRule::whole_cans, QuarterRule::nearest,
                                   QuarterRule::round_up, QuarterRule::part_can}) {
        CHECK(quarter_rule_named(text_of(rule)) == rule);
    }
    CHECK_FALSE(quarter_rule_named("floor").has_value());
}
