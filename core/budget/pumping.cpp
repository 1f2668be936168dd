// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/pumping.h"

#include "core/input_error.h"
#include "core/units/number.h"

namespace evenfall::budget {
namespace {

/// Specific weight of water, as a pressure per metre of head.
constexpr double pascal_per_metre = 1000.0 * 9.80665;

}  // namespace

units::Length total_head(const Pump& pump) {
    if (!pump.lift && !pump.pressure) {
        throw InputError({phrase("budget", "pump %1"), pump.code}, phrase("budget", "a lift or a pressure"));
    }
    units::Length head;
    if (pump.lift) head += pump.lift->quantity();
    if (pump.friction) head += pump.friction->quantity();
    if (pump.pressure) {
        head += pump.pressure->quantity().si() / pascal_per_metre * units::metre;
    }
    if (!(head.si() > 0.0)) {
        throw InputError({phrase("budget", "pump %1, head %2 m"), pump.code, units::format_shortest(head.si())},
                         phrase("budget", "a total head above zero"));
    }
    return head;
}

units::Energy pump_energy(units::Volume volume, units::Length head, units::Efficiency efficiency) {
    if (!(efficiency.value() > 0.0) || !(volume.si() >= 0.0) || !(head.si() >= 0.0)) {
        throw InputError({phrase("budget", "%1 m3, %2 m, efficiency %3"), units::format_shortest(volume.si()),
                          units::format_shortest(head.si()), units::format_shortest(efficiency.value())},
                         phrase("budget", "a volume and a head of zero or more and an efficiency above zero"));
    }
    return units::Pressure::from_si(pascal_per_metre * head.si()) * volume / efficiency.value();
}

}  // namespace evenfall::budget
