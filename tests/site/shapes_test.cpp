// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/site/shapes.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::site;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {
double ft2(std::string_view text) { return area_of_shapes(text, units::foot).in(units::square_foot); }
}  // namespace

// DERIVED. Elementary geometry; the offsets by hand: 10 (0/2 + 12 + 15 + 9 + 0/2) = 360.
TEST_CASE("areas from a measuring wheel", "[site][derived]") {
    CHECK_THAT(ft2("rectangle 120 45"), WithinRel(5400.0, 1e-12));
    CHECK_THAT(ft2("triangle 30 40 50"), WithinRel(600.0, 1e-12));
    CHECK_THAT(ft2("circle 12"), WithinAbs(452.389, 5e-4));  // 144 pi
    CHECK_THAT(ft2("trapezoid 30 20 15"), WithinRel(375.0, 1e-12));
    CHECK_THAT(ft2("offsets 10: 0 12 15 9 0"), WithinRel(360.0, 1e-12));
    CHECK_THAT(ft2("offsets 10: 4 4"), WithinRel(40.0, 1e-12));
    CHECK_THAT(ft2("rectangle 120 45 + rectangle 10 10 - circle 10"), WithinAbs(5185.841, 5e-4));
    CHECK_THAT(area_of_shapes("rectangle 2 3", units::metre).si(), WithinRel(6.0, 1e-12));
}

TEST_CASE("shapes that cannot be", "[site]") {
    for (const char* bad : {"", "square 10", "rectangle 10", "rectangle 10 -5", "rectangle 10 x",
                            "triangle 1 2 4", "circle 0", "offsets 0 12 15", "offsets 10: 5",
                            "offsets 10: 5 -1 3", "circle 3 - circle 4", "rectangle 1 2 + "}) {
        CAPTURE(bad);
        CHECK_THROWS_AS(ft2(bad), InputError);
    }
}

// PUBLISHED. GeographicLib's own test program (tests of Planimeter, "pole-encircling" cases), corners
// as latitude longitude there; areas in m2 as printed, its tolerance of 1 m2 kept. Values from
// memory; the last one times 8 is the area of the ellipsoid, 510 065 621.724 km2.
TEST_CASE("polygons of the GeographicLib test program", "[site][published]") {
    const auto area = [](const Ring& ring) { return area_on_ellipsoid({{ring}}).si(); };
    CHECK_THAT(area({{0, 89}, {90, 89}, {180, 89}, {270, 89}}), WithinAbs(24952305678.0, 1));
    CHECK_THAT(area({{-1, 0}, {0, -1}, {1, 0}, {0, 1}}), WithinAbs(24619419146.0, 1));
    CHECK_THAT(area({{0, 90}, {0, 0}, {90, 0}}), WithinAbs(63758202715511.0, 1));
    // Closed or not, whichever way round.
    CHECK_THAT(area({{0, 1}, {1, 0}, {0, -1}, {-1, 0}, {0, 1}}), WithinAbs(24619419146.0, 1));
}

// CONSTRUCTED.
TEST_CASE("holes are taken off and parts added", "[site][constructed]") {
    const Ring outer{{0, 0}, {10, 0}, {10, 10}, {0, 10}, {0, 0}};
    const Ring hole{{2, 2}, {2, 4}, {4, 4}, {4, 2}, {2, 2}};
    const Ring far{{1e6, 1e6}, {1e6 + 1, 1e6}, {1e6 + 1, 1e6 + 1}, {1e6, 1e6 + 1}};
    CHECK_THAT(area_on_plane({{outer, hole}, {far}}, units::foot).in(units::square_foot),
               WithinAbs(97, 1e-6));
    CHECK_THROWS_AS(area_on_plane({{Ring{{0, 0}, {1, 1}}}}, units::foot), InputError);
    CHECK_THROWS_AS(area_on_ellipsoid({{Ring{{0, 0}, {1, 91}, {1, 1}}}}), InputError);
}
