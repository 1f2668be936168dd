// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/moment.h"

#include "core/calendar/date.h"
#include "core/units/number.h"

#include <chrono>
#include <cstdlib>

namespace evenfall::workflow {

std::string present_moment() {
    using namespace std::chrono;
    if (const char* fixed = std::getenv("SOURCE_DATE_EPOCH")) {
        if (const auto seconds_since = units::parse_number(fixed)) {
            return calendar::format_instant(
                calendar::Instant{seconds{static_cast<std::int64_t>(*seconds_since)}});
        }
    }
    return calendar::format_instant(floor<seconds>(system_clock::now()));
}

std::string present_user() {
    for (const char* name : {"USER", "LOGNAME"}) {
        const char* value = std::getenv(name);
        if (value != nullptr && *value != '\0') return value;
    }
    return "unknown";
}

}  // namespace evenfall::workflow
