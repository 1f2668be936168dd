// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plain_files.h"

#include "core/input_error.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

// All CONSTRUCTED.
using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using tests::Scratch;

namespace {
template <class Read>
std::string refusal(Read read, const std::string& text) {
    const Scratch folder;
    try {
        static_cast<void>(read(folder.write("t.csv", text)));
    } catch (const InputError& e) {
        return std::to_string(e.issues().size()) + " issues: " + e.what();
    }
    return "accepted";
}
std::string catches_refusal(const std::string& text) { return refusal(read_catches, text); }
std::string weather_refusal(const std::string& text) { return refusal(read_weather, text); }
}  // namespace

TEST_CASE("a grid test from a file with nothing but cans", "[exchange][constructed]") {
    const Scratch folder;
    const auto file = read_catches(folder.write("t.csv",
        "can,x_ft,y_ft,volume_ml,excluded\n1,0,0,21.5,\n2,10,0,0,\n3,0,10,3,knocked over\n"));
    REQUIRE(file.tests.size() == 1);
    const auto& t = file.tests[0];
    CHECK(t.layout == audit::Layout::grid);
    CHECK(t.position_unit.name == "ft");
    CHECK(t.catch_unit == audit::CatchUnit::millilitre);
    REQUIRE(t.catches.size() == 3);
    CHECK(t.catches[0].reading == 21.5);
    CHECK(t.catches[1].reading == 0.0);  // a dry can is a reading
    CHECK(t.catches[2].excluded == "knocked over");
    CHECK(t.catches[2].row == 4);
}

TEST_CASE("layouts are told from the columns", "[exchange][constructed]") {
    const Scratch folder;
    const auto pivot = read_catches(folder.write("p.csv", "can,distance_m,depth_mm\n1,10,5\n"));
    CHECK(pivot.tests[0].layout == audit::Layout::pivot);
    CHECK(pivot.tests[0].catch_unit == audit::CatchUnit::millimetre);
    const auto reel = read_catches(folder.write(
        "r.csv", "can,side,distance_ft,depth_in,lane_spacing_ft,opposite_pulls\n1,left,10,0.5,220,yes\n"
                 "2,right,10,0.5,,\n"));
    CHECK(reel.tests[0].layout == audit::Layout::traveller);
    CHECK(reel.tests[0].opposite_pulls);
    CHECK(reel.tests[0].lane_spacing->value == 220);
    CHECK(reel.tests[0].catches[1].side == audit::Side::right);
    const auto lateral = read_catches(
        folder.write("l.csv", "layout,can,distance_m,depth_mm\nlateral,1,-10,5\nlateral,2,10,6\n"));
    CHECK(lateral.tests[0].layout == audit::Layout::lateral);
    const auto many = read_catches(folder.write(
        "m.csv", "test,can,depth_mm,minutes\nB,1,5,30\nA,1,6,20\nB,2,7,\n"));
    REQUIRE(many.tests.size() == 2);
    CHECK(many.tests[0].code == "B");
    CHECK(many.tests[0].catches.size() == 2);
    CHECK(many.tests[1].minutes == 20.0);
}

TEST_CASE("cans read after every station", "[exchange][constructed]") {
    const Scratch folder;
    const auto file = read_catches(folder.write(
        "s.csv", "can,station,station_minutes,volume_ml\n1,A,10,5\n2,A,,6\n1,B,15,7\n2,B,15,8\n"));
    const auto& t = file.tests[0];
    REQUIRE(t.stations.size() == 2);
    CHECK(t.stations[1].minutes == 15);
    REQUIRE(t.catches.size() == 2);
    CHECK_THAT(t.catches[0].reading, WithinAbs(12, 1e-12));
    CHECK(t.catches[1].by_station.size() == 2);
    CHECK_THAT(catches_refusal("can,station,station_minutes,volume_ml\n1,A,10,5\n1,A,10,5\n"),
               Contains("each can once"));
    CHECK_THAT(catches_refusal("can,station,station_minutes,volume_ml\n1,A,10,5\n2,A,11,5\n"),
               Contains("same minutes"));
}

