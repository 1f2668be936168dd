// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/look.h"
#include "reports/print/house_font.h"
#include "reports/print/page_flow.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <numeric>

/// Tables on pages: heads repeat, wide tables continue below with their first column again.
namespace evenfall::reports {
namespace {

constexpr double padding = 3.0;  // points at each side of a cell

QColor colour(Rgb rgb) { return QColor::fromRgb(rgb); }
QString text_of(const std::string& t) { return QString::fromStdString(t); }

}  // namespace

struct PageFlow::TableShape {
    double font_size = 8.0;
    std::vector<double> widths;                 ///< device units, with padding
    std::vector<std::vector<QString>> cells;    ///< as printed
    std::vector<QString> heads;
};

PageFlow::TableShape PageFlow::shape_of(const Table& table) const {
    TableShape shape;
    for (const Column& column : table.columns) shape.heads.push_back(text_of(column.head()));
    for (const Row& row : table.rows) {
        auto& cells = shape.cells.emplace_back();
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            cells.push_back(text_of(printed_in(row, c, table)));
        }
    }
    const auto measure = [&](double size) {
        shape.font_size = size;
        shape.widths.assign(table.columns.size(), 0.0);
        const QFontMetricsF plain(house_font(size), device_), bold(house_font(size, true), device_);
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            double& w = shape.widths[c];
            // A head may break between words, a number must not.
            for (const QString& word : shape.heads[c].split(QLatin1Char(' '))) {
                w = std::max(w, bold.horizontalAdvance(word));
            }
            for (std::size_t r = 0; r < shape.cells.size(); ++r) {
                const auto& metrics = table.rows[r].kind == RowKind::total ? bold : plain;
                w = std::max(w, metrics.horizontalAdvance(shape.cells[r][c]));
            }
            w += pt(2.0 * padding + 1.0);
            if (table.columns[c].is_text) w = std::min(w, width() * 0.6);
        }
        return std::accumulate(shape.widths.begin(), shape.widths.end(), 0.0);
    };
    // Small print beats a table in two pieces, down to what can still be read on paper.
    double total = 0.0;
    for (const double size : {8.5, 7.5, 6.8, 6.2, 5.8}) {
        total = measure(size);
        if (total <= width()) break;
    }
    if (total > 1.5 * width()) total = measure(7.0);
    // Running text gives way first.
    std::size_t texts = 0;
    for (const Column& column : table.columns) texts += column.is_text ? 1U : 0U;
    for (int round = 0; round < 60 && total > width() && texts > 0; ++round) {
        const double share = (total - width()) / static_cast<double>(texts);
        total = 0.0;
        for (std::size_t c = 0; c < table.columns.size(); ++c) {
            double& w = shape.widths[c];
            if (table.columns[c].is_text) w = std::max(std::min(w, pt(70.0)), w - share);
            total += w;
        }
    }
    // What is left over spreads out, so that short tables do not look lost.
    if (total < width() && !table.columns.empty()) {
        const double extra = std::min((width() - total) / static_cast<double>(table.columns.size()),
                                      pt(28.0));
        for (double& w : shape.widths) w += extra;
    }
    return shape;
}

double PageFlow::row_height(const std::vector<QString>& cells, const TableShape& shape,
                            const std::vector<std::size_t>& shown, const QFont& font) const {
    double tallest = 0.0;
    for (const std::size_t c : shown) {
        tallest = std::max(tallest,
                           text_height(cells[c], font, shape.widths[c] - pt(2.0 * padding)));
    }
    return tallest + pt(3.0);
}

void PageFlow::table_row(const Table& table, const std::vector<QString>& cells,
                         const TableShape& shape, const std::vector<std::size_t>& shown,
                         const QFont& font, Rgb fill, double height) {
    if (painter_ != nullptr) {
        double total = 0.0;
        for (const std::size_t c : shown) total += shape.widths[c];
        if (fill != 0xFFFFFF) painter_->fillRect(QRectF(left(), y_, total, height), colour(fill));
        painter_->setFont(font);
        double x = left();
        for (const std::size_t c : shown) {
            const QRectF box(x + pt(padding), y_ + pt(1.5), shape.widths[c] - pt(2.0 * padding),
                             height - pt(1.5));
            const bool at_left = table.columns[c].is_text;
            QTextOption option(at_left ? Qt::AlignLeft : Qt::AlignRight);
            option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
            painter_->setPen(colour(ink_text));
            painter_->drawText(box, cells[c], option);
            x += shape.widths[c];
        }
        painter_->setPen(QPen(colour(grid_line), pt(0.4)));
        painter_->drawLine(QPointF(left(), y_ + height), QPointF(left() + total, y_ + height));
    }
    y_ += height;
}

void PageFlow::table_block(const Table& table, const TableShape& shape,
                           const std::vector<std::size_t>& shown) {
    const QFont plain = house_font(shape.font_size), bold = house_font(shape.font_size, true);
    const double head = row_height(shape.heads, shape, shown, bold);
    need(head + pt(30.0));
    table_row(table, shape.heads, shape, shown, bold, head_fill, head);
    for (std::size_t r = 0; r < shape.cells.size(); ++r) {
        const bool total = table.rows[r].kind == RowKind::total;
        const QFont& font = total ? bold : plain;
        const double height = row_height(shape.cells[r], shape, shown, font);
        if (y_ + height > bottom()) {
            page_break();
            table_row(table, shape.heads, shape, shown, bold, head_fill, head);
        }
        table_row(table, shape.cells[r], shape, shown, font, total ? total_fill : Rgb{0xFFFFFF},
                  height);
    }
    y_ += pt(4.0);
}

void PageFlow::table(const Table& table) {
    need(pt(70.0));
    if (!table.title.empty()) {
        bookmark(table.title, 1);
        text(text_of(table.title), house_font(10.0, true), ink_text, left(), width(), pt(2.0));
    }
    if (!table.sentence.empty()) {
        text(text_of(table.sentence), house_font(8.5), ink_faint, left(), width(), pt(3.0));
    }
    if (table.rows.empty()) {
        text(QStringLiteral("No rows."), house_font(9.0), ink_text, left(), width(), pt(8.0));
        return;
    }
    const TableShape shape = shape_of(table);
    std::size_t next = 1;
    do {
        std::vector<std::size_t> shown{0};
        double used = shape.widths[0];
        while (next < table.columns.size() &&
               (shown.size() == 1 || used + shape.widths[next] <= width() + 1.0)) {
            used += shape.widths[next];
            shown.push_back(next++);
        }
        table_block(table, shape, shown);
    } while (next < table.columns.size());
    for (const auto& note : table.footnotes) {
        text(text_of(note), house_font(8.0), ink_faint, left(), width(), pt(2.0));
    }
    y_ += pt(8.0);
}

}  // namespace evenfall::reports
