// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/meter/meter.h"
#include "core/store/book.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// A meter's record in pieces, for looking at millions of readings without holding them.
/// Tests: tests/store/reading_pages_test.cpp
namespace evenfall::store {

/// First and last instant of a meter's readings.
struct RecordSpan {
    calendar::Instant first;
    calendar::Instant last;
};
/// Nothing when the meter has no readings. @throws BookError when it is not in the book
std::optional<RecordSpan> record_span(const Book& book, const std::string& meter);

/// Where a reading stands in the order of the record.
struct ReadingKey {
    calendar::Instant at;
    std::chrono::seconds span{0};
};

/// The keys of readings 0, n, 2n, ... of the record, latest revisions only, in order of time, so
/// that any page can be fetched by one range of the key. One pass over the meter's keys.
struct PageMarks {
    std::vector<ReadingKey> starts;
    std::int64_t count = 0;      ///< readings in all
    std::int64_t page_size = 0;
};
PageMarks page_marks(const Book& book, const std::string& meter, std::int64_t page_size);

/// Up to `limit` readings from `start` on, latest revisions only.
std::vector<meter::Reading> readings_from(const Book& book, const std::string& meter,
                                          const ReadingKey& start, std::int64_t limit);

/// How many readings stand before that instant.
std::int64_t count_readings_before(const Book& book, const std::string& meter, calendar::Instant at);

}  // namespace evenfall::store
