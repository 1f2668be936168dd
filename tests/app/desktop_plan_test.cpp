// SPDX-License-Identifier: GPL-3.0-or-later
// The plan page: what moves, what is predicted, what comes back.
#include "app/desktop/plan/plan_page.h"
#include "app/desktop/plan/plan_scene.h"
#include "core/plan/overlap.h"
#include "tests/app/desktop_support.h"

#include <QApplication>
#include <QClipboard>
#include <QDoubleSpinBox>
#include <QImage>
#include <QPainter>
#include <QPicture>
#include <QUndoStack>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;

namespace {

struct Drawing {
    Drawing() {
        page.resize(1094, 740);
        page.show();
        REQUIRE(QTest::qWaitForWindowExposed(&page));
        QApplication::setActiveWindow(&page);
    }
    const plan::Head& head(std::size_t i) { return page.document().plan().heads[i]; }
    Session session;
    PlanPage page{session};
};

}  // namespace

TEST_CASE("arrows move the chosen head, one step each, and undo brings it back", "[desktop][constructed]") {
    Drawing d;
    auto* view = d.page.findChild<PlanView*>();
    REQUIRE(view);
    d.page.scene().choose(2);
    view->setFocus();
    const plan::Head before = d.head(2);
    QTest::keyClick(view, Qt::Key_Right);
    QTest::keyClick(view, Qt::Key_Up, Qt::ShiftModifier);
    CHECK(d.head(2).x == before.x + 1.0);
    CHECK(d.head(2).y == Approx(before.y + 0.1));
    d.page.undo_stack()->undo();
    d.page.undo_stack()->undo();
    CHECK(d.head(2) == before);
    d.page.undo_stack()->redo();
    CHECK(d.head(2).x == before.x + 1.0);
}

TEST_CASE("a prediction that follows one head is that of the whole plan", "[desktop][constructed]") {
    Drawing d;
    plan::Head moved = d.head(5);
    moved.x += 4.0;
    moved.radius = 27.0;
    d.page.document().set_head(5, moved, QStringLiteral("head"));
    REQUIRE(d.page.document().overlap());
    const plan::Prediction followed = d.page.document().overlap()->prediction;
    PlanDocument whole;
    whole.replace(d.page.document().plan());
    REQUIRE(whole.overlap());
    const plan::Prediction& anew = whole.overlap()->prediction;
    REQUIRE(followed.du_lq);
    REQUIRE(anew.du_lq);
    // The field is summed in another order, hence no equal bytes.
    CHECK(followed.du_lq->value() == Approx(anew.du_lq->value()).epsilon(1e-9));
    CHECK(followed.mean_rate.si() == Approx(anew.mean_rate.si()).epsilon(1e-9));
}

TEST_CASE("what cannot be predicted is said and the drawing stays", "[desktop][constructed]") {
    Drawing d;
    plan::Head bad = d.head(0);
    bad.radius = -1.0;
    d.page.document().set_head(0, bad, QStringLiteral("head"));
    CHECK(!d.page.document().problem().isEmpty());
    CHECK(d.page.document().plan().heads.size() == 12);
    d.page.undo_stack()->undo();
    CHECK(d.page.document().problem().isEmpty());
}

TEST_CASE("the drawing takes the colours of the window and keeps what was chosen; its copy is as on paper",
          "[desktop][constructed]") {
    apply_theme(*qApp, Theme::light);
    Drawing d;
    d.page.scene().choose(3);
    REQUIRE(d.page.copy());
    const QImage light_copy = QApplication::clipboard()->image();
    auto* view = d.page.findChild<PlanView*>();
    REQUIRE(view);
    const QImage light = view->grab().toImage();
    apply_theme(*qApp, Theme::dark);
    d.page.theme_changed();
    CHECK(d.page.scene().chosen() == 3);
    CHECK(view->grab().toImage() != light);
    REQUIRE(d.page.copy());
    CHECK(QApplication::clipboard()->image() == light_copy);
    apply_theme(*qApp, Theme::light);
}

// A print preview keeps a page as a picture and shows it much smaller: lines must shrink with it.
TEST_CASE("the printed drawing is no blot when the page is shown small", "[desktop][constructed]") {
    Drawing d;
    QPicture page;
    QPainter writing(&page);
    d.page.scene().draw_on_paper(writing, QRectF(0, 0, 9600, 9600), d.page.scene().sceneRect(), 12.5);
    writing.end();
    QImage shown(480, 480, QImage::Format_RGB32);
    shown.fill(Qt::white);
    QPainter painter(&shown);
    painter.scale(0.05, 0.05);
    painter.drawPicture(0, 0, page);
    painter.end();
    int dark = 0;
    for (int y = 0; y < shown.height(); ++y) {
        for (int x = 0; x < shown.width(); ++x) dark += shown.pixelColor(x, y).lightness() < 50 ? 1 : 0;
    }
    CHECK(dark > 0);
    CHECK(dark < shown.width() * shown.height() / 20);
}
