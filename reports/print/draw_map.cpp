// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/print/draw_map.h"

#include "reports/content/look.h"
#include "reports/print/house_font.h"

#include "core/units/number.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace evenfall::reports {
namespace {

QColor colour(Rgb rgb) { return QColor::fromRgb(rgb); }

struct Can {
    double x, y;
    std::optional<double> value;
};

/// Steps of 1, 2 or 5 times a power of ten, at most `most` of them over the span.
double nice_step(double span, int most) {
    if (!(span > 0.0)) return 1.0;
    const double raw = span / most;
    const double power = std::pow(10.0, std::floor(std::log10(raw)));
    for (const double k : {1.0, 2.0, 5.0}) {
        if (k * power >= raw) return k * power;
    }
    return 10.0 * power;
}

int decimals_of(double step) {
    return std::clamp(static_cast<int>(std::ceil(-std::log10(step) - 1e-9)), 0, 6);
}

class MapPainter {
  public:
    MapPainter(QPainter& painter, const QRectF& target, double scale, const MapChart& map,
               const Table& table)
        : p_(painter), target_(target), pt_(scale), map_(map) {
        const auto xs = table.values(map.x.column);
        const auto ys = table.values(map.y.column);
        const auto values = table.values(map.value.column);
        for (std::size_t i = 0; i < xs.size(); ++i) {
            if (xs[i] && ys[i]) cans_.push_back({*xs[i], *ys[i], values[i]});
        }
    }

    void paint() {
        if (cans_.empty()) {
            p_.setFont(house_font(9.0));
            p_.setPen(colour(ink_text));
            p_.drawText(target_, Qt::AlignCenter, QStringLiteral("No can has a position."));
            return;
        }
        extent();
        field();
        contours();
        cans();
        axes();
        scale_bar();
    }

  private:
    void extent() {
        low_x_ = high_x_ = cans_.front().x;
        low_y_ = high_y_ = cans_.front().y;
        bool first = true;
        for (const Can& can : cans_) {
            low_x_ = std::min(low_x_, can.x);
            high_x_ = std::max(high_x_, can.x);
            low_y_ = std::min(low_y_, can.y);
            high_y_ = std::max(high_y_, can.y);
            if (!can.value) continue;
            low_ = first ? *can.value : std::min(low_, *can.value);
            high_ = first ? *can.value : std::max(high_, *can.value);
            first = false;
        }
        spacing_ = nearest();
        const double margin = spacing_ * 0.75;
        low_x_ -= margin, high_x_ += margin, low_y_ -= margin, high_y_ += margin;
        plot_ = target_.adjusted(46 * pt_, 6 * pt_, -64 * pt_, -32 * pt_);
        unit_ = std::min(plot_.width() / (high_x_ - low_x_), plot_.height() / (high_y_ - low_y_));
        const QSizeF used((high_x_ - low_x_) * unit_, (high_y_ - low_y_) * unit_);
        plot_ = QRectF(plot_.left() + (plot_.width() - used.width()) / 2.0, plot_.top(),
                       used.width(), used.height());
    }

    /// The median distance from a can to its nearest neighbour sizes the squares; the smallest
    /// would shrink them all for one pair set close together.
    double nearest() const {
        std::vector<double> distances;
        for (std::size_t i = 0; i < cans_.size(); ++i) {
            double best = 0.0;
            for (std::size_t j = 0; j < cans_.size(); ++j) {
                const double d = std::hypot(cans_[i].x - cans_[j].x, cans_[i].y - cans_[j].y);
                if (i != j && d > 0.0 && (best == 0.0 || d < best)) best = d;
            }
            if (best > 0.0) distances.push_back(best);
        }
        if (distances.empty()) return 1.0;
        std::sort(distances.begin(), distances.end());
        return distances[distances.size() / 2];
    }

    QPointF at(double x, double y) const {
        return {plot_.left() + (x - low_x_) * unit_, plot_.bottom() - (y - low_y_) * unit_};
    }

    double share(double value) const {
        return high_ > low_ ? (value - low_) / (high_ - low_) : 0.5;
    }

