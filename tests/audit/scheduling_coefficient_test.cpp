// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/scheduling_coefficient.h"

#include "core/audit/uniformity.h"
#include "core/input_error.h"
#include "tests/audit/catches.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::audit;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

const std::vector<std::vector<double>> six_by_six{
    {10, 11, 12, 11, 10, 9}, {9, 10, 12, 12, 11, 9}, {8, 7, 9, 12, 12, 10},
    {8, 6, 8, 11, 12, 11},   {9, 8, 9, 10, 11, 11},  {10, 10, 11, 11, 10, 10}};

std::vector<double> flat(const std::vector<std::vector<double>>& rows) {
    std::vector<double> cells;
    for (const auto& r : rows) cells.insert(cells.end(), r.begin(), r.end());
    return cells;
}

const SchedulingResult* find(const std::vector<SchedulingResult>& all, DrySpot spot) {
    for (const auto& r : all) {
        if (r.spot == spot) return &r;
    }
    return nullptr;
}

std::vector<SchedulingResult> of(const CatchTest& t, std::vector<double> shares) {
    const Sample s = sample_of(t, usual_choices());
    return scheduling_coefficients(s, analyse_sample(s, QuarterRule::part_can).du_lq, shares);
}

}  // namespace

// CONSTRUCTED grid; exact answers by rational arithmetic. Rows and columns here count from 0.
TEST_CASE("windows of whole cells", "[audit][constructed]") {
    struct Row { double wide, high, mean, row, column, sc; };
    const auto row = GENERATE(values<Row>({{1, 1, 6, 3, 1, 5.0 / 3},
                                           {2, 1, 7, 3, 0, 10.0 / 7},
                                           {1, 2, 6.5, 2, 1, 20.0 / 13},
                                           {2, 2, 7.25, 2, 0, 40.0 / 29},
                                           {3, 3, 8, 2, 0, 1.25}}));
    const bool wrap = GENERATE(false, true);
    const GridWindow w = driest_window(flat(six_by_six), 6, row.wide, row.high, wrap);
    CAPTURE(row.wide, row.high, wrap);
    CHECK_THAT(w.mean, WithinAbs(row.mean, 1e-12));
    CHECK(w.row == row.row);
    CHECK(w.column == row.column);
    CHECK_THAT(10.0 / w.mean, WithinAbs(row.sc, 1e-12));
}

TEST_CASE("window shares on a full grid, driest can and low quarter", "[audit][constructed]") {
    const auto all = of(test::grid(six_by_six, 2.0), {1.0 / 9.0, 0.25});
    REQUIRE(all.size() == 4);
    CHECK_THAT(find(all, DrySpot::can)->value->value(), WithinAbs(5.0 / 3.0, 1e-12));
    CHECK_THAT(*find(all, DrySpot::can)->window_share, WithinAbs(1.0 / 36.0, 1e-12));
    CHECK(find(all, DrySpot::can)->where == "4-2");
    CHECK_THAT(find(all, DrySpot::low_quarter)->value->value(), WithinAbs(1.25, 1e-12));
    CHECK_FALSE(find(all, DrySpot::low_quarter)->window_share.has_value());
    CHECK_THAT(all[2].value->value(), WithinAbs(40.0 / 29.0, 1e-9));
    CHECK_THAT(all[3].value->value(), WithinAbs(1.25, 1e-9));
    CHECK(all[3].where == "x -1.0 to 5.0 m, y -9.0 to -3.0 m");
}

// PUBLISHED. NMSU Soils 456, problem 5.10: mean / minimum of 1, 0.9, 0.7, 1.2 is printed 1.35. The
// exact ratio is 1.35714: the print was cut, so the tolerance is a whole unit of its last digit.
TEST_CASE("driest can of a course problem", "[audit][published]") {
    CHECK_THAT(find(of(test::sheet({1, 0.9, 0.7, 1.2}), {}), DrySpot::can)->value->value(),
               WithinAbs(1.35, 0.01));
}

// PUBLISHED. Teaching pages "Irrigation", part 5: mean 12, driest 7 mm/h, printed 1.7.
TEST_CASE("mean over driest rate in teaching pages", "[audit][published]") {
    CHECK_THAT(find(of(test::sheet({7, 12, 14, 15}), {}), DrySpot::can)->value->value(),
               WithinAbs(1.7, 0.05));
}

