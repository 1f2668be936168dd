// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plan/plan_scene.h"

#include "app/desktop/shown.h"

#include <QGraphicsItem>
#include <QGraphicsSceneMouseEvent>
#include <QImage>
#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QWheelEvent>
#include <algorithm>
#include <array>
#include <cmath>

namespace evenfall::desktop {
namespace {

QPainterPath path_of(const plan::Polygon& polygon) {
    QPainterPath path;
    path.setFillRule(Qt::OddEvenFill);
    for (const auto& ring : polygon) {
        QPolygonF points;
        for (const auto& p : ring) points << QPointF(p.x, -p.y);
        path.addPolygon(points);
        path.closeSubpath();
    }
    return path;
}

QPen pen_of(const QColor& colour, double width, const Inking& inking) {
    QPen pen(colour, inking.unit > 0.0 ? width * inking.unit : width);
    // Not on paper: a picture of a page keeps such widths when it is shown smaller.
    pen.setCosmetic(inking.unit <= 0.0);
    return pen;
}

}  // namespace

class HeadItem : public QGraphicsItem {
  public:
    HeadItem(PlanDocument& document, std::size_t index, const Inking& inking)
        : document_(document), index_(index), inking_(inking) {
        setFlags(ItemIsMovable | ItemIsSelectable | ItemIsFocusable);
        setZValue(3);
        refresh();
    }
    void refresh() {
        prepareGeometryChange();
        const plan::Head& head = document_.plan().heads[index_];
        setPos(head.x, -head.y);
        radius_ = document_.radius(index_);
        setToolTip(q(head.id) + (head.station.empty() ? QString() : QStringLiteral(" – ") + q(head.station)));
        update();
    }
    std::size_t index() const { return index_; }
    QRectF boundingRect() const override {
        const double r = std::max(radius_, 1.0) * 1.02;
        return {-r, -r, 2 * r, 2 * r};
    }
    QPainterPath shape() const override {
        QPainterPath path;
        const double r = std::max(radius_ * 0.12, 0.5);
        path.addEllipse(QPointF(0, 0), r, r);
        return path;
    }
    void paint(QPainter* p, const QStyleOptionGraphicsItem*, QWidget*) override {
        const plan::Head& head = document_.plan().heads[index_];
        const Look& l = look(inking_.theme);
        const QColor ink = isSelected() ? l.accent : l.ink;
        const double width = isSelected() ? 2.2 : 1.0;
        p->setBrush(Qt::NoBrush);
        const QPainterPath reach = reach_of(head);
        p->setPen(pen_of(l.surface, width + 1.4, inking_));
        p->drawPath(reach);
        p->setPen(pen_of(ink, width, inking_));
        p->drawPath(reach);
        p->setBrush(ink);
        p->setPen(pen_of(l.surface, 1.0, inking_));
        const double dot = std::max(radius_ * 0.035, 0.15);
        p->drawEllipse(QPointF(0, 0), dot, dot);
    }

  protected:
    void mouseReleaseEvent(QGraphicsSceneMouseEvent* event) override {
        QGraphicsItem::mouseReleaseEvent(event);
        plan::Head head = document_.plan().heads[index_];
        if (pos() == QPointF(head.x, -head.y)) return;
        // A hundredth of the unit is finer than anyone sets a head.
        head.x = std::round(pos().x() * 100.0) / 100.0;
        head.y = std::round(-pos().y() * 100.0) / 100.0;
        document_.set_head(index_, head, PlanScene::tr("Move head %1").arg(q(head.id)));
    }

  private:
    QPainterPath reach_of(const plan::Head& head) const {
        QPainterPath path;
        const QRectF circle(-radius_, -radius_, 2 * radius_, 2 * radius_);
        if (head.arc >= 360.0) {
            path.addEllipse(circle);
        } else {
            path.moveTo(0, 0);
            path.arcTo(circle, 90.0 - (head.facing + head.arc / 2.0), head.arc);
            path.closeSubpath();
        }
        return path;
    }

    PlanDocument& document_;
    std::size_t index_;
    Inking inking_;
    double radius_ = 0.0;
};

/// Keeps its size on the screen: a shape for drier, as designed and wetter, and the number with
/// its sign, on a ground of the house's scale.
class CanItem : public QGraphicsItem {
  public:
    CanItem(const CanMark& mark, const Inking& inking) : mark_(mark), inking_(inking) {
        setFlag(ItemIgnoresTransformations);
        setPos(mark.place);
        setZValue(4);
        setToolTip(mark.tip);
    }
    QRectF boundingRect() const override {
        const double d = inking_.dots;
        return {-26 * d, -9 * d, 52 * d, 28 * d};
    }
    void paint(QPainter* p, const QStyleOptionGraphicsItem*, QWidget*) override {
        const Look& l = look(inking_.theme);
        p->scale(inking_.dots, inking_.dots);
        for (const QPen& pen : {QPen(l.surface, 3.0), QPen(l.ink, 1.0)}) {
            p->setPen(pen);
            draw_mark(*p, l);
        }
        QFont small = p->font();
        small.setPixelSize(10);
        p->setFont(small);
        const double width = QFontMetricsF(small).horizontalAdvance(mark_.text) + 4;
        const QRectF label(-width / 2, 8, width, 11);
        p->fillRect(label, l.surface);
        p->drawText(label, Qt::AlignCenter, mark_.text);
    }

