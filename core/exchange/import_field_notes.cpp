// SPDX-License-Identifier: GPL-3.0-or-later
// Pressures and findings of catch tests. A pressure is known by its test and place, a finding by its
// test, kind and place.
#include "core/audit/finding.h"
#include "core/exchange/field_notes_file.h"
#include "core/exchange/import_run.h"
#include "core/store/catch_test_store.h"
#include "core/store/field_note_store.h"

#include <algorithm>
#include <map>

namespace evenfall::exchange {
namespace {

using audit::CatchTest;
using audit::Finding;
using audit::PressureReading;

std::string text_of(const PressureReading& r) {
    std::string text = r.pressure.text();
    if (r.nozzle_low) text += ", nozzle from " + r.nozzle_low->text();
    if (r.nozzle_high) text += ", nozzle to " + r.nozzle_high->text();
    return text;
}

std::string text_of(const Finding& f) {
    std::string text = std::to_string(f.count) + ", " + std::string(audit::text_of(f.severity));
    if (f.corrected) text += ", corrected";
    if (!f.note.empty()) text += ", " + f.note;
    return text;
}

std::string name_of(const PressureReading& r, const std::string& test) {
    return Sentence(record_form::pressure, test, r.place).english();
}

std::string name_of(const Finding& f, const std::string& test) {
    if (f.place.empty()) return Sentence(record_form::finding_nowhere, f.kind, test).english();
    return Sentence(record_form::finding, f.kind, test, f.place).english();
}

bool same_key(const PressureReading& a, const PressureReading& b) { return a.place == b.place; }
bool same_key(const Finding& a, const Finding& b) { return a.kind == b.kind && a.place == b.place; }

void add(store::Book& book, const std::string& test, const PressureReading& r) { store::add_pressure(book, test, r); }
void add(store::Book& book, const std::string& test, const Finding& f) { store::add_finding(book, test, f); }
void replace(store::Book& book, const std::string& test, const PressureReading& r) { store::replace_pressure(book, test, r); }
void replace(store::Book& book, const std::string& test, const Finding& f) { store::replace_finding(book, test, f); }

/// The tests that a file names, as the book has them at this point of the import.
class Tests {
  public:
    explicit Tests(ImportRun& run) : run_(run) {
        if (run.columns.has("test")) return;
        throw InputError(Issue{{run.rows.file(), run.rows.row(), "test"}, phrase("exchange", "no such column"),
                               phrase("exchange", "a column test, to keep the notes of a test in a book")});
    }
    /// Null, and the row refused, when the book has no such test.
    CatchTest* of(RowReader& row) {
        const std::string code = row.needed_text("test");
        if (!row.ok()) return nullptr;
        auto found = tests_.find(code);
        if (found == tests_.end()) found = tests_.emplace(code, store::find_catch_test(run_.book, code)).first;
        if (found->second) return &*found->second;
        row.refuse("test", code, phrase("exchange", "the code of a catch test in the book or among these files"));
        return nullptr;
    }

  private:
    ImportRun& run_;
    std::map<std::string, std::optional<CatchTest>> tests_;
};

/// Adds one note to what is known of its test, leaves it or replaces it.
/// @param group  the column to name when the file contradicts itself
template <class Note>
void put(ImportRun& run, RowReader& row, std::string_view group, const std::string& test,
         std::optional<std::vector<Note>>& known, const Note& note) {
    if (!known) known.emplace();
    const auto same = std::find_if(known->begin(), known->end(),
                                   [&](const Note& k) { return same_key(k, note); });
    if (same == known->end()) {
        add(run.book, test, note);
        ++run.result.added;
        known->push_back(note);
    } else if (text_of(*same) == text_of(note)) {
        ++run.result.unchanged;
    } else if (same->row != 0) {
        row.refuse(group, row.text(group),
                   {phrase("exchange", "each once in a test; row %1 says something else of it"), same->row});
    } else if (run.settle({run.rows.file(), row.row(), ""}, name_of(note, test), text_of(*same), text_of(note))) {
        replace(run.book, test, note);
        *same = note;
    }
}

/// An inspection that found nothing.
void put_none(ImportRun& run, RowReader& row, CatchTest& test) {
    if (!test.findings) {
        store::set_inspected(run.book, test.code);
        test.findings.emplace();
        ++run.result.added;
    } else if (test.findings->empty()) {
        ++run.result.unchanged;
    } else {
        row.refuse("finding", no_finding, {phrase("exchange", "no such row for a test that has findings, as %1 has"), test.code});
    }
}

}  // namespace

void import_pressures(ImportRun& run) {
    Tests tests(run);
    run.each_row([&](RowReader& row) {
        CatchTest* test = tests.of(row);
        const PressureReading reading = read_pressure(row);
        if (row.ok() && test != nullptr) put(run, row, "place", test->code, test->pressures, reading);
    });
}

void import_findings(ImportRun& run) {
    Tests tests(run);
    run.each_row([&](RowReader& row) {
        CatchTest* test = tests.of(row);
        const auto finding = read_finding(row);
        if (!row.ok() || test == nullptr) return;
        if (!finding) {
            put_none(run, row, *test);
            return;
        }
        const bool none_before = test->findings && test->findings->empty();
        if (none_before && !run.settle({run.rows.file(), row.row(), ""}, Sentence(record_form::findings, test->code).english(),
                                       "inspected, nothing found", finding->kind + ", " + text_of(*finding))) {
            return;
        }
        put(run, row, "finding", test->code, test->findings, *finding);
    });
}

}  // namespace evenfall::exchange
