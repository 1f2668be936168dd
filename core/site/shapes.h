// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

/// The size of an area from what a measuring wheel gives, or from its outline on a map.
///
/// Dimensioned shapes, lengths in one unit:
///     rectangle a b            a b
///     triangle a b c           sqrt(s (s - a)(s - b)(s - c)), s = (a + b + c) / 2   (three sides)
///     circle r                 pi r^2                                               (radius)
///     trapezoid a b h          (a + b) h / 2             (parallel sides, distance between them)
///     offsets d: o1 o2 .. on   d (o1 / 2 + o2 + .. + on / 2)
///                              (offsets square to a baseline, every d along it: trapezoidal rule)
/// Shapes are joined with "+", and cut out with "-": "rectangle 120 45 - circle 10".
///
/// Outlines lie on the WGS 84 ellipsoid; edges are geodesics (Karney 2013, through GeographicLib).
/// Outer rings count, holes are taken off, whichever way round they run.
/// Source: plane formulas are elementary geometry; offsets: trapezoidal rule of land surveying.
/// Tests: tests/site/shapes_test.cpp
namespace evenfall::site {

/// @throws InputError for a shape that cannot be read or cannot be: a name that is not known, a
///   length that is not above zero, sides that make no triangle, cut-outs larger than the rest
units::Area area_of_shapes(std::string_view text, units::Length unit);

/// Longitude and latitude in degrees, or x and y.
using Point = std::array<double, 2>;
using Ring = std::vector<Point>;
/// The outer ring, then holes.
using Polygon = std::vector<Ring>;

/// Area of an outline given by longitude and latitude.
/// @throws InputError for a coordinate outside the Earth or a ring of fewer than three corners
units::Area area_on_ellipsoid(const std::vector<Polygon>& outline);

/// Area of an outline on a plane, in units of `unit`.
/// @throws InputError for a ring of fewer than three corners
units::Area area_on_plane(const std::vector<Polygon>& outline, units::Length unit);

}  // namespace evenfall::site
