// SPDX-License-Identifier: GPL-3.0-or-later
// The plan page: where the plan comes from and where it is kept, in the book or in a file.
#include "app/desktop/clock.h"
#include "app/desktop/core_words.h"
#include "app/desktop/plan/audit_panel.h"
#include "app/desktop/plan/keep_dialog.h"
#include "app/desktop/plan/plan_page.h"
#include "app/workflow/plans.h"
#include "core/exchange/plan_file.h"
#include "core/input_error.h"
#include "core/store/plan_store.h"

#include <QAction>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QSaveFile>
#include <utility>

namespace evenfall::desktop {

/// In the menu while the page is shown.
void PlanPage::build_actions() {
    const auto add = [this](const QString& text, const char* keys, const std::function<void()>& work) {
        auto* action = new QAction(text, this);
        action->setShortcut(QKeySequence(QLatin1String(keys)));
        connect(action, &QAction::triggered, this, work);
        addAction(action);
    };
    add(tr("&Plan of the book…"), "Ctrl+Shift+O", [this] { choose_plan_of_book(); });
    add(tr("&Keep in the book"), "Ctrl+S", [this] { keep(); });
    add(tr("&Save as a file…"), "Ctrl+Shift+S", [this] { save(); });
    add(tr("&Add a head"), "Ctrl+Shift+H", [this] { add_head(); });
}

void PlanPage::adopt(plan::Plan plan, PlanHome home) {
    document_.replace(std::move(plan));
    home_ = std::move(home);
    draft_ = false;
    show_home();
}

void PlanPage::open_plan(const QString& path) {
    try {
        plan::Plan read = exchange::read_plan(path.toStdString());
        if (!may_close()) return;
        PlanHome home;
        home.file = path;
        adopt(std::move(read), std::move(home));
    } catch (const std::exception& e) {
        QMessageBox::warning(this, tr("The plan cannot be read"), error_words(e));
    }
}

void PlanPage::open_plan_of_book(const QString& code) {
    try {
        auto stored = store::find_plan(session().book(), utf8(code));
        if (!stored) throw InputError(utf8(code), phrase("workflow", "the code of a plan in the book"));
        if (!may_close()) return;
        adopt(std::move(stored->plan), {session().book_path(), stored->code, stored->site, stored->revision, {}});
    } catch (const std::exception& e) {
        QMessageBox::warning(this, tr("The plan cannot be read"), error_words(e));
    }
}

void PlanPage::choose_plan_of_book() {
    if (!session().has_book()) return;
    QMenu menu(this);
    for (const auto& code : store::plan_codes(session().book(), "")) {
        const auto stored = store::find_plan(session().book(), code);
        if (!stored) continue;
        const QString name = q(printable(stored->plan.name));
        menu.addAction(name.isEmpty() ? tr("%1, site %2").arg(q(code), q(stored->site))
                                      : tr("%1, site %2: %3").arg(q(code), q(stored->site), name),
                       this, [this, code] { open_plan_of_book(q(code)); });
    }
    if (!menu.isEmpty()) menu.exec(of_book_->mapToGlobal(QPoint(0, of_book_->height())));
}

void PlanPage::book_changed() {
    const bool any = session().has_book() && !store::plan_codes(session().book(), "").empty();
    of_book_->setEnabled(any);
    of_book_->setToolTip(any ? QString() : tr("There is no plan in the book."));
    keep_->setEnabled(session().can_write());
    keep_->setToolTip(session().can_write()  ? tr("Ctrl+S")
                      : session().has_book() ? session().read_only_reason()
                                             : tr("No book is open."));
    // The draft of the first look gives way to a real plan, as long as nobody has worked on it.
    if (any && draft_ && document_.undo_stack().count() == 0) {
        open_plan_of_book(q(store::plan_codes(session().book(), "").front()));
    }
    show_home();
    audit_->book_changed();
}

/// Whether the plan stands in the book that is open.
bool PlanPage::in_book() const { return !home_.code.empty() && home_.book == open_book_; }

void PlanPage::show_home() {
    open_book_ = session().has_book() ? session().book_path() : QString();
    const QString name = q(printable(document_.plan().name, 200));
    title_->setText(name.isEmpty() ? tr("Plan without a name") : name);
    QStringList words;
    if (in_book()) words << tr("%1 in the book, site %2, revision %3").arg(q(home_.code), q(home_.site)).arg(home_.revision);
    else if (!home_.file.isEmpty()) words << tr("from the file %1").arg(QFileInfo(home_.file).fileName());
    else if (!home_.code.empty()) words << tr("of another book");
    else words << tr("kept nowhere yet");
    if (!document_.undo_stack().isClean()) words << tr("changed since");
    state_->setText(words.join(QStringLiteral("  ·  ")));
}

QString PlanPage::title() const { return title_->text(); }
QString PlanPage::state() const { return state_->text(); }

bool PlanPage::may_close() {
    if (document_.undo_stack().isClean()) return true;
    const bool at_home = in_book() && session().can_write();
    QMessageBox::StandardButtons buttons = QMessageBox::Discard | QMessageBox::Cancel;
    if (at_home) buttons |= QMessageBox::Save;
    const auto answer = QMessageBox::question(
        this, tr("Changes to the plan"),
        at_home ? tr("The changes to this plan are not in the book. Keep them as the next revision of %1, or give them up?").arg(q(home_.code))
                : tr("The changes to this plan are kept nowhere. Give them up?"),
        buttons, QMessageBox::Cancel);
    if (answer == QMessageBox::Discard) return true;
    if (answer != QMessageBox::Save) return false;
    keep();
    return document_.undo_stack().isClean();
}

bool PlanPage::write(const std::string& code, const std::string& site, const std::string& name, const std::string& who, QString* trouble) {
    plan::Plan kept = document_.plan();
    kept.name = name;
    try {
        const int revision = workflow::keep_plan(session().book(), kept, site, code, who);
        home_ = {session().book_path(), code, site, revision, home_.file};
    } catch (const std::exception& e) {
        *trouble = error_words(e);
        return false;
    }
    document_.rename(name);
    document_.undo_stack().setClean();
    draft_ = false;
    session().say(tr("The plan is in the book as %1, revision %2.").arg(q(code)).arg(home_.revision));
    session().book_was_changed();
    return true;
}

KeepDialog* PlanPage::keep() {
    if (!in_book() || !session().can_write()) return keep_as();
    if (document_.undo_stack().isClean()) {
        session().say(tr("Nothing has changed since it was kept."));
        return nullptr;
    }
    QString trouble;
    if (!write(home_.code, home_.site, document_.plan().name, user_text(), &trouble)) {
        QMessageBox::warning(this, tr("The plan was not kept"), trouble);
    }
    return nullptr;
}

KeepDialog* PlanPage::keep_as() {
    if (!session().can_write()) {
        session().say(session().has_book() ? session().read_only_reason() : tr("No book is open."));
        return nullptr;
    }
    auto* dialog = new KeepDialog(session(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->fill(document_.plan().name, in_book() ? home_.code : std::string(), in_book() ? home_.site : std::string());
    connect(dialog, &KeepDialog::keep_wanted, this, [this, dialog] {
        QString trouble;
        if (write(dialog->plan_code(), dialog->plan_site(), dialog->plan_name(), dialog->by_whom(), &trouble)) dialog->accept();
        else dialog->say(trouble);
    });
    dialog->open();
    return dialog;
}

void PlanPage::save() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Save the plan"), home_.file, tr("Plans (*.json)"));
    if (!path.isEmpty()) save_to(path);
}

bool PlanPage::save_to(const QString& path) {
    QSaveFile file(path);
    const QByteArray text = QByteArray::fromStdString(exchange::plan_text(document_.plan()));
    if (!file.open(QIODevice::WriteOnly) || file.write(text) != text.size() || !file.commit()) {
        QMessageBox::warning(this, tr("The plan was not saved"), file.errorString());
        return false;
    }
    home_.file = path;
    // What stands in the book is an older one now.
    if (!document_.undo_stack().isClean()) home_.code.clear();
    document_.undo_stack().setClean();
    draft_ = false;
    show_home();
    session().say(tr("The plan was saved."));
    return true;
}

}  // namespace evenfall::desktop
