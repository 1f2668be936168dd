// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"

#include <QString>

/// Months in the language shown at the moment.
/// Tests: tests/app/desktop_strings_test.cpp
namespace evenfall::desktop {

QString month_name(calendar::Month month);   ///< "Jan"
QString month_title(calendar::Month month);  ///< "Jan 2026"

}  // namespace evenfall::desktop
