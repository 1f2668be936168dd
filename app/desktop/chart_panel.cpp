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
#include <QEvent>
#include <QImage>
#include <QLabel>
#include <QMenu>
#include <QMimeData>
#include <QPainter>
#include <QVBoxLayout>

namespace evenfall::desktop {
namespace {

constexpr double points_per_inch = 72.0;
constexpr double screen_dots_per_inch = 96.0;

}  // namespace

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
    chart_ = chart;
    table_ = table;
    sentence_->setText(sentence);
    view_->setAccessibleName(sentence);
    has_chart_ = true;
    show_chart();
    view_->show();
}

void ChartPanel::show_chart() {
    const std::unique_ptr<QChart> old(view_->chart());
    view_->setChart(reports::make_chart(chart_, table_, medium(theme())).release());
    view_->setBackgroundBrush(look().surface);
}

void ChartPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && has_chart_) show_chart();
}

void ChartPanel::clear(const QString& why) {
    has_chart_ = false;
    view_->hide();
    sentence_->setText(why);
}

bool ChartPanel::copy() const {
    if (!has_chart_) return false;
    auto* mime = new QMimeData;
    // Twice the dots of the screen, so that it stays sharp in a letter.
    QImage picture(view_->size() * 2, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    draw(painter, QRectF(picture.rect()), 2.0 * screen_dots_per_inch);
    painter.end();
    mime->setImageData(picture);
    mime->setText(tab_text(table_));
    QApplication::clipboard()->setMimeData(mime);
    return true;
}

void ChartPanel::draw(QPainter& painter, const QRectF& target, double dots_per_inch) const {
    if (has_chart_) reports::draw_series(painter, target, dots_per_inch / points_per_inch, chart_, table_);
}

QString ChartPanel::sentence() const { return sentence_->text(); }

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