// PUBLISHED. Dong, Kelley & Anderson 2023, doi 10.4236/jwarp.2023.153005: DU 77, 82, 62, 84 beside
// SC 1.3, 1.2, 1.6, 1.2. They agree under 1 / DU_LQ. Four cans with that low quarter stand in for
// fields whose catches were not printed.
TEST_CASE("scheduling coefficient as one over the low quarter", "[audit][published]") {
    struct Row { double du; double printed; };
    const auto row = GENERATE(values<Row>({{77, 1.3}, {82, 1.2}, {62, 1.6}, {84, 1.2}}));
    const double rest = (400.0 - row.du) / 3.0;
    const auto all = of(test::sheet({row.du, rest, rest, rest}), {});
    CHECK_THAT(find(all, DrySpot::low_quarter)->value->value(), WithinAbs(row.printed, 0.05));
}

// A window that is no whole number of cells slides without steps. One row would be a line, so two
// equal rows of 4 cells 1, 3, 2, 9: a window of the ground's shape with a quarter of its area is two
// cells wide and one high; its driest mean is (1 + 3)/2. With 1/16 it is one cell by half a cell.
TEST_CASE("windows slide without steps", "[audit][derived]") {
    const std::vector<double> cells{1, 3, 2, 9, 1, 3, 2, 9};
    CHECK_THAT(driest_window(cells, 4, 2.0, 1.0, false).mean, WithinAbs(2.0, 1e-12));
    // 1.5 cells over 3, 2, 9 | 1: all of cell 1 and half of cell 3.
    CHECK_THAT(driest_window(cells, 4, 1.5, 0.7, false).mean, WithinAbs((1.0 + 0.5 * 3.0) / 1.5, 1e-12));
    // Wrapped: half of the 9 is no help, but between 2 and 3 nothing beats the edge at 1 either.
    CHECK_THAT(driest_window(cells, 4, 4.0, 2.0, false).mean, WithinAbs(15.0 / 4.0, 1e-12));
}

TEST_CASE("windows by searching every tenth of a cell", "[audit][property]") {
    // The exact search must not be beaten by a brute-force one.
    const auto cells = flat(six_by_six);
    const double width = 1.7;
    const double height = 2.3;
    const auto cell_mean = [&](double x, double y) {
        double sum = 0.0;
        for (int r = 0; r < 6; ++r) {
            for (int c = 0; c < 6; ++c) {
                const double dx = std::min(x + width, c + 1.0) - std::max(x, c * 1.0);
                const double dy = std::min(y + height, r + 1.0) - std::max(y, r * 1.0);
                if (dx > 0 && dy > 0) sum += dx * dy * cells[static_cast<std::size_t>(r * 6 + c)];
            }
        }
        return sum / (width * height);
    };
    double least = 1e9;
    for (double x = 0.0; x <= 6.0 - width + 1e-9; x += 0.1) {
        for (double y = 0.0; y <= 6.0 - height + 1e-9; y += 0.1) least = std::min(least, cell_mean(x, y));
    }
    const GridWindow w = driest_window(cells, 6, width, height, false);
    CHECK(w.mean <= least + 1e-12);
    CHECK_THAT(cell_mean(w.column, w.row), WithinRel(w.mean, 1e-12));
}

TEST_CASE("driest stretch of a line and driest group of neighbours", "[audit][constructed]") {
    // Lateral, ten cans; 20 % is two cans side by side: (4 + 6)/2 = 5 of a mean of 9.
    const CatchTest lateral = test::line({1, 2, 3, 4, 5, 6, 7, 8, 9, 10},
                                         {10, 11, 9, 4, 6, 10, 10, 10, 10, 10}, Layout::lateral);
    const auto line = of(lateral, {0.2});
    CHECK_THAT(line.back().value->value(), WithinAbs(9.0 / 5.0, 1e-9));
    CHECK(line.back().where == "4 to 5");
    // The same row as a grid with a gap: the can with its nearest neighbour.
    CatchTest gap = test::grid({{10, 11, 9}, {4, 6, 10}, {10, 10, 50}});
    gap.catches.back().excluded = "tipped over";
    const auto group = of(gap, {0.25});
    CHECK(group.back().how == "can with its nearest neighbours");
    CHECK_THAT(group.back().value->value(), WithinAbs((70.0 / 8.0) / 5.0, 1e-9));
    // No positions, no windows.
    CHECK(of(test::sheet({1, 2, 3, 4}), {0.25}).size() == 2);
    CHECK_THROWS_AS(of(test::sheet({1, 2, 3, 4}), {25.0}), InputError);
}

TEST_CASE("a dry spot has no coefficient", "[audit][constructed]") {
    const auto all = of(test::sheet({0, 5, 6, 7}), {});
    CHECK_FALSE(find(all, DrySpot::can)->value.has_value());
    CHECK_FALSE(find(all, DrySpot::low_quarter)->value.has_value());
}

TEST_CASE("usual window shares come from the table", "[audit]") {
    CHECK(usual_window_shares() == std::vector<double>{0.01, 0.02, 0.05, 0.10});
}
