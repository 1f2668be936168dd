// SPDX-License-Identifier: GPL-3.0-or-later
// The field sheet and the book: opening a test, saving one, the areas to choose from.
#include "app/desktop/field_sheet/field_sheet_page.h"

#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/field_sheet/can_grid.h"
#include "core/audit/sample.h"
#include "core/input_error.h"
#include "core/store/catch_test_store.h"
#include "core/store/journal_store.h"
#include "core/store/site_store.h"

#include <QComboBox>
#include <QInputDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QSignalBlocker>

namespace evenfall::desktop {
namespace {

std::string journal_key(const std::string& code) { return "catch_test " + code; }

/// The sheet as it was saved, with pressures, findings and notes; the bare test where it came in
/// by another way.
std::optional<SheetData> saved_sheet(const store::Book& book, const std::string& code) {
    std::optional<SheetData> found;
    for (const store::JournalEntry& entry : store::journal(book)) {
        if (entry.record != journal_key(code) || entry.detail.empty()) continue;
        if (auto sheet = from_json(QByteArray::fromStdString(entry.detail))) found = std::move(sheet);
    }
    if (found) return found;
    const auto test = store::find_catch_test(book, code);
    return test ? std::optional(from_catch_test(*test)) : std::nullopt;
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

void FieldSheetPage::new_test() {
    if (session().sheet_has_unsaved_entries() && sheet_.cans_read() > 0) {
        const auto answer = QMessageBox::question(
            this, tr("New test"),
            tr("The entries of this sheet are not in the book. Give them up and begin a new sheet?"),
            QMessageBox::Discard | QMessageBox::Cancel, QMessageBox::Cancel);
        if (answer != QMessageBox::Discard) return;
    }
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
    QStringList codes;
    for (const std::string& code : store::catch_test_codes(session().book(), {})) codes << q(code);
    if (codes.isEmpty()) {
        session().say(tr("There is no catch test in this book yet."));
        return;
    }
    bool ok = false;
    const QString code = QInputDialog::getItem(this, tr("Open a test"), tr("Test"), codes, 0, false, &ok);
    if (ok) show_test(utf8(code));
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
        const audit::CatchTest test = to_catch_test(entries);
        if (auto issues = audit::check(test); !issues.empty()) throw InputError(std::move(issues));
        store::Transaction change(session().book());
        store::add_catch_test(session().book(), test, std::nullopt);
        store::add_journal_entry(
            session().book(),
            {now_text(), user_text(),
             "Catch test " + entries.code + " was written on a field sheet", journal_key(entries.code),
             to_json(entries).toStdString()});
        change.commit();
    } catch (const std::exception& e) {
        QMessageBox::warning(this, tr("The test was not saved"), error_words(e));
        return;
    }
    session().sheet_was_saved();
    session().say(tr("Test %1 is in the book.").arg(q(entries.code)));
    session().book_was_changed();
}

}  // namespace evenfall::desktop
