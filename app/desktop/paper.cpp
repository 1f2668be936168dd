// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/paper.h"

#include <QPainter>
#include <QPrinter>
#include <QTextDocument>

namespace evenfall::desktop {
namespace {

constexpr double screen_dots_per_inch = 96.0;

QString row_text(const std::vector<FigureCell>& row) {
    QString text = QStringLiteral("<tr>");
    for (const FigureCell& cell : row) {
        const bool assumed = cell.figure && cell.figure->why.assumed;
        QString inside = cell.text.toHtmlEscaped() + (assumed ? QStringLiteral(" *") : QString());
        if (cell.strong || cell.warn) inside = QStringLiteral("<b>") + inside + QStringLiteral("</b>");
        text += QStringLiteral("<td align=\"%1\">").arg(cell.number ? QStringLiteral("right") : QStringLiteral("left")) + inside +
                QStringLiteral("</td>");
    }
    return text + QStringLiteral("</tr>");
}

void fill(QTextDocument& document, const QString& title, const std::vector<TitledRows>& tables, const QStringList& notes) {
    QFont font = document.defaultFont();
    font.setPointSizeF(8.5);
    document.setDefaultFont(font);
    document.setDefaultStyleSheet(QStringLiteral("* { color: #000000; }"));
    document.setHtml(paper_text(title, tables, notes));
}

}  // namespace

QString paper_text(const QString& title, const std::vector<TitledRows>& tables, const QStringList& notes) {
    QString text = QStringLiteral("<h2>") + title.toHtmlEscaped() + QStringLiteral("</h2>");
    for (const TitledRows& table : tables) {
        text += QStringLiteral("<h3>") + table.title.toHtmlEscaped() +
                QStringLiteral("</h3><table border=\"1\" cellspacing=\"0\" cellpadding=\"3\" style=\"border-collapse: collapse\"><thead><tr>");
        for (const QString& head : table.heads) text += QStringLiteral("<th>") + head.toHtmlEscaped() + QStringLiteral("</th>");
        text += QStringLiteral("</tr></thead>");
        for (const auto& row : table.rows) text += row_text(row);
        text += QStringLiteral("</table>");
    }
    for (const QString& note : notes) text += QStringLiteral("<p>") + note.toHtmlEscaped() + QStringLiteral("</p>");
    return text;
}

void print_paper(QPrinter& printer, const QString& title, const std::vector<TitledRows>& tables, const QStringList& notes) {
    QTextDocument document;
    fill(document, title, tables, notes);
    document.print(&printer);
}

double draw_paper(QPainter& painter, const QRectF& page, double dots_per_inch, const QString& title,
                  const std::vector<TitledRows>& tables, const QStringList& notes) {
    // A document without a device is laid out for a screen.
    const double scale = dots_per_inch / screen_dots_per_inch;
    QTextDocument document;
    fill(document, title, tables, notes);
    document.setTextWidth(page.width() / scale);
    painter.save();
    painter.translate(page.topLeft());
    painter.scale(scale, scale);
    document.drawContents(&painter);
    painter.restore();
    return document.size().height() * scale;
}

}  // namespace evenfall::desktop
