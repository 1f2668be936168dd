// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/weather_store.h"

#include "core/store/typed_cells.h"

#include <array>
#include <utility>

namespace evenfall::store {
namespace {

using weather::SheetRow;
using weather::SheetUnits;

constexpr std::size_t columns_of_day = 13;
using Cells = TypedCells<columns_of_day>;
using Member = std::optional<double> SheetRow::*;
/// In the order of the table's columns from tmax on.
constexpr std::array<Member, columns_of_day> members{
    &SheetRow::tmax,  &SheetRow::tmin,   &SheetRow::tmean,  &SheetRow::tdew,       &SheetRow::rhmax,
    &SheetRow::rhmin, &SheetRow::rhmean, &SheetRow::ea_kpa, &SheetRow::solar,      &SheetRow::sunshine_h,
    &SheetRow::wind,  &SheetRow::rain,   &SheetRow::reference_et};
constexpr std::array<CellColumn, columns_of_day> columns{
    CellColumn{"tmax", &SheetUnits::temperature}, {"tmin", &SheetUnits::temperature},
    {"tmean", &SheetUnits::temperature},          {"tdew", &SheetUnits::temperature},
    {"rhmax", nullptr},                           {"rhmin", nullptr},
    {"rhmean", nullptr},                          {"ea_kpa", nullptr},
    {"solar", &SheetUnits::radiation},            {"sunshine_h", nullptr},
    {"wind", &SheetUnits::wind},                  {"rain", &SheetUnits::rain},
    {"reference_et", &SheetUnits::reference_et}};

SheetRow row_of(const std::array<std::optional<double>, columns_of_day>& values, calendar::Date date) {
    SheetRow row;
    row.date = date;
    for (std::size_t i = 0; i < members.size(); ++i) row.*members[i] = values[i];
    return row;
}

WeatherStation station_in(SQLite::Statement& rows) {
    return {text_in(rows.getColumn(0)), number_in(rows.getColumn(1)), number_in(rows.getColumn(2)),
            typed_in<units::Length>(rows, 3), number_in(rows.getColumn(5))};
}

constexpr const char* station_select =
    "SELECT code, latitude, longitude, elevation, elevation_unit, wind_height_m FROM weather_station";

}  // namespace

std::vector<WeatherStation> weather_stations(const Book& book) {
    return in_book(book, [](SQLite::Database& db) {
        return records(db, query(station_select, " ORDER BY code"), "", station_in);
    });
}

std::optional<WeatherStation> find_weather_station(const Book& book, const std::string& code) {
    return in_book(book, [&](SQLite::Database& db) {
        return record(db, query(station_select, " WHERE code = ?"), code, station_in);
    });
}

void add_weather_station(Book& book, const WeatherStation& station) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO weather_station (code, latitude, longitude, elevation,"
                                  " elevation_unit, wind_height_m) VALUES (?,?,?,?,?,?)");
        add.bind(1, station.code);
        bind_number(add, 2, station.latitude);
        bind_number(add, 3, station.longitude);
        bind_typed(add, 4, station.elevation);
        bind_number(add, 6, station.wind_height_m);
        add.exec();
    });
}

void replace_weather_station(Book& book, const WeatherStation& station) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement set(db, "UPDATE weather_station SET latitude=?2, longitude=?3, elevation=?4,"
                                  " elevation_unit=?5, wind_height_m=?6 WHERE code=?1");
        set.bind(1, station.code);
        bind_number(set, 2, station.latitude);
        bind_number(set, 3, station.longitude);
        bind_typed(set, 4, station.elevation);
        bind_number(set, 6, station.wind_height_m);
        set.exec();
    });
}

std::vector<weather::WeatherDay> weather_days(const Book& book, const std::string& station,
                                              calendar::Date from, calendar::Date to) {
    return in_book(book, [&](SQLite::Database& db) {
        std::vector<weather::WeatherDay> all;
        const auto id = id_of(db, "weather_station", station);
        if (!id) return all;
        UnitSets units(db);
        // In order of the key, so the last row of a date is its newest revision: a look for a newer
        // one at every row would double the time.
        SQLite::Statement rows(db, "SELECT date, units, " + names_of(columns) +
                                       " FROM weather_day WHERE station = ?1 AND date BETWEEN ?2 AND ?3"
                                       " ORDER BY date, revision");
        rows.bind(1, *id);
        rows.bind(2, calendar::format_date(from));
        rows.bind(3, calendar::format_date(to));
        while (rows.executeStep()) {
            const auto date = calendar::parse_date(text_in(rows.getColumn(0)));
            if (!date) throw BookError({phrase("store", "A weather day of station %1 has no date that can be read."), station});
            auto day = weather::converted(row_of(values_in<columns_of_day>(rows, 2), *date),
                                          units.of(rows.getColumn(1).getInt64()));
            if (!all.empty() && all.back().date == *date) all.back() = std::move(day);
            else all.push_back(std::move(day));
        }
        return all;
    });
}

struct WeatherWriter::Impl {
    Impl(Book& book, const std::string& code, SheetUnits sheet, std::optional<std::int64_t> from)
        : station(required_id(book, "weather_station", code)),
          units(std::move(sheet)),
          import(from),
          sets(book.database()),
          find(book.database(), "SELECT revision, units, " + names_of(columns) +
                                    " FROM weather_day WHERE station=? AND date=? ORDER BY revision DESC"),
          insert(book.database(), "INSERT INTO weather_day (station, date, revision, units, " + names_of(columns) +
                                      ", import) VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)") {}

    void store(const std::string& date, const Cells& cells, int revision) {
        insert.reset();
        insert.clearBindings();
        insert.bind(1, station);
        insert.bind(2, date);
        insert.bind(3, revision);
        insert.bind(4, sets.id_of(cells.units));
        for (std::size_t i = 0; i < cells.values.size(); ++i) {
            bind_number(insert, 5 + static_cast<int>(i), cells.values[i]);
        }
        bind_id(insert, 18, import);
        insert.exec();
    }

    Outcome add(const SheetRow& row, Contrary contrary) {
        const std::string date = calendar::format_date(row.date);
        find.reset();
        find.bind(1, station);
        find.bind(2, date);
        return add_row<Outcome>(find, sets, cells_of(row, members, units, columns), columns, contrary, difference,
                                [&](const Cells& cells, int revision) { store(date, cells, revision); });
    }

    Outcome guarded(const SheetRow& row, Contrary contrary) {
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
    SQLite::Statement find;
    SQLite::Statement insert;
    Difference difference;
};

WeatherWriter::WeatherWriter(Book& book, const std::string& station, const SheetUnits& units,
                             std::optional<std::int64_t> import)
    : impl_(store::in_book(book, [&](SQLite::Database&) {
          return std::make_unique<Impl>(book, station, units, import);
      })) {}
WeatherWriter::~WeatherWriter() = default;

WeatherWriter::Outcome WeatherWriter::add(const SheetRow& row, bool correct) {
    return impl_->guarded(row, correct ? Contrary::replace : Contrary::report);
}

WeatherWriter::Outcome WeatherWriter::complete(const SheetRow& row) { return impl_->guarded(row, Contrary::leave_out); }

const std::string& WeatherWriter::in_book() const { return impl_->difference.in_book; }
const std::string& WeatherWriter::in_row() const { return impl_->difference.in_row; }

}  // namespace evenfall::store
