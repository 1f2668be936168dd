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
class KeepDialog;
class FigureGrid;
class PlanScene;
class PlanView;

/// Where the plan that is open was taken from or last kept.
struct PlanHome {
    QString book;       ///< path of the book; empty: in none
    std::string code;
    std::string site;
    int revision = 0;
    QString file;       ///< plan file; empty: none
};

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
    bool can_print() const override { return true; }
    bool print(QPrinter& printer) override;
    bool may_close() override;
    /// Reads a plan file; says so where it cannot be read. Asks before changes are given up.
    void open_plan(const QString& path);
    /// The latest revision of a plan of the book. Asks before changes are given up.
    void open_plan_of_book(const QString& code);
    /// Keeps the plan in the book as the next revision of its code; asks for code and site where it has none
    /// there yet, with a dialog that belongs to the page. Null when nothing was asked.
    KeepDialog* keep();
    /// Asks for code, site and name even if it has them. Null when the book cannot be written.
    KeepDialog* keep_as();
    /// Writes it as a plan file; says so where that fails.
    bool save_to(const QString& path);
    const PlanHome& home() const { return home_; }
    /// What stands over the drawing: the plan, where it is kept, and whether it was changed since.
    QString title() const;
    QString state() const;
    /// The tab that holds the plan against a catch test.
    void show_audit();
    PlanDocument& document() { return document_; }
    PlanScene& scene() { return *scene_; }
    AuditPanel& audit() { return *audit_; }

  private:
    void build_actions();
    void save();
    bool write(const std::string& code, const std::string& site, const std::string& name, const std::string& who, QString* trouble);
    void adopt(plan::Plan plan, PlanHome home);
    bool in_book() const;
    void show_home();
    void show_figures();
    void show_head(int index);
    void edit_head();
    void show_cans();
    void choose_plan_of_book();
    void add_head();
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
    QPushButton* keep_;
    QLabel* title_;
    QLabel* state_;
    PlanHome home_;
    QString open_book_;  ///< path of the book that is open; empty: none
    bool filling_ = false;
    bool draft_ = true;  ///< the plan is the one of the first look
};

}  // namespace evenfall::desktop
