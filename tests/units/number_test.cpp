// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/number.h"

#include <catch2/catch.hpp>
#include <clocale>

using namespace evenfall::units;

TEST_CASE("numbers are read whole or not at all", "[units]") {
    CHECK(parse_number(" 12.50 ") == 12.5);
    CHECK(parse_number("-3e2") == -300.0);
    CHECK(parse_number("+7") == 7.0);
    CHECK(parse_number("1,5", ',') == 1.5);
    for (const char* bad : {"", " ", "12x", "1,5", "1.5.2", "0x10", "nan", "inf", "1e999", "+-3", "--3"}) {
        CAPTURE(bad);
        CHECK_FALSE(parse_number(bad).has_value());
    }
    CHECK_FALSE(parse_number("1.5", ',').has_value());
}

TEST_CASE("numbers are printed without the locale", "[units]") {
    CHECK(format_shortest(0.1) == "0.1");
    CHECK(format_shortest(1002.71) == "1002.71");
    CHECK(format_fixed(-0.001, 2) == "0.00");
    CHECK(format_fixed(-1.005, 1) == "-1.0");
    CHECK(format_grouped(1234567.89, 1) == "1,234,567.9");
    CHECK(format_grouped(-999.4, 0) == "-999");
    CHECK(format_grouped(-1000.0, 0) == "-1,000");
}
