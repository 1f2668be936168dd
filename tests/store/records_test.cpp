// SPDX-License-Identifier: GPL-3.0-or-later
// What goes into the book comes out of it as it was typed.
#include "core/store/catch_test_store.h"
#include "core/store/journal_store.h"
#include "core/store/meter_store.h"
#include "core/store/site_store.h"
#include "core/store/weather_store.h"

#include "tests/support/scratch.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::store;
using evenfall::tests::Scratch;

namespace {

site::Site some_site() {
    site::Site s;
    s.code = "S1";
    s.name = "Sëdge \"home\"";
    s.latitude = 38.5;
    s.elevation = units::parse_measure<units::Length>("62ft");
    s.time_zone = "PST8PDT,M3.2.0,M11.1.0";
    s.weather = "W1";
    return s;
}

meter::Meter some_meter(const std::string& code) {
    meter::Meter m{code, "S1", units::unit_named<units::Volume>("ccf"), 1.0, 5, {}, {}, {}, {}};
    m.installed = calendar::make_date(2020, 1, 15);
    return m;
}

Book book_with_site(const Scratch& scratch) {
    Book book = Book::create(scratch / "b.evenfall");
    add_site(book, some_site(), std::nullopt);
    return book;
}

}  // namespace

TEST_CASE("a site and its areas", "[store]") {
    const Scratch scratch;
    Book book = book_with_site(scratch);
    add_meter(book, some_meter("M1"), std::nullopt);
    site::Area a;
    a.code = "A1";
    a.site = "S1";
    a.size = units::parse_measure<units::Area>("18.4ac");
    a.meter = "M1";
    a.share = 0.0;  // zero is a value, not an absence
    add_area(book, a, std::nullopt);

    const auto site = find_site(book, "S1");
    REQUIRE(site);
    CHECK(site->name == "Sëdge \"home\"");
    CHECK(site->elevation->text() == "62 ft");
    CHECK_FALSE(site->longitude.has_value());
    const auto found = areas(book, "S1");
    REQUIRE(found.size() == 1);
    CHECK(found[0].size.text() == "18.4 ac");
    CHECK(found[0].share == 0.0);
    CHECK_FALSE(found[0].coefficient.has_value());
    CHECK(found[0].meter == "M1");

    a.meter = "nowhere";
    a.code = "A2";
    CHECK_THROWS_WITH(add_area(book, a, std::nullopt), Catch::Contains("no meter \"nowhere\""));
    CHECK_THROWS_AS(add_site(book, some_site(), std::nullopt), BookError);
}

TEST_CASE("a meter with its register, parent and predecessor", "[store]") {
    const Scratch scratch;
    Book book = book_with_site(scratch);
    add_meter(book, some_meter("M1"), std::nullopt);
    auto second = some_meter("M2");
    second.replaces = "M1";
    second.parent = "M1";
    add_meter(book, second, std::nullopt);
    const auto found = find_meter(book, "M2");
    REQUIRE(found);
    CHECK(found->unit.name == "ccf");
    CHECK(found->digits == 5);
    CHECK(found->replaces == "M1");
    CHECK(found->parent == "M1");
    CHECK(found->installed == calendar::make_date(2020, 1, 15));
    CHECK_FALSE(found->removed.has_value());
}

TEST_CASE("readings come in order, latest revision only, with a neighbour on each side", "[store]") {
    const Scratch scratch;
    Book book = book_with_site(scratch);
    add_meter(book, some_meter("M1"), std::nullopt);
    book.database().exec("INSERT INTO reading (meter, at, span, revision, value, kind) VALUES"
                         " (1, 100, 0, 0, 10, 1), (1, 200, 0, 0, 20, 1), (1, 200, 0, 1, 21, 3),"
                         " (1, 300, 0, 0, 30, 2), (1, 400, 0, 0, 40, 1), (1, 500, 0, 0, 50, 1)");
    const auto at = [](int s) { return calendar::Instant{std::chrono::seconds{s}}; };
    const auto some = readings_around(book, "M1", at(250), at(350));
    REQUIRE(some.size() == 3);
    CHECK(some[0].value == 21.0);
    CHECK(some[0].kind == meter::ReadingKind::corrected);
    CHECK(some[1].at == at(300));
    CHECK(some[2].value == 40.0);
    CHECK(readings_around(book, "M1", at(0), at(1000)).size() == 5);
    CHECK(count_readings(book, "M1") == 5);
    std::vector<double> seen;
    for_each_reading(book, "M1", [&](const meter::Reading& r) { seen.push_back(r.value); });
    CHECK(seen == std::vector<double>{10, 21, 30, 40, 50});
}

