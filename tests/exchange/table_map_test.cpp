// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/table_map.h"

#include "core/exchange/import.h"
#include "core/store/meter_store.h"
#include "core/store/weather_store.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

// All CONSTRUCTED.
using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using tests::Scratch;
using Path = std::filesystem::path;

namespace {

std::string map_refusal(const std::string& text) {
    const Scratch scratch;
    try {
        static_cast<void>(read_table_map(scratch.write("map.json", text)));
    } catch (const InputError& e) {
        return e.what();
    }
    return "accepted";
}

struct Desk {
    Desk() : book(store::Book::create(scratch / "b.evenfall")) {
        put("site,name,latitude,elevation_m\nS,Site,40,100\n");
        put("meter,site,unit\nA,S,m3\nB,S,m3\n");
    }
    ImportResult put(const std::string& text, const std::string& map = {}) {
        ImportOptions o;
        o.at = "2024-08-01T12:00:00Z";
        if (!map.empty()) o.map = scratch.write("map.json", map);
        const std::vector<Path> files{scratch.write("t.csv", text)};
        const auto results = import_files(book, files, o);
        require_accepted(results);
        return results.front();
    }
    std::vector<meter::Reading> readings(const std::string& code) const {
        return store::all_readings(book, code);
    }
    Scratch scratch;
    store::Book book;
};

std::string refusal(Desk& desk, const std::string& text, const std::string& map) {
    try {
        desk.put(text, map);
    } catch (const InputError& e) {
        return e.what();
    }
    return "accepted";
}

constexpr const char* long_text =
    "meter,time,register\nA,2024-07-01T06:00,10.5\nB,2024-07-01T06:00,7\n"
    "A,2024-07-02T06:00,11\n";

}  // namespace

TEST_CASE("the same readings long, wide, renamed and with decimal commas", "[exchange][constructed]") {
    Desk plain;
    plain.put(long_text);
    SECTION("wide") {
        Desk desk;
        const auto r = desk.put("Time;North;South;Remarks\n01.07.2024 6:00;10,5;7;\n02.07.2024 6:00;11;;x\n",
                                R"({"evenfall_map": 1, "decimal_mark": ",", "date_order": "day_month_year",
                                    "ignore": ["Remarks"],
                                    "wide": {"time": "Time", "meters": {"North": "A", "South": "B"}}})");
        CHECK(r.kind == Kind::readings);
        CHECK(r.added == 3);
        CHECK(desk.readings("A") == plain.readings("A"));
        CHECK(desk.readings("B") == plain.readings("B"));
    }
    SECTION("renamed, month first, AM") {
        Desk desk;
        desk.put("Meter No.,When,Total\nA,7/1/2024 6:00 AM,10.5\nB,7/1/2024 6:00 AM,7\nA,7/2/2024 6:00 AM,11\n",
                 R"({"evenfall_map": 1, "kind": "readings", "date_order": "month_day_year",
                     "columns": {"Meter No.": "meter", "When": "time", "Total": "register"}})");
        CHECK(desk.readings("A") == plain.readings("A"));
        CHECK(desk.readings("B") == plain.readings("B"));
    }
    SECTION("one file for each meter, the code in the map") {
        Desk desk;
        desk.put("time\tregister\n2024-07-01T06:00\t10.5\n2024-07-02T06:00\t11\n",
                 R"({"evenfall_map": 1, "constants": {"meter": "A"}})");
        CHECK(desk.readings("A") == plain.readings("A"));
    }
}

TEST_CASE("wide volumes of a logger", "[exchange][constructed]") {
    Desk desk;
    desk.put("t,A,B\n2024-07-01T00:15,3,4\n2024-07-01T00:30,-,5\n",
             R"({"evenfall_map": 1, "missing": ["-"],
                 "wide": {"time": "t", "value": "volume", "minutes": 15, "meters": {"A": "A", "B": "B"}}})");
    REQUIRE(desk.readings("A").size() == 1);
    REQUIRE(desk.readings("B").size() == 2);
    CHECK(desk.readings("B")[1].span == std::chrono::minutes{15});
}

TEST_CASE("marks for missing values", "[exchange][constructed]") {
    Desk desk;
    desk.put("station,date,tmax_c,rain_mm\nW,2024-07-01,-6999,0\n",
             R"({"evenfall_map": 1, "missing": ["-6999"]})");
    const auto day = calendar::make_date(2024, 7, 1);
    const auto days = store::weather_days(desk.book, "W", day, day);
    CHECK_FALSE(days[0].tmax.has_value());
    CHECK(days[0].rain.has_value());
}

