// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/schedule/schedule_text.h"

#include "core/input_error.h"
#include "tests/schedule/schedule_case.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace evenfall;
using namespace evenfall::schedule;
using namespace evenfall::schedule::test;
using Catch::Matchers::Contains;

namespace {

BaseSchedule night(const std::string& name) {
    const std::vector areas{area("A")};
    const std::vector stations{station(name, "A", 1.6)};
    return base_schedule("S", areas, stations, rule({true, false, true, false, true, false, false}, 23, 6));
}

calendar::Instant stamp() { return *calendar::parse_instant("2024-05-20T08:30:00Z"); }

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::size_t at = 0;
    while (at < text.size()) {
        const auto end = text.find("\r\n", at);
        REQUIRE(end != std::string::npos);  // every line ends so
        lines.push_back(text.substr(at, end - at));
        at = end + 2;
    }
    return lines;
}

}  // namespace

// DERIVED. June 2024 begins on a Saturday: the first Monday is the 3rd, the last the 24th. Three
// cycles of 8 minutes with 66 of soak from 23:00: 23:00, 0:14 and 1:28 of the day after.
TEST_CASE("a calendar of the runs", "[schedule][derived]") {
    const auto text = schedule_calendar(night("1"), stamp());
    const auto lines = lines_of(text);
    CHECK(lines.front() == "BEGIN:VCALENDAR");
    CHECK(lines.back() == "END:VCALENDAR");
    CHECK(std::count(lines.begin(), lines.end(), "BEGIN:VEVENT") == 9);
    CHECK(std::count(lines.begin(), lines.end(), "DTSTAMP:20240520T083000Z") == 9);
    CHECK_THAT(text, Contains("DTSTART:20240603T230000\r\nDURATION:PT8M\r\n"
                              "RRULE:FREQ=WEEKLY;UNTIL=20240624T230000\r\n"));
    CHECK_THAT(text, Contains("DTSTART:20240604T001400\r\nDURATION:PT8M\r\n"
                              "RRULE:FREQ=WEEKLY;UNTIL=20240625T001400\r\n"));
    CHECK_THAT(text, Contains("DTSTART:20240604T012800"));
    CHECK_THAT(text, Contains("SUMMARY:Station 1\\, 8 min\\, cycle 3 of 3\r\n"));
}

// RFC 5545 sections 3.1 (75 octets, folding) and 3.3.11 (escapes).
TEST_CASE("calendar lines are folded between characters and text is escaped", "[schedule]") {
    std::string name = "North; \"old\" \\ field,\nrow\x01";
    for (int i = 0; i < 40; ++i) name += "\xC3\xA9";
    const auto text = schedule_calendar(night(name), stamp());
    std::string unfolded;
    for (const auto& line : lines_of(text)) {
        CHECK(line.size() <= 75);
        REQUIRE_FALSE(line.empty());
        CHECK((static_cast<unsigned char>(line[0]) & 0xC0U) != 0x80U);
        if (line[0] == ' ') {
            CHECK((static_cast<unsigned char>(line.at(1)) & 0xC0U) != 0x80U);
            unfolded += line.substr(1);
        } else {
            unfolded += "\n" + line;
        }
    }
    CHECK_THAT(unfolded, Contains("SUMMARY:Station North\\; \"old\" \\\\ field\\,\\nrow\xC3\xA9"));
}

TEST_CASE("unique names of events", "[schedule]") {
    const auto lines = lines_of(schedule_calendar(night("1"), stamp()));
    std::vector<std::string> uids;
    for (const auto& line : lines) {
        if (line.starts_with("UID:")) uids.push_back(line);
    }
    std::sort(uids.begin(), uids.end());
    CHECK(uids.size() == 9);
    CHECK(std::adjacent_find(uids.begin(), uids.end()) == uids.end());
}

TEST_CASE("a calendar needs a watering rule", "[schedule]") {
    const std::vector areas{area("A")};
    const std::vector stations{station("1", "A", 1.6)};
    CHECK_THROWS_AS(schedule_calendar(base_schedule("S", areas, stations, std::nullopt), stamp()),
                    InputError);
}

TEST_CASE("rows of a schedule", "[schedule]") {
    const auto rows = schedule_rows(night("1"));
    REQUIRE(rows.size() == 2);
    CHECK(rows[1] == std::vector<std::string>{"2024-06", "1", "A", "1.600", "1.400", "1.750", "2", "3",
                                              "Mon Wed Fri", "3", "8", "66", "72", "yes"});
    CHECK(rows[0].size() == rows[1].size());
}
