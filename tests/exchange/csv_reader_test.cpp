// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv_reader.h"

#include "core/exchange/system_words.h"
#include "core/exchange/utf8.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

#include <cerrno>
#include <cstring>
#include <string>
#include <vector>

#include <sys/resource.h>

using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using tests::Scratch;
using Rows = std::vector<std::vector<std::string>>;

namespace {

Rows rows_of(const std::string& text, std::optional<char> delimiter = std::nullopt) {
    const Scratch folder;
    CsvReader reader(folder.write("t.csv", text), delimiter);
    Rows rows{reader.header()};
    while (reader.next()) {
        if (reader.row_issue()) throw InputError(*reader.row_issue());
        rows.emplace_back(reader.cells().begin(), reader.cells().end());
    }
    CHECK_FALSE(reader.next());
    return rows;
}

std::string refusal(const std::string& text) {
    try {
        rows_of(text);
    } catch (const InputError& e) {
        return e.issues().front().place.column + "|" + e.what();
    }
    return "accepted";
}

}  // namespace

// PUBLISHED. RFC 4180 (2005), section 2, the examples of rules 1 to 7.
TEST_CASE("the examples of RFC 4180", "[exchange][published]") {
    const Rows plain{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}};
    CHECK(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n") == plain);  // rule 1
    CHECK(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx") == plain);      // rule 2
    CHECK(rows_of("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx") == plain);  // rule 5
    CHECK(rows_of("a,b,c\r\n\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx") ==
          Rows{{"a", "b", "c"}, {"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}});  // rule 6
    CHECK(rows_of("a,b,c\r\n\"aaa\",\"b\"\"bb\",\"ccc\"\r\n") ==
          Rows{{"a", "b", "c"}, {"aaa", "b\"bb", "ccc"}});  // rule 7
    CHECK(rows_of("a,b,c\naaa, bb ,ccc\n")[1][1] == " bb ");  // rule 4: spaces are part of a cell
    CHECK_THAT(refusal("a,b\r\nx\"y,z\r\n"), Contains("quotes around a whole cell"));  // rule 5
    CHECK_THAT(refusal("a,b\r\n\"x\"y,z\r\n"), Contains("after a closing quote"));
}

TEST_CASE("delimiters, marks, comments and empty lines", "[exchange]") {
    CHECK(rows_of("a;b\n1,5;2\n") == Rows{{"a", "b"}, {"1,5", "2"}});
    CHECK(rows_of("a\tb\n1\t2\n") == Rows{{"a", "b"}, {"1", "2"}});
    CHECK(rows_of("\"a,x\";b\n1;2\n") == Rows{{"a,x", "b"}, {"1", "2"}});
    CHECK(rows_of("a|b,c\n1|2,3\n", '|') == Rows{{"a", "b,c"}, {"1", "2,3"}});
    CHECK(rows_of("\xEF\xBB\xBF# made by hand\n\n#, also\r\n a , b \n\n1,2\n,\n\n") ==
          Rows{{"a", "b"}, {"1", "2"}});
    CHECK(rows_of("a\n#1\n") == Rows{{"a"}, {"#1"}});  // after the header it is a value
    CHECK(rows_of("a,b\n\"\",\"#\"\"\nx\"\n3,4") == Rows{{"a", "b"}, {"", "#\"\nx"}, {"3", "4"}});
}

TEST_CASE("row numbers are lines of the file", "[exchange]") {
    const Scratch folder;
    CsvReader reader(folder.write("t.csv", "# note\na,b\n\n\"x\ny\",2\r\n3,4\n5\n"));
    REQUIRE(reader.next());
    CHECK(reader.row() == 4);
    REQUIRE(reader.next());
    CHECK(reader.row() == 6);
    REQUIRE(reader.next());
    REQUIRE(reader.row_issue());
    CHECK(reader.row_issue()->text().find("row 7: found \"1 cells\", expected 2 cells") !=
          std::string::npos);
    CHECK_FALSE(reader.next());
    CHECK(reader.notes().empty());
}

TEST_CASE("files that are cut short", "[exchange]") {
    CHECK_THAT(refusal("a,b,c\n1,2,3\n4,5"), Contains("row 3") && Contains("cut short"));
    CHECK_THAT(refusal("a,b\n1,\"never closed\n2,3\n"), Contains("row 2") && Contains("cut short"));
    CHECK_THAT(refusal("a,\"b\n"), Contains("closed quotes"));
    const Scratch folder;
    CsvReader whole(folder.write("t.csv", "a,b\n1,20"));
    while (whole.next()) {}
    REQUIRE(whole.notes().size() == 1);
    CHECK_THAT(whole.notes()[0].english(), Contains("no line end"));
}

TEST_CASE("files that are no table", "[exchange]") {
    CHECK_THAT(refusal(""), Contains("empty file"));
    CHECK_THAT(refusal("\xEF\xBB\xBF"), Contains("empty file"));
    CHECK_THAT(refusal("# only a comment\n"), Contains("empty file"));
    CHECK_THAT(refusal("# only a comment"), Contains("empty file"));
    CHECK_THAT(refusal("a,,c\n1,2,3\n"), Contains("column 2 without a name"));
    CHECK_THAT(refusal("a,b, a\n1,2,3\n"), Contains("each column once"));
    CHECK_THAT(refusal(std::string("\xFF\xFE" "a\0,\0b\0", 8)), Contains("UTF-16"));
    CHECK_THAT(refusal("PK\x03\x04xxxx"), Contains("packed"));
    CHECK_THAT(refusal("a,b\r1,2\r3,4\r"), Contains("lone CR"));
    const Scratch folder;
    CHECK_THROWS_AS(CsvReader(folder / "none.csv"), InputError);
    CHECK_THROWS_AS(CsvReader(folder.folder()), InputError);
}

// The system itself says how it words its errors; tests run in the C locale.
TEST_CASE("what the system says of a file is kept word by word", "[exchange]") {
    for (const int error : {ENOENT, EACCES, EIO, ENOSPC, ELOOP}) CHECK(system_words(error) == std::strerror(error));
    CHECK(system_words(ENOENT).form().form != nullptr);
    CHECK(system_words(ELOOP).form().form == nullptr);
}

TEST_CASE("bytes that are not UTF-8 are named with row and column", "[exchange]") {
    CHECK_THAT(refusal("a,b\n1,caf\xE9\n"), Contains("b|") && Contains("row 2, column b") &&
                                                Contains("caf\\xE9") && Contains("UTF-8"));
    CHECK_THAT(refusal("a,caf\xE9\n1,2\n"), Contains("UTF-8"));
    CHECK_THAT(refusal(std::string("a,b\n1,x\0y\n", 10)), Contains("UTF-8"));
    CHECK(first_bad_byte("plain, caf\xC3\xA9 \xE2\x82\xAC \xF0\x9F\x92\xA7 end") ==
          std::string_view::npos);
    // Unicode 15, table 3-7: overlong forms, surrogates and values above U+10FFFF.
    for (const char* bad : {"\xC0\x80", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xF0\x8F\xBF\xBF",
                            "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\x80", "\xC3"}) {
        CHECK(first_bad_byte(std::string("12345678") + bad) == 8);
    }
}

TEST_CASE("long files go through a small buffer", "[exchange]") {
    std::string text = "n,text\n";
    for (int i = 0; i < 60'000; ++i) {
        text += std::to_string(i) + (i % 7 == 0 ? ",\"a \"\"quoted\"\"\nline\"\r\n" : ",some words\n");
    }
    const Rows rows = rows_of(text);
    REQUIRE(rows.size() == 60'001);
    for (int i = 0; i < 60'000; ++i) {
        const auto& row = rows[static_cast<std::size_t>(i) + 1];
        REQUIRE(row[0] == std::to_string(i));
        REQUIRE(row[1] == (i % 7 == 0 ? "a \"quoted\"\nline" : "some words"));
    }
}

TEST_CASE("a line of two gigabytes is refused without reading it", "[exchange]") {
    const Scratch folder;
    // Sparse files: they take no room on the disk.
    for (const char* start : {"a,b\n1,", "a,b\n1,\"", ""}) {
        const auto path = folder.write("big.csv", start);
        std::filesystem::resize_file(path, std::uintmax_t{2} << 30U);
        CHECK_THROWS_AS([&] {
            CsvReader reader(path);
            while (reader.next()) {}
        }(), InputError);
    }
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    CHECK(usage.ru_maxrss < 400 * 1024);  // KiB; the file would be 2,097,152
}
