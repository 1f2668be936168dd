// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import.h"

#include "core/exchange/bag_digest.h"
#include "core/store/bill_store.h"
#include "core/store/catch_test_store.h"
#include "core/store/journal_store.h"
#include "core/store/meter_store.h"
#include "core/store/site_store.h"
#include "core/store/weather_store.h"
#include "tests/exchange/import_desk.h"

#include <algorithm>
#include <functional>
#include <map>

// All CONSTRUCTED.
using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using tests::bytes_of;
using tests::import_options;
using tests::Scratch;
using Path = std::filesystem::path;

namespace {

const std::map<std::string, std::string> good{
    {"sites.csv", "site,name,organisation,latitude,longitude,elevation_ft,time_zone,weather\n"
                  "S,South farm,Fen Turf,38.5,-121.5,60,\"PST8PDT,M3.2.0,M11.1.0\",W\n"},
    {"meters.csv", "meter,site,unit,multiplier,digits,parent,installed,removed,replaces,size_in\n"
                   "B,S,kgal,1,6,A,2020-01-01,,,2\nA,S,m3,10,,,2019-05-01,2025-12-31,,\n"},
    {"areas.csv", "area,site,name,size_ac,plant,root_depth_in,meter,share\n"
                  "N,S,North,18.4,cool_turf,8,B,0.6\nM,S,,2.5,,,,\n"},
    {"readings.csv", "meter,time,register,kind\nB,2024-07-02T06:00,12.5,measured\n"
                     "B,2024-07-01T06:00,10,\nA,2024-07-01T13:00:00Z,5,estimated\n"},
    {"weather.csv", "station,date,tmax_f,tmin_f,rain_in\nW,2024-07-01,90,60,0\nW,2024-07-02,95,,0.25\n"},
    {"catches.csv", "test,area,date,throat_area_in2,minutes,can,x_ft,y_ft,volume_ml,excluded\n"
                    "T1,N,2024-06-01,16.61,30,1,0,0,20,\nT1,,,,,2,10,0,0,\nT1,,,,,3,20,0,9,kicked\n"}};

struct Desk : tests::ImportDesk {
    std::vector<Path> write_all() const {
        std::vector<Path> files;
        for (const auto& [name, text] : good) files.push_back(scratch.write(name, text));
        return files;
    }
    void fill() {
        const auto files = write_all();
        require_accepted(import_files(book, files, import_options()));
    }
};

}  // namespace

TEST_CASE("the six kinds go in together, in whatever order they are named", "[exchange][constructed]") {
    Desk desk;
    const auto files = desk.write_all();  // in alphabetical order: areas first
    const auto results = import_files(desk.book, files, import_options());
    require_accepted(results);
    for (const auto& r : results) {
        CAPTURE(r.file);
        CHECK(r.stored);
        CHECK(r.complete);
        CHECK(r.rejected == 0);
    }
    const auto site = store::find_site(desk.book, "S");
    REQUIRE(site);
    CHECK(site->elevation->text() == "60 ft");  // as typed
    const auto meter = store::find_meter(desk.book, "B");
    REQUIRE(meter);
    CHECK(meter->parent == "A");
    CHECK(meter->digits == 6);
    CHECK(meter->size->text() == "2 in");
    CHECK(store::find_area(desk.book, "N")->share == 0.6);
    CHECK_FALSE(store::find_area(desk.book, "M")->coefficient.has_value());
    std::vector<meter::Reading> readings;
    store::for_each_reading(desk.book, "B", [&](const auto& r) { readings.push_back(r); });
    REQUIRE(readings.size() == 2);
    // 06:00 in daylight time is 13:00 UTC.
    CHECK(calendar::format_instant(readings[0].at) == "2024-07-01T13:00:00Z");
    CHECK(readings[1].value == 12.5);
    store::for_each_reading(desk.book, "A", [&](const auto& r) {
        CHECK(r.kind == meter::ReadingKind::estimated);
    });
    const auto days = store::weather_days(desk.book, "W", calendar::make_date(2024, 1, 1),
                                          calendar::make_date(2024, 12, 31));
    REQUIRE(days.size() == 2);
    CHECK(days[0].rain->si() == 0.0);
    CHECK_FALSE(days[1].tmin.has_value());
    const auto test = store::find_catch_test(desk.book, "T1");
    REQUIRE(test);
    CHECK(test->catches.size() == 3);
    CHECK(test->catches[2].excluded == "kicked");
    CHECK(desk.book.integrity_problems().empty());
    CHECK(store::imports(desk.book).size() == 6);
    CHECK(store::journal(desk.book).size() == 6);
}

