// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/print/write_pdf.h"

#include "reports/print/draw_chart.h"
#include "reports/print/draw_sheet.h"
#include "reports/print/finish_pdf.h"
#include "reports/print/house_font.h"
#include "reports/print/page_flow.h"

#include <QBuffer>
#include <QImage>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QSvgGenerator>

#include <filesystem>
#include <stdexcept>

namespace evenfall::reports {
namespace {

constexpr int dots_per_inch = 1200;

void set_up(QPdfWriter& writer, const PdfOptions& options, const QPageSize& size) {
    writer.setPdfVersion(options.archival ? QPagedPaintDevice::PdfVersion_A1b
                                          : QPagedPaintDevice::PdfVersion_1_4);
    writer.setResolution(dots_per_inch);
    writer.setPageSize(size);
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
}

QPageSize page_of(const SheetSize& sheet) {
    return QPageSize(QSizeF(sheet.width_mm, sheet.height_mm), QPageSize::Millimeter, {}, QPageSize::ExactMatch);
}

/// "Page 5 of 7" in the lower right corner, as on the pages before.
void number_sheet(QPainter& painter, const SheetSize& sheet, int page, int pages) {
    constexpr double dots_per_mm = dots_per_inch / 25.4;
    painter.setFont(house_font(7.5));
    painter.setPen(QColor::fromRgb(ink_faint));
    const QRectF foot(0.0, (sheet.height_mm - 8.0) * dots_per_mm, (sheet.width_mm - 10.0) * dots_per_mm, 5.0 * dots_per_mm);
    painter.drawText(foot, Qt::AlignRight | Qt::AlignVCenter, QStringLiteral("Page %1 of %2").arg(page).arg(pages));
}

/// The sheets behind the pages; says where each one begins.
std::vector<Bookmark> add_sheets(QPdfWriter& writer, QPainter& painter, const Report& report, int before) {
    std::vector<Bookmark> marks;
    const int pages = before + static_cast<int>(report.sheets.size());
    for (const std::string& svg : report.sheets) {
        const SheetSize sheet = sheet_size(svg);
        writer.setPageSize(page_of(sheet));
        writer.newPage();
        draw_sheet(painter, svg, dots_per_inch / 25.4);
        const int page = before + static_cast<int>(marks.size());
        number_sheet(painter, sheet, page + 1, pages);
        marks.push_back({sheet.title.toStdString(), page, 0.0, 0});
    }
    return marks;
}

}  // namespace

void write_pdf(const Report& report, const std::string& path, const PdfOptions& options) {
    check(report);
    need_house_font();
    PageGeometry geometry;
    if (options.paper == Paper::a4) {
        geometry.width = 595.0;
        geometry.height = 842.0;
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    set_up(writer, options, QPageSize(options.paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setTitle(QString::fromStdString(report.title));
    writer.setCreator(QString::fromStdString(report.program));

    PageFlow measured(&writer, nullptr, geometry, [] {}, 0);
    measured.report(report);

    QPainter painter;
    if (!painter.begin(&writer)) throw std::runtime_error("cannot start the PDF of " + path);
    painter.setRenderHint(QPainter::LosslessImageRendering);
    PageFlow flow(&writer, &painter, geometry, [&] { writer.newPage(); },
                  measured.pages() + static_cast<int>(report.sheets.size()));
    flow.report(report);
    auto bookmarks = flow.bookmarks();
    for (Bookmark& mark : add_sheets(writer, painter, report, flow.pages())) bookmarks.push_back(std::move(mark));
    if (!painter.end()) throw std::runtime_error("cannot end the PDF of " + path);
    buffer.close();

    const std::string part = path + ".part";
    finish_pdf(bytes.toStdString(), report.created, bookmarks, geometry, part);
    std::filesystem::rename(part, path);
}

void write_sheet_pdf(const std::string& svg, const std::string& path, const PdfOptions& options) {
    need_house_font();
    const SheetSize sheet = sheet_size(svg);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    set_up(writer, options, page_of(sheet));
    writer.setTitle(sheet.title);
    writer.setCreator(QStringLiteral("Evenfall"));
    QPainter painter;
    if (!painter.begin(&writer)) throw std::runtime_error("cannot start the PDF of " + path);
    draw_sheet(painter, svg, dots_per_inch / 25.4);
    if (!painter.end()) throw std::runtime_error("cannot end the PDF of " + path);
    buffer.close();
    const std::string part = path + ".part";
    finish_pdf(bytes.toStdString(), "", {}, PageGeometry{}, part);
    std::filesystem::rename(part, path);
}

void write_chart_image(const Report& report, const Chart& chart, const std::string& path) {
    need_house_font();
    const QSizeF points(520.0, std::holds_alternative<MapChart>(chart.content) ? 380.0 : 270.0);
    const QString name = QString::fromStdString(path);
    if (name.endsWith(QStringLiteral(".svg"))) {
        QSvgGenerator generator;
        generator.setFileName(name);
        generator.setResolution(96);
        const double scale = 96.0 / 72.0;
        generator.setSize((points * scale).toSize());
        generator.setViewBox(QRectF(QPointF(0, 0), points * scale));
        generator.setTitle(QString::fromStdString(chart.title));
        generator.setDescription(QString::fromStdString(chart.sentence));
        QPainter painter;
        if (!painter.begin(&generator)) throw std::runtime_error("cannot write " + path);
        draw_chart(painter, QRectF(QPointF(0, 0), points * scale), scale, chart, report);
        return;
    }
    if (!name.endsWith(QStringLiteral(".png"))) {
        throw std::runtime_error("a chart is drawn as .png or .svg, not as " + path);
    }
    constexpr double dpi = 300.0;
    QImage image((points * dpi / 72.0).toSize(), QImage::Format_RGB32);
    const int dots_per_metre = static_cast<int>(dpi / 0.0254);
    image.setDotsPerMeterX(dots_per_metre);
    image.setDotsPerMeterY(dots_per_metre);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    draw_chart(painter, QRectF(QPointF(0, 0), points * dpi / 72.0), dpi / 72.0, chart, report);
    painter.end();
    if (!image.save(name)) throw std::runtime_error("cannot write " + path);
}

}  // namespace evenfall::reports