TEST_CASE("mistakes in a wide table are named by its own columns", "[exchange][constructed]") {
    Desk desk;
    const std::string map =
        R"({"evenfall_map": 1, "wide": {"time": "t", "meters": {"North": "A", "South": "B"}}})";
    CHECK_THAT(refusal(desk, "t,North,South\n2024-07-01T00:00,1,x\n", map),
               Contains("row 2, column South: found \"x\""));
    CHECK_THAT(refusal(desk, "t,North,Suoth\n2024-07-01T00:00,1,x\n", map),
               Contains("column South") && Contains("the nearest is Suoth"));
    CHECK_THAT(refusal(desk, "t,North,South,East\n2024-07-01T00:00,1,2,3\n", map),
               Contains("column East"));
    CHECK_THAT(refusal(desk, "t,North,South\n2024-07-01T00:00,1\n2024-07-01T01:00,1,2\n", map),
               Contains("2 cells"));
    CHECK_THAT(refusal(desk, "t,North,South\n1/7/2024 0:00,1,2\n", map), Contains("column t"));
}

TEST_CASE("map files with mistakes", "[exchange][constructed]") {
    CHECK(map_refusal(R"({"evenfall_map": 1})") == "accepted");
    CHECK_THAT(map_refusal("{}"), Contains("evenfall_map"));
    CHECK_THAT(map_refusal(R"({"evenfall_map": 2})"), Contains("version"));
    CHECK_THAT(map_refusal(R"({"evenfall_map": 1, "colums": {}})"), Contains("the nearest is columns"));
    CHECK_THAT(map_refusal(R"({"evenfall_map": 1, "decimal_mark": ";"})"), Contains("decimal_mark"));
    CHECK_THAT(map_refusal(R"({"evenfall_map": 1, "date_order": "guess"})"), Contains("month_day_year"));
    CHECK_THAT(map_refusal(R"({"evenfall_map": 1, "kind": "apples"})"), Contains("readings"));
    CHECK_THAT(map_refusal(R"({"evenfall_map": 1, "columns": {"a": 5}})"), Contains("columns.a"));
    CHECK_THAT(map_refusal(R"({"evenfall_map": 1, "wide": {"time": "t"}})"), Contains("wide.meters"));
    CHECK_THAT(map_refusal(R"({"evenfall_map": 1, "wide": {"time": "t", "value": "volume", "meters": {"A": "A"}}})"),
               Contains("wide.minutes"));
    CHECK_THAT(map_refusal(R"({"evenfall_map": 1, )"), Contains("map.json"));
    CHECK_THAT(map_refusal("[1]"), Contains("an object"));
}

TEST_CASE("each file of one call may have a map of its own, and they go in together", "[exchange]") {
    Desk desk;
    ImportOptions o;
    o.at = "2024-08-01T12:00:00Z";
    o.maps = {desk.scratch.write("a.json", R"({"evenfall_map":1,"kind":"readings","constants":{"meter":"A"},
                                              "columns":{"When":"time","Count":"register"},"date_order":"day_month_year"})"),
              desk.scratch.write("b.json", R"({"evenfall_map":1,"kind":"readings","decimal_mark":","})")};
    const auto import = [&](const std::string& second) {
        const std::vector<Path> files{desk.scratch.write("a.csv", "When,Count\n01/06/2024,5\n"),
                                      desk.scratch.write("b.csv", "meter;time;register\nB;2024-06-01;" + second + "\n")};
        return import_files(desk.book, files, o);
    };
    CHECK_FALSE(import("seven")[0].stored);
    CHECK(desk.readings("A").empty());
    const auto results = import("7,5");
    CHECK(results[0].stored);
    CHECK(results[1].stored);
    REQUIRE(desk.readings("A").size() == 1);
    REQUIRE(desk.readings("B").size() == 1);
    CHECK(desk.readings("B").front().value == 7.5);
}

TEST_CASE("the schema of maps knows every kind of table", "[exchange]") {
    const std::string schema = tests::bytes_of(Path(EVENFALL_SOURCE_DIR) / "schemas" / "tables" / "map.schema.json");
    for (const KindSpec& kind : all_kinds()) {
        CHECK_THAT(schema, Contains("\"" + std::string(kind.name) + "\""));
    }
}
