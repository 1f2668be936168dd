// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/columns.h"
#include "core/input_error.h"
#include "core/store/book.h"
#include "core/store/conflict_rows.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// Bringing tables into a book.
///
/// All files of one call are one transaction: either everything goes in or nothing does. They are
/// read in the order in which they need each other (sites, meters, exchanges, areas, weather
/// stations, readings, weather, hourly weather, catches, pressures, findings, bills, plantings),
/// whatever order they are named in.
///
///   bad row    refused with file, row, column, text and what was expected. With any bad row
///              nothing is stored, unless `accept_rest` says that the good rows may go in.
///   same again a row that is in the book already adds nothing, so importing a file twice, or two
///              files that overlap, gives the same book in any order.
///   conflict   another value for the same record (for a reading: meter, moment and span) is never
///              settled silently: by a choice for this record and these two values (`choices`, see
///              conflict_table.h), else by the general ConflictChoice. Where the book's value stands,
///              what else the row says of the record goes in. Each choice is in the journal.
///   before     a value that the book replaced on purpose, and one that was set aside for the very
///              value that the book still has, is known when it comes again: old files are imported
///              again all the time, and nobody should have to decide the same thing twice, nor should
///              an old file undo a correction. The book's value stands without a new choice, nothing
///              is written, and the result counts it and says so. Two ways lead on: a choice for
///              that record takes the file's value, whatever was before; and `replace` takes one that
///              was set aside, but never one that was replaced, or else the same files imported again
///              would turn the book back and forth.
///              How it is known: by the earlier revisions, for readings, bills, plantings, days and
///              hours of weather (there value by value); by the journal for all that keeps none.
///
/// The same files with the same choices again add nothing. Where two files contradict each other
/// about a record, a choice that is applied can make a conflict that was none before; it is listed
/// and waits, like any other.
///
/// Memory stays flat for readings, whatever the size of the file: they are put in in batches,
/// each sorted by meter and time, within the one transaction. So it does for conflicts and choices.
/// Tests: tests/exchange/import_test.cpp, tests/exchange/import_property_test.cpp,
///   tests/exchange/import_choices_test.cpp, tests/exchange/import_kill_test.cpp;
///   speed: tests/bench/import_bench.cpp
namespace evenfall::exchange {

enum class ConflictChoice {
    refuse,  ///< list them; nothing of the call is stored
    keep,    ///< what the book has stands; the other value is written to the journal
    replace  ///< the file's value stands from now on; the old one stays as an earlier revision, and
             ///< both are in the journal
};

struct ImportProgress {
    std::string file;
    std::size_t rows = 0;  ///< read so far
    double done = 0.0;     ///< share of the file, 0 to 1
};

struct ImportOptions {
    std::optional<Kind> kind{};                      ///< nothing: told from the header
    std::optional<std::filesystem::path> map{};      ///< a column map, see table_map.h
    std::vector<std::filesystem::path> maps{};       ///< instead: one for each file, in their order
    std::optional<std::filesystem::path> rejects{};  ///< where refused rows are written
    bool dry_run = false;      ///< do everything, then undo it
    bool accept_rest = false;  ///< store the good rows though others were refused
    ConflictChoice conflicts = ConflictChoice::refuse;  ///< what `choices` does not name
    std::optional<std::filesystem::path> choices{};     ///< a table of conflicts that was filled in
    /// Where all conflicts are written as such a table, stored or not; with the choices made so far
    /// and those of before, so that it can be filled in further.
    std::optional<std::filesystem::path> list_conflicts{};
    std::string at;            ///< now, UTC, ISO 8601: core asks no clock
    std::string who;           ///< for the journal
    std::function<void(const ImportProgress&)> progress{};
};

struct Conflict {
    Place place;
    std::string record;   ///< "reading of M-1 at 2024-06-30T13:00:00Z"
    std::string in_book;
    std::string in_file;
    store::Stands stands = store::Stands::undecided;  ///< undecided: it keeps all files out
};

struct ImportResult {
    Kind kind{};
    std::string file;
    std::size_t read = 0;       ///< rows
    std::size_t added = 0;      ///< records that were new
    std::size_t unchanged = 0;  ///< records that the book had already
    std::size_t conflicts = 0;  ///< records for which the book has another value
    std::size_t replaced = 0;   ///< of them, how many took the file's value
    std::size_t open = 0;       ///< of them, how many wait for a choice
    std::size_t decided_before = 0;  ///< records with a value that was replaced or set aside before
    std::size_t rejected = 0;   ///< rows refused
    std::vector<Conflict> conflict_list;  ///< the first of them, those that wait above all
    std::vector<Issue> issues;            ///< the first of them
    std::vector<Sentence> notes;
    bool complete = true;  ///< false: the file could not be read to its end
    bool stored = false;   ///< the book now holds what `added` and `replaced` say
};

/// One result for each file, in the order given.
/// @param options  `maps` is empty or as long as `files`
/// @throws BookError when the book cannot be written; it is as before then
/// @throws InputError for a map or a table of choices that cannot be used, and for each choice that
///   was made on another value or names a record that is in no conflict; the book is as before
std::vector<ImportResult> import_files(store::Book& book,
                                       std::span<const std::filesystem::path> files,
                                       const ImportOptions& options);

/// @throws InputError with every issue, and every conflict that no choice settled, when these
///   results were not stored because of them
void require_accepted(std::span<const ImportResult> results);

}  // namespace evenfall::exchange
