// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/schedule/cycle_soak.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>

namespace evenfall::schedule {

using units::Duration;

CycleSoak cycle_and_soak(Duration run, units::Rate application, units::Rate intake,
                         units::Depth accumulation) {
    if (!(run.si() >= 0.0) || !(application.si() > 0.0) || !(intake.si() > 0.0) ||
        !(accumulation.si() > 0.0)) {
        throw InputError(
            {phrase("schedule", "%1 min at %2 mm/h, intake %3 mm/h"), units::format_shortest(run.in(units::minute)),
             units::format_shortest(application.in(units::millimetre_per_hour)),
             units::format_shortest(intake.in(units::millimetre_per_hour))},
            phrase("schedule", "a run of zero or more, and rates and accumulation above zero"));
    }
    CycleSoak out{1, run, Duration{}};
    if (application <= intake) return out;
    const Duration longest = accumulation / (application - intake);
    // A run that is a whole number of cycles but for rounding must not get one more.
    out.cycles = std::max(1, static_cast<int>(std::ceil(run / longest - 1e-9)));
    out.cycle = run / static_cast<double>(out.cycles);
    if (out.cycles > 1) out.soak = accumulation / intake;
    return out;
}

}  // namespace evenfall::schedule
