// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/traveller.h"

#include "core/audit/uniformity.h"
#include "tests/audit/catches.h"

#include <catch2/catch.hpp>
#include <numeric>

using namespace evenfall;
using namespace evenfall::audit;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using test::row_across;

namespace {

const std::vector<double> left{25, 24, 21, 18, 16, 12, 9, 5, 2, 1};
const std::vector<double> right{24, 23, 22, 20, 17, 13, 8, 4, 1};

std::vector<double> depths(const CatchTest& t) {
    std::vector<double> mm;
    for (const Strip& s : overlap_lanes(t).strips) mm.push_back(s.depth.in(units::millimetre));
    return mm;
}

double du(const CatchTest& t, QuarterRule rule) {
    return analyse_uniformity(t, rule).du_lq.percent();
}

}  // namespace

// CONSTRUCTED transect; exact answers by rational arithmetic.
TEST_CASE("lanes pulled in the same direction", "[audit][constructed]") {
    struct Row {
        double lane;
        std::vector<double> mm;
        double mean, cu, whole, nearest, up, part;
    };
    const auto row = GENERATE(values<Row>({
        {70, {37, 36, 38, 38, 39, 39, 38}, 37.857143, 97.9515, 95.0943, 96.4151, 96.4151, 96.2264},
        {80, {30, 32, 34, 36, 35, 34, 33, 31}, 33.125, 95.0943, 92.0755, 92.0755, 92.0755, 92.0755},
        {90, {26, 28, 31, 32, 33, 31, 29, 28, 27}, 29.444444, 93.0398, 90.0, 90.0, 91.6981, 90.5660},
        {100, {25, 25, 27, 29, 29, 29, 26, 25, 25, 25}, 26.5, 93.9623, 94.3396, 94.3396, 94.3396,
         94.3396},
    }));
    CAPTURE(row.lane);
    const CatchTest t = row_across(left, right, 10, row.lane);
    const std::vector<double> mm = depths(t);
    REQUIRE(mm.size() == row.mm.size());
    for (std::size_t i = 0; i < mm.size(); ++i) CHECK_THAT(mm[i], WithinAbs(row.mm[i], 1e-9));
    const UniformityResult r = analyse_uniformity(t, QuarterRule::part_can);
    CHECK_THAT(r.mean.in(units::millimetre), WithinAbs(row.mean, 5e-7));
    CHECK_THAT(r.cu.percent(), WithinAbs(row.cu, 5e-5));
    CHECK_THAT(du(t, QuarterRule::whole_cans), WithinAbs(row.whole, 5e-5));
    CHECK_THAT(du(t, QuarterRule::nearest), WithinAbs(row.nearest, 5e-5));
    CHECK_THAT(du(t, QuarterRule::round_up), WithinAbs(row.up, 5e-5));
    CHECK_THAT(du(t, QuarterRule::part_can), WithinAbs(row.part, 5e-5));
    CHECK_FALSE(r.net_rate.has_value());
}

// Opposite pulls, W = 70: R(x) + R(70 - x) between one pair, L(x) + L(70 - x) between the next,
// and what reaches beyond the lane: R(75), R(85) lie over the neighbour's R at 5 and 15 and so on.
// Strip at 5 of the first pair: R(5) + R(65) from the facing lane, and L(75) from the lane before,
// whose left side faces this way: 24 + 8 + 5 = 37. By hand for all 14 strips.
TEST_CASE("neighbouring lanes pulled in opposite directions", "[audit][constructed]") {
    CatchTest t = row_across(left, right, 10, 70);
    t.opposite_pulls = true;
    const std::vector<double> mm = depths(t);
    const std::vector<double> r{24, 23, 22, 20, 17, 13, 8};
    const std::vector<double> l{25, 24, 21, 18, 16, 12, 9};
    // Beyond one lane: left reaches 75, 85, 95 m with 5, 2, 1; right 75, 85 m with 4, 1. Lanes at
    // -70 and +140 show their left sides to the pair 0..70, lanes at 0 and 70 their right sides.
    const std::vector<double> over_r{5 + 0, 2, 1, 0, 1, 2, 5};
    const std::vector<double> over_l{4, 1, 0, 0, 0, 1, 4};
    REQUIRE(mm.size() == 14);
    for (std::size_t i = 0; i < 7; ++i) {
        CAPTURE(i);
        CHECK_THAT(mm[i], WithinAbs(r[i] + r[6 - i] + over_r[i], 1e-9));
        CHECK_THAT(mm[7 + i], WithinAbs(l[i] + l[6 - i] + over_l[i], 1e-9));
    }
    // Two lanes hold the water of two passes.
    CHECK_THAT(std::accumulate(mm.begin(), mm.end(), 0.0), WithinRel(2.0 * 265.0, 1e-12));
}

// A lane that is no multiple of the spacing, cans at odd places, a can on the path: no water is lost.
TEST_CASE("no water is lost between cans and lane", "[audit][derived]") {
    CatchTest t = row_across(left, right, 10, 73.5);
    t.opposite_pulls = GENERATE(false, true);
    t.lane_spacing->value = GENERATE(41.0, 55.5, 73.5, 88.0, 260.0);
    CAPTURE(t.opposite_pulls, t.lane_spacing->value);
    const Overlap o = overlap_lanes(t);
    double water = 0.0;
    for (const Strip& s : o.strips) water += s.depth.si() * s.width.si();
    const double lanes = t.opposite_pulls ? 2.0 : 1.0;
    CHECK_THAT(water / lanes, WithinRel(0.265 * 10.0, 1e-12));
}

TEST_CASE("a row of cans that ends before the pattern is pointed out", "[audit][constructed]") {
    CHECK(overlap_lanes(row_across(left, right, 10, 70)).edge_share == 1.0 / 25.0);
    const CatchTest cut = row_across({25, 24, 21}, {24, 23, 22}, 10, 40);
    CHECK_THAT(overlap_lanes(cut).edge_share, WithinRel(22.0 / 25.0, 1e-12));
    const auto notes = analyse_uniformity(cut, QuarterRule::part_can).notes;
    CHECK(std::any_of(notes.begin(), notes.end(), [](const Sentence& n) {
        return n.english().find("88 %") != std::string::npos;
    }));
}

// DERIVED: 231/144 = 1.604167, the constant usually printed 1.605.
TEST_CASE("mean depth from flow, lane spacing and travel speed", "[audit][derived]") {
    const units::Depth us = depth_from_flow(400.0 * units::gallon_per_minute, 270.0 * units::foot,
                                            2.0 * units::foot_per_minute);
    CHECK_THAT(us.in(units::inch), WithinRel(231.0 / 144.0 * 400.0 / (270.0 * 2.0), 1e-12));
    const units::Depth metric =
        depth_from_flow(1500.0 * units::litre_per_minute, 80.0 * units::metre,
                        units::unit_named<units::Speed>("m_min").unit * 0.75);
    CHECK_THAT(metric.in(units::millimetre), WithinRel(25.0, 1e-12));
}
