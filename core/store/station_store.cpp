// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/station_store.h"

#include "core/store/database.h"

namespace evenfall::store {

std::vector<schedule::Station> stations(const Book& book, const std::string& site) {
    return in_book(book, [&](SQLite::Database& db) {
        return records(db,
                       "SELECT t.code, a.code, t.name, rate, rate_unit, rate_source, arc, flow, flow_unit"
                       " FROM station t JOIN area a ON a.id = t.area JOIN site s ON s.id = a.site"
                       " WHERE s.code = ? ORDER BY t.code",
                       site, [](SQLite::Statement& row) {
                           schedule::Station t;
                           t.code = text_in(row.getColumn(0));
                           t.area = text_in(row.getColumn(1));
                           t.name = text_in(row.getColumn(2));
                           t.rate = typed_in<units::Rate>(row, 3);
                           t.rate_source = text_in(row.getColumn(5));
                           t.arc_degrees = number_in(row.getColumn(6));
                           t.flow = typed_in<units::Flow>(row, 7);
                           return t;
                       });
    });
}

void add_station(Book& book, const schedule::Station& station, std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO station (code, area, name, rate, rate_unit, rate_source, arc,"
                                  " flow, flow_unit, import) VALUES (?,?,?,?,?,?,?,?,?,?)");
        add.bind(1, station.code);
        add.bind(2, required_id(book, "area", station.area));
        bind_text(add, 3, station.name);
        bind_typed(add, 4, station.rate);
        bind_text(add, 6, station.rate_source);
        bind_number(add, 7, station.arc_degrees);
        bind_typed(add, 8, station.flow);
        bind_id(add, 10, import);
        add.exec();
    });
}

std::optional<schedule::WateringRule> watering_rule(const Book& book, const std::string& site) {
    return in_book(book, [&](SQLite::Database& db) -> std::optional<schedule::WateringRule> {
        SQLite::Statement rows(db, "SELECT days, starts, ends, stations_at_once FROM watering_rule w"
                                   " JOIN site s ON s.id = w.site WHERE s.code = ?");
        rows.bind(1, site);
        if (!rows.executeStep()) return std::nullopt;
        schedule::WateringRule rule;
        rule.site = site;
        const int days = rows.getColumn(0).getInt();
        for (unsigned i = 0; i < rule.days.size(); ++i) rule.days[i] = (days >> i) & 1;
        rule.starts = std::chrono::minutes{rows.getColumn(1).getInt()};
        rule.ends = std::chrono::minutes{rows.getColumn(2).getInt()};
        rule.stations_at_once = rows.getColumn(3).getInt();
        return rule;
    });
}

void set_watering_rule(Book& book, const schedule::WateringRule& rule) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement set(db, "INSERT INTO watering_rule (site, days, starts, ends, stations_at_once)"
                                  " VALUES (?,?,?,?,?) ON CONFLICT (site) DO UPDATE SET days = excluded.days,"
                                  " starts = excluded.starts, ends = excluded.ends,"
                                  " stations_at_once = excluded.stations_at_once");
        int days = 0;
        for (unsigned i = 0; i < rule.days.size(); ++i) days |= rule.days[i] ? 1 << i : 0;
        set.bind(1, required_id(book, "site", rule.site));
        set.bind(2, days);
        set.bind(3, static_cast<std::int64_t>(rule.starts.count()));
        set.bind(4, static_cast<std::int64_t>(rule.ends.count()));
        set.bind(5, rule.stations_at_once);
        set.exec();
    });
}

std::vector<budget::AreaSetting> area_settings(const Book& book, const std::string& site) {
    return in_book(book, [&](SQLite::Database& db) {
        return records(db,
                       "SELECT a.code, off_target, off_target_source, special, water_ec, soil_ec_limit"
                       " FROM area_setting x JOIN area a ON a.id = x.area JOIN site s ON s.id = a.site WHERE s.code = ?"
                       " ORDER BY a.code",
                       site, [](SQLite::Statement& row) {
                           budget::AreaSetting setting;
                           setting.area = text_in(row.getColumn(0));
                           if (const auto share = number_in(row.getColumn(1))) {
                               setting.off_target = units::Share::of(*share);
                           }
                           setting.off_target_source = text_in(row.getColumn(2));
                           setting.special = row.getColumn(3).getInt() != 0;
                           if (const auto water = number_in(row.getColumn(4))) {
                               setting.salt = weather::SaltCase{*water, row.getColumn(5).getDouble()};
                           }
                           return setting;
                       });
    });
}

void set_area_setting(Book& book, const budget::AreaSetting& setting) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement set(db, "INSERT INTO area_setting (area, off_target, off_target_source, special,"
                                  " water_ec, soil_ec_limit) VALUES (?,?,?,?,?,?) ON CONFLICT (area) DO UPDATE SET"
                                  " off_target = excluded.off_target,"
                                  " off_target_source = excluded.off_target_source,"
                                  " special = excluded.special, water_ec = excluded.water_ec,"
                                  " soil_ec_limit = excluded.soil_ec_limit");
        set.bind(1, required_id(book, "area", setting.area));
        std::optional<double> share;
        if (setting.off_target) share = setting.off_target->value();
        bind_number(set, 2, share);
        bind_text(set, 3, setting.off_target_source);
        set.bind(4, setting.special ? 1 : 0);
        if (setting.salt) {
            set.bind(5, setting.salt->water_ec);
            set.bind(6, setting.salt->soil_ec_limit);
        }
        set.exec();
    });
}

}  // namespace evenfall::store
