// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/input_error.h"

#include <catch2/catch.hpp>

using namespace evenfall;

TEST_CASE("an issue says where, what and what was expected", "[input_error]") {
    const Issue issue{{"readings.csv", 41007, "register"}, "12x", "a number"};
    CHECK(issue.text() == "readings.csv, row 41007, column register: found \"12x\", expected a number");
    CHECK(Issue{{}, "12x", "a number"}.text() == "found \"12x\", expected a number");
}

TEST_CASE("a stranger's bytes cannot draw on the terminal", "[input_error]") {
    CHECK(printable("a\x1b[31m") == "a\\x1B[31m");
    CHECK(printable("\xff\xfe") == "\\xFF\\xFE");
    CHECK(printable("\xed\xa0\x80") == "\\xED\\xA0\\x80");  // a surrogate is not UTF-8
    CHECK(printable("\xc3\xa9") == "\xc3\xa9");
    CHECK(printable(std::string(200, 'x')) == std::string(80, 'x') + "...");
}

TEST_CASE("every issue is carried, the first twenty are printed", "[input_error]") {
    std::vector<Issue> many;
    for (std::size_t row = 1; row <= 23; ++row) many.push_back({{"f", row, "c"}, "x", "y"});
    const InputError error(many);
    CHECK(error.issues().size() == 23);
    CHECK_THAT(error.what(), Catch::EndsWith("and 3 more"));
}
