// SPDX-License-Identifier: GPL-3.0-or-later
// A plan is opened from the book, changed, kept as the next revision, and never lost without a question.
#include "app/desktop/main_window.h"
#include "app/desktop/plan/audit_panel.h"
#include "app/desktop/plan/keep_dialog.h"
#include "app/desktop/plan/plan_page.h"
#include "core/exchange/plan_file.h"
#include "core/store/journal_store.h"
#include "core/store/plan_store.h"
#include "tests/app/desktop_support.h"

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTimer>
#include <QUndoStack>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;

namespace {

/// The window with a demo book of its own, whose plan P-PLAY is open.
struct PlanDesk {
    PlanDesk() {
        QSettings().clear();
        install_language(QStringLiteral("en"));
        window.show();
        REQUIRE(QTest::qWaitForWindowExposed(&window));
        QApplication::setActiveWindow(&window);
        window.open_book(copy_of_demo_book(folder));
        window.show_page(QStringLiteral("plan"));
        page = qobject_cast<PlanPage*>(window.page());
        REQUIRE(page);
        REQUIRE(wait_for_work(session));
    }
    ~PlanDesk() {
        page->undo_stack()->setClean();
        wait_for_work(session);
    }
    store::Book& book() { return session.book(); }
    void move_head(std::size_t index) {
        plan::Head head = page->document().plan().heads[index];
        head.x += 2.0;
        page->document().set_head(index, head, QStringLiteral("move"));
    }
    QTemporaryDir folder;
    Session session;
    MainWindow window{session};
    PlanPage* page = nullptr;
};

/// Presses a button of the question that comes up next; counts the questions.
struct NextQuestion {
    explicit NextQuestion(QMessageBox::StandardButton answer) {
        QObject::connect(&timer, &QTimer::timeout, [this, answer] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (!box) return;
            ++asked;
            offered = box->standardButtons();
            box->button(answer)->click();
        });
        timer.start(20);
    }
    QTimer timer;
    int asked = 0;
    QMessageBox::StandardButtons offered;
};

}  // namespace

TEST_CASE("a plan of the book is changed and kept as its next revision", "[desktop][constructed]") {
    PlanDesk desk;
    CHECK(desk.page->home().code == "P-PLAY");
    CHECK(desk.page->state().contains(QStringLiteral("P-PLAY")));
    CHECK(desk.page->state().contains(QStringLiteral("revision 0")));
    const auto before = store::find_plan(desk.book(), "P-PLAY")->plan.heads;
    CHECK(desk.page->document().plan().heads == before);

    desk.move_head(4);
    CHECK(desk.page->state().contains(QStringLiteral("changed since")));
    const auto lines = store::journal(desk.book()).size();
    QTest::keyClick(&desk.window, Qt::Key_S, Qt::ControlModifier);
    const auto kept = store::find_plan(desk.book(), "P-PLAY");
    REQUIRE(kept);
    CHECK(kept->revision == 1);
    CHECK(kept->site == "AV");
    CHECK(kept->plan.heads == desk.page->document().plan().heads);
    CHECK(kept->plan.heads != before);
    REQUIRE(store::journal(desk.book()).size() == lines + 1);
    CHECK(store::journal(desk.book()).back().record == "plan P-PLAY");
    CHECK(!desk.page->state().contains(QStringLiteral("changed since")));
    CHECK(desk.page->state().contains(QStringLiteral("revision 1")));
    // Nothing new: nothing is kept twice.
    QTest::keyClick(&desk.window, Qt::Key_S, Qt::ControlModifier);
    CHECK(store::find_plan(desk.book(), "P-PLAY")->revision == 1);
    // Undo goes back behind what was kept, and says so.
    QTest::keyClick(&desk.window, Qt::Key_Z, Qt::ControlModifier);
    CHECK(desk.page->document().plan().heads == before);
    CHECK(desk.page->state().contains(QStringLiteral("changed since")));
    desk.page->undo_stack()->redo();
    CHECK(!desk.page->state().contains(QStringLiteral("changed since")));
}

TEST_CASE("a plan gets code, site and name in the book", "[desktop][constructed]") {
    PlanDesk desk;
    KeepDialog* dialog = desk.page->keep_as();
    REQUIRE(dialog);
    CHECK(dialog->code()->text() == QStringLiteral("P-PLAY"));
    CHECK(!dialog->site()->isEnabled());  // the code's own
    CHECK(dialog->outlook().contains(QStringLiteral("Revision 1")));
    type_into(dialog->code(), QStringLiteral(" "));
    QTest::mouseClick(dialog->keep_button(), Qt::LeftButton);
    CHECK(!dialog->trouble().isEmpty());
    type_into(dialog->code(), QStringLiteral("P-NEXT"));
    CHECK(dialog->site()->isEnabled());
    dialog->site()->setCurrentIndex(dialog->site()->findData(QStringLiteral("AV")));
    type_into(dialog->name(), QStringLiteral("Playing field, next year"));
    type_into(dialog->who(), QStringLiteral("R. Osei"));
    QTest::mouseClick(dialog->keep_button(), Qt::LeftButton);
    const auto kept = store::find_plan(desk.book(), "P-NEXT");
    REQUIRE(kept);
    CHECK(kept->plan.name == "Playing field, next year");
    CHECK(kept->site == "AV");
    CHECK(store::journal(desk.book()).back().who == "R. Osei");
    CHECK(desk.page->title() == QStringLiteral("Playing field, next year"));
    CHECK(desk.page->home().code == "P-NEXT");
    CHECK(store::find_plan(desk.book(), "P-PLAY")->revision == 0);
    // The name is a step that can be undone.
    desk.page->undo_stack()->undo();
    CHECK(desk.page->title() == QStringLiteral("Playing field, as drawn"));
    // It can be opened again by its code.
    const NextQuestion discard(QMessageBox::Discard);
    desk.page->open_plan_of_book(QStringLiteral("P-NEXT"));
    CHECK(discard.asked == 1);
    CHECK(desk.page->title() == QStringLiteral("Playing field, next year"));
}

