// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/store/book.h"

#include <cstdint>
#include <string>

namespace SQLite {
class Database;
}

/// Pressures and findings of a catch test: added and read with their test by catch_test_store.cpp, or
/// noted later, one by one, for a test that the book has.
/// Tests: tests/store/field_note_store_test.cpp
namespace evenfall::store {

/// @throws BookError when the test is not in the book
void add_pressure(Book& book, const std::string& test, const audit::PressureReading& reading);
void add_finding(Book& book, const std::string& test, const audit::Finding& finding);
/// In place of the one of the same place (and kind); the caller writes the old one to the journal.
void replace_pressure(Book& book, const std::string& test, const audit::PressureReading& reading);
void replace_finding(Book& book, const std::string& test, const audit::Finding& finding);
/// In place of all notes that the test has; the caller writes the old ones to the journal.
void set_field_notes(Book& book, const audit::CatchTest& test);
/// An inspection was made; what it found, if anything, is added besides.
void set_inspected(Book& book, const std::string& test);

/// For catch_test_store.cpp.
void add_field_notes(SQLite::Database& db, std::int64_t test_id, const audit::CatchTest& test);
void read_field_notes(SQLite::Database& db, std::int64_t test_id, audit::CatchTest& test);

}  // namespace evenfall::store
