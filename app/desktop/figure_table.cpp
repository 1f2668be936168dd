// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/figure_table.h"

#include "app/desktop/appearance.h"

#include <QApplication>
#include <QClipboard>
#include <QHeaderView>
#include <QKeyEvent>
#include <QResizeEvent>
#include <algorithm>
#include <numeric>
#include <utility>

namespace evenfall::desktop {

namespace {

/// Taken from a cell before its text is laid out: padding and margins, with a little to spare.
constexpr int room_beside = 20;
constexpr int room_above = 8;
/// What is taken at the least: text wider than the rest of its column is cut off.
constexpr int room_beside_least = 16;

}  // namespace

FigureTable::FigureTable(const QString& name, QWidget* parent) : QTableWidget(parent) {
    setAccessibleName(name);
    setAccessibleDescription(tr("Press Return on a figure to see how it came about"));
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setAlternatingRowColors(true);
    setFrameShape(QFrame::NoFrame);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(28);
    horizontalHeader()->setHighlightSections(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    connect(this, &QTableWidget::cellDoubleClicked, this, &FigureTable::explain);
}

void FigureTable::fill(const QStringList& heads, const std::vector<std::vector<FigureCell>>& rows) {
    rows_ = rows;
    clear();
    setColumnCount(static_cast<int>(heads.size()));
    setRowCount(static_cast<int>(rows.size()));
    setHorizontalHeaderLabels(heads);
    for (int r = 0; r < rowCount(); ++r) {
        for (int c = 0; c < columnCount(); ++c) {
            const FigureCell& cell = rows_[static_cast<std::size_t>(r)][static_cast<std::size_t>(c)];
            const bool assumed = cell.figure && cell.figure->why.assumed;
            auto* item = new QTableWidgetItem(cell.text + (assumed ? QStringLiteral(" *") : QString()));
            item->setTextAlignment((cell.number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
            if (cell.strong) {
                QFont f = item->font();
                f.setBold(true);
                item->setFont(f);
            }
            if (cell.warn) item->setForeground(look().warn);
            if (cell.figure) item->setToolTip(tr("Double click or Return: how this figure came about"));
            setItem(r, c, item);
        }
    }
    for (int c = 0; c < columnCount(); ++c) {
        const bool number = !rows_.empty() && rows_.front()[static_cast<std::size_t>(c)].number;
        horizontalHeaderItem(c)->setTextAlignment((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    if (!parts_.empty()) {
        horizontalHeader()->setStretchLastSection(true);
        set_widths();
        return;
    }
    // Numbers stay near the others; only words take the room that is left.
    horizontalHeader()->setStretchLastSection(false);
    resizeColumnsToContents();
    for (int c = 0; c < columnCount(); ++c) setColumnWidth(c, columnWidth(c) + 2);
    horizontalHeader()->setStretchLastSection(!rows_.empty() && !rows_.front().empty() && !rows_.front().back().number);
}

void FigureTable::share_width(std::vector<int> parts) {
    parts_ = std::move(parts);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    // Else a width could change the heights, those the scroll bar, and that the width again.
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    set_widths();
}

void FigureTable::set_widths() {
    if (parts_.empty()) return;
    const int whole = std::accumulate(parts_.begin(), parts_.end(), 0);
    for (int c = 0; c + 1 < columnCount() && c < static_cast<int>(parts_.size()); ++c) {
        setColumnWidth(c, viewport()->width() * parts_[static_cast<std::size_t>(c)] / whole);
    }
    // The table's own reckoning leaves out the padding of the style sheet and cuts lines off.
    for (int r = 0; r < rowCount(); ++r) {
        int height = verticalHeader()->defaultSectionSize();
        for (int c = 0; c < columnCount(); c += columnSpan(r, c)) {
            const QTableWidgetItem* cell = item(r, c);
            const QRect room(0, 0, std::max(24, width_of(r, c) - room_beside), 100000);
            const QRect text = QFontMetrics(cell->font()).boundingRect(room, Qt::TextWordWrap, cell->text());
            height = std::max(height, text.height() + room_above);
            // A word that is longer than its column ends in dots.
            if (!figure_at(r, c)) item(r, c)->setToolTip(text.width() > width_of(r, c) - room_beside_least ? cell->text() : QString());
        }
        setRowHeight(r, height);
    }
}

int FigureTable::width_of(int row, int column) const {
    int width = 0;
    for (int c = column; c < column + columnSpan(row, column); ++c) width += columnWidth(c);
    return width;
}

bool FigureTable::figure_at(int row, int column) const {
    return rows_[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)].figure.has_value();
}

void FigureTable::changeEvent(QEvent* event) {
    QTableWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange) return;
    for (int r = 0; r < rowCount() && r < static_cast<int>(rows_.size()); ++r) {
        const auto& cells = rows_[static_cast<std::size_t>(r)];
        for (int c = 0; c < columnCount() && c < static_cast<int>(cells.size()); ++c) {
            if (item(r, c) && cells[static_cast<std::size_t>(c)].warn) item(r, c)->setForeground(look().warn);
        }
    }
}

void FigureTable::resizeEvent(QResizeEvent* event) {
    QTableWidget::resizeEvent(event);
    set_widths();
}

void FigureTable::explain(int row, int column) {
    if (row < 0 || column < 0) return;
    const FigureCell& cell = rows_[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)];
    if (cell.figure) show_explanation(viewport(), *cell.figure);
}

bool FigureTable::copy() const {
    if (rows_.empty()) return false;
    int top = 0;
    int left = 0;
    int bottom = rowCount() - 1;
    int right = columnCount() - 1;
    const auto ranges = selectedRanges();
    if (!ranges.isEmpty() && (ranges.front().rowCount() > 1 || ranges.front().columnCount() > 1)) {
        top = ranges.front().topRow();
        bottom = ranges.front().bottomRow();
        left = ranges.front().leftColumn();
        right = ranges.front().rightColumn();
    }
    QStringList lines;
    QStringList head;
    const auto in_one_line = [](QString text) { return text.replace(QLatin1Char('\n'), QLatin1Char(' ')); };
    for (int c = left; c <= right; ++c) head << in_one_line(horizontalHeaderItem(c)->text());
    lines << head.join(QLatin1Char('\t'));
    for (int r = top; r <= bottom; ++r) {
        QStringList row;
        for (int c = left; c <= right; ++c) row << in_one_line(item(r, c)->text());
        lines << row.join(QLatin1Char('\t'));
    }
    QApplication::clipboard()->setText(lines.join(QLatin1Char('\n')));
    return true;
}

void FigureTable::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space) {
        explain(currentRow(), currentColumn());
        return;
    }
    if (event->matches(QKeySequence::Copy)) {
        copy();
        return;
    }
    QTableWidget::keyPressEvent(event);
}

}  // namespace evenfall::desktop
