// SPDX-License-Identifier: GPL-3.0-or-later
// What an officer does by hand, through the real window: open an application, put a filing where it
// belongs, take every step that the rules allow, with the keyboard. CONSTRUCTED filings.
#include "app/desktop/review/application_dialog.h"
#include "app/desktop/review/case_panel.h"
#include "app/desktop/review/decision_box.h"
#include "app/desktop/review/filing_box.h"
#include "core/store/application_store.h"
#include "core/store/journal_store.h"
#include "tests/app/desktop_office.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTabWidget>

using namespace evenfall;
using namespace evenfall::desktop;
using evenfall::desktop::tests::cell_of;
using evenfall::desktop::tests::Office;
using evenfall::desktop::tests::type_into;
using evenfall::desktop::tests::wait_for_work;
using workflow::OfficerSays;

namespace {

QString one_filing(const evenfall::tests::TemporaryFolder& folder, std::uint64_t seed, const std::string& number) {
    evenfall::tests::SampleChoices choices;
    choices.seed = seed;
    review::Filing filing = evenfall::tests::sample_filing(choices);
    filing.request.application = number;
    filing.request.invoices[0].attachment.clear();
    const auto file = folder / ("f" + std::to_string(seed) + ".zip");
    exchange::write_filing(file, filing, {}, nullptr);
    return q(file.string());
}

/// An application A-1, and a filing that carries no number.
struct OfficerDesk : Office {
    OfficerDesk() {
        add({one_filing(folder, 1, "A-1"), one_filing(folder, 2, "")});
        QApplication::setActiveWindow(&window);
    }
    const store::Book& book() { return session.book(); }
    std::string waiting_sha() { return store::filings_without_application(book()).front().sha256; }
};

void give_answer(DecisionBox* box, OfficerSays says, const QString& reason) {
    REQUIRE(box->button(says)->isVisible());
    QTest::mouseClick(box->button(says), Qt::LeftButton);
    box->reason()->setPlainText(reason);
    QTest::mouseClick(box->write_button(), Qt::LeftButton);
}

}  // namespace

TEST_CASE("an application on paper is opened by hand in the window", "[desktop][constructed]") {
    OfficerDesk desk;
    ApplicationDialog* dialog = desk.page->open_by_hand(false);
    REQUIRE(dialog);
    // What is wrong is said in the dialog, and nothing is written.
    QTest::mouseClick(dialog->open_button(), Qt::LeftButton);
    CHECK(!dialog->trouble().isEmpty());
    type_into(dialog->number(), QStringLiteral("A-1"));
    type_into(dialog->applicant(), QStringLiteral("T. Vance"));
    dialog->site()->setEditText(QStringLiteral("VANCE"));
    QTest::mouseClick(dialog->open_button(), Qt::LeftButton);
    CHECK(dialog->trouble().contains(QStringLiteral("A-1")));
    CHECK(store::applications(desk.book(), "").size() == 1);

    type_into(dialog->number(), QStringLiteral("P-7"));
    dialog->program()->setCurrentIndex(dialog->program()->findData(QStringLiteral("rebate-sport-heads")));
    dialog->received()->setDate(QDate(2025, 3, 4));
    type_into(dialog->note(), QStringLiteral("By mail."));
    type_into(dialog->who(), QStringLiteral("P. Navarro"));
    QTest::mouseClick(dialog->open_button(), Qt::LeftButton);
    const auto a = store::find_application(desk.book(), "P-7");
    REQUIRE(a);
    CHECK(a->applicant == "T. Vance");
    CHECK(a->site == "VANCE");
    CHECK(a->program == "rebate-sport-heads");
    REQUIRE(a->history.size() == 1);
    CHECK(calendar::format_instant(a->history.front().at).substr(0, 10) == "2025-03-04");
    CHECK(a->history.front().note == "By mail.");
    CHECK(store::journal(desk.book()).back().who == "P. Navarro");
    CHECK(store::journal(desk.book()).back().record == "application P-7");
    // It is shown, and stands in the queue.
    REQUIRE(desk.page->shown_case());
    CHECK(desk.page->shown_case()->application.code == "P-7");
    REQUIRE(wait_for_work(desk.session));
}

