// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/database.h"

#include <algorithm>
#include <array>

namespace evenfall::store {
namespace {

// Result codes that a user may meet, as sqlite3_errstr() says them; source: sqlite.org/rescode.html.
constexpr std::array known{phrase("store", "attempt to write a readonly database"),
                           phrase("store", "database disk image is malformed"),
                           phrase("store", "database is locked"),
                           phrase("store", "database or disk is full"),
                           phrase("store", "database table is locked"),
                           phrase("store", "disk I/O error"),
                           phrase("store", "file is not a database"),
                           phrase("store", "out of memory"),
                           phrase("store", "unable to open database file")};

}  // namespace

Sentence sqlite_words(std::string_view message) {
    const auto found = std::find_if(known.begin(), known.end(), [&](const Phrase& p) { return p.english() == message; });
    return found == known.end() ? Sentence(message) : Sentence(*found);
}

void throw_unusable(const Book& book, std::string_view message) {
    throw BookError({phrase("store", "The book %1 could not be used: %2."), book.file().string(), sqlite_words(message)});
}

std::string query(std::string_view select, std::string_view rest) {
    std::string sql(select);
    sql += rest;
    return sql;
}

}  // namespace evenfall::store
