// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/figure.h"

#include <QTableWidget>
#include <optional>
#include <vector>

/// A table whose cells can explain themselves: Return, Space or a double click opens how the
/// figure came about. The chosen cells, or all when one is chosen, can be copied.
/// Tests: tests/app/desktop_paths_test.cpp
namespace evenfall::desktop {

struct FigureCell {
    QString text;
    std::optional<Figure> figure;  ///< empty for plain text
    bool number = true;            ///< set at the right
    bool strong = false;           ///< totals
    bool warn = false;             ///< said in words too, by whoever fills the cell
};

/// A cell of plain text.
inline FigureCell text_cell(const QString& text, bool number = false) { return {text, std::nullopt, number, false, false}; }

/// What a table shows.
struct FigureRows {
    QStringList heads;
    std::vector<std::vector<FigureCell>> rows;
};
struct TitledRows {
    QString title;
    QStringList heads;
    std::vector<std::vector<FigureCell>> rows;
};

class FigureTable : public QTableWidget {
    Q_OBJECT

  public:
    explicit FigureTable(const QString& name, QWidget* parent = nullptr);
    void fill(const QStringList& heads, const std::vector<std::vector<FigureCell>>& rows);
    void fill(const FigureRows& view) { fill(view.heads, view.rows); }
    /// As text with tabs.
    bool copy() const;
    void explain(int row, int column);
    /// Columns share the width of the table in these parts and their text is wrapped, for tables of
    /// sentences. Empty: each column is as wide as what stands in it.
    void share_width(std::vector<int> parts);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void set_widths();
    bool figure_at(int row, int column) const;
    /// Of the cell, over all columns that it spans.
    int width_of(int row, int column) const;

    std::vector<std::vector<FigureCell>> rows_;
    std::vector<int> parts_;
};

}  // namespace evenfall::desktop
