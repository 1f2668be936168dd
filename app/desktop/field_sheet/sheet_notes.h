// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/field_sheet/sheet_data.h"
#include "core/audit/catch_test.h"
#include "core/input_error.h"

#include <vector>

/// Pressures and findings of a field sheet, as they were typed and as the book keeps them.
/// Tests: tests/app/desktop_field_notes_test.cpp
namespace evenfall::desktop {

/// What is wrong with them, each with the row of its list and the name of its column.
std::vector<Issue> issues_of(const SheetPressure& pressure, std::size_t row);
std::vector<Issue> issues_of(const SheetFinding& finding, std::size_t row);

/// Puts them into the test. A list without a row is not noted; findings are when an inspection was made.
/// @throws InputError with every issue
void take_notes(const SheetData& sheet, audit::CatchTest& test);
/// Those of a test of the book, onto the sheet.
void show_notes(const audit::CatchTest& test, SheetData& sheet);

}  // namespace evenfall::desktop
