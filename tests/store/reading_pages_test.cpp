// SPDX-License-Identifier: GPL-3.0-or-later
// Any page of a long record equals the same stretch of the whole record.
#include "core/store/reading_pages.h"

#include "core/store/meter_store.h"
#include "core/store/site_store.h"
#include "tests/support/scratch.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::store;
using evenfall::tests::Scratch;

namespace {

Book book_with_readings(const Scratch& scratch, int count) {
    Book book = Book::create(scratch / "b.evenfall");
    site::Site s;
    s.code = "S1";
    s.name = "one";
    s.latitude = 38.0;
    add_site(book, s, std::nullopt);
    for (const char* code : {"M1", "M2"}) {
        add_meter(book, {code, "S1", units::unit_named<units::Volume>("gal"), 1.0, {}, {}, {}, {}, {}}, std::nullopt);
    }
    const auto m1 = meter_id(book, "M1");
    SQLite::Statement add(book.database(),
                          "INSERT INTO reading (meter, at, span, revision, value, kind) VALUES (?, ?, ?, ?, ?, 1)");
    const auto put = [&add, m1](std::int64_t at, std::int64_t span, int revision, double value) {
        add.bind(1, m1);
        add.bind(2, at);
        add.bind(3, span);
        add.bind(4, revision);
        add.bind(5, value);
        add.exec();
        add.reset();
    };
    for (int i = 0; i < count; ++i) {
        put(3600LL * i, 0, 0, 10.0 * i);
        if (i % 7 == 3) put(3600LL * i, 0, 1, 10.0 * i + 0.5);   // corrected once
        if (i % 7 == 3) put(3600LL * i, 0, 2, 10.0 * i + 0.25);  // and again
        if (i % 11 == 5) put(3600LL * i, 900, 0, 2.0);           // a logged volume at the same instant
    }
    return book;
}

}  // namespace

TEST_CASE("pages of a record put together are the record", "[store][constructed]") {
    const Scratch scratch;
    const Book book = book_with_readings(scratch, 500);
    std::vector<meter::Reading> all;
    for_each_reading(book, "M1", [&all](const meter::Reading& r) { all.push_back(r); });
    for (const std::int64_t size : {1, 7, 64, 1000}) {
        CAPTURE(size);
        const PageMarks marks = page_marks(book, "M1", size);
        CHECK(marks.count == static_cast<std::int64_t>(all.size()));
        std::vector<meter::Reading> joined;
        for (const ReadingKey& start : marks.starts) {
            const auto page = readings_from(book, "M1", start, size);
            joined.insert(joined.end(), page.begin(), page.end());
        }
        CHECK(joined == all);
    }
}

TEST_CASE("the span of a record, and how much stands before a moment", "[store][constructed]") {
    const Scratch scratch;
    const Book book = book_with_readings(scratch, 100);
    const auto span = record_span(book, "M1");
    REQUIRE(span);
    CHECK(span->first.time_since_epoch().count() == 0);
    CHECK(span->last.time_since_epoch().count() == 99 * 3600);
    CHECK(!record_span(book, "M2"));
    CHECK(count_readings_before(book, "M1", span->first) == 0);
    // Hours 0 to 9 and the logged volume at hour 5.
    CHECK(count_readings_before(book, "M1", calendar::Instant{std::chrono::hours{10}}) == 11);
    CHECK_THROWS_AS(record_span(book, "none"), BookError);
}
