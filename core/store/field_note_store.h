// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/store/book.h"

#include <cstdint>

namespace SQLite {
class Database;
}

/// Pressures and findings of a catch test. For catch_test_store.cpp: they are added and read with
/// their test. Tests: tests/store/field_note_store_test.cpp
namespace evenfall::store {

void add_field_notes(SQLite::Database& db, std::int64_t test_id, const audit::CatchTest& test);
void read_field_notes(SQLite::Database& db, std::int64_t test_id, audit::CatchTest& test);

}  // namespace evenfall::store
