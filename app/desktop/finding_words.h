// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/shown.h"
#include "core/exchange/columns.h"
#include "core/meter/screens.h"

#include <QString>
#include <vector>

/// What the core says in English, in the language shown. English keeps the core's own sentences;
/// other languages get one made from the same finding: what, from when to when, how much.
/// Tests: tests/app/desktop_strings_test.cpp
namespace evenfall::desktop {

QString kind_words(meter::FindingKind kind);
QString confidence_words(meter::Confidence confidence);
QString sentence_words(const meter::MeterFinding& finding, UnitsShown units);
/// The surest and the largest first: a leak seen every night before a gap of a day.
void sort_by_urgency(std::vector<meter::MeterFinding>& findings);
/// "readings": a kind of table.
QString table_words(exchange::Kind kind);

}  // namespace evenfall::desktop
