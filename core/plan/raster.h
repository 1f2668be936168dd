// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "core/plan/sprinkler.h"
#include "core/units/quantity.h"

#include <cstdint>
#include <optional>
#include <vector>

/// The grid of cells that a plan is computed on. Rates are point values at cell centres.
///
/// The grid covers the outline and everything that any head inside it can reach, so no water is
/// lost at its rim. It starts at a corner of the outline's box and divides the box a whole number of
/// times, so that cell borders lie on the sides of an outline along the axes and never on its cell
/// centres. Cells may therefore be a little smaller than asked, and not quite square.
/// Tests: tests/plan/overlap_test.cpp
namespace evenfall::plan {

struct Raster {
    double x0 = 0.0;   ///< m, west side of column 0
    double y0 = 0.0;   ///< m, south side of row 0
    double hx = 0.0;   ///< m, width of a cell
    double hy = 0.0;   ///< m, height of a cell
    int columns = 0;
    int rows = 0;

    double x(int column) const { return x0 + (column + 0.5) * hx; }
    double y(int row) const { return y0 + (row + 0.5) * hy; }
    std::size_t cells() const {
        return static_cast<std::size_t>(columns) * static_cast<std::size_t>(rows);
    }
    double cell_area() const { return hx * hy; }
    std::size_t index(int column, int row) const {
        return static_cast<std::size_t>(row) * static_cast<std::size_t>(columns) +
               static_cast<std::size_t>(column);
    }
};

/// Cell when none is asked for: 0.25 m, or a 32nd of the smallest radius where that is less.
/// @return metres
double default_cell(const Sprinklers& all);

/// @param cell  asked for by the user; empty: default_cell, made larger where the grid would pass
///              the limits on cells or on work
/// @throws InputError  a cell not above zero, larger than a quarter of the smallest radius, or so
///                     small that the grid passes the limits
Raster raster_for(const Plan& plan, const Sprinklers& all, const PatternMap& map,
                  std::optional<units::Length> cell);

enum class Surface : std::uint8_t { outside = 0, turf = 1, no_water = 2 };

/// What lies at each cell centre. Turf is inside an outline, not in its holes and not on paving.
std::vector<Surface> ground_of(const Plan& plan, const Raster& raster);

}  // namespace evenfall::plan
