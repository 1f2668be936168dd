// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/print/write_pdf.h"

#include "reports/print/draw_chart.h"
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

void set_up(QPdfWriter& writer, const Report& report, const PdfOptions& options) {
    writer.setPdfVersion(options.archival ? QPagedPaintDevice::PdfVersion_A1b
                                          : QPagedPaintDevice::PdfVersion_1_4);
    writer.setResolution(dots_per_inch);
    writer.setPageSize(QPageSize(options.paper == Paper::a4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(QString::fromStdString(report.title));
    writer.setCreator(QString::fromStdString(report.program));
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
    set_up(writer, report, options);

    PageFlow measured(&writer, nullptr, geometry, [] {}, 0);
    measured.report(report);

    QPainter painter;
    if (!painter.begin(&writer)) throw std::runtime_error("cannot start the PDF of " + path);
    painter.setRenderHint(QPainter::LosslessImageRendering);
    PageFlow flow(&writer, &painter, geometry, [&] { writer.newPage(); }, measured.pages());
    flow.report(report);
    if (!painter.end()) throw std::runtime_error("cannot end the PDF of " + path);
    buffer.close();

    const std::string part = path + ".part";
    finish_pdf(bytes.toStdString(), report.created, flow.bookmarks(), geometry, part);
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
