// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/print/draw_chart.h"

#include "reports/content/look.h"
#include "reports/print/draw_map.h"
#include "reports/print/house_font.h"

#include <QBarCategoryAxis>
#include <QBarSeries>
#include <QBarSet>
#include <QCategoryAxis>
#include <QChart>
#include <QCoreApplication>
#include <QEvent>
#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QHorizontalBarSeries>
#include <QHorizontalStackedBarSeries>
#include <QLegendMarker>
#include <QLineSeries>
#include <QLocale>
#include <QPainter>
#include <QScatterSeries>
#include <QStackedBarSeries>
#include <QValueAxis>

#include <algorithm>
#include <cmath>

namespace evenfall::reports {
namespace {

QColor colour(Rgb rgb) { return QColor::fromRgb(rgb); }
/// Qt Charts reads its texts as HTML; a name with "<" in it must not become a tag.
QString text_of(const std::string& t) { return QString::fromStdString(t).toHtmlEscaped(); }

/// Broken at a blank near the middle where it is long.
QString in_two_lines(const QString& t) {
    if (t.size() <= 16) return t;
    const qsizetype middle = t.indexOf(QLatin1Char(' '), t.size() / 2 - 4);
    return middle < 0 ? t : t.left(middle) + QStringLiteral("<br/>") + t.mid(middle + 1);
}

Qt::BrushStyle brush_of(Pattern pattern) {
    switch (pattern) {
        case Pattern::diagonal_up: return Qt::BDiagPattern;
        case Pattern::diagonal_down: return Qt::FDiagPattern;
        case Pattern::cross: return Qt::CrossPattern;
        case Pattern::dots: return Qt::Dense6Pattern;
        case Pattern::horizontal: return Qt::HorPattern;
        case Pattern::solid: break;
    }
    return Qt::SolidPattern;
}

Qt::PenStyle pen_of(Dash dash) {
    switch (dash) {
        case Dash::dashed: return Qt::DashLine;
        case Dash::dotted: return Qt::DotLine;
        case Dash::solid: break;
    }
    return Qt::SolidLine;
}

QScatterSeries::MarkerShape shape_of(Marker marker) {
    switch (marker) {
        case Marker::square: return QScatterSeries::MarkerShapeRectangle;
        case Marker::diamond: return QScatterSeries::MarkerShapeRotatedRectangle;
        case Marker::triangle: return QScatterSeries::MarkerShapeTriangle;
        case Marker::circle: break;
    }
    return QScatterSeries::MarkerShapeCircle;
}

void dress_axis(QAbstractAxis* axis, const Axis& content, bool grid, const Surround& around) {
    axis->setTitleText(text_of(content.text()));
    axis->setTitleFont(house_font(8.0, true));
    axis->setLabelsFont(house_font(7.5));
    axis->setTitleBrush(colour(around.text));
    axis->setLabelsColor(colour(around.text));
    axis->setLinePen(QPen(colour(around.faint), 0.8));
    axis->setGridLineVisible(grid);
    axis->setGridLinePen(QPen(colour(around.grid), 0.5));
}

class ChartMaker {
  public:
    ChartMaker(const SeriesChart& content, const Table& table, Medium medium)
        : content_(content), table_(table), medium_(medium), around_(surround(medium)), chart_(std::make_unique<QChart>()) {}

    std::unique_ptr<QChart> make() {
        frame();
        labels();
        range();
        if (content_.series.front().draw == Draw::line) {
            lines();
        } else {
            bars();
        }
        return std::move(chart_);
    }

  private:
    void frame() {
        chart_->setAnimationOptions(QChart::NoAnimation);
        chart_->setBackgroundBrush(colour(around_.ground));
        chart_->setBackgroundPen(Qt::NoPen);
        chart_->setMargins(QMargins(2, 2, 2, 2));
        chart_->setLocale(QLocale(QLocale::English, QLocale::UnitedStates));
        chart_->setLocalizeNumbers(true);
        chart_->legend()->setAlignment(Qt::AlignBottom);
        chart_->legend()->setFont(house_font(8.0));
        chart_->legend()->setLabelColor(colour(around_.text));
        const bool lines = content_.series.front().draw == Draw::line;
        chart_->legend()->setMarkerShape(lines ? QLegend::MarkerShapeFromSeries
                                               : QLegend::MarkerShapeRectangle);
        chart_->legend()->setVisible(content_.series.size() > 1);
    }

    bool known(std::size_t category) const {
        return std::any_of(content_.series.begin(), content_.series.end(), [&](const Series& s) {
            return table_.values(s.values.column)[category].has_value();
        });
    }

