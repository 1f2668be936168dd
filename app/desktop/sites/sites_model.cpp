// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/sites/sites_model.h"

#include "app/desktop/appearance.h"
#include "app/desktop/core_words.h"

#include <QBrush>
#include <utility>

namespace evenfall::desktop {
namespace {

bool is_number(int column) {
    return column == SitesModel::areas || column == SitesModel::size || column == SitesModel::over_budget;
}

}  // namespace

void SitesModel::set_rows(std::vector<SiteRow> rows, UnitsShown units) {
    beginResetModel();
    rows_ = std::move(rows);
    units_ = units;
    endResetModel();
}

void SitesModel::set_row(std::size_t index, SiteRow row) {
    rows_[index] = std::move(row);
    const int r = static_cast<int>(index);
    Q_EMIT dataChanged(this->index(r, 0), this->index(r, columns - 1));
}

void SitesModel::set_units(UnitsShown units) {
    units_ = units;
    if (!rows_.empty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columns - 1));
}

QString SitesModel::line_of(const meter::MeterFinding& finding) { return core_words(finding.sentence); }

int SitesModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int SitesModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns; }

QString SitesModel::text(const SiteRow& row, int column) const {
    switch (column) {
        case name: return q(row.name.empty() ? row.code : row.name);
        case organisation: return q(row.organisation);
        case areas: return QString::number(row.areas);
        case size: return shown(row.size, units_);
        case last_reading:
            return row.last_reading
                       ? q(calendar::format_date(std::chrono::floor<std::chrono::days>(*row.last_reading)))
                       : tr("none yet");
        case over_budget:
            if (!row.judged) return QStringLiteral("…");
            return row.over_budget ? shown(*row.over_budget, units_) : QStringLiteral("–");
        case attention:
            if (!row.judged) return QStringLiteral("…");
            if (!row.attention.empty()) {
                const QString first = line_of(row.attention.front());
                return row.attention.size() == 1 ? first : tr("%1 (and %2 more)").arg(first).arg(row.attention.size() - 1);
            }
            if (!row.last_reading) return tr("not judged: %1").arg(tr("no readings"));
            if (!row.not_judged_because.isEmpty()) return tr("not judged: %1").arg(row.not_judged_because);
            return tr("nothing stands out");
        default: return {};
    }
}

QVariant SitesModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const SiteRow& r = row(index.row());
    switch (role) {
        case Qt::DisplayRole:
        case Qt::ToolTipRole:
            return text(r, index.column());
        case Qt::TextAlignmentRole: {
            return static_cast<int>((is_number(index.column()) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
        }
        case Qt::ForegroundRole:
            if (index.column() == attention && r.judged && r.attention.empty()) return QBrush(look().faint);
            return {};
        case sort_role:
            switch (index.column()) {
                case areas: return static_cast<qulonglong>(r.areas);
                case size: return r.size.si();
                case over_budget: return r.over_budget ? r.over_budget->si() : -1.0;
                case attention: return static_cast<qulonglong>(r.attention.size());
                case last_reading:
                    return r.last_reading ? static_cast<qlonglong>(r.last_reading->time_since_epoch().count()) : -1LL;
                default: return text(r, index.column()).toCaseFolded();
            }
        default:
            return {};
    }
}

QVariant SitesModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) {
        return static_cast<int>((is_number(section) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole) return {};
    switch (section) {
        case name: return tr("Site");
        case organisation: return tr("Organisation");
        case areas: return tr("Areas");
        case size: return tr("Size");
        case last_reading: return tr("Last reading");
        case over_budget: return tr("Over last year's budget");
        case attention: return tr("What to look at");
        default: return {};
    }
}

void SitesFilter::set_words(const QString& text) {
    words_ = text.toCaseFolded().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    invalidateFilter();
}

void SitesFilter::set_only_attention(bool only) {
    only_attention_ = only;
    invalidateFilter();
}

bool SitesFilter::filterAcceptsRow(int row, const QModelIndex&) const {
    const auto* model = static_cast<const SitesModel*>(sourceModel());
    const SiteRow& r = model->row(row);
    if (only_attention_ && r.attention.empty()) return false;
    const QString all = (q(r.code) + QLatin1Char(' ') + q(r.name) + QLatin1Char(' ') + q(r.organisation)).toCaseFolded();
    for (const QString& word : words_) {
        if (!all.contains(word)) return false;
    }
    return true;
}

}  // namespace evenfall::desktop
