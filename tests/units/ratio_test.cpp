// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/ratio.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>
#include <limits>

using namespace evenfall;
using namespace evenfall::units;

TEST_CASE("a fraction is checked, a ratio may be negative", "[units]") {
    CHECK(LowQuarterDu::of(1.0).percent() == 100.0);
    CHECK_THROWS_AS(LowQuarterDu::of(75.0), InputError);
    CHECK_THROWS_AS(LowQuarterDu::of(-0.01), InputError);
    CHECK_THROWS_AS(LowQuarterDu::of(std::numeric_limits<double>::quiet_NaN()), InputError);
    CHECK(ChristiansenCu::of(-0.75).percent() == -75.0);
    CHECK_THROWS_AS(ChristiansenCu::of(std::numeric_limits<double>::infinity()), InputError);
}

TEST_CASE("the message names figure, value and bounds", "[units]") {
    CHECK_THROWS_WITH(LowQuarterDu::of(75.0),
                      "found \"75\", expected a finite value for low-quarter distribution "
                      "uniformity from 0 to 1");
}
