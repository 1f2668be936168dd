// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/print/page_flow.h"

#include "reports/content/look.h"
#include "reports/print/draw_chart.h"
#include "reports/print/house_font.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>

#include <algorithm>

namespace evenfall::reports {
namespace {

QColor colour(Rgb rgb) { return QColor::fromRgb(rgb); }
QString text_of(const std::string& t) { return QString::fromStdString(t); }

/// An answer that ends above this share of its page leaves the rest to what follows.
constexpr double short_answer = 0.3;

/// Points: what ground of this shape takes across the page, with its axis below; a wide strip would
/// leave half of a square empty.
double map_height(const MapChart& map, const Table* source) {
    constexpr double tallest = 340.0, shortest = 200.0, across = 400.0, axis = 50.0;
    if (source == nullptr) return tallest;
    const auto span = [&](const ColumnRef& ref) {
        std::optional<double> low, high;
        for (const auto& v : source->values(ref.column)) {
            if (!v) continue;
            low = std::min(low.value_or(*v), *v);
            high = std::max(high.value_or(*v), *v);
        }
        return low ? *high - *low : 0.0;
    };
    const double x = span(map.x), y = span(map.y);
    return x > 0.0 ? std::clamp(across * y / x + axis, shortest, tallest) : tallest;
}

QTextOption wrapping() {
    QTextOption option;
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    return option;
}

}  // namespace

PageFlow::PageFlow(QPaintDevice* device, QPainter* painter, PageGeometry geometry,
                   std::function<void()> new_page, int pages)
    : device_(device),
      painter_(painter),
      geometry_(geometry),
      new_page_(std::move(new_page)),
      page_count_(pages),
      scale_(device->logicalDpiX() / 72.0) {}

void PageFlow::report(const Report& report) {
    running_title_ = text_of(report.subtitle.empty() ? report.title
                                                     : report.title + ", " + report.subtitle);
    start_page();
    title_page(report);
    page_break();
    answer(report.answer);
    // Where there is little to answer, the figures may follow at once: no page says next to nothing.
    if (y_ > pt(geometry_.height * short_answer)) page_break();
    else y_ += pt(16.0);
    for (const Section& section : report.sections) this->section(section, report);
    notes(report);
    signatures(report.signatures);
}

void PageFlow::start_page() {
    y_ = pt(geometry_.margin);
    if (painter_ == nullptr) return;
    const QFont font = house_font(7.5);
    painter_->setFont(font);
    painter_->setPen(colour(ink_faint));
    const QRectF foot(left(), pt(geometry_.height - geometry_.margin + 2.0), width(), pt(12.0));
    const QString number =
        QStringLiteral("Page %1 of %2").arg(page_ + 1).arg(std::max(page_count_, page_ + 1));
    const QFontMetricsF metrics(font, device_);
    const double room = width() - metrics.horizontalAdvance(number) - pt(20.0);
    painter_->drawText(foot, Qt::AlignLeft | Qt::AlignVCenter,
                       metrics.elidedText(running_title_, Qt::ElideMiddle, room));
    painter_->drawText(foot, Qt::AlignRight | Qt::AlignVCenter, number);
    painter_->setPen(QPen(colour(grid_line), pt(0.5)));
    painter_->drawLine(foot.topLeft() - QPointF(0, pt(2.0)), foot.topRight() - QPointF(0, pt(2.0)));
}

void PageFlow::page_break() {
    ++page_;
    new_page_();
    start_page();
}

void PageFlow::need(double height) {
    const bool fresh = y_ <= pt(geometry_.margin) + 1.0;
    if (!fresh && y_ + height > bottom()) page_break();
}

void PageFlow::bookmark(const std::string& title, int level) {
    bookmarks_.push_back({title, page_, y_ / scale_, level});
}

double PageFlow::text_height(const QString& text, const QFont& font, double width) const {
    QTextLayout layout(text, font, device_);
    layout.setTextOption(wrapping());
    layout.beginLayout();
    double height = 0.0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        height += line.height();
    }
    layout.endLayout();
    return height;
}