  private:
    void draw_mark(QPainter& p, const Look& l) const {
        switch (mark_.fell) {
            case workflow::Fell::drier:
                p.setBrush(depth_colour(0.05, inking_.theme));
                p.drawPolygon(QPolygonF{{-7, -5}, {7, -5}, {0, 7}});
                break;
            case workflow::Fell::wetter:
                p.setBrush(depth_colour(0.9, inking_.theme));
                p.drawPolygon(QPolygonF{{-7, 6}, {7, 6}, {0, -6}});
                break;
            case workflow::Fell::as_designed:
                p.setBrush(l.surface);
                p.drawEllipse(QPointF(0, 0), 4.5, 4.5);
                break;
        }
    }

    CanMark mark_;
    Inking inking_;
};

PlanScene::PlanScene(PlanDocument& document, const Inking& inking, QObject* parent)
    : QGraphicsScene(parent), document_(document), inking_(inking) {
    connect(&document_, &PlanDocument::rebuilt, this, &PlanScene::rebuild);
    connect(&document_, &PlanDocument::head_changed, this, [this](std::size_t index) { heads_[index]->refresh(); });
    connect(&document_, &PlanDocument::predicted, this, &PlanScene::paint_field);
    connect(this, &QGraphicsScene::selectionChanged, this, [this] { Q_EMIT head_chosen(chosen()); });
    rebuild();
}

PlanScene::~PlanScene() { disconnect(this, &QGraphicsScene::selectionChanged, this, nullptr); }

void PlanScene::rebuild() {
    clear();
    heads_.clear();
    can_items_.clear();
    const Look& l = look(inking_.theme);
    const QPen edge = pen_of(l.ink, 1.6, inking_);
    field_ = addPixmap(QPixmap());
    field_->setZValue(0);
    field_->setTransformationMode(Qt::SmoothTransformation);
    const plan::Plan& p = document_.plan();
    for (const auto& polygon : p.turf) addPath(path_of(polygon), edge)->setZValue(2);
    for (const auto& polygon : p.no_water) {
        addPath(path_of(polygon), edge, QBrush(l.faint, Qt::BDiagPattern))->setZValue(1);
    }
    for (const auto& polygon : p.obstacles) addPath(path_of(polygon), edge, QBrush(l.faint))->setZValue(1);
    for (std::size_t i = 0; i < p.heads.size(); ++i) {
        auto* item = new HeadItem(document_, i, inking_);
        addItem(item);
        heads_.push_back(item);
    }
    paint_field();
    add_cans();
    QRectF box = itemsBoundingRect();
    setSceneRect(box.adjusted(-box.width() * 0.05, -box.height() * 0.05, box.width() * 0.05, box.height() * 0.05));
}

void PlanScene::restyle(Theme theme) {
    const int before = chosen();
    inking_.theme = theme;
    rebuild();
    choose(before);
}

void PlanScene::draw_on_paper(QPainter& painter, const QRectF& target, const QRectF& part, double dots) {
    const double scale = std::min(target.width() / part.width(), target.height() / part.height());
    PlanScene paper(document_, {Theme::light, dots, dots / scale});
    paper.set_field_shown(field_shown_);
    paper.set_dry_shown(dry_shown_);
    paper.set_cans(cans_);
    paper.choose(chosen());
    painter.setRenderHint(QPainter::Antialiasing);
    paper.render(&painter, QRectF(target.topLeft(), part.size() * scale), part);
}

void PlanScene::paint_field() {
    if (!field_) return;
    if (!document_.overlap() || !field_shown_) {
        field_->setPixmap(QPixmap());
        return;
    }
    const auto& overlap = *document_.overlap();
    const auto& raster = overlap.field.raster();
    const auto rates = overlap.field.rates();
    const double highest = overlap.prediction.highest_rate.in(units::millimetre_per_hour);
    const double mean = overlap.prediction.mean_rate.in(units::millimetre_per_hour);
    QImage image(raster.columns, raster.rows, QImage::Format_ARGB32);
    std::array<QRgb, 256> scale;
    for (int i = 0; i < 256; ++i) scale[static_cast<std::size_t>(i)] = depth_colour(i / 255.0, inking_.theme).rgb();
    const QRgb dry = look(inking_.theme).warn.rgb();
    for (int row = 0; row < raster.rows; ++row) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(raster.rows - 1 - row));
        for (int column = 0; column < raster.columns; ++column) {
            const std::size_t at = raster.index(column, row);
            const double rate = static_cast<double>(rates[at]);
            const bool turf = overlap.ground[at] == plan::Surface::turf;
            if (rate <= 0.0 && !turf) {
                line[column] = 0;
            } else if (dry_shown_ && turf && rate < 0.5 * mean) {
                line[column] = dry;
            } else {
                const double share = highest > 0.0 ? std::min(1.0, rate / highest) : 0.0;
                line[column] = scale[static_cast<std::size_t>(share * 255.0)];
            }
        }
    }
    const double unit = document_.plan().units.length.unit.si();
    field_->setPixmap(QPixmap::fromImage(image));
    field_->setTransform(QTransform::fromScale(raster.hx / unit, raster.hy / unit));
    field_->setPos(raster.x0 / unit, -(raster.y0 + raster.hy * raster.rows) / unit);
}

