// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/conflict_rows.h"

#include <filesystem>
#include <functional>

/// The conflicts of an import as a CSV table, for choosing one by one what stands: an import writes
/// the table (a try is enough), a person fills in its last column, an import reads it back.
///
///     file, row, column   where the value was found; for the reader's eye, and may be left out
///     record*             the record, as messages name it
///     in_book*, in_file*  the two values
///     choice*             book, file, or nothing: not chosen, and left to the general choice
///
/// A choice holds for its record and its two values and for no others. One record may stand there
/// with several values of several files; `file` at most once then, and it is the value that stands
/// whatever the order of the files.
/// Text is written as csv_text.h does; a book's bytes that a spreadsheet changes are noticed, since
/// the values then name no conflict. Memory stays flat for a table of any length.
/// Example: schemas/tables/conflicts.csv. Tests: tests/exchange/conflict_table_test.cpp
namespace evenfall::exchange {

/// In the order in which they were added, in place of what is there.
/// @param choice  that of each row, by its place from 0; by default what the row says
/// @throws InputError when the file cannot be written
void write_conflicts(const std::filesystem::path& path, const store::ConflictRows& rows,
                     const std::function<store::Stands(std::int64_t)>& choice = {});

/// A table without rows is one, too.
/// @throws InputError with every issue (the first 200): unknown or missing columns, another word in
///   `choice`, an empty cell, a value that stands twice, a second `file` for one record
store::ConflictRows read_conflicts(const std::filesystem::path& path);

}  // namespace evenfall::exchange
