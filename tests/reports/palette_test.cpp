// SPDX-License-Identifier: GPL-3.0-or-later
// The colours of charts against what they lie on, on paper and in a dark window.
//
// Source: W3C, Web Content Accessibility Guidelines (WCAG) 2.2, "contrast ratio" and "relative
// luminance" for the formula, success criteria 1.4.3 (text, 4.5 to 1) and 1.4.11 (parts of a graphic
// that are needed to understand it, 3 to 1). The formula is worked out here once more, so that the
// program's own is not its judge.
#include "reports/content/look.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

using namespace evenfall::reports;

namespace {

double relative_luminance(Rgb rgb) {
    const auto linear = [](double eight_bit) {
        const double c = eight_bit / 255.0;
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear((rgb >> 16) & 0xFF) + 0.7152 * linear((rgb >> 8) & 0xFF) + 0.0722 * linear(rgb & 0xFF);
}

double contrast_ratio(Rgb a, Rgb b) {
    const double la = relative_luminance(a), lb = relative_luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

constexpr Medium media[] = {Medium::paper, Medium::dark_screen};
constexpr Tone tones[] = {Tone::use,        Tone::budget, Tone::need,           Tone::uneven,    Tone::uneven_avoidable,
                          Tone::off_target, Tone::leak,   Tone::over_scheduled, Tone::reference, Tone::low_quarter};

}  // namespace

TEST_CASE("texts of charts can be read on paper and in a dark window", "[reports][published]") {
    CHECK(contrast_ratio(0xFFFFFF, 0x000000) == Approx(21.0));  // by definition
    for (const Medium medium : media) {
        CAPTURE(static_cast<int>(medium));
        const Surround& around = surround(medium);
        CHECK(contrast_ratio(around.text, around.ground) >= 4.5);
        CHECK(contrast_ratio(around.faint, around.ground) >= 4.5);
        for (int i = 0; i <= 100; ++i) {
            CAPTURE(i);
            const Rgb fill = depth_colour(i / 100.0, medium);
            CHECK(contrast_ratio(ink_on(fill), fill) >= 4.5);
        }
    }
}

// An area is told from the ground by its outline and pattern, which have the ink's colour, or by its fill.
TEST_CASE("lines and areas of charts stand out from their ground", "[reports][published]") {
    for (const Medium medium : media) {
        const Rgb ground = surround(medium).ground;
        for (const Tone tone : tones) {
            CAPTURE(static_cast<int>(medium), static_cast<int>(tone));
            CHECK(contrast_ratio(look_of(tone, medium).ink, ground) >= 3.0);
        }
    }
}

TEST_CASE("in a dark window areas stand out by their fill too, and so does every depth", "[reports][published]") {
    const Rgb ground = surround(Medium::dark_screen).ground;
    for (const Tone tone : tones) {
        CAPTURE(static_cast<int>(tone));
        CHECK(contrast_ratio(look_of(tone, Medium::dark_screen).fill, ground) >= 3.0);
    }
    for (int i = 0; i <= 100; ++i) {
        CAPTURE(i);
        CHECK(contrast_ratio(depth_colour(i / 100.0, Medium::dark_screen), ground) >= 3.0);
    }
}

// CONSTRUCTED: what is not told by colour must be the same wherever a chart is looked at.
TEST_CASE("a dark window changes colours and nothing else", "[reports][constructed]") {
    for (const Tone tone : tones) {
        CAPTURE(static_cast<int>(tone));
        const Look paper = look_of(tone, Medium::paper), dark = look_of(tone, Medium::dark_screen);
        CHECK(paper.pattern == dark.pattern);
        CHECK(paper.dash == dark.dash);
        CHECK(paper.marker == dark.marker);
        CHECK(paper.ink != dark.ink);
    }
}