TEST_CASE("a filing without a number stands under a heading of its own and is put into an application", "[desktop][constructed]") {
    OfficerDesk desk;
    const FigureTable* queue = desk.page->table(QStringLiteral("queue"));
    REQUIRE(queue->rowCount() == 3);
    CHECK(cell_of(queue, 0, 0) == QStringLiteral("A-1\nR. Osei"));
    CHECK(cell_of(queue, 1, 0).contains(QStringLiteral("without an application: 1")));
    CHECK(cell_of(queue, 2, 0) == QStringLiteral("F-2\nR. Osei"));
    CHECK(queue->columnSpan(1, 0) == queue->columnCount());
    CHECK(desk.page->state().contains(QStringLiteral("f2.zip")));

    desk.page->show_filing(q(desk.waiting_sha()));
    CasePanel& panel = desk.page->case_panel();
    REQUIRE(panel.waiting());
    // Worked out like any case, but there is nothing to decide on.
    CHECK(desk.page->table(QStringLiteral("claims"))->rowCount() > 0);
    CHECK(!desk.page->decision()->isVisible());
    FilingBox* box = panel.filing_box();
    REQUIRE(box->isVisible());
    REQUIRE(box->application()->count() == 1);
    const auto lines = store::journal(desk.book()).size();
    type_into(box->who(), QStringLiteral("P. Navarro"));
    QTest::mouseClick(box->put_button(), Qt::LeftButton);
    CHECK(store::find_application(desk.book(), "A-1")->filings.size() == 2);
    CHECK(store::journal(desk.book()).size() == lines + 1);
    CHECK(store::journal(desk.book()).back().who == "P. Navarro");
    CHECK(desk.page->shown_case()->application.code == "A-1");
    CHECK(queue->rowCount() == 1);
    CHECK(desk.page->decision()->isVisible());

    // Taken out again, it is back below the applications.
    panel.tabs()->setCurrentWidget(desk.page->table(QStringLiteral("filings")));
    FigureTable* filings = desk.page->table(QStringLiteral("filings"));
    REQUIRE(filings->rowCount() == 2);
    filings->setCurrentCell(cell_of(filings, 0, 0) == QStringLiteral("F-2") ? 0 : 1, 0);
    panel.take_out();
    CHECK(store::find_application(desk.book(), "A-1")->filings.size() == 1);
    CHECK(queue->rowCount() == 3);
    REQUIRE(wait_for_work(desk.session));
}

TEST_CASE("a filing without a number gets an application of its own", "[desktop][constructed]") {
    OfficerDesk desk;
    desk.page->show_filing(q(desk.waiting_sha()));
    ApplicationDialog* dialog = desk.page->open_by_hand(true);
    REQUIRE(dialog);
    CHECK(dialog->applicant()->text() == QStringLiteral("R. Osei"));
    CHECK(dialog->site()->currentText() == QStringLiteral("QLANE"));
    CHECK(dialog->program()->currentData().toString() == QStringLiteral("rebate-sport-heads"));
    type_into(dialog->number(), QStringLiteral("A-2"));
    QTest::mouseClick(dialog->open_button(), Qt::LeftButton);
    const auto a = store::find_application(desk.book(), "A-2");
    REQUIRE(a);
    CHECK(a->filings.size() == 1);
    CHECK(a->history.size() == 2);  // received, and reviewed at once
    CHECK(desk.page->waiting().empty());
    CHECK(desk.page->shown_case()->application.code == "A-2");
    CHECK(desk.page->shown_case()->review);
    REQUIRE(wait_for_work(desk.session));
}

TEST_CASE("an application goes through every state in the window, to paid", "[desktop][constructed]") {
    OfficerDesk desk;
    desk.page->show_application(QStringLiteral("A-1"));
    DecisionBox* box = desk.page->decision();
    const auto status = [&] { return store::find_application(desk.book(), "A-1")->status(); };
    REQUIRE(status() == review::Status::incomplete);  // its invoice came without its paper
    CHECK(!box->button(OfficerSays::pay)->isVisible());
    give_answer(box, OfficerSays::put_back, QStringLiteral("The invoice came."));
    CHECK(status() == review::Status::received);
    give_answer(box, OfficerSays::take_up, {});
    CHECK(status() == review::Status::under_review);
    give_answer(box, OfficerSays::approve, {});
    CHECK(!box->trouble().isEmpty());  // approving needs a reason
    box->reason()->setPlainText(QStringLiteral("All met."));
    box->amount()->setValue(840.0);
    QTest::mouseClick(box->write_button(), Qt::LeftButton);
    CHECK(status() == review::Status::approved);
    CHECK(!box->button(OfficerSays::approve)->isVisible());
    QTest::mouseClick(box->button(OfficerSays::pay), Qt::LeftButton);
    CHECK(box->amount()->isEnabled());
    CHECK(box->amount()->value() == 840.0);  // as approved
    box->reason()->setPlainText(QStringLiteral("Transfer 12."));
    QTest::mouseClick(box->write_button(), Qt::LeftButton);
    CHECK(status() == review::Status::paid);
    const auto line = store::journal(desk.book()).back();
    CHECK(q(line.what).contains(QStringLiteral("paid")));
    CHECK(q(line.what).contains(QStringLiteral("Transfer 12.")));
    CHECK(store::find_application(desk.book(), "A-1")->history.back().amount == 840.0);
    // Nothing may follow, and nothing is offered.
    for (std::size_t i = 0; i < workflow::officer_answers; ++i) CHECK(!box->button(static_cast<OfficerSays>(i))->isVisible());
    CHECK(!box->write_button()->isEnabled());
    REQUIRE(wait_for_work(desk.session));
}