    void labels() {
        const auto raw = table_.labels(content_.categories.column);
        for (std::size_t i = 0; i < raw.size(); ++i) {
            QString label = QString::fromStdString(raw[i]);
            if (label.size() > 40) label = label.left(39) + QChar(0x2026);
            label = label.toHtmlEscaped();
            if (!content_.horizontal) label = in_two_lines(label);
            if (!known(i)) label += QStringLiteral("<br/>no data");
            // The axis keeps one of two equal labels; a blank that nobody sees keeps both.
            while (labels_.contains(label)) label += QChar(0x200B);
            labels_.append(label);
        }
    }

    void range() {
        double low = 0.0, high = 0.0;
        std::vector<double> stack(static_cast<std::size_t>(labels_.size()), 0.0);
        for (const Series& s : content_.series) {
            for (const auto* ref : {&s.values, s.high ? &*s.high : nullptr}) {
                if (ref == nullptr) continue;
                const auto values = table_.values(ref->column);
                for (std::size_t i = 0; i < values.size(); ++i) {
                    if (!values[i]) continue;
                    stack[i] += s.draw == Draw::stacked ? *values[i] : 0.0;
                    low = std::min(low, *values[i]);
                    high = std::max({high, *values[i], stack[i]});
                }
            }
        }
        value_axis_ = new QValueAxis;
        value_axis_->setRange(low, high > low ? high : low + 1.0);
        value_axis_->applyNiceNumbers();
        const double step = (value_axis_->max() - value_axis_->min()) /
                            std::max(1, value_axis_->tickCount() - 1);
        const int decimals =
            step >= 1.0 ? 0 : std::clamp(static_cast<int>(std::ceil(-std::log10(step))), 1, 6);
        value_axis_->setLabelFormat(QStringLiteral("%.%1f").arg(decimals));
        dress_axis(value_axis_, content_.y, true, around_);
    }

    void bars() {
        const bool stacked = content_.series.front().draw == Draw::stacked;
        QAbstractBarSeries* series = nullptr;
        if (content_.horizontal) {
            series = stacked ? static_cast<QAbstractBarSeries*>(new QHorizontalStackedBarSeries)
                             : new QHorizontalBarSeries;
        } else {
            series = stacked ? static_cast<QAbstractBarSeries*>(new QStackedBarSeries)
                             : new QBarSeries;
        }
        series->setBarWidth(0.72);
        for (const Series& s : content_.series) {
            const Look look = look_of(s.tone, medium_);
            auto* set = new QBarSet(text_of(s.name));
            auto values = table_.values(s.values.column);
            if (content_.horizontal) std::reverse(values.begin(), values.end());
            for (const auto& v : values) *set << v.value_or(0.0);
            const bool solid = look.pattern == Pattern::solid;
            set->setBrush(QBrush(colour(solid ? look.fill : look.ink), brush_of(look.pattern)));
            set->setPen(QPen(colour(look.ink), 0.8));
            series->append(set);
        }
        chart_->addSeries(series);
        auto* categories = new QBarCategoryAxis;
        QStringList shown = labels_;
        if (content_.horizontal) std::reverse(shown.begin(), shown.end());
        categories->append(shown);
        dress_axis(categories, content_.x, false, around_);
        if (!content_.horizontal && shown.size() > 7) categories->setLabelsAngle(-90);
        chart_->addAxis(categories, content_.horizontal ? Qt::AlignLeft : Qt::AlignBottom);
        chart_->addAxis(value_axis_, content_.horizontal ? Qt::AlignBottom : Qt::AlignLeft);
        series->attachAxis(categories);
        series->attachAxis(value_axis_);
        if (!stacked && !content_.horizontal) whiskers(categories, series->barWidth());
    }

    /// Intervals as upright strokes at the middle of each bar.
    void whiskers(QAbstractAxis* categories, double width) {
        const auto n = static_cast<double>(content_.series.size());
        for (std::size_t j = 0; j < content_.series.size(); ++j) {
            const Series& s = content_.series[j];
            if (!s.low) continue;
            const auto low = table_.values(s.low->column);
            const auto high = table_.values(s.high->column);
            for (std::size_t i = 0; i < low.size(); ++i) {
                if (!low[i] || !high[i]) continue;
                const double x = static_cast<double>(i) - width / 2.0 +
                                 (static_cast<double>(j) + 0.5) * width / n;
                auto* stroke = new QLineSeries;
                stroke->append(x, *low[i]);
                stroke->append(x, *high[i]);
                stroke->setPen(QPen(colour(around_.text), 1.2));
                add_line(stroke, categories, false);
            }
        }
    }

