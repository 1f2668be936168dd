// SPDX-License-Identifier: GPL-3.0-or-later
// Two rows about the same time. All CONSTRUCTED.
#include "core/store/hour_store.h"
#include "core/store/weather_store.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::store;
using evenfall::tests::Scratch;
using Outcome = WeatherWriter::Outcome;
using Catch::Matchers::WithinAbs;

namespace {

const calendar::Date day = calendar::make_date(2024, 7, 1);

Book book_with_station(const Scratch& scratch) {
    Book book = Book::create(scratch / "b.evenfall");
    add_weather_station(book, {"W", 38.5, {}, {}, {}});
    return book;
}

weather::SheetRow row() {
    weather::SheetRow r;
    r.date = day;
    return r;
}

weather::WeatherDay stored(const Book& book) {
    const auto days = weather_days(book, "W", day, day);
    REQUIRE(days.size() == 1);
    return days.front();
}

}  // namespace

TEST_CASE("a row with columns that a day does not have completes it", "[store][constructed]") {
    const Scratch scratch;
    Book book = book_with_station(scratch);
    auto warm = row();
    warm.tmax = 86.0;
    warm.tmin = 59.0;
    auto wet = row();
    wet.rain = 12.5;
    WeatherWriter temperatures(book, "W", {"f", "", "", "", ""}, std::nullopt);
    // The header of the rain gauge's file names a temperature column that is empty.
    WeatherWriter rain(book, "W", {"c", "", "", "mm", ""}, std::nullopt);
    const auto check_both = [&] {
        const auto d = stored(book);
        CHECK_THAT(d.tmax->in_celsius(), WithinAbs(30.0, 1e-9));
        CHECK_THAT(d.rain->in(units::millimetre), WithinAbs(12.5, 1e-9));
        CHECK(temperatures.add(warm, false) == Outcome::unchanged);
        CHECK(rain.add(wet, false) == Outcome::unchanged);
    };
    SECTION("temperatures first") {
        CHECK(temperatures.add(warm, false) == Outcome::added);
        CHECK(rain.add(wet, false) == Outcome::completed);
        check_both();
    }
    SECTION("rain first") {
        CHECK(rain.add(wet, false) == Outcome::added);
        CHECK(temperatures.add(warm, false) == Outcome::completed);
        check_both();
    }
    CHECK(book.integrity_problems().empty());
}

TEST_CASE("another value is a conflict even where other columns would complete the day", "[store][constructed]") {
    const Scratch scratch;
    Book book = book_with_station(scratch);
    auto first = row();
    first.tmax = 86.0;
    first.tmin = 59.0;
    auto second = row();
    second.tmax = 87.0;
    second.rain = 0.2;
    WeatherWriter writer(book, "W", {"f", "", "", "in", ""}, std::nullopt);
    CHECK(writer.add(first, false) == Outcome::added);
    CHECK(writer.add(second, false) == Outcome::conflict);
    CHECK(writer.in_book() == "tmax 86 f");
    CHECK(writer.in_row() == "tmax 87 f");
    CHECK_FALSE(stored(book).rain.has_value());
    CHECK(writer.add(second, true) == Outcome::conflict);
    CHECK(stored(book).tmax->in_fahrenheit() == Approx(87.0));
    CHECK(stored(book).tmin->in_fahrenheit() == Approx(59.0));  // what nobody contradicted stays
    CHECK(stored(book).rain.has_value());
}

TEST_CASE("one row keeps one unit for its temperatures", "[store][constructed]") {
    const Scratch scratch;
    Book book = book_with_station(scratch);
    auto first = row();
    first.tmax = 86.0;
    auto second = row();
    second.tdew = 10.0;
    WeatherWriter fahrenheit(book, "W", {"f", "", "", "", ""}, std::nullopt);
    WeatherWriter celsius(book, "W", {"c", "", "", "", ""}, std::nullopt);
    CHECK(fahrenheit.add(first, false) == Outcome::added);
    CHECK(celsius.add(second, false) == Outcome::conflict);
    CHECK(celsius.in_book() == "tdew not recorded, its like in f");
    CHECK(celsius.in_row() == "tdew 10 c");
    CHECK(celsius.add(second, true) == Outcome::conflict);
    CHECK_FALSE(stored(book).tmax.has_value());
    CHECK_THAT(stored(book).tdew->in_celsius(), WithinAbs(10.0, 1e-12));
}

TEST_CASE("hours in the book", "[store][constructed]") {
    const Scratch scratch;
    Book book = book_with_station(scratch);
    const auto at = [](int hour) { return calendar::Instant{day} + std::chrono::hours{hour}; };
    weather::SheetHour hour;
    hour.start = at(3);
    hour.temperature = 68.0;
    hour.solar = 500.0;
    using Hour = HourWriter::Outcome;
    HourWriter writer(book, "W", {"f", "w_m2", "", "in", ""}, std::nullopt);
    CHECK(writer.add(hour, false) == Hour::added);
    CHECK(writer.add(hour, false) == Hour::unchanged);
    weather::SheetHour rain;
    rain.start = at(3);
    rain.rain = 0.1;
    CHECK(writer.add(rain, false) == Hour::completed);
    hour.temperature = 70.0;
    CHECK(writer.add(hour, false) == Hour::conflict);
    CHECK(writer.in_row() == "temperature 70 f");
    CHECK(writer.add(hour, true) == Hour::conflict);
    hour.start = at(3) + std::chrono::minutes{30};
    CHECK(writer.add(hour, false) == Hour::overlaps);
    hour.start = at(2) + std::chrono::minutes{30};
    CHECK(writer.add(hour, false) == Hour::overlaps);
    hour.start = at(3);
    hour.length = std::chrono::minutes{30};
    CHECK(writer.add(hour, false) == Hour::overlaps);
    hour.length = std::chrono::hours{1};
    hour.start = at(4);
    CHECK(writer.add(hour, false) == Hour::added);
    const auto hours = weather_hours(book, "W", at(3), at(5));
    REQUIRE(hours.size() == 2);
    CHECK(hours[0].start == at(3));
    CHECK_THAT(hours[0].temperature->in_fahrenheit(), WithinAbs(70.0, 1e-9));
    CHECK_THAT(hours[0].rain->in(units::inch), WithinAbs(0.1, 1e-12));
    // 500 W/m2 over an hour are 1.8 MJ/m2.
    CHECK_THAT(hours[0].solar->in(units::megajoule_per_m2), WithinAbs(1.8, 1e-12));
    CHECK(weather_hours(book, "W", at(4), at(5)).size() == 1);
    CHECK(weather_hours(book, "nowhere", at(0), at(24)).empty());
    CHECK(book.integrity_problems().empty());
}
