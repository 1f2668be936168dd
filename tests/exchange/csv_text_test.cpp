// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv_text.h"

#include <catch2/catch.hpp>

#include <random>

using namespace evenfall::exchange;

// DERIVED from RFC 4180, section 2: quotes around a cell with a comma, quote or line end; quotes doubled.
TEST_CASE("cells of a CSV table", "[exchange][derived]") {
    CHECK(csv_cell("") == "");
    CHECK(csv_cell("Oak Hollow") == "Oak Hollow");
    CHECK(csv_cell("a,b") == "\"a,b\"");
    CHECK(csv_cell("the \"dry\" corner") == "\"the \"\"dry\"\" corner\"");
    CHECK(csv_cell("two\nlines") == "\"two\nlines\"");
}

TEST_CASE("no cell is a formula, and none changes by being written", "[exchange][constructed]") {
    CHECK(csv_cell("=1+1") == "'=1+1");
    CHECK(csv_cell("@SUM(A1)") == "'@SUM(A1)");
    CHECK(csv_cell("=HYPERLINK(\"x\",\"y\")") == "\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\"");
    CHECK(csv_cell("-12.5") == "-12.5");  // a number stays one
    CHECK(csv_cell("+3") == "+3");
    CHECK(csv_cell("-12.5 and more") == "'-12.5 and more");
    CHECK(csv_cell("'=1") == "''=1");
    CHECK(csv_cell("'tis") == "'tis");
    CHECK(unguarded("'=1+1") == "=1+1");
    CHECK(unguarded("''=1") == "'=1");
    CHECK(unguarded("'tis") == "'tis");
    CHECK(unguarded("'") == "'");
    CHECK(unguarded("") == "");
}

// A property: for any text without quotes and line ends, taking the guard off gives the text back, and
// what stands in the file begins with no sign of a formula unless it is a number.
TEST_CASE("guarding is undone exactly", "[exchange][constructed][property]") {
    std::mt19937 draw(20241);
    const std::string letters = "=+-@''ab1.";
    for (int n = 0; n < 20000; ++n) {
        std::string text;
        for (auto i = draw() % 6; i > 0; --i) text += letters[draw() % letters.size()];
        const std::string cell = csv_cell(text);
        CAPTURE(text, cell);
        REQUIRE(unguarded(cell) == text);
        const bool starts = !cell.empty() && std::string("=+-@").find(cell[0]) != std::string::npos;
        if (starts) REQUIRE(cell.find_first_not_of("+-.1") == std::string::npos);
    }
}
