// SPDX-License-Identifier: GPL-3.0-or-later
// Season, portfolio and schedule from a small book, as the command line answers them.
#include "tests/support/command_line.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using evenfall::tests::Answer;
using evenfall::tests::Scratch;
using Json = nlohmann::json;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

Answer run(const std::vector<std::string>& arguments) { return evenfall::tests::evenfall(arguments); }

/// One acre, 0.2 in of ETo on each day of June 2024, coefficient 0.8, 200,000 gal, a timed test.
std::string small_book(const Scratch& scratch) {
    std::string weather = "station,date,eto_in,rain_in\n";
    for (int day = 1; day <= 30; ++day) {
        weather += "W,2024-06-" + std::string(day < 10 ? "0" : "") + std::to_string(day) + ",0.2,0\n";
    }
    const std::vector<std::pair<std::string, std::string>> tables{
        {"sites.csv", "site,name,latitude,elevation_ft,weather\nS,One,38.5,60,W\n"},
        {"meters.csv", "meter,site,unit\nM,S,gal\n"},
        {"areas.csv", "area,site,size_ac,coefficient,head_type,soil,slope_percent,meter\n"
                      "A,S,1,0.8,rotor,clay loam,5,M\n"},
        {"weather.csv", weather},
        {"readings.csv", "meter,time,register\nM,2024-06-01T00:00Z,1000\nM,2024-07-01T00:00Z,201000\n"},
        {"catches.csv", "test,area,date,minutes,can,x_ft,y_ft,depth_in\n"
                        "T,A,2024-05-20,30,1,0,0,0.2\nT,,,,2,10,0,0.4\nT,,,,3,20,0,0.4\nT,,,,4,30,0,0.6\n"},
        {"prices.csv", "rate,from,unit,currency,tier_up_to,price,fixed_per_month\n"
                       "R,2024-01-01,kgal,USD,150,3,7\nR,2024-01-01,kgal,USD,,10,7\n"},
        {"pumps.csv", "pump,site,lift_ft,efficiency\nP,S,100,0.5\n"},
        {"energy.csv", "rate,from,currency,price_per_kwh\nE,2024-01-01,USD,0.2\n"}};
    const std::string book = (scratch / "b.evenfall").string();
    REQUIRE(run({"new", book}).status == 0);
    std::vector<std::string> arguments{"import", book};
    for (const auto& [name, text] : tables) arguments.push_back(scratch.write(name, text).string());
    const auto answer = run(arguments);
    CAPTURE(answer.err);
    REQUIRE(answer.status == 0);
    return book;
}

}  // namespace

// DERIVED by hand as in tests/budget: need 4.8 acre inches, bill 957, 125.72 kWh.
TEST_CASE("a season carries money, energy, both accounts and their intervals", "[app][derived]") {
    const Scratch scratch;
    const auto book = small_book(scratch);
    const auto answer = run({"season", book, "--site", "S", "--from", "2024-06", "--to", "2024-06", "--json"});
    REQUIRE(answer.status == 0);
    const Json json = Json::parse(answer.out);
    const double need = 4.8 * 27154.285714285714;
    CHECK_THAT(json["total"]["need_gal"].get<double>(), WithinAbs(need, 1e-5));
    CHECK_THAT(json["cost"]["total"]["bill"].get<double>(), WithinAbs(957.0, 1e-9));
    CHECK_THAT(json["cost"]["total"]["energy_kwh"].get<double>(), WithinAbs(125.7205, 5e-5));
    double sum = 0.0;
    for (const auto& [key, value] : json["total"]["waste_by_cans"].items()) {
        if (key != "short_gal") sum += value.get<double>();
    }
    CHECK_THAT(sum, WithinAbs(200000.0, 1e-4));
    const auto& interval = json["intervals"]["total"]["need_gal"];
    CHECK(interval[0].get<double>() < need);
    CHECK(interval[1].get<double>() > need);
    CHECK(json["intervals"]["total"]["waste_by_cans"].is_object());
    // The same question has the same answer, to the last digit.
    CHECK(run({"season", book, "--site", "S", "--from", "2024-06", "--to", "2024-06", "--json"}).out ==
          answer.out);
    const auto text = run({"season", book, "--site", "S", "--from", "2024-06", "--to", "2024-06"});
    CHECK_THAT(text.out, Contains("Water bill 957.00 USD"));
}

