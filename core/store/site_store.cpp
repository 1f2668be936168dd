// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/site_store.h"

#include "core/store/database.h"

namespace evenfall::store {
namespace {

constexpr const char* site_columns =
    "code, name, organisation, latitude, longitude, elevation, elevation_unit, time_zone, weather,"
    " weather_power";

site::Site site_in(SQLite::Statement& row) {
    site::Site s;
    s.code = text_in(row.getColumn(0));
    s.name = text_in(row.getColumn(1));
    s.organisation = text_in(row.getColumn(2));
    s.latitude = row.getColumn(3).getDouble();
    s.longitude = number_in(row.getColumn(4));
    s.elevation = typed_in<units::Length>(row, 5);
    s.time_zone = text_in(row.getColumn(7));
    s.weather = text_in(row.getColumn(8));
    s.weather_power = number_in(row.getColumn(9));
    return s;
}

void bind_site(SQLite::Statement& to, const site::Site& s, std::optional<std::int64_t> import) {
    to.bind(1, s.code);
    to.bind(2, s.name);
    bind_text(to, 3, s.organisation);
    to.bind(4, s.latitude);
    bind_number(to, 5, s.longitude);
    bind_typed(to, 6, s.elevation);
    to.bind(8, s.time_zone);
    bind_text(to, 9, s.weather);
    bind_number(to, 10, s.weather_power);
    bind_id(to, 11, import);
}

constexpr const char* area_select =
    "SELECT a.code, s.code, a.name, a.size, a.size_unit, a.plant, a.coefficient, a.head_type, a.soil,"
    " a.root_depth, a.root_depth_unit, a.slope_percent, m.code, a.share"
    " FROM area a JOIN site s ON s.id = a.site LEFT JOIN meter m ON m.id = a.meter";

site::Area area_in(SQLite::Statement& row) {
    site::Area a;
    a.code = text_in(row.getColumn(0));
    a.site = text_in(row.getColumn(1));
    a.name = text_in(row.getColumn(2));
    a.size = {row.getColumn(3).getDouble(), units::unit_named<units::Area>(text_in(row.getColumn(4)))};
    a.plant = text_in(row.getColumn(5));
    a.coefficient = number_in(row.getColumn(6));
    a.head_type = text_in(row.getColumn(7));
    a.soil = text_in(row.getColumn(8));
    a.root_depth = typed_in<units::Depth>(row, 9);
    a.slope_percent = number_in(row.getColumn(11));
    a.meter = text_in(row.getColumn(12));
    a.share = number_in(row.getColumn(13));
    return a;
}

void bind_area(const Book& book, SQLite::Statement& to, const site::Area& a,
               std::optional<std::int64_t> import) {
    to.bind(1, a.code);
    to.bind(2, required_id(book, "site", a.site));
    bind_text(to, 3, a.name);
    to.bind(4, a.size.value);
    to.bind(5, std::string(a.size.unit.name));
    bind_text(to, 6, a.plant);
    bind_number(to, 7, a.coefficient);
    bind_text(to, 8, a.head_type);
    bind_text(to, 9, a.soil);
    bind_typed(to, 10, a.root_depth);
    bind_number(to, 12, a.slope_percent);
    bind_id(to, 13, optional_id(book, "meter", a.meter));
    bind_number(to, 14, a.share);
    bind_id(to, 15, import);
}

}  // namespace

std::vector<site::Site> sites(const Book& book) {
    return in_book(book, [](SQLite::Database& db) {
        return records(db, std::string("SELECT ") + site_columns + " FROM site ORDER BY code", "", site_in);
    });
}

std::optional<site::Site> find_site(const Book& book, const std::string& code) {
    return in_book(book, [&](SQLite::Database& db) {
        return record(db, std::string("SELECT ") + site_columns + " FROM site WHERE code = ?", code, site_in);
    });
}

void add_site(Book& book, const site::Site& site, std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, std::string("INSERT INTO site (") + site_columns +
                                      ", import) VALUES (?,?,?,?,?,?,?,?,?,?,?)");
        bind_site(add, site, import);
        add.exec();
    });
}

void replace_site(Book& book, const site::Site& site, std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement set(db, "UPDATE site SET name=?2, organisation=?3, latitude=?4, longitude=?5,"
                                  " elevation=?6, elevation_unit=?7, time_zone=?8, weather=?9,"
                                  " weather_power=?10, import=?11"
                                  " WHERE code=?1");
        bind_site(set, site, import);
        set.exec();
    });
}

std::vector<site::Area> areas(const Book& book, const std::string& site) {
    return in_book(book, [&](SQLite::Database& db) {
        const char* const of_site = site.empty() ? "" : " WHERE s.code = ?";
        return records(db, std::string(area_select) + of_site + " ORDER BY a.code", site, area_in);
    });
}

std::optional<site::Area> find_area(const Book& book, const std::string& code) {
    return in_book(book, [&](SQLite::Database& db) {
        return record(db, std::string(area_select) + " WHERE a.code = ?", code, area_in);
    });
}

void add_area(Book& book, const site::Area& area, std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO area (code, site, name, size, size_unit, plant, coefficient,"
                                  " head_type, soil, root_depth, root_depth_unit, slope_percent, meter,"
                                  " share, import) VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?)");
        bind_area(book, add, area, import);
        add.exec();
    });
}

void replace_area(Book& book, const site::Area& area, std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement set(db, "UPDATE area SET site=?2, name=?3, size=?4, size_unit=?5, plant=?6,"
                                  " coefficient=?7, head_type=?8, soil=?9, root_depth=?10,"
                                  " root_depth_unit=?11, slope_percent=?12, meter=?13, share=?14, import=?15"
                                  " WHERE code=?1");
        bind_area(book, set, area, import);
        set.exec();
    });
}

}  // namespace evenfall::store
