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

class FigureTable : public QTableWidget {
    Q_OBJECT

  public:
    explicit FigureTable(const QString& name, QWidget* parent = nullptr);
    void fill(const QStringList& heads, const std::vector<std::vector<FigureCell>>& rows);
    /// As text with tabs.
    bool copy() const;
    void explain(int row, int column);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    std::vector<std::vector<FigureCell>> rows_;
};

}  // namespace evenfall::desktop
