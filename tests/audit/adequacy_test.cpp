// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/adequacy.h"

#include "core/input_error.h"
#include "tests/audit/catches.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::audit;
using Catch::Matchers::WithinAbs;
using units::millimetre;

namespace {

Sample eight() { return sample_of(test::sheet({6, 8, 9, 10, 10, 11, 12, 14}), usual_choices()); }

}  // namespace

// By hand; mean 10, so with a mean of 10 the catches stand as they are.
TEST_CASE("share of the ground that gets enough", "[audit][derived]") {
    const Sample s = eight();
    CHECK_THAT(adequacy(s, 10 * millimetre, 10 * millimetre).value(), WithinAbs(5.0 / 8.0, 1e-12));
    CHECK_THAT(adequacy(s, 10 * millimetre, 10.5 * millimetre).value(), WithinAbs(3.0 / 8.0, 1e-12));
    // 12.5 mm on average: catches times 1.25, so 8 becomes exactly the target of 10.
    CHECK_THAT(adequacy(s, 12.5 * millimetre, 10 * millimetre).value(), WithinAbs(7.0 / 8.0, 1e-12));
    CHECK(adequacy(s, 20 * millimetre, 10 * millimetre).value() == 1.0);
}

TEST_CASE("depth for a share, and back", "[audit][derived]") {
    const Sample s = eight();
    // 75 % of the ground is six cans; the sixth wettest is 9: 10 x 10/9.
    const auto depth = depth_for_adequacy(s, 10 * millimetre, units::Share::of(0.75));
    REQUIRE(depth.has_value());
    CHECK_THAT(depth->in(millimetre), WithinAbs(100.0 / 9.0, 1e-9));
    CHECK_THAT(adequacy(s, *depth, 10 * millimetre).value(), WithinAbs(0.75, 1e-12));
    CHECK_THAT(depth_for_adequacy(s, 10 * millimetre, units::Share::of(1.0))->in(millimetre),
               WithinAbs(100.0 / 6.0, 1e-9));
}

TEST_CASE("ground that stays dry is never adequate", "[audit][constructed]") {
    const Sample s = sample_of(test::sheet({0, 8, 9, 10}), usual_choices());
    CHECK_FALSE(depth_for_adequacy(s, 10 * millimetre, units::Share::of(0.8)).has_value());
    CHECK(depth_for_adequacy(s, 10 * millimetre, units::Share::of(0.75)).has_value());
    CHECK_THROWS_AS(adequacy(s, 10 * millimetre, 0 * millimetre), InputError);
    CHECK_THROWS_AS(depth_for_adequacy(s, 1 * millimetre, units::Share::of(0.0)), InputError);
}
