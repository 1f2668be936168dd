// SPDX-License-Identifier: GPL-3.0-or-later
// The field sheet and the book: opening a test, saving one, the areas to choose from.
#include "app/desktop/field_sheet/field_sheet_page.h"

#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/field_sheet/can_grid.h"
#include "app/desktop/field_sheet/sheet_notes.h"
#include "core/audit/sample.h"
#include "core/input_error.h"
#include "core/store/catch_test_store.h"
#include "core/store/field_note_store.h"
#include "core/store/journal_store.h"
#include "core/store/site_store.h"

#include <QComboBox>
#include <QInputDialog>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalBlocker>

namespace evenfall::desktop {
namespace {

std::string journal_key(const std::string& code) { return "catch_test " + code; }

/// The sheet as it was saved, with empty cans and notes, but with the pressures and findings that the book
/// has by now; the bare test where it came in by another way.
std::optional<SheetData> saved_sheet(const store::Book& book, const std::string& code) {
    const auto test = store::find_catch_test(book, code);
    if (!test) return std::nullopt;
    std::optional<SheetData> found;
    for (const store::JournalEntry& entry : store::journal(book)) {
        if (entry.record != journal_key(code) || entry.detail.empty()) continue;
        if (auto sheet = from_json(QByteArray::fromStdString(entry.detail))) found = std::move(sheet);
    }
    if (!found) return from_catch_test(*test);
    // Sheets of earlier programs kept these here only.
    if (test->pressures || test->findings) show_notes(*test, *found);
    return found;
}

/// What was measured, apart from pressures and findings, to tell two sheets of one code apart.
QByteArray measured(const audit::CatchTest& test) {
    audit::CatchTest bare = test;
    bare.pressures.reset();
    bare.findings.reset();
    return to_json(from_catch_test(bare));
}

void note(store::Book& book, const std::string& what, const SheetData& sheet) {
    store::add_journal_entry(book, {now_text(), user_text(), what, journal_key(sheet.code), to_json(sheet).toStdString()});
}

}  // namespace

void FieldSheetPage::book_changed() {
    const QSignalBlocker quiet(area_);
    const QString before = area_->currentText();
    area_->clear();
    if (session().has_book()) {
        for (const site::Area& area : store::areas(session().book(), {})) area_->addItem(q(area.code));
    }
    area_->setCurrentText(before.isEmpty() ? q(sheet_.data().area) : before);
    save_->setEnabled(session().can_write());
    save_->setToolTip(session().has_book() ? session().read_only_reason()
                                           : tr("Open or make a book first; until then the entries are kept safe "
                                                "beside your own data."));
}

bool FieldSheetPage::may_give_up_entries(const QString& title) {
    if (!session().sheet_has_unsaved_entries()) return true;
    return QMessageBox::question(this, title,
                                 tr("The entries of this sheet are not in the book. Give them up and begin a new sheet?"),
                                 QMessageBox::Discard | QMessageBox::Cancel, QMessageBox::Cancel) == QMessageBox::Discard;
}

void FieldSheetPage::new_test() {
    if (!may_give_up_entries(tr("New test"))) return;
    SheetData fresh = empty_sheet(Session::today());
    fresh.area = sheet_.data().area;
    sheet_.replace(std::move(fresh));
    session().sheet_was_saved();
    grid_->setFocus();
}

void FieldSheetPage::open_test() {
    if (!session().has_book()) {
        session().say(tr("No book is open."));
        return;
    }
    QStringList lines;
    std::vector<std::string> codes;
    for (const std::string& code : store::catch_test_codes(session().book(), {})) {
        const auto test = store::find_catch_test(session().book(), code);
        if (!test) continue;
        codes.push_back(code);
        lines << tr("%1, area %2, %3").arg(q(code), q(test->area), q(calendar::format_date(test->date)));
    }
    if (codes.empty()) {
        session().say(tr("There is no catch test in this book yet."));
        return;
    }
    QInputDialog dialog(this);
    dialog.setWindowTitle(tr("Open a test"));
    dialog.setLabelText(tr("Test"));
    dialog.setComboBoxItems(lines);
    dialog.setMinimumWidth(420);
    if (dialog.exec() != QDialog::Accepted) return;
    const auto at = lines.indexOf(dialog.textValue());
    if (at < 0 || !may_give_up_entries(tr("Open a test"))) return;
    show_test(codes[static_cast<std::size_t>(at)]);
}

void FieldSheetPage::show_test(const std::string& code) {
    auto sheet = saved_sheet(session().book(), code);
    if (!sheet) return;
    sheet_.replace(std::move(*sheet));
    session().sheet_was_saved();
}

void FieldSheetPage::save() {
    if (!session().can_write()) return;
    const SheetData& entries = sheet_.data();
    if (entries.code.empty() || entries.area.empty()) {
        QMessageBox::information(this, tr("Save to the book"),
                                 tr("Give the test a short name of its own and choose its area first."));
        return;
    }
    try {
        audit::CatchTest test = to_catch_test(entries);
        take_notes(entries, test);
        if (auto issues = audit::check(test); !issues.empty()) throw InputError(std::move(issues));
        if (!store_test(test)) return;
    } catch (const std::exception& e) {
        QMessageBox::warning(this, tr("The test was not saved"), error_words(e));
        return;
    }
    session().sheet_was_saved();
    session().say(tr("Test %1 is in the book.").arg(q(entries.code)));
    session().book_was_changed();
}

bool FieldSheetPage::store_test(const audit::CatchTest& test) {
    store::Book& book = session().book();
    const auto known = store::find_catch_test(book, test.code);
    // What was measured is not replaced: a second sheet is a second test. What was noted beside it may grow.
    if (known && measured(*known) != measured(test)) {
        QMessageBox::warning(this, tr("The test was not saved"),
                             tr("The book has another sheet with the name %1, and a field sheet is not overwritten. "
                                "Give this one a name of its own.").arg(q(test.code)));
        code_->setFocus();
        code_->selectAll();
        return false;
    }
    store::Transaction change(book);
    if (known) {
        if (known->pressures || known->findings) {
            note(book, "Catch test " + test.code + " as it stood before its notes were changed", from_catch_test(*known));
        }
        store::set_field_notes(book, test);
        note(book, "Notes of catch test " + test.code + " were changed on a field sheet", sheet_.data());
    } else {
        store::add_catch_test(book, test, std::nullopt);
        note(book, "Catch test " + test.code + " was written on a field sheet", sheet_.data());
    }
    change.commit();
    return true;
}

}  // namespace evenfall::desktop
