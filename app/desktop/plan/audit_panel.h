// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/plan/audit_view.h"
#include "app/desktop/plan/plan_document.h"
#include "app/desktop/session.h"

#include <QTimer>
#include <QWidget>
#include <optional>

class QComboBox;
class QLabel;
class QTabWidget;

namespace evenfall::desktop {

/// Holds the plan that is open against a catch test: which heads deliver less or more than drawn.
/// Tests: tests/app/desktop_plan_audit_test.cpp
class AuditPanel : public QWidget {
    Q_OBJECT

  public:
    AuditPanel(Session& session, PlanDocument& document, QWidget* parent = nullptr);
    void book_changed();
    void units_changed() { show_answer(); }
    bool copy() const;

    /// A catch test of the book.
    void choose_test(const QString& code);
    /// A table of catches; where it holds several tests, the user is asked for one.
    void open_catches(const QString& path, const QString& test = {});
    const std::optional<plan::PlanAgainstAudit>& answer() const { return answer_; }
    FigureGrid* figures() const { return figures_; }
    FigureTable* heads() const { return heads_; }
    FigureTable* cans() const { return cans_; }
    QString state() const;
    QString evidence() const;

  Q_SIGNALS:
    /// There is another answer, or none any more.
    void answered();
    /// A head was chosen in the list; its place in the plan.
    void head_chosen(int index);

  private:
    void choose_file();
    void test_chosen();
    void compare();
    void show_answer();
    void show_evidence();

    Session& session_;
    PlanDocument& document_;
    QComboBox* test_;
    QLabel* state_;
    FigureGrid* figures_;
    QTabWidget* tabs_;
    FigureTable* heads_;
    FigureTable* cans_;
    QLabel* evidence_;
    std::optional<audit::CatchTest> chosen_;
    std::optional<plan::PlanAgainstAudit> answer_;
    QTimer later_;   ///< after a change of the plan
    bool filling_ = false;
    bool comparing_ = false;
    bool again_ = false;
};

}  // namespace evenfall::desktop
