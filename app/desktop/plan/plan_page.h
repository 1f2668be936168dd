// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/page.h"
#include "app/desktop/plan/plan_document.h"

class QLabel;
class QLineEdit;
class QComboBox;
class QDoubleSpinBox;
class QTabWidget;

namespace evenfall::desktop {

class AuditPanel;
class FigureGrid;
class PlanScene;
class PlanView;

/// A design plan: the drawing with its predicted application, heads to move and change, and what a
/// catch test says about it.
/// Tests: tests/app/desktop_plan_test.cpp
class PlanPage : public Page {
    Q_OBJECT

  public:
    explicit PlanPage(Session& session, QWidget* parent = nullptr);
    QUndoStack* undo_stack() override { return &document_.undo_stack(); }
    void units_changed() override;
    void theme_changed() override;
    void book_changed() override;
    bool copy() override;
    bool print(QPrinter& printer) override;
    /// Reads a plan file; says so where it cannot be read.
    void open_plan(const QString& path);
    /// A plan of the book.
    void open_plan_of_book(const QString& code);
    /// The tab that holds the plan against a catch test.
    void show_audit();
    PlanDocument& document() { return document_; }
    PlanScene& scene() { return *scene_; }
    AuditPanel& audit() { return *audit_; }

  private:
    void save();
    void show_figures();
    void show_head(int index);
    void edit_head();
    void show_cans();
    void choose_plan_of_book();
    QWidget* build_design();
    QDoubleSpinBox* number(double low, double high, const QString& name);

    PlanDocument document_;
    PlanScene* scene_;
    PlanView* view_;
    QTabWidget* tabs_;
    AuditPanel* audit_;
    QPushButton* of_book_;
    FigureGrid* figures_;
    QLabel* problem_;
    QLabel* head_name_;
    QWidget* head_box_;
    QDoubleSpinBox* x_;
    QDoubleSpinBox* y_;
    QDoubleSpinBox* radius_;
    QDoubleSpinBox* flow_;
    QDoubleSpinBox* arc_;
    QDoubleSpinBox* facing_;
    QLineEdit* station_;
    QString path_;
    bool filling_ = false;
    bool draft_ = true;  ///< the plan is the one of the first look
};

}  // namespace evenfall::desktop
