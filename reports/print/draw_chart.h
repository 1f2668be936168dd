// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/look.h"
#include "reports/content/report.h"

#include <QRectF>

#include <memory>

class QPainter;
QT_BEGIN_NAMESPACE
class QChart;
QT_END_NAMESPACE

/// Charts in the house style (reports/content/look.h). Opaque colours only: PDF/A-1 knows no
/// transparency. Nothing is computed here but positions on paper.
/// Tests: tests/reports/print_test.cpp
namespace evenfall::reports {

/// The chart for bars and lines, for a window or for painting; the caller owns it. A category
/// without a value says "no data" in its label: an empty place must not read as zero.
std::unique_ptr<QChart> make_chart(const SeriesChart& content, const Table& table, Medium medium);

/// Paints bars or lines into `target`, as on paper. Delivers the events that the application has
/// posted to itself, because legend and axes settle on them.
/// @param scale  device units in one point (1/72 inch)
void draw_series(QPainter& painter, const QRectF& target, double scale, const SeriesChart& content,
                 const Table& table);

/// Paints the chart into `target`.
/// @param scale  device units in one point (1/72 inch)
void draw_chart(QPainter& painter, const QRectF& target, double scale, const Chart& chart,
                const Report& report);

}  // namespace evenfall::reports
