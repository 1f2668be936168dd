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

}  // namespace

Look look_of(Tone tone) {
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

Rgb depth_colour(double share) {
    constexpr Rgb dry = 0xEED9A6, middle = 0x8FB4C6, wet = 0x1F4E79;
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
