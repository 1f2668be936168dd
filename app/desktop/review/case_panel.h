// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/figure_table.h"
#include "app/desktop/review/evidence_view.h"
#include "app/desktop/session.h"
#include "app/workflow/applications.h"

#include <QWidget>
#include <optional>
#include <vector>

class QLabel;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;
class QTabWidget;

namespace evenfall::desktop {

class DecisionBox;
class FilingBox;

/// One case: each claim beside the figure worked out again, rules, questions, payment, letter, history,
/// filings, and the decision; for a filing without an application where it belongs.
/// Tests: tests/app/desktop_review_test.cpp, tests/app/desktop_desk_test.cpp
class CasePanel : public QWidget {
    Q_OBJECT

  public:
    explicit CasePanel(Session& session, QWidget* parent = nullptr);
    void show_nothing();
    void show_application(workflow::ReviewedCase c);
    void show_filing(workflow::WaitingFiling waiting);

    const std::optional<workflow::ReviewedCase>& shown() const { return case_; }
    /// The filing that is shown, when it belongs to no application.
    const std::optional<workflow::WaitingFiling>& waiting() const { return waiting_; }
    /// Of the row that is chosen on the tab that is shown.
    Evidence evidence() const;
    /// Chooses a row that has evidence, where none is chosen.
    void choose_telling_row();
    /// The keyboard goes to where the case is decided.
    void decide();
    void write_decision();
    /// Takes the chosen filing out of its application.
    void take_out();
    DecisionBox* decision() const { return decision_; }
    FilingBox* filing_box() const { return filing_box_; }
    QPushButton* evidence_button() const { return evidence_; }
    FigureTable* table(const QString& name) const;  ///< claims, rules, questions, payment, history, filings
    QTabWidget* tabs() const { return tabs_; }
    QString title() const;
    QString summary() const;
    QString letter() const;
    bool copy() const;
    std::vector<TitledRows> paper() const;

  Q_SIGNALS:
    /// Another row or case: the evidence is another one.
    void evidence_changed();
    /// What the book holds of the case has changed.
    void case_changed();

  private:
    void build_tables();
    void fill();
    void fill_tables();
    void set_titles();
    void row_changed();

    Session& session_;
    std::optional<workflow::ReviewedCase> case_;
    std::optional<workflow::WaitingFiling> waiting_;
    std::vector<store::StoredFiling> filings_of_case_;
    QLabel* title_;
    QLabel* summary_;
    QTabWidget* tabs_;
    FigureTable* claims_;
    FigureTable* rules_;
    FigureTable* questions_;
    FigureTable* payment_;
    FigureTable* history_;
    FigureTable* filings_;
    QPlainTextEdit* letter_;
    QLabel* where_;
    QPushButton* take_out_;
    QPushButton* evidence_;
    QStackedWidget* box_;
    DecisionBox* decision_;
    FilingBox* filing_box_;
    bool filling_ = false;
};

}  // namespace evenfall::desktop
