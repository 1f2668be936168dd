// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import.h"

#include <QWidget>
#include <vector>

class QPushButton;
class QTableWidget;

namespace evenfall::desktop {

/// What came of an import or of a try: counts of each file, refused cells and other values with
/// their place and reason, and the refused rows as a file. Tests: tests/app/desktop_import_test.cpp
class ImportOutcome : public QWidget {
    Q_OBJECT

  public:
    explicit ImportOutcome(QWidget* parent = nullptr);

    /// @param error    why nothing was done at all; empty when something was
    /// @param rejects  the file with the refused rows; need not exist
    void show_results(const std::vector<exchange::ImportResult>& results, const QString& error, bool dry,
                      const QString& rejects);
    /// After a change of colours.
    void restyle();
    /// "reading of M-1 at …: the book has 5, the file 7", and which of them stands.
    static QString difference_words(const exchange::Conflict& conflict);
    /// Writes the refused rows of the last run; false when there are none. @throws std::runtime_error
    bool write_refused(const QString& path) const;
    QTableWidget* table() const { return table_; }
    QPushButton* refused_button() const { return refused_; }

  Q_SIGNALS:
    /// A line of the list was chosen that speaks of a place in a file.
    void place_chosen(const QString& file, std::size_t row, const QString& column);

  private:
    void add(const QString& file, std::size_t row, const QString& column, const QString& words, bool bad);
    void add_result(const exchange::ImportResult& result, bool dry);

    QTableWidget* table_;
    QPushButton* refused_;
    QString rejects_;
};

}  // namespace evenfall::desktop
