// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/print/draw_sheet.h"

#include "core/input_error.h"
#include "reports/print/house_font.h"
#include "reports/print/sheet_path.h"

#include <QColor>
#include <QFontMetricsF>
#include <QHash>
#include <QPainter>
#include <QPainterPath>
#include <QPen>
#include <QXmlStreamReader>

#include <algorithm>
#include <cmath>
#include <vector>

namespace evenfall::reports {
namespace {

[[noreturn]] void refuse(const QString& found) {
    throw InputError(printable(found.toStdString()), "a drawing that evenfall wrote");
}

double number_of(const QXmlStreamAttributes& attributes, const char* name) {
    bool ok = false;
    const QString text = attributes.value(QLatin1String(name)).toString();
    const double value = text.toDouble(&ok);
    if (!ok || !std::isfinite(value)) refuse(QString::fromLatin1(name) + QLatin1Char('=') + text);
    return value;
}

/// One thing to draw: its outline in millimetres, fill and pen.
struct Shape {
    QPainterPath path;
    QString fill;
    QString stroke;
    double width = 0.0;
    std::vector<double> dash;
};

/// A tile that fills a shape again and again, from the corner of the page on.
struct Pattern {
    double width = 1.0;
    double height = 1.0;
    std::vector<Shape> shapes;
};

QPainterPath outline_of(const QString& name, const QXmlStreamAttributes& a) {
    QPainterPath path;
    if (name == QLatin1String("rect")) {
        // A pattern's own background has no corner of its own.
        const auto corner = [&](const char* c) { return a.hasAttribute(QLatin1String(c)) ? number_of(a, c) : 0.0; };
        path.addRect(corner("x"), corner("y"), number_of(a, "width"), number_of(a, "height"));
    } else if (name == QLatin1String("circle")) {
        const double r = number_of(a, "r");
        path.addEllipse(QPointF(number_of(a, "cx"), number_of(a, "cy")), r, r);
    } else if (name == QLatin1String("line")) {
        path.moveTo(number_of(a, "x1"), number_of(a, "y1"));
        path.lineTo(number_of(a, "x2"), number_of(a, "y2"));
    } else {
        path = sheet_path(a.value(QLatin1String("d")).toString().toStdString());
        path.setFillRule(a.value(QLatin1String("fill-rule")) == QLatin1String("evenodd") ? Qt::OddEvenFill : Qt::WindingFill);
    }
    return path;
}

Shape shape_of(const QString& name, const QXmlStreamAttributes& a) {
    Shape shape;
    shape.path = outline_of(name, a);
    shape.fill = a.value(QLatin1String("fill")).toString();
    shape.stroke = a.value(QLatin1String("stroke")).toString();
    if (shape.stroke.isEmpty()) shape.stroke = QStringLiteral("none");
    if (shape.fill.isEmpty()) shape.fill = QStringLiteral("none");
    if (a.hasAttribute(QLatin1String("stroke-width"))) shape.width = number_of(a, "stroke-width");
    for (const QString& part : a.value(QLatin1String("stroke-dasharray")).toString().split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        shape.dash.push_back(part.toDouble());
    }
    return shape;
}

bool is_shape(const QString& name) {
    return name == QLatin1String("rect") || name == QLatin1String("circle") || name == QLatin1String("line") ||
           name == QLatin1String("path");
}

class SheetDrawer {
  public:
    SheetDrawer(QPainter& painter, const std::string& svg, double dots)
        : painter_(painter), dots_(dots), xml_(QByteArray::fromStdString(svg)) {}

    void run() {
        while (!xml_.atEnd()) {
            xml_.readNext();
            if (xml_.isEndElement() && xml_.name() == QLatin1String("g")) painter_.setClipping(false);
            if (xml_.isStartElement()) element();
        }
        if (xml_.hasError()) refuse(xml_.errorString());
    }

  private:
    void element() {
        const QString name = xml_.name().toString();
        const QXmlStreamAttributes a = xml_.attributes();
        if (name == QLatin1String("svg") || name == QLatin1String("defs")) return;
        if (name == QLatin1String("title")) {
            xml_.skipCurrentElement();
        } else if (name == QLatin1String("pattern")) {
            read_pattern(a);
        } else if (name == QLatin1String("clipPath")) {
            read_clip();
        } else if (name == QLatin1String("g")) {
            painter_.setClipRect(scaled(clip_));
        } else if (is_shape(name)) {
            draw(shape_of(name, a));
        } else if (name == QLatin1String("text")) {
            text(a);
        } else {
            refuse(QLatin1Char('<') + name + QLatin1Char('>'));
        }
    }

    void read_pattern(const QXmlStreamAttributes& a) {
        Pattern pattern{number_of(a, "width"), number_of(a, "height"), {}};
        if (!(pattern.width > 0.1) || !(pattern.height > 0.1)) refuse(QStringLiteral("a pattern without size"));
        while (xml_.readNextStartElement()) {
            if (!is_shape(xml_.name().toString())) refuse(xml_.name().toString());
            pattern.shapes.push_back(shape_of(xml_.name().toString(), xml_.attributes()));
            xml_.skipCurrentElement();
        }
        patterns_.insert(QStringLiteral("url(#") + a.value(QLatin1String("id")).toString() + QLatin1Char(')'), pattern);
    }

