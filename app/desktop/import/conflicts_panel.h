// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/import/conflicts_model.h"

#include <QWidget>

class QLabel;
class QPushButton;
class QTableView;

namespace evenfall::desktop {

/// Where the book and the files differ, with a choice for each row: by buttons for the rows that
/// are selected, by the keys 1, 2 and 0, or by the space bar, which goes through the three.
/// Tests: tests/app/desktop_conflicts_test.cpp
class ConflictsPanel : public QWidget {
    Q_OBJECT

  public:
    explicit ConflictsPanel(QWidget* parent = nullptr);

    /// Null: nothing differs.
    void show_choices(std::shared_ptr<ConflictChoices> choices);
    const std::shared_ptr<ConflictChoices>& choices() const { return model_->choices(); }
    void restyle() { model_->restyle(); }
    QTableView* table() const { return table_; }
    ConflictsModel* model() const { return model_; }

  Q_SIGNALS:
    /// A row was chosen that speaks of a place in a file.
    void place_chosen(const QString& file, std::size_t row, const QString& column);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void choose(store::Stands stands);
    void choose_all(store::Stands stands);
    void choose_next();
    void show_place(const QModelIndex& index);
    void count();

    ConflictsModel* model_;
    QTableView* table_;
    QLabel* state_;
    std::int64_t left_ = 0;  ///< rows that "all as in the file" left as they were
};

}  // namespace evenfall::desktop
