// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/report.h"

#include <string>

namespace evenfall::reports {

/// Writes the report as a workbook (Office Open XML, ECMA-376): sheets Caution, Answer, one for
/// each section, Notes, one for each raw table. Formula cells carry the value that the core
/// computed. Each numeric column of a table has the defined name table_column, each named cell its
/// own. Written to `path`.part and renamed when whole, so a failure leaves what was there.
/// The same report gives the same bytes: report.created is the only date inside.
/// Raw tables stream in constant memory; charts then come without cached points, which programs
/// that open the file fill in from the cells.
/// @throws InputError          where check() would, or for text longer than a cell can hold
/// @throws std::runtime_error  when the file cannot be written
/// Tests: tests/reports/xlsx_test.cpp, recalculation by LibreOffice in tests/reports/recalculate.py
void write_xlsx(const Report& report, const std::string& path);

}  // namespace evenfall::reports
