// SPDX-License-Identifier: GPL-3.0-or-later
// What is noted beside the cans: it is checked where it is typed, kept with the test, and never lost unasked.
#include "app/desktop/field_sheet/can_grid.h"
#include "app/desktop/field_sheet/field_sheet_page.h"
#include "app/desktop/field_sheet/sheet_notes.h"
#include "app/desktop/field_sheet/text_table.h"
#include "app/desktop/table_words.h"
#include "core/audit/finding.h"
#include "core/store/catch_test_store.h"
#include "core/store/field_note_store.h"
#include "core/store/journal_store.h"
#include "tests/app/desktop_support.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QImage>
#include <QMessageBox>
#include <QMimeData>
#include <QPrinter>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>
#include <QTimer>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;

namespace {

struct NoteDesk {
    NoteDesk() {
        session.open_book(copy_of_demo_book(folder));
        page.book_changed();
        REQUIRE(button<QPushButton>(page, QStringLiteral("Save to the book"))->isEnabled());
        page.resize(1094, 740);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
        QApplication::setActiveWindow(&page);
        SheetData sheet = empty_sheet(calendar::make_date(2026, 5, 12));
        sheet.code = "T-NEW";
        sheet.area = "AV-PLAY";
        sheet.minutes = "30";
        for (std::size_t i = 0; i < sheet.cans.size(); ++i) sheet.cans[i].reading = 20.0 + static_cast<double>(i);
        session.sheet().replace(std::move(sheet));
    }
    TextTable& list(const QString& name) {
        auto* tabs = page.findChild<QTabWidget*>();
        REQUIRE(tabs);
        for (int i = 0; i < tabs->count(); ++i) {
            if (tabs->tabText(i) == name) tabs->setCurrentIndex(i);
        }
        for (auto* table : page.findChildren<TextTable*>()) {
            if (table->table()->accessibleName() == name) return *table;
        }
        FAIL("no list " << name.toStdString());
        std::abort();
    }
    /// Presses "Save to the book" and answers a message, if one comes; its text.
    QString save() { return answered([this] { button<QPushButton>(page, QStringLiteral("Save to the book"))->click(); }, {}); }
    /// The text of the message box that `action` opens, answered with that button or with Escape.
    QString answered(const std::function<void()>& action, std::optional<QMessageBox::StandardButton> answer) {
        QString said;
        QTimer look;
        QObject::connect(&look, &QTimer::timeout, [&] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (!box) return;
            said = box->text();
            QPushButton* wanted = answer ? qobject_cast<QPushButton*>(box->button(*answer)) : nullptr;
            if (wanted) wanted->click();
            else box->reject();
        });
        look.start(20);
        action();
        return said;
    }
    std::optional<audit::CatchTest> stored() { return store::find_catch_test(session.book(), "T-NEW"); }

    const QTemporaryDir folder;
    Session session;
    FieldSheetPage page{session};
};

void type(QTableWidget* table, const QString& text, Qt::Key end) {
    QTest::keyClicks(table, text.left(1));
    QWidget* editor = QApplication::focusWidget();
    REQUIRE(editor != table);
    QTest::keyClicks(editor, text.mid(1));
    QTest::keyClick(editor, end);
    QCoreApplication::processEvents();  // a view takes an entry in with the next event
}

/// Types into the cell that is open.
void type_on(const QString& text) {
    QWidget* editor = QApplication::focusWidget();
    REQUIRE(editor);
    QTest::keyClicks(editor, text);
    QTest::keyClick(editor, Qt::Key_Enter);
    QCoreApplication::processEvents();
}

}  // namespace

TEST_CASE("pressures typed with Enter alone are in the book with their test", "[desktop][constructed]") {
    NoteDesk d;
    QTableWidget* table = d.list(QStringLiteral("Pressures")).table();
    table->setFocus();
    table->setCurrentCell(0, 0);
    type(table, QStringLiteral("head A3"), Qt::Key_Enter);
    for (const char* text : {"48 psi", "40 psi", "55 psi"}) type_on(QString::fromLatin1(text));
    CHECK(table->rowCount() == 2);
    CHECK(d.save().isEmpty());
    const auto test = d.stored();
    REQUIRE(test);
    REQUIRE(test->pressures);
    REQUIRE(test->pressures->size() == 1);
    const auto& p = test->pressures->front();
    CHECK(p.place == "head A3");
    CHECK(p.pressure.text() == "48 psi");
    REQUIRE(p.nozzle_low);
    CHECK(p.nozzle_low->text() == "40 psi");
    REQUIRE(p.nozzle_high);
    CHECK(p.nozzle_high->text() == "55 psi");
    CHECK_FALSE(test->findings);
}

