// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book.h"

#include "core/store/database.h"
#include "tests/support/scratch.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <catch2/catch.hpp>
#include <sqlite3.h>

using namespace evenfall;
using namespace evenfall::store;
using evenfall::tests::bytes_of;
using evenfall::tests::Scratch;

namespace {
/// Opens the file with the bare library, as another program would.
void meddle(const std::filesystem::path& file, const std::string& sql) {
    SQLite::Database db(file.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    db.exec(sql);
}
}  // namespace

TEST_CASE("a new book is sound and opens again", "[store]") {
    const Scratch scratch;
    const auto file = scratch / "farm.evenfall";
    { CHECK(Book::create(file).integrity_problems().empty()); }
    CHECK(Book::open(file, Access::read_only).version() == Book::open(file, Access::read_write).version());
    CHECK_THROWS_AS(Book::create(file), BookError);
    // Nothing but the book is left behind.
    CHECK(std::distance(std::filesystem::directory_iterator(scratch.folder()), {}) == 1);
}

TEST_CASE("a foreign, newer, cut or missing file is refused with a sentence", "[store]") {
    const Scratch scratch;
    CHECK_THROWS_WITH(Book::open(scratch / "none.evenfall", Access::read_only),
                      Catch::StartsWith("There is no book"));
    const auto text = scratch.write("text.evenfall", "site,name\n");
    CHECK_THROWS_WITH(Book::open(text, Access::read_only), Catch::EndsWith("is not an Evenfall book."));
    meddle(scratch / "foreign.evenfall", "CREATE TABLE a (b)");
    CHECK_THROWS_WITH(Book::open(scratch / "foreign.evenfall", Access::read_only),
                      Catch::Contains("a database, but not an Evenfall book"));

    const auto file = scratch / "newer.evenfall";
    { Book::create(file); }
    meddle(file, "PRAGMA user_version = 999");
    const auto before = bytes_of(file);
    CHECK_THROWS_WITH(Book::open(file, Access::read_write), Catch::Contains("newer Evenfall"));
    CHECK(bytes_of(file) == before);

    const auto cut = scratch / "cut.evenfall";
    { Book::create(cut); }
    std::filesystem::resize_file(cut, 5000);
    CHECK_THROWS_AS(Book::open(cut, Access::read_write), BookError);
}

TEST_CASE("a book with a planted trigger, view or table is refused", "[store]") {
    const Scratch scratch;
    const std::string plant =
        GENERATE("CREATE TRIGGER t AFTER INSERT ON site BEGIN DELETE FROM site; END",
                 "CREATE VIEW v AS SELECT 1", "CREATE TABLE extra (a)", "DROP TABLE catch_can");
    const auto file = scratch / "planted.evenfall";
    { Book::create(file); }
    meddle(file, plant);
    CHECK_THROWS_WITH(Book::open(file, Access::read_write), Catch::Contains("changed by another program"));
}

TEST_CASE("a transaction keeps all or nothing, and a second writer waits its turn", "[store]") {
    const Scratch scratch;
    const auto file = scratch / "t.evenfall";
    Book book = Book::create(file);
    const auto count = [&] { return book.database().execAndGet("SELECT count(*) FROM site").getInt(); };
    const char* insert = "INSERT INTO site (code, name, latitude) VALUES ('A', 'Alpha', 40)";
    {
        Transaction t(book);
        book.database().exec(insert);
    }
    CHECK(count() == 0);
    {
        Transaction t(book);
        book.database().exec(insert);
        t.commit();
    }
    CHECK(count() == 1);
    {
        Transaction t(book);
        Book other = Book::open(file, Access::read_write);
        other.database().setBusyTimeout(1);
        CHECK_THROWS_AS(Transaction(other), BookError);
    }
}

TEST_CASE("a book in a folder that cannot be written can be read", "[store]") {
    if (::geteuid() == 0) WARN("run as root: every folder can be written, the ordinary path is taken");
    const Scratch scratch;
    const auto file = scratch / "odd name ?#%.evenfall";
    { Book::create(file); }
    std::filesystem::permissions(scratch.folder(), std::filesystem::perms(0500));
    CHECK_NOTHROW(Book::open(file, Access::read_only));
    std::filesystem::permissions(scratch.folder(), std::filesystem::perms(0700));
}

// The library itself says how it words its result codes.
TEST_CASE("what SQLite says is known by its words, and unknown words stay", "[store]") {
    for (const int code : {SQLITE_READONLY, SQLITE_CORRUPT, SQLITE_BUSY, SQLITE_FULL, SQLITE_LOCKED, SQLITE_IOERR,
                           SQLITE_NOTADB, SQLITE_NOMEM, SQLITE_CANTOPEN}) {
        const Sentence words = sqlite_words(sqlite3_errstr(code));
        CHECK(words == sqlite3_errstr(code));
        CHECK(words.form().form != nullptr);
    }
    CHECK(sqlite_words("no such table: x") == "no such table: x");
}
