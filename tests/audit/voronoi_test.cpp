// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/voronoi.h"

#include "core/audit/uniformity.h"
#include "core/input_error.h"
#include "tests/audit/catches.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::audit;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using Points = std::vector<std::pair<double, double>>;

TEST_CASE("a regular grid gets equal shares", "[audit][derived]") {
    Points p;
    for (int i = 0; i < 5; ++i) {
        for (int j = 0; j < 4; ++j) p.emplace_back(1000.0 + 3.0 * i, -40.0 + 3.0 * j);
    }
    const VoronoiShares v = voronoi_shares(p, {});
    CHECK(v.outline_assumed);
    CHECK_THAT(v.area, WithinRel(15.0 * 12.0, 1e-9));
    for (const double s : v.share) CHECK_THAT(s, WithinRel(0.05, 1e-6));
}

// Two points at 1 and 3 of a strip from 0 to 10: the border is at 2. Then a notch is cut away.
TEST_CASE("shares inside an outline, by hand", "[audit][derived]") {
    const Points p{{1, 0.5}, {3, 0.5}, {3, 1.5}, {1, 1.5}};
    const VoronoiShares v = voronoi_shares(p, Points{{0, 0}, {10, 0}, {10, 2}, {0, 2}});
    CHECK_FALSE(v.outline_assumed);
    CHECK_THAT(v.area, WithinRel(20.0, 1e-12));
    CHECK_THAT(v.share[0], WithinRel(0.1, 1e-6));
    CHECK_THAT(v.share[1], WithinRel(0.4, 1e-6));
    // An outline that is not convex, given clockwise and closed: the part over x > 2 below y = 1
    // is gone except near the can.
    const VoronoiShares notch = voronoi_shares(
        p, Points{{0, 0}, {0, 2}, {10, 2}, {10, 1}, {4, 1}, {4, 0}, {0, 0}});
    CHECK_THAT(notch.area, WithinRel(14.0, 1e-12));
    CHECK_THAT(notch.share[1], WithinRel(2.0 / 14.0, 1e-6));
    CHECK_THAT(notch.share[2], WithinRel(8.0 / 14.0, 1e-6));
}

TEST_CASE("ground that cannot be shared out is refused", "[audit]") {
    const Points square{{0, 0}, {1, 0}, {1, 1}, {0, 1}};
    CHECK_THROWS_WITH(voronoi_shares(Points{{0, 0}, {1, 1}, {2, 2}, {3, 3}}, {}),
                      Contains("one line"));
    CHECK_THROWS_WITH(voronoi_shares(square, Points{{-1, -1}, {2, 2}, {2, -1}, {-1, 2}}),
                      Contains("crosses itself"));
    CHECK_THROWS_WITH(voronoi_shares(square, Points{{-1, -1}, {0.5, -1}, {0.5, 2}, {-1, 2}}),
                      Contains("inside the outline"));
    CHECK_THROWS_AS(voronoi_shares(square, Points{{0, 0}, {1, 1}}), InputError);
}

// A cluster of dry cans in one corner must not outvote the rest of the ground.
TEST_CASE("irregular cans are weighted by the ground they stand for", "[audit][constructed]") {
    CatchTest t = test::sheet({10, 10, 10, 10, 2, 2, 2, 2});
    t.layout = Layout::irregular;
    const Points p{{5, 5}, {15, 5}, {5, 15}, {15, 15}, {19, 19}, {19.5, 19}, {19, 19.5}, {19.5, 19.5}};
    for (std::size_t i = 0; i < p.size(); ++i) {
        t.catches[i].x = p[i].first;
        t.catches[i].y = p[i].second;
    }
    SampleChoices choices = usual_choices();
    choices.outline = {{0, 0}, {20, 0}, {20, 20}, {0, 20}};
    const double weighted = analyse_uniformity(t, QuarterRule::part_can, choices).mean.in(units::millimetre);
    choices.irregular_weights = IrregularWeights::equal;
    const double equal = analyse_uniformity(t, QuarterRule::part_can, choices).mean.in(units::millimetre);
    CHECK_THAT(equal, WithinAbs(6.0, 1e-12));
    // The cluster owns the corner beyond the bisector x + y = 34 with (15, 15), at most a corner
    // triangle of side 6: 18 of 400 m2, so the mean is between 10 - 8 x 18/400 and 10.
    CHECK(weighted > 9.6);
    CHECK(weighted < 9.9);
}
