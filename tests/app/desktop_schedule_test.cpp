// SPDX-License-Identifier: GPL-3.0-or-later
// The schedule page with the demo book, off screen. What it shows is held against the use case of
// app/workflow, which has tests of its own.
#include "app/desktop/figure_table.h"
#include "app/desktop/paper.h"
#include "app/desktop/schedule/schedule_page.h"
#include "app/desktop/schedule/schedule_view.h"
#include "app/workflow/schedule_files.h"
#include "core/store/site_store.h"
#include "tests/app/desktop_support.h"

#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QListWidget>
#include <QPushButton>
#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::desktop;

namespace {

struct SchedulePlace {
    SchedulePlace() {
        QSettings().clear();
        session.set_units(UnitsShown::us);
        session.open_book(desktop::tests::demo_book());
        page = std::make_unique<SchedulePage>(session);
        page->show_site("AV");
        settle();
    }
    /// Until nothing is being worked out and nothing more is asked for.
    void settle() {
        REQUIRE(QTest::qWaitFor([this] {
            QCoreApplication::processEvents();
            return (!session.task() || !session.task()->running()) && page->answer().has_value();
        }, 60000));
    }
    QTemporaryDir folder;
    Session session;
    std::unique_ptr<SchedulePage> page;
};

workflow::ScheduleQuestion campus() {
    return {"AV", std::chrono::year{2025} / 1, std::chrono::year{2025} / 12, "general", "nrcs", audit::QuarterRule::whole_cans, 2026, std::nullopt};
}

QByteArray bytes_in(const QString& path) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

}  // namespace

TEST_CASE("the schedule page shows what the use case answers, by the same defaults as the command line", "[desktop][constructed]") {
    SchedulePlace place;
    const auto expected = workflow::answer_schedule(place.session.book(), campus());
    REQUIRE(place.page->answer());
    CHECK(place.page->answer()->schedule.site == "AV");
    CHECK(workflow::schedule_table_text(place.page->answer()->schedule) == workflow::schedule_table_text(expected.schedule));
    const auto* table = place.page->minutes();
    const auto& months = expected.schedule.months;
    REQUIRE(!months.empty());
    REQUIRE(table->rowCount() == static_cast<int>(months.front().stations.size()));
    REQUIRE(table->columnCount() == 1 + static_cast<int>(months.size()));
    for (std::size_t m = 0; m < months.size(); ++m) {
        for (std::size_t s = 0; s < months[m].stations.size(); ++s) {
            QString text = table->item(static_cast<int>(s), static_cast<int>(m) + 1)->text();
            CHECK(text.remove(QStringLiteral(" *")) == shown_number(months[m].stations[s].minutes_a_week, 0));
        }
    }
    CHECK(table->horizontalHeaderItem(1)->text() == QStringLiteral("Jan"));
}

// CONSTRUCTED: the campus between its own station and the farm's.
TEST_CASE("a site between two weather stations has months to choose from", "[desktop][constructed]") {
    QTemporaryDir folder;
    const QString file = desktop::tests::copy_of_demo_book(folder);
    {
        auto book = store::Book::open(file.toStdString(), store::Access::read_write);
        auto site = store::find_site(book, "AV").value();
        site.weather = std::string("AVW; HBW");
        store::replace_site(book, site, std::nullopt);
    }
    Session session;
    session.open_book(file);
    SchedulePage page(session);
    page.show_site("AV");
    REQUIRE(QTest::qWaitFor([&] { return page.answer().has_value(); }, 60000));
    CHECK(page.answer()->schedule.months.size() == 12);
}

TEST_CASE("a narrow window does not fit, and the page says by how much", "[desktop][constructed]") {
    SchedulePlace place;
    place.page->set_rule({true, false, false, false, false, false, false}, QTime(5, 0), QTime(5, 30), 1);
    place.settle();
    REQUIRE(place.page->answer()->schedule.rule);
    CHECK(place.page->answer()->schedule.rule->days_a_week() == 1);
    int short_minutes = 0;
    for (const auto& m : place.page->answer()->schedule.months) short_minutes = std::max(short_minutes, m.short_minutes_a_week);
    CHECK(short_minutes > 0);
    const QListWidget* findings = place.page->findings();
    bool said = false;
    for (int i = 0; i < findings->count(); ++i) {
        said = said || findings->item(i)->text().contains(shown_number(short_minutes, 0));
    }
    CHECK(said);
    const auto* table = place.page->minutes();
    CHECK(table->item(table->rowCount() - 1, 0)->text() == QStringLiteral("Does not fit"));
}

