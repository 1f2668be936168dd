// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/meter_store.h"

#include "core/store/database.h"

#include <memory>
#include <sqlite3.h>
#include <utility>

namespace evenfall::store {
namespace {

using calendar::Instant;

constexpr const char* meter_select =
    "SELECT m.code, s.code, m.unit, m.multiplier, m.digits, p.code, m.installed, m.removed, r.code,"
    " m.rated_flow, m.rated_flow_unit, m.size, m.size_unit, m.id"
    " FROM meter m JOIN site s ON s.id = m.site LEFT JOIN meter p ON p.id = m.parent"
    " LEFT JOIN meter r ON r.id = m.replaces";

/// In order of key and revision: of the rows of one key the last one stands. Telling that here
/// costs nothing; in SQL it would cost a second search for each row.
constexpr const char* reading_select =
    "SELECT at, span, value, kind FROM reading WHERE meter = ?1 AND at BETWEEN ?2 AND ?3"
    " ORDER BY at, span, revision";
/// All of a meter: without the comparison of each row with two ends.
constexpr const char* all_select =
    "SELECT at, span, value, kind FROM reading WHERE meter = ?1 ORDER BY at, span, revision";

meter::Meter meter_alone(SQLite::Statement& row) {
    meter::Meter m{text_in(row.getColumn(0)), text_in(row.getColumn(1)),
                   units::unit_named<units::Volume>(text_in(row.getColumn(2))), 1.0, {}, {}, {}, {}, {}};
    m.multiplier = row.getColumn(3).getDouble();
    if (!row.getColumn(4).isNull()) m.digits = row.getColumn(4).getInt();
    m.parent = text_in(row.getColumn(5));
    m.installed = calendar::parse_date(text_in(row.getColumn(6)));
    m.removed = calendar::parse_date(text_in(row.getColumn(7)));
    m.replaces = text_in(row.getColumn(8));
    m.rated_flow = typed_in<units::Flow>(row, 9);
    m.size = typed_in<units::Length>(row, 11);
    return m;
}

/// Exchanges of the meter that the row of meter_select stands for.
void read_exchanges(SQLite::Database& db, std::int64_t id, meter::Meter& m) {
    SQLite::Statement rows(db, "SELECT at, final_value, first_value, unit, multiplier, digits"
                               " FROM meter_exchange WHERE meter = ? ORDER BY at");
    rows.bind(1, id);
    while (rows.executeStep()) {
        meter::Exchange x;
        x.at = Instant{std::chrono::seconds{rows.getColumn(0).getInt64()}};
        x.final_value = rows.getColumn(1).getDouble();
        x.first_value = rows.getColumn(2).getDouble();
        const std::string unit = text_in(rows.getColumn(3));
        if (!unit.empty()) x.unit = units::unit_named<units::Volume>(unit);
        x.multiplier = number_in(rows.getColumn(4));
        if (!rows.getColumn(5).isNull()) x.digits = rows.getColumn(5).getInt();
        m.exchanges.push_back(std::move(x));
    }
}

meter::Meter meter_in(SQLite::Database& db, SQLite::Statement& row) {
    meter::Meter m = meter_alone(row);
    read_exchanges(db, row.getColumn(13).getInt64(), m);
    return m;
}

void bind_meter(const Book& book, SQLite::Statement& to, const meter::Meter& m,
                std::optional<std::int64_t> import) {
    to.bind(1, m.code);
    to.bind(2, required_id(book, "site", m.site));
    to.bind(3, std::string(m.unit.name));
    to.bind(4, m.multiplier);
    if (m.digits) to.bind(5, *m.digits);
    else to.bind(5);
    bind_id(to, 6, optional_id(book, "meter", m.parent));
    bind_text(to, 7, m.installed ? calendar::format_date(*m.installed) : "");
    bind_text(to, 8, m.removed ? calendar::format_date(*m.removed) : "");
    bind_id(to, 9, optional_id(book, "meter", m.replaces));
    bind_id(to, 10, import);
    bind_typed(to, 11, m.rated_flow);
    bind_typed(to, 13, m.size);
}

/// Calls `take` with the latest revision of each reading. The plain C interface, since this runs
/// once for each row of a book and the wrapper counts references for each value.
/// @param ends  first and last instant; nothing: all
template <class Take>
void scan_readings(const Book& book, std::int64_t meter,
                   std::optional<std::pair<std::int64_t, std::int64_t>> ends, Take&& take) {
    sqlite3* handle = book.database().getHandle();
    sqlite3_stmt* raw = nullptr;
    const int prepared = sqlite3_prepare_v2(handle, ends ? reading_select : all_select, -1, &raw, nullptr);
    const std::unique_ptr<sqlite3_stmt, decltype(&sqlite3_finalize)> rows(raw, &sqlite3_finalize);
    int result = prepared;
    std::optional<meter::Reading> last;
    if (prepared == SQLITE_OK) {
        sqlite3_bind_int64(raw, 1, meter);
        if (ends) {
            sqlite3_bind_int64(raw, 2, ends->first);
            sqlite3_bind_int64(raw, 3, ends->second);
        }
        while ((result = sqlite3_step(raw)) == SQLITE_ROW) {
            const meter::Reading next{Instant{std::chrono::seconds{sqlite3_column_int64(raw, 0)}},
                                      std::chrono::seconds{sqlite3_column_int64(raw, 1)},
                                      sqlite3_column_double(raw, 2),
                                      static_cast<meter::ReadingKind>(sqlite3_column_int(raw, 3))};
            if (last && (last->at != next.at || last->span != next.span)) take(*last);
            last = next;
        }
    }
    if (result != SQLITE_DONE) {
        throw BookError({phrase("store", "The book %1 could not be read: %2."), book.file().string(),
                         sqlite_words(sqlite3_errmsg(handle))});
    }
    if (last) take(*last);
}

/// The neighbour of an instant, by "max(at) … at < ?" or the like; `fallback` when there is none.
std::int64_t neighbour(SQLite::Database& db, const char* sql, std::int64_t meter, std::int64_t at) {
    SQLite::Statement find(db, sql);
    find.bind(1, meter);
    find.bind(2, at);
    find.executeStep();
    return find.getColumn(0).isNull() ? at : find.getColumn(0).getInt64();
}

}  // namespace

std::vector<meter::Meter> meters(const Book& book, const std::string& site) {
    return in_book(book, [&](SQLite::Database& db) {
        const char* const of_site = site.empty() ? "" : " WHERE s.code = ?";
        return records(db, std::string(meter_select) + of_site + " ORDER BY m.code", site,
                       [&](SQLite::Statement& row) { return meter_in(db, row); });
    });
}

std::optional<meter::Meter> find_meter(const Book& book, const std::string& code) {
    return in_book(book, [&](SQLite::Database& db) {
        return record(db, std::string(meter_select) + " WHERE m.code = ?", code,
                      [&](SQLite::Statement& row) { return meter_in(db, row); });
    });
}

void add_meter(Book& book, const meter::Meter& meter, std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO meter (code, site, unit, multiplier, digits, parent,"
                                  " installed, removed, replaces, import, rated_flow, rated_flow_unit,"
                                  " size, size_unit) VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?)");
        bind_meter(book, add, meter, import);
        add.exec();
    });
}

