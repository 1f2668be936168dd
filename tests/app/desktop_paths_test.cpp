// SPDX-License-Identifier: GPL-3.0-or-later
// The main paths of the people the windows are for, from beginning to end in the real window.
#include "app/desktop/field_sheet/can_grid.h"
#include "app/desktop/field_sheet/field_sheet_page.h"
#include "app/desktop/figure.h"
#include "app/desktop/import/import_page.h"
#include "app/desktop/main_window.h"
#include "app/desktop/reports_page/reports_page.h"
#include "app/desktop/season/season_page.h"
#include "core/store/catch_test_store.h"
#include "tests/app/desktop_support.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QTableView>
#include <QTimer>
#include <filesystem>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;
using Catch::Matchers::WithinRel;

namespace {

struct Desk {
    Desk() {
        QSettings().clear();
        session.set_units(UnitsShown::us);
        window.show();
        REQUIRE(QTest::qWaitForWindowExposed(&window));
        QApplication::setActiveWindow(&window);
    }
    template <class P>
    P& page(const char* key) {
        window.show_page(QString::fromLatin1(key));
        auto* shown = qobject_cast<P*>(window.page());
        REQUIRE(shown);
        return *shown;
    }
    void take_in(const QStringList& paths, const std::function<void(ImportPage&)>& prepare = {}) {
        auto& importing = page<ImportPage>("import");
        while (importing.shown()) button<QPushButton>(importing, QStringLiteral("Take off the list"))->click();
        importing.add_files(paths);
        if (prepare) prepare(importing);
        QSignalSpy done(&importing, &ImportPage::finished);
        QTest::mouseClick(button<QPushButton>(importing, QStringLiteral("Import")), Qt::LeftButton);
        REQUIRE(done.wait(60000));
        for (const auto& r : importing.results()) {
            CAPTURE(r.file);
            REQUIRE(r.stored);
        }
    }

    const QTemporaryDir folder;
    Session session;
    MainWindow window{session};
};

/// The readings of one meter as another program might have written them: its own names, semicolons,
/// the day before the month.
std::string as_another_program(const std::string& table, const std::string& meter, std::string* rest) {
    std::string out = "Unit;Date and time;Counter;Remark\n";
    std::size_t begin = table.find('\n') + 1;
    *rest = table.substr(0, begin);
    while (begin < table.size()) {
        const std::size_t end = table.find('\n', begin);
        const std::string line = table.substr(begin, end - begin);
        begin = end + 1;
        if (line.rfind(meter + ",", 0) != 0) {
            *rest += line + "\n";
            continue;
        }
        const QStringList cells = q(line).split(QLatin1Char(','));  // meter,2024-01-31T06:00,123,
        const QString& t = cells[1];
        out += utf8(cells[0] + QLatin1Char(';') + t.mid(8, 2) + QLatin1Char('/') + t.mid(5, 2) + QLatin1Char('/') +
                    t.left(4) + QLatin1Char(' ') + t.mid(11) + QLatin1Char(';') + cells[2] + QStringLiteral(";none\n"));
    }
    return out;
}

}  // namespace

TEST_CASE("the auditor enters a test of 24 cans and writes the report", "[desktop][constructed]") {
    Desk d;
    d.session.create_book(d.folder.filePath(QStringLiteral("audits.evenfall")));
    d.take_in({write_file(d.folder, QStringLiteral("sites.csv"), "site,name,latitude,elevation_ft\nP,Park,38.5,60\n"),
              write_file(d.folder, QStringLiteral("areas.csv"),
                         "area,site,name,size_ac,plant,head_type\nP-1,P,North lawn,1.5,cool-season,rotor\n")});

    auto& sheet = d.page<FieldSheetPage>("field_sheet");
    type_into(field<QLineEdit>(sheet, QStringLiteral("Test")), QStringLiteral("T-1"));
    type_into(field<QLineEdit>(sheet, QStringLiteral("Throat area")), QStringLiteral("16.61 in2"));
    type_into(field<QLineEdit>(sheet, QStringLiteral("Run time, minutes")), QStringLiteral("15"));
    type_into(field<QLineEdit>(sheet, QStringLiteral("Wind")), QStringLiteral("3 mph"));
    field<QComboBox>(sheet, QStringLiteral("Area"))->setCurrentText(QStringLiteral("P-1"));
    sheet.grid()->setFocus();
    // Constructed: 21 to 44, the six lowest are 21 to 26, so that DU = 23.5 / 32.5.
    for (int can = 0; can < 24; ++can) {
        for (const QChar c : QString::number(21 + can)) QTest::keyClick(QApplication::focusWidget(), c.toLatin1());
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Enter);
    }
    CHECK(sheet.figures()->card(QStringLiteral("du_lq"))->figure().value.startsWith(QStringLiteral("72.3")));
    QTest::mouseClick(button<QPushButton>(sheet, QStringLiteral("Save to the book")), Qt::LeftButton);
    const auto saved = store::find_catch_test(d.session.book(), "T-1");
    REQUIRE(saved);
    CHECK(saved->catches.size() == 24);
    CHECK(saved->area == "P-1");

    auto& reports = d.page<ReportsPage>("reports");
    REQUIRE(wait_for_work(d.session));
    reports.set_print_program(EVENFALL_PRINT_PROGRAM);
    reports.choose(ReportKind::audit_of_test, QStringLiteral("P"), QStringLiteral("T-1"));
    REQUIRE(QTest::qWaitFor([&] { return reports.report().has_value() && wait_for_work(d.session); }, 30000));
    button<QCheckBox>(reports, QStringLiteral("Tables (csv)"))->setChecked(true);
    QSignalSpy written(&reports, &ReportsPage::files_written);
    reports.write(d.folder.path());
    REQUIRE(written.wait(60000));
    QStringList endings;
    bool found = false;
    for (const auto& file : reports.written()) {
        CAPTURE(file.string());
        CHECK(std::filesystem::file_size(file) > 0);
        endings << q(file.extension().string());
        // The figure in the paper is the figure on the screen.
        if (file.extension() == ".csv") {
            const QByteArray text = read_file(q(file.string()));
            found = found || text.contains("72.3") || text.contains("0.723");
        }
    }
    CHECK(endings.contains(QStringLiteral(".xlsx")));
    CHECK(endings.contains(QStringLiteral(".pdf")));
    CHECK(found);
}