void PageFlow::text(const QString& text, const QFont& font, Rgb ink, double x, double width,
                    double space_behind) {
    for (const QString& part : text.split(QLatin1Char('\n'))) {
        QTextLayout layout(part, font, device_);
        layout.setTextOption(wrapping());
        layout.setCacheEnabled(true);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
        }
        layout.endLayout();
        for (int i = 0; i < layout.lineCount(); ++i) {
            const QTextLine line = layout.lineAt(i);
            need(line.height());
            if (painter_ != nullptr) {
                painter_->setPen(colour(ink));
                // Lines lie at their own y in the layout; here the page decides.
                line.draw(painter_, QPointF(x, y_ - line.y()));
            }
            y_ += line.height();
        }
    }
    y_ += space_behind;
}

void PageFlow::heading(const std::string& title, double size, int level) {
    need(pt(size * 1.4 + 60.0));
    bookmark(title, level);
    text(text_of(title), house_font(size, true), level == 0 ? look_of(Tone::use, Medium::paper).ink : ink_text,
         left(), width(), pt(4.0));
}

void PageFlow::paragraph(const std::string& t) {
    text(text_of(t), house_font(9.5), ink_text, left(), width(), pt(7.0));
}

void PageFlow::bullet(const std::string& t) {
    const QFont font = house_font(9.5);
    need(QFontMetricsF(font, device_).height());
    if (painter_ != nullptr) {
        painter_->setBrush(colour(look_of(Tone::use, Medium::paper).fill));
        painter_->setPen(Qt::NoPen);
        painter_->drawEllipse(QPointF(left() + pt(4.0), y_ + pt(6.0)), pt(1.8), pt(1.8));
    }
    text(text_of(t), font, ink_text, left() + pt(14.0), width() - pt(14.0), pt(5.0));
}

void PageFlow::title_page(const Report& report) {
    heading(report.title, 20.0, 0);
    if (!report.subtitle.empty()) {
        text(text_of(report.subtitle), house_font(12.0), ink_text, left(), width(), pt(2.0));
    }
    if (!report.organisation.empty()) {
        text(text_of(report.organisation), house_font(10.0), ink_faint, left(), width(), pt(2.0));
    }
    if (!report.created.empty()) {
        text(text_of("Made " + report.created + " by " + report.program), house_font(8.0), ink_faint,
             left(), width(), 0.0);
    }
    y_ += pt(16.0);
    heading(report.caution.title, 13.0, 0);
    for (const auto& t : report.caution.paragraphs) bullet(t);
}

void PageFlow::answer(const Answer& answer) {
    heading("Answer", 16.0, 0);
    for (const auto& t : answer.sentences) {
        text(text_of(t), house_font(10.5), ink_text, left(), width(), pt(7.0));
    }
    if (!answer.figures.rows.empty()) table(answer.figures);
    if (answer.fixes.empty()) return;
    heading("What to fix first", 12.0, 1);
    int rank = 1;
    for (const Fix& f : answer.fixes) fix(f, rank++);
}

void PageFlow::fix(const Fix& fix, int rank) {
    const QString value = text_of(worth(fix));
    need(pt(60.0));
    const double top = y_;
    const int page = page_;
    text(QStringLiteral("%1. %2").arg(rank).arg(text_of(fix.what)), house_font(10.5, true), ink_text,
         left() + pt(10.0), width() - pt(10.0), pt(2.0));
    text(text_of(fix.why), house_font(9.5), ink_text, left() + pt(10.0), width() - pt(10.0), pt(2.0));
    text(value, house_font(9.5, true), look_of(Tone::use, Medium::paper).ink, left() + pt(10.0),
         width() - pt(10.0), 0.0);
    if (painter_ != nullptr && page == page_) {
        painter_->fillRect(QRectF(left(), top, pt(3.0), y_ - top), colour(look_of(Tone::use, Medium::paper).fill));
    }
    y_ += pt(10.0);
}

