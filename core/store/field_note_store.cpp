// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/field_note_store.h"

#include "core/store/database.h"

namespace evenfall::store {
namespace {

using audit::CatchTest;
using audit::Finding;
using audit::PressureReading;

void add_pressures(SQLite::Database& db, std::int64_t id, const CatchTest& test) {
    SQLite::Statement add(db, "INSERT INTO catch_pressure (test, number, place, pressure, pressure_unit,"
                              " nozzle_low, nozzle_low_unit, nozzle_high, nozzle_high_unit)"
                              " VALUES (?,?,?,?,?,?,?,?,?)");
    int number = 0;
    for (const PressureReading& r : *test.pressures) {
        add.reset();
        add.clearBindings();
        add.bind(1, id);
        add.bind(2, ++number);
        add.bind(3, r.place);
        bind_typed<units::Pressure>(add, 4, r.pressure);
        bind_typed(add, 6, r.nozzle_low);
        bind_typed(add, 8, r.nozzle_high);
        add.exec();
    }
}

void add_findings(SQLite::Database& db, std::int64_t id, const CatchTest& test) {
    SQLite::Statement add(db, "INSERT INTO catch_finding (test, number, kind, place, count, severity,"
                              " corrected, note) VALUES (?,?,?,?,?,?,?,?)");
    int number = 0;
    for (const Finding& f : *test.findings) {
        add.reset();
        add.clearBindings();
        add.bind(1, id);
        add.bind(2, ++number);
        add.bind(3, f.kind);
        bind_text(add, 4, f.place);
        add.bind(5, f.count);
        add.bind(6, static_cast<int>(f.severity));
        add.bind(7, f.corrected ? 1 : 0);
        bind_text(add, 8, f.note);
        add.exec();
    }
}

}  // namespace

void add_field_notes(SQLite::Database& db, std::int64_t test_id, const CatchTest& test) {
    SQLite::Statement noted(db, "UPDATE catch_test SET pressures_noted = ?, inspected = ? WHERE id = ?");
    noted.bind(1, test.pressures ? 1 : 0);
    noted.bind(2, test.findings ? 1 : 0);
    noted.bind(3, test_id);
    noted.exec();
    if (test.pressures) add_pressures(db, test_id, test);
    if (test.findings) add_findings(db, test_id, test);
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

}  // namespace evenfall::store
