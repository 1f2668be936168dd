// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/chart.h"

#include <cstdint>

/// The house style, the same in workbook and print. Made for this project: two hues only, water
/// blue and dry sand, which people with any of the usual colour deficiencies tell apart, and
/// steps of lightness that survive grey print. Nothing is told by colour alone: fills carry
/// patterns, lines carry dashes and markers, cells carry their number.
/// On paper the colours are dark on white; a dark window has a set of its own, with the same hues,
/// patterns, dashes and markers, light on dark.
/// Tests: tests/reports/content_test.cpp (lightness steps), tests/reports/palette_test.cpp (contrast)
namespace evenfall::reports {

using Rgb = std::uint32_t;  ///< 0xRRGGBB

/// What a chart is drawn on. Reports, the clipboard and print are always paper.
enum class Medium { paper, dark_screen };

enum class Pattern { solid, diagonal_up, diagonal_down, cross, dots, horizontal };
enum class Dash { solid, dashed, dotted };
enum class Marker { circle, square, diamond, triangle };

struct Look {
    Rgb fill;
    Rgb ink;  ///< outline, pattern and line
    Pattern pattern;
    Dash dash;
    Marker marker;
};

Look look_of(Tone tone, Medium medium);

/// Dry sand at 0, blue at 1, darker all the way; outside [0, 1] the ends. On a dark screen the blue
/// stays light enough to be told from the ground.
Rgb depth_colour(double share, Medium medium);

/// What is around the marks.
struct Surround {
    Rgb ground;
    Rgb text;
    Rgb faint;  ///< axes, secondary text
    Rgb grid;   ///< lines to read along; they carry nothing themselves
};
const Surround& surround(Medium medium);

/// Relative luminance, 0 black to 1 white (sRGB, IEC 61966-2-1; the form of WCAG 2.1).
double luminance(Rgb colour);

/// Black or white, whichever is easier to read on the colour.
Rgb ink_on(Rgb colour);

inline constexpr Rgb ink_text = 0x1E2A33;
inline constexpr Rgb ink_faint = 0x6B747B;
inline constexpr Rgb grid_line = 0xC9CED2;
inline constexpr Rgb head_fill = 0xDCE6EE;    ///< heads of tables
inline constexpr Rgb total_fill = 0xF3EEDF;   ///< total rows
inline constexpr Rgb input_fill = 0xEAF2F8;   ///< cells with the role input
inline constexpr Rgb result_fill = 0xF1E3BF;  ///< cells with the role result

}  // namespace evenfall::reports
