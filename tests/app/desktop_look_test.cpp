// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/appearance.h"
#include "app/desktop/shown.h"

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
    }
    for (int i = 0; i <= 20; ++i) {
        CAPTURE(i);
        CHECK(contrast(text_on(depth_colour(i / 20.0)), depth_colour(i / 20.0)) >= 4.5);
    }
}

// By definition: black on white is 21 to 1, a colour on itself 1 to 1.
TEST_CASE("contrast at its two ends", "[desktop][published]") {
    CHECK_THAT(contrast(Qt::black, Qt::white), WithinAbs(21.0, 1e-9));
    CHECK_THAT(contrast(QColor(0x336699), QColor(0x336699)), WithinAbs(1.0, 1e-12));
}

TEST_CASE("the depth scale falls in lightness all the way", "[desktop][constructed]") {
    double before = 22.0;
    for (int i = 0; i <= 20; ++i) {
        const double now = contrast(depth_colour(i / 20.0), Qt::black);
        CHECK(now < before);
        before = now;
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
