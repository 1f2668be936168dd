// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/field_sheet/field_sheet.h"

#include <QAbstractTableModel>
#include <vector>

/// The cans as they stand on the ground: rows from the top of the map, columns from its left.
/// Tests: tests/app/desktop_field_sheet_test.cpp
namespace evenfall::desktop {

class SheetModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    explicit SheetModel(FieldSheet& sheet, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// The can at that cell, or -1.
    int can_at(const QModelIndex& index) const;
    /// The cell of the can that is read after the one at `index`; `steps` may be negative.
    /// The same cell at either end of the walk.
    QModelIndex along_walk(const QModelIndex& index, int steps) const;
    QModelIndex first_of_walk() const;
    /// Leaves the can out of the figures for that reason; an empty reason counts it again.
    void exclude(const QModelIndex& index, const QString& reason);
    void set_read_only(bool read_only) { read_only_ = read_only; }

  private:
    void rebuild();
    QModelIndex cell_of(std::size_t can) const;

    FieldSheet& sheet_;
    std::vector<int> cell_to_can_;      ///< row-major; -1 where no can stands
    std::vector<std::size_t> walk_;
    std::vector<std::size_t> place_in_walk_;
    bool read_only_ = false;
};

}  // namespace evenfall::desktop
