// SPDX-License-Identifier: GPL-3.0-or-later
// The field sheet on paper and on the clipboard, dark on white whatever the window looks like.
#include "app/desktop/field_sheet/field_sheet_page.h"

#include "app/desktop/field_sheet/depth_map.h"
#include "app/desktop/field_sheet/sheet_figures.h"
#include "app/desktop/field_sheet/sheet_model.h"
#include "app/desktop/paper.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QImage>
#include <QMimeData>
#include <QPainter>
#include <QPrinter>

namespace evenfall::desktop {
namespace {

constexpr double screen_dots_per_inch = 96.0;
/// More columns than that do not fit beside each other; the map has them all.
constexpr int most_columns = 16;

/// The catches as they stand on the ground, with the heads of rows and columns.
TitledRows catches(const SheetModel& model, const QString& title) {
    TitledRows table;
    table.title = title;
    table.heads << QString();
    for (int c = 0; c < model.columnCount(); ++c) {
        table.heads << model.headerData(c, Qt::Horizontal, Qt::DisplayRole).toString();
    }
    for (int r = 0; r < model.rowCount(); ++r) {
        std::vector<FigureCell> row{text_cell(model.headerData(r, Qt::Vertical, Qt::DisplayRole).toString())};
        for (int c = 0; c < model.columnCount(); ++c) {
            row.push_back(text_cell(model.index(r, c).data().toString(), true));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

QString tab_text(const TitledRows& table) {
    QStringList lines{table.heads.join(QLatin1Char('\t'))};
    for (const auto& row : table.rows) {
        QStringList cells;
        for (const FigureCell& cell : row) cells << cell.text;
        lines << cells.join(QLatin1Char('\t'));
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace

bool FieldSheetPage::can_print() const { return sheet_.cans_read() > 0; }

bool FieldSheetPage::copy() {
    if (!can_print()) return false;
    QImage picture(map_->size() * 2, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    map_->draw(painter, QRectF(picture.rect()).adjusted(8, 8, -8, -8), Theme::light, 2.0);
    painter.end();
    auto* mime = new QMimeData;
    mime->setImageData(picture);
    mime->setText(tab_text(catches(*model_, {})));
    QApplication::clipboard()->setMimeData(mime);
    return true;
}

bool FieldSheetPage::print(QPrinter& printer) {
    if (!can_print()) return false;
    const SheetData& d = sheet_.data();
    TitledRows figures;
    for (const Figure& f : sheet_figures(sheet_, session().units())) {
        figures.heads << f.name;
        if (figures.rows.empty()) figures.rows.emplace_back();
        figures.rows.front().push_back(text_cell(f.value));
    }
    std::vector<TitledRows> tables{std::move(figures)};
    if (model_->columnCount() <= most_columns) tables.push_back(catches(*model_, tr("Catches in %1").arg(unit_->currentText())));
    QStringList notes;
    if (!d.notes.empty()) notes << q(d.notes);
    const QString title = tr("Catch test %1, area %2, %3").arg(q(d.code), q(d.area), q(calendar::format_date(d.date)));
    QPainter painter(&printer);
    const QRectF page(QPointF(0, 0), printer.pageRect(QPrinter::DevicePixel).size());
    const double dots = printer.resolution();
    const double used = draw_paper(painter, page, dots, title, tables, notes);
    const double gap_below = dots / 4.0;
    const double height = std::min(page.height() - used - gap_below, page.width() * 0.75);
    if (height < 2.0 * dots) {
        // A sheet of many rows: the map has a page of its own.
        printer.newPage();
        map_->draw(painter, QRectF(0, 0, page.width(), page.width() * 0.75), Theme::light, dots / screen_dots_per_inch);
    } else {
        map_->draw(painter, QRectF(0, used + gap_below, page.width(), height), Theme::light, dots / screen_dots_per_inch);
    }
    return true;
}

}  // namespace evenfall::desktop