TEST_CASE("the same files again change nothing, to the byte", "[exchange][constructed]") {
    Desk desk;
    desk.fill();
    const auto before = desk.bytes();
    const auto files = desk.write_all();
    for (const auto& r : import_files(desk.book, files, import_options())) {
        CAPTURE(r.file);
        CHECK(r.added == 0);
        CHECK(r.conflicts == 0);
        CHECK(r.stored);
        CHECK(r.unchanged > 0);
    }
    const bool same = desk.bytes() == before;
    CHECK(same);
}

TEST_CASE("bad input is refused with its place and the book keeps its bytes",
          "[exchange][constructed]") {
    Desk desk;
    desk.fill();
    CHECK_THAT(desk.refusal("meter,site,unit\nC,S,gallons\n"),
               Contains("t.csv, row 2, column unit: found \"gallons\"") && Contains("gal, kgal"));
    CHECK_THAT(desk.refusal("meter,time\nB,2024-07-03T06:00\n"), Contains("a column register"));
    CHECK_THAT(desk.refusal("meter,time,register\nB,2024-07-03T06:00,12x\n"),
               Contains("row 2, column register: found \"12x\", expected a number"));
    CHECK_THAT(desk.refusal("meter,time,register\nB,2024-06-31T06:00,12\n"),
               Contains("column time: found \"2024-06-31T06:00\""));
    CHECK_THAT(desk.refusal("test,area,date,can,volume_ml\nT2,N,2024-06-02,1,-3\n"),
               Contains("column volume_ml: found \"-3\""));
    CHECK_THAT(desk.refusal("test,area,date,can,volume_ml\nT2,N,2024-06-02,1,3\nT2,,,1,4\n"),
               Contains("row 3, column can") && Contains("each can once"));
    CHECK_THAT(desk.refusal("meter,time,register\nB,2019-12-31T23:59,1\n"),
               Contains("column time") && Contains("before meter B was installed (2020-01-01)"));
    CHECK_THAT(desk.refusal("meter,time,register\nA,2026-01-02T00:00,1\n"),
               Contains("after meter A was removed (2025-12-31)"));
    CHECK_THAT(desk.refusal(""), Contains("t.csv: found \"an empty file\""));
    CHECK_THAT(desk.refusal("meter,time,register\n"), Contains("at least one row"));
    CHECK_THAT(desk.refusal("meter,time,register\nB,2024-07-03T06:00,12\nB,2024-07-0"),
               Contains("row 3") && Contains("cut short"));
    CHECK_THAT(desk.refusal("meter,time,register\nB,2024-07-03T06:00,12\nB\xFF,2024-07-04T06:00,13\n"),
               Contains("row 3, column meter") && Contains("\\xFF") && Contains("UTF-8"));
    CHECK_THAT(desk.refusal("meter,time,register\nB,2024-07-03T06:00,-1\n"),
               Contains("zero or more, below 1000000") || Contains("below 1e+06"));
    CHECK_THAT(desk.refusal("meter,time,register\nB,2024-03-10T02:30,14\n"),
               Contains("skipped in spring"));
    CHECK_THAT(desk.refusal("meter,time,register\nZ,2024-07-03T06:00,1\n"),
               Contains("the code of a meter"));
    CHECK_THAT(desk.refusal("area,site,size_ac,meter\nQ,S,2,nowhere\n"),
               Contains("column meter") && Contains("nowhere"));
    CHECK_THAT(desk.refusal("meter,site,unit,parent\nC,S,gal,D\nD,S,gal,C\n"),
               Contains("column parent"));
    CHECK_THAT(desk.refusal("meter,site,unit,colour\nC,S,gal,blue\n"),
               Contains("column colour") && Contains("a column of the meters table"));
    CHECK_THAT(desk.refusal("meter,start,end,volume\nB,2024-07-03T07:00,2024-07-03T06:00,5\n"),
               Contains("an end after the start"));
    // One bad row of three: the good ones stay out too.
    CHECK_THAT(desk.refusal("meter,time,register\nB,2024-07-03T06:00,13\nB,x,14\nB,2024-07-05T06:00,15\n"),
               Contains("row 3"));
    CHECK(store::count_readings(desk.book, "B") == 2);
    CHECK(desk.book.integrity_problems().empty());
}

