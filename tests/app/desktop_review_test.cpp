// SPDX-License-Identifier: GPL-3.0-or-later
// The officer's way through the real window, off screen: filings come in, one is looked at and
// declined. CONSTRUCTED filings, see tests/review/sample_filing.h.
#include "app/desktop/figure_table.h"
#include "app/desktop/main_window.h"
#include "app/desktop/review/decision_box.h"
#include "app/desktop/review/case_panel.h"
#include "app/desktop/review/evidence_panel.h"
#include "app/desktop/review/evidence_view.h"
#include "app/desktop/review/review_page.h"
#include "app/desktop/review/review_view.h"
#include "core/store/application_store.h"
#include "core/store/filing_store.h"
#include "core/store/journal_store.h"
#include "tests/app/desktop_office.h"

#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QTabWidget>
#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::desktop;
using evenfall::desktop::tests::cell_of;
using evenfall::desktop::tests::Office;

namespace {

/// Two good filings, and one whose second test is as uneven as the first and whose DU is claimed higher.
QStringList office_mail(const evenfall::tests::TemporaryFolder& folder) {
    evenfall::tests::write_samples(folder, 2);
    evenfall::tests::SampleChoices choices;
    choices.seed = 9;
    choices.after_unevenness = 0.40;
    review::Filing poor = evenfall::tests::sample_filing(choices);
    for (auto& c : poor.claims) {
        if (c.name == "du_lq" && c.subject == "T-AFTER") c.text = "0.81";
    }
    evenfall::tests::write_bytes(folder / "invoice.pdf", "invoice of 9");
    exchange::write_filing(folder / "f109.zip", poor, {{folder / "invoice.pdf", "invoice", ""}}, nullptr);
    QStringList files;
    for (const char* name : {"f101.zip", "f102.zip", "f109.zip"}) files << q((folder / name).string());
    return files;
}

}  // namespace

TEST_CASE("an officer reviews a filing and declines it, and the journal shows who, when and why", "[desktop][constructed]") {
    Office office;
    office.add(office_mail(office.folder));
    ReviewPage* page = office.page;
    // The one that does not recompute stands at the top and is shown.
    REQUIRE(page->queue().size() == 3);
    REQUIRE(page->shown_case());
    CHECK(page->shown_case()->application.code == "A-9");
    CHECK(cell_of(page->table(QStringLiteral("queue")), 0, 0).startsWith(QStringLiteral("A-9\n")));

    // Claim beside recomputed, told by a sign and a word.
    bool differs = false;
    const FigureTable* claims = page->table(QStringLiteral("claims"));
    for (int r = 0; r < claims->rowCount(); ++r) {
        if (cell_of(claims, r, 2) == QStringLiteral("0.81")) {
            differs = cell_of(claims, r, 4) == QStringLiteral("≠ differs");
            CHECK(!cell_of(claims, r, 3).startsWith(QStringLiteral("0.81")));
        }
    }
    CHECK(differs);
    // Rules, each with a reason; the threshold is one that is not met.
    const FigureTable* rules = page->table(QStringLiteral("rules"));
    CHECK(rules->rowCount() == 12);
    int not_met = 0;
    for (int r = 0; r < rules->rowCount(); ++r) {
        CHECK(!cell_of(rules, r, 2).isEmpty());
        not_met += cell_of(rules, r, 0) == QStringLiteral("✗ not met") ? 1 : 0;
    }
    CHECK(not_met >= 1);
    CHECK(page->table(QStringLiteral("payment"))->rowCount() >= 2);

    // No decision without a reason.
    DecisionBox* box = page->decision();
    CHECK(!box->write_button()->isEnabled());
    QTest::mouseClick(box->button(workflow::OfficerSays::decline), Qt::LeftButton);
    CHECK(box->write_button()->isEnabled());
    CHECK(!box->amount()->isEnabled());
    QTest::mouseClick(box->write_button(), Qt::LeftButton);
    CHECK(!box->trouble().isEmpty());
    CHECK(store::find_application(office.session.book(), "A-9")->status() != review::Status::declined);

    QTest::keyClicks(box->reason(), QStringLiteral("Uneven after the work; the claim does not follow from the cans."));
    box->who()->clear();
    QTest::keyClicks(box->who(), QStringLiteral("P. Navarro"));
    QTest::mouseClick(box->write_button(), Qt::LeftButton);
    CHECK(box->trouble().isEmpty());

    const auto application = *store::find_application(office.session.book(), "A-9");
    CHECK(application.status() == review::Status::declined);
    CHECK(application.history.back().who == "P. Navarro");
    const auto line = store::journal(office.session.book()).back();
    CHECK(line.who == "P. Navarro");
    CHECK(line.record == "application A-9");
    CHECK(line.at.size() == 20);
    CHECK(q(line.what).contains(QStringLiteral("declined")));
    CHECK(q(line.what).contains(QStringLiteral("the claim does not follow from the cans")));

    // The page shows it: history, letter, and no more decision but opening it again.
    const FigureTable* history = page->table(QStringLiteral("history"));
    CHECK(cell_of(history, history->rowCount() - 1, 1) == QStringLiteral("P. Navarro"));
    CHECK(cell_of(history, history->rowCount() - 1, 2) == QStringLiteral("declined"));
    CHECK(page->letter().contains(QStringLiteral("the claim does not follow from the cans")));
    CHECK(!box->button(workflow::OfficerSays::approve)->isEnabled());
    CHECK(box->button(workflow::OfficerSays::open_again)->isEnabled());
    REQUIRE(QTest::qWaitFor([page] { return page->queue().back().review.has_value(); }, 60000));
    CHECK(page->queue().back().application.code == "A-9");
}

