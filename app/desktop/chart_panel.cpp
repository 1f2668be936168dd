// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/chart_panel.h"

#include "app/desktop/appearance.h"
#include "app/desktop/page.h"
#include "app/desktop/shown.h"
#include "reports/print/draw_chart.h"

#include <QApplication>
#include <QChart>
#include <QChartView>
#include <QClipboard>
#include <QLabel>
#include <QMenu>
#include <QMimeData>
#include <QVBoxLayout>

namespace evenfall::desktop {

ChartPanel::ChartPanel(QWidget* parent) : QWidget(parent), view_(new QChartView), sentence_(faint({})) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, gap, 0, 0);
    column->setSpacing(4);
    view_->setRenderHint(QPainter::Antialiasing);
    view_->setFrameShape(QFrame::NoFrame);
    view_->setFocusPolicy(Qt::StrongFocus);
    view_->setContextMenuPolicy(Qt::CustomContextMenu);
    sentence_->setWordWrap(true);
    column->addWidget(sentence_);
    column->addWidget(view_, 1);
    connect(view_, &QWidget::customContextMenuRequested, this, [this](const QPoint& at) {
        QMenu menu;
        menu.addAction(tr("Copy picture and table"), this, [this] { copy(); });
        menu.exec(view_->mapToGlobal(at));
    });
}

void ChartPanel::set_chart(const reports::SeriesChart& chart, const reports::Table& table,
                           const QString& sentence) {
    table_ = table;
    sentence_->setText(sentence);
    view_->setAccessibleName(sentence);
    const std::unique_ptr<QChart> old(view_->chart());
    QChart* made = reports::make_chart(chart, table).release();
    // The house style is drawn for paper, so in dark surroundings the chart lies on a sheet of it.
    if (theme() == Theme::dark) made->setBackgroundBrush(QColor(0xE9E6DF));
    made->setBackgroundRoundness(4);
    view_->setChart(made);
    view_->setBackgroundBrush(look().surface);
    view_->show();
    has_chart_ = true;
}

void ChartPanel::clear(const QString& why) {
    has_chart_ = false;
    view_->hide();
    sentence_->setText(why);
}

bool ChartPanel::copy() const {
    if (!has_chart_) return false;
    auto* mime = new QMimeData;
    mime->setImageData(view_->grab().toImage());
    mime->setText(tab_text(table_));
    QApplication::clipboard()->setMimeData(mime);
    return true;
}

void ChartPanel::draw(QPainter& painter, const QRectF& target) const {
    if (has_chart_) view_->render(&painter, target);
}

QString tab_text(const reports::Table& table) {
    QStringList lines;
    QStringList row;
    for (const auto& column : table.columns) row << q(column.head());
    lines << row.join(QLatin1Char('\t'));
    for (const auto& r : table.rows) {
        row.clear();
        for (std::size_t c = 0; c < r.cells.size(); ++c) {
            row << (r.cells[c].empty() ? QString() : q(reports::printed(r.cells[c], table.columns[c].format, false)));
        }
        lines << row.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace evenfall::desktop
