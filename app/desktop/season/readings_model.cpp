// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/season/readings_model.h"

#include "app/desktop/shown.h"
#include "core/units/number.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace evenfall::desktop {

ReadingsModel::ReadingsModel(const store::Book& book, meter::Meter meter, calendar::TimeZone zone, QObject* parent)
    : QAbstractTableModel(parent), book_(book), meter_(std::move(meter)), zone_(std::move(zone)),
      marks_(store::page_marks(book, meter_.code, page_size)), pages_([this](std::int64_t page) {
          return store::readings_from(book_, meter_.code, marks_.starts[static_cast<std::size_t>(page)], page_size);
      }) {}

int ReadingsModel::rowCount(const QModelIndex& parent) const {
    if (parent.isValid()) return 0;
    return static_cast<int>(std::min<std::int64_t>(marks_.count, std::numeric_limits<int>::max()));
}

int ReadingsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : 4; }

QVariant ReadingsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    if (role == Qt::TextAlignmentRole) {
        return static_cast<int>((index.column() == 1 ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    }
    if (role != Qt::DisplayRole) return {};
    const meter::Reading* r = pages_.row(index.row());
    if (!r) return {};
    switch (index.column()) {
        case 0: {
            QString text = q(calendar::format_local_time(zone_.to_local(r->at)));
            return text.replace(QLatin1Char('T'), QLatin1Char(' '));
        }
        case 1:
            return q(units::format_shortest(r->value));
        case 2:
            if (r->span.count() == 0) return tr("register");
            return tr("volume of %1 min").arg(shown_number(static_cast<double>(r->span.count()) / 60.0, 0));
        case 3:
            switch (r->kind) {
                case meter::ReadingKind::measured: return tr("measured");
                case meter::ReadingKind::estimated: return tr("estimated");
                case meter::ReadingKind::corrected: return tr("corrected");
            }
            return {};
        default:
            return {};
    }
}

QVariant ReadingsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole) return {};
    if (orientation == Qt::Vertical) return section + 1;
    switch (section) {
        case 0: return tr("Time at the site");
        case 1: return tr("Value, %1").arg(q(meter_.unit.name));
        case 2: return tr("What it is");
        case 3: return tr("How sure");
        default: return {};
    }
}

int ReadingsModel::row_of(calendar::Date day) const {
    const std::int64_t n = store::count_readings_before(book_, meter_.code, zone_.start_of_day(day));
    return static_cast<int>(std::clamp<std::int64_t>(n, 0, std::max<std::int64_t>(0, rowCount() - 1)));
}

}  // namespace evenfall::desktop