TEST_CASE("table and calendar are written whole, the calendar only with a window", "[desktop][constructed]") {
    SchedulePlace place;
    const QString csv = place.folder.filePath(QStringLiteral("s.csv"));
    const QString ics = place.folder.filePath(QStringLiteral("s.ics"));
    CHECK(place.page->write_table(csv));
    CHECK(bytes_in(csv).toStdString() == workflow::schedule_table_text(place.page->answer()->schedule));
    CHECK(!place.page->write_calendar(ics));
    CHECK(!QFile::exists(ics));
    CHECK(place.page->state().contains(QStringLiteral("no watering rule")));

    place.page->set_rule({true, false, true, false, true, false, false}, QTime(22, 0), QTime(6, 0), 2);
    place.settle();
    REQUIRE(place.page->write_calendar(ics));
    const QByteArray calendar = bytes_in(ics);
    // RFC 5545, 3.4: a calendar begins and ends with these lines, each ended by CR LF.
    CHECK(calendar.startsWith("BEGIN:VCALENDAR\r\n"));
    CHECK(calendar.endsWith("END:VCALENDAR\r\n"));
    std::size_t starts = 0;
    for (const auto& m : place.page->answer()->schedule.months) {
        for (const auto& d : m.days) starts += d.plan.starts.size();
    }
    CHECK(static_cast<std::size_t>(calendar.count("BEGIN:VEVENT")) == starts);
    CHECK(!place.page->write_table(place.folder.filePath(QStringLiteral("none/s.csv"))));
    CHECK(place.page->state().contains(QStringLiteral("s.csv")));
}

TEST_CASE("every figure of the schedule explains itself", "[desktop][constructed]") {
    SchedulePlace place;
    const auto view = minutes_table(*place.page->answer(), UnitsShown::us);
    for (const auto& row : view.rows) {
        for (std::size_t c = 1; c < row.size(); ++c) {
            REQUIRE(row[c].figure);
            CHECK(!row[c].figure->why.formula.isEmpty());
            CHECK(row[c].figure->why.inputs.size() >= 5);
            CHECK(!row[c].figure->why.method.isEmpty());
            CHECK(!row[c].figure->why.source.isEmpty());
        }
    }
    const auto month = month_table(*place.page->answer(), 0, UnitsShown::metric);
    for (const auto& row : month.rows) {
        REQUIRE(row.size() == static_cast<std::size_t>(month.heads.size()));
        for (std::size_t c = 1; c + 1 < row.size(); ++c) CHECK(row[c].figure);
        CHECK(row[1].text.contains(QStringLiteral("mm/h")));
    }
    REQUIRE(place.page->copy());
    CHECK(QApplication::clipboard()->text().startsWith(QStringLiteral("Station, 2026\tJan\tFeb")));
    // On paper what a stranger wrote stays text.
    CHECK(paper_text(QStringLiteral("<b>x</b>"), {}, {}).contains(QStringLiteral("&lt;b&gt;")));
}

TEST_CASE("findings are shown to their last word, however narrow the page", "[desktop][constructed]") {
    SchedulePlace place;
    place.page->set_rule({true, false, false, false, false, false, false}, QTime(5, 0), QTime(5, 30), 1);
    place.settle();
    QListWidget* list = place.page->findings();
    for (const int width : {1094, 1400, 1750}) {
        place.page->resize(width, 700);
        place.page->show();
        QCoreApplication::processEvents();
        list->doItemsLayout();
        for (int i = 0; i < list->count(); ++i) {
            const QRect box = list->visualItemRect(list->item(i));
            const QRect needed = list->fontMetrics().boundingRect(QRect(0, 0, box.width() - 14, 10000), Qt::TextWordWrap, list->item(i)->text());
            CAPTURE(width, list->item(i)->text().toStdString());
            CHECK(box.height() >= needed.height());
            CHECK(box.width() <= list->viewport()->width());
        }
    }
}

TEST_CASE("a range that ends before it begins is said, not shown", "[desktop][constructed]") {
    SchedulePlace place;
    auto backward = campus();
    std::swap(backward.from, backward.to);
    CHECK_THROWS(workflow::answer_schedule(place.session.book(), backward));
}