    void field() {
        if (!map_.field) return;
        const Field& f = *map_.field;
        p_.setPen(Qt::NoPen);
        for (std::size_t r = 0; r < f.rows; ++r) {
            for (std::size_t c = 0; c < f.columns; ++c) {
                const double v = f.values[r * f.columns + c];
                if (!std::isfinite(v)) continue;
                const double x = f.x0 + static_cast<double>(c) * f.dx;
                const double y = f.y0 + static_cast<double>(r) * f.dy;
                // A hair of overlap: viewers show seams between cells that only touch.
                const QRectF cell(at(x - f.dx / 2, y + f.dy / 2), at(x + f.dx / 2, y - f.dy / 2));
                p_.fillRect(cell.adjusted(0, 0, 0.3 * pt_, 0.3 * pt_),
                            colour(depth_colour(share(v), Medium::paper)));
            }
        }
    }

    void contours() {
        p_.setFont(house_font(6.0));
        for (const Contour& contour : map_.contours) {
            const bool dark = share(contour.level) > 0.6;
            p_.setPen(QPen(colour(dark ? 0xFFFFFF : ink_text), 0.7 * pt_));
            for (const auto& line : contour.lines) {
                QPolygonF path;
                for (const auto& point : line) path << at(point[0], point[1]);
                p_.drawPolyline(path);
            }
        }
    }

    /// How the numbers are set: in a square of their own where there is room, on the field itself where
    /// many cans stand close, and not at all where nobody could read them; the table has them too.
    struct Numbers {
        double side = 0.0;      ///< of a can's square
        double points = 0.0;    ///< of the font; 0: no numbers
        bool boxed = true;
        bool short_form = false;  ///< ".231" for 0.231
    };

    bool fits(double points, double side, bool short_form) const {
        const QFontMetricsF metrics(house_font(points), p_.device());
        double widest = 0.0;
        for (const Can& can : cans_) {
            if (can.value) widest = std::max(widest, metrics.horizontalAdvance(number(*can.value, short_form)));
        }
        return widest <= side * 0.94 && metrics.ascent() <= side;
    }

    Numbers numbers() const {
        const double apart = spacing_ * unit_;
        const double side = std::min(apart * (map_.field ? 0.56 : 0.9), 30.0 * pt_);
        for (double points = 8.0; points >= 4.5; points -= 0.5) {
            if (fits(points, side, false)) return {side, points, true, false};
        }
        for (double points = 6.0; points >= 3.4; points -= 0.2) {
            if (fits(points, apart, true)) return {apart, points, !map_.field, true};
        }
        return {side, 0.0, true, false};
    }

    void cans() {
        const Numbers style = numbers();
        if (style.points > 0.0) p_.setFont(house_font(style.points));
        for (const Can& can : cans_) {
            const QPointF c = at(can.x, can.y);
            const double side = can.value ? style.side : std::min(style.side, 0.6 * spacing_ * unit_);
            const QRectF box(c.x() - side / 2, c.y() - side / 2, side, side);
            if (!can.value) {
                p_.setPen(QPen(colour(ink_faint), 0.7 * pt_));
                p_.setBrush(Qt::white);
                p_.drawRect(box);
                p_.drawLine(box.topLeft(), box.bottomRight());
                p_.drawLine(box.topRight(), box.bottomLeft());
                continue;
            }
            const Rgb fill = depth_colour(share(*can.value), Medium::paper);
            if (style.boxed) {
                p_.setPen(QPen(colour(map_.field ? ink_text : ink_faint), 0.4 * pt_));
                p_.setBrush(colour(fill));
                p_.drawRect(box);
            }
            if (style.points == 0.0) continue;
            p_.setPen(colour(ink_on(fill)));
            p_.drawText(box, Qt::AlignCenter, number(*can.value, style.short_form));
        }
    }

    QString number(double v, bool short_form) const {
        QString text = number(v);
        if (short_form && text.startsWith(QLatin1String("0."))) text.remove(0, 1);
        return text;
    }

    QString number(double v) const {
        return QString::fromStdString(units::format_fixed(v, map_.decimals));
    }

