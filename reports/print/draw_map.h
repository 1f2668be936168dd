// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/report.h"

#include <QRectF>

class QPainter;

namespace evenfall::reports {

/// Paints cans at their places with their numbers, over the field and its contours where the
/// chart has them, with a scale of depth at the right. Cans without a value are open squares with
/// a cross. One unit of ground is as long across as it is up.
void draw_map(QPainter& painter, const QRectF& target, double scale, const MapChart& map,
              const Table& table);

}  // namespace evenfall::reports