void replace_meter(Book& book, const meter::Meter& meter, std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement set(db, "UPDATE meter SET site=?2, unit=?3, multiplier=?4, digits=?5, parent=?6,"
                                  " installed=?7, removed=?8, replaces=?9, import=?10, rated_flow=?11,"
                                  " rated_flow_unit=?12, size=?13, size_unit=?14 WHERE code=?1");
        bind_meter(book, set, meter, import);
        set.exec();
    });
}

void add_exchange(Book& book, const std::string& meter, const meter::Exchange& x,
                  std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO meter_exchange (meter, at, final_value, first_value,"
                                  " unit, multiplier, digits, import) VALUES (?,?,?,?,?,?,?,?)");
        add.bind(1, required_id(book, "meter", meter));
        add.bind(2, static_cast<std::int64_t>(x.at.time_since_epoch().count()));
        add.bind(3, x.final_value);
        add.bind(4, x.first_value);
        bind_text(add, 5, x.unit ? std::string(x.unit->name) : "");
        bind_number(add, 6, x.multiplier);
        if (x.digits) add.bind(7, *x.digits);
        else add.bind(7);
        bind_id(add, 8, import);
        add.exec();
    });
}

std::int64_t meter_id(const Book& book, const std::string& code) {
    return in_book(book, [&](SQLite::Database&) { return required_id(book, "meter", code); });
}

std::vector<meter::Reading> readings_around(const Book& book, const std::string& meter, Instant from,
                                            Instant to) {
    return in_book(book, [&](SQLite::Database& db) {
        const std::int64_t id = required_id(book, "meter", meter);
        const std::int64_t first =
            neighbour(db, "SELECT max(at) FROM reading WHERE meter = ? AND at < ?", id,
                      from.time_since_epoch().count());
        const std::int64_t last =
            neighbour(db, "SELECT min(at) FROM reading WHERE meter = ? AND at > ?", id,
                      to.time_since_epoch().count());
        std::vector<meter::Reading> all;
        scan_readings(book, id, std::pair(first, last), [&](const meter::Reading& r) { all.push_back(r); });
        return all;
    });
}

void for_each_reading(const Book& book, const std::string& meter,
                      const std::function<void(const meter::Reading&)>& take) {
    const std::int64_t id = meter_id(book, meter);
    scan_readings(book, id, std::nullopt, take);
}

std::vector<meter::Reading> all_readings(const Book& book, const std::string& meter) {
    const std::int64_t id = meter_id(book, meter);
    std::vector<meter::Reading> all;
    all.reserve(1024);
    scan_readings(book, id, std::nullopt, [&](const meter::Reading& r) { all.push_back(r); });
    return all;
}

std::int64_t count_readings(const Book& book, const std::string& meter) {
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement rows(db, "SELECT count(*) FROM reading WHERE meter = ? AND revision = 0");
        rows.bind(1, required_id(book, "meter", meter));
        rows.executeStep();
        return rows.getColumn(0).getInt64();
    });
}

}  // namespace evenfall::store
