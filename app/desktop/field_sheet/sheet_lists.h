// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/field_sheet/field_sheet.h"
#include "app/desktop/field_sheet/text_table.h"

#include <QWidget>

/// The lists beside the cans: pressures, findings, photos, notes. Each change is one undo step.
/// Tests: tests/app/desktop_field_notes_test.cpp
namespace evenfall::desktop {

/// Tabs other than the cans, bound to the sheet.
TextTable* make_pressure_table(FieldSheet& sheet, QWidget* parent);
/// The list of findings and, below it, that an inspection was made at all.
QWidget* make_findings(FieldSheet& sheet, QWidget* parent);
QWidget* make_notes(FieldSheet& sheet, QWidget* parent);

}  // namespace evenfall::desktop
