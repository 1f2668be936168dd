// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/field_sheet/field_sheet.h"

#include <QWidget>
#include <functional>

class QTableWidget;
class QPlainTextEdit;

/// The lists beside the cans: pressures, findings, photos, notes. Each change is one undo step.
/// Tests: tests/app/desktop_field_sheet_test.cpp
namespace evenfall::desktop {

/// A table of short texts with an empty row at its end to write into; emptying a row removes it.
class TextTable : public QWidget {
    Q_OBJECT

  public:
    TextTable(const QStringList& heads, const QString& name, QWidget* parent = nullptr);
    void set_rows(const std::vector<QStringList>& rows);
    std::vector<QStringList> rows() const;
    QTableWidget* table() const { return table_; }
    /// Says what is wrong in a cell, or nothing.
    void set_check(std::function<QString(int column, const QString& text)> check);

  Q_SIGNALS:
    void edited();

  private:
    void mark();
    QTableWidget* table_;
    std::function<QString(int, const QString&)> check_;
    bool filling_ = false;
};

/// Tabs other than the cans, bound to the sheet.
TextTable* make_pressure_table(FieldSheet& sheet, QWidget* parent);
TextTable* make_finding_table(FieldSheet& sheet, QWidget* parent);
QWidget* make_notes(FieldSheet& sheet, QWidget* parent);

}  // namespace evenfall::desktop
