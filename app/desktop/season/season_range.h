// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/store/book.h"

#include <optional>
#include <string>

namespace evenfall::desktop {

struct MonthRange {
    calendar::Month first;
    calendar::Month last;
};

/// The months for which a site's meters have readings; nothing when there are none.
std::optional<MonthRange> months_with_readings(const store::Book& book, const std::string& site);
/// The last calendar year of that range, as far as it goes.
MonthRange last_year_of(const MonthRange& range);

}  // namespace evenfall::desktop
