// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/site/distance.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <GeographicLib/Geodesic.hpp>

#include <cmath>

namespace evenfall::site {

units::Length distance_between(GeoPoint a, GeoPoint b) {
    for (const GeoPoint& p : {a, b}) {
        if (!(std::abs(p.latitude) <= 90.0) || !(std::abs(p.longitude) <= 180.0)) {
            throw InputError(units::format_shortest(p.latitude) + ", " + units::format_shortest(p.longitude),
                             phrase("site", "a latitude from -90 to 90 and a longitude from -180 to 180 degrees"));
        }
    }
    double metres = 0.0;
    GeographicLib::Geodesic::WGS84().Inverse(a.latitude, a.longitude, b.latitude, b.longitude, metres);
    return metres * units::metre;
}

}  // namespace evenfall::site
