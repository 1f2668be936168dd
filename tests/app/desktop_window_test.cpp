// SPDX-License-Identifier: GPL-3.0-or-later
// The window around the pages: opening, reading only, units, theme, language, keyboard, names.
#include "app/desktop/field_sheet/field_sheet_page.h"
#include "app/desktop/main_window.h"
#include "app/desktop/plan/plan_page.h"
#include "app/desktop/season/readings_model.h"
#include "app/desktop/sites/sites_page.h"
#include "app/desktop/task.h"
#include "core/store/meter_store.h"
#include "tests/app/desktop_support.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProgressBar>
#include <QScrollBar>
#include <QTableView>
#include <QUndoStack>
#include <atomic>
#include <chrono>
#include <thread>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;

namespace {

struct Shown {
    explicit Shown(const QString& book = demo_book()) {
        QSettings().clear();
        install_language(QStringLiteral("en"));
        session.set_units(UnitsShown::us);
        window.show();
        REQUIRE(QTest::qWaitForWindowExposed(&window));
        QApplication::setActiveWindow(&window);
        if (!book.isEmpty()) window.open_book(book);
    }
    ~Shown() { wait_for_work(session); }
    QString banner() const {
        auto* label = window.findChild<QLabel*>(QStringLiteral("banner"));
        return label && !label->isHidden() ? label->text() : QString();
    }
    Session session;
    MainWindow window{session};
};

}  // namespace

TEST_CASE("every page opens with the demo book, in both units and both tones", "[desktop][constructed]") {
    Shown s;
    for (const QString& key : s.window.page_keys()) {
        CAPTURE(key.toStdString());
        s.window.show_page(key);
        REQUIRE(s.window.page());
        CHECK(s.window.page()->isVisible());
        REQUIRE(wait_for_work(s.session));
        s.session.set_units(UnitsShown::metric);
        s.session.set_theme(Theme::dark);
        REQUIRE(wait_for_work(s.session));
        s.session.set_units(UnitsShown::us);
        s.session.set_theme(Theme::light);
        REQUIRE(wait_for_work(s.session));
    }
}

TEST_CASE("the window fits a screen of 1280 by 800, whatever page has been shown", "[desktop][constructed]") {
    Shown s;
    for (const QString& key : s.window.page_keys()) {
        s.window.show_page(key);
        REQUIRE(wait_for_work(s.session));
        QCoreApplication::processEvents();
        CAPTURE(key.toStdString());
        CHECK(s.window.minimumSizeHint().width() <= 1280);
        CHECK(s.window.minimumSizeHint().height() <= 800);
    }
}

TEST_CASE("everything that can be worked has a name for a screen reader", "[desktop][constructed]") {
    Shown s;
    for (const QString& key : s.window.page_keys()) {
        s.window.show_page(key);
        for (QWidget* w : s.window.page()->findChildren<QWidget*>()) {
            const bool worked = qobject_cast<QAbstractButton*>(w) || qobject_cast<QComboBox*>(w) ||
                                qobject_cast<QLineEdit*>(w) || qobject_cast<QAbstractItemView*>(w);
            // The inner parts of a widget of Qt's own speak through it.
            if (!worked || w->objectName().startsWith(QStringLiteral("qt_")) || qobject_cast<QComboBox*>(w->parent()) ||
                w->parent()->inherits("QAbstractSpinBox") || w->parent()->inherits("QTabBar") ||
                w->parent()->inherits("QComboBoxPrivateContainer") || w->parent()->inherits("QAbstractItemView") ||
                w->parent()->inherits("QLineEdit")) {
                continue;
            }
            auto* b = qobject_cast<QAbstractButton*>(w);
            CAPTURE(key.toStdString(), w->metaObject()->className(), w->objectName().toStdString());
            CHECK((!w->accessibleName().isEmpty() || (b && !b->text().isEmpty())));
        }
    }
    wait_for_work(s.session);
}

TEST_CASE("a book that is open elsewhere opens for reading, says so, and cannot be written to",
          "[desktop][constructed]") {
    const QTemporaryDir folder;
    const QString path = copy_of_demo_book(folder);
    Session other;
    other.open_book(path);
    Shown s(path);
    CHECK(!s.session.can_write());
    CHECK(s.banner().contains(QStringLiteral("reading only")));
    s.window.show_page(QStringLiteral("field_sheet"));
    CHECK(!button<QPushButton>(*s.window.page(), QStringLiteral("Save to the book"))->isEnabled());
    s.window.show_page(QStringLiteral("import"));
    CHECK(!button<QPushButton>(*s.window.page(), QStringLiteral("Import"))->isEnabled());
}