TEST_CASE("a plan that is not sound is not kept, and the dialog says why", "[desktop][constructed]") {
    PlanDesk desk;
    plan::Head bad = desk.page->document().plan().heads[0];
    bad.radius = -1.0;
    desk.page->document().set_head(0, bad, QStringLiteral("head"));
    KeepDialog* dialog = desk.page->keep_as();
    REQUIRE(dialog);
    QTest::mouseClick(dialog->keep_button(), Qt::LeftButton);
    CHECK(dialog->isVisible());
    CHECK(dialog->trouble().contains(QStringLiteral("radius")));
    CHECK(store::find_plan(desk.book(), "P-PLAY")->revision == 0);
    dialog->reject();
}

TEST_CASE("changes to a plan are not lost without a question", "[desktop][constructed]") {
    PlanDesk desk;
    const QString file = write_file(desk.folder, QStringLiteral("other.json"),
                                    exchange::plan_text(store::find_plan(desk.book(), "P-PLAY")->plan));
    {
        const NextQuestion none(QMessageBox::Cancel);
        desk.page->open_plan(file);
        QTest::qWait(60);
        CHECK(none.asked == 0);  // nothing was changed
        CHECK(desk.page->state().contains(QStringLiteral("other.json")));
    }
    desk.page->open_plan_of_book(QStringLiteral("P-PLAY"));
    desk.move_head(3);
    const auto changed = desk.page->document().plan().heads;
    {
        const NextQuestion cancel(QMessageBox::Cancel);
        desk.page->open_plan(file);
        CHECK(cancel.asked == 1);
        CHECK(cancel.offered.testFlag(QMessageBox::Save));
        CHECK(desk.page->document().plan().heads == changed);
        desk.window.close();
        CHECK(cancel.asked == 2);
        CHECK(desk.window.isVisible());
    }
    {
        // A change of the language makes the pages anew.
        const NextQuestion cancel(QMessageBox::Cancel);
        QTest::mouseClick(button<QPushButton>(desk.window, QStringLiteral("Español")), Qt::LeftButton);
        REQUIRE(QTest::qWaitFor([&cancel] { return cancel.asked == 1; }, 5000));
        CHECK(desk.session.language() == QStringLiteral("en"));
        CHECK(desk.page->document().plan().heads == changed);
    }
    {
        const NextQuestion save(QMessageBox::Save);
        desk.page->open_plan(file);
        CHECK(save.asked == 1);
        CHECK(store::find_plan(desk.book(), "P-PLAY")->revision == 1);
        CHECK(store::find_plan(desk.book(), "P-PLAY")->plan.heads == changed);
        CHECK(desk.page->home().file == file);
    }
    desk.move_head(3);
    const NextQuestion discard(QMessageBox::Discard);
    desk.window.close();
    CHECK(discard.asked == 1);
    CHECK(!discard.offered.testFlag(QMessageBox::Save));  // it came from a file
    CHECK(!desk.window.isVisible());
}

TEST_CASE("a plan saved as a file reads back the same and counts as kept", "[desktop][constructed]") {
    PlanDesk desk;
    desk.move_head(2);
    const QString file = desk.folder.filePath(QStringLiteral("saved.json"));
    REQUIRE(desk.page->save_to(file));
    CHECK(exchange::plan_text(exchange::read_plan(file.toStdString())) == exchange::plan_text(desk.page->document().plan()));
    CHECK(desk.page->may_close());
    CHECK(desk.page->state().contains(QStringLiteral("saved.json")));
    CHECK(store::find_plan(desk.book(), "P-PLAY")->revision == 0);
}

TEST_CASE("a book for reading only keeps no plan, and a plan of one book is none of another", "[desktop][constructed]") {
    PlanDesk desk;
    Session reader;
    MainWindow window(reader);
    reader.open_book(desk.session.book_path());
    REQUIRE(!reader.can_write());
    window.show_page(QStringLiteral("plan"));
    auto* page = qobject_cast<PlanPage*>(window.page());
    REQUIRE(page);
    CHECK(page->keep_as() == nullptr);
    CHECK(page->keep() == nullptr);
    CHECK(!button<QPushButton>(*page, QStringLiteral("Keep in the book…"))->isEnabled());
    REQUIRE(wait_for_work(reader));

    desk.session.create_book(desk.folder.filePath(QStringLiteral("second.evenfall")));
    CHECK(desk.page->state().contains(QStringLiteral("of another book")));
    KeepDialog* dialog = desk.page->keep();  // its home is elsewhere, so it asks
    REQUIRE(dialog);
    CHECK(dialog->code()->text().isEmpty());
    dialog->reject();
}

TEST_CASE("a plan that was kept can still be held against a catch test", "[desktop][constructed]") {
    PlanDesk desk;
    desk.page->show_audit();
    desk.page->audit().choose_test(QStringLiteral("T-PLAY-25"));
    REQUIRE(wait_for_work(desk.session));
    REQUIRE(desk.page->audit().answer());
    desk.move_head(0);
    REQUIRE(QTest::qWaitFor([&desk] { return desk.session.task() && desk.session.task()->running(); }, 5000));
    REQUIRE(wait_for_work(desk.session));
    desk.page->keep();
    REQUIRE(wait_for_work(desk.session));
    CHECK(store::find_plan(desk.book(), "P-PLAY")->revision == 1);
    REQUIRE(desk.page->audit().answer());
    CHECK(desk.page->audit().answer()->heads.size() == desk.page->document().plan().heads.size());
}
