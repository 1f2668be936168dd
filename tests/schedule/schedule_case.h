// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/schedule/base_schedule.h"

#include <string>

/// Small schedules to work out by hand.
namespace evenfall::schedule::test {

inline calendar::Month june() { return std::chrono::year{2024} / std::chrono::June; }

/// Need 6 in and ET 6 in over June (30 days: 1.4 in a week, 0.2 in a day), M 1.25; clay loam on a
/// slope of 5 %: intake 0.20 in/h, 0.22 in may stand; TAW 1.0 in, p 0.5.
inline AreaPlan area(const std::string& code) {
    using namespace units;
    AreaPlan plan;
    plan.area = code;
    plan.months = {{june(), 6.0 * inch, 6.0 * inch}};
    plan.multiplier = Multiplier::of(1.25);
    plan.available = 1.0 * inch;
    plan.depletion_share = 0.5;
    plan.intake = 0.20 * inch_per_hour;
    plan.accumulation = 0.22 * inch;
    return plan;
}

inline Station station(const std::string& code, const std::string& area, double in_per_hour) {
    Station s;
    s.code = code;
    s.area = area;
    s.rate = units::Typed<units::Rate>{in_per_hour, units::unit_named<units::Rate>("in_h")};
    s.rate_source = std::string("test");
    return s;
}

inline WateringRule rule(std::array<bool, 7> days, int starts_hour, int ends_hour) {
    WateringRule r;
    r.site = std::string("S");
    r.days = days;
    r.starts = std::chrono::hours{starts_hour};
    r.ends = std::chrono::hours{ends_hour};
    return r;
}

}  // namespace evenfall::schedule::test
