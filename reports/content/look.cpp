// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/look.h"

#include <algorithm>
#include <cmath>

namespace evenfall::reports {
namespace {

double channel(Rgb colour, int shift) { return static_cast<double>((colour >> shift) & 0xFFU); }

Rgb between(Rgb a, Rgb b, double t) {
    Rgb out = 0;
    for (const int shift : {16, 8, 0}) {
        const double v = channel(a, shift) + (channel(b, shift) - channel(a, shift)) * t;
        out |= static_cast<Rgb>(std::lround(v)) << shift;
    }
    return out;
}

double linear(double channel_255) {
    const double c = channel_255 / 255.0;
    return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

Look on_paper(Tone tone) {
    switch (tone) {
        case Tone::use: return {0x1F4E79, 0x1F4E79, Pattern::solid, Dash::solid, Marker::circle};
        case Tone::budget:
            return {0xEAD7A8, 0x8A6A2F, Pattern::diagonal_up, Dash::dashed, Marker::square};
        case Tone::need: return {0x7FA8C9, 0x4A7AA0, Pattern::solid, Dash::solid, Marker::diamond};
        case Tone::uneven:
            return {0xDCE6EE, 0x5B7C96, Pattern::dots, Dash::dotted, Marker::triangle};
        case Tone::uneven_avoidable:
            return {0xF1E3BF, 0x9A7632, Pattern::diagonal_down, Dash::dashed, Marker::triangle};
        case Tone::off_target:
            return {0xC99B4C, 0x6E4F1C, Pattern::cross, Dash::dotted, Marker::square};
        case Tone::leak: return {0x15222E, 0x15222E, Pattern::solid, Dash::dashed, Marker::diamond};
        case Tone::over_scheduled:
            return {0xA8752F, 0x4F3410, Pattern::solid, Dash::dashed, Marker::circle};
        case Tone::reference:
            return {0x2B2B2B, 0x2B2B2B, Pattern::solid, Dash::dashed, Marker::square};
        case Tone::low_quarter:
            return {0x94662B, 0x94662B, Pattern::solid, Dash::dotted, Marker::triangle};
    }
    return {0x2B2B2B, 0x2B2B2B, Pattern::solid, Dash::solid, Marker::circle};
}

}  // namespace

Look look_of(Tone tone, Medium medium) {
    Look look = on_paper(tone);
    if (medium == Medium::paper) return look;
    const auto coloured = [&look](Rgb fill, Rgb ink) {
        look.fill = fill;
        look.ink = ink;
        return look;
    };
    switch (tone) {
        case Tone::use: return coloured(0x6FB1E8, 0x6FB1E8);
        case Tone::budget: return coloured(0xE3C581, 0xE3C581);
        case Tone::need: return coloured(0x4A7AA0, 0x7FA8C9);
        case Tone::uneven: return coloured(0xB9CFDD, 0xB9CFDD);
        case Tone::uneven_avoidable: return coloured(0xE0BE77, 0xE0BE77);
        case Tone::off_target: return coloured(0xC99B4C, 0xC99B4C);
        case Tone::leak: return coloured(0xF4F1EA, 0xF4F1EA);
        case Tone::over_scheduled: return coloured(0xA8752F, 0xD9A35A);
        case Tone::low_quarter: return coloured(0xD9A860, 0xD9A860);
        case Tone::reference: break;
    }
    return coloured(0xE6E3DC, 0xE6E3DC);
}

const Surround& surround(Medium medium) {
    static constexpr Surround paper{0xFFFFFF, ink_text, ink_faint, grid_line};
    static constexpr Surround dark{0x24292C, 0xE8E5DE, 0xA9B0B3, 0x3B4347};
    return medium == Medium::paper ? paper : dark;
}

Rgb depth_colour(double share, Medium medium) {
    constexpr Rgb dry = 0xEED9A6;
    const Rgb middle = medium == Medium::paper ? 0x8FB4C6 : 0x9DC0D2;
    const Rgb wet = medium == Medium::paper ? 0x1F4E79 : 0x4A82B5;
    const double t = std::isfinite(share) ? std::clamp(share, 0.0, 1.0) : 0.0;
    return t < 0.5 ? between(dry, middle, t * 2.0) : between(middle, wet, t * 2.0 - 1.0);
}

double luminance(Rgb colour) {
    return 0.2126 * linear(channel(colour, 16)) + 0.7152 * linear(channel(colour, 8)) +
           0.0722 * linear(channel(colour, 0));
}

Rgb ink_on(Rgb colour) {
    // Equal contrast with black and white lies at sqrt(1.05 x 0.05) - 0.05.
    return luminance(colour) > 0.179 ? 0x000000 : 0xFFFFFF;
}

}  // namespace evenfall::reports
