// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"

namespace evenfall::budget {

/// A run of days, both included.
struct DayRun {
    calendar::Date from;
    calendar::Date to;
    int days() const { return static_cast<int>((to - from).count()) + 1; }
    bool operator==(const DayRun&) const = default;
};

}  // namespace evenfall::budget