TEST_CASE("entries that were not saved when the program ended are back, and the window says so",
          "[desktop][constructed]") {
    const QTemporaryDir folder;
    const QString path = copy_of_demo_book(folder);
    {
        Session crashed;
        crashed.open_book(path);
        SheetCan can = crashed.sheet().data().cans[5];
        can.reading = 37.0;
        crashed.sheet().set_can(5, can, QStringLiteral("reading"));
    }
    Shown s(path);
    CHECK(s.banner().contains(QStringLiteral("are back")));
    s.window.show_page(QStringLiteral("field_sheet"));
    CHECK(s.session.sheet().data().cans[5].reading == 37.0);
    s.session.sheet_was_saved();
}

TEST_CASE("US and metric change at a click, and only what is shown", "[desktop][constructed]") {
    Shown s;
    auto* sites = qobject_cast<SitesPage*>(s.window.page());
    REQUIRE(sites);
    const auto size = [sites] { return sites->table()->model()->index(0, 3).data().toString(); };
    CHECK(size().endsWith(QStringLiteral("ac")));
    QTest::mouseClick(button<QPushButton>(s.window, QStringLiteral("Metric")), Qt::LeftButton);
    CHECK(size().endsWith(QStringLiteral("ha")));
    QTest::keyClick(&s.window, Qt::Key_U, Qt::ControlModifier);
    CHECK(size().endsWith(QStringLiteral("ac")));
}

TEST_CASE("pages are reached by the keyboard", "[desktop][constructed]") {
    Shown s;
    for (int i = 0; i < static_cast<int>(s.window.page_keys().size()); ++i) {
        QTest::keyClick(&s.window, static_cast<Qt::Key>(Qt::Key_0 + i), Qt::ControlModifier);
        Page* by_key = s.window.page();
        s.window.show_page(s.window.page_keys()[i]);
        CHECK(s.window.page() == by_key);
    }
    wait_for_work(s.session);
}

TEST_CASE("undo and redo in the menu work on the page that is shown", "[desktop][constructed]") {
    Shown s(QString{});
    s.window.show_page(QStringLiteral("field_sheet"));
    auto* sheet = qobject_cast<FieldSheetPage*>(s.window.page());
    SheetCan can = s.session.sheet().data().cans[0];
    can.reading = 12.0;
    s.session.sheet().set_can(0, can, QStringLiteral("reading"));
    s.window.show_page(QStringLiteral("plan"));
    auto* plan = qobject_cast<PlanPage*>(s.window.page());
    const auto before = plan->document().plan().heads;
    plan->document().remove_head(3);
    CHECK(plan->document().plan().heads.size() == before.size() - 1);
    QTest::keyClick(&s.window, Qt::Key_Z, Qt::ControlModifier);
    CHECK(plan->document().plan().heads == before);
    CHECK(s.session.sheet().cans_read() == 1);
    s.window.show_page(QStringLiteral("field_sheet"));
    REQUIRE(sheet);
    QTest::keyClick(&s.window, Qt::Key_Z, Qt::ControlModifier);
    CHECK(s.session.sheet().cans_read() == 0);
    sheet->undo_stack()->redo();
    CHECK(s.session.sheet().cans_read() == 1);
    s.session.sheet_was_saved();
}

TEST_CASE("another language makes the window anew and keeps the page", "[desktop][constructed]") {
    Shown s;
    s.window.show_page(QStringLiteral("season"));
    REQUIRE(wait_for_work(s.session));
    s.session.set_language(QStringLiteral("es"));
    CHECK(s.window.page()->accessibleName() == QStringLiteral("Temporada"));
    REQUIRE(wait_for_work(s.session));
    s.session.set_language(QStringLiteral("en"));
    CHECK(s.window.page()->accessibleName() == QStringLiteral("Season"));
    REQUIRE(wait_for_work(s.session));
}

TEST_CASE("sites are found by words and by what needs attention", "[desktop][constructed]") {
    Shown s;
    auto* sites = qobject_cast<SitesPage*>(s.window.page());
    REQUIRE(sites);
    QCoreApplication::processEvents();
    REQUIRE(wait_for_work(s.session));
    auto* model = sites->table()->model();
    REQUIRE(model->rowCount() == 2);
    QTest::keyClicks(sites->search(), QStringLiteral("alder college"));
    REQUIRE(model->rowCount() == 1);
    CHECK(model->index(0, 0).data().toString().contains(QStringLiteral("Alder Vale")));
    sites->search()->clear();
    CHECK(model->rowCount() == 2);
    REQUIRE(QTest::qWaitFor([&] { return model->index(0, 6).data().toString() != QStringLiteral("…") &&
                                         model->index(1, 6).data().toString() != QStringLiteral("…"); }, 60000));
    sites->only_attention()->setChecked(true);
    REQUIRE(model->rowCount() >= 1);
    for (int r = 0; r < model->rowCount(); ++r) {
        CHECK(!model->index(r, 6).data().toString().contains(QStringLiteral("nothing stands out")));
    }
}