TEST_CASE("the keyboard goes through the cases and decides", "[desktop][constructed]") {
    OfficerDesk desk;
    REQUIRE(QTest::qWaitForWindowActive(&desk.window));
    desk.page->show_application(QStringLiteral("A-1"));
    QTest::keyClick(&desk.window, Qt::Key_PageDown, Qt::ControlModifier);
    REQUIRE(desk.page->case_panel().waiting());  // over the heading
    QTest::keyClick(&desk.window, Qt::Key_PageDown, Qt::ControlModifier);
    CHECK(desk.page->case_panel().waiting());    // the last one
    QTest::keyClick(&desk.window, Qt::Key_PageUp, Qt::ControlModifier);
    CHECK(desk.page->shown_case()->application.code == "A-1");
    // Also with the queue hidden by the evidence.
    QTest::keyClick(&desk.window, Qt::Key_I, Qt::ControlModifier);
    CHECK(!desk.page->table(QStringLiteral("queue"))->isVisible());
    QTest::keyClick(&desk.window, Qt::Key_PageDown, Qt::ControlModifier);
    CHECK(desk.page->case_panel().waiting());
    QTest::keyClick(&desk.window, Qt::Key_PageUp, Qt::ControlModifier);
    QTest::keyClick(&desk.window, Qt::Key_D, Qt::ControlModifier);
    DecisionBox* box = desk.page->decision();
    REQUIRE(QApplication::focusWidget() == box->button(OfficerSays::approve));
    box->choose(OfficerSays::decline);
    box->reason()->setFocus();
    QTest::keyClicks(box->reason(), QStringLiteral("No."));
    QTest::keyClick(box->reason(), Qt::Key_Return, Qt::ControlModifier);
    CHECK(store::find_application(desk.book(), "A-1")->status() == review::Status::declined);
    REQUIRE(wait_for_work(desk.session));
}

TEST_CASE("the actions of a page stand in the menu with their keys, and no two keys are the same", "[desktop][constructed]") {
    OfficerDesk desk;
    for (const QString& key : desk.window.page_keys()) {
        desk.window.show_page(key);
        REQUIRE(wait_for_work(desk.session));
        QStringList keys;
        bool offered = false;
        for (const QAction* menu : desk.window.menuBar()->actions()) {
            if (!menu->menu()) continue;
            for (const QAction* a : menu->menu()->actions()) {
                if (a->shortcut().isEmpty()) continue;
                keys << a->shortcut().toString();
                offered = offered || (menu->isVisible() && a->shortcut() == QKeySequence(QStringLiteral("Ctrl+PgDown")));
            }
        }
        CAPTURE(key.toStdString(), keys.join(QLatin1Char(' ')).toStdString());
        const QStringList all = keys;
        keys.removeDuplicates();
        CHECK(keys.size() == all.size());
        CHECK(offered == (key == QStringLiteral("review")));
    }
}

TEST_CASE("the queue never scrolls sideways, and what is cut off is said in a tooltip", "[desktop][constructed]") {
    for (const char* language : {"en", "es"}) {
        QSettings().clear();
        install_language(QLatin1String(language));
        {
            OfficerDesk desk;
            desk.session.create_book(q((desk.folder / "long.evenfall").string()));
            workflow::OpenedByHand long_names;
            long_names.number = "RB-2025-000118-AMENDED";
            long_names.applicant = "Consolidated Countryside Recreation";
            long_names.site = "S";
            long_names.program = review::built_in_rebate("rebate-sport-heads");
            long_names.received = *calendar::parse_date("2025-01-01");
            long_names.who = "x";
            long_names.at = "2025-01-02T00:00:00Z";
            workflow::open_application(desk.session.book(), long_names);
            desk.session.book_was_changed();
            for (const int width : {1280, 1920}) {
                desk.window.resize(width, 800);
                QCoreApplication::processEvents();
                const FigureTable* queue = desk.page->table(QStringLiteral("queue"));
                REQUIRE(queue->rowCount() == 1);
                CAPTURE(language, width);
                CHECK(queue->horizontalScrollBar()->maximum() == 0);
                CHECK(queue->item(0, 0)->toolTip().startsWith(QStringLiteral("RB-2025-000118-AMENDED")));
            }
            REQUIRE(wait_for_work(desk.session));
        }
    }
    install_language(QStringLiteral("en"));
}