TEST_CASE("a line of two gigabytes leaves the book alone", "[exchange][constructed]") {
    Desk desk;
    desk.fill();
    const auto before = desk.bytes();
    const auto path = desk.scratch.write("big.csv", "meter,time,register\nB,2024-07-03T06:00,13\nB,");
    std::filesystem::resize_file(path, std::uintmax_t{2} << 30U);  // sparse
    const std::vector<Path> files{path};
    const auto results = import_files(desk.book, files, import_options());
    CHECK_FALSE(results[0].complete);
    CHECK_THROWS_AS(require_accepted(results), InputError);
    CHECK(store::count_readings(desk.book, "B") == 2);
    const bool same = desk.bytes() == before;
    CHECK(same);
}

TEST_CASE("the rest goes in only when asked for, and refused rows are written out",
          "[exchange][constructed]") {
    Desk desk;
    desk.fill();
    ImportOptions o = import_options();
    o.rejects = desk.scratch / "rejects.csv";
    const std::string text = "meter,time,register\nB,2024-07-03T06:00,13\nB,=cmd(),14\n";
    CHECK_FALSE(desk.put(text, o).stored);
    CHECK(store::count_readings(desk.book, "B") == 2);
    const std::string rejects = bytes_of(*o.rejects);
    CHECK_THAT(rejects, Contains("meter,time,register,row,reason\n") &&
                            Contains("B,'=cmd(),14,3,\"column time: found "));
    o.accept_rest = true;
    const auto r = desk.put(text, o);
    CHECK(r.stored);
    CHECK(r.added == 1);
    CHECK(r.rejected == 1);
    CHECK(store::count_readings(desk.book, "B") == 3);
    SECTION("a file that was cut is never taken in part") {
        CHECK_FALSE(desk.put("meter,time,register\nB,2024-07-09T06:00,13\nB,2024-0", o).stored);
    }
    SECTION("a catch sheet with a bad row stays out as a whole") {
        const auto sheet = desk.put("test,area,date,can,volume_ml\nT8,N,2024-06-02,1,5\nT8,,,2,x\n"
                                    "T9,N,2024-06-02,1,5\n", o);
        CHECK(sheet.added == 1);
        CHECK_FALSE(store::find_catch_test(desk.book, "T8").has_value());
        CHECK(store::find_catch_test(desk.book, "T9").has_value());
    }
}

TEST_CASE("rows that are refused after reading are written out too", "[exchange][constructed]") {
    Desk desk;
    desk.fill();
    ImportOptions o = import_options();
    o.rejects = desk.scratch / "rejects.csv";
    o.accept_rest = true;
    const auto rejects = [&](const std::string& text) {
        std::filesystem::remove(*o.rejects);
        const auto r = desk.put(text, o);
        CHECK(r.stored);
        const std::string written = bytes_of(*o.rejects);
        // One line for each row refused, below the two that head a file.
        CHECK(static_cast<std::size_t>(std::count(written.begin(), written.end(), '\n')) == r.rejected + 2);
        return written;
    };
    CHECK_THAT(rejects("meter,site,unit,parent\nC,S,gal,B\nD,X,gal,\nE,S,gal,Q\n"),
               Contains("D,X,gal,,3,\"column site: found \"\"X\"\", expected the code of a site") &&
                   Contains("E,S,gal,Q,4,\"column parent"));
    CHECK(store::find_meter(desk.book, "C").has_value());
    CHECK_FALSE(store::find_meter(desk.book, "D").has_value());
    CHECK_THAT(rejects("area,site,size_ac,meter\nP,S,2,B\nQ,S,2,nowhere\nR,X,2,\n"),
               Contains("Q,S,2,nowhere,3,\"column meter") && Contains("R,X,2,,4,\"column site"));
    CHECK(store::find_area(desk.book, "P").has_value());
    const std::string sheets = rejects("test,area,date,can,volume_ml\nT5,N,2024-06-02,1,5\nT6,X,2024-06-02,1,5\n"
                                       "T6,,,2,6\nT7,N,2024-06-02,1,5\nT7,,,2,-6\nT1,N,2024-06-01,1,21\n");
    CHECK_THAT(sheets, Contains("T6,X,2024-06-02,1,5,3,") && Contains("T6,,,2,6,4,\"column area") &&
                           Contains("T7,N,2024-06-02,1,5,5,\"left out with its test") &&
                           Contains("T7,,,2,-6,6,\"column volume_ml") &&
                           Contains("T1,N,2024-06-01,1,21,7,\"column test") && !Contains("T5,"));
    CHECK(store::find_catch_test(desk.book, "T5").has_value());
    CHECK_THAT(rejects("meter,from,to,billed_kgal\nB,2024-07-01,2024-08-01,310\nZ,2024-07-01,2024-08-01,310\n"),
               Contains("Z,2024-07-01,2024-08-01,310,3,\"column meter"));
    CHECK_THAT(rejects("rate,from,unit,currency,price,tier_up_to\nR1,2024-01-01,kgal,USD,3,\nR2,2024-01-01,kgal,USD,3,10\n"
                       "R2,2024-01-01,kgal,USD,4,5\n"),
               Contains("R2,2024-01-01,kgal,USD,3,10,3,") && Contains("R2,2024-01-01,kgal,USD,4,5,4,"));
    SECTION("a sheet with a row that lacks cells stays out, whichever test that row was of") {
        CHECK_THAT(rejects("test,area,date,can,volume_ml\nT8,N,2024-06-02,1,5\nT8,,2,6\n"),
                   Contains("T8,N,2024-06-02,1,5,2,\"left out"));
        CHECK_FALSE(store::find_catch_test(desk.book, "T8").has_value());
    }
}

