// SPDX-License-Identifier: GPL-3.0-or-later
// The plan page, and a plan held against a catch test, off screen.
#include "app/desktop/figure.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/plan/audit_panel.h"
#include "app/desktop/plan/plan_page.h"
#include "app/desktop/plan/plan_scene.h"
#include "core/exchange/plan_file.h"
#include "core/input_error.h"
#include "core/plan/sprinkler.h"
#include "core/store/catch_test_store.h"
#include "core/store/plan_store.h"
#include "tests/app/desktop_support.h"
#include "tests/plan/plans.h"

#include <QFile>
#include <QUndoStack>
#include <catch2/catch.hpp>
#include <cmath>

using namespace evenfall;
using namespace evenfall::desktop;
using Catch::Matchers::WithinAbs;

namespace {

/// CONSTRUCTED: a lawn of full circles 9 m apart in which head H1 to Hn lie row by row.
plan::Plan small_lawn() {
    plan::Plan p;
    p.name = "lawn";
    p.units = plan_test::metric();
    p.turf = {plan_test::rectangle(0, 0, 36, 27)};
    int n = 0;
    for (int row = 0; row < 4; ++row) {
        for (int column = 0; column < 5; ++column) {
            p.heads.push_back(plan_test::head(plan_test::numbered("H", ++n), 9.0 * column, 9.0 * row, 9.0, 1.0));
        }
    }
    return p;
}

/// The catches of that lawn in 30 minutes when one head delivers only a share of its design; no scatter.
QString catches_of(const plan::Plan& p, std::size_t weak, double share) {
    const plan::Sprinklers all = plan::sprinklers_of(p);
    const plan::PatternMap map = plan::pattern_map(std::nullopt);
    QString text = QStringLiteral("test,area,date,minutes,can,x_m,y_m,depth_mm\n");
    int can = 0;
    for (double y = 1.5; y < 27.0; y += 3.0) {
        for (double x = 1.5; x < 36.0; x += 3.0) {
            double depth = 0.0;
            for (std::size_t j = 0; j < all.heads.size(); ++j) {
                depth += (j == weak ? share : 1.0) * plan::rate_at(all, all.heads[j], {x, y}, map) * 1800.0 * 1000.0;
            }
            text += QStringLiteral("T-LAWN,A,2025-06-12,30,%1,%2,%3,%4\n").arg(++can).arg(x).arg(y).arg(depth, 0, 'f', 4);
        }
    }
    return text;
}

struct PlanPlace {
    PlanPlace() {
        QSettings().clear();
        session.set_units(UnitsShown::metric);
    }
    void compare() {
        QCoreApplication::processEvents();
        REQUIRE(desktop::tests::wait_for_work(session));
    }
    QString file(const char* name, const QString& text) {
        const QString path = folder.filePath(QLatin1String(name));
        QFile out(path);
        REQUIRE(out.open(QIODevice::WriteOnly));
        out.write(text.toUtf8());
        return path;
    }
    QTemporaryDir folder;
    Session session;
    PlanPage page{session};
};

}  // namespace

TEST_CASE("a head that delivers less is named with its evidence, and others are left alone", "[desktop][constructed]") {
    PlanPlace place;
    const plan::Plan p = small_lawn();
    place.page.open_plan(place.file("plan.json", q(exchange::plan_text(p))));
    REQUIRE(place.page.document().plan().heads.size() == 20);
    place.page.show_audit();
    AuditPanel& audit = place.page.audit();
    audit.open_catches(place.file("catches.csv", catches_of(p, 7, 0.4)));
    place.compare();
    INFO(audit.state().toStdString());
    REQUIRE(audit.answer());
    // The planted head is H8, in the middle of the lawn.
    CHECK(audit.heads()->item(0, 0)->text() == QStringLiteral("H8"));
    CHECK(audit.heads()->item(0, 1)->text() == QStringLiteral("▼ less than most"));
    for (const auto& h : audit.answer()->heads) {
        CAPTURE(h.head);
        if (h.head == "H8") {
            CHECK_THAT(h.output, WithinAbs(0.4, 3.0 * h.error));
        } else {
            CHECK(h.verdict != plan::Verdict::weak);
            CHECK(h.verdict != plan::Verdict::strong);
        }
    }
    audit.heads()->setCurrentCell(0, 0);
    CHECK(audit.evidence().contains(QStringLiteral("H8")));
    CHECK(audit.evidence().contains(QStringLiteral("can")));
    // Each can on the drawing tells its difference by sign, shape and number.
    const auto marks = can_marks(*audit.answer(), UnitsShown::metric);
    REQUIRE(marks.size() == audit.answer()->cans.size());
    int drier = 0;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const double mm = workflow::difference_at(*audit.answer(), audit.answer()->cans[i]).in(units::millimetre);
        CHECK(marks[i].text.startsWith(QLatin1Char('+')) == (mm > 0.0));
        CHECK(marks[i].fell == workflow::fell_at(*audit.answer(), audit.answer()->cans[i]));
        drier += marks[i].fell == workflow::Fell::drier ? 1 : 0;
    }
    CHECK(drier > 0);
    CHECK(audit.cans()->rowCount() == static_cast<int>(marks.size()));
    for (const auto& figure : audit_figures(*audit.answer(), UnitsShown::metric)) {
        CAPTURE(figure.key.toStdString());
        CHECK(!figure.why.formula.isEmpty());
        CHECK(!figure.why.method.isEmpty());
        CHECK(!figure.why.source.isEmpty());
    }
}