    void lines() {
        const auto count = static_cast<int>(labels_.size());
        auto* categories = new QCategoryAxis;
        categories->setRange(-0.5, std::max(count, 1) - 0.5);
        categories->setStartValue(-0.5);
        categories->setLabelsPosition(QCategoryAxis::AxisLabelsPositionOnValue);
        const int every = (count + 15) / 16;
        for (int i = 0; i < count; i += std::max(every, 1)) categories->append(labels_[i], i);
        dress_axis(categories, content_.x, false, around_);
        if (count > 7 && labels_[0].size() > 4) categories->setLabelsAngle(-90);
        chart_->addAxis(categories, Qt::AlignBottom);
        chart_->addAxis(value_axis_, Qt::AlignLeft);
        for (const Series& s : content_.series) {
            const Look look = look_of(s.tone, medium_);
            const QPen pen(colour(look.ink), 1.6, pen_of(look.dash));
            pieces(s.values.column, pen, text_of(s.name), categories);
            if (count <= 40) markers(s.values.column, look, categories);
            if (!s.low) continue;
            const QPen thin(colour(look.ink), 0.7, Qt::DotLine);
            pieces(s.low->column, thin, {}, categories);
            pieces(s.high->column, thin, {}, categories);
        }
    }

    /// One line for each run of known values, so that a gap stays a gap. Only the first piece of
    /// a named series stands in the legend.
    void pieces(const std::string& column, const QPen& pen, const QString& name,
                QAbstractAxis* categories) {
        const auto values = table_.values(column);
        bool in_legend = !name.isEmpty();
        QLineSeries* piece = nullptr;
        const auto finish = [&] {
            if (piece == nullptr) return;
            piece->setPen(pen);
            piece->setName(name);
            add_line(piece, categories, in_legend);
            in_legend = false;
            piece = nullptr;
        };
        for (std::size_t i = 0; i < values.size(); ++i) {
            if (!values[i]) {
                finish();
                continue;
            }
            if (piece == nullptr) piece = new QLineSeries;
            piece->append(static_cast<double>(i), *values[i]);
        }
        finish();
    }

    void markers(const std::string& column, const Look& look, QAbstractAxis* categories) {
        const auto values = table_.values(column);
        auto* points = new QScatterSeries;
        points->setMarkerShape(shape_of(look.marker));
        points->setMarkerSize(5.0);
        points->setBrush(colour(look.fill));
        points->setPen(QPen(colour(look.ink), 0.8));
        for (std::size_t i = 0; i < values.size(); ++i) {
            if (values[i]) points->append(static_cast<double>(i), *values[i]);
        }
        add_line(points, categories, false);
    }

    void add_line(QXYSeries* series, QAbstractAxis* categories, bool in_legend) {
        chart_->addSeries(series);
        series->attachAxis(categories);
        series->attachAxis(value_axis_);
        if (in_legend) return;
        for (QLegendMarker* marker : chart_->legend()->markers(series)) marker->setVisible(false);
    }

    const SeriesChart& content_;
    const Table& table_;
    Medium medium_;
    const Surround& around_;
    std::unique_ptr<QChart> chart_;
    QStringList labels_;
    QValueAxis* value_axis_ = nullptr;  ///< owned by the chart once added
};

}  // namespace

std::unique_ptr<QChart> make_chart(const SeriesChart& content, const Table& table, Medium medium) {
    return ChartMaker(content, table, medium).make();
}

void draw_series(QPainter& painter, const QRectF& target, double scale, const SeriesChart& content,
                 const Table& table) {
    const auto drawn = make_chart(content, table, Medium::paper);
    // Fonts in a scene are sized for its 96 units an inch, paper counts points.
    const QSizeF size = target.size() / scale * (96.0 / 72.0);
    QGraphicsScene scene;
    scene.addItem(drawn.get());
    drawn->resize(size);
    scene.setSceneRect({QPointF(0, 0), size});
    // Legend and axes settle on posted requests; there need be no event loop here to deliver them. Where
    // there is one, nothing else may happen meanwhile: a preview would paint pages that are just being made.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    drawn->layout()->activate();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    painter.setBrush(Qt::NoBrush);  // solid lines are filled with what the painter last used
    scene.render(&painter, target, {QPointF(0, 0), size});
    scene.removeItem(drawn.get());
}

void draw_chart(QPainter& painter, const QRectF& target, double scale, const Chart& chart,
                const Report& report) {
    if (const auto* map = std::get_if<MapChart>(&chart.content)) {
        draw_map(painter, target, scale, *map, *report.find_table(map->value.table));
        return;
    }
    const auto& content = std::get<SeriesChart>(chart.content);
    draw_series(painter, target, scale, content, *report.find_table(content.categories.table));
}

}  // namespace evenfall::reports
