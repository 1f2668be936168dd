// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/date.h"
#include "core/calendar/month_words.h"

#include <catch2/catch.hpp>

using namespace evenfall::calendar;

TEST_CASE("dates are read strictly", "[calendar]") {
    CHECK(parse_date("2024-02-29") == make_date(2024, 2, 29));
    for (const char* bad : {"2023-02-29", "2024-06-31", "2024-6-1", "24-06-01", "2024/06/01",
                            "2024-06-01 ", "01-06-2024", "1899-12-31", "2200-01-01", "", "2024-13-01"}) {
        CAPTURE(bad);
        CHECK_FALSE(parse_date(bad).has_value());
    }
}

TEST_CASE("times with and without an offset are told apart", "[calendar]") {
    const auto local = parse_local_time("2024-07-01T06:00");
    REQUIRE(local);
    CHECK(format_local_time(*local) == "2024-07-01T06:00:00");
    CHECK_FALSE(parse_local_time("2024-07-01T06:00Z"));
    CHECK_FALSE(parse_local_time("2024-07-01T24:00"));
    CHECK_FALSE(parse_local_time("2024-07-01T06:60"));
    const auto instant = parse_instant("2024-07-01T06:00:30-07:00");
    REQUIRE(instant);
    CHECK(format_instant(*instant) == "2024-07-01T13:00:30Z");
    CHECK(parse_instant("2024-07-01T13:00:30Z") == instant);
    CHECK_FALSE(parse_instant("2024-07-01T06:00"));
    CHECK_FALSE(parse_instant("2024-07-01T06:00:30-07"));
}

// PUBLISHED. Allen et al. (1998) FAO-56, examples 8 and 18 and ASCE-EWRI test day:
// 3 September is J 246, 6 July J 187, 1 July 2015 J 182.
TEST_CASE("day of the year", "[calendar][published]") {
    CHECK(day_of_year(make_date(2023, 9, 3)) == 246);
    CHECK(day_of_year(make_date(2023, 7, 6)) == 187);
    CHECK(day_of_year(make_date(2015, 7, 1)) == 182);
    CHECK(day_of_year(make_date(2024, 12, 31)) == 366);
}

TEST_CASE("months", "[calendar]") {
    const auto feb = parse_month("2024-02");
    REQUIRE(feb);
    CHECK(days_in(*feb) == 29);
    CHECK(last_day(*feb) == make_date(2024, 2, 29));
    CHECK(format_month(plus_months(*feb, 11)) == "2025-01");
    CHECK(format_month(plus_months(*feb, -2)) == "2023-12");
    CHECK(format_month_name(*feb) == "Feb 2024");
    CHECK_FALSE(parse_month("2024-2"));
    CHECK_FALSE(parse_month("2024-13"));
}

TEST_CASE("a month in words reads as it is printed", "[calendar]") {
    for (unsigned m = 1; m <= 12; ++m) {
        const Month month = std::chrono::year{2025} / std::chrono::month{m};
        CHECK(month_words(month) == format_month_name(month));
        CHECK(month_name(month).english().substr(0, 3) == format_month_name(month).substr(0, 3));
    }
}
