// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/layout.h"

#include "core/input_error.h"
#include "core/plan/matched.h"
#include "core/plan/overlap.h"
#include "core/plan/what_if.h"
#include "tests/plan/plans.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace evenfall;
using namespace evenfall::plan;
using namespace evenfall::plan_test;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using units::mile_per_hour;
using units::millimetre_per_hour;

namespace {

Plan field(const Polygon& outline) {
    Plan p;
    p.units = metric();
    p.turf = {outline};
    return p;
}

LayoutOrder order(Pattern pattern, double smallest, double largest) {
    LayoutOrder o;
    o.pattern = pattern;
    o.shares = spacing_for(pattern, 5.0 * mile_per_hour);
    o.smallest_radius = smallest;
    o.largest_radius = largest;
    o.rate = 10.0 * millimetre_per_hour;
    return o;
}

}  // namespace

// PUBLISHED: New Mexico State University, Soils 456, answers to chapter 5 (seen): diameter 30 ft at 5 mph,
// square 15 ft, triangular 16.5 ft; 70 ft at 3 mph, square 38.5 ft. 44 ft at 0.45: 19.8 ft.
TEST_CASE("spacing as a share of diameter by wind", "[plan][published]") {
    CHECK_THAT(30.0 * spacing_for(Pattern::square, 5.0 * mile_per_hour).in_row, WithinAbs(15.0, 0.05));
    CHECK_THAT(30.0 * spacing_for(Pattern::equilateral, 5.0 * mile_per_hour).in_row, WithinAbs(16.5, 0.05));
    CHECK_THAT(70.0 * spacing_for(Pattern::square, 3.0 * mile_per_hour).in_row, WithinAbs(38.5, 0.05));
    CHECK_THAT(44.0 * spacing_for(Pattern::square, 10.0 * mile_per_hour).in_row, WithinAbs(19.8, 0.05));
    // DERIVED: sqrt(3) / 2, in practice 0.87.
    const SpacingShares e = spacing_for(Pattern::equilateral, 0.0 * mile_per_hour);
    CHECK_THAT(e.between_rows / e.in_row, WithinAbs(0.866, 0.0005));
    // Between two bands the windier one holds.
    CHECK(spacing_for(Pattern::square, 3.5 * mile_per_hour).in_row == 0.50);
    CHECK_THROWS_AS(spacing_for(Pattern::square, 13.0 * mile_per_hour), InputError);
    CHECK_THROWS_AS(spacing_for(Pattern::square, -1.0 * mile_per_hour), InputError);
}

TEST_CASE("a square layout divides the narrow side and waters all of it", "[plan][derived]") {
    const Layout l = fit_layout(field(rectangle(0.0, 0.0, 100.0, 44.0)), order(Pattern::square, 8.0, 12.0));
    // 44 m by at most 12 m: four rows of 11 m; 100 m: ten of 10 m (9.09 would be 11).
    CHECK_THAT(l.row_spacing, WithinAbs(11.0, 1e-12));
    CHECK_THAT(l.spacing, WithinAbs(10.0, 1e-12));
    CHECK_THAT(l.radius, WithinAbs(11.0, 1e-12));
    CHECK(l.corner_heads == 4);
    CHECK(l.edge_heads == 2 * 9 + 2 * 3);
    CHECK(l.interior_heads == 9 * 3);
    CHECK(l.warnings.empty());
    const Prediction p = overlap_of(l.plan, {}).prediction;
    CHECK(p.coverage.two_or_more.value() == 1.0);
    // Heads that stand 10 m from an edge they face are drawn in to it.
    CHECK_THAT(p.off_target_share.value(), WithinAbs(0.0, 1e-9));
    // The design rate, less what the heads that were drawn in no longer throw.
    CHECK(p.mean_rate.in(millimetre_per_hour) < 10.0);
    CHECK(p.mean_rate.in(millimetre_per_hour) > 9.5);
    CHECK(p.du_lq->value() > 0.75);
    for (const StationRates& s : matched_precipitation(l.plan, 0.10)) CHECK(s.matched);
}

TEST_CASE("an equilateral layout has rows at 0.866 of the spacing, every other one moved", "[plan][derived]") {
    const double row = 12.0 * std::numbers::sqrt3 / 2.0;
    const Layout l = fit_layout(field(rectangle(0.0, 0.0, 96.0, 4.0 * row)), order(Pattern::equilateral, 6.0, 12.0 / 1.1));
    CHECK_THAT(l.spacing, WithinAbs(12.0, 1e-9));
    CHECK_THAT(l.row_spacing / l.spacing, WithinAbs(std::numbers::sqrt3 / 2.0, 1e-9));
    std::size_t moved = 0;
    for (const Head& h : l.plan.heads) {
        if (h.id[0] != 'I') continue;
        const double j = std::round(h.y / row);
        CHECK_THAT(h.y, WithinAbs(j * row, 1e-9));
        const double at = h.x / 12.0 + (std::fmod(j, 2.0) == 1.0 ? 0.5 : 0.0);
        CHECK_THAT(at, WithinAbs(std::round(at), 1e-9));
        if (std::fmod(j, 2.0) == 1.0) ++moved;
    }
    CHECK(moved > 5);
    const Prediction p = overlap_of(l.plan, {}).prediction;
    CHECK(p.coverage.none.value() == 0.0);
    // At 1.1 radii apart a small disc about each head is reached by that head alone.
    CHECK(p.coverage.two_or_more.value() > 0.93);
    CHECK(p.coverage.two_or_more.value() < 1.0);
    CHECK(p.off_target_share.value() < 0.005);
}

