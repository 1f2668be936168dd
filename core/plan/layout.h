// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "core/units/quantity.h"

#include <optional>
#include <string>
#include <vector>

/// Fits a layout of heads to an outline, from the outside in: a head in every corner, heads along
/// every edge, then the interior.
///
/// The spacing is the widest that the wind allows for the largest radius, then reduced so that it
/// divides the narrow side a whole number of times, and the radius follows it:
///     square       S = s D, rows S apart
///     rectangular  S = s1 D in the row, rows s2 D apart
///     equilateral  rows (sqrt 3 / 2) S apart, alternate rows moved by S / 2
/// D = 2 R. Rows run along the longest edge. Corner heads face along the bisector with the arc of
/// the corner; edge heads are half circles facing inward; a head that would throw over an edge has
/// its radius drawn in, by a quarter at most. Flow is the design rate over the
/// ground of one head, S times row spacing, times its arc / 360, so that all rates match.
///
/// What it makes is a first draft for a designer to check: pipe sizes, pressure, slopes, local
/// codes and setbacks from buildings and roads are not looked at.
/// Source: shares by wind in schemas/reference/spacing_by_wind.csv; the order of placing is common
/// practice. Tests: tests/plan/layout_test.cpp
namespace evenfall::plan {

enum class Pattern { square, rectangular, equilateral };

std::string name_of(Pattern pattern);

struct SpacingShares {
    double in_row = 0.0;      ///< of the diameter
    double between_rows = 0.0;
    std::string source;
    std::string mark;
};

/// The widest spacing for a wind. @throws InputError for a wind below zero or above the last band
SpacingShares spacing_for(Pattern pattern, units::Speed wind);

struct LayoutOrder {
    Pattern pattern = Pattern::square;
    SpacingShares shares;
    double smallest_radius = 0.0;       ///< of the chosen heads, in the plan's length unit
    double largest_radius = 0.0;
    units::Rate rate;                   ///< design application rate
    std::optional<units::Flow> most_flow;  ///< of a station; empty: all heads on one station
};

struct StationFlow {
    std::string station;
    std::size_t heads = 0;
    units::Flow flow;
};

struct Layout {
    Plan plan;                          ///< the outline with its heads
    std::size_t corner_heads = 0, edge_heads = 0, interior_heads = 0;
    double spacing = 0.0;               ///< in the row, plan unit
    double row_spacing = 0.0;
    double radius = 0.0;
    double share_of_diameter = 0.0;     ///< in the row
    std::vector<StationFlow> stations;
    std::vector<std::string> warnings;
    std::string method, source;
};

/// @param outline  a plan whose outlines and units count; its heads are left out
/// @throws InputError  an outline that is not sound, radii out of order, a rate not above zero, or
///                     more heads than a plan may have
Layout fit_layout(const Plan& outline, const LayoutOrder& order);

}  // namespace evenfall::plan