TEST_CASE("a catch test of the book is held against a plan of the book", "[desktop][constructed]") {
    PlanPlace place;
    place.session.open_book(desktop::tests::copy_of_demo_book(place.folder));
    {
        store::Transaction all(place.session.book());
        store::add_plan(place.session.book(), "P-LAWN", "AV", small_lawn(), std::nullopt);
        all.commit();
    }
    place.page.book_changed();
    place.page.open_plan_of_book(QStringLiteral("P-LAWN"));
    CHECK(place.page.document().plan().heads.size() == 20);
    AuditPanel& audit = place.page.audit();
    audit.choose_test(QStringLiteral("T-PLAY-25"));
    place.compare();
    INFO(audit.state().toStdString());
    REQUIRE(audit.answer());
    const auto test = store::find_catch_test(place.session.book(), "T-PLAY-25");
    const auto expected = plan::plan_against_audit(small_lawn(), *test);
    REQUIRE(audit.answer()->heads.size() == expected.heads.size());
    for (std::size_t i = 0; i < expected.heads.size(); ++i) {
        CHECK(audit.answer()->heads[i].verdict == expected.heads[i].verdict);
        CHECK(audit.answer()->heads[i].output == expected.heads[i].output);
    }
    // A change of the plan is held against the test again.
    plan::Head moved = place.page.document().plan().heads[7];
    moved.x += 2.0;
    place.page.document().set_head(7, moved, QStringLiteral("move"));
    REQUIRE(QTest::qWaitFor([&] { return audit.answer() && audit.answer()->heads[7].output != expected.heads[7].output; }, 20000));
    place.compare();
    place.page.undo_stack()->undo();
    REQUIRE(QTest::qWaitFor([&] { return audit.answer() && audit.answer()->heads[7].output == expected.heads[7].output; }, 20000));
    place.compare();
    audit.choose_test(QString());
    CHECK(!audit.answer());
    CHECK(!audit.state().isEmpty());
}

TEST_CASE("a table of catches that cannot be used is said on the page", "[desktop][constructed]") {
    PlanPlace place;
    AuditPanel& audit = place.page.audit();
    audit.open_catches(place.file("bad.csv", QStringLiteral("test,area,date,minutes,can,x_m,y_m,depth_mm\nT,A,2025-06-12,30,1,1,1,x\n")));
    CHECK(!audit.answer());
    CHECK(audit.state().contains(QStringLiteral("bad.csv")));
    CHECK(audit.state().contains(QStringLiteral("depth_mm")));
    QString two = catches_of(small_lawn(), 7, 1.0);
    two += QStringLiteral("T-OTHER,A,2025-06-13,30,1,1.5,1.5,5\n");
    const QString path = place.file("two.csv", two);
    audit.open_catches(path);
    CHECK(audit.state().contains(QStringLiteral("T-OTHER")));
    CHECK(workflow::catch_test_in(path.toStdString(), "T-OTHER").catches.size() == 1);
    CHECK_THROWS_AS(workflow::catch_test_in(path.toStdString(), "T-NONE"), InputError);
}
