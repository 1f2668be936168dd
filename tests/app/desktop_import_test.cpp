// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of other people's making: pointed at, tried, refused, stored.
#include "core/input_error.h"
#include "tests/app/desktop_import_support.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QMenu>
#include <memory>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;

namespace {

constexpr const char* foreign =
    "Unit no.;Read on;Counter;Crew\n"
    "M-1;01/06/2025 06:00;1.000,5;A\n"
    "M-1;02/06/2025 06:00;1100,25;A\n"
    "M-2;02/06/2025 06:00;n/a;B\n";

}  // namespace

TEST_CASE("a known table is ready as it is", "[desktop][constructed]") {
    Import i;
    i.add(QStringLiteral("r.csv"), "meter,time,register\nM-1,2025-06-01,5\n");
    REQUIRE(i.page.shown());
    CHECK(i.page.shown()->kind == exchange::Kind::readings);
    CHECK(missing(*i.page.shown()).isEmpty());
    i.run(true);
    CHECK(i.readings("M-1") == 0);
    CHECK(!i.page.results().front().stored);
    CHECK(i.page.results().front().added == 1);
    i.run(false);
    CHECK(i.readings("M-1") == 1);
    CHECK(i.page.results().front().stored);
}

TEST_CASE("columns are pointed at; what is lacking is said until nothing is", "[desktop][constructed]") {
    Import i;
    i.add(QStringLiteral("foreign.csv"), foreign);
    ImportPlan& plan = *i.page.shown();
    REQUIRE(plan.header.size() == 4);
    set_kind(plan, exchange::Kind::readings);
    CHECK(missing(plan).size() == 3);
    i.page.point_at(0, QStringLiteral("meter"));
    i.page.point_at(1, QStringLiteral("time"));
    CHECK(missing(plan).size() == 1);
    i.page.point_at(3, QStringLiteral("register"));
    i.page.point_at(2, QStringLiteral("register"));  // the other column loses it
    CHECK(plan.meaning == std::vector<std::string>{"meter", "time", "register", ""});
    CHECK(missing(plan).isEmpty());
    i.page.dates()->setCurrentIndex(1);
    i.page.decimals()->setCurrentIndex(1);
    CHECK(plan.date_order == exchange::DateOrder::day_month_year);
    CHECK(plan.decimal_mark == ',');
    CHECK(i.page.preview()->horizontalHeaderItem(2)->text() == QStringLiteral("Counter\n= register"));
}

TEST_CASE("refused rows stand with row, column and reason, and can be had as a file; the rest waits for a word",
          "[desktop][constructed]") {
    Import i;
    i.add(QStringLiteral("foreign.csv"), foreign);
    set_kind(*i.page.shown(), exchange::Kind::readings);
    i.page.point_at(0, QStringLiteral("meter"));
    i.page.point_at(1, QStringLiteral("time"));
    i.page.point_at(2, QStringLiteral("register"));
    i.page.dates()->setCurrentIndex(1);
    i.page.decimals()->setCurrentIndex(1);
    i.run(false);
    CHECK(i.readings("M-1") == 0);
    const auto& result = i.page.results().front();
    CHECK(result.rejected == 2);
    REQUIRE(result.issues.size() == 2);
    CHECK(result.issues[0].place.row == 2);
    CHECK(result.issues[0].place.column == "Counter");
    CHECK(result.issues[0].found == "1.000,5");
    // In the list, and in the cell itself.
    CHECK(i.outcome(1, 1) == QStringLiteral("2"));
    CHECK(i.outcome(1, 2) == QStringLiteral("Counter"));
    CHECK(i.page.preview()->item(0, 2)->toolTip().contains(QStringLiteral("1.000,5")));
    CHECK(i.page.preview()->item(1, 2)->toolTip().isEmpty());
    i.page.outcome()->table()->setCurrentCell(2, 3);
    CHECK(i.page.preview()->currentRow() == 2);
    CHECK(i.page.preview()->currentColumn() == 2);
    const QString refused = i.folder.filePath(QStringLiteral("refused.csv"));
    CHECK(!i.page.outcome()->refused_button()->isHidden());
    REQUIRE(i.page.outcome()->write_refused(refused));
    const QByteArray text = read_file(refused);
    CHECK(text.contains("1.000,5"));
    CHECK(text.contains("n/a"));
    CHECK(!text.contains("1100,25"));

    i.page.rest()->setChecked(true);
    i.run(false);
    CHECK(i.page.results().front().stored);
    CHECK(i.readings("M-1") == 1);
    CHECK(i.readings("M-2") == 0);
}

