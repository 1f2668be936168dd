// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/table.h"

#include <iosfwd>
#include <string>

namespace evenfall::reports {

/// A table as CSV: RFC 4180, UTF-8, CRLF, header row `key_unit` ("use_gal"), numbers in full
/// precision (shares as shares), empty where not known, a last column `row_kind` where the table
/// has totals. Text that a spreadsheet program could take for a formula (starting with = + - @,
/// tab or line feed) gets an apostrophe in front; numbers never do.
/// Tests: tests/reports/text_test.cpp
std::string write_csv(const Table& table);

/// A raw table in the same form, streamed.
/// @throws std::runtime_error when the stream fails
void write_csv(const RawTable& table, std::ostream& out);

/// One field in the form above, without separator.
std::string csv_field(std::string_view text);

}  // namespace evenfall::reports
