// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/time_zone.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::calendar;
using namespace std::chrono_literals;

namespace {
LocalTime local(const char* text) { return parse_local_time(text).value(); }
Instant instant(const char* text) { return parse_instant(text).value(); }
}  // namespace

// PUBLISHED. US rule since 2007 (Energy Policy Act of 2005, section 110): daylight time from the
// second Sunday of March to the first Sunday of November, at 2 o'clock local time. In 2024 these
// were 10 March and 3 November.
TEST_CASE("a US Pacific rule", "[calendar][published]") {
    const TimeZone zone("PST8PDT,M3.2.0,M11.1.0");
    CHECK(zone.to_instant(local("2024-01-15T06:00")) == instant("2024-01-15T14:00:00Z"));
    CHECK(zone.to_instant(local("2024-07-15T06:00")) == instant("2024-07-15T13:00:00Z"));
    CHECK(zone.to_instant(local("2024-03-10T01:59")) == instant("2024-03-10T09:59:00Z"));
    CHECK(zone.to_instant(local("2024-03-10T03:00")) == instant("2024-03-10T10:00:00Z"));
    CHECK_THROWS_AS(zone.to_instant(local("2024-03-10T02:30")), InputError);
    // The hour that comes twice: the first one, still in daylight time.
    CHECK(zone.to_instant(local("2024-11-03T01:30")) == instant("2024-11-03T08:30:00Z"));
    CHECK(zone.to_instant(local("2024-11-03T02:00")) == instant("2024-11-03T10:00:00Z"));
    CHECK(zone.to_local(instant("2024-11-03T09:30:00Z")) == local("2024-11-03T01:30"));
}

TEST_CASE("days are 23, 24 or 25 hours long", "[calendar][derived]") {
    const TimeZone zone("PST8PDT,M3.2.0,M11.1.0");
    const auto length = [&](Date d) { return zone.start_of_day(d + std::chrono::days{1}) - zone.start_of_day(d); };
    CHECK(length(make_date(2024, 3, 10)) == 23h);
    CHECK(length(make_date(2024, 7, 1)) == 24h);
    CHECK(length(make_date(2024, 11, 3)) == 25h);
    CHECK(zone.day_of(instant("2024-07-16T06:59:59Z")) == make_date(2024, 7, 15));
    CHECK(zone.day_of(instant("2024-07-16T07:00:00Z")) == make_date(2024, 7, 16));
}

// PUBLISHED. New South Wales Standard Time Act 1987 as in force since 2008: daylight time from
// the first Sunday of October to the first Sunday of April.
TEST_CASE("a southern rule wraps around the new year", "[calendar][published]") {
    const TimeZone zone("AEST-10AEDT,M10.1.0,M4.1.0/3");
    CHECK(zone.to_instant(local("2024-01-15T06:00")) == instant("2024-01-14T19:00:00Z"));
    CHECK(zone.to_instant(local("2024-07-15T06:00")) == instant("2024-07-14T20:00:00Z"));
}

TEST_CASE("zones without daylight time, and half hours", "[calendar][derived]") {
    CHECK(TimeZone("MST7").to_instant(local("2024-07-15T06:00")) == instant("2024-07-15T13:00:00Z"));
    CHECK(TimeZone("IST-5:30").to_instant(local("2024-07-15T06:00")) == instant("2024-07-15T00:30:00Z"));
    CHECK(TimeZone().to_instant(local("2024-07-15T06:00")) == instant("2024-07-15T06:00:00Z"));
}

TEST_CASE("what is no rule is refused", "[calendar]") {
    for (const char* bad : {"", "PST", "America/Los_Angeles", "8", "PST8PDT,M13.2.0,M11.1.0", "PSTxPDT"}) {
        CAPTURE(bad);
        CHECK_THROWS_AS(TimeZone(bad), InputError);
    }
}
