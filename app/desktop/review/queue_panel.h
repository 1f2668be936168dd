// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/workflow/applications.h"

#include <QWidget>
#include <map>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;

namespace evenfall::desktop {

class FigureTable;

/// A case of the queue: an application by its number, or a filing without one by its SHA-256.
struct CaseName {
    bool is_filing = false;
    std::string name;
    bool operator==(const CaseName&) const = default;
};

/// What lies on the desk, in the order in which to look at it, and the program for what comes in.
/// Tests: tests/app/desktop_review_test.cpp
class QueuePanel : public QWidget {
    Q_OBJECT

  public:
    explicit QueuePanel(QWidget* parent = nullptr);
    void show_queue(const std::vector<workflow::ReviewedCase>& queue, const std::vector<workflow::WaitingFiling>& waiting);
    /// Marks a case without saying that it was chosen; false when it is not there.
    bool mark(const CaseName& name);
    /// The case before (-1) or after (+1) the one marked; nothing at the ends.
    void step(int by);

    /// A program from a file; false, and a word about it, when it cannot be read.
    bool add_program(const QString& file);
    /// Programs read from files.
    const workflow::KnownPrograms& known() const { return known_; }
    /// All that can be chosen, by name, with what they are read from.
    std::map<std::string, std::string> sources() const;
    /// The program for new filings: name or file; empty: the one that each filing names.
    std::string program() const;
    /// Its name; empty as above.
    QString program_name() const;
    void say(const QString& words, bool warn);
    QString said() const;
    FigureTable* table() const { return table_; }

  Q_SIGNALS:
    void case_chosen(const evenfall::desktop::CaseName& name);
    void program_added();

  private:
    void row_chosen(int row);

    QComboBox* program_;
    QLabel* state_;
    FigureTable* table_;
    std::vector<std::optional<CaseName>> rows_;  ///< empty: the heading
    workflow::KnownPrograms known_;
    std::map<std::string, std::string> files_;   ///< name of a program to the file it came from
    bool filling_ = false;
};

}  // namespace evenfall::desktop
