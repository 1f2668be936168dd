// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/look.h"

#include <QColor>

class QApplication;
class QWidget;

/// The house look of the desktop: paper tones, one accent colour, light and dark.
/// Colour never stands alone: whatever a tone says is also printed as a number or a word.
/// Tests: tests/app/desktop_look_test.cpp
namespace evenfall::desktop {

enum class Theme { light, dark };

struct Look {
    QColor paper;    ///< behind everything
    QColor surface;  ///< cards, tables, fields
    QColor ink;      ///< text
    QColor faint;    ///< secondary text; at least 4.5:1 on paper and on surface
    QColor rule;     ///< lines between things
    QColor accent;   ///< the one accent: what is chosen, focus, the main action
    QColor on_accent;
    QColor warn;     ///< errors, always beside words
};

const Look& look(Theme theme);
/// The theme the application shows now.
Theme theme();
const Look& look();
/// Sets palette and style of the whole application.
void apply_theme(QApplication& application, Theme theme);

/// What a chart or map of a window in this theme is drawn on; its colours are in reports/content/look.h.
reports::Medium medium(Theme theme);
/// The house scale for a depth of water, sand (0, dry) to blue (1, wet), as in the reports.
QColor depth_colour(double share, Theme theme);
/// Black or white, whichever contrasts more with `ground`.
QColor text_on(const QColor& ground);
/// Contrast ratio of two colours, 1 to 21.
/// Source: W3C Web Content Accessibility Guidelines 2.1, "contrast ratio".
double contrast(const QColor& a, const QColor& b);

inline constexpr int gap = 8;       ///< between things that belong together
inline constexpr int wide_gap = 16; ///< between groups

}  // namespace evenfall::desktop