TEST_CASE("a finding is chosen from the list and is in the book with its test", "[desktop][constructed]") {
    NoteDesk d;
    TextTable& list = d.list(QStringLiteral("Findings"));
    QTableWidget* table = list.table();
    table->setFocus();
    table->setCurrentCell(0, 0);
    table->edit(table->currentIndex());
    auto* box = table->findChild<QComboBox*>();
    REQUIRE(box);
    const int tilted = box->findText(QStringLiteral("head tilted"));
    REQUIRE(tilted > 0);
    box->setCurrentIndex(tilted);
    Q_EMIT box->activated(tilted);
    CHECK(list.rows() == std::vector<QStringList>{{QStringLiteral("tilted"), {}, {}, {}, {}, {}}});
    QCoreApplication::processEvents();
    type_on(QStringLiteral("C3"));
    type_on(QStringLiteral("2"));
    CHECK(d.save().isEmpty());
    const auto test = d.stored();
    REQUIRE(test);
    REQUIRE(test->findings);
    REQUIRE(test->findings->size() == 1);
    CHECK(test->findings->front().kind == "tilted");
    CHECK(test->findings->front().place == "C3");
    CHECK(test->findings->front().count == 2);
    CHECK(test->findings->front().severity == audit::Severity::moderate);
    CHECK_FALSE(test->findings->front().corrected);
}

TEST_CASE("a pressure that is none is said beside its list and stops the test from being stored", "[desktop][constructed]") {
    NoteDesk d;
    TextTable& list = d.list(QStringLiteral("Pressures"));
    list.table()->setItem(0, 0, new QTableWidgetItem(QStringLiteral("A3")));
    list.table()->setItem(0, 1, new QTableWidgetItem(QStringLiteral("4x psi")));
    CHECK(list.problem().startsWith(QStringLiteral("Row 1, Pressure, with unit: ")));
    CHECK(list.problem().contains(QStringLiteral("4x psi")));
    const QString said = d.save();
    CHECK(said.contains(QStringLiteral("4x psi")));
    CHECK(said.contains(QStringLiteral("row 1")));
    CHECK_FALSE(d.stored());
    CHECK(d.session.sheet_has_unsaved_entries());
    list.table()->item(0, 1)->setText(QStringLiteral("48 psi"));
    CHECK(list.problem().isEmpty());
    CHECK(d.save().isEmpty());
    CHECK(d.stored());
}

TEST_CASE("what is wrong with notes is said with row and column", "[desktop][constructed]") {
    struct Row {
        SheetPressure pressure;
        const char* column;
    };
    for (const Row& row : {Row{{"", "48 psi", "", ""}, "place"}, Row{{"A3", "", "", ""}, "pressure"},
                           Row{{"A3", "0 psi", "", ""}, "pressure"}, Row{{"A3", "48 psi", "x", ""}, "nozzle from"},
                           Row{{"A3", "48 psi", "55 psi", "40 psi"}, "nozzle to"}}) {
        CAPTURE(row.column, row.pressure.value);
        const auto issues = issues_of(row.pressure, 7);
        REQUIRE(issues.size() == 1);
        CHECK(issues.front().place.column == row.column);
        CHECK(issues.front().place.row == 7);
    }
    CHECK(issues_of(SheetPressure{"A3", "300 kpa", "40 psi", "55 psi"}, 1).empty());
    for (const auto& [finding, column] :
         {std::pair{SheetFinding{"crooked", "", "", "", "", ""}, "what was seen"},
          {SheetFinding{"tilted", "", "1.5", "", "", ""}, "how many"}, {SheetFinding{"tilted", "", "0", "", "", ""}, "how many"},
          {SheetFinding{"tilted", "", "", "awful", "", ""}, "how bad"}}) {
        CAPTURE(column, finding.count);
        const auto issues = issues_of(finding, 2);
        REQUIRE(issues.size() == 1);
        CHECK(issues.front().place.column == column);
    }
    CHECK(issues_of(SheetFinding{"tilted", "", "", "", "", ""}, 1).empty());
}

