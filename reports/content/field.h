// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/chart.h"

#include <cstddef>
#include <vector>

/// Fields between points and lines of equal value, for maps. Pictures to look at: no figure of a
/// report is taken from them.
/// Tests: tests/reports/field_test.cpp
namespace evenfall::reports {

struct FieldPoint {
    double x;
    double y;
    double value;
};

/// Inverse-distance interpolation (Shepard 1968, power 3) on a grid of about `cells` cells over the
/// points; a place farther from every point than their usual spacing is left out (NaN). At a point
/// the field has the point's value.
/// @return nothing for fewer than four points or when all lie on one line along an axis
std::optional<Field> field_between(const std::vector<FieldPoint>& points, std::size_t cells);

/// Lines of equal value by marching squares over the cell centres; saddles are split by the mean of
/// their four corners. Cells with a corner that is NaN carry no line.
std::vector<Contour> contours_of(const Field& field, const std::vector<double>& levels);

/// Round levels (1, 2 or 5 times a power of ten apart), at most `most`, inside the field's range.
std::vector<double> round_levels(const Field& field, std::size_t most);

}  // namespace evenfall::reports