TEST_CASE("arcs follow corners and edges of any outline", "[plan][derived]") {
    // An L with a hole; clockwise on purpose.
    Polygon ell{{{0, 0}, {0, 80}, {30, 80}, {30, 40}, {90, 40}, {90, 0}}};
    const Layout l = fit_layout(field(ell), order(Pattern::square, 5.0, 10.0));
    CHECK(l.corner_heads == 6);
    const Prediction p = overlap_of(l.plan, {}).prediction;
    CHECK(p.coverage.none.value() < 0.001);
    CHECK(p.off_target_share.value() < 0.03);
    for (const Head& h : l.plan.heads) {
        if (h.x == 30.0 && h.y == 40.0) {
            CHECK_THAT(h.arc, WithinAbs(270.0, 1e-9));
            CHECK_THAT(h.facing, WithinAbs(225.0, 1e-9));
        }
        if (h.x == 0.0 && h.y == 0.0) {
            CHECK_THAT(h.arc, WithinAbs(90.0, 1e-9));
            CHECK_THAT(h.facing, WithinAbs(45.0, 1e-9));
        }
    }
    // Turning the outline turns the layout: same count, same prediction.
    Polygon turned = ell;
    for (Point& q : turned[0]) q = {0.6 * q.x + 0.8 * q.y, -0.8 * q.x + 0.6 * q.y};
    const Layout t = fit_layout(field(turned), order(Pattern::square, 5.0, 10.0));
    CHECK(t.plan.heads.size() == l.plan.heads.size());
    const Prediction q = overlap_of(t.plan, {}).prediction;
    CHECK_THAT(q.du_lq->value(), WithinAbs(p.du_lq->value(), 0.01));
    CHECK(q.off_target_share.value() < 0.04);
}

TEST_CASE("a round outline gets heads along it though it has no corner", "[plan][constructed]") {
    Polygon round{{}};
    for (int i = 0; i < 72; ++i) {
        const double a = i * std::numbers::pi / 36.0;
        round[0].push_back({25.0 * std::cos(a), 25.0 * std::sin(a)});
    }
    const Layout l = fit_layout(field(round), order(Pattern::square, 5.0, 10.0));
    CHECK(l.corner_heads == 0);
    CHECK(l.edge_heads >= 15);
    CHECK(overlap_of(l.plan, {}).prediction.coverage.none.value() < 0.001);
}

TEST_CASE("a strip too narrow for its heads is pointed out, stations stay below their flow", "[plan][constructed]") {
    LayoutOrder o = order(Pattern::square, 6.0, 9.0);
    const Layout narrow = fit_layout(field(rectangle(0.0, 0.0, 50.0, 3.0)), o);
    REQUIRE_FALSE(narrow.warnings.empty());
    CHECK(narrow.warnings[0].find("too narrow") != std::string::npos);
    o.most_flow = 8.0 * units::cubic_metre_per_hour;
    const Layout l = fit_layout(field(rectangle(0.0, 0.0, 90.0, 36.0)), o);
    CHECK(l.stations.size() > 3);
    double sum = 0.0;
    std::size_t heads = 0;
    for (const StationFlow& s : l.stations) {
        CHECK(s.flow.in(units::cubic_metre_per_hour) <= 8.0 + 1e-9);
        sum += s.flow.in(units::cubic_metre_per_hour);
        heads += s.heads;
    }
    CHECK(heads == l.plan.heads.size());
    // 10 mm/h on 90 x 36 m is 32.4 m3/h; heads drawn in take a little less.
    CHECK_THAT(sum, WithinRel(32.4, 0.02));
    o.largest_radius = 5.0;
    CHECK_THROWS_AS(fit_layout(field(rectangle(0.0, 0.0, 90.0, 36.0)), o), InputError);
    o = order(Pattern::square, 0.01, 0.02);
    CHECK_THROWS_AS(fit_layout(field(rectangle(0.0, 0.0, 9000.0, 3600.0)), o), InputError);
}

