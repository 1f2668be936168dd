// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/figure_table.h"

#include <QRectF>
#include <QString>
#include <QStringList>
#include <vector>

class QPainter;
class QPrinter;

/// Tables and sentences of a page on paper, plain and black on white.
/// Tests: tests/app/desktop_schedule_test.cpp
namespace evenfall::desktop {

/// As HTML; whatever a stranger wrote is shown as it stands.
QString paper_text(const QString& title, const std::vector<TitledRows>& tables, const QStringList& notes);
void print_paper(QPrinter& printer, const QString& title, const std::vector<TitledRows>& tables, const QStringList& notes);

/// At the top of `page`. @return how far down it reaches, in dots of the painter's device
double draw_paper(QPainter& painter, const QRectF& page, double dots_per_inch, const QString& title,
                  const std::vector<TitledRows>& tables, const QStringList& notes);

}  // namespace evenfall::desktop
