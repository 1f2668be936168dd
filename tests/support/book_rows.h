// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <SQLiteCpp/SQLiteCpp.h>

#include <filesystem>
#include <string>
#include <vector>

namespace evenfall::tests {

/// Every row of a book as text, table by table in the order of their keys. Left out is what tells of
/// the way in and not of the records: imports, the journal, and which import a row came with.
inline std::string book_rows(const std::filesystem::path& file) {
    const SQLite::Database db(file.string(), SQLite::OPEN_READONLY);
    std::vector<std::string> tables;
    SQLite::Statement names(db, "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
                                " AND name NOT IN ('import', 'journal') ORDER BY name");
    while (names.executeStep()) tables.push_back(names.getColumn(0).getString());
    std::string all;
    for (const std::string& table : tables) {
        std::string columns;
        SQLite::Statement info(db, "SELECT name FROM pragma_table_info(?) WHERE name <> 'import'");
        info.bind(1, table);
        while (info.executeStep()) columns += (columns.empty() ? "quote(" : " || ', ' || quote(") + info.getColumn(0).getString() + ")";
        SQLite::Statement rows(db, "SELECT " + columns + " AS line FROM " + table + " ORDER BY line");
        while (rows.executeStep()) all += table + ": " + rows.getColumn(0).getString() + "\n";
    }
    return all;
}

}  // namespace evenfall::tests