TEST_CASE("a filing that cannot be used is named and the others come in", "[desktop][constructed]") {
    Office office;
    const QStringList files = office_mail(office.folder);
    const auto broken = office.folder / "f102.zip";
    evenfall::tests::write_bytes(broken, evenfall::tests::bytes_of(broken).substr(0, 3000));
    office.add(files);
    CHECK(store::filings(office.session.book()).size() == 2);
    CHECK(office.page->state().contains(QStringLiteral("f102.zip")));
    CHECK(office.page->queue().size() == 2);
}

TEST_CASE("the evidence stands beside the claim, rule or question that is chosen", "[desktop][constructed]") {
    Office office;
    office.add(office_mail(office.folder));
    ReviewPage* page = office.page;
    EvidencePanel& evidence = page->evidence_panel();
    CHECK(!evidence.isVisible());
    QTest::mouseClick(page->case_panel().evidence_button(), Qt::LeftButton);
    QCoreApplication::processEvents();
    // Both are on the screen, one at the right of the other; at 1280 the queue gives its room.
    FigureTable* claims = page->table(QStringLiteral("claims"));
    REQUIRE(evidence.isVisible());
    REQUIRE(claims->isVisible());
    CHECK(!page->table(QStringLiteral("queue"))->isVisible());
    CHECK(claims->mapToGlobal(QPoint(claims->width(), 0)).x() <= evidence.mapToGlobal(QPoint(0, 0)).x());
    CHECK(claims->visibleRegion().boundingRect().height() > 100);
    // The claim that differs is chosen, and the cans of its test stand there as they were typed.
    REQUIRE(claims->currentRow() >= 0);
    CHECK(cell_of(claims, claims->currentRow(), 4) == QStringLiteral("≠ differs"));
    CHECK(evidence.about().contains(QStringLiteral("T-AFTER")));
    CHECK(evidence.about().contains(QStringLiteral("0.81")));
    const auto& c = *page->shown_case();
    REQUIRE(c.filing);
    REQUIRE(evidence.tables().size() == 1);
    const FigureTable* cans = evidence.tables().front();
    const auto& test = c.filing->tests[1].test;
    REQUIRE(test.code == "T-AFTER");
    REQUIRE(cans->rowCount() == static_cast<int>(test.catches.size()));
    for (int r = 0; r < cans->rowCount(); ++r) {
        CHECK(cell_of(cans, r, 1).toDouble() == test.catches[static_cast<std::size_t>(r)].reading);
    }
    // Another row, another tab, another case: the evidence follows.
    for (int r = 0; r < claims->rowCount(); ++r) {
        if (cell_of(claims, r, 1) == QStringLiteral("T-BEFORE")) claims->setCurrentCell(r, 0);
    }
    CHECK(evidence.about().contains(QStringLiteral("T-BEFORE")));
    page->case_panel().tabs()->setCurrentWidget(page->table(QStringLiteral("rules")));
    CHECK(evidence.about().startsWith(QStringLiteral("✗ not met")));
    page->show_application(QStringLiteral("A-1"));
    CHECK(!evidence.about().startsWith(QStringLiteral("✗ not met")));
    QTest::keyClick(&office.window, Qt::Key_I, Qt::ControlModifier);
    CHECK(!evidence.isVisible());
    CHECK(page->table(QStringLiteral("queue"))->isVisible());
}

