// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/row_pages.h"
#include "core/calendar/time_zone.h"
#include "core/meter/meter.h"
#include "core/store/reading_pages.h"

#include <QAbstractTableModel>

/// A meter's whole record, fetched a page at a time as it comes into view; a few pages are kept.
/// Tests: tests/app/desktop_window_test.cpp
namespace evenfall::desktop {

class ReadingsModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    static constexpr std::int64_t page_size = RowPages<meter::Reading>::page_size;

    ReadingsModel(const store::Book& book, meter::Meter meter, calendar::TimeZone zone, QObject* parent = nullptr);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    /// The row of the first reading on or after the start of that day.
    int row_of(calendar::Date day) const;
    /// How often a page was fetched: for tests.
    int fetches() const { return pages_.fetches(); }

  private:
    const store::Book& book_;
    meter::Meter meter_;
    calendar::TimeZone zone_;
    store::PageMarks marks_;
    mutable RowPages<meter::Reading> pages_;
};

}  // namespace evenfall::desktop
