// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/schedule/cycle_soak.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::schedule;
using namespace evenfall::units;
using Catch::Matchers::WithinAbs;

// CONSTRUCTED example of the reference notes: clay loam at 5 %, intake 0.20 in/h, 0.22 in may stand,
// rate 1.60 in/h: longest 60 x 0.22 / 1.40 = 9.43 min; 0.40 in take 15.0 min, so 2 cycles of 7.5 min.
// Soak 60 x 0.22 / 0.20 = 66 min. Extension advice is a pause of 30 to 60 minutes between 2 or 3
// cycles (Texas A&M AgriLife Water University).
TEST_CASE("cycle and soak on a clay loam slope", "[schedule][constructed]") {
    const auto rate = 1.60 * inch_per_hour;
    const auto c = cycle_and_soak(0.40 * inch / rate, rate, 0.20 * inch_per_hour, 0.22 * inch);
    CHECK(c.cycles == 2);
    CHECK_THAT(c.cycle.in(minute), WithinAbs(7.5, 1e-9));
    CHECK_THAT(c.soak.in(minute), WithinAbs(66.0, 1e-9));
}

TEST_CASE("a rate the soil takes needs no soak", "[schedule][derived]") {
    const auto c = cycle_and_soak(90.0 * minute, 0.2 * inch_per_hour, 0.2 * inch_per_hour, 0.1 * inch);
    CHECK(c.cycles == 1);
    CHECK(c.cycle == 90.0 * minute);
    CHECK(c.soak == Duration{});
}

// DERIVED: longest 60 x 0.2 / 0.4 = 30 min. 60 minutes are exactly two cycles, 61 are three.
TEST_CASE("cycles at the edge", "[schedule][derived]") {
    const auto run = [](double minutes) {
        return cycle_and_soak(minutes * minute, 0.6 * inch_per_hour, 0.2 * inch_per_hour, 0.2 * inch);
    };
    CHECK(run(30.0).cycles == 1);
    CHECK(run(60.0).cycles == 2);
    CHECK(run(61.0).cycles == 3);
    CHECK(run(0.0).cycles == 1);
}

TEST_CASE("cycle and soak refuses what cannot be", "[schedule]") {
    const auto rate = 1.0 * inch_per_hour;
    CHECK_THROWS_AS(cycle_and_soak(-1.0 * minute, rate, rate, inch), InputError);
    CHECK_THROWS_AS(cycle_and_soak(minute, Rate{}, rate, inch), InputError);
    CHECK_THROWS_AS(cycle_and_soak(minute, rate, Rate{}, inch), InputError);
    CHECK_THROWS_AS(cycle_and_soak(minute, rate, rate, Depth{}), InputError);
}
