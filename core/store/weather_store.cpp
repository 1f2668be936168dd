// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/weather_store.h"

#include "core/store/database.h"

#include <array>

namespace evenfall::store {
namespace {

using weather::SheetRow;
using weather::SheetUnits;

using Member = std::optional<double> SheetRow::*;
/// In the order of the table's columns from tmax on.
constexpr std::array<Member, 13> members{
    &SheetRow::tmax,  &SheetRow::tmin,   &SheetRow::tmean,  &SheetRow::tdew,       &SheetRow::rhmax,
    &SheetRow::rhmin, &SheetRow::rhmean, &SheetRow::ea_kpa, &SheetRow::solar,      &SheetRow::sunshine_h,
    &SheetRow::wind,  &SheetRow::rain,   &SheetRow::reference_et};
constexpr const char* value_columns =
    "tmax, tmin, tmean, tdew, rhmax, rhmin, rhmean, ea_kpa, solar, sunshine_h, wind, rain, reference_et";

SheetRow row_in(SQLite::Statement& rows, int first, calendar::Date date) {
    SheetRow row;
    row.date = date;
    for (std::size_t i = 0; i < members.size(); ++i) {
        row.*members[i] = number_in(rows.getColumn(first + static_cast<int>(i)));
    }
    return row;
}

SheetUnits units_in(SQLite::Database& db, std::int64_t id) {
    SQLite::Statement find(db, "SELECT temperature, radiation, wind, rain, reference_et FROM weather_units WHERE id = ?");
    find.bind(1, id);
    find.executeStep();
    return {text_in(find.getColumn(0)), text_in(find.getColumn(1)), text_in(find.getColumn(2)),
            text_in(find.getColumn(3)), text_in(find.getColumn(4))};
}

std::int64_t id_of_units(SQLite::Database& db, const SheetUnits& u) {
    const auto bind = [&](SQLite::Statement& s) {
        s.bind(1, u.temperature);
        s.bind(2, u.radiation);
        s.bind(3, u.wind);
        s.bind(4, u.rain);
        s.bind(5, u.reference_et);
    };
    SQLite::Statement find(db, "SELECT id FROM weather_units WHERE temperature=? AND radiation=? AND wind=?"
                               " AND rain=? AND reference_et=?");
    bind(find);
    if (find.executeStep()) return find.getColumn(0).getInt64();
    SQLite::Statement add(db, "INSERT INTO weather_units (temperature, radiation, wind, rain, reference_et)"
                              " VALUES (?,?,?,?,?)");
    bind(add);
    add.exec();
    return db.getLastInsertRowid();
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
        std::vector<WeatherStation> all;
        SQLite::Statement rows(db, std::string(station_select) + " ORDER BY code");
        while (rows.executeStep()) all.push_back(station_in(rows));
        return all;
    });
}

std::optional<WeatherStation> find_weather_station(const Book& book, const std::string& code) {
    return in_book(book, [&](SQLite::Database& db) -> std::optional<WeatherStation> {
        SQLite::Statement rows(db, std::string(station_select) + " WHERE code = ?");
        rows.bind(1, code);
        if (!rows.executeStep()) return std::nullopt;
        return station_in(rows);
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
        std::map<std::int64_t, SheetUnits> units;
        // In order of the key, so the last row of a date is its newest revision: a look for a newer
        // one at every row would double the time.
        SQLite::Statement rows(db, std::string("SELECT date, units, ") + value_columns +
                                       " FROM weather_day WHERE station = ?1 AND date BETWEEN ?2 AND ?3"
                                       " ORDER BY date, revision");
        rows.bind(1, *id);
        rows.bind(2, calendar::format_date(from));
        rows.bind(3, calendar::format_date(to));
        while (rows.executeStep()) {
            const auto date = calendar::parse_date(text_in(rows.getColumn(0)));
            if (!date) throw BookError("A weather day of station " + station + " has no date that can be read.");
            const std::int64_t key = rows.getColumn(1).getInt64();
            if (!units.contains(key)) units[key] = units_in(db, key);
            auto day = weather::converted(row_in(rows, 2, *date), units[key]);
            if (!all.empty() && all.back().date == *date) all.back() = std::move(day);
            else all.push_back(std::move(day));
        }
        return all;
    });
}

struct WeatherWriter::Impl {
    Impl(Book& book, const std::string& code, const SheetUnits& sheet, std::optional<std::int64_t> from)
        : station(required_id(book, "weather_station", code)),
          units(id_of_units(book.database(), sheet)),
          import(from),
          find(book.database(), std::string("SELECT revision, units, ") + value_columns +
                                    " FROM weather_day WHERE station=? AND date=? ORDER BY revision DESC LIMIT 1"),
          insert(book.database(), std::string("INSERT INTO weather_day (station, date, revision, units, ") +
                                      value_columns + ", import) VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)") {}

    void store(const SheetRow& row, int revision) {
        insert.reset();
        insert.clearBindings();
        insert.bind(1, station);
        insert.bind(2, calendar::format_date(row.date));
        insert.bind(3, revision);
        insert.bind(4, units);
        for (std::size_t i = 0; i < members.size(); ++i) {
            bind_number(insert, 5 + static_cast<int>(i), row.*members[i]);
        }
        bind_id(insert, 18, import);
        insert.exec();
    }

    std::int64_t station;
    std::int64_t units;
    std::optional<std::int64_t> import;
    SQLite::Statement find;
    SQLite::Statement insert;
};

WeatherWriter::WeatherWriter(Book& book, const std::string& station, const SheetUnits& units,
                             std::optional<std::int64_t> import)
    : impl_(in_book(book, [&](SQLite::Database&) {
          return std::make_unique<Impl>(book, station, units, import);
      })) {}
WeatherWriter::~WeatherWriter() = default;

WeatherWriter::Outcome WeatherWriter::add(const SheetRow& row, bool correct) {
    try {
        impl_->find.reset();
        impl_->find.bind(1, impl_->station);
        impl_->find.bind(2, calendar::format_date(row.date));
        if (!impl_->find.executeStep()) {
            impl_->store(row, 0);
            return Outcome::added;
        }
        const int revision = impl_->find.getColumn(0).getInt();
        const bool same = impl_->find.getColumn(1).getInt64() == impl_->units &&
                          row_in(impl_->find, 2, row.date) == row;
        if (same) return Outcome::unchanged;
        if (correct) impl_->store(row, revision + 1);
        return Outcome::conflict;
    } catch (const SQLite::Exception& e) {
        throw BookError(std::string("The book could not be written: ") + e.what() + ".");
    }
}

}  // namespace evenfall::store
