// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/site/distance.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

#include <numbers>

using namespace evenfall;
using namespace evenfall::site;
using Catch::Matchers::WithinAbs;

// DERIVED: the equator of WGS 84 is a circle of 6,378,137 m radius; the quarter meridian is
// 10,001,965.729 m (C. F. F. Karney, GeographicLib documentation, from memory).
TEST_CASE("distances along the equator and a meridian", "[site][derived]") {
    const double degree = 6378137.0 * std::numbers::pi / 180.0;
    CHECK_THAT(distance_between({0, 10}, {0, 11}).si(), WithinAbs(degree, 1e-6));
    CHECK_THAT(distance_between({0, 179.5}, {0, -179.5}).si(), WithinAbs(degree, 1e-6));
    CHECK_THAT(distance_between({0, -30}, {90, 0}).si(), WithinAbs(10001965.729, 1e-3));
    CHECK(distance_between({38.5, -121.5}, {38.5, -121.5}).si() == 0.0);
    CHECK(distance_between({38, -121}, {39, -120}).si() == distance_between({39, -120}, {38, -121}).si());
    CHECK_THROWS_AS(distance_between({91, 0}, {0, 0}), InputError);
    CHECK_THROWS_AS(distance_between({0, 0}, {0, 181}), InputError);
}