void PlanScene::set_field_shown(bool shown) {
    field_shown_ = shown;
    paint_field();
}

void PlanScene::set_dry_shown(bool shown) {
    dry_shown_ = shown;
    paint_field();
}

void PlanScene::set_cans(std::vector<CanMark> cans) {
    cans_ = std::move(cans);
    add_cans();
}

void PlanScene::add_cans() {
    for (QGraphicsItem* item : can_items_) delete item;
    can_items_.clear();
    for (const CanMark& mark : cans_) {
        can_items_.push_back(new CanItem(mark, inking_));
        addItem(can_items_.back());
    }
}

int PlanScene::chosen() const {
    for (const QGraphicsItem* item : selectedItems()) {
        if (const auto* head = dynamic_cast<const HeadItem*>(item)) return static_cast<int>(head->index());
    }
    return -1;
}

void PlanScene::choose(int index) {
    clearSelection();
    if (index >= 0 && index < static_cast<int>(heads_.size())) heads_[static_cast<std::size_t>(index)]->setSelected(true);
}

PlanView::PlanView(PlanScene& scene, QWidget* parent) : QGraphicsView(&scene, parent), scene_(scene) {
    setRenderHint(QPainter::Antialiasing);
    setDragMode(QGraphicsView::ScrollHandDrag);
    setTransformationAnchor(QGraphicsView::AnchorUnderMouse);
    setFrameShape(QFrame::NoFrame);
    setAccessibleName(tr("Drawing of the plan"));
    connect(&scene.document(), &PlanDocument::rebuilt, this, [this] {
        zoomed_ = false;
        fit();
    });
}

void PlanView::fit() {
    fitInView(part_.isNull() ? scene()->sceneRect() : part_, Qt::KeepAspectRatio);
}

void PlanView::set_part(const QRectF& part) {
    if (part == part_) return;
    part_ = part;
    zoomed_ = false;
    fit();
}

void PlanView::resizeEvent(QResizeEvent* event) {
    QGraphicsView::resizeEvent(event);
    if (!zoomed_) fit();
}

void PlanView::wheelEvent(QWheelEvent* event) {
    zoomed_ = true;
    const double factor = std::pow(1.0015, event->angleDelta().y());
    scale(factor, factor);
}

void PlanView::keyPressEvent(QKeyEvent* event) {
    const int chosen = scene_.chosen();
    const double step = event->modifiers() & Qt::ShiftModifier ? 0.1 : 1.0;
    const auto move = [&](double dx, double dy) {
        plan::Head head = scene_.document().plan().heads[static_cast<std::size_t>(chosen)];
        head.x += dx;
        head.y += dy;
        scene_.document().set_head(static_cast<std::size_t>(chosen), head, PlanScene::tr("Move head %1").arg(q(head.id)));
    };
    switch (event->key()) {
        case Qt::Key_Plus:
        case Qt::Key_Minus: {
            zoomed_ = true;
            const double factor = event->key() == Qt::Key_Plus ? 1.25 : 0.8;
            scale(factor, factor);
            return;
        }
        case Qt::Key_0:
            zoomed_ = false;
            fit();
            return;
        case Qt::Key_N:
        case Qt::Key_P: {
            const int count = static_cast<int>(scene_.document().plan().heads.size());
            if (count > 0) scene_.choose(((chosen < 0 ? -1 : chosen) + (event->key() == Qt::Key_N ? 1 : count - 1)) % count);
            return;
        }
        default:
            break;
    }
    if (chosen >= 0) {
        switch (event->key()) {
            case Qt::Key_Left: move(-step, 0); return;
            case Qt::Key_Right: move(step, 0); return;
            case Qt::Key_Up: move(0, step); return;
            case Qt::Key_Down: move(0, -step); return;
            case Qt::Key_Delete: scene_.document().remove_head(static_cast<std::size_t>(chosen)); return;
            default: break;
        }
    }
    QGraphicsView::keyPressEvent(event);
}

}  // namespace evenfall::desktop
