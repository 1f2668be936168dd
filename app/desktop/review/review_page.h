// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/page.h"
#include "app/workflow/review_desk.h"

#include <QTimer>
#include <map>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QPlainTextEdit;
class QTabWidget;

namespace evenfall::desktop {

class DecisionBox;
class FigureTable;

/// The officer's desk: the applications of the book, each claim beside the figure worked out again,
/// rules, questions with their evidence, payment, letter, history, and the decision.
/// Tests: tests/app/desktop_review_test.cpp
class ReviewPage : public Page {
    Q_OBJECT

  public:
    explicit ReviewPage(Session& session, QWidget* parent = nullptr);
    void book_changed() override;
    void theme_changed() override { show_queue(); }
    bool copy() override;
    bool print(QPrinter& printer) override;

    /// Brings filings in, judged by the program chosen.
    void add_filings(const QStringList& files);
    /// A program from a file; false, and a word about it, when it cannot be read.
    bool add_program(const QString& file);
    void show_application(const QString& code);
    /// Memo and letter of the case shown.
    void write_papers(const QString& folder, const std::vector<std::string>& formats);
    /// Which program draws PDF; empty: the one beside this program.
    void set_print_program(const std::filesystem::path& program) { print_program_ = program; }

    const std::vector<workflow::ReviewedCase>& queue() const { return queue_; }
    const std::optional<workflow::ReviewedCase>& shown_case() const { return case_; }
    DecisionBox* decision() const { return decision_; }
    FigureTable* table(const QString& name) const;  ///< queue, claims, rules, questions, payment, history
    QString state() const;
    QString letter() const;
    /// The raw data behind the chosen row; nothing when there are none.
    void show_evidence();

  Q_SIGNALS:
    /// The queue has been worked out and put in order.
    void queue_ready();
    void filings_added();
    void papers_written();

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    void build_queue(QVBoxLayout* column);
    void build_case(QVBoxLayout* column);
    void reload();
    void work_out();
    void show_queue();
    void queue_row_chosen(int row);
    void show_case();
    QString evidence() const;
    void evidence_changed();
    void say_outcome(const QString& words, bool warn);

    QComboBox* program_;
    QPushButton* add_;
    QPushButton* papers_;
    QLabel* state_;
    FigureTable* queue_table_;
    QLabel* title_;
    QLabel* summary_;
    QTabWidget* tabs_;
    FigureTable* claims_;
    FigureTable* rules_;
    FigureTable* questions_;
    FigureTable* payment_;
    FigureTable* history_;
    QPlainTextEdit* letter_;
    QLabel* where_;
    QPushButton* evidence_;
    DecisionBox* decision_;
    QTimer retry_;
    workflow::KnownPrograms known_;
    std::map<std::string, std::string> known_files_;  ///< name of a program to the file it came from
    std::vector<workflow::ReviewedCase> queue_;
    std::optional<workflow::ReviewedCase> case_;
    std::filesystem::path print_program_;
    bool filling_ = false;
    bool worked_out_ = true;
};

}  // namespace evenfall::desktop
