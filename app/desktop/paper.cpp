// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/paper.h"

#include <QPrinter>
#include <QTextDocument>

namespace evenfall::desktop {
namespace {

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
    QFont font = document.defaultFont();
    font.setPointSizeF(8.5);
    document.setDefaultFont(font);
    document.setDefaultStyleSheet(QStringLiteral("* { color: #000000; }"));
    document.setHtml(paper_text(title, tables, notes));
    document.print(&printer);
}

}  // namespace evenfall::desktop
