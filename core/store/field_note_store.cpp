// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/field_note_store.h"

#include "core/store/database.h"

#include <string>
#include <vector>

namespace evenfall::store {
namespace {

using audit::CatchTest;
using audit::Finding;
using audit::PressureReading;

constexpr const char* pressure_insert =
    "INSERT INTO catch_pressure (test, number, place, pressure, pressure_unit, nozzle_low,"
    " nozzle_low_unit, nozzle_high, nozzle_high_unit) VALUES (?,?,?,?,?,?,?,?,?)";
constexpr const char* finding_insert =
    "INSERT INTO catch_finding (test, number, kind, place, count, severity, corrected, note)"
    " VALUES (?,?,?,?,?,?,?,?)";

void run_with(SQLite::Statement& to, std::int64_t test, std::int64_t number, const PressureReading& r) {
    to.reset();
    to.clearBindings();
    to.bind(1, test);
    to.bind(2, number);
    to.bind(3, r.place);
    bind_typed<units::Pressure>(to, 4, r.pressure);
    bind_typed(to, 6, r.nozzle_low);
    bind_typed(to, 8, r.nozzle_high);
    to.exec();
}

void run_with(SQLite::Statement& to, std::int64_t test, std::int64_t number, const Finding& f) {
    to.reset();
    to.clearBindings();
    to.bind(1, test);
    to.bind(2, number);
    to.bind(3, f.kind);
    bind_text(to, 4, f.place);
    to.bind(5, f.count);
    to.bind(6, static_cast<int>(f.severity));
    to.bind(7, f.corrected ? 1 : 0);
    bind_text(to, 8, f.note);
    to.exec();
}

template <class Note>
void add_all(SQLite::Database& db, const char* insert, std::int64_t test, const std::vector<Note>& notes) {
    SQLite::Statement add(db, insert);
    std::int64_t number = 0;
    for (const Note& n : notes) run_with(add, test, ++number, n);
}

std::int64_t last_number(SQLite::Database& db, const char* table, std::int64_t test) {
    SQLite::Statement find(db, std::string("SELECT coalesce(max(number), 0) FROM ") + table + " WHERE test = ?");
    find.bind(1, test);
    find.executeStep();
    return find.getColumn(0).getInt64();
}

/// Says on the test that notes were kept: `column` is pressures_noted or inspected.
void mark(SQLite::Database& db, const char* column, std::int64_t test) {
    SQLite::Statement set(db, std::string("UPDATE catch_test SET ") + column + " = 1 WHERE id = ?");
    set.bind(1, test);
    set.exec();
}

}  // namespace

void add_field_notes(SQLite::Database& db, std::int64_t test_id, const CatchTest& test) {
    SQLite::Statement noted(db, "UPDATE catch_test SET pressures_noted = ?, inspected = ? WHERE id = ?");
    noted.bind(1, test.pressures ? 1 : 0);
    noted.bind(2, test.findings ? 1 : 0);
    noted.bind(3, test_id);
    noted.exec();
    if (test.pressures) add_all(db, pressure_insert, test_id, *test.pressures);
    if (test.findings) add_all(db, finding_insert, test_id, *test.findings);
}

void set_field_notes(Book& book, const CatchTest& test) {
    in_book(book, [&](SQLite::Database& db) {
        const std::int64_t id = required_id(book, "catch_test", test.code);
        for (const char* table : {"catch_pressure", "catch_finding"}) {
            SQLite::Statement clear(db, std::string("DELETE FROM ") + table + " WHERE test = ?");
            clear.bind(1, id);
            clear.exec();
        }
        add_field_notes(db, id, test);
    });
}

void read_field_notes(SQLite::Database& db, std::int64_t test_id, CatchTest& test) {
    SQLite::Statement noted(db, "SELECT pressures_noted, inspected FROM catch_test WHERE id = ?");
    noted.bind(1, test_id);
    if (!noted.executeStep()) return;
    if (noted.getColumn(0).getInt() != 0) {
        test.pressures.emplace();
        SQLite::Statement rows(db, "SELECT place, pressure, pressure_unit, nozzle_low, nozzle_low_unit,"
                                   " nozzle_high, nozzle_high_unit FROM catch_pressure WHERE test = ?"
                                   " ORDER BY number");
        rows.bind(1, test_id);
        while (rows.executeStep()) {
            PressureReading r;
            r.place = text_in(rows.getColumn(0));
            r.pressure = *typed_in<units::Pressure>(rows, 1);
            r.nozzle_low = typed_in<units::Pressure>(rows, 3);
            r.nozzle_high = typed_in<units::Pressure>(rows, 5);
            test.pressures->push_back(std::move(r));
        }
    }
    if (noted.getColumn(1).getInt() != 0) {
        test.findings.emplace();
        SQLite::Statement rows(db, "SELECT kind, place, count, severity, corrected, note FROM catch_finding"
                                   " WHERE test = ? ORDER BY number");
        rows.bind(1, test_id);
        while (rows.executeStep()) {
            Finding f;
            f.kind = text_in(rows.getColumn(0));
            f.place = text_in(rows.getColumn(1));
            f.count = rows.getColumn(2).getInt();
            f.severity = static_cast<audit::Severity>(rows.getColumn(3).getInt());
            f.corrected = rows.getColumn(4).getInt() != 0;
            f.note = text_in(rows.getColumn(5));
            test.findings->push_back(std::move(f));
        }
    }
}

void add_pressure(Book& book, const std::string& test, const PressureReading& reading) {
    in_book(book, [&](SQLite::Database& db) {
        const std::int64_t id = required_id(book, "catch_test", test);
        SQLite::Statement add(db, pressure_insert);
        run_with(add, id, last_number(db, "catch_pressure", id) + 1, reading);
        mark(db, "pressures_noted", id);
    });
}

void add_finding(Book& book, const std::string& test, const Finding& finding) {
    in_book(book, [&](SQLite::Database& db) {
        const std::int64_t id = required_id(book, "catch_test", test);
        SQLite::Statement add(db, finding_insert);
        run_with(add, id, last_number(db, "catch_finding", id) + 1, finding);
        mark(db, "inspected", id);
    });
}

void replace_pressure(Book& book, const std::string& test, const PressureReading& r) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement set(db, "UPDATE catch_pressure SET pressure=?3, pressure_unit=?4, nozzle_low=?5,"
                                  " nozzle_low_unit=?6, nozzle_high=?7, nozzle_high_unit=?8"
                                  " WHERE test=?1 AND place=?2");
        set.bind(1, required_id(book, "catch_test", test));
        set.bind(2, r.place);
        bind_typed<units::Pressure>(set, 3, r.pressure);
        bind_typed(set, 5, r.nozzle_low);
        bind_typed(set, 7, r.nozzle_high);
        set.exec();
    });
}

void replace_finding(Book& book, const std::string& test, const Finding& f) {
    in_book(book, [&](SQLite::Database& db) {
        SQLite::Statement set(db, "UPDATE catch_finding SET count=?4, severity=?5, corrected=?6, note=?7"
                                  " WHERE test=?1 AND kind=?2 AND place IS ?3");
        set.bind(1, required_id(book, "catch_test", test));
        set.bind(2, f.kind);
        bind_text(set, 3, f.place);
        set.bind(4, f.count);
        set.bind(5, static_cast<int>(f.severity));
        set.bind(6, f.corrected ? 1 : 0);
        bind_text(set, 7, f.note);
        set.exec();
    });
}

void set_inspected(Book& book, const std::string& test) {
    in_book(book, [&](SQLite::Database& db) { mark(db, "inspected", required_id(book, "catch_test", test)); });
}

}  // namespace evenfall::store
