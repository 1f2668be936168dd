// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/chart.h"
#include "reports/content/table.h"

#include <QWidget>

class QLabel;
QT_BEGIN_NAMESPACE
class QChartView;
QT_END_NAMESPACE

/// A chart in the house style of the reports with the sentence that says what it shows, in the colours
/// of the window. It can be copied as a picture and, at the same time, as the table it was drawn from;
/// copies and print are as on paper.
/// Tests: tests/app/desktop_paths_test.cpp, tests/app/desktop_look_test.cpp
namespace evenfall::desktop {

class ChartPanel : public QWidget {
    Q_OBJECT

  public:
    explicit ChartPanel(QWidget* parent = nullptr);
    void set_chart(const reports::SeriesChart& chart, const reports::Table& table, const QString& sentence);
    void clear(const QString& why);
    /// Picture and table to the clipboard; false when there is no chart.
    bool copy() const;
    /// On paper. @param dots_per_inch  of the painter's device
    void draw(QPainter& painter, const QRectF& target, double dots_per_inch) const;
    const reports::Table& table() const { return table_; }
    QString sentence() const;
    bool has_chart() const { return has_chart_; }

  protected:
    /// Other colours of the window are other colours of the chart.
    void changeEvent(QEvent* event) override;

  private:
    void show_chart();

    QChartView* view_;
    QLabel* sentence_;
    reports::SeriesChart chart_;
    reports::Table table_;
    bool has_chart_ = false;
};

/// A table as text with tabs, for the clipboard.
QString tab_text(const reports::Table& table);

}  // namespace evenfall::desktop