TEST_CASE("weather keeps its units, finds conflicts and corrects by revision", "[store]") {
    const Scratch scratch;
    Book book = book_with_site(scratch);
    add_weather_station(book, {"W1", 38.5, {}, {}, 3.0});
    const weather::SheetUnits units{"f", "langley", "mph", "in", ""};
    weather::SheetRow row;
    row.date = calendar::make_date(2024, 7, 1);
    row.tmax = 212.0;
    row.rain = 0.0;
    {
        WeatherWriter writer(book, "W1", units, std::nullopt);
        CHECK(writer.add(row, false) == WeatherWriter::Outcome::added);
        CHECK(writer.add(row, false) == WeatherWriter::Outcome::unchanged);
        row.tmax = 95.0;
        CHECK(writer.add(row, false) == WeatherWriter::Outcome::conflict);
    }
    auto days = weather_days(book, "W1", row.date, row.date);
    REQUIRE(days.size() == 1);
    CHECK(days[0].tmax->in_celsius() == 100.0);
    CHECK(days[0].rain->si() == 0.0);
    CHECK_FALSE(days[0].wind.has_value());
    {
        WeatherWriter writer(book, "W1", units, std::nullopt);
        CHECK(writer.add(row, true) == WeatherWriter::Outcome::conflict);
    }
    days = weather_days(book, "W1", row.date, row.date);
    REQUIRE(days.size() == 1);
    CHECK(days[0].tmax->in_celsius() == 35.0);
    CHECK(weather_days(book, "nowhere", row.date, row.date).empty());
}

TEST_CASE("a catch test with stations and an excluded can", "[store]") {
    const Scratch scratch;
    Book book = book_with_site(scratch);
    site::Area a;
    a.code = "A1";
    a.site = "S1";
    a.size = units::parse_measure<units::Area>("1ac");
    add_area(book, a, std::nullopt);
    audit::CatchTest test;
    test.code = "T1";
    test.area = "A1";
    test.date = calendar::make_date(2025, 5, 14);
    test.throat_area = units::parse_measure<units::Area>("16.61in2");
    test.minutes = 20.0;
    test.position_unit = units::unit_named<units::Length>("ft");
    test.stations = {{"B", 10.0}, {"A", 10.0}};
    audit::Catch can;
    can.can = "1";
    can.x = 0.0;
    can.y = 4.5;
    can.reading = 40.0;
    can.by_station = {{"B", 15.0}, {"A", 25.0}};
    test.catches.push_back(can);
    can.can = "2";
    can.excluded = "knocked over";
    can.by_station.clear();
    test.catches.push_back(can);
    add_catch_test(book, test, std::nullopt);

    const auto found = find_catch_test(book, "T1");
    REQUIRE(found);
    CHECK(found->throat_area->text() == "16.61 in2");
    CHECK_FALSE(found->wind.has_value());
    REQUIRE(found->catches.size() == 2);
    CHECK(found->catches[0].x == 0.0);
    CHECK_FALSE(found->catches[0].distance.has_value());
    REQUIRE(found->catches[0].by_station.size() == 2);
    CHECK(found->catches[0].by_station[0].station == "B");
    CHECK(found->catches[1].excluded == "knocked over");
    CHECK(catch_tests_of_site(book, "S1").size() == 1);
    CHECK(catch_test_codes(book, "A1") == std::vector<std::string>{"T1"});
}

TEST_CASE("the journal and the list of imports", "[store]") {
    const Scratch scratch;
    Book book = book_with_site(scratch);
    add_journal_entry(book, {"2025-01-01T00:00:00Z", "kim", "Site S1 was renamed.", "site S1", "{}"});
    const auto import = add_import(book, {"a.csv", "sites", "00", "2025-01-01T00:00:00Z", 0});
    set_import_added(book, import, 7);
    REQUIRE(journal(book).size() == 1);
    CHECK(journal(book)[0].who == "kim");
    REQUIRE(imports(book).size() == 1);
    CHECK(imports(book)[0].added == 7);
    CHECK(book.integrity_problems().empty());
}
