// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>
#ifndef Q_MOC_RUN  // moc 6.4 cannot read what these include
#include "app/desktop/shown.h"
#include "app/desktop/sites/site_rows.h"
#endif

namespace evenfall::desktop {

class SitesModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { name, organisation, areas, size, last_reading, over_budget, attention, columns };
    static constexpr int sort_role = Qt::UserRole;

    using QAbstractTableModel::QAbstractTableModel;
    void set_rows(std::vector<SiteRow> rows, UnitsShown units);
    void set_row(std::size_t index, SiteRow row);
    void set_units(UnitsShown units);
    const SiteRow& row(int index) const { return rows_[static_cast<std::size_t>(index)]; }

    /// A finding in the language shown.
    static QString line_of(const meter::MeterFinding& finding);

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    QString text(const SiteRow& row, int column) const;
    std::vector<SiteRow> rows_;
    UnitsShown units_ = UnitsShown::us;
};

/// Keeps the sites whose name, code or organisation holds all words of a text, and, where asked,
/// only those that need attention.
class SitesFilter : public QSortFilterProxyModel {
    Q_OBJECT

  public:
    using QSortFilterProxyModel::QSortFilterProxyModel;
    void set_words(const QString& text);
    void set_only_attention(bool only);

  protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;

  private:
    QStringList words_;
    bool only_attention_ = false;
};

}  // namespace evenfall::desktop