    void axes() {
        p_.setBrush(Qt::NoBrush);
        p_.setPen(QPen(colour(ink_faint), 0.8 * pt_));
        p_.drawRect(plot_);
        p_.setFont(house_font(7.5));
        const double step = nice_step(std::max(high_x_ - low_x_, high_y_ - low_y_), 8);
        const int decimals = decimals_of(step);
        const auto label = [&](double v) {
            return QString::fromStdString(units::format_fixed(v, decimals));
        };
        for (double v = std::ceil(low_x_ / step) * step; v <= high_x_; v += step) {
            const QPointF foot(at(v, low_y_));
            p_.setPen(QPen(colour(ink_faint), 0.8 * pt_));
            p_.drawLine(foot, foot + QPointF(0, 3 * pt_));
            p_.setPen(colour(ink_text));
            p_.drawText(QRectF(foot.x() - 30 * pt_, foot.y() + 3 * pt_, 60 * pt_, 11 * pt_),
                        Qt::AlignCenter, label(v));
        }
        for (double v = std::ceil(low_y_ / step) * step; v <= high_y_; v += step) {
            const QPointF foot(at(low_x_, v));
            p_.setPen(QPen(colour(ink_faint), 0.8 * pt_));
            p_.drawLine(foot, foot - QPointF(3 * pt_, 0));
            p_.setPen(colour(ink_text));
            p_.drawText(QRectF(foot.x() - 44 * pt_, foot.y() - 6 * pt_, 39 * pt_, 12 * pt_),
                        Qt::AlignRight | Qt::AlignVCenter, label(v));
        }
        p_.setFont(house_font(8.0, true));
        p_.drawText(QRectF(plot_.center().x() - 150 * pt_, plot_.bottom() + 15 * pt_, 300 * pt_,
                           12 * pt_),
                    Qt::AlignCenter, QString::fromStdString(map_.x_axis.text()));
        p_.save();
        p_.translate(plot_.left() - 40 * pt_, plot_.center().y());
        p_.rotate(-90.0);
        p_.drawText(QRectF(-150 * pt_, -6 * pt_, 300 * pt_, 12 * pt_), Qt::AlignCenter,
                    QString::fromStdString(map_.y_axis.text()));
        p_.restore();
    }

    void scale_bar() {
        const QRectF bar(plot_.right() + 14 * pt_, plot_.top() + 22 * pt_, 12 * pt_,
                         std::max(60 * pt_, std::min(plot_.height() - 30 * pt_, 160 * pt_)));
        constexpr int steps = 32;
        for (int i = 0; i < steps; ++i) {
            const double h = bar.height() / steps;
            p_.fillRect(QRectF(bar.left(), bar.bottom() - (i + 1) * h, bar.width(), h + 0.3 * pt_),
                        colour(depth_colour((i + 0.5) / steps, Medium::paper)));
        }
        p_.setPen(QPen(colour(ink_faint), 0.5 * pt_));
        p_.setBrush(Qt::NoBrush);
        p_.drawRect(bar);
        p_.setPen(colour(ink_text));
        p_.setFont(house_font(7.0));
        const int marks = high_ > low_ ? 4 : 0;
        for (int i = 0; i <= marks; ++i) {
            const double v = marks == 0 ? low_ : low_ + (high_ - low_) * i / marks;
            const double y = bar.bottom() - bar.height() * (marks == 0 ? 0.5 : double(i) / marks);
            p_.drawText(QRectF(bar.right() + 3 * pt_, y - 6 * pt_, 50 * pt_, 12 * pt_),
                        Qt::AlignLeft | Qt::AlignVCenter, number(v));
        }
        p_.setFont(house_font(7.0, true));
        p_.drawText(QRectF(bar.left() - 6 * pt_, bar.top() - 27 * pt_, 72 * pt_, 20 * pt_),
                    Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap,
                    QString::fromStdString(map_.value_axis.text()));
    }

    QPainter& p_;
    QRectF target_;
    double pt_;
    const MapChart& map_;
    std::vector<Can> cans_;
    double low_x_ = 0, high_x_ = 0, low_y_ = 0, high_y_ = 0, low_ = 0, high_ = 0;
    double spacing_ = 1.0, unit_ = 1.0;
    QRectF plot_;
};

}  // namespace

void draw_map(QPainter& painter, const QRectF& target, double scale, const MapChart& map,
              const Table& table) {
    painter.save();
    MapPainter(painter, target, scale, map, table).paint();
    painter.restore();
}

}  // namespace evenfall::reports
