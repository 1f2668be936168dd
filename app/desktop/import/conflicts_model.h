// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/import/conflict_choices.h"
#include "app/desktop/row_pages.h"

#include <QAbstractTableModel>
#include <memory>
#include <optional>

class QItemSelection;

namespace evenfall::desktop {

/// The conflicts of an import as a table, by the million: texts are fetched a page at a time.
/// Tests: tests/app/desktop_conflicts_test.cpp
class ConflictsModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { place, record, in_book, in_file, choice, columns };

    using QAbstractTableModel::QAbstractTableModel;

    /// Null: none.
    void show(std::shared_ptr<ConflictChoices> choices);
    const std::shared_ptr<ConflictChoices>& choices() const { return choices_; }
    void set(const QItemSelection& rows, store::Stands stands);
    /// See ConflictChoices::set_all.
    std::int64_t set_all(store::Stands stands);
    std::optional<store::ConflictRow> row(int at) const;
    /// After a change of colours.
    void restyle();
    /// How often a page of texts was fetched: for tests.
    int fetches() const { return pages_ ? pages_->fetches() : 0; }

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    QString text(int row, int column) const;

    std::shared_ptr<ConflictChoices> choices_;
    mutable std::optional<RowPages<store::ConflictRow>> pages_;
};

}  // namespace evenfall::desktop
