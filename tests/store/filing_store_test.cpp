// SPDX-License-Identifier: GPL-3.0-or-later
// CONSTRUCTED records.
#include "core/store/application_store.h"
#include "core/store/filing_store.h"
#include "core/store/journal_store.h"
#include "core/store/weather_store.h"
#include "tests/exchange/filing_temporary.h"

#include <catch2/catch.hpp>

using Catch::Matchers::Contains;
using namespace evenfall;
using namespace evenfall::store;

namespace {

StoredFiling stored(const std::string& code, char digit) {
    return {code, std::string(64, digit), Direction::received, "S", "{\"evenfall_filing\":1}", "", code + ".zip", "2025-01-01T00:00:00Z", "officer"};
}

const calendar::Instant moment = *calendar::parse_instant("2025-02-01T10:00:00Z");

}  // namespace

TEST_CASE("filings are frozen once", "[store][constructed]") {
    const tests::TemporaryFolder folder;
    auto book = Book::create(folder / "b.evenfall");
    {
        Transaction t(book);
        add_filing(book, stored("F-1", 'a'), {{"invoice", std::string(64, '1')}, {"photo", std::string(64, '2')}});
        add_filing(book, stored("F-2", 'b'), {{"invoice", std::string(64, '1')}});
        t.commit();
    }
    CHECK_THROWS_WITH(add_filing(book, stored("F-1", 'a'), {}), Contains("already"));
    CHECK(filings(book).size() == 2);
    REQUIRE(find_filing(book, std::string(64, 'a')));
    CHECK(find_filing(book, std::string(64, 'a'))->json == "{\"evenfall_filing\":1}");
    CHECK_FALSE(find_filing(book, std::string(64, 'c')));
    CHECK(filings_with(book, {"invoice", std::string(64, '1')}).size() == 2);
    CHECK(filings_with(book, {"photo", std::string(64, '1')}).empty());
    CHECK(journal(book).size() == 2);
    CHECK(book.integrity_problems().empty());
    {
        Transaction t(book);
        add_filing(book, stored("F-3", 'd'), {});
    }  // not committed
    CHECK(filings(book).size() == 2);
}

TEST_CASE("applications keep their history", "[store][constructed]") {
    const tests::TemporaryFolder folder;
    auto book = Book::create(folder / "b.evenfall");
    add_filing(book, stored("F-1", 'a'), {});
    using review::Status;
    const review::Application a{"A-1", "R. Osei", "S", "rebate-sport-heads", "USD", {{std::string(64, 'a'), "both"}},
                                {{moment, "desk", Status::received, "by mail", {}}}};
    add_application(book, a);
    CHECK_THROWS_WITH(add_application(book, a), Contains("already"));
    add_status(book, "A-1", {moment + std::chrono::hours(1), "officer", Status::approved, "", 900.0});
    CHECK_THROWS_WITH(add_status(book, "A-1", {moment, "officer", Status::declined, "", {}}), Contains("approved") && Contains("declined"));
    add_status(book, "A-1", {moment + std::chrono::hours(2), "desk", Status::paid, "cheque 12", 900.0});
    CHECK_THROWS_AS(add_status(book, "A-2", {moment, "x", Status::paid, "", {}}), BookError);
    const auto found = find_application(book, "A-1");
    REQUIRE(found);
    CHECK(found->status() == Status::paid);
    REQUIRE(found->history.size() == 3);
    CHECK(found->history[1].amount == 900.0);
    CHECK(found->history[0].note == "by mail");
    REQUIRE(found->filings.size() == 1);
    CHECK(review::budget_left(1000.0, applications(book, "rebate-sport-heads")) == 100.0);
    CHECK(applications(book, "other").empty());
    const auto entries = journal(book);
    CHECK(entries.size() == 4);
    CHECK(entries.back().who == "desk");
    CHECK_THAT(entries.back().what, Contains("paid"));
}

TEST_CASE("weather comes back as it was typed", "[store][constructed]") {
    const tests::TemporaryFolder folder;
    auto book = Book::create(folder / "b.evenfall");
    add_weather_station(book, {"W", 38.0, {}, {}, {}});
    const weather::SheetUnits us{"f", "langley", "mph", "in", "in"};
    weather::SheetRow day;
    day.date = *calendar::parse_date("2024-05-01");
    day.tmax = 88.3;
    day.rain = 0.0;
    {
        Transaction t(book);
        WeatherWriter writer(book, "W", us, {});
        writer.add(day, false);
        day.tmax = 89.1;
        writer.add(day, true);
        t.commit();
    }
    const auto [units, rows] = typed_weather(book, "W", "2024-01-01", "2024-12-31");
    REQUIRE(rows.size() == 1);
    CHECK(rows[0].tmax == 89.1);
    CHECK(rows[0].rain == 0.0);
    CHECK_FALSE(rows[0].tmin);
    CHECK(units.temperature == "f");
    {
        Transaction t(book);
        WeatherWriter writer(book, "W", {"c", "mj_m2", "m_s", "mm", "mm"}, {});
        day.date += std::chrono::days(1);
        writer.add(day, false);
        t.commit();
    }
    CHECK_THROWS_WITH(typed_weather(book, "W", "2024-01-01", "2024-12-31"), Contains("2024-05-02"));
}
