// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/sentence.h"

/// Months by name, in the language shown. Tests: tests/calendar/date_test.cpp
namespace evenfall::calendar {

/// "July"
Phrase month_name(Month month);
/// "Jul 2025", as format_month_name() has it in English.
Sentence month_words(Month month);

}  // namespace evenfall::calendar
