// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/hour_store.h"

#include "core/store/typed_cells.h"

#include <array>
#include <utility>

namespace evenfall::store {
namespace {

using weather::SheetHour;
using weather::SheetUnits;

constexpr std::size_t columns_of_hour = 7;
using Cells = TypedCells<columns_of_hour>;
/// In the order of the table's columns from temperature on.
constexpr std::array<std::optional<double> SheetHour::*, columns_of_hour> members{
    &SheetHour::temperature, &SheetHour::tdew, &SheetHour::rh_percent, &SheetHour::ea_kpa,
    &SheetHour::solar,       &SheetHour::wind, &SheetHour::rain};
constexpr std::array<CellColumn, columns_of_hour> columns{
    CellColumn{"temperature", &SheetUnits::temperature}, {"tdew", &SheetUnits::temperature},
    {"rh", nullptr},                                     {"ea_kpa", nullptr},
    {"solar", &SheetUnits::radiation},                   {"wind", &SheetUnits::wind},
    {"rain", &SheetUnits::rain}};
constexpr std::int64_t longest_period = 3600;

std::int64_t seconds_of(calendar::Instant at) { return static_cast<std::int64_t>(at.time_since_epoch().count()); }

/// From the columns start, seconds and the values, which begin at `first`.
SheetHour hour_in(SQLite::Statement& rows, int first) {
    SheetHour hour;
    hour.start = calendar::Instant{std::chrono::seconds{rows.getColumn(0).getInt64()}};
    hour.length = std::chrono::seconds{rows.getColumn(1).getInt64()};
    const auto values = values_in<columns_of_hour>(rows, first);
    for (std::size_t i = 0; i < members.size(); ++i) hour.*members[i] = values[i];
    return hour;
}

}  // namespace

void for_each_typed_hour(const Book& book,
                         const std::function<void(const std::string&, const SheetUnits&, const SheetHour&)>& take) {
    in_book(book, [&](SQLite::Database& db) {
        UnitSets units(db);
        SQLite::Statement rows(db, "SELECT start, seconds, units, s.code, " + names_of(columns) +
                                       " FROM weather_station s JOIN weather_hour h ON h.station = s.id"
                                       " WHERE NOT EXISTS (SELECT 1 FROM weather_hour n WHERE n.station = h.station"
                                       " AND n.start = h.start AND n.revision > h.revision) ORDER BY s.code, start");
        while (rows.executeStep()) {
            take(text_in(rows.getColumn(3)), units.of(rows.getColumn(2).getInt64()), hour_in(rows, 4));
        }
    });
}

std::vector<weather::WeatherHour> weather_hours(const Book& book, const std::string& station,
                                                calendar::Instant from, calendar::Instant to) {
    return in_book(book, [&](SQLite::Database& db) {
        std::vector<weather::WeatherHour> all;
        const auto id = id_of(db, "weather_station", station);
        if (!id) return all;
        UnitSets units(db);
        // In order of revision: of the rows of one start the last one stands.
        SQLite::Statement rows(db, "SELECT start, seconds, units, " + names_of(columns) +
                                       " FROM weather_hour WHERE station = ? AND start >= ? AND start < ?"
                                       " ORDER BY start, revision");
        rows.bind(1, *id);
        rows.bind(2, seconds_of(from));
        rows.bind(3, seconds_of(to));
        while (rows.executeStep()) {
            const SheetHour hour = hour_in(rows, 3);
            if (!all.empty() && all.back().start == hour.start) all.pop_back();
            all.push_back(weather::converted(hour, units.of(rows.getColumn(2).getInt64())));
        }
        return all;
    });
}

struct HourWriter::Impl {
    Impl(Book& book, const std::string& code, SheetUnits sheet, std::optional<std::int64_t> from)
        : station(required_id(book, "weather_station", code)),
          units(std::move(sheet)),
          import(from),
          sets(book.database()),
          near(book.database(), "SELECT start, seconds FROM weather_hour"
                                " WHERE station=? AND start > ? AND start < ? ORDER BY start"),
          find(book.database(), "SELECT revision, units, " + names_of(columns) +
                                    " FROM weather_hour WHERE station=? AND start=? ORDER BY revision DESC"),
          insert(book.database(), "INSERT INTO weather_hour (station, start, revision, seconds, units, " +
                                      names_of(columns) + ", import) VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?)") {}

    /// Whether a period other than one with this start and length has a moment in common with it.
    bool overlaps(const SheetHour& row) {
        const std::int64_t start = seconds_of(row.start);
        const std::int64_t length = row.length.count();
        near.reset();
        near.bind(1, station);
        near.bind(2, start - longest_period);
        near.bind(3, start + length);
        while (near.executeStep()) {
            const std::int64_t other = near.getColumn(0).getInt64();
            const std::int64_t other_length = near.getColumn(1).getInt64();
            if (other == start ? other_length != length : other + other_length > start) return true;
        }
        return false;
    }

    void store(std::int64_t start, std::int64_t length, const Cells& cells, int revision) {
        insert.reset();
        insert.clearBindings();
        insert.bind(1, station);
        insert.bind(2, start);
        insert.bind(3, revision);
        insert.bind(4, length);
        insert.bind(5, sets.id_of(cells.units));
        for (std::size_t i = 0; i < cells.values.size(); ++i) {
            bind_number(insert, 6 + static_cast<int>(i), cells.values[i]);
        }
        bind_id(insert, 13, import);
        insert.exec();
    }

    Outcome add(const SheetHour& row, Contrary contrary) {
        if (overlaps(row)) return Outcome::overlaps;
        const std::int64_t start = seconds_of(row.start);
        find.reset();
        find.bind(1, station);
        find.bind(2, start);
        return add_row<Outcome>(
            find, sets, cells_of(row, members, units, columns), columns, contrary, difference,
            [&](const Cells& cells, int revision) { store(start, row.length.count(), cells, revision); });
    }

    Outcome guarded(const SheetHour& row, Contrary contrary) {
        try {
            return add(row, contrary);
        } catch (const SQLite::Exception& e) {
            throw BookError({phrase("store", "The book could not be written: %1."), sqlite_words(e.what())});
        }
    }

    std::int64_t station;
    SheetUnits units;
    std::optional<std::int64_t> import;
    UnitSets sets;
    SQLite::Statement near;
    SQLite::Statement find;
    SQLite::Statement insert;
    Difference difference;
};

HourWriter::HourWriter(Book& book, const std::string& station, const SheetUnits& units,
                       std::optional<std::int64_t> import)
    : impl_(store::in_book(book, [&](SQLite::Database&) {
          return std::make_unique<Impl>(book, station, units, import);
      })) {}
HourWriter::~HourWriter() = default;

HourWriter::Outcome HourWriter::add(const SheetHour& row, bool correct) {
    return impl_->guarded(row, correct ? Contrary::replace : Contrary::report);
}

HourWriter::Outcome HourWriter::complete(const SheetHour& row) { return impl_->guarded(row, Contrary::leave_out); }

const std::string& HourWriter::in_book() const { return impl_->difference.in_book; }
const std::string& HourWriter::in_row() const { return impl_->difference.in_row; }

}  // namespace evenfall::store