TEST_CASE("notes of a stored test may change, its catches may not", "[desktop][constructed]") {
    NoteDesk d;
    d.session.sheet().set(&SheetData::pressures, std::vector<SheetPressure>{{"A3", "48 psi", "", ""}}, QStringLiteral("p"));
    CHECK(d.save().isEmpty());
    const auto entries = store::journal(d.session.book()).size();
    d.session.sheet().set(&SheetData::pressures, std::vector<SheetPressure>{{"A4", "50 psi", "", ""}}, QStringLiteral("p"));
    CHECK(d.save().isEmpty());
    REQUIRE(d.stored()->pressures);
    REQUIRE(d.stored()->pressures->size() == 1);
    CHECK(d.stored()->pressures->front().place == "A4");
    // What stood there before is in the journal.
    const auto journal = store::journal(d.session.book());
    CHECK(journal.size() == entries + 2);
    CHECK(std::any_of(journal.begin() + static_cast<std::ptrdiff_t>(entries), journal.end(),
                      [](const auto& e) { return e.detail.find("48 psi") != std::string::npos; }));

    SheetCan can = d.session.sheet().data().cans[0];
    can.reading = 99.0;
    d.session.sheet().set_can(0, can, QStringLiteral("can"));
    const QString said = d.save();
    CHECK(said.contains(QStringLiteral("T-NEW")));
    CHECK(said.contains(QStringLiteral("not overwritten")));
    CHECK(d.stored()->catches.front().reading == 20.0);
    CHECK(d.session.sheet().data().cans[0].reading == 99.0);
    CHECK(d.session.sheet_has_unsaved_entries());
}

TEST_CASE("entries that are not in the book are not given up unasked", "[desktop][constructed]") {
    NoteDesk d;
    d.session.sheet().set(&SheetData::notes, std::string("soil moist"), QStringLiteral("n"));
    const auto new_test = [&d] { button<QPushButton>(d.page, QStringLiteral("New test"))->click(); };
    CHECK(d.answered(new_test, QMessageBox::Cancel).contains(QStringLiteral("Give them up")));
    CHECK(d.session.sheet().data().notes == "soil moist");
    CHECK(d.answered(new_test, QMessageBox::Discard).contains(QStringLiteral("Give them up")));
    CHECK(d.session.sheet().data().notes.empty());
    CHECK_FALSE(d.session.sheet_has_unsaved_entries());
}

TEST_CASE("notes of a test of the book come onto the sheet and through the journal", "[desktop][constructed]") {
    NoteDesk d;
    store::add_pressure(d.session.book(), "T-NORTH-25", {"valve box", units::parse_measure<units::Pressure>("52 psi"), {}, {}});
    store::add_finding(d.session.book(), "T-NORTH-25", {"leaking_head", "B2", 3, audit::Severity::severe, "seal", true});
    d.page.show_test("T-NORTH-25");
    const SheetData& sheet = d.session.sheet().data();
    CHECK(sheet.pressures == std::vector<SheetPressure>{{"valve box", "52 psi", "", ""}});
    CHECK(sheet.findings == std::vector<SheetFinding>{{"leaking_head", "B2", "3", "severe", "yes", "seal"}});
    CHECK(sheet.inspected);
    const auto again = from_json(to_json(sheet));
    REQUIRE(again);
    CHECK(again->pressures == sheet.pressures);
    CHECK(again->findings == sheet.findings);
    CHECK(again->inspected);
    // Journals written before there were so many columns are still read.
    const auto before = from_json(QByteArray(to_json(sheet))
                                      .replace("[\"valve box\",\"52 psi\",\"\",\"\"]", "[\"valve box\",\"52 psi\"]"));
    REQUIRE(before);
    CHECK(before->pressures == sheet.pressures);
}

TEST_CASE("the sheet is copied and printed as on paper", "[desktop][constructed]") {
    NoteDesk d;
    apply_theme(*qApp, Theme::dark);
    CHECK(d.page.can_print());
    REQUIRE(d.page.copy());
    apply_theme(*qApp, Theme::light);
    const QMimeData* mime = QApplication::clipboard()->mimeData();
    CHECK(mime->text().split(QLatin1Char('\n')).at(1) == QStringLiteral("A\t20\t21\t22\t23\t24\t25"));
    CHECK(QApplication::clipboard()->image().pixelColor(1, 1) == QColor(Qt::white));
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    const QString file = d.folder.filePath(QStringLiteral("sheet.pdf"));
    printer.setOutputFileName(file);
    CHECK(d.page.print(printer));
    CHECK(read_file(file).startsWith("%PDF"));
}