TEST_CASE("a text that means not recorded is taken as such", "[desktop][constructed]") {
    Import i;
    i.add(QStringLiteral("weather.csv"), "station,date,tmax_c,rain_mm\nW,2025-06-01,-6999,1.5\n");
    type_into(field<QLineEdit>(i.page, QStringLiteral("Not recorded")), QStringLiteral("-6999; n/a"));
    CHECK(i.page.shown()->missing_words == std::vector<std::string>{"-6999", "n/a"});
    i.run(false);
    CHECK(i.page.results().front().stored);
}

TEST_CASE("another value for the same reading is listed, then settled as chosen", "[desktop][constructed]") {
    Import i;
    i.add(QStringLiteral("r.csv"), "meter,time,register\nM-1,2025-06-01,5\n");
    i.run(false);
    i.add(QStringLiteral("r2.csv"), "meter,time,register\nM-1,2025-06-01,7\n");
    i.run(false);
    const auto value = [&i] {
        return store::readings_from(i.session.book(), "M-1", {calendar::Instant{calendar::make_date(2025, 6, 1)}}, 1)
            .front().value;
    };
    const auto& second = i.page.results()[1];
    CHECK(!second.stored);
    CHECK(second.conflicts == 1);
    REQUIRE(second.conflict_list.size() == 1);
    CHECK(second.conflict_list[0].in_book == "5");
    CHECK(second.conflict_list[0].in_file == "7");
    CHECK(value() == 5.0);
    i.page.conflicts()->setCurrentIndex(1);
    i.run(false);
    CHECK(value() == 5.0);
    i.page.conflicts()->setCurrentIndex(2);
    i.run(false);
    CHECK(value() == 7.0);
}

TEST_CASE("a map is saved, read by the command line's reader, and gives the same plan again", "[desktop][constructed]") {
    Import i;
    i.add(QStringLiteral("foreign.csv"), foreign);
    set_kind(*i.page.shown(), exchange::Kind::readings);
    i.page.point_at(1, QStringLiteral("time"));
    i.page.point_at(2, QStringLiteral("register"));
    set_constant(*i.page.shown(), "meter", "M-2");
    i.page.dates()->setCurrentIndex(1);
    i.page.decimals()->setCurrentIndex(1);
    i.page.shown()->missing_words = {"n/a"};
    const ImportPlan made = *i.page.shown();
    const QString file = i.folder.filePath(QStringLiteral("map.json"));
    i.page.save_map(file);
    const auto read = exchange::read_table_map(file.toStdString());
    CHECK(read.kind == exchange::Kind::readings);
    CHECK(read.constants.at("meter") == "M-2");
    CHECK(read.ignore == std::vector<std::string>{"Unit no.", "Crew"});

    Import fresh;
    fresh.add(QStringLiteral("foreign.csv"), foreign);
    fresh.page.load_map(file);
    const ImportPlan& again = *fresh.page.shown();
    CHECK(again.meaning == made.meaning);
    CHECK(again.constants == made.constants);
    CHECK(again.date_order == made.date_order);
    CHECK(again.decimal_mark == made.decimal_mark);
    CHECK(again.missing_words == made.missing_words);
    CHECK(map_json(again) == map_json(made));

    fresh.add(QStringLiteral("other.csv"), "a,b\n1,2\n");
    const auto before = fresh.page.shown()->meaning;
    CHECK_THROWS_AS(fresh.page.load_map(file), InputError);
    CHECK(fresh.page.shown()->meaning == before);
}

