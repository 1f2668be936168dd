// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/profile.h"

#include "core/input_error.h"
#include "core/plan/nozzle.h"
#include "core/plan/outline.h"
#include "core/plan/sprinkler.h"
#include "tests/plan/plans.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace evenfall;
using namespace evenfall::plan;
using namespace evenfall::plan_test;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::numbers::pi;

TEST_CASE("volumes of profiles have their closed forms", "[plan][derived]") {
    CHECK_THAT(RadialProfile::cone().volume(), WithinRel(pi / 3.0, 1e-14));
    CHECK_THAT(RadialProfile::flat().volume(), WithinRel(pi, 1e-14));
    // Trapezoid: 1 to u = 1/2, then straight to 0. V = pi/4 + 2 pi int 1/2..1 u (2 - 2u) du
    // = pi/4 + 2 pi (3/4 - 7/12) = 7 pi / 12.
    const auto leg = RadialProfile::measured({"t", {{0.0, 4.0}, {6.0, 4.0}, {12.0, 0.0}}});
    CHECK_THAT(leg.volume(), WithinRel(7.0 * pi / 12.0, 1e-14));
    CHECK(leg.at(0.25) == 1.0);
    CHECK_THAT(leg.at(0.75), WithinAbs(0.5, 1e-14));
    CHECK(leg.at(1.0) == 0.0);
    CHECK(leg.at(1.0001) == 0.0);
    // The first reading stands for what is nearer to the head.
    CHECK(RadialProfile::measured({"t", {{3.0, 2.0}, {6.0, 1.0}}}).at(0.1) == 1.0);
}

TEST_CASE("the rate of a head integrates to its flow for every profile and arc", "[plan][derived]") {
    // A polar sum, which knows nothing of rasters: sum of rate(r, angle) r dr dangle.
    Plan p = lawn();
    p.profiles = {{"leg", {{0.5, 1.0}, {4.0, 3.0}, {9.0, 2.0}, {15.0, 0.4}}}};
    p.heads[8].profile = GENERATE("cone", "flat", "leg");
    p.heads[8].arc = GENERATE(10.0, 90.0, 180.0, 235.0, 360.0);
    p.heads[8].facing = 70.0;
    const std::optional<Wind> wind = GENERATE(std::optional<Wind>{}, Wind{200.0, 0.1, 1.2});
    const PatternMap map = pattern_map(wind);
    const Sprinklers all = sprinklers_of(p);
    const Sprinkler& s = all.heads[8];
    const double reach = s.radius * map.reach;
    const int nr = 600, na = 720;
    double sum = 0.0;
    for (int i = 0; i < nr; ++i) {
        const double r = (i + 0.5) / nr * reach;
        for (int j = 0; j < na; ++j) {
            const double a = (j + 0.5) / na * 2.0 * pi;
            sum += r * rate_at(all, s, {s.x + map.shift_x * s.radius + r * std::sin(a),
                                        s.y + map.shift_y * s.radius + r * std::cos(a)}, map);
        }
    }
    sum *= reach / nr * 2.0 * pi / na;
    CAPTURE(p.heads[8].profile, s.arc, wind.has_value());
    // The midpoint sum cuts arcs at half degrees; exact for these arcs in still air.
    CHECK_THAT(sum / s.flow, WithinAbs(1.0, wind ? 0.02 : 0.002));
}

TEST_CASE("arcs lie clockwise from north about the way they face", "[plan][derived]") {
    Sprinkler s{0.0, 0.0, 10.0, 1.0, 90.0, 45.0, 0};
    CHECK(in_arc(s, 3.0, 3.0));
    CHECK(in_arc(s, 0.0, 3.0));   // its edges belong to it
    CHECK(in_arc(s, 3.0, 0.0));
    CHECK_FALSE(in_arc(s, -3.0, 3.0));
    CHECK_FALSE(in_arc(s, 3.0, -3.0));
    CHECK_FALSE(in_arc(s, -3.0, -3.0));
    s.facing = 135.0;
    CHECK(in_arc(s, 3.0, -3.0));
    CHECK_FALSE(in_arc(s, 3.0, 3.0));
    s.arc = 270.0;                // all but the north-west
    CHECK(in_arc(s, 3.0, 3.0));
    CHECK(in_arc(s, -3.0, -3.0));
    CHECK_FALSE(in_arc(s, -3.0, 3.0));
}

