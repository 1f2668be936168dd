// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/catch_test_store.h"

#include "core/store/database.h"
#include "core/store/field_note_store.h"

namespace evenfall::store {
namespace {

using audit::Catch;
using audit::CatchTest;

constexpr const char* test_select =
    "SELECT t.id, t.code, a.code, t.date, t.layout, t.throat_area, t.throat_area_unit, t.minutes,"
    " t.wind, t.wind_unit, t.lane_spacing, t.lane_spacing_unit, t.opposite_pulls, t.position_unit,"
    " t.catch_unit, t.can_size, t.can_size_unit, t.flow, t.flow_unit, t.travel_speed,"
    " t.travel_speed_unit, t.edge_offset, t.edge_offset_unit"
    " FROM catch_test t JOIN area a ON a.id = t.area";

void read_cans(SQLite::Database& db, std::int64_t id, CatchTest& test) {
    SQLite::Statement cans(db, "SELECT can, x, y, distance, side, reading, excluded FROM catch_can"
                               " WHERE test = ? ORDER BY number");
    cans.bind(1, id);
    while (cans.executeStep()) {
        Catch c;
        c.can = text_in(cans.getColumn(0));
        c.x = number_in(cans.getColumn(1));
        c.y = number_in(cans.getColumn(2));
        c.distance = number_in(cans.getColumn(3));
        if (!cans.getColumn(4).isNull()) c.side = static_cast<audit::Side>(cans.getColumn(4).getInt());
        c.reading = cans.getColumn(5).getDouble();
        c.excluded = text_in(cans.getColumn(6));
        test.catches.push_back(std::move(c));
    }
}

void read_stations(SQLite::Database& db, std::int64_t id, CatchTest& test) {
    SQLite::Statement runs(db, "SELECT station, minutes FROM catch_station WHERE test = ? ORDER BY number");
    runs.bind(1, id);
    while (runs.executeStep()) {
        test.stations.push_back({text_in(runs.getColumn(0)), runs.getColumn(1).getDouble()});
    }
    SQLite::Statement parts(db, "SELECT p.number, p.station, p.reading FROM catch_by_station p"
                                " JOIN catch_station s ON s.test = p.test AND s.station = p.station"
                                " WHERE p.test = ? ORDER BY p.number, s.number");
    parts.bind(1, id);
    while (parts.executeStep()) {
        const auto index = static_cast<std::size_t>(parts.getColumn(0).getInt64() - 1);
        test.catches.at(index).by_station.push_back(
            {text_in(parts.getColumn(1)), parts.getColumn(2).getDouble()});
    }
}

CatchTest test_in(SQLite::Database& db, SQLite::Statement& row) {
    CatchTest t;
    const std::int64_t id = row.getColumn(0).getInt64();
    t.code = text_in(row.getColumn(1));
    t.area = text_in(row.getColumn(2));
    const auto date = calendar::parse_date(text_in(row.getColumn(3)));
    if (!date) throw BookError({phrase("store", "The catch test %1 has no date that can be read."), t.code});
    t.date = *date;
    t.layout = static_cast<audit::Layout>(row.getColumn(4).getInt());
    t.throat_area = typed_in<units::Area>(row, 5);
    t.minutes = number_in(row.getColumn(7));
    t.wind = typed_in<units::Speed>(row, 8);
    t.lane_spacing = typed_in<units::Length>(row, 10);
    t.opposite_pulls = row.getColumn(12).getInt() != 0;
    t.position_unit = units::unit_named<units::Length>(text_in(row.getColumn(13)));
    t.catch_unit = static_cast<audit::CatchUnit>(row.getColumn(14).getInt());
    t.can_size = typed_in<units::Volume>(row, 15);
    t.flow = typed_in<units::Flow>(row, 17);
    t.travel_speed = typed_in<units::Speed>(row, 19);
    t.edge_offset = typed_in<units::Length>(row, 21);
    read_cans(db, id, t);
    read_stations(db, id, t);
    read_field_notes(db, id, t);
    return t;
}

std::int64_t insert_test(Book& book, SQLite::Database& db, const CatchTest& t,
                         std::optional<std::int64_t> import) {
    SQLite::Statement add(db, "INSERT INTO catch_test (code, area, date, layout, throat_area,"
                              " throat_area_unit, minutes, wind, wind_unit, lane_spacing,"
                              " lane_spacing_unit, opposite_pulls, position_unit, catch_unit, can_size,"
                              " can_size_unit, flow, flow_unit, travel_speed, travel_speed_unit,"
                              " edge_offset, edge_offset_unit, import)"
                              " VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)");
    add.bind(1, t.code);
    add.bind(2, required_id(book, "area", t.area));
    add.bind(3, calendar::format_date(t.date));
    add.bind(4, static_cast<int>(t.layout));
    bind_typed(add, 5, t.throat_area);
    bind_number(add, 7, t.minutes);
    bind_typed(add, 8, t.wind);
    bind_typed(add, 10, t.lane_spacing);
    add.bind(12, t.opposite_pulls ? 1 : 0);
    add.bind(13, std::string(t.position_unit.name));
    add.bind(14, static_cast<int>(t.catch_unit));
    bind_typed(add, 15, t.can_size);
    bind_typed(add, 17, t.flow);
    bind_typed(add, 19, t.travel_speed);
    bind_typed(add, 21, t.edge_offset);
    bind_id(add, 23, import);
    add.exec();
    return db.getLastInsertRowid();
}

void insert_cans(SQLite::Database& db, std::int64_t id, const CatchTest& t) {
    SQLite::Statement add(db, "INSERT INTO catch_can (test, number, can, x, y, distance, side, reading,"
                              " excluded) VALUES (?,?,?,?,?,?,?,?,?)");
    SQLite::Statement part(db, "INSERT INTO catch_by_station (test, number, station, reading) VALUES (?,?,?,?)");
    std::int64_t number = 0;
    for (const Catch& c : t.catches) {
        add.reset();
        add.clearBindings();
        add.bind(1, id);
        add.bind(2, ++number);
        add.bind(3, c.can);
        bind_number(add, 4, c.x);
        bind_number(add, 5, c.y);
        bind_number(add, 6, c.distance);
        if (c.side) add.bind(7, static_cast<int>(*c.side));
        add.bind(8, c.reading);
        bind_text(add, 9, c.excluded);
        add.exec();
        for (const audit::StationCatch& s : c.by_station) {
            part.reset();
            part.bind(1, id);
            part.bind(2, number);
            part.bind(3, s.station);
            part.bind(4, s.reading);
            part.exec();
        }
    }
}

std::vector<CatchTest> select_tests(const Book& book, const std::string& where, const std::string& key) {
    return in_book(book, [&](SQLite::Database& db) {
        std::vector<CatchTest> all;
        SQLite::Statement rows(db, std::string(test_select) + where + " ORDER BY t.date, t.code");
        rows.bind(1, key);
        while (rows.executeStep()) all.push_back(test_in(db, rows));
        return all;
    });
}

}  // namespace

std::vector<std::string> catch_test_codes(const Book& book, const std::string& area) {
    return in_book(book, [&](SQLite::Database& db) {
        std::vector<std::string> all;
        SQLite::Statement rows(db, std::string("SELECT t.code FROM catch_test t JOIN area a ON a.id = t.area") +
                                       (area.empty() ? "" : " WHERE a.code = ?") + " ORDER BY t.date, t.code");
        if (!area.empty()) rows.bind(1, area);
        while (rows.executeStep()) all.push_back(text_in(rows.getColumn(0)));
        return all;
    });
}

std::optional<CatchTest> find_catch_test(const Book& book, const std::string& code) {
    auto found = select_tests(book, " WHERE t.code = ?", code);
    if (found.empty()) return std::nullopt;
    return std::move(found.front());
}

std::vector<CatchTest> catch_tests_of_site(const Book& book, const std::string& site) {
    return select_tests(book, " WHERE a.site = (SELECT id FROM site WHERE code = ?)", site);
}

void add_catch_test(Book& book, const CatchTest& test, std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        const std::int64_t id = insert_test(book, db, test, import);
        SQLite::Statement run(db, "INSERT INTO catch_station (test, number, station, minutes) VALUES (?,?,?,?)");
        int number = 0;
        for (const audit::StationRun& s : test.stations) {
            run.reset();
            run.bind(1, id);
            run.bind(2, ++number);
            run.bind(3, s.station);
            run.bind(4, s.minutes);
            run.exec();
        }
        insert_cans(db, id, test);
        add_field_notes(db, id, test);
    });
}

}  // namespace evenfall::store
