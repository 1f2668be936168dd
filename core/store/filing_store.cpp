// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/filing_store.h"

#include "core/input_error.h"
#include "core/store/database.h"
#include "core/store/journal_store.h"

#include <array>

namespace evenfall::store {
namespace {

std::string word(Direction direction) { return direction == Direction::sent ? "sent" : "received"; }

StoredFiling read_row(SQLite::Statement& row) {
    StoredFiling f;
    f.code = text_in(row.getColumn(0));
    f.sha256 = text_in(row.getColumn(1));
    f.direction = text_in(row.getColumn(2)) == "sent" ? Direction::sent : Direction::received;
    f.site = text_in(row.getColumn(3));
    f.key = text_in(row.getColumn(4));
    f.file = text_in(row.getColumn(5));
    f.at = text_in(row.getColumn(6));
    f.who = text_in(row.getColumn(7));
    return f;
}

/// Takes a unit over; a unit that was not typed fits every other.
bool take_unit(std::string& into, const std::string& unit) {
    if (unit.empty() || unit == into) return true;
    if (!into.empty()) return false;
    into = unit;
    return true;
}

}  // namespace

void add_filing(Book& book, const StoredFiling& f, const std::vector<FingerprintKey>& fingerprints) {
    if (find_filing(book, f.sha256)) {
        throw BookError({phrase("store", "The filing %1 is in the book already, under the name %2."), f.code, f.sha256});
    }
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement add(db,
            "INSERT INTO filing (code, sha256, direction, site, json, key, file, at, who) VALUES (?,?,?,?,?,?,?,?,?)");
        add.bind(1, f.code);
        add.bind(2, f.sha256);
        add.bind(3, word(f.direction));
        add.bind(4, f.site);
        add.bind(5, f.json);
        bind_text(add, 6, f.key);
        add.bind(7, f.file);
        add.bind(8, f.at);
        add.bind(9, f.who);
        add.exec();
        const std::int64_t id = db.getLastInsertRowid();
        SQLite::Statement print(db, "INSERT OR IGNORE INTO filing_fingerprint (filing, kind, key) VALUES (?,?,?)");
        for (const auto& [kind, key] : fingerprints) {
            print.bind(1, id);
            print.bind(2, kind);
            print.bind(3, key);
            print.exec();
            print.reset();
        }
    });
    add_journal_entry(book, {f.at, f.who, "Filing " + f.code + " " + word(f.direction) + " as " + f.file + ".",
                             "filing " + f.code, "{\"sha256\":\"" + f.sha256 + "\"}"});
}

std::optional<StoredFiling> find_filing(const Book& book, const std::string& sha256) {
    return in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement row(db, "SELECT code, sha256, direction, site, key, file, at, who, json FROM filing WHERE sha256 = ?");
        row.bind(1, sha256);
        std::optional<StoredFiling> found;
        if (row.executeStep()) {
            found = read_row(row);
            found->json = text_in(row.getColumn(8));
        }
        return found;
    });
}

std::vector<StoredFiling> filings(const Book& book) {
    return in_book(book, [](SQLite::Database& db) {
        std::vector<StoredFiling> all;
        SQLite::Statement row(db, "SELECT code, sha256, direction, site, key, file, at, who FROM filing ORDER BY id");
        while (row.executeStep()) all.push_back(read_row(row));
        return all;
    });
}

std::vector<StoredFiling> filings_without_application(const Book& book) {
    return in_book(book, [](SQLite::Database& db) {
        std::vector<StoredFiling> all;
        SQLite::Statement row(db, "SELECT code, sha256, direction, site, key, file, at, who FROM filing WHERE direction = 'received'"
                                  " AND id NOT IN (SELECT filing FROM application_filing) ORDER BY id");
        while (row.executeStep()) all.push_back(read_row(row));
        return all;
    });
}

std::vector<std::pair<std::string, std::string>> filings_with(const Book& book, const FingerprintKey& key) {
    return in_book(book, [&](SQLite::Database& db) {
        std::vector<std::pair<std::string, std::string>> found;
        SQLite::Statement row(db,
            "SELECT f.code, f.sha256 FROM filing_fingerprint p JOIN filing f ON f.id = p.filing"
            " WHERE p.kind = ? AND p.key = ? ORDER BY f.id");
        row.bind(1, key.first);
        row.bind(2, key.second);
        while (row.executeStep()) found.emplace_back(text_in(row.getColumn(0)), text_in(row.getColumn(1)));
        return found;
    });
}

std::pair<weather::SheetUnits, std::vector<weather::SheetRow>> typed_weather(
    const Book& book, const std::string& station, const std::string& from, const std::string& to) {
    using Row = weather::SheetRow;
    static constexpr std::array columns{&Row::tmax, &Row::tmin, &Row::tmean, &Row::tdew, &Row::rhmax,
                                        &Row::rhmin, &Row::rhmean, &Row::ea_kpa, &Row::solar,
                                        &Row::sunshine_h, &Row::wind, &Row::rain, &Row::reference_et};
    return in_book(book, [&](SQLite::Database& db) {
        std::pair<weather::SheetUnits, std::vector<Row>> sheet;
        SQLite::Statement rows(db,
            "SELECT d.date, d.tmax, d.tmin, d.tmean, d.tdew, d.rhmax, d.rhmin, d.rhmean, d.ea_kpa, d.solar,"
            " d.sunshine_h, d.wind, d.rain, d.reference_et,"
            " u.temperature, u.radiation, u.wind, u.rain, u.reference_et"
            " FROM weather_day d JOIN weather_station s ON s.id = d.station JOIN weather_units u ON u.id = d.units"
            " WHERE s.code = ? AND d.date BETWEEN ? AND ? AND d.revision ="
            " (SELECT max(e.revision) FROM weather_day e WHERE e.station = d.station AND e.date = d.date)"
            " ORDER BY d.date");
        rows.bind(1, station);
        rows.bind(2, from);
        rows.bind(3, to);
        auto& u = sheet.first;
        while (rows.executeStep()) {
            Row row;
            const std::string date = text_in(rows.getColumn(0));
            row.date = calendar::parse_date(date).value_or(calendar::Date{});
            for (std::size_t i = 0; i < columns.size(); ++i) row.*columns[i] = number_in(rows.getColumn(static_cast<int>(i) + 1));
            const std::array units{&u.temperature, &u.radiation, &u.wind, &u.rain, &u.reference_et};
            for (std::size_t i = 0; i < units.size(); ++i) {
                if (take_unit(*units[i], text_in(rows.getColumn(static_cast<int>(i) + 14)))) continue;
                throw BookError({phrase("store", "The weather of station %1 was typed in more than one set of units from %2 to %3; "
                                         "a filing holds one. The units change on %4."),
                                 station, from, to, date});
            }
            sheet.second.push_back(row);
        }
        return sheet;
    });
}

}  // namespace evenfall::store
