// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meter/split.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::meter;
using Catch::Matchers::WithinAbs;

// CONSTRUCTED, worked by hand throughout.
TEST_CASE("one meter split among areas", "[meter][constructed]") {
    std::vector<SplitInput> areas{{"a", 2.0 * units::acre, 0.8, std::nullopt},
                                  {"b", 1.0 * units::acre, 0.4, std::nullopt}};
    SECTION("by area x coefficient: 1.6 to 0.4") {
        const auto parts = split_meter(areas, SplitRule::area_times_coefficient);
        CHECK_THAT(parts[0].share.value(), WithinAbs(0.8, 1e-12));
        CHECK_THAT(parts[1].share.value(), WithinAbs(0.2, 1e-12));
        CHECK(parts[0].assumed);
    }
    SECTION("by minutes x flow: 600 to 200 gal") {
        areas[0].run_time = 30.0 * units::minute;
        areas[0].flow = 20.0 * units::gallon_per_minute;
        areas[1].run_time = 10.0 * units::minute;
        CHECK_THROWS_AS(split_meter(areas, SplitRule::minutes_times_flow), InputError);
        areas[1].flow = 20.0 * units::gallon_per_minute;
        const auto parts = split_meter(areas, SplitRule::minutes_times_flow);
        CHECK_THAT(parts[0].share.value(), WithinAbs(0.75, 1e-12));
        CHECK_FALSE(parts[0].assumed);
    }
    SECTION("given for one, the rest to the other") {
        areas[0].given_share = 0.3;
        const auto parts = split_meter(areas, SplitRule::given_shares);
        CHECK_THAT(parts[0].share.value(), WithinAbs(0.3, 1e-12));
        CHECK_THAT(parts[1].share.value(), WithinAbs(0.7, 1e-12));
        CHECK_FALSE(parts[0].assumed);
        CHECK(parts[1].assumed);
    }
    SECTION("given for all") {
        areas[0].given_share = 0.667;
        areas[1].given_share = 0.334;  // rounding of the typist: taken, and made to add up
        const auto parts = split_meter(areas, SplitRule::given_shares);
        CHECK_THAT(parts[0].share.value() + parts[1].share.value(), WithinAbs(1.0, 1e-12));
        areas[1].given_share = 0.5;
        CHECK_THROWS_AS(split_meter(areas, SplitRule::given_shares), InputError);
        areas[1].given_share = 0.1;
        CHECK_THROWS_AS(split_meter(areas, SplitRule::given_shares), InputError);
    }
    SECTION("nothing to weigh by") {
        areas[0].coefficient = areas[1].coefficient = 0;
        CHECK_THROWS_AS(split_meter(areas, SplitRule::area_times_coefficient), InputError);
    }
}