TEST_CASE("catch sheets with mistakes", "[exchange][constructed]") {
    CHECK_THAT(catches_refusal("can,volume_ml\n1,-2\n"), Contains("row 2, column volume_ml") &&
                                                             Contains("\"-2\"") &&
                                                             Contains("zero or more"));
    CHECK_THAT(catches_refusal("can,volume_ml\n1,2\n1,3\n"), Contains("each can once") &&
                                                                 Contains("row 2"));
    CHECK_THAT(catches_refusal("can,volume_ml\n1,2o\n2,\n,3\n"), Contains("3 issues"));
    CHECK_THAT(catches_refusal("can,volume_l\n1,2\n"), Contains("volume_ml"));
    CHECK_THAT(catches_refusal("can,x_ft,y_m,volume_ml\n1,2,3,4\n"), Contains("x and y in one unit"));
    CHECK_THAT(catches_refusal("can,x_ft,volume_ml\n1,2,3\n"), Contains("both x and y"));
    CHECK_THAT(catches_refusal("can,x_ft,y_ft,volume_ml\n1,,3,4\n"), Contains("column x_ft"));
    CHECK_THAT(catches_refusal("can,side,distance_m,depth_mm\n1,up,3,4\n"), Contains("left or right"));
    CHECK_THAT(catches_refusal("can,minutes,volume_ml\n1,10,4\n2,11,4\n"), Contains("same value"));
    CHECK_THAT(catches_refusal("can,volume_ml\n"), Contains("at least one row"));
    CHECK_THAT(catches_refusal(""), Contains("empty file"));
    CHECK_THAT(catches_refusal("can,volume_ml\n1,2\n2"), Contains("cut short"));
    CHECK_THAT(catches_refusal("can,volume_ml\n1,2\n2,\xFF\n"), Contains("UTF-8"));
    CHECK_THAT(catches_refusal("can,date,volume_ml\n1,2024-06-31,2\n"),
               Contains("2024-06-31") && Contains("a day of the calendar"));
}

TEST_CASE("a weather table in customary units", "[exchange][constructed]") {
    const Scratch folder;
    const auto file = read_weather(folder.write("w.csv",
        "station,date,tmax_f,tmin_f,tdew_f,rs_langley,wind_mph,rain_in,rhmax_percent\n"
        "W,2024-07-02,86,59,50,600,10,0,\nW,2024-07-01,122,32,,,,0.5,100.2\n"));
    CHECK(file.station == "W");
    REQUIRE(file.days.size() == 2);
    CHECK(file.days[0].date == calendar::make_date(2024, 7, 1));
    const auto& d = file.days[1];
    CHECK_THAT(d.tmax->in_celsius(), WithinAbs(30, 1e-9));
    CHECK_THAT(d.solar->in(units::megajoule_per_m2), WithinAbs(600 * 0.041868, 1e-9));
    CHECK_THAT(d.wind->in(units::metre_per_second), WithinAbs(4.4704, 1e-9));
    REQUIRE(d.rain);
    CHECK(d.rain->si() == 0.0);
    CHECK_FALSE(d.rhmax_percent.has_value());
    CHECK_FALSE(file.days[0].wind.has_value());
}

TEST_CASE("weather tables with mistakes", "[exchange][constructed]") {
    CHECK_THAT(weather_refusal("date,tmax_c\n2024-06-31,30\n"), Contains("2024-06-31"));
    CHECK_THAT(weather_refusal("date,tmax_c\n2024-06-30,warm\n"), Contains("\"warm\""));
    CHECK_THAT(weather_refusal("date,tmax_c\n2024-06-30,-6999\n"), Contains("missing value"));
    CHECK_THAT(weather_refusal("date,rain_in\n2024-06-30,-1\n"), Contains("zero or more"));
    CHECK_THAT(weather_refusal("date,tmax_c,tmin_c\n2024-06-30,10,20\n"), Contains("column tmin_c"));
    CHECK_THAT(weather_refusal("date,tmax_c,tmin_f\n2024-06-30,10,20\n"), Contains("one unit"));
    CHECK_THAT(weather_refusal("date,tmax_c\n2024-06-30,1\n2024-06-29,1\n2024-06-30,2\n"),
               Contains("row 4") && Contains("row 2 too"));
    CHECK_THAT(weather_refusal("station,date,tmax_c\nA,2024-06-30,1\nB,2024-06-29,1\n"),
               Contains("one station"));
    CHECK_THAT(weather_refusal("time,tmax_c\n2024-06-30T00:00,1\n"), Contains("daily"));
}