TEST_CASE("a nozzle is interpolated inside its table and refused outside", "[plan][constructed]") {
    const PlanUnits units = metric();
    const Nozzle n{"N", {{200.0, 9.0, 1.0}, {300.0, 10.0, 1.2}, {400.0, 10.5, 1.3}}, {}, 380.0};
    CHECK_THAT(throw_at(n, 250.0, units).flow, WithinAbs(1.1, 1e-12));
    CHECK_THAT(throw_at(n, 250.0, units).radius, WithinAbs(9.5, 1e-12));
    CHECK(throw_at(n, 300.0, units).flow == 1.2);
    CHECK(throw_at(n, 200.0, units).assumed.empty());
    CHECK_THROWS_AS(throw_at(n, 199.0, units), InputError);
    CHECK_THROWS_AS(throw_at(n, 381.0, units), InputError);  // beyond the operating range
    CHECK_THROWS_AS(throw_at(n, std::nan(""), units), InputError);
    const Nozzle one{"O", {{300.0, 10.0, 1.2}}, 150.0, 450.0};
    CHECK_THAT(throw_at(one, 432.0, units).flow, WithinAbs(1.44, 1e-12));  // 1.2 sqrt(1.44)
    CHECK(throw_at(one, 432.0, units).radius == 10.0);
    CHECK_FALSE(throw_at(one, 432.0, units).assumed.empty());
    CHECK(throw_at(one, 300.0, units).assumed.empty());
    CHECK_THROWS_AS(throw_at(one, 100.0, units), InputError);
    CHECK_THROWS_AS(throw_at(one, 500.0, units), InputError);
}

TEST_CASE("outlines: faults, area and what they cover", "[plan][derived]") {
    CHECK(outline_fault(rectangle(0.0, 0.0, 10.0, 5.0)).empty());
    CHECK(outline_fault({{{0, 0}, {10, 10}, {10, 0}, {0, 10}}}).english().find("crosses itself") == 0);
    CHECK_FALSE(outline_fault({{{0, 0}, {0, 0}, {0, 0}}}).empty());
    CHECK_FALSE(outline_fault({}).empty());
    const Polygon holed{{{0, 0}, {10, 0}, {10, 10}, {0, 10}}, {{4, 4}, {6, 4}, {6, 6}, {4, 6}}};
    CHECK(outline_fault(holed).empty());
    CHECK_THAT(outline_area(holed), WithinAbs(96.0, 1e-12));
    const std::vector<Polygon> all{holed, rectangle(20.0, 0.0, 30.0, 10.0)};
    const Ground ground(all);
    CHECK(ground.covers({1.0, 1.0}, 0.0));
    CHECK(ground.covers({25.0, 10.0}, 0.0));
    CHECK_FALSE(ground.covers({5.0, 5.0}, 0.0));    // in the hole
    CHECK(ground.covers({5.95, 5.0}, 0.1));         // near its line
    CHECK_FALSE(ground.covers({15.0, 5.0}, 0.1));
    CHECK(ground.covers({10.05, 5.0}, 0.1));
    CHECK_FALSE(ground.covers({10.2, 5.0}, 0.1));
    CHECK_FALSE(ground.covers({-5.0, 10.0}, 0.0));  // level with corners
    CHECK_FALSE(ground.covers({-5.0, 0.0}, 0.0));
    CHECK_FALSE(ground.covers({100.0, 5.0}, 0.0));
}
