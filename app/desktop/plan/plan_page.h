// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/page.h"
#include "app/desktop/plan/plan_document.h"

class QLabel;
class QLineEdit;
class QComboBox;
class QDoubleSpinBox;

namespace evenfall::desktop {

class FigureGrid;
class PlanScene;
class PlanView;

/// A design plan: the drawing with its predicted application, heads to move and change.
/// Tests: tests/app/desktop_plan_test.cpp
class PlanPage : public Page {
    Q_OBJECT

  public:
    explicit PlanPage(Session& session, QWidget* parent = nullptr);
    QUndoStack* undo_stack() override { return &document_.undo_stack(); }
    void units_changed() override { show_figures(); }
    void theme_changed() override;
    bool copy() override;
    bool print(QPrinter& printer) override;
    /// Reads a plan file; says so where it cannot be read.
    void open_plan(const QString& path);
    PlanDocument& document() { return document_; }
    PlanScene& scene() { return *scene_; }

  private:
    void save();
    void show_figures();
    void show_head(int index);
    void edit_head();
    QDoubleSpinBox* number(double low, double high, const QString& name);

    PlanDocument document_;
    PlanScene* scene_;
    PlanView* view_;
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
};

}  // namespace evenfall::desktop