// PRACTICE: with equal nozzles on all arcs a quarter circle runs a quarter as long as a full circle.
TEST_CASE("rates that do not match are parted with their run-time ratios", "[plan][practice]") {
    Plan p = lawn();
    for (const StationRates& s : matched_precipitation(p, 0.10)) {
        CHECK(s.matched);
        CHECK_THAT(s.spread, WithinAbs(0.0, 1e-9));
    }
    for (Head& h : p.heads) {
        h.flow = 3.6;  // one nozzle everywhere
        h.station = "all";
    }
    const auto stations = matched_precipitation(p, 0.10);
    REQUIRE(stations.size() == 1);
    CHECK_FALSE(stations[0].matched);
    REQUIRE(stations[0].groups.size() == 3);
    CHECK(stations[0].groups[0].run_time_ratio == 1.0);                        // full circles
    CHECK_THAT(stations[0].groups[1].run_time_ratio, WithinAbs(0.5, 1e-12));   // half circles
    CHECK_THAT(stations[0].groups[2].run_time_ratio, WithinAbs(0.25, 1e-12));  // quarter circles
    CHECK(stations[0].groups[2].heads.size() == 4);
    REQUIRE(stations[0].arcs.size() == 3);
    CHECK(stations[0].arcs[0].arc == 90.0);
    // 96.25 q / A with q the full-circle equivalent, 4 x 3.6 gpm, A = pi 15^2 ft2 (exact constant, derived).
    CHECK_THAT(stations[0].arcs[0].mean.in(units::inch_per_hour), WithinRel(96.25 * 14.4 / (std::numbers::pi * 225.0), 1e-12));
    CHECK(matched_precipitation(p, 5.0)[0].matched);
}

TEST_CASE("what a change is worth at equal turf quality", "[plan][derived]") {
    Plan before = lawn();
    for (Head& h : before.heads) h.pressure = 30.0;
    before.nozzles = {{"A", {{30.0, 15.0, 3.6}}, 20.0, 40.0}};
    const Prediction a = overlap_of(before, {}).prediction;
    const Prediction b = overlap_of(lawn("flat"), {}).prediction;
    WhatIfTerms terms;
    terms.season_need = 500.0 * units::millimetre;
    terms.price_per_m3 = 2.0;
    terms.cost_of_change = 100.0;
    const WhatIf w = compare(a, b, terms);
    const double area = 90.0 * 45.0 * 0.3048 * 0.3048;
    CHECK_THAT(w.before.season->in(units::cubic_metre), WithinRel(0.5 * area / a.du_lh->value() / (1.0 - a.off_target_share.value()), 1e-9));
    CHECK_THAT(w.saved->in(units::cubic_metre), WithinRel(w.before.season->in(units::cubic_metre) - w.after.season->in(units::cubic_metre), 1e-9));
    CHECK_THAT(*w.money_saved, WithinRel(2.0 * w.saved->in(units::cubic_metre), 1e-9));
    if (*w.money_saved > 0.0) CHECK_THAT(*w.payback_seasons, WithinRel(100.0 / *w.money_saved, 1e-12));
    else CHECK_FALSE(w.payback_seasons.has_value());
    const WhatIf back = compare(b, a, terms);
    CHECK_THAT(back.saved->si(), WithinRel(-w.saved->si(), 1e-9));
    CHECK(back.payback_seasons.has_value() != w.payback_seasons.has_value());

    const Plan more = with_pressure(before, "C", 43.2);
    for (std::size_t i = 0; i < more.heads.size(); ++i) {
        const double ratio = *more.heads[i].flow / *before.heads[i].flow;
        CHECK_THAT(ratio, WithinAbs(more.heads[i].station == "C" ? 1.2 : 1.0, 1e-12));  // sqrt(1.44)
    }
    CHECK_FALSE(more.assumed.empty());
    CHECK_THROWS_AS(with_pressure(before, "Z", 30.0), InputError);
    CHECK_THROWS_AS(with_pressure(before, "", -1.0), InputError);
    CHECK_THROWS_AS(with_pressure(lawn(), "", 30.0), InputError);  // no pressure recorded
    CHECK_THROWS_AS(with_nozzle(before, "none", "A"), InputError);
    Plan named = before;
    for (Head& h : named.heads) h.nozzle = "old";
    CHECK(sprinklers_of(with_nozzle(named, "old", "A")).heads[0].flow == sprinklers_of(lawn()).heads[8].flow);
    CHECK_THROWS_AS(with_nozzle(named, "old", "missing"), InputError);

    const Plan wide = with_spacing(lawn(), 1.5);
    CHECK(wide.heads.size() < lawn().heads.size());
    CHECK(overlap_of(wide, {}).prediction.du_lq->value() < a.du_lq->value());
    CHECK_THROWS_AS(with_spacing(lawn(), 0.0), InputError);
    CHECK_THROWS_AS(with_spacing(lawn(), std::nan("")), InputError);
    terms.season_need = 0.0 * units::millimetre;
    CHECK_THROWS_AS(compare(a, b, terms), InputError);
}
