// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/outline_store.h"

#include <utility>
#include <vector>

namespace evenfall::workflow {

/// The ring that a filing can hold of an outline in the book: longitude and latitude in degrees, not
/// closed. Empty when the outline is in the plane of a drawing, has holes or is of several pieces,
/// for which a filing has no form: the officer then cannot tell from it, rather than tell wrongly.
/// That it is in degrees shows by its area on the ellipsoid, which must be the measured one to 1 %.
/// @throws BookError for an outline that is no GeoJSON MultiPolygon
/// Tests: tests/app/filing_test.cpp
std::vector<std::pair<double, double>> ring_to_file(const store::AreaOutline& outline);

}  // namespace evenfall::workflow
