// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

namespace evenfall::site {

/// A place on the WGS 84 ellipsoid, degrees north and east.
struct GeoPoint {
    double latitude = 0.0;
    double longitude = 0.0;
};

/// Length of the geodesic between two places (Karney 2013, through GeographicLib); heights do not count.
/// @throws InputError for a latitude beyond 90 or a longitude beyond 180 degrees
/// Tests: tests/site/distance_test.cpp
units::Length distance_between(GeoPoint a, GeoPoint b);

}  // namespace evenfall::site
