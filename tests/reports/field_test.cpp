// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/field.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace evenfall::reports;
using Catch::Matchers::WithinAbs;

namespace {

/// z = a + b x + c y at the cell centres of a grid.
Field plane(double a, double b, double c) {
    Field f;
    f.x0 = 1.0, f.y0 = 2.0, f.dx = 0.5, f.dy = 0.25, f.columns = 21, f.rows = 17;
    for (std::size_t r = 0; r < f.rows; ++r) {
        for (std::size_t k = 0; k < f.columns; ++k) {
            f.values.push_back(a + b * (f.x0 + static_cast<double>(k) * f.dx) +
                               c * (f.y0 + static_cast<double>(r) * f.dy));
        }
    }
    return f;
}

}  // namespace

// DERIVED: on a plane linear interpolation is exact, so every point of a contour solves
// a + b x + c y = level, and the line has the length of the chord through the grid.
TEST_CASE("contours of a plane lie on it", "[reports][derived]") {
    const Field f = plane(3.0, 2.0, -1.0);
    const auto contours = contours_of(f, {8.0, 1e9});
    REQUIRE(contours.size() == 1);
    double length = 0.0;
    for (const auto& line : contours[0].lines) {
        for (const auto& p : line) CHECK_THAT(3.0 + 2.0 * p[0] - p[1], WithinAbs(8.0, 1e-12));
        length += std::hypot(line[0][0] - line[1][0], line[0][1] - line[1][1]);
    }
    // x = (5 + y) / 2 for y from 2 to 6: from (3.5, 2) to (5.5, 6).
    CHECK_THAT(length, WithinAbs(std::sqrt(20.0), 1e-9));
}

// DERIVED by hand: one square with low corners 0 and 2; the middle (0.5) is not below 0.4, so the
// two low corners are cut off one by one.
TEST_CASE("a saddle is split by its middle", "[reports][derived]") {
    Field f;
    f.dx = f.dy = 1.0, f.columns = f.rows = 2;
    f.values = {0.0, 1.0, 1.0, 0.0};  // corners 0 (0,0), 1 (1,0), 3 (0,1), 2 (1,1)
    const auto c = contours_of(f, {0.4});
    REQUIRE(c.size() == 1);
    REQUIRE(c[0].lines.size() == 2);
    for (const auto& line : c[0].lines) {
        // Each piece stays near one low corner: both ends on sides that meet there.
        const bool near_first = line[0][0] < 0.5 && line[0][1] < 0.5 && line[1][0] < 0.5 && line[1][1] < 0.5;
        const bool near_last = line[0][0] > 0.5 && line[0][1] > 0.5 && line[1][0] > 0.5 && line[1][1] > 0.5;
        CHECK((near_first || near_last));
    }
}

TEST_CASE("the field goes through its points and ends near them", "[reports][constructed]") {
    std::vector<FieldPoint> points;
    for (int i = 0; i < 5; ++i) {
        for (int j = 0; j < 4; ++j) {
            points.push_back({10.0 * i, 10.0 * j, 5.0 + i * 1.5 - j});
        }
    }
    // 50 x 40 around the points at one cell per unit: centres at half units, so no point is hit;
    // with 10-unit cells every point is a centre.
    const auto f = field_between(points, 20);
    REQUIRE(f.has_value());
    REQUIRE(f->columns == 5);
    REQUIRE(f->rows == 4);
    for (int i = 0; i < 5; ++i) {
        for (int j = 0; j < 4; ++j) {
            const double v = f->values[static_cast<std::size_t>(j * 5 + i)];
            CHECK_THAT(v, WithinAbs(5.0 + i * 1.5 - j, 1e-12));
        }
    }
    // Never beyond the range of the catches.
    const auto fine = field_between(points, 2000);
    REQUIRE(fine.has_value());
    for (const double v : fine->values) {
        if (!std::isfinite(v)) continue;
        CHECK(v >= 2.0);
        CHECK(v <= 11.0);
    }
}

TEST_CASE("no field where there is no plane", "[reports]") {
    CHECK_FALSE(field_between({{0, 0, 1}, {1, 0, 2}, {2, 0, 3}, {3, 0, 4}}, 100));
    CHECK_FALSE(field_between({{0, 0, 1}, {1, 1, 2}, {2, 0, 3}}, 100));
    CHECK_FALSE(field_between({{1, 1, 1}, {1, 1, 2}, {1, 1, 3}, {1, 1, 4}}, 100));
}

TEST_CASE("round levels lie inside the field", "[reports][constructed]") {
    const auto levels = round_levels(plane(0.0, 1.0, 0.0), 6);
    REQUIRE_FALSE(levels.empty());
    CHECK(levels.size() <= 6);
    CHECK(levels == std::vector<double>{2.0, 4.0, 6.0, 8.0, 10.0});
}
