// SPDX-License-Identifier: GPL-3.0-or-later
// Where the book and the files differ: listed, chosen one by one, applied. All CONSTRUCTED.
#include "app/desktop/import/conflicts_panel.h"
#include "core/exchange/conflict_table.h"
#include "tests/app/desktop_import_support.h"

#include <QComboBox>
#include <QElapsedTimer>
#include <QLabel>
#include <QTabBar>
#include <QTableView>
#include <QTranslator>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;
using store::Stands;

namespace {

/// Three readings in the book, and a file that says otherwise about two of them.
struct Differing : Import {
    Differing() {
        add(QStringLiteral("june.csv"), "meter,time,register\nM-1,2025-06-01,10\nM-1,2025-06-02,20\nM-1,2025-06-03,30\n");
        run(false);
        button<QPushButton>(page, QStringLiteral("Take off the list"))->click();
        add(QStringLiteral("july.csv"), "meter,time,register\nM-1,2025-06-01,11\nM-1,2025-06-02,21\nM-1,2025-06-03,30\n");
    }
    ConflictsPanel& panel() { return *page.differences(); }
    bool listed() { return page.tabs()->isTabVisible(1); }
    QString cell(int row, int column) {
        return panel().model()->index(row, column).data().toString();
    }
    void press(int row, Qt::Key key) {
        panel().table()->setCurrentIndex(panel().model()->index(row, 0));
        QTest::keyClick(panel().table(), key);
    }
};

std::shared_ptr<ConflictChoices> choices_of(const QTemporaryDir& folder, const std::string& text) {
    return std::make_shared<ConflictChoices>(write_file(folder, QStringLiteral("c.csv"), text).toStdString());
}

}  // namespace

TEST_CASE("a try lists where book and file differ; each is chosen by a key and applied", "[desktop][constructed]") {
    Differing d;
    CHECK(!d.listed());
    d.run(true);
    REQUIRE(d.listed());
    CHECK(d.page.tabs()->currentIndex() == 1);
    CHECK(d.page.tabs()->tabText(1) == QStringLiteral("Where they differ (2)"));
    REQUIRE(d.panel().model()->rowCount() == 2);
    CHECK(d.cell(0, ConflictsModel::place) == QStringLiteral("july.csv, row 2"));
    CHECK(d.cell(0, ConflictsModel::record).startsWith(QStringLiteral("reading of M-1 at 2025-06-01T")));
    CHECK(d.cell(0, ConflictsModel::in_book) == QStringLiteral("10"));
    CHECK(d.cell(0, ConflictsModel::in_file) == QStringLiteral("11"));
    CHECK(d.cell(0, ConflictsModel::choice) == QStringLiteral("not chosen"));
    d.press(0, Qt::Key_2);
    d.press(1, Qt::Key_Space);
    CHECK(d.cell(0, ConflictsModel::choice) == QStringLiteral("the file's"));
    CHECK(d.cell(1, ConflictsModel::choice) == QStringLiteral("the book's"));
    CHECK(d.values("M-1") == std::vector<double>{10, 20, 30});
    // The value that stands is the bold one, in words too.
    CHECK(d.panel().model()->index(0, ConflictsModel::in_file).data(Qt::FontRole).value<QFont>().bold());
    CHECK(!d.panel().model()->index(0, ConflictsModel::in_book).data(Qt::FontRole).value<QFont>().bold());
    SECTION("the import applies them") {
        d.run(false);
        CHECK(d.page.results().front().stored);
        CHECK(d.values("M-1") == std::vector<double>{11, 20, 30});
        CHECK(!d.listed());
        // The same again asks nothing, and says what it knows.
        d.run(false);
        CHECK(d.page.results().front().decided_before == 1);
        CHECK(!d.listed());
        CHECK(d.outcome(1, 3).contains(QStringLiteral("the book's stands")));
    }
    SECTION("another try keeps them") {
        d.run(true);
        CHECK(d.cell(0, ConflictsModel::choice) == QStringLiteral("the file's"));
        CHECK(d.cell(1, ConflictsModel::choice) == QStringLiteral("the book's"));
        CHECK(d.page.tabs()->currentIndex() == 0);
    }
    SECTION("what is not chosen falls to the general choice") {
        d.press(1, Qt::Key_0);
        d.run(false);
        CHECK(!d.page.results().front().stored);
        REQUIRE(d.listed());
        CHECK(d.cell(0, ConflictsModel::choice) == QStringLiteral("the file's"));
        d.page.conflicts()->setCurrentIndex(2);
        d.run(false);
        CHECK(d.values("M-1") == std::vector<double>{11, 21, 30});
    }
    SECTION("the place in the file is shown") {
        d.press(1, Qt::Key_Return);
        CHECK(d.page.preview()->currentRow() == 1);
        CHECK(d.page.preview()->currentColumn() == 2);
    }
    SECTION("another book has nothing to do with them") {
        d.session.create_book(d.folder.filePath(QStringLiteral("b.evenfall")));
        d.page.book_changed();
        CHECK(!d.listed());
        CHECK(!d.panel().choices());
    }
}

