// SPDX-License-Identifier: GPL-3.0-or-later
// The field sheet as a person uses it: keys go to the real widgets, off screen.
#include "app/desktop/field_sheet/can_grid.h"
#include "app/desktop/field_sheet/depth_map.h"
#include "app/desktop/field_sheet/field_sheet_page.h"
#include "app/desktop/field_sheet/sheet_data.h"
#include "app/desktop/figure.h"
#include "core/audit/uniformity.h"
#include "core/input_error.h"

#include <QElapsedTimer>
#include <QSettings>
#include <QStandardPaths>
#include <QTest>
#include <QUndoStack>
#include <algorithm>
#include <array>
#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::desktop;
using Catch::Matchers::WithinAbs;

namespace {

/// Constructed: 24 catches in mL, in walking order back and forth over four rows of six.
constexpr std::array catches{52, 48, 50, 55, 47, 44, 41, 45, 49, 53, 51, 46,
                             43, 38, 40, 42, 45, 39, 36, 35, 41, 44, 37, 33};

void press_number(QWidget* grid, int number) {
    for (const QChar c : QString::number(number)) {
        QWidget* target = QApplication::focusWidget();
        QTest::keyClick(target ? target : grid, c.toLatin1());
    }
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Enter);
}

struct Sheet {
    Sheet() {
        QSettings().clear();
        page.resize(1094, 740);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
        QApplication::setActiveWindow(&page);
        page.grid()->setFocus();
    }
    ~Sheet() { session.sheet_was_saved(); }
    Session session;
    FieldSheetPage page{session};
    const SheetData& data() { return session.sheet().data(); }
    void type_all() {
        for (const int c : catches) press_number(page.grid(), c);
    }
};

}  // namespace

TEST_CASE("numbers and Enter fill the cans in the order of the walk", "[desktop][constructed]") {
    Sheet s;
    s.type_all();
    REQUIRE(s.session.sheet().cans_read() == 24);
    const auto order = walking_order(s.data());
    for (std::size_t i = 0; i < order.size(); ++i) {
        CAPTURE(i);
        CHECK(s.data().cans[order[i]].reading == static_cast<double>(catches[i]));
    }
    // The second row is walked the other way: the seventh catch stands under the sixth.
    CHECK(s.data().cans[order[6]].label == "B6");
    CHECK(s.data().cans[order[6]].x == s.data().cans[order[5]].x);
}

TEST_CASE("the figures shown are those of the core", "[desktop][constructed]") {
    Sheet s;
    s.type_all();
    const auto expected = audit::analyse_uniformity(to_catch_test(s.data()), audit::QuarterRule::whole_cans);
    const auto* du = s.page.figures()->card(QStringLiteral("du_lq"));
    REQUIRE(du);
    CHECK(du->figure().value == shown_percent(expected.du_lq.value()));
    // By hand: the six lowest are 33 35 36 37 38 39, mean 218/6; all 1054/24; ratio 872/1054.
    CHECK_THAT(expected.du_lq.value(), WithinAbs(872.0 / 1054.0, 1e-12));
    CHECK(du->figure().value == QString::fromUtf8("82.7\u00a0%"));
    CHECK(!du->figure().why.formula.isEmpty());
    CHECK(!du->figure().why.source.isEmpty());
    CHECK(du->figure().why.inputs.size() >= 3);
    CHECK(!du->figure().why.convention.isEmpty());
}

TEST_CASE("undo and redo take back and repeat one entry each", "[desktop][constructed]") {
    Sheet s;
    s.type_all();
    QUndoStack& undo = *s.page.undo_stack();
    CHECK(undo.count() == 24);
    const auto full = s.data().cans;
    undo.undo();
    CHECK(s.session.sheet().cans_read() == 23);
    undo.redo();
    CHECK(s.data().cans == full);
    while (undo.canUndo()) undo.undo();
    CHECK(s.session.sheet().cans_read() == 0);
    while (undo.canRedo()) undo.redo();
    CHECK(s.data().cans == full);
}

TEST_CASE("arrows store what is typed and move over the ground", "[desktop][constructed]") {
    Sheet s;
    QTest::keyClick(s.page.grid(), '7');
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Down);
    CHECK(s.data().cans[0].reading == 7.0);
    CHECK(s.page.grid()->currentIndex().row() == 1);
    CHECK(s.page.grid()->currentIndex().column() == 0);
}

