// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/shown.h"
#include "core/exchange/columns.h"
#include "core/meter/screens.h"

#include <QString>
#include <vector>

/// Findings of the meter screens in the order in which to look at them, and the names of tables.
/// Tests: tests/app/desktop_strings_test.cpp
namespace evenfall::desktop {

/// The surest and the largest first: a leak seen every night before a gap of a day.
void sort_by_urgency(std::vector<meter::MeterFinding>& findings);
/// "readings": a kind of table.
QString table_words(exchange::Kind kind);

}  // namespace evenfall::desktop