TEST_CASE("buttons choose for the selected rows and for all", "[desktop][constructed]") {
    Differing d;
    d.run(true);
    d.panel().table()->selectAll();
    const auto click = [&](const char* text) { button<QPushButton>(d.panel(), QString::fromUtf8(text))->click(); };
    const auto chosen = [&](Stands s) { return d.panel().choices()->chosen(s); };
    click("As in the file");
    CHECK(chosen(Stands::in_file) == 2);
    click("Not chosen");
    CHECK(chosen(Stands::undecided) == 2);
    d.panel().table()->selectRow(1);
    click("As in the book");
    CHECK(chosen(Stands::in_book) == 1);
    CHECK(d.panel().choices()->at(1) == Stands::in_book);
    click("All as in the book");
    CHECK(chosen(Stands::in_book) == 2);
    click("All as in the file");
    CHECK(chosen(Stands::in_file) == 2);
    d.run(false);
    CHECK(d.values("M-1") == std::vector<double>{11, 21, 30});
}

TEST_CASE("a book that changed in between is not overwritten by an old choice", "[desktop][constructed]") {
    Differing d;
    d.run(true);
    d.press(0, Qt::Key_2);
    d.press(1, Qt::Key_1);
    {
        auto other = store::Book::open(d.session.book_path().toStdString(), store::Access::read_write);
        exchange::ImportOptions o;
        o.at = "2026-01-01T00:00:00Z";
        o.conflicts = exchange::ConflictChoice::replace;
        const std::vector<std::filesystem::path> files{
            write_file(d.folder, QStringLiteral("o.csv"), "meter,time,register\nM-1,2025-06-02,22\n").toStdString()};
        REQUIRE(exchange::import_files(other, files, o).front().stored);
    }
    d.run(false);
    CHECK(d.values("M-1") == std::vector<double>{10, 22, 30});
    CHECK(d.page.tabs()->currentIndex() == 0);
    CHECK(d.outcome(0, 3).startsWith(QStringLiteral("Where they differ, row 2, column in_book: found \"20\"")));
    REQUIRE(d.listed());
    d.run(true);
    CHECK(d.cell(0, ConflictsModel::choice) == QStringLiteral("the file's"));
    CHECK(d.cell(1, ConflictsModel::in_book) == QStringLiteral("22"));
    CHECK(d.cell(1, ConflictsModel::choice) == QStringLiteral("not chosen"));
}

