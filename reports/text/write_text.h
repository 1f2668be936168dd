// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/report.h"

#include <cstddef>
#include <string>

namespace evenfall::reports {

/// The report for a terminal or a text file: UTF-8, lines of at most `width` characters except
/// where one table column alone is wider. Charts are replaced by their sentence, because their
/// figures stand in the tables. Raw tables are named, not printed.
/// Tests: tests/reports/text_test.cpp, tests/golden
std::string write_text(const Report& report, std::size_t width = 96);

/// One table as it stands in write_text.
std::string write_text(const Table& table, std::size_t width = 96);

}  // namespace evenfall::reports
