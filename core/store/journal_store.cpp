// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/journal_store.h"

#include "core/store/database.h"

namespace evenfall::store {

void add_journal_entry(Book& book, const JournalEntry& entry) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO journal (at, who, what, record, detail) VALUES (?,?,?,?,?)");
        add.bind(1, entry.at);
        add.bind(2, entry.who);
        add.bind(3, entry.what);
        add.bind(4, entry.record);
        bind_text(add, 5, entry.detail);
        add.exec();
    });
}

namespace {

JournalEntry entry_in(SQLite::Statement& rows) {
    return {text_in(rows.getColumn(0)), text_in(rows.getColumn(1)), text_in(rows.getColumn(2)),
            text_in(rows.getColumn(3)), text_in(rows.getColumn(4))};
}

}  // namespace

std::vector<JournalEntry> journal(const Book& book) {
    return in_book(book, [](SQLite::Database& db) {
        return records(db, "SELECT at, who, what, record, detail FROM journal ORDER BY id", "", entry_in);
    });
}

std::vector<JournalEntry> journal_of(const Book& book, const std::string& record) {
    return in_book(book, [&](SQLite::Database& db) {
        return records(db, "SELECT at, who, what, record, detail FROM journal"
                           " WHERE record = ? AND detail IS NOT NULL ORDER BY id", record, entry_in);
    });
}

std::int64_t add_import(Book& book, const ImportRecord& record) {
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO import (file, kind, sha256, at, added) VALUES (?,?,?,?,?)");
        add.bind(1, record.file);
        add.bind(2, record.kind);
        add.bind(3, record.sha256);
        add.bind(4, record.at);
        add.bind(5, record.added);
        add.exec();
        return db.getLastInsertRowid();
    });
}

void set_import_digest(Book& book, std::int64_t import, const std::string& sha256) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement set(db, "UPDATE import SET sha256 = ? WHERE id = ?");
        set.bind(1, sha256);
        set.bind(2, import);
        set.exec();
    });
}

void set_import_added(Book& book, std::int64_t import, std::int64_t added) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement set(db, "UPDATE import SET added = ? WHERE id = ?");
        set.bind(1, added);
        set.bind(2, import);
        set.exec();
    });
}

std::vector<ImportRecord> imports(const Book& book) {
    return in_book(book, [](SQLite::Database& db) {
        std::vector<ImportRecord> all;
        SQLite::Statement rows(db, "SELECT file, kind, sha256, at, added FROM import ORDER BY id");
        while (rows.executeStep()) {
            all.push_back({text_in(rows.getColumn(0)), text_in(rows.getColumn(1)),
                           text_in(rows.getColumn(2)), text_in(rows.getColumn(3)),
                           rows.getColumn(4).getInt64()});
        }
        return all;
    });
}

}  // namespace evenfall::store