TEST_CASE("two tests have room beside each other in the evidence at 1280, and their table copies line by line", "[desktop][constructed]") {
    Office office;
    office.add(office_mail(office.folder));
    EvidencePanel& panel = office.page->evidence_panel();
    office.page->show_evidence(true);
    const auto& filing = *office.page->shown_case()->filing;
    panel.show_evidence({QStringLiteral("Copied?"), {}, "tests, T-BEFORE and T-AFTER"}, &filing);
    QCoreApplication::processEvents();
    REQUIRE(panel.tables().size() == 1);
    const FigureTable* cans = panel.tables().front();
    REQUIRE(cans->columnCount() == 4);
    CHECK(cans->horizontalScrollBar()->maximum() == 0);
    // In the second language too; the panel words its tables when it shows them.
    install_language(QStringLiteral("es"));
    panel.show_evidence({QStringLiteral("Copied?"), {}, "tests, T-BEFORE and T-AFTER"}, &filing);
    QCoreApplication::processEvents();
    CHECK(panel.tables().front()->horizontalScrollBar()->maximum() == 0);
    install_language(QStringLiteral("en"));
    REQUIRE(panel.copy());
    const QStringList lines = QApplication::clipboard()->text().split(QLatin1Char('\n'));
    CHECK(lines.size() == 25);
    for (const QString& line : lines) CHECK(line.count(QLatin1Char('\t')) == 3);
}

TEST_CASE("evidence is found by whole names, and what is named stands out", "[desktop][constructed]") {
    Office office;
    office.add(office_mail(office.folder));
    const auto& filing = *office.page->shown_case()->filing;
    const auto both = evidence_tables(filing, QStringLiteral("tests, T-BEFORE and T-AFTER"));
    REQUIRE(both.size() == 1);
    CHECK(both.front().heads.size() == 4);
    CHECK(both.front().rows.size() == 24);
    CHECK(evidence_tables(filing, QStringLiteral("tests, T-AFTER"))[0].heads.size() == 2);
    CHECK(evidence_tables(filing, QStringLiteral("tests, T-AFTERNOON"))[0].heads.size() == 4);  // none of that name: all
    CHECK(evidence_tables(filing, QStringLiteral("tests, T-AFTER; meters, MAIN")).size() == 2);
    CHECK(evidence_tables(filing, QStringLiteral("nothing of the kind")).empty());
    const QString day = q(calendar::format_date(filing.tests[0].test.date));
    const auto weather = evidence_tables(filing, QStringLiteral("weather, ") + day);
    REQUIRE(weather.size() == 2);  // what was caught that day, and the days
    CHECK(weather[0].heads.size() == 2);
    int strong = 0;
    for (const auto& row : weather[1].rows) strong += row.front().strong ? 1 : 0;
    CHECK(strong == 1);
}

