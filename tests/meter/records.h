// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/meter/use.h"

#include <string>
#include <vector>

/// Short ways to write meters and readings down in tests.
namespace evenfall::tests {

inline calendar::Instant at(const std::string& text) {
    const auto instant = calendar::parse_instant(text);
    if (!instant) throw std::runtime_error("not an instant: " + text);
    return *instant;
}

inline meter::Meter meter_in(const std::string& unit) {
    meter::Meter m;
    m.code = "M-1";
    m.site = "S-1";
    m.unit = units::unit_named<units::Volume>(unit);
    return m;
}

inline meter::Reading reg(const std::string& when, double value,
                          meter::ReadingKind kind = meter::ReadingKind::measured) {
    return {at(when), std::chrono::seconds{0}, value, kind};
}

inline meter::Reading logged(const std::string& end, int seconds, double value) {
    return {at(end), std::chrono::seconds{seconds}, value, meter::ReadingKind::measured};
}

}  // namespace evenfall::tests
