// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

/// Text as the cell of a CSV table (RFC 4180), safe to open in a spreadsheet and exact to read back.
///
/// A spreadsheet takes a cell that begins with one of = + - @, a tab or a carriage return for a
/// formula, or worse. Such a text is written with an apostrophe in front, which spreadsheets read as
/// "this is text"; a plain number with its sign stays as it is. Reading takes one apostrophe off where
/// one of those characters follows it, so that what was kept comes back to the letter. A text that has
/// such an apostrophe of its own gets one more.
/// Tests: tests/exchange/csv_text_test.cpp
namespace evenfall::exchange {

/// The cell, quoted where it holds a comma, a quote or a line end.
std::string csv_cell(std::string_view text);

/// The text of a cell that was read, without the apostrophe that guards it.
std::string_view unguarded(std::string_view cell);

}  // namespace evenfall::exchange