TEST_CASE("a portfolio ranks, and tells which site it could not compute", "[app]") {
    const Scratch scratch;
    const auto book = small_book(scratch);
    const auto file = scratch.write("more.csv", "area,site,size_ac,coefficient,meter,share\nB,S,1,0.8,M,1\n"
                                                "C,S,1,0.8,M,1\n");
    const auto before = run({"portfolio", book, "--from", "2024-06", "--to", "2024-06", "--json"});
    REQUIRE(before.status == 0);
    const Json json = Json::parse(before.out);
    REQUIRE(json["sites"].size() == 1);
    CHECK(json["sites"][0]["rank"] == 1);
    CHECK(json["sites"][0]["avoidable_money"].get<double>() > 0.0);
    CHECK(json["not_computed"].empty());
    REQUIRE(run({"import", book, file.string()}).status == 0);
    const Json after =
        Json::parse(run({"portfolio", book, "--from", "2024-06", "--to", "2024-06", "--json"}).out);
    CHECK(after["sites"].empty());
    REQUIRE(after["not_computed"].size() == 1);
    CHECK(after["not_computed"][0]["site"] == "S");
}

// DERIVED. Need 4.8 in over 30 days of June 2025: 1.12 in net and x 4/3 = 1.493 in gross a week, at the
// test's net rate of 0.8 in/h (mean 0.4 in of 30 min).
TEST_CASE("a base schedule from a catch test, as text, table and calendar", "[app][derived]") {
    const Scratch scratch;
    const auto book = small_book(scratch);
    const auto ics = (scratch / "s.ics").string();
    const auto csv = (scratch / "s.csv").string();
    const auto answer = run({"schedule", book, "--site", "S", "--from", "2024-06", "--to", "2024-06",
                             "--days", "mon,wed,fri,sun", "--window", "22:00-06:00", "--calendar", ics,
                             "--csv", csv, "--json"});
    CAPTURE(answer.err);
    REQUIRE(answer.status == 0);
    const Json json = Json::parse(answer.out);
    REQUIRE(json["months"].size() == 1);
    CHECK(json["months"][0]["month"] == "2025-06");
    const auto& station = json["months"][0]["stations"][0];
    CHECK(station["station"] == "A");
    CHECK_THAT(station["rate_in_h"].get<double>(), WithinRel(0.8, 1e-9));
    CHECK_THAT(station["gross_in_week"].get<double>(), WithinRel(1.12 * 4 / 3, 1e-9));
    const double put_down = station["minutes_a_week"].get<double>() / 60.0 * 0.8;
    CHECK(put_down >= 1.12 * 4 / 3 - 1e-6);
    CHECK(put_down < 1.12 * 4 / 3 + 0.3);
    CHECK_THAT(evenfall::tests::bytes_of(ics), Contains("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"));
    CHECK_THAT(evenfall::tests::bytes_of(csv), Contains("2025-06,A,A,0.800"));

    CHECK(run({"schedule", book, "--site", "S", "--from", "2024-06", "--to", "2024-06", "--days", "mon"}).status == 2);
    CHECK(run({"schedule", book, "--site", "S", "--from", "2024-06", "--to", "2024-06", "--days", "moon",
               "--window", "22:00-06:00"}).status == 3);
    CHECK(run({"schedule", book, "--site", "S", "--from", "2024-01", "--to", "2024-02"}).status == 3);
    // Without days and window there is no time to start at.
    CHECK(run({"schedule", book, "--site", "S", "--from", "2024-06", "--to", "2024-06", "--calendar", ics})
              .status == 3);
    CHECK(run({"schedule", book, "--site", "S", "--from", "2024-06", "--to", "2024-06"}).status == 0);
}