TEST_CASE("a table with a column for each meter", "[desktop][constructed]") {
    Import i;
    i.add(QStringLiteral("wide.csv"), "When,North,South,Note\n2025-06-01,10,20,x\n2025-06-02,11,,y\n");
    set_kind(*i.page.shown(), exchange::Kind::readings);
    i.page.point_at(0, QStringLiteral("time"));
    set_meter(*i.page.shown(), 1, "M-1", std::nullopt);
    set_meter(*i.page.shown(), 2, "M-2", std::nullopt);
    CHECK(missing(*i.page.shown()).isEmpty());
    i.run(false);
    CHECK(i.page.results().front().stored);
    CHECK(i.readings("M-1") == 2);
    CHECK(i.readings("M-2") == 1);
}

TEST_CASE("one bad file keeps all files out", "[desktop][constructed]") {
    Import i;
    i.add(QStringLiteral("r.csv"), "meter,time,register\nM-1,2025-06-01,5\n");
    i.add(QStringLiteral("s.csv"), "meter;time;register\nM-1;2025-06-02;6,5\n");
    i.add(QStringLiteral("t.csv"), "meter,time,register\nM-1,2025-06-03,seven\n");
    REQUIRE(i.page.shown());
    i.run(false);
    CHECK(i.readings("M-1") == 0);
    for (const auto& r : i.page.results()) CHECK(!r.stored);
}

TEST_CASE("the menu of a column offers each column of the kind, by unit where there are several",
          "[desktop][constructed]") {
    Import i;
    i.add(QStringLiteral("lawn.csv"), "what,big\nA,1\n");
    set_kind(*i.page.shown(), exchange::Kind::areas);
    const std::unique_ptr<QMenu> menu(i.page.make_column_menu(1));
    REQUIRE(menu);
    QAction* acres = nullptr;
    for (QMenu* group : menu->findChildren<QMenu*>()) {
        for (QAction* a : group->actions()) {
            if (a->data().toString() == QStringLiteral("size_ac")) acres = a;
        }
    }
    REQUIRE(acres);
    acres->trigger();
    CHECK(i.page.shown()->meaning[1] == "size_ac");
}

TEST_CASE("a place far down the file is brought into view", "[desktop][constructed]") {
    Import i;
    std::string text = "meter,time,register\n";
    for (int d = 0; d < 900; ++d) {
        text += "M-1," + calendar::format_date(calendar::make_date(2020, 1, 1) + std::chrono::days{d}) + ",";
        text += d == 700 ? "broken\n" : std::to_string(d) + "\n";
    }
    i.add(QStringLiteral("long.csv"), text);
    i.run(true);
    REQUIRE(i.page.results().front().issues.size() == 1);
    i.page.outcome()->table()->setCurrentCell(1, 3);
    REQUIRE(i.page.preview()->currentItem());
    CHECK(i.page.preview()->currentItem()->text() == QStringLiteral("broken"));
}

TEST_CASE("an import that is stopped leaves the book as it was", "[desktop][constructed]") {
    Import i;
    std::string text = "meter,time,register\n";
    auto at = calendar::LocalTime{std::chrono::local_days{std::chrono::year{2000} / 1 / 1}};
    for (int n = 0; n < 300000; ++n, at += std::chrono::minutes{15}) {
        text += "M-1," + calendar::format_local_time(at).substr(0, 16) + "," + std::to_string(n) + "\n";
    }
    i.add(QStringLiteral("big.csv"), text);
    i.page.run(false);
    REQUIRE(i.session.task());
    QSignalSpy stopped(i.session.task(), &Task::stopped_by_user);
    QSignalSpy progressed(i.session.task(), &Task::progressed);
    QObject::connect(i.session.task(), &Task::progressed, i.session.task(), &Task::stop);
    REQUIRE(stopped.wait(30000));
    CHECK(progressed.count() >= 1);
    CHECK(i.readings("M-1") == 0);
}