TEST_CASE("a dry run says what would happen and does nothing", "[exchange][constructed]") {
    Desk desk;
    desk.fill();
    ImportOptions o = import_options();
    o.dry_run = true;
    const auto before = desk.bytes();
    const auto r = desk.put("meter,time,register\nB,2024-07-03T06:00,13\nB,2024-07-01T06:00,10\n", o);
    CHECK(r.added == 1);
    CHECK(r.unchanged == 1);
    CHECK_FALSE(r.stored);
    const bool same = desk.bytes() == before;
    CHECK(same);
    CHECK(store::count_readings(desk.book, "B") == 2);
}

TEST_CASE("another value for the same moment waits for a choice", "[exchange][constructed]") {
    Desk desk;
    desk.fill();
    const std::string text = "meter,time,register\nB,2024-07-01T06:00,11\nB,2024-07-03T06:00,13\n";
    const auto value = [&] {
        double first = -1;
        store::for_each_reading(desk.book, "B", [&](const auto& r) { if (first < 0) first = r.value; });
        return first;
    };
    CHECK_THAT(desk.refusal(text), Contains("row 2, column register: found \"11\"") &&
                                        Contains("10 as the book has it") &&
                                        Contains("2024-07-01T13:00:00Z"));
    ImportOptions o = import_options();
    SECTION("keep") {
        o.conflicts = ConflictChoice::keep;
        const auto r = desk.put(text, o);
        CHECK(r.stored);
        CHECK(r.conflicts == 1);
        CHECK(r.replaced == 0);
        CHECK(r.added == 1);
        CHECK(value() == 10);
    }
    SECTION("replace") {
        o.conflicts = ConflictChoice::replace;
        const auto r = desk.put(text, o);
        CHECK(r.conflicts == 1);
        CHECK(r.replaced == 1);
        CHECK(value() == 11);
        // The corrected value stands; the first file again adds nothing and undoes nothing.
        CHECK(desk.put(text, o).unchanged == 2);
        const auto first_file = desk.put(good.at("readings.csv"));
        CHECK(first_file.unchanged == 2);
        CHECK(first_file.decided_before == 1);
        CHECK(value() == 11);
    }
    bool both = false;
    for (const auto& entry : store::journal(desk.book)) {
        both = both || (entry.record == "reading of B at 2024-07-01T13:00:00Z" &&
                        entry.detail.find("\"in_book\":\"10\"") != std::string::npos &&
                        entry.detail.find("\"in_file\":\"11\"") != std::string::npos);
    }
    CHECK(both);
}

