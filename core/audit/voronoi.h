// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>
#include <utility>
#include <vector>

namespace evenfall::audit {

struct VoronoiShares {
    std::vector<double> share;  ///< of the ground, adding to 1, in the order of the points
    double area = 0.0;          ///< of the ground, in the square of the unit of the points
    bool outline_assumed = false;
};

/// The part of the ground that is nearer to each point than to any other.
///
/// Without an outline the ground is the convex hull of the points, moved out by half the median
/// distance from a point to its nearest neighbour, with square corners: on a regular grid every
/// point then gets the same share.
///
/// The diagram is Boost.Polygon's on a whole-number grid of 2^28 steps across the ground, so a
/// share is off by less than 1e-6 of itself for any test of up to some ten thousand cans;
/// clipping to the outline is Boost.Geometry's.
///
/// @param outline  ring of at least three corners, either direction, closed or not; or empty
/// @throws InputError  points in one line, two in one place, an outline that crosses itself, or a
///                     point outside of it
/// Tests: tests/audit/voronoi_test.cpp
VoronoiShares voronoi_shares(std::span<const std::pair<double, double>> points,
                             std::span<const std::pair<double, double>> outline);

}  // namespace evenfall::audit
