// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"
#include "core/units/measure.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

/// For the files of core/store only: binding and reading of values that may be absent.
namespace evenfall::store {

/// What SQLite says; its usual messages in other languages too.
Sentence sqlite_words(std::string_view message);
/// @throws BookError that names the book
[[noreturn]] void throw_unusable(const Book& book, std::string_view message);

/// Runs `work` and turns what SQLite throws into a BookError that names the book.
template <class Work>
auto in_book(const Book& book, Work&& work) {
    try {
        return work(book.database());
    } catch (const SQLite::Exception& e) {
        throw_unusable(book, e.what());
    }
}

inline void bind_text(SQLite::Statement& s, int at, const std::string& text) {
    if (text.empty()) s.bind(at);  // NULL: not recorded
    else s.bind(at, text);
}
inline void bind_number(SQLite::Statement& s, int at, std::optional<double> value) {
    if (value) s.bind(at, *value);
    else s.bind(at);
}
inline void bind_id(SQLite::Statement& s, int at, std::optional<std::int64_t> id) {
    if (id) s.bind(at, *id);
    else s.bind(at);
}
inline std::optional<double> number_in(SQLite::Column column) {
    if (column.isNull()) return std::nullopt;
    return column.getDouble();
}
inline std::string text_in(SQLite::Column column) {
    return column.isNull() ? std::string() : column.getString();
}

/// Value and unit into two neighbouring columns, from `at` on.
template <class Q>
void bind_typed(SQLite::Statement& s, int at, const std::optional<units::Typed<Q>>& value) {
    if (value) {
        s.bind(at, value->value);
        s.bind(at + 1, std::string(value->unit.name));
    } else {
        s.bind(at);
        s.bind(at + 1);
    }
}
/// The same, read from columns `at` and `at` + 1.
template <class Q>
std::optional<units::Typed<Q>> typed_in(SQLite::Statement& row, int at) {
    const auto value = number_in(row.getColumn(at));
    if (!value) return std::nullopt;
    return units::Typed<Q>{*value, units::unit_named<Q>(text_in(row.getColumn(at + 1)))};
}

/// "SELECT ..." and what follows it.
std::string query(std::string_view select, std::string_view rest);

/// The rows of a query as records. `key` is its one parameter; empty: it has none.
template <class Read>
auto records(SQLite::Database& db, const std::string& sql, const std::string& key, Read read) {
    std::vector<std::invoke_result_t<Read&, SQLite::Statement&>> all;
    SQLite::Statement rows(db, sql);
    if (!key.empty()) rows.bind(1, key);
    while (rows.executeStep()) all.push_back(read(rows));
    return all;
}
/// The first row of a query for `key`, or nothing.
template <class Read>
auto record(SQLite::Database& db, const std::string& sql, const std::string& key, Read read) {
    std::optional<std::invoke_result_t<Read&, SQLite::Statement&>> found;
    SQLite::Statement rows(db, sql);
    rows.bind(1, key);
    if (rows.executeStep()) found = read(rows);
    return found;
}

/// The id of the record with that code, or nothing. `table` is one of our own names.
std::optional<std::int64_t> id_of(SQLite::Database& db, const char* table, const std::string& code);

/// The same, when the record must be there. @throws BookError naming it
std::int64_t required_id(const Book& book, const char* table, const std::string& code);
/// Nothing for an empty code, else as required_id.
std::optional<std::int64_t> optional_id(const Book& book, const char* table, const std::string& code);

}  // namespace evenfall::store
