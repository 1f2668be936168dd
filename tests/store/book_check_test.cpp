// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book_check.h"

#include "core/exchange/import.h"
#include "tests/support/scratch.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <catch2/catch.hpp>

// All CONSTRUCTED.
using namespace evenfall;
using namespace evenfall::store;
using tests::Scratch;

namespace {

struct Desk {
    Desk() : book(Book::create(scratch / "b.evenfall")) {}
    void put(const std::string& text) {
        exchange::ImportOptions options;
        options.at = "2026-01-01T00:00:00Z";
        const std::vector<std::filesystem::path> files{scratch.write("t.csv", text)};
        exchange::require_accepted(exchange::import_files(book, files, options));
    }
    bool finds(Severity severity, const std::string& part) const {
        for (const BookProblem& p : check_book(book)) {
            if (p.severity == severity && p.sentence.english().find(part) != std::string::npos) return true;
        }
        return false;
    }
    Scratch scratch;
    Book book;
};

}  // namespace

TEST_CASE("a sound book has no problems and faults are named", "[store][constructed]") {
    Desk desk;
    desk.put("site,name,latitude,elevation_m,weather\nS,Site,40,100,W\n");
    CHECK(desk.finds(Severity::gap, "names weather station W"));
    desk.put("station,date,tmax_c\nW,2024-07-01,30\nW,2024-07-02,31\n");
    desk.put("meter,site,unit,digits,size_in\nA,S,gal,,2\nB,S,gal,6,\n");
    CHECK(desk.finds(Severity::gap, "Meter A has no readings"));
    desk.put("meter,time,register\nA,2024-07-01T00:00Z,0\nA,2024-07-02T00:00Z,100\n"
             "B,2024-07-01T00:00Z,0\nB,2024-07-02T00:00Z,100\n");
    CHECK(check_book(desk.book).empty());

    desk.put("station,date,tmax_c\nW,2024-07-05,30\n");
    CHECK(desk.finds(Severity::gap, "lacks 2 days after 2024-07-02"));
    desk.put("meter,time,register\nA,2024-07-03T00:00Z,50\nB,2024-07-03T00:00Z,90\n");
    CHECK(desk.finds(Severity::mistake, "Meter A shows less"));
    CHECK(desk.finds(Severity::mistake, "Meter B ran backward"));
    desk.put("meter,time,register\nA,2024-07-04T00:00Z,900000\n");
    CHECK(desk.finds(Severity::mistake, "largest normal flow"));
    desk.put("meter,time,register\nA,2024-08-04T00:00Z,900001\n");
    CHECK(desk.finds(Severity::gap, "no reading for 31.0 days"));
    desk.put("area,site,size_ac,meter,share\nX,S,1,B,0.7\nY,S,1,B,0.4\n");
    CHECK(desk.finds(Severity::mistake, "add up to 1.1"));
}

TEST_CASE("damage is found before anything is read from it", "[store][constructed]") {
    Desk desk;
    desk.put("site,name,latitude,elevation_m\nS,Site,40,100\n");
    const auto file = desk.book.file();
    { const Book closed = std::move(desk.book); }
    {
        SQLite::Database db(file.string(), SQLite::OPEN_READWRITE);
        db.exec("PRAGMA foreign_keys = OFF; INSERT INTO meter (code, site, unit) VALUES ('M', 99, 'gal')");
    }
    desk.book = Book::open(file, Access::read_write);
    const auto problems = check_book(desk.book);
    REQUIRE(problems.size() == 1);
    CHECK(problems[0].severity == Severity::damage);
}