TEST_CASE("what is no reading stays where it was typed, is marked and stops the figures",
          "[desktop][constructed]") {
    Sheet s;
    s.type_all();
    s.page.grid()->setCurrentIndex(s.page.grid()->model()->index(2, 3));
    QTest::keyClick(s.page.grid(), '1');
    QTest::keyClick(QApplication::focusWidget(), '2');
    QTest::keyClick(QApplication::focusWidget(), 'x');
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_Enter);
    const auto cell = s.page.grid()->model()->index(2, 3);
    CHECK(cell.data().toString() == QStringLiteral("12x"));
    CHECK(cell.data(Qt::ToolTipRole).toString().contains(QStringLiteral("C4")));
    CHECK(!s.session.sheet().result());
    CHECK(s.session.sheet().problem().contains(QStringLiteral("12x")));
    CHECK_THROWS_AS(to_catch_test(s.data()), InputError);
    s.page.undo_stack()->undo();
    CHECK(s.session.sheet().result());
}

TEST_CASE("a changed layout keeps readings and comes back with undo", "[desktop][constructed]") {
    Sheet s;
    s.type_all();
    const auto before = s.data().cans;
    SheetData shape = s.data();
    shape.rows = 5;
    s.session.sheet().reshape(shape, QStringLiteral("rows"));
    CHECK(s.data().cans.size() == 30);
    CHECK(s.session.sheet().cans_read() == 24);
    shape.rows = 3;
    s.session.sheet().reshape(shape, QStringLiteral("rows"));
    CHECK(s.session.sheet().cans_read() == 18);
    s.page.undo_stack()->undo();
    s.page.undo_stack()->undo();
    CHECK(s.data().cans == before);
}

TEST_CASE("US and metric change what is shown and nothing else", "[desktop][constructed]") {
    Sheet s;
    s.session.set_units(UnitsShown::us);
    s.type_all();
    const QString us = s.page.figures()->card(QStringLiteral("mean"))->figure().value;
    s.session.set_units(UnitsShown::metric);
    s.page.units_changed();
    const QString metric = s.page.figures()->card(QStringLiteral("mean"))->figure().value;
    CHECK(us.endsWith(QStringLiteral("in")));
    CHECK(metric.endsWith(QStringLiteral("mm")));
    CHECK(s.data().throat_area == "16.61 in2");
}

TEST_CASE("a sheet of the book comes back as it was", "[desktop][constructed]") {
    audit::CatchTest test;
    test.code = "T1";
    test.layout = audit::Layout::traveller;
    test.date = calendar::make_date(2025, 6, 11);
    test.lane_spacing = units::parse_measure<units::Length>("220 ft");
    test.throat_area = units::parse_measure<units::Area>("16.61 in2");
    for (const auto side : {audit::Side::left, audit::Side::right}) {
        for (int i = 0; i < 4; ++i) {
            audit::Catch c;
            c.can = (side == audit::Side::left ? "left " : "right ") + std::to_string(i);
            c.distance = 5.0 + 10.0 * i;
            c.side = side;
            c.reading = 40.0 - i;
            test.catches.push_back(c);
        }
    }
    const SheetData sheet = from_catch_test(test);
    CHECK(sheet.columns == 2);
    CHECK(sheet.rows == 4);
    const auto again = to_catch_test(sheet);
    REQUIRE(again.catches.size() == test.catches.size());
    for (std::size_t i = 0; i < again.catches.size(); ++i) {
        CHECK(again.catches[i].can == test.catches[i].can);
        CHECK(again.catches[i].distance == test.catches[i].distance);
        CHECK(again.catches[i].reading == test.catches[i].reading);
    }
    CHECK(again.lane_spacing->text() == "220 ft");
    const auto through_json = from_json(to_json(sheet));
    REQUIRE(through_json);
    CHECK(through_json->cans == sheet.cans);
}

TEST_CASE("the interval follows a moment later and is that of the core", "[desktop][constructed]") {
    Sheet s;
    s.type_all();
    REQUIRE(QTest::qWaitFor([&s] { return s.session.sheet().interval().has_value(); }, 3000));
    const auto& interval = *s.session.sheet().interval();
    CHECK(interval.low < 872.0 / 1054.0);
    CHECK(interval.high > 872.0 / 1054.0);
    CHECK(s.page.figures()->card(QStringLiteral("du_lq"))->figure().value.contains(QLatin1Char('(')));
}
