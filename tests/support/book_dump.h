// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <set>
#include <sqlite3.h>
#include <stdexcept>
#include <string>
#include <vector>

/// The records of a book as text, to compare two books. It reads the file itself, by what the file
/// says of its tables, so a table that is added later is in it without being named here. Ids are
/// replaced by the codes they stand for: two books may number the same records differently.
namespace evenfall::tests {

using BookDump = std::map<std::string, std::vector<std::string>>;

class BookDumper {
  public:
    explicit BookDumper(const std::filesystem::path& file) {
        sqlite3* raw = nullptr;
        if (sqlite3_open_v2(file.c_str(), &raw, SQLITE_OPEN_READONLY, nullptr) != SQLITE_OK) {
            throw std::runtime_error("cannot open " + file.string());
        }
        db_.reset(raw);
    }

    /// @param left_out  tables that are not compared
    BookDump dump(const std::set<std::string>& left_out) {
        BookDump all;
        for (const auto& row : rows("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")) {
            if (row[0].rfind("sqlite_", 0) == 0 || left_out.contains(row[0])) continue;
            all[row[0]] = table(row[0]);
        }
        return all;
    }

    /// "table.column" of every column that no row fills in: what a comparison of two books cannot see.
    std::vector<std::string> empty_columns(const std::set<std::string>& left_out) {
        std::vector<std::string> all;
        for (const auto& row : rows("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")) {
            if (row[0].rfind("sqlite_", 0) == 0 || left_out.contains(row[0])) continue;
            for (const std::string& c : columns_of(row[0])) {
                if (rows("SELECT 1 FROM \"" + row[0] + "\" WHERE \"" + c + "\" IS NOT NULL LIMIT 1").empty()) {
                    all.push_back(row[0] + "." + c);
                }
            }
        }
        return all;
    }

  private:
    std::vector<std::vector<std::string>> rows(const std::string& sql) {
        sqlite3_stmt* raw = nullptr;
        if (sqlite3_prepare_v2(db_.get(), sql.c_str(), -1, &raw, nullptr) != SQLITE_OK) {
            throw std::runtime_error(sql + ": " + sqlite3_errmsg(db_.get()));
        }
        const std::unique_ptr<sqlite3_stmt, decltype(&sqlite3_finalize)> statement(raw, &sqlite3_finalize);
        std::vector<std::vector<std::string>> all;
        while (sqlite3_step(raw) == SQLITE_ROW) {
            auto& row = all.emplace_back();
            for (int i = 0; i < sqlite3_column_count(raw); ++i) {
                const auto* text = sqlite3_column_text(raw, i);
                row.emplace_back(text == nullptr ? "" : reinterpret_cast<const char*>(text));
            }
        }
        return all;
    }

    std::vector<std::string> columns_of(const std::string& table) {
        std::vector<std::string> names;
        for (const auto& row : rows("PRAGMA table_info(\"" + table + "\")")) {
            if (row[1] != "id" && row[1] != "import") names.push_back(row[1]);
        }
        return names;
    }

    /// What stands for a row of another table: its code, or else all it says.
    std::string named(const std::string& table, const std::string& alias) {
        const auto columns = columns_of(table);
        for (const std::string& c : columns) {
            if (c == "code") return alias + ".\"code\"";
        }
        std::string all;
        for (const std::string& c : columns) all += (all.empty() ? "" : " || '/' || ") + alias + ".\"" + c + "\"";
        return all;
    }

    std::vector<std::string> table(const std::string& name) {
        std::map<std::string, std::pair<std::string, std::string>> keys;  // column: table and its column
        const auto list = rows("PRAGMA foreign_key_list(\"" + name + "\")");
        std::map<std::string, int> width;
        for (const auto& row : list) ++width[row[0]];
        for (const auto& row : list) {
            // A key of several columns repeats what a table above it says; "plan" alone is not its id there.
            if (width[row[0]] == 1) keys[row[3]] = {row[2], row[4].empty() ? "id" : row[4]};
        }
        if (!keys.contains("plan") && name == "design_nozzle_row") keys["plan"] = {"design_plan", "id"};
        std::string text;
        for (const std::string& c : columns_of(name)) {
            if (!text.empty()) text += " || ' | ' || ";
            const auto key = keys.find(c);
            if (key == keys.end()) {
                text += "quote(t.\"" + c + "\")";
            } else {
                text += "quote((SELECT " + named(key->second.first, "o") + " FROM \"" + key->second.first +
                        "\" o WHERE o.\"" + key->second.second + "\" = t.\"" + c + "\"))";
            }
        }
        std::vector<std::string> out;
        for (const auto& row : rows("SELECT " + text + " AS line FROM \"" + name + "\" t ORDER BY line")) out.push_back(row[0]);
        return out;
    }

    struct Closer {
        void operator()(sqlite3* db) const { sqlite3_close(db); }
    };
    std::unique_ptr<sqlite3, Closer> db_;
};

/// What an export leaves in the book, and the units of weather, which stand in its days.
inline const std::set<std::string>& tables_left_out() {
    static const std::set<std::string> tables{"import", "journal", "filing", "filing_fingerprint", "application",
                                              "application_filing", "application_status", "weather_units"};
    return tables;
}

inline BookDump user_records(const std::filesystem::path& book) { return BookDumper(book).dump(tables_left_out()); }

}  // namespace evenfall::tests
