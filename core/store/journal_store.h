// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"

#include <optional>
#include <string>
#include <vector>

/// Who changed what and when, and which files came in. Times are given by the caller: core asks
/// no clock. Tests: tests/store/records_test.cpp
namespace evenfall::store {

struct JournalEntry {
    std::string at;      ///< UTC, ISO 8601
    std::string who;
    std::string what;    ///< a sentence for a person
    std::string record;  ///< kind and code, such as "meter M-3"
    std::string detail;  ///< JSON with old and new values; empty when there are none
};

void add_journal_entry(Book& book, const JournalEntry& entry);
/// In the order they were made.
std::vector<JournalEntry> journal(const Book& book);
/// The entries about one record that have details, in the order they were made.
std::vector<JournalEntry> journal_of(const Book& book, const std::string& record);

/// A file that was imported.
struct ImportRecord {
    std::string file;    ///< without its folder
    std::string kind;
    std::string sha256;  ///< of its bytes, hexadecimal
    std::string at;
    std::int64_t added = 0;
};

std::int64_t add_import(Book& book, const ImportRecord& record);
void set_import_digest(Book& book, std::int64_t import, const std::string& sha256);
void set_import_added(Book& book, std::int64_t import, std::int64_t added);
std::vector<ImportRecord> imports(const Book& book);

}  // namespace evenfall::store