TEST_CASE("conflicts of records with fields, of weather and of bills", "[exchange][constructed]") {
    Desk desk;
    desk.fill();
    CHECK_THAT(desk.refusal("area,site,name,size_ac,plant,root_depth_in,meter,share\n"
                             "N,S,North,19,cool_turf,8,B,0.6\n"),
               Contains("size 18.4 ac") && Contains("size 19 ac"));
    CHECK_THAT(desk.refusal("station,date,tmax_f,tmin_f,rain_in\nW,2024-07-01,91,60,0\n"),
               Contains("weather of W on 2024-07-01"));
    CHECK_THAT(desk.refusal("test,area,date,can,volume_ml\nT1,N,2024-06-01,1,20\n"),
               Contains("a field sheet is not overwritten"));
    CHECK(desk.put("meter,from,to,billed_kgal\nB,2024-07-01,2024-08-01,310\n").added == 1);
    CHECK(desk.put("meter,from,to,billed_kgal\nB,2024-07-01,2024-08-01,310\n").unchanged == 1);
    CHECK_THAT(desk.refusal("meter,from,to,billed_kgal\nB,2024-07-01,2024-08-01,311\n"),
               Contains("310 kgal"));
    ImportOptions o = import_options();
    o.conflicts = ConflictChoice::replace;
    CHECK(desk.put("meter,from,to,billed_kgal\nB,2024-07-01,2024-08-01,311\n", o).replaced == 1);
    REQUIRE(store::bills(desk.book, "B").size() == 1);
    CHECK(store::bills(desk.book, "B")[0].volume.value == 311);
    desk.put("area,site,name,size_ac,plant,root_depth_in,meter,share\nN,S,North,19,cool_turf,8,B,0.6\n", o);
    CHECK(store::find_area(desk.book, "N")->size.value == 19);
    desk.put("station,date,tmax_f,tmin_f,rain_in\nW,2024-07-01,91,60,0\n", o);
    CHECK(store::weather_days(desk.book, "W", calendar::make_date(2024, 7, 1),
                              calendar::make_date(2024, 7, 1))[0].tmax->in_fahrenheit() == Approx(91));
}

TEST_CASE("exchanges, hour counters and logged volumes", "[exchange][constructed]") {
    Desk desk;
    desk.fill();
    CHECK(desk.put("meter,time,final,first,digits\nB,2024-07-02T08:00,13.5,2,7\n").added == 1);
    CHECK(desk.put("meter,time,final,first,digits\nB,2024-07-02T08:00,13.5,2,7\n").unchanged == 1);
    const auto meter = store::find_meter(desk.book, "B");
    REQUIRE(meter->exchanges.size() == 1);
    CHECK(calendar::format_instant(meter->exchanges[0].at) == "2024-07-02T15:00:00Z");
    CHECK(meter->exchanges[0].digits == 7);
    CHECK(desk.put("meter,site,unit,rated_flow_gpm\nP,S,h,450\n").added == 1);
    CHECK(store::find_meter(desk.book, "P")->rated_flow->text() == "450 gpm");
    CHECK_THAT(desk.refusal("meter,site,unit,rated_flow_gpm\nP2,S,gal,450\n"), Contains("counts hours"));
    const auto r = desk.put("meter,time,minutes,volume\nP,2024-07-02T08:15,15,3\n"
                            "P,2024-07-02,15,4\n");
    CHECK(r.added == 2);
    REQUIRE(r.notes.size() == 1);
    CHECK_THAT(r.notes[0].english(), Contains("1 readings have a date without a time"));
    store::for_each_reading(desk.book, "P", [&](const auto& reading) {
        CHECK(reading.span == std::chrono::minutes{15});
    });
}

// PUBLISHED. FIPS 180-4 test vector, NIST "SHA-256 example": the message "abc".
TEST_CASE("the digest of a file", "[exchange][published]") {
    const Scratch scratch;
    CHECK(sha256_of_file(scratch.write("abc", "abc")) ==
          "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    CHECK_THROWS_AS(sha256_of_file(scratch / "none"), InputError);
}

// The documented example of every table, as it stands in schemas/tables.
TEST_CASE("the documented examples go in", "[exchange][constructed]") {
    const Scratch scratch;
    auto book = store::Book::create(scratch / "b.evenfall");
    const Path folder = Path(EVENFALL_SOURCE_DIR) / "schemas" / "tables";
    std::vector<Path> files;
    for (const char* name : {"areas", "bills", "catches", "exchanges", "findings", "hourly_weather", "meters",
                             "pressures", "readings", "readings_volumes", "sites", "weather", "weather_stations"}) {
        files.push_back(folder / (std::string(name) + ".csv"));
    }
    const auto results = import_files(book, files, import_options());
    require_accepted(results);
    for (const auto& r : results) {
        CAPTURE(r.file);
        CHECK(r.added > 0);
        CHECK(r.notes.empty());
    }
    ImportOptions o = import_options();
    o.map = folder / "map_example.json";
    const std::vector<Path> wide{scratch.write(
        "w.csv", "Read on;Main line;North;Remarks\n05.07.2024 6:00;10.900,5;100,25;\n")};
    CHECK_FALSE(import_files(book, wide, o).front().stored);  // a mark between thousands is a guess
    const std::vector<Path> right{scratch.write(
        "w.csv", "Read on;Main line;North;Remarks\n05.07.2024 6:00;10900,5;-;\n")};
    CHECK(import_files(book, right, o).front().added == 1);
}
