// SPDX-License-Identifier: GPL-3.0-or-later
// The table of conflicts on its own. All CONSTRUCTED.
#include "core/exchange/conflict_table.h"

#include "core/input_error.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

#include <fstream>

using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using store::ConflictRow;
using store::ConflictRows;
using store::Stands;
using tests::Scratch;

namespace {

constexpr const char* head = "record,in_book,in_file,choice\n";

std::string refusal(const Scratch& scratch, const std::string& text) {
    try {
        read_conflicts(scratch.write("c.csv", text));
    } catch (const InputError& e) {
        return e.what();
    }
    return "accepted";
}

bool same(const ConflictRow& a, const ConflictRow& b) {
    return a.file == b.file && a.row == b.row && a.column == b.column && a.record == b.record &&
           a.in_book == b.in_book && a.in_file == b.in_file && a.choice == b.choice;
}

}  // namespace

TEST_CASE("a table of conflicts comes back as it was written", "[exchange][constructed]") {
    const Scratch scratch;
    const std::vector<ConflictRow> rows{
        {"a b.csv", 2, "register", "reading of M-1 at 2024-07-01T13:00:00Z", "10", "11", Stands::undecided},
        {"a b.csv", 9, "", "finding tilted of test T1 at row \"2\", north", "=1+1", "-5", Stands::in_file},
        {"", 0, "", "site S", "name Käfer, Wiese", "'+quoted'\nname", Stands::in_book},
        {"", 0, "", "site S", "name Käfer, Wiese", "@other", Stands::in_file}};
    ConflictRows list;
    for (const ConflictRow& row : rows) CHECK_FALSE(list.add(row).has_value());
    CHECK(list.count() == 4);
    const auto file = scratch / "c.csv";
    write_conflicts(file, list);
    CHECK_THAT(tests::bytes_of(file), Contains("file,row,column,record,in_book,in_file,choice\n") &&
                                          Contains("'=1+1,-5,file\n") && Contains("10,11,\n"));
    const ConflictRows back = read_conflicts(file);
    REQUIRE(back.count() == 4);
    const auto all = back.page(0, 10);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        CAPTURE(i);
        CHECK(same(all[i], rows[i]));
    }
    CHECK(same(back.page(2, 1).at(0), rows[2]));
    CHECK(back.page(4, 1).empty());
    CHECK(back.contested() == std::vector<std::pair<std::int64_t, std::int64_t>>{{2, 2}, {3, 2}});
    SECTION("with other choices") {
        write_conflicts(file, back, [](std::int64_t at) { return at == 0 ? Stands::in_file : Stands::in_book; });
        const auto again = read_conflicts(file).page(0, 10);
        CHECK(again[0].choice == Stands::in_file);
        CHECK(again[3].choice == Stands::in_book);
    }
    SECTION("where it cannot be written, an earlier one stays") {
        CHECK_THROWS_AS(write_conflicts(scratch / "no folder" / "c.csv", back), InputError);
        CHECK(read_conflicts(file).count() == 4);
    }
}

TEST_CASE("a table as people and spreadsheets fill it in", "[exchange][constructed]") {
    const Scratch scratch;
    const auto rows = read_conflicts(scratch.write(
        "c.csv", "\xEF\xBB\xBF# mine\r\nchoice;record;in_book;in_file\r\nFile ;site A;1;2\r\nBOOK;site B;1;2\r\n;site C;1;2\r\n;;;\r\n"));
    REQUIRE(rows.count() == 3);
    CHECK(rows.page(0, 1)[0].choice == Stands::in_file);
    CHECK(rows.page(1, 1)[0].choice == Stands::in_book);
    CHECK(rows.page(2, 1)[0].choice == Stands::undecided);
    CHECK(read_conflicts(scratch.write("e.csv", head)).count() == 0);
    CHECK(read_conflicts(std::filesystem::path(EVENFALL_SOURCE_DIR) / "schemas/tables/conflicts.csv").count() == 3);
}

TEST_CASE("a table with mistakes is refused with row and column", "[exchange][constructed]") {
    const Scratch scratch;
    const std::string rows = head;
    CHECK_THAT(refusal(scratch, rows + "site A,1,2,both\n"),
               Contains("c.csv, row 2, column choice: found \"both\", expected book, file, or nothing"));
    CHECK_THAT(refusal(scratch, rows + "site A,1,2,file\nsite B,1,2,\nsite A,1,2,\n"),
               Contains("row 4, column in_file: found \"2\"") && Contains("row 2"));
    CHECK_THAT(refusal(scratch, rows + "site A,1,2,file\nsite A,1,3,book\nsite A,1,4,file\n"),
               Contains("row 4, column choice: found \"file\"") && Contains("one value of the site A") &&
                   Contains("row 2 says file"));
    CHECK_THAT(refusal(scratch, rows + "site A,1,2,file\nsite A,1,3,file\nsite A,1,3,file\n"),
               Contains("row 3, column choice") && Contains("row 4, column choice"));
    CHECK_THAT(refusal(scratch, rows + ",1,2,file\n"), Contains("row 2, column record"));
    CHECK_THAT(refusal(scratch, rows + "site A,,2,file\n"), Contains("row 2, column in_book"));
    CHECK_THAT(refusal(scratch, rows + "site A,1,,file\n"), Contains("row 2, column in_file"));
    CHECK_THAT(refusal(scratch, "record,in_book,in_file\nsite A,1,2\n"), Contains("choice"));
    CHECK_THAT(refusal(scratch, "record,in_book,in_file,chioce\nsite A,1,2,book\n"), Contains("column chioce"));
    CHECK_THAT(refusal(scratch, "row,record,in_book,in_file,choice\nfirst,site A,1,2,book\n"), Contains("column row"));
    CHECK_THAT(refusal(scratch, rows + "site A,1,2\n"), Contains("row 2"));
    CHECK_THAT(refusal(scratch, rows + "site \xC3\x28,1,2,file\n"), Contains("row 2") && Contains("UTF-8"));
    CHECK_THAT(refusal(scratch, rows + "site A,1,\"2,file\n"), Contains("row 2"));
    CHECK_THAT(refusal(scratch, rows + std::string("site A,1,2\0,file\n", 17)), Contains("row 2"));
    CHECK_THAT(refusal(scratch, ""), Contains("an empty file"));
    CHECK_THROWS_AS(read_conflicts(scratch / "none.csv"), InputError);
}

TEST_CASE("a table of a million rows", "[exchange][constructed]") {
    const Scratch scratch;
    const auto file = scratch / "big.csv";
    {
        std::ofstream out(file, std::ios::binary);
        out << head;
        for (int i = 0; i < 1'000'000; ++i) {
            out << "reading of M-" << i % 7 << " at " << i << ',' << i << ',' << i + 1 << (i % 2 == 0 ? ",book\n" : ",file\n");
        }
    }
    SECTION("is read") {
        const auto rows = read_conflicts(file);
        CHECK(rows.count() == 1'000'000);
        CHECK(rows.page(999'999, 5).at(0).in_file == "1000000");
        CHECK(rows.contested().empty());
    }
    SECTION("of which each is a mistake, says the first of them") {
        std::string text = tests::bytes_of(file);
        for (std::size_t at = text.find(",book"); at != std::string::npos; at = text.find(",book", at)) {
            text.replace(at, 5, ",boak");
        }
        const std::string message = refusal(scratch, text);
        CHECK_THAT(message, Contains("row 2, column choice: found \"boak\"") && Contains("and 180 more"));
    }
}
