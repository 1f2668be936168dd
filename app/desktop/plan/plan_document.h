// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/overlap.h"
#include "core/plan/plan.h"

#include <QObject>
#include <QString>
#include <QUndoStack>
#include <optional>
#include <vector>

/// A design plan as a document: the plan, its undo steps, and the prediction of the core. A change
/// of one head repaints only what that head reaches.
/// Tests: tests/app/desktop_plan_test.cpp
namespace evenfall::desktop {

class PlanDocument : public QObject {
    Q_OBJECT

  public:
    explicit PlanDocument(QObject* parent = nullptr);

    /// Another plan; its past is forgotten.
    void replace(plan::Plan plan);
    const plan::Plan& plan() const { return plan_; }
    QUndoStack& undo_stack() { return undo_; }

    void set_head(std::size_t index, plan::Head head, const QString& what);
    void add_head(plan::Head head);
    void remove_head(std::size_t index);
    /// The whole plan anew in one step, such as a fitted layout.
    void set_plan(plan::Plan plan, const QString& what);

    void rename(std::string name);

    const std::optional<plan::Overlap>& overlap() const { return overlap_; }
    const QString& problem() const { return problem_; }
    /// Radius of a head as it is computed, in the plan's unit; from the nozzle table where it says so.
    double radius(std::size_t index) const;

  Q_SIGNALS:
    /// Heads were added or taken away, or the plan is another one.
    void rebuilt();
    void head_changed(std::size_t index);
    void renamed();
    /// The prediction is up to date.
    void predicted();

  private:
    friend class SwapHead;
    friend class SwapPlan;
    friend class SwapName;
    void predict();
    void predict_after(std::size_t index);

    plan::Plan plan_;
    plan::OverlapOptions options_;
    plan::Sprinklers sprinklers_;
    std::optional<plan::Overlap> overlap_;
    QString problem_;
    QUndoStack undo_;
};

}  // namespace evenfall::desktop
