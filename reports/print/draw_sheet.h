// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <string>

class QPainter;

/// Draws a sheet that reports/text/svg_page.h wrote, with Qt's painter, so that it comes out as vectors
/// on a PDF: rectangles, circles, lines, paths, text, one rectangle to cut to, and patterns as
/// fills. Qt 6.4's own SVG reader knows neither patterns nor cutting. It is no reader for SVG from
/// elsewhere: what our pages do not hold is refused.
/// Tests: tests/reports/sheet_test.cpp
namespace evenfall::reports {

struct SheetSize {
    double width_mm = 0.0;
    double height_mm = 0.0;
    QString title;
};

/// @throws InputError for text that is no such sheet
SheetSize sheet_size(const std::string& svg);

/// From the top left of the painter's device.
/// @throws InputError for text that is no such sheet
void draw_sheet(QPainter& painter, const std::string& svg, double dots_per_mm);

}  // namespace evenfall::reports
