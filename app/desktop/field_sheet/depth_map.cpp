// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/depth_map.h"

#include "core/audit/sample.h"
#include "core/input_error.h"

#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

namespace evenfall::desktop {
namespace {

constexpr double legend_height = 46.0;

}  // namespace

DepthMap::DepthMap(FieldSheet& sheet, QWidget* parent) : QWidget(parent), sheet_(sheet) {
    setAccessibleName(tr("Map of the depths caught"));
    connect(&sheet, &FieldSheet::changed, this, [this] { rebuild(); });
    rebuild();
}

void DepthMap::set_units(UnitsShown units) {
    units_ = units;
    rebuild();
}

void DepthMap::rebuild() {
    squares_.clear();
    deepest_ = 0.0;
    const SheetData& shape = sheet_.data();
    audit::CatchTest test;
    bool convertible = true;
    try {
        test = to_catch_test(shape);
    } catch (const InputError&) {
        convertible = false;
    }
    const double per_si = depth_unit(units_).per_si;
    std::vector<std::pair<double, std::size_t>> counted;
    std::size_t next = 0;
    for (std::size_t i = 0; i < shape.cans.size(); ++i) {
        const SheetCan& can = shape.cans[i];
        Square square{i, QRectF(can.column, can.row, 1, 1), std::nullopt};
        if (convertible && can.reading && next < test.catches.size()) {
            try {
                square.depth = audit::depth_of(test, test.catches[next]).si() / per_si;
            } catch (const InputError&) {
                // No throat area yet: the map shows empty squares until there is one.
            }
            ++next;
        }
        if (square.depth && can.excluded.empty()) {
            counted.emplace_back(*square.depth, squares_.size());
            deepest_ = std::max(deepest_, *square.depth);
        }
        squares_.push_back(square);
    }
    if (sheet_.result() && shape.layout == audit::Layout::grid) {
        std::sort(counted.begin(), counted.end());
        const auto low = std::min(counted.size(), static_cast<std::size_t>(sheet_.result()->cans_in_low_quarter));
        for (std::size_t i = 0; i < low; ++i) squares_[counted[i].second].low = true;
    }
    update();
}

QRectF DepthMap::scaled(const Square& square, const QRectF& area) const {
    const SheetData& shape = sheet_.data();
    const double side = std::min(area.width() / shape.columns, area.height() / shape.rows);
    // Squares may widen up to twice their height so that numbers stay readable on shallow maps.
    const double w = std::min(area.width() / shape.columns, side * 2.0);
    const double h = std::min(area.height() / shape.rows, side * 1.4);
    const double left = area.left() + (area.width() - w * shape.columns) / 2.0;
    const double top = area.top() + (area.height() - h * shape.rows) / 2.0;
    return {left + square.place.x() * w, top + square.place.y() * h, w, h};
}

void DepthMap::draw(QPainter& p, const QRectF& target, Theme theme, double scale) const {
    p.save();
    p.setRenderHint(QPainter::Antialiasing);
    p.translate(target.topLeft());
    p.scale(scale, scale);
    const QRectF area(QPointF(0, 0), target.size() / scale);
    const QRectF map = area.adjusted(0, 0, 0, -legend_height);
    for (const Square& square : squares_) draw_square(p, scaled(square, map).adjusted(1, 1, -1, -1), square, theme);
    draw_legend(p, QRectF(area.left(), map.bottom(), area.width(), legend_height), theme);
    p.restore();
}

void DepthMap::draw_square(QPainter& p, const QRectF& r, const Square& square, Theme theme) const {
    const Look& l = look(theme);
    const bool left_out = !sheet_.data().cans[square.can].excluded.empty();
    const bool coloured = square.depth && !left_out;
    const QColor ground = coloured ? depth_colour(deepest_ > 0.0 ? *square.depth / deepest_ : 0.0, theme) : l.surface;
    p.setPen(QPen(l.rule, 1));
    p.setBrush(square.depth && left_out ? QBrush(l.rule, Qt::BDiagPattern) : QBrush(ground));
    p.drawRoundedRect(r, 3, 3);
    if (!square.depth) return;
    p.setPen(coloured ? text_on(ground) : l.ink);
    QFont font = p.font();
    font.setPixelSize(std::clamp(static_cast<int>(std::min(r.height() * 0.42, r.width() * 0.30)), 7, 17));
    p.setFont(font);
    p.drawText(r, Qt::AlignCenter, shown_number(*square.depth, decimals()));
    if (!square.low || r.height() <= 14) return;
    const double y = r.bottom() - std::max(3.0, r.height() * 0.16);
    p.setPen(QPen(text_on(ground), 2));
    p.drawLine(QPointF(r.center().x() - r.width() * 0.2, y), QPointF(r.center().x() + r.width() * 0.2, y));
}

void DepthMap::draw_legend(QPainter& p, const QRectF& area, Theme theme) const {
    const Look& l = look(theme);
    QFont font = p.font();
    font.setPixelSize(11);
    p.setFont(font);
    const QRectF scale(area.left(), area.bottom() - 24, std::min(140.0, area.width() * 0.35), 9);
    QLinearGradient gradient(scale.topLeft(), scale.topRight());
    for (int i = 0; i <= 4; ++i) gradient.setColorAt(i / 4.0, depth_colour(i / 4.0, theme));
    p.setPen(QPen(l.rule, 1));
    p.setBrush(gradient);
    p.drawRect(scale);
    p.setPen(l.faint);
    const QString unit = depth_unit(units_).name;
    p.drawText(QRectF(scale.left(), scale.bottom() + 1, 60, 14), Qt::AlignLeft, QStringLiteral("0 ") + unit);
    if (deepest_ > 0.0) {
        p.drawText(QRectF(scale.right() - 90, scale.bottom() + 1, 90, 14), Qt::AlignRight,
                   shown_number(deepest_, decimals()) + QLatin1Char(' ') + unit);
    }
    p.drawText(QRectF(scale.right() + 14, area.top() + 2, area.right() - scale.right() - 14, area.height() - 2),
               Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap,
               sheet_.data().layout == audit::Layout::grid
                   ? tr("depth caught; a bar marks the driest quarter, hatching a can left out")
                   : tr("depth caught; hatching marks a can left out"));
}

void DepthMap::paintEvent(QPaintEvent*) {
    QPainter p(this);
    draw(p, QRectF(rect()).adjusted(2, 2, -2, -2), theme());
}

void DepthMap::mousePressEvent(QMouseEvent* event) {
    const QRectF map = QRectF(rect()).adjusted(2, 2, -2, -2 - legend_height);
    for (const Square& square : squares_) {
        if (scaled(square, map).contains(event->position())) {
            Q_EMIT can_clicked(square.can);
            return;
        }
    }
}

}  // namespace evenfall::desktop
