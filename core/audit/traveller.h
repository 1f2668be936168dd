// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/sample.h"

/// Travelling gun and hose reel: one row of cans across the path, overlapped with the neighbouring
/// lanes.
///
/// Each can stands for the strip that reaches half way to its neighbours (the outermost one as far
/// out as in), so the caught profile P(s) is a step function of the distance s from the path,
/// right positive. With lane spacing W the depth at x from a path is
///
///     same pull in every lane        sum over k of P(x - k W)
///     neighbouring lanes opposite    sum over k of P((-1)^k (x - k W)), repeating after 2 W
///
/// over all lanes that reach x, so patterns wider than one lane are covered. The lane is cut into
/// W / (can spacing) strips of equal width, rounded and at least four, and a strip's depth is the
/// mean of the sum over it. Nothing is interpolated and no water is lost:
/// mean depth x W = sum of can catch x strip width.
///
/// Source: derived from conservation of volume; the method (overlap a transect with its neighbours)
/// is that of North Carolina State Extension AG-553-2 (read in part).
/// Tests: tests/audit/traveller_test.cpp
namespace evenfall::audit {

struct Strip {
    units::Length middle;  ///< from the path the lane starts at
    units::Length width;
    units::Depth depth;
};

struct Overlap {
    std::vector<Strip> strips;   ///< one lane, or two when neighbouring lanes are pulled opposite
    units::Length can_spacing;   ///< median distance between neighbouring cans
    /// Largest outermost catch of the two sides over the largest catch: well above zero means the
    /// row of cans ended before the pattern did.
    double edge_share = 0.0;
};

/// @pre check(test) is empty and the layout is traveller
Overlap overlap_lanes(const CatchTest& test);

/// Mean depth from the flow: q / (W v). d (mm) = q (L/min) / (W (m) v (m/min)).
units::Depth depth_from_flow(units::Flow flow, units::Length lane_spacing, units::Speed travel);

}  // namespace evenfall::audit