    void read_clip() {
        if (!xml_.readNextStartElement() || xml_.name() != QLatin1String("rect")) refuse(QStringLiteral("a cut that is no rectangle"));
        const auto a = xml_.attributes();
        clip_ = QRectF(number_of(a, "x"), number_of(a, "y"), number_of(a, "width"), number_of(a, "height"));
        xml_.skipCurrentElement();  // the rectangle
        xml_.skipCurrentElement();  // the cut itself
    }

    QRectF scaled(const QRectF& r) const { return {r.topLeft() * dots_, r.bottomRight() * dots_}; }
    QPainterPath scaled(const QPainterPath& path) const { return QTransform::fromScale(dots_, dots_).map(path); }

    QPen pen_of(const Shape& shape) const {
        if (shape.stroke == QLatin1String("none")) return QPen(Qt::NoPen);
        QPen pen(QColor(shape.stroke), shape.width * dots_, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
        QList<qreal> dash;
        for (const double part : shape.dash) dash.append(shape.width > 0.0 ? part / shape.width : 1.0);
        if (!dash.isEmpty()) pen.setDashPattern(dash);
        return pen;
    }

    void draw(const Shape& shape) {
        const QPainterPath path = scaled(shape.path);
        const auto pattern = patterns_.constFind(shape.fill);
        if (pattern != patterns_.constEnd()) {
            tile(*pattern, shape.path);
        } else if (shape.fill != QLatin1String("none")) {
            const QColor colour(shape.fill);
            if (!colour.isValid()) refuse(shape.fill);
            painter_.fillPath(path, colour);
        }
        if (shape.stroke != QLatin1String("none")) painter_.strokePath(path, pen_of(shape));
    }

    /// Each shape of the tile is drawn at every place of the grid, all of one kind as one path.
    void tile(const Pattern& pattern, const QPainterPath& into) {
        const QRectF box = into.boundingRect();
        painter_.save();
        painter_.setClipPath(scaled(into), Qt::IntersectClip);
        for (const Shape& part : pattern.shapes) {
            // A background without a pen fills the shape at once.
            const bool whole = part.stroke == QLatin1String("none") &&
                               part.path.boundingRect().contains(QRectF(0, 0, pattern.width, pattern.height));
            Shape all = part;
            all.path = QPainterPath();
            all.path.setFillRule(Qt::WindingFill);
            if (whole) {
                all.path = into;
            } else {
                add_tiles(all.path, part.path, pattern, box);
            }
            draw(all);
        }
        painter_.restore();
    }

    static void add_tiles(QPainterPath& all, const QPainterPath& part, const Pattern& pattern, const QRectF& box) {
        const int first_x = static_cast<int>(std::floor(box.left() / pattern.width));
        const int last_x = static_cast<int>(std::ceil(box.right() / pattern.width));
        const int first_y = static_cast<int>(std::floor(box.top() / pattern.height));
        const int last_y = static_cast<int>(std::ceil(box.bottom() / pattern.height));
        for (int y = first_y; y < last_y; ++y) {
            for (int x = first_x; x < last_x; ++x) {
                all.addPath(part.translated(x * pattern.width, y * pattern.height));
            }
        }
    }

    void text(const QXmlStreamAttributes& a) {
        QFont font = house_font(10.0, a.value(QLatin1String("font-weight")) == QLatin1String("bold"));
        font.setPixelSize(std::max(1, static_cast<int>(std::lround(number_of(a, "font-size") * dots_))));
        const double x = number_of(a, "x") * dots_;
        const double y = number_of(a, "y") * dots_;
        const auto anchor = a.value(QLatin1String("text-anchor")).toString();
        const QColor ink(a.value(QLatin1String("fill")).toString());
        const QString words = xml_.readElementText();
        const double advance = QFontMetricsF(font, painter_.device()).horizontalAdvance(words);
        const double back = anchor == QLatin1String("end") ? advance : anchor == QLatin1String("middle") ? advance / 2.0 : 0.0;
        painter_.setFont(font);
        painter_.setPen(ink);
        painter_.drawText(QPointF(x - back, y), words);
    }

    QPainter& painter_;
    double dots_;
    QXmlStreamReader xml_;
    QHash<QString, Pattern> patterns_;
    QRectF clip_;
};

}  // namespace

SheetSize sheet_size(const std::string& svg) {
    QXmlStreamReader xml(QByteArray::fromStdString(svg));
    if (!xml.readNextStartElement() || xml.name() != QLatin1String("svg")) refuse(xml.name().toString());
    SheetSize size;
    const auto length = [&](const char* name) {
        QString text = xml.attributes().value(QLatin1String(name)).toString();
        if (!text.endsWith(QLatin1String("mm"))) refuse(text);
        text.chop(2);
        bool ok = false;
        const double mm = text.toDouble(&ok);
        if (!ok || !(mm > 1.0) || mm > 2000.0) refuse(text);
        return mm;
    };
    size.width_mm = length("width");
    size.height_mm = length("height");
    if (xml.readNextStartElement() && xml.name() == QLatin1String("title")) size.title = xml.readElementText();
    return size;
}

void draw_sheet(QPainter& painter, const std::string& svg, double dots_per_mm) {
    SheetDrawer(painter, svg, dots_per_mm).run();
}

}  // namespace evenfall::reports