TEST_CASE("the manager imports readings by pointing at columns and sees a leak", "[desktop][constructed]") {
    Desk d;
    d.session.create_book(d.folder.filePath(QStringLiteral("campus.evenfall")));
    QStringList known;
    std::string others;
    std::string foreign;
    for (const auto& table : demo::scenario_files()) {
        if (table.name != "readings.csv") known << write_file(d.folder, q(table.name), table.text);
        else foreign = as_another_program(table.text, "AV-M1", &others);
    }
    known << write_file(d.folder, QStringLiteral("readings.csv"), others);
    d.take_in(known);
    d.take_in({write_file(d.folder, QStringLiteral("logger.csv"), foreign)}, [](ImportPage& page) {
        auto* kind = field<QComboBox>(page, QStringLiteral("Kind of table"));
        kind->setCurrentIndex(kind->findText(QStringLiteral("readings")));
        Q_EMIT kind->activated(kind->currentIndex());
        for (const auto& [column, meaning] : {std::pair{0, "meter"}, {1, "time"}, {2, "register"}}) {
            const std::unique_ptr<QMenu> menu(page.make_column_menu(column));
            REQUIRE(menu);
            for (QAction* a : menu->actions()) {
                if (a->data().toString() == QLatin1String(meaning)) a->trigger();
            }
        }
        page.dates()->setCurrentIndex(1);
    });

    auto& season = d.page<SeasonPage>("season");
    season.show_site("AV");
    REQUIRE(QTest::qWaitFor([&] { return season.answer() && season.answer()->result.site == "AV"; }, 60000));
    // CONSTRUCTED: meter AV-M1 runs on at 1.9 gpm from 10 June to 20 August 2025, 72 days: 196,992 gal.
    const auto& total = season.answer()->result.total;
    REQUIRE(total.account);
    CHECK_THAT(total.account->leak.si() / units::us_gallon.si(), WithinRel(196992.0, 0.02));
    QListWidgetItem* leak = nullptr;
    for (int i = 0; i < season.findings()->count(); ++i) {
        QListWidgetItem* item = season.findings()->item(i);
        if (!item->data(Qt::UserRole).isValid()) continue;
        const auto& f = season.answer()->meter_findings[static_cast<std::size_t>(item->data(Qt::UserRole).toInt())];
        if (f.kind == meter::FindingKind::never_zero && f.meter == "AV-M1") leak = item;
    }
    REQUIRE(leak);
    CHECK(leak->text().contains(QStringLiteral("AV-M1")));

    // "Show me the readings" leads to them, the first day of the leak marked.
    season.findings()->setCurrentItem(leak);
    QString title;
    QString first;
    QTimer::singleShot(300, &season, [&] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog) return;
        title = dialog->windowTitle();
        auto* table = dialog->findChild<QTableView*>();
        first = table->currentIndex().siblingAtColumn(0).data().toString();
        dialog->reject();
    });
    QTest::mouseClick(button<QPushButton>(season, QStringLiteral("Show me the readings")), Qt::LeftButton);
    CHECK(title.contains(QStringLiteral("AV-M1")));
    CHECK(first.startsWith(QStringLiteral("2025-06-1")));
}
