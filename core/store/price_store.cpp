// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/price_store.h"

#include "core/store/database.h"

namespace evenfall::store {
namespace {

calendar::Date date_in(SQLite::Column column) {
    const auto date = calendar::parse_date(column.getString());
    if (!date) throw BookError({phrase("store", "The book holds a date that cannot be read: %1."), column.getString()});
    return *date;
}

std::optional<calendar::Date> maybe_date_in(SQLite::Column column) {
    if (column.isNull()) return std::nullopt;
    return date_in(column);
}

/// From "valid_from" at `at` on: from and to.
template <class Rate>
void bind_dates(SQLite::Statement& s, int at, const Rate& rate) {
    s.bind(at, calendar::format_date(rate.from));
    bind_text(s, at + 1, rate.to ? calendar::format_date(*rate.to) : std::string());
}

std::vector<budget::RateTier> tiers_of(SQLite::Database& db, std::int64_t rate) {
    SQLite::Statement rows(db, "SELECT up_to, price FROM water_rate_tier WHERE rate = ? ORDER BY number");
    rows.bind(1, rate);
    std::vector<budget::RateTier> tiers;
    while (rows.executeStep()) {
        tiers.push_back({number_in(rows.getColumn(0)), rows.getColumn(1).getDouble()});
    }
    return tiers;
}

}  // namespace

std::vector<budget::WaterRate> water_rates(const Book& book) {
    return in_book(book, [&](SQLite::Database& db) {
        return records(db,
                       "SELECT r.id, r.code, s.code, valid_from, valid_to, unit, currency, fixed_per_month,"
                       " sewer_price, sewer_share FROM water_rate r LEFT JOIN site s ON s.id = r.site"
                       " ORDER BY r.code",
                       "", [&](SQLite::Statement& row) {
                           budget::WaterRate r;
                           r.code = text_in(row.getColumn(1));
                           r.site = text_in(row.getColumn(2));
                           r.from = date_in(row.getColumn(3));
                           r.to = maybe_date_in(row.getColumn(4));
                           r.unit = units::unit_named<units::Volume>(text_in(row.getColumn(5)));
                           r.currency = text_in(row.getColumn(6));
                           r.fixed_per_month = row.getColumn(7).getDouble();
                           r.sewer_price = number_in(row.getColumn(8));
                           r.sewer_share = units::Share::of(row.getColumn(9).getDouble());
                           r.tiers = tiers_of(db, row.getColumn(0).getInt64());
                           return r;
                       });
    });
}

std::vector<budget::EnergyRate> energy_rates(const Book& book) {
    return in_book(book, [](SQLite::Database& db) {
        return records(db,
                       "SELECT r.code, s.code, valid_from, valid_to, currency, price_per_kwh"
                       " FROM energy_rate r LEFT JOIN site s ON s.id = r.site ORDER BY r.code",
                       "", [](SQLite::Statement& row) {
                           return budget::EnergyRate{text_in(row.getColumn(0)), text_in(row.getColumn(1)),
                                                     date_in(row.getColumn(2)), maybe_date_in(row.getColumn(3)),
                                                     text_in(row.getColumn(4)), row.getColumn(5).getDouble()};
                       });
    });
}

std::vector<budget::Pump> pumps(const Book& book, const std::string& site) {
    return in_book(book, [&](SQLite::Database& db) {
        return records(db,
                       "SELECT p.code, lift, lift_unit, pressure, pressure_unit, friction, friction_unit,"
                       " efficiency, share FROM pump p JOIN site s ON s.id = p.site WHERE s.code = ?"
                       " ORDER BY p.code",
                       site, [&](SQLite::Statement& row) {
                           budget::Pump p;
                           p.code = text_in(row.getColumn(0));
                           p.site = site;
                           p.lift = typed_in<units::Length>(row, 1);
                           p.pressure = typed_in<units::Pressure>(row, 3);
                           p.friction = typed_in<units::Length>(row, 5);
                           p.efficiency = units::Efficiency::of(row.getColumn(7).getDouble());
                           p.share = row.getColumn(8).getDouble();
                           return p;
                       });
    });
}

void add_water_rate(Book& book, const budget::WaterRate& rate, std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO water_rate (code, site, valid_from, valid_to, unit, currency,"
                                  " fixed_per_month, sewer_price, sewer_share, import)"
                                  " VALUES (?,?,?,?,?,?,?,?,?,?)");
        add.bind(1, rate.code);
        bind_id(add, 2, optional_id(book, "site", rate.site));
        bind_dates(add, 3, rate);
        add.bind(5, std::string(rate.unit.name));
        add.bind(6, rate.currency);
        add.bind(7, rate.fixed_per_month);
        bind_number(add, 8, rate.sewer_price);
        add.bind(9, rate.sewer_share.value());
        bind_id(add, 10, import);
        add.exec();
        const std::int64_t id = db.getLastInsertRowid();
        SQLite::Statement tier(db, "INSERT INTO water_rate_tier (rate, number, up_to, price) VALUES (?,?,?,?)");
        for (std::size_t i = 0; i < rate.tiers.size(); ++i) {
            tier.reset();
            tier.bind(1, id);
            tier.bind(2, static_cast<std::int64_t>(i + 1));
            bind_number(tier, 3, rate.tiers[i].up_to);
            tier.bind(4, rate.tiers[i].price);
            tier.exec();
        }
    });
}

void add_energy_rate(Book& book, const budget::EnergyRate& rate,
                     std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO energy_rate (code, site, valid_from, valid_to, currency,"
                                  " price_per_kwh, import) VALUES (?,?,?,?,?,?,?)");
        add.bind(1, rate.code);
        bind_id(add, 2, optional_id(book, "site", rate.site));
        bind_dates(add, 3, rate);
        add.bind(5, rate.currency);
        add.bind(6, rate.price_per_kwh);
        bind_id(add, 7, import);
        add.exec();
    });
}

void add_pump(Book& book, const budget::Pump& pump, std::optional<std::int64_t> import) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db, "INSERT INTO pump (code, site, lift, lift_unit, pressure, pressure_unit,"
                                  " friction, friction_unit, efficiency, share, import)"
                                  " VALUES (?,?,?,?,?,?,?,?,?,?,?)");
        add.bind(1, pump.code);
        add.bind(2, required_id(book, "site", pump.site));
        bind_typed(add, 3, pump.lift);
        bind_typed(add, 5, pump.pressure);
        bind_typed(add, 7, pump.friction);
        add.bind(9, pump.efficiency.value());
        add.bind(10, pump.share);
        bind_id(add, 11, import);
        add.exec();
    });
}

}  // namespace evenfall::store
