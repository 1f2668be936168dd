// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/appearance.h"
#include "app/desktop/chart_panel.h"
#include "app/desktop/shown.h"
#include "reports/print/draw_chart.h"

#include <QApplication>
#include <QClipboard>
#include <QEvent>
#include <QImage>
#include <QPainter>
#include <QTest>
#include <algorithm>
#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::desktop;
using Catch::Matchers::WithinAbs;

// Source: W3C Web Content Accessibility Guidelines 2.1, success criterion 1.4.3: 4.5 to 1 for text.
TEST_CASE("text can be read on every ground, light and dark", "[desktop][published]") {
    for (const Theme theme : {Theme::light, Theme::dark}) {
        const Look& l = look(theme);
        for (const QColor& ground : {l.paper, l.surface}) {
            CHECK(contrast(l.ink, ground) >= 4.5);
            CHECK(contrast(l.faint, ground) >= 4.5);
            CHECK(contrast(l.warn, ground) >= 4.5);
        }
        CHECK(contrast(l.on_accent, l.accent) >= 4.5);
        for (int i = 0; i <= 20; ++i) {
            CAPTURE(i);
            const QColor depth = depth_colour(i / 20.0, theme);
            CHECK(contrast(text_on(depth), depth) >= 4.5);
        }
    }
}

// Source: the same, success criterion 1.4.11: 3 to 1 for what is needed to understand a graphic. On a map
// of depths a line has an edge of the surface's colour: on every depth one of the two stands out.
TEST_CASE("lines over a map of depths are seen everywhere", "[desktop][published]") {
    for (const Theme theme : {Theme::light, Theme::dark}) {
        const Look& l = look(theme);
        CHECK(contrast(l.accent, l.surface) >= 3.0);
        for (int i = 0; i <= 100; ++i) {
            CAPTURE(i);
            const QColor depth = depth_colour(i / 100.0, theme);
            CHECK(std::max(contrast(l.ink, depth), contrast(l.surface, depth)) >= 3.0);
        }
    }
}

namespace {

/// Sets a theme for the time of a test.
struct Dressed {
    explicit Dressed(Theme theme) { apply_theme(*qApp, theme); }
    ~Dressed() { apply_theme(*qApp, Theme::light); }
};

reports::Table table_of_two_months() {
    reports::Table table{.key = "months", .title = "Months", .sentence = {}, .columns = {}, .rows = {}};
    table.columns = {{.key = "month", .title = "Month", .is_text = true}, {.key = "use", .title = "Use"}};
    table.add("jun", {{.value = "Jun"}, {.value = 40.0}});
    table.add("jul", {{.value = "Jul"}, {.value = 55.0}});
    return table;
}

reports::SeriesChart chart_of_use() {
    return {.categories = {"months", "month"}, .series = {{.name = "Use", .values = {"months", "use"}}}, .x = {}, .y = {}};
}

/// How many of the picture's dots have that colour.
int dots_of(const QImage& picture, const QColor& colour) {
    int count = 0;
    for (int y = 0; y < picture.height(); ++y) {
        for (int x = 0; x < picture.width(); ++x) count += picture.pixelColor(x, y).rgb() == colour.rgb() ? 1 : 0;
    }
    return count;
}

QColor ink_of_use(reports::Medium medium) { return QColor::fromRgb(reports::look_of(reports::Tone::use, medium).fill); }

}  // namespace

TEST_CASE("a chart takes the colours of the window at once; its copy is as on paper", "[desktop][constructed]") {
    const Dressed light(Theme::light);
    ChartPanel panel;
    panel.resize(400, 300);
    panel.set_chart(chart_of_use(), table_of_two_months(), QStringLiteral("Use"));
    panel.show();
    REQUIRE(QTest::qWaitForWindowExposed(&panel));
    const QColor on_paper = ink_of_use(reports::Medium::paper), on_dark = ink_of_use(reports::Medium::dark_screen);
    CHECK(dots_of(panel.grab().toImage(), on_paper) > 500);
    apply_theme(*qApp, Theme::dark);
    const QImage dark = panel.grab().toImage();
    CHECK(dots_of(dark, on_dark) > 500);
    CHECK(dots_of(dark, on_paper) == 0);
    CHECK(dots_of(dark, Qt::white) == 0);
    REQUIRE(panel.copy());
    const QImage copied = QApplication::clipboard()->image();
    CHECK(dots_of(copied, on_paper) > 500);
    CHECK(dots_of(copied, on_dark) == 0);
    CHECK(copied.pixelColor(2, 2) == QColor(Qt::white));
}

TEST_CASE("drawing a chart lets nothing else in the window happen meanwhile", "[desktop][constructed]") {
    // A preview that asks for its pages must not be painted before they are made.
    class Waiting : public QObject {
      public:
        int told = 0;

      protected:
        void customEvent(QEvent*) override { ++told; }
    };
    Waiting waiting;
    QCoreApplication::postEvent(&waiting, new QEvent(QEvent::User));
    QImage picture(400, 300, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    reports::draw_series(painter, picture.rect(), 96.0 / 72.0, chart_of_use(), table_of_two_months());
    painter.end();
    CHECK(dots_of(picture, ink_of_use(reports::Medium::paper)) > 500);
    CHECK(waiting.told == 0);
    QCoreApplication::sendPostedEvents(&waiting);
    CHECK(waiting.told == 1);
}

// By definition: black on white is 21 to 1, a colour on itself 1 to 1.
TEST_CASE("contrast at its two ends", "[desktop][published]") {
    CHECK_THAT(contrast(Qt::black, Qt::white), WithinAbs(21.0, 1e-9));
    CHECK_THAT(contrast(QColor(0x336699), QColor(0x336699)), WithinAbs(1.0, 1e-12));
}

TEST_CASE("the depth scale falls in lightness all the way", "[desktop][constructed]") {
    for (const Theme theme : {Theme::light, Theme::dark}) {
        double before = 22.0;
        for (int i = 0; i <= 20; ++i) {
            const double now = contrast(depth_colour(i / 20.0, theme), Qt::black);
            CHECK(now < before);
            before = now;
        }
    }
}

// Exact by definition: NIST SP 811 appendix B; 1 ac = 4046.8564224 m2, 1 gal = 3.785411784 L.
TEST_CASE("quantities are shown in both systems with their unit", "[desktop][published]") {
    const QChar blank(0xA0);
    CHECK(shown(1e6 * units::us_gallon, UnitsShown::us) == QStringLiteral("1,000,000") + blank + QStringLiteral("gal"));
    CHECK(shown(1e6 * units::us_gallon, UnitsShown::metric) == QStringLiteral("3,785.4") + blank + QStringLiteral("m³"));
    CHECK(shown(10.0 * units::acre, UnitsShown::metric) == QStringLiteral("4.05") + blank + QStringLiteral("ha"));
    CHECK(shown(25.4 * units::millimetre, UnitsShown::us) == QStringLiteral("1.00") + blank + QStringLiteral("in"));
    CHECK(shown(std::optional<units::Depth>(), UnitsShown::us) == not_recorded());
    CHECK(shown_percent(0.625) == QStringLiteral("62.5") + blank + QStringLiteral("%"));
}