TEST_CASE("readings are fetched a page at a time", "[desktop][constructed]") {
    const store::Book book = store::Book::open(demo_book().toStdString(), store::Access::read_only);
    const auto meter = store::find_meter(book, "AV-M1");
    REQUIRE(meter);
    const ReadingsModel model(book, *meter, calendar::TimeZone("PST8PDT,M3.2.0,M11.1.0"));
    const int rows = model.rowCount();
    REQUIRE(rows > 8 * ReadingsModel::page_size);
    CHECK(model.fetches() == 0);
    const auto span = store::record_span(book, "AV-M1");
    REQUIRE(span);
    std::vector<meter::Reading> all = store::readings_from(book, "AV-M1", {span->first}, rows);
    REQUIRE(static_cast<int>(all.size()) == rows);
    for (const int row : {0, 1, 511, 512, rows / 2, rows - 1}) {
        CAPTURE(row);
        CHECK(model.index(row, 1).data().toDouble() == all[static_cast<std::size_t>(row)].value);
    }
    const int fetched = model.fetches();
    CHECK(fetched <= 4);
    for (int row = rows / 2; row < rows / 2 + 40; ++row) (void)model.index(row, 0).data();
    CHECK(model.fetches() <= fetched + 1);
    const int june = model.row_of(calendar::make_date(2025, 6, 10));
    CHECK(model.index(june, 0).data().toString().startsWith(QStringLiteral("2025-06-10 00:00")));
}

TEST_CASE("a list that drops down shows all of its few lines", "[desktop][constructed]") {
    Shown s;
    for (const QString& key : s.window.page_keys()) {
        s.window.show_page(key);
        REQUIRE(wait_for_work(s.session));
        for (QComboBox* box : s.window.page()->findChildren<QComboBox*>()) {
            if (!box->isVisible() || !box->isEnabled() || box->count() == 0 || box->count() > box->maxVisibleItems()) continue;
            CAPTURE(key.toStdString(), box->accessibleName().toStdString(), box->count());
            box->showPopup();
            QCoreApplication::processEvents();
            CHECK(box->view()->verticalScrollBar()->maximum() == 0);
            const QRect room = box->view()->viewport()->rect();
            for (int i = 0; i < box->count(); ++i) {
                const QRect line = box->view()->visualRect(box->model()->index(i, box->modelColumn()));
                CAPTURE(i, line.top(), line.bottom(), room.width(), room.height());
                CHECK(line.isValid());
                CHECK(line.top() >= room.top());
                CHECK(line.bottom() <= room.bottom());
                CHECK(box->fontMetrics().horizontalAdvance(box->itemText(i)) <= room.width());
            }
            box->hidePopup();
        }
    }
}

TEST_CASE("a search without a match says so, and one with a match chooses it", "[desktop][constructed]") {
    Shown s;
    s.window.show_page(QStringLiteral("sites"));
    REQUIRE(wait_for_work(s.session));
    auto* table = field<QTableView>(*s.window.page(), QStringLiteral("Sites"));
    auto* search = field<QLineEdit>(*s.window.page(), QStringLiteral("Search"));
    type_into(search, QStringLiteral("zzz"));
    bool said = false;
    for (const QLabel* label : s.window.page()->findChildren<QLabel*>()) {
        said = said || (label->isVisible() && label->text() == QStringLiteral("No site matches \"zzz\"."));
    }
    CHECK(said);
    type_into(search, QStringLiteral("harrow"));
    REQUIRE(table->model()->rowCount() == 1);
    CHECK(table->currentIndex().row() == 0);
    search->clear();
    CHECK(table->currentIndex().isValid());
}

TEST_CASE("print preview is offered only where there is something to print", "[desktop][constructed]") {
    Shown s;
    for (const auto& [key, expected] : {std::pair{"start", false}, {"season", true}, {"plan", true}, {"import", false}}) {
        CAPTURE(key);
        s.window.show_page(QString::fromLatin1(key));
        REQUIRE(wait_for_work(s.session));
        CHECK(s.window.page()->can_print() == expected);
    }
}

TEST_CASE("work that cannot say how far it is shows as going on, not as at nought", "[desktop][constructed]") {
    Shown s;
    REQUIRE(wait_for_work(s.session));
    Task* task = s.session.start(QStringLiteral("counting"));
    REQUIRE(task);
    auto* bar = s.window.findChild<QProgressBar*>();
    REQUIRE(bar);
    QSignalSpy done(task, &Task::finished);
    QSignalSpy progressed(task, &Task::progressed);
    std::atomic<bool> may_report{false};
    std::atomic<bool> may_end{false};
    task->start([&](const TaskContext& context) {
        while (!may_report) std::this_thread::sleep_for(std::chrono::milliseconds(1));
        context.report(0.25);
        while (!may_end) std::this_thread::sleep_for(std::chrono::milliseconds(1));
    });
    CHECK(bar->isVisible());
    CHECK(bar->minimum() == bar->maximum());
    may_report = true;
    CHECK(progressed.wait(5000));
    CHECK(bar->maximum() == 1000);
    CHECK(bar->value() == 250);
    may_end = true;
    REQUIRE(done.wait(5000));
    CHECK(!bar->isVisible());
}
