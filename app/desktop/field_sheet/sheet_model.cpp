// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/sheet_model.h"

#include "app/desktop/appearance.h"
#include "app/desktop/shown.h"
#include "core/units/number.h"

#include <QBrush>
#include <QFont>
#include <algorithm>

namespace evenfall::desktop {

SheetModel::SheetModel(FieldSheet& sheet, QObject* parent)
    : QAbstractTableModel(parent), sheet_(sheet) {
    rebuild();
    connect(&sheet, &FieldSheet::can_changed, this, [this](std::size_t can) {
        const QModelIndex cell = cell_of(can);
        Q_EMIT dataChanged(cell, cell);
    });
    connect(&sheet, &FieldSheet::shape_changed, this, [this] {
        beginResetModel();
        rebuild();
        endResetModel();
    });
    connect(&sheet, &FieldSheet::head_changed, this, [this] {
        walk_ = walking_order(sheet_.data());
        for (std::size_t i = 0; i < walk_.size(); ++i) place_in_walk_[walk_[i]] = i;
    });
}

void SheetModel::rebuild() {
    const SheetData& data = sheet_.data();
    cell_to_can_.assign(static_cast<std::size_t>(data.rows) * static_cast<std::size_t>(data.columns), -1);
    for (std::size_t i = 0; i < data.cans.size(); ++i) {
        const SheetCan& can = data.cans[i];
        if (can.row < 0 || can.row >= data.rows || can.column < 0 || can.column >= data.columns) continue;
        cell_to_can_[static_cast<std::size_t>(can.row * data.columns + can.column)] = static_cast<int>(i);
    }
    walk_ = walking_order(data);
    place_in_walk_.assign(walk_.size(), 0);
    for (std::size_t i = 0; i < walk_.size(); ++i) place_in_walk_[walk_[i]] = i;
}

int SheetModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : sheet_.data().rows;
}

int SheetModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : sheet_.data().columns;
}

int SheetModel::can_at(const QModelIndex& index) const {
    if (!index.isValid()) return -1;
    return cell_to_can_[static_cast<std::size_t>(index.row() * sheet_.data().columns + index.column())];
}

QModelIndex SheetModel::cell_of(std::size_t can) const {
    const SheetCan& c = sheet_.data().cans[can];
    return index(c.row, c.column);
}

QVariant SheetModel::data(const QModelIndex& cell, int role) const {
    const int n = can_at(cell);
    if (n < 0) return {};
    const SheetCan& can = sheet_.data().cans[static_cast<std::size_t>(n)];
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
            if (!can.bad.empty()) return q(can.bad);
            if (!can.reading) return QString();
            return q(units::format_shortest(*can.reading));
        case Qt::TextAlignmentRole:
            return static_cast<int>(Qt::AlignRight | Qt::AlignVCenter);
        case Qt::ForegroundRole:
            if (!can.bad.empty()) return QBrush(look().warn);
            if (!can.excluded.empty()) return QBrush(look().faint);
            return {};
        case Qt::FontRole: {
            QFont font;
            if (!can.excluded.empty()) font.setStrikeOut(true);
            if (!can.bad.empty()) font.setItalic(true);
            return font;
        }
        case Qt::ToolTipRole:
            if (!can.bad.empty()) {
                return tr("Can %1: found \"%2\", expected a number, 0 or more").arg(q(can.label), q(can.bad));
            }
            if (!can.excluded.empty()) {
                return tr("Can %1 is left out: %2").arg(q(can.label), q(can.excluded));
            }
            return tr("Can %1").arg(q(can.label));
        case Qt::AccessibleTextRole: {
            const QString value = data(cell, Qt::DisplayRole).toString();
            return tr("Can %1: %2").arg(q(can.label), value.isEmpty() ? tr("not read yet") : value);
        }
        default:
            return {};
    }
}

bool SheetModel::setData(const QModelIndex& cell, const QVariant& value, int role) {
    const int n = can_at(cell);
    if (n < 0 || role != Qt::EditRole || read_only_) return false;
    SheetCan can = sheet_.data().cans[static_cast<std::size_t>(n)];
    const QString typed = value.toString().trimmed();
    can.reading.reset();
    can.bad.clear();
    if (!typed.isEmpty()) {
        const auto number = units::parse_number(utf8(typed));
        if (number && *number >= 0.0) {
            can.reading = number;
        } else {
            can.bad = utf8(typed);
        }
    }
    sheet_.set_can(static_cast<std::size_t>(n), can, tr("Reading of can %1").arg(q(can.label)));
    return true;
}

void SheetModel::exclude(const QModelIndex& cell, const QString& reason) {
    const int n = can_at(cell);
    if (n < 0 || read_only_) return;
    SheetCan can = sheet_.data().cans[static_cast<std::size_t>(n)];
    can.excluded = utf8(reason.trimmed());
    sheet_.set_can(static_cast<std::size_t>(n), can,
                   can.excluded.empty() ? tr("Count can %1").arg(q(can.label))
                                        : tr("Leave out can %1").arg(q(can.label)));
}

QVariant SheetModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) return {};
    const SheetData& data = sheet_.data();
    if (data.layout == audit::Layout::traveller) {
        if (orientation == Qt::Horizontal) return section == 0 ? tr("left of the path") : tr("right of the path");
        for (const SheetCan& can : data.cans) {
            if (can.row == section && can.distance) {
                return q(units::format_shortest(*can.distance)) + QLatin1Char(' ') + q(data.position_unit.name);
            }
        }
        return {};
    }
    if (data.layout == audit::Layout::pivot || data.layout == audit::Layout::lateral) {
        if (orientation == Qt::Horizontal) return QString(QLatin1Char('+')) + QString::number(section);
        for (const SheetCan& can : data.cans) {
            if (can.row == section && can.column == 0 && can.distance) {
                return q(units::format_shortest(*can.distance)) + QLatin1Char(' ') + q(data.position_unit.name);
            }
        }
        return {};
    }
    if (orientation == Qt::Horizontal) return QString::number(section + 1);
    for (const SheetCan& can : data.cans) {
        if (can.row == section) {
            const QString label = q(can.label);
            if (!label.isEmpty() && label.at(0).isLetter()) return label.left(label.size() - QString::number(can.column + 1).size());
        }
    }
    return QString::number(section + 1);
}

Qt::ItemFlags SheetModel::flags(const QModelIndex& cell) const {
    if (can_at(cell) < 0) return Qt::NoItemFlags;
    const auto usual = Qt::ItemIsSelectable | Qt::ItemIsEnabled;
    return read_only_ ? usual : usual | Qt::ItemIsEditable;
}

QModelIndex SheetModel::along_walk(const QModelIndex& cell, int steps) const {
    const int n = can_at(cell);
    if (n < 0) return first_of_walk();
    const auto at = static_cast<long>(place_in_walk_[static_cast<std::size_t>(n)]) + steps;
    const long last = static_cast<long>(walk_.size()) - 1;
    return cell_of(walk_[static_cast<std::size_t>(std::clamp(at, 0L, last))]);
}

QModelIndex SheetModel::first_of_walk() const {
    return walk_.empty() ? QModelIndex() : cell_of(walk_.front());
}

}  // namespace evenfall::desktop
