// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book.h"

#include "core/store/database.h"
#include "schemas/schemas.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <fstream>
#include <sqlite3.h>
#include <string_view>
#include <unistd.h>
#include <utility>

namespace evenfall::store {
namespace {

constexpr std::int32_t application_id = 0x45564E46;  // "EVNF"
constexpr int lock_wait_ms = 5000;

struct Migration {
    int number;
    std::string_view sql;
};

/// Number and text of each file in schemas/book, in order.
std::vector<Migration> migrations() {
    std::vector<Migration> all;
    for (const std::string_view name : schemas::names("book/")) {
        const std::string_view digits = name.substr(std::string_view("book/").size(), 3);
        int number = 0;
        std::from_chars(digits.data(), digits.data() + digits.size(), number);
        all.push_back({number, schemas::text(name)});
    }
    return all;
}

void apply_migrations(SQLite::Database& db, int from) {
    int last = from;
    for (const Migration& m : migrations()) {
        if (m.number <= from) continue;
        db.exec(std::string(m.sql));
        last = m.number;
    }
    db.exec("PRAGMA user_version = " + std::to_string(last));
}

/// What a file from a stranger must not be able to do: run code of its own, reach other files,
/// or make us allocate without end.
void harden(SQLite::Database& db) {
    sqlite3* h = db.getHandle();
    const auto set = [h](int option, int value) { sqlite3_db_config(h, option, value, nullptr); };
    set(SQLITE_DBCONFIG_DEFENSIVE, 1);
    set(SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0);
    set(SQLITE_DBCONFIG_ENABLE_TRIGGER, 0);
    set(SQLITE_DBCONFIG_ENABLE_VIEW, 0);
    set(SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0);
    set(SQLITE_DBCONFIG_WRITABLE_SCHEMA, 0);
    set(SQLITE_DBCONFIG_DQS_DML, 0);
    set(SQLITE_DBCONFIG_DQS_DDL, 0);
    sqlite3_limit(h, SQLITE_LIMIT_ATTACHED, 0);
    sqlite3_limit(h, SQLITE_LIMIT_LENGTH, 64 << 20);
    sqlite3_limit(h, SQLITE_LIMIT_SQL_LENGTH, 100000);
    db.exec("PRAGMA cell_size_check = ON; PRAGMA foreign_keys = ON; PRAGMA synchronous = FULL;"
            "PRAGMA cache_size = -65536; PRAGMA temp_store = MEMORY;");
}

std::string schema_text(SQLite::Database& db) {
    std::string all;
    SQLite::Statement rows(db, "SELECT type, name, coalesce(sql, '') FROM sqlite_schema "
                               "WHERE name NOT LIKE 'sqlite_stat%' ORDER BY type, name");
    while (rows.executeStep()) {
        for (int i = 0; i < 3; ++i) all += rows.getColumn(i).getString() + "\n";
    }
    return all;
}

const std::string& expected_schema() {
    static const std::string text = [] {
        SQLite::Database memory(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        apply_migrations(memory, 0);
        return schema_text(memory);
    }();
    return text;
}

/// Application id and version stand at fixed places of the file's first hundred bytes.
/// @throws BookError for what is no SQLite file at all
std::pair<std::int32_t, int> identity_of(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::array<char, 100> head{};
    if (!in) throw BookError({phrase("store", "The book %1 could not be opened for reading."), file.string()});
    in.read(head.data(), head.size());
    if (in.gcount() != static_cast<std::streamsize>(head.size()) ||
        std::string_view(head.data(), 16) != std::string_view("SQLite format 3\0", 16)) {
        throw BookError({phrase("store", "The file %1 is not an Evenfall book."), file.string()});
    }
    const auto number_at = [&](std::size_t at) {
        std::uint32_t n = 0;
        for (std::size_t i = at; i < at + 4; ++i) n = (n << 8U) | static_cast<std::uint8_t>(head.at(i));
        return static_cast<std::int32_t>(n);
    };
    return {number_at(68), number_at(60)};
}

int newest_version() { return migrations().back().number; }

void refuse_foreign(const std::filesystem::path& file) {
    const auto [id, version] = identity_of(file);
    if (id != application_id) {
        throw BookError({phrase("store", "The file %1 is a database, but not an Evenfall book."), file.string()});
    }
    if (version > newest_version()) {
        throw BookError({phrase("store", "The book %1 was written by a newer Evenfall (book version %2; this program knows "
                                 "up to %3). Use that program, or a newer one."),
                         file.string(), version, newest_version()});
    }
}

std::unique_ptr<SQLite::Database> connect(const std::filesystem::path& file, Access access) {
    // One Book per thread is our rule, so SQLite need not lock at every value it hands out.
    const int one_thread = SQLite::OPEN_NOMUTEX;
    if (access == Access::read_write) {
        return std::make_unique<SQLite::Database>(file.string(), SQLite::OPEN_READWRITE | one_thread, lock_wait_ms);
    }
    // A book keeps a write-ahead log beside it. In a folder that cannot be written there can be
    // none, and no writer either, so the file may be taken as unchanging.
    std::error_code ignored;
    const auto folder = std::filesystem::absolute(file, ignored).parent_path();
    if (access == Access::read_only && ::access(folder.c_str(), W_OK) != 0) {
        std::string uri = "file:";
        for (const char c : file.string()) {
            if (c == '?' || c == '#' || c == '%') {
                static constexpr std::string_view hex = "0123456789ABCDEF";
                uri += '%';
                uri += hex[static_cast<std::uint8_t>(c) >> 4U];
                uri += hex[static_cast<std::uint8_t>(c) & 0x0FU];
            } else {
                uri += c;
            }
        }
        return std::make_unique<SQLite::Database>(
            uri + "?immutable=1", SQLite::OPEN_READONLY | SQLite::OPEN_URI | one_thread, lock_wait_ms);
    }
    return std::make_unique<SQLite::Database>(file.string(), SQLite::OPEN_READONLY | one_thread, lock_wait_ms);
}

}  // namespace

Book::Book(std::filesystem::path file, Access access, std::unique_ptr<SQLite::Database> database)
    : file_(std::move(file)), access_(access), database_(std::move(database)) {}
Book::Book(Book&&) noexcept = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;

Book Book::create(const std::filesystem::path& file) {
    std::error_code ignored;
    if (std::filesystem::exists(std::filesystem::symlink_status(file, ignored))) {
        throw BookError({phrase("store", "The file %1 exists already; a new book needs a new name."), file.string()});
    }
    // Made under another name and moved into place, so that a power cut leaves no half-made book.
    std::filesystem::path draft = file;
    draft += ".new-" + std::to_string(::getpid());
    try {
        {
            SQLite::Database db(draft.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
            db.exec("PRAGMA application_id = " + std::to_string(application_id));
            SQLite::Transaction transaction(db);
            apply_migrations(db, 0);
            transaction.commit();
            db.exec("PRAGMA journal_mode = WAL");
        }
        std::filesystem::rename(draft, file);
    } catch (const std::exception& e) {
        std::filesystem::remove(draft, ignored);
        throw BookError({phrase("store", "The book %1 could not be made: %2."), file.string(), sqlite_words(e.what())});
    }
    return open(file, Access::read_write);
}

Book Book::open(const std::filesystem::path& file, Access access) {
    std::error_code ignored;
    if (!std::filesystem::is_regular_file(file, ignored)) {
        throw BookError({phrase("store", "There is no book %1."), file.string()});
    }
    refuse_foreign(file);
    try {
        Book book(file, access, connect(file, access));
        SQLite::Database& db = book.database();
        harden(db);
        const int found = book.version();
        if (found < newest_version()) {
            if (access == Access::read_only) {
                throw BookError({phrase("store", "The book %1 is of an earlier version; open it once for writing to bring it up to date."),
                                 file.string()});
            }
            Transaction transaction(book);
            apply_migrations(db, found);
            transaction.commit();
        }
        if (schema_text(db) != expected_schema()) {
            throw BookError({phrase("store", "The book %1 does not have the tables an Evenfall book has; it was changed by another program."),
                             file.string()});
        }
        return book;
    } catch (const SQLite::Exception& e) {
        throw BookError({phrase("store", "The book %1 could not be opened: %2."), file.string(), sqlite_words(e.what())});
    }
}

int Book::version() const { return database_->execAndGet("PRAGMA user_version").getInt(); }

std::vector<Sentence> Book::integrity_problems() const {
    return in_book(*this, [](SQLite::Database& db) {
        std::vector<Sentence> problems;
        SQLite::Statement integrity(db, "PRAGMA integrity_check(100)");
        while (integrity.executeStep()) {
            std::string line = integrity.getColumn(0).getString();
            if (line != "ok") problems.emplace_back(std::move(line));
        }
        SQLite::Statement keys(db, "PRAGMA foreign_key_check");
        while (keys.executeStep()) {
            problems.push_back({phrase("store", "a row of %1 points at a missing row of %2"), keys.getColumn(0).getString(),
                                keys.getColumn(2).getString()});
        }
        return problems;
    });
}

Transaction::Transaction(Book& book) : book_(book) {
    in_book(book, [](SQLite::Database& db) { db.exec("BEGIN IMMEDIATE"); });
}

Transaction::~Transaction() {
    if (!open_) return;
    try {
        book_.database().exec("ROLLBACK");
    } catch (const SQLite::Exception&) {
        // SQLite has rolled back by itself, as it does when the disk is full.
    }
}

void Transaction::commit() {
    in_book(book_, [](SQLite::Database& db) { db.exec("COMMIT"); });
    open_ = false;
}

std::optional<std::int64_t> id_of(SQLite::Database& db, const char* table, const std::string& code) {
    SQLite::Statement find(db, std::string("SELECT id FROM ") + table + " WHERE code = ?");
    find.bind(1, code);
    if (!find.executeStep()) return std::nullopt;
    return find.getColumn(0).getInt64();
}

/// A table of the book, as a word for the user.
Sentence table_words(std::string_view table) {
    static constexpr std::array known{phrase("store", "application"), phrase("store", "area"),
                                      phrase("store", "catch_test"),  phrase("store", "meter"),
                                      phrase("store", "site"),        phrase("store", "weather_station")};
    const auto found = std::find_if(known.begin(), known.end(), [&](const Phrase& p) { return p.english() == table; });
    return found == known.end() ? Sentence(table) : Sentence(*found);
}

std::int64_t required_id(const Book& book, const char* table, const std::string& code) {
    const auto id = id_of(book.database(), table, code);
    if (!id) {
        throw BookError({phrase("store", "The book %1 has no %2 \"%3\"."), book.file().string(), table_words(table), code});
    }
    return *id;
}

std::optional<std::int64_t> optional_id(const Book& book, const char* table, const std::string& code) {
    if (code.empty()) return std::nullopt;
    return required_id(book, table, code);
}

}  // namespace evenfall::store