TEST_CASE("a recomputed figure explains itself", "[desktop][constructed]") {
    Office office;
    office.add(office_mail(office.folder));
    const auto table = claims_table(*office.page->shown_case());
    REQUIRE(!table.rows.empty());
    for (const auto& row : table.rows) {
        REQUIRE(row[3].figure);
        CHECK(!row[3].figure->why.formula.isEmpty());
        CHECK(!row[3].figure->why.method.isEmpty());
        CHECK(!row[3].figure->why.source.isEmpty());
        CHECK(row[3].figure->why.inputs.size() == 3);
    }
}

TEST_CASE("approving asks for an amount and takes the rules' own to start from", "[desktop][constructed]") {
    Office office;
    office.add(office_mail(office.folder));
    office.page->show_application(QStringLiteral("A-1"));
    DecisionBox* box = office.page->decision();
    box->choose(workflow::OfficerSays::approve);
    CHECK(box->amount()->isEnabled());
    CHECK(box->amount()->value() == office.page->shown_case()->review->payment->total);
    box->reason()->setPlainText(reasons_of(*office.page->shown_case()));
    CHECK(!box->reason()->toPlainText().isEmpty());
    box->write();
    const auto a = *store::find_application(office.session.book(), "A-1");
    CHECK(a.status() == review::Status::approved);
    // CONSTRUCTED: 120 nozzles at 8.00.
    CHECK(a.history.back().amount == 960.0);
}

TEST_CASE("sentences in the tables are shown to their last line", "[desktop][constructed]") {
    Office office;
    office.add(office_mail(office.folder));
    for (auto* tabs : office.page->findChildren<QTabWidget*>()) tabs->setCurrentIndex(1);
    const FigureTable* rules = office.page->table(QStringLiteral("rules"));
    for (const int width : {1280, 1600}) {
        office.window.resize(width, 800);
        QCoreApplication::processEvents();
        for (int r = 0; r < rules->rowCount(); ++r) {
            for (int c = 0; c < rules->columnCount(); ++c) {
                const QTableWidgetItem* cell = rules->item(r, c);
                CAPTURE(width, cell->text().toStdString());
                // Padding of 5 and a margin of 3 on either side, as the style sheet and the style have it.
                const QRect needed = QFontMetrics(cell->font()).boundingRect(
                    QRect(0, 0, rules->columnWidth(c) - 16, 100000), Qt::TextWordWrap, cell->text());
                CHECK(rules->rowHeight(r) >= needed.height());
            }
        }
    }
}

TEST_CASE("memo and letter are written", "[desktop][constructed]") {
    Office office;
    office.add(office_mail(office.folder));
    REQUIRE(evenfall::desktop::tests::wait_for_work(office.session));
    const auto out = office.folder / "papers";
    office.page->write_papers(q(out.string()), {"txt"});
    REQUIRE(evenfall::desktop::tests::wait_for_work(office.session));
    CHECK(std::filesystem::exists(out / "letter-F-9.txt"));
    CHECK(std::filesystem::exists(out / "review-F-9.txt"));
}

TEST_CASE("a book open for reading only takes no decision", "[desktop][constructed]") {
    Office office;
    office.add(office_mail(office.folder));
    REQUIRE(evenfall::desktop::tests::wait_for_work(office.session));
    Session reader;
    MainWindow window(reader);
    reader.open_book(office.session.book_path());
    REQUIRE(!reader.can_write());
    window.show_page(QStringLiteral("review"));
    auto* page = qobject_cast<ReviewPage*>(window.page());
    REQUIRE(QTest::qWaitFor([page] { return page->shown_case().has_value(); }, 60000));
    CHECK(!page->decision()->write_button()->isEnabled());
    for (const auto says : {workflow::OfficerSays::approve, workflow::OfficerSays::decline}) {
        CHECK(!page->decision()->button(says)->isEnabled());
    }
    REQUIRE(evenfall::desktop::tests::wait_for_work(reader));
}