TEST_CASE("of several values for one record one can stand", "[desktop][constructed]") {
    const QTemporaryDir folder;
    const auto choices = choices_of(folder, "record,in_book,in_file,choice\nsite A,1,2,\nsite B,1,2,\nsite A,1,3,\n");
    ConflictsPanel panel;
    panel.show_choices(choices);
    button<QPushButton>(panel, QStringLiteral("All as in the file"))->click();
    CHECK(choices->at(0) == Stands::undecided);
    CHECK(choices->at(1) == Stands::in_file);
    CHECK(choices->at(2) == Stands::undecided);
    bool told = false;
    for (const QLabel* label : panel.findChildren<QLabel*>()) told = told || label->text().contains(QStringLiteral("Rows left as they were: 2"));
    CHECK(told);
    panel.table()->selectRow(2);
    QTest::keyClick(panel.table(), Qt::Key_2);
    CHECK(choices->at(2) == Stands::in_file);
    CHECK(choices->at(0) == Stands::in_book);
    panel.table()->selectRow(0);
    QTest::keyClick(panel.table(), Qt::Key_2);
    CHECK(choices->at(2) == Stands::in_book);
    const auto file = folder.filePath(QStringLiteral("out.csv")).toStdString();
    choices->write(file);
    CHECK(exchange::read_conflicts(file).page(0, 1).at(0).choice == Stands::in_file);
}

TEST_CASE("a list of two hundred thousand is shown page by page", "[desktop][constructed]") {
    const QTemporaryDir folder;
    std::string text = "file,row,column,record,in_book,in_file,choice\n";
    constexpr int many = 200'000;
    for (int i = 0; i < many; ++i) {
        const std::string n = std::to_string(i);
        text += "a.csv," + std::to_string(i + 2) + ",register,reading " + n + "," + n + "," + n + "x,\n";
    }
    const auto choices = choices_of(folder, text);
    ConflictsPanel panel;
    panel.resize(900, 300);
    panel.show();
    panel.show_choices(choices);
    QCoreApplication::processEvents();
    CHECK(panel.model()->rowCount() == many);
    CHECK(panel.model()->fetches() <= 2);
    panel.table()->scrollToBottom();
    QCoreApplication::processEvents();
    CHECK(panel.model()->index(many - 1, ConflictsModel::in_file).data().toString() == QStringLiteral("199999x"));
    CHECK(panel.model()->fetches() <= 5);
    QElapsedTimer clock;
    clock.start();
    button<QPushButton>(panel, QStringLiteral("All as in the file"))->click();
    QCoreApplication::processEvents();
    CHECK(choices->chosen(Stands::in_file) == many);
    panel.table()->selectAll();
    QTest::keyClick(panel.table(), Qt::Key_1);
    QCoreApplication::processEvents();
    CHECK(choices->chosen(Stands::in_book) == many);
    // A person must not wait; generous, since the machine may be busy.
    CHECK(clock.elapsed() < 2000);
}

TEST_CASE("the list of differences speaks to a screen reader", "[desktop]") {
    ConflictsPanel panel;
    CHECK(panel.table()->accessibleName() == QStringLiteral("Where the book and the files differ"));
    CHECK(panel.table()->accessibleDescription().contains(QStringLiteral("space bar")));
    for (const QPushButton* b : panel.findChildren<QPushButton*>()) CHECK(!b->text().isEmpty());
    CHECK(panel.table()->focusPolicy() != Qt::NoFocus);
}

TEST_CASE("records are named in the language shown", "[desktop]") {
    QTranslator spanish;
    REQUIRE(spanish.load(QStringLiteral(":/i18n/evenfall_es.qm")));
    QCoreApplication::installTranslator(&spanish);
    const QTemporaryDir folder;
    ConflictsModel model;
    model.show(choices_of(folder, "record,in_book,in_file,choice\nreading of M-1 at 2025-06-01T00:00:00Z,1,2,book\n"));
    CHECK(model.index(0, ConflictsModel::record).data().toString() == QStringLiteral("lectura de M-1, 2025-06-01T00:00:00Z"));
    CHECK(model.index(0, ConflictsModel::choice).data().toString() == QStringLiteral("el del libro"));
    QCoreApplication::removeTranslator(&spanish);
}