void PageFlow::section(const Section& section, const Report& report) {
    // A section that would start in the lower third starts on a page of its own.
    need(pt((geometry_.height - 2.0 * geometry_.margin) * 0.36));
    heading(section.title, 14.0, 0);
    for (const Block& block : section.blocks) {
        if (const auto* p = std::get_if<Paragraph>(&block)) paragraph(p->text);
        if (const auto* t = std::get_if<Table>(&block)) table(*t);
        if (const auto* c = std::get_if<Chart>(&block)) chart(*c, report);
    }
    y_ += pt(6.0);
}

double PageFlow::chart_height(const Chart& chart, const Table* source) {
    const auto* series = std::get_if<SeriesChart>(&chart.content);
    if (series == nullptr) return map_height(std::get<MapChart>(chart.content), source);
    if (!series->horizontal || source == nullptr) return 250.0;
    const double bars = static_cast<double>(source->values(series->categories.column).size());
    // Axis, title and legend take 100 points whatever the number of bars.
    return std::clamp(100.0 + bars * (10.0 + 8.0 * static_cast<double>(series->series.size())), 160.0,
                      640.0);
}

void PageFlow::chart(const Chart& chart, const Report& report) {
    const Table* source = nullptr;
    if (const auto* s = std::get_if<SeriesChart>(&chart.content)) {
        source = report.find_table(s->categories.table);
    } else {
        source = report.find_table(std::get<MapChart>(chart.content).value.table);
    }
    const double height = pt(chart_height(chart, source));
    const QFont title_font = house_font(10.0, true), sentence_font = house_font(8.5);
    const double words = text_height(text_of(chart.title), title_font, width()) +
                         text_height(text_of(chart.sentence), sentence_font, width()) + pt(6.0);
    const bool empty = source == nullptr || !has_values(chart, report);
    need(words + (empty ? pt(24.0) : height + pt(12.0)));
    bookmark(chart.title, 1);
    text(text_of(chart.title), title_font, ink_text, left(), width(), pt(2.0));
    if (!empty) text(text_of(chart.sentence), sentence_font, ink_faint, left(), width(), pt(4.0));
    const QRectF target(left(), y_, width(), height);
    if (empty) {
        text(text_of(nothing_to_draw), house_font(9.5), ink_text, left(), width(),
             pt(10.0));
        return;
    }
    if (painter_ != nullptr) {
        painter_->save();
        painter_->setClipRect(target);
        draw_chart(*painter_, target, scale_, chart, report);
        painter_->restore();
    }
    y_ += height + pt(12.0);
}

void PageFlow::notes(const Report& report) {
    if (!report.notes.empty()) {
        need(pt(120.0));
        heading("Methods, conventions and sources", 14.0, 0);
    }
    for (const Note& n : report.notes) {
        std::string t = n.subject + ": " + n.method + ".";
        if (!n.convention.empty()) t += " Convention: " + n.convention + ".";
        t += " Source: " + n.source + ".";
        if (n.assumed) t += " An input was assumed.";
        bullet(t);
    }
    if (!report.notes.empty()) paragraph("* behind a figure means that it rests on an assumed or estimated input.");
    need(pt(80.0));
    heading("Data gaps", 12.0, 0);
    if (report.gaps.empty()) paragraph("None found.");
    for (const auto& gap : report.gaps) bullet(gap);
}

void PageFlow::signatures(const std::vector<Signature>& signatures) {
    if (signatures.empty()) return;
    need(pt(130.0));
    heading("Signatures", 12.0, 0);
    const auto or_line = [](const std::string& t, int n) {
        return t.empty() ? QString(n, QLatin1Char('_')) : text_of(t);
    };
    for (const Signature& s : signatures) {
        need(pt(95.0));
        const QFont font = house_font(9.5);
        text(text_of(s.role) + QStringLiteral(": ") + or_line(s.name, 40), font, ink_text, left(),
             width(), pt(6.0));
        text(QStringLiteral("Certification number: ") + or_line(s.certification, 20) +
                 QStringLiteral("     Expires: ") + or_line(s.expires, 16),
             font, ink_text, left(), width(), pt(22.0));
        text(QStringLiteral("Signature: ") + QString(40, QLatin1Char('_')) +
                 QStringLiteral("     Date: ") + QString(16, QLatin1Char('_')),
             font, ink_text, left(), width(), pt(20.0));
    }
}

}  // namespace evenfall::reports
