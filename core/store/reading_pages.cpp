// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/reading_pages.h"

#include "core/store/database.h"
#include "core/store/meter_store.h"

namespace evenfall::store {
namespace {

std::int64_t seconds_of(calendar::Instant at) { return at.time_since_epoch().count(); }

calendar::Instant instant_in(SQLite::Column column) {
    return calendar::Instant{std::chrono::seconds{column.getInt64()}};
}

}  // namespace

std::optional<RecordSpan> record_span(const Book& book, const std::string& meter) {
    const std::int64_t id = meter_id(book, meter);
    return in_book(book, [&](SQLite::Database& db) -> std::optional<RecordSpan> {
        // Two statements: each one is a single step to an end of the key.
        SQLite::Statement low(db, "SELECT min(at) FROM reading WHERE meter = ?");
        SQLite::Statement high(db, "SELECT max(at) FROM reading WHERE meter = ?");
        low.bind(1, id);
        high.bind(1, id);
        if (!low.executeStep() || low.getColumn(0).isNull() || !high.executeStep()) return std::nullopt;
        return RecordSpan{instant_in(low.getColumn(0)), instant_in(high.getColumn(0))};
    });
}

PageMarks page_marks(const Book& book, const std::string& meter, std::int64_t page_size) {
    const std::int64_t id = meter_id(book, meter);
    return in_book(book, [&](SQLite::Database& db) {
        // Revision 0 of a key is always there, so it stands for the reading whatever replaced it.
        SQLite::Statement rows(db, "SELECT at, span FROM reading WHERE meter = ? AND revision = 0 ORDER BY at, span");
        rows.bind(1, id);
        PageMarks marks;
        marks.page_size = page_size;
        while (rows.executeStep()) {
            if (marks.count % page_size == 0) {
                marks.starts.push_back({instant_in(rows.getColumn(0)),
                                        std::chrono::seconds{rows.getColumn(1).getInt64()}});
            }
            ++marks.count;
        }
        return marks;
    });
}

std::vector<meter::Reading> readings_from(const Book& book, const std::string& meter,
                                          const ReadingKey& start, std::int64_t limit) {
    const std::int64_t id = meter_id(book, meter);
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement rows(
            db,
            "SELECT at, span, value, kind FROM reading r WHERE meter = ?1 AND (at, span) >= (?2, ?3)"
            " AND NOT EXISTS (SELECT 1 FROM reading n WHERE n.meter = r.meter AND n.at = r.at"
            " AND n.span = r.span AND n.revision > r.revision) ORDER BY at, span LIMIT ?4");
        rows.bind(1, id);
        rows.bind(2, seconds_of(start.at));
        rows.bind(3, static_cast<std::int64_t>(start.span.count()));
        rows.bind(4, limit);
        std::vector<meter::Reading> out;
        while (rows.executeStep()) {
            meter::Reading r;
            r.at = instant_in(rows.getColumn(0));
            r.span = std::chrono::seconds{rows.getColumn(1).getInt64()};
            r.value = rows.getColumn(2).getDouble();
            r.kind = static_cast<meter::ReadingKind>(rows.getColumn(3).getInt());
            out.push_back(r);
        }
        return out;
    });
}

std::int64_t count_readings_before(const Book& book, const std::string& meter, calendar::Instant at) {
    const std::int64_t id = meter_id(book, meter);
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement rows(db, "SELECT count(*) FROM reading WHERE meter = ? AND revision = 0 AND at < ?");
        rows.bind(1, id);
        rows.bind(2, seconds_of(at));
        rows.executeStep();
        return rows.getColumn(0).getInt64();
    });
}

}  // namespace evenfall::store
