// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/import/conflicts_model.h"

#include "app/desktop/appearance.h"
#include "app/desktop/core_words.h"
#include "app/desktop/shown.h"
#include "core/exchange/conflict_words.h"

#include <QFileInfo>
#include <QFont>
#include <QItemSelection>
#include <algorithm>
#include <limits>

namespace evenfall::desktop {

using store::Stands;

void ConflictsModel::show(std::shared_ptr<ConflictChoices> choices) {
    beginResetModel();
    choices_ = std::move(choices);
    pages_.reset();
    if (choices_) {
        pages_.emplace([rows = choices_](std::int64_t page) {
            using Pages = RowPages<store::ConflictRow>;
            return rows->rows().page(page * Pages::page_size, Pages::page_size);
        });
    }
    endResetModel();
}

void ConflictsModel::set(const QItemSelection& rows, Stands stands) {
    if (!choices_) return;
    for (const QItemSelectionRange& range : rows) {
        for (int row = range.top(); row <= range.bottom(); ++row) choices_->set(row, stands);
    }
    restyle();
}

std::int64_t ConflictsModel::set_all(Stands stands) {
    const std::int64_t left = choices_ ? choices_->set_all(stands) : 0;
    restyle();
    return left;
}

void ConflictsModel::restyle() {
    // A choice for one row can change others; only what is in view is drawn anew.
    if (rowCount() > 0) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

std::optional<store::ConflictRow> ConflictsModel::row(int at) const {
    const store::ConflictRow* found = pages_ ? pages_->row(at) : nullptr;
    return found ? std::optional(*found) : std::nullopt;
}

int ConflictsModel::rowCount(const QModelIndex& parent) const {
    if (parent.isValid() || !choices_) return 0;
    return static_cast<int>(std::min<std::int64_t>(choices_->count(), std::numeric_limits<int>::max()));
}

int ConflictsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QString ConflictsModel::text(int row, int column) const {
    if (column == choice) {
        switch (choices_->at(row)) {
            case Stands::undecided: return tr("not chosen");
            case Stands::in_book: return tr("the book's");
            case Stands::in_file: return tr("the file's");
        }
    }
    const store::ConflictRow* c = pages_->row(row);
    if (!c) return {};
    switch (column) {
        case place: return tr("%1, row %2").arg(QFileInfo(q(c->file)).fileName()).arg(c->row);
        case record: return core_words(exchange::record_words(c->record));
        case in_book: return core_words(exchange::value_words(c->record, c->in_book));
        case in_file: return core_words(exchange::value_words(c->record, c->in_file));
        default: return {};
    }
}

QVariant ConflictsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || !choices_) return {};
    const Stands stands = choices_->at(index.row());
    const int column = index.column();
    switch (role) {
        case Qt::DisplayRole: return text(index.row(), column);
        case Qt::ToolTipRole:
            if (column == choice && choices_->contested(index.row())) {
                return tr("Another row has another value for this record; one of them can stand.");
            }
            return text(index.row(), column);
        case Qt::FontRole: {
            const bool chosen = (column == in_book && stands == Stands::in_book) ||
                                (column == in_file && stands == Stands::in_file);
            QFont font;
            font.setBold(chosen);
            return font;
        }
        case Qt::ForegroundRole: {
            const bool left = (column == in_book && stands == Stands::in_file) ||
                              (column == in_file && stands == Stands::in_book);
            if (left) return look().faint;
            return column == choice && stands == Stands::undecided ? look().warn : look().ink;
        }
        default: return {};
    }
}

QVariant ConflictsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) return {};
    if (orientation == Qt::Vertical) return section + 1;
    switch (section) {
        case place: return tr("Where");
        case record: return tr("What");
        case in_book: return tr("In the book");
        case in_file: return tr("In the file");
        case choice: return tr("What stands");
        default: return {};
    }
}

}  // namespace evenfall::desktop
