// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>
#include <functional>
#include <string>
#include <utility>
#include <vector>

class QLabel;
class QTableWidget;

/// A table of short texts to write into, for the tabs beside the cans.
/// Tests: tests/app/desktop_field_notes_test.cpp
namespace evenfall::desktop {

/// What can be chosen in a column: the value kept and the words shown.
using Choices = std::vector<std::pair<QString, QString>>;

/// There is always an empty row at the end to write into; emptying a row removes it. Enter goes to the
/// next cell. What is wrong in a cell is said below the table, the first of it, and in the cell's tip.
class TextTable : public QWidget {
    Q_OBJECT

  public:
    TextTable(const QStringList& heads, const QString& name, QWidget* parent = nullptr);
    /// An open cell is written when its table goes; nobody listens by then.
    ~TextTable() override;
    /// These columns are as wide as what stands in them; the others share the rest.
    void keep_narrow(const std::vector<int>& columns);
    /// The column offers these; any other value that it was given is shown as it is.
    void set_choices(int column, Choices choices);
    void set_rows(const std::vector<QStringList>& rows);
    /// Values of the rows in which anything stands; of a choice its kept value.
    std::vector<QStringList> rows() const;
    QTableWidget* table() const { return table_; }
    /// Says what is wrong in a cell, or nothing. `row` is what stands in its row.
    void set_check(std::function<QString(int column, const QStringList& row)> check);
    QString problem() const;

  Q_SIGNALS:
    void edited();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    QString value_at(int row, int column) const;
    QString shown_for(int column, const QString& value) const;
    void mark();

    QTableWidget* table_;
    QLabel* problem_;
    std::vector<Choices> choices_;
    std::function<QString(int, const QStringList&)> check_;
    bool filling_ = false;
};

}  // namespace evenfall::desktop
