// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plan/plan_document.h"

#include "app/desktop/shown.h"
#include "core/input_error.h"

#include <thread>
#include <utility>

namespace evenfall::desktop {

class SwapHead : public QUndoCommand {
  public:
    SwapHead(PlanDocument& document, std::size_t index, plan::Head head, const QString& what)
        : QUndoCommand(what), document_(document), index_(index), head_(std::move(head)) {}
    void redo() override {
        std::swap(document_.plan_.heads[index_], head_);
        Q_EMIT document_.head_changed(index_);
        document_.predict_after(index_);
    }
    void undo() override { redo(); }

  private:
    PlanDocument& document_;
    std::size_t index_;
    plan::Head head_;
};

class SwapPlan : public QUndoCommand {
  public:
    SwapPlan(PlanDocument& document, plan::Plan plan, const QString& what)
        : QUndoCommand(what), document_(document), plan_(std::move(plan)) {}
    void redo() override {
        std::swap(document_.plan_, plan_);
        document_.predict();
        Q_EMIT document_.rebuilt();
    }
    void undo() override { redo(); }

  private:
    PlanDocument& document_;
    plan::Plan plan_;
};

class SwapName : public QUndoCommand {
  public:
    SwapName(PlanDocument& document, std::string name)
        : QUndoCommand(PlanDocument::tr("Rename the plan")), document_(document), name_(std::move(name)) {}
    void redo() override {
        std::swap(document_.plan_.name, name_);
        Q_EMIT document_.renamed();
    }
    void undo() override { redo(); }

  private:
    PlanDocument& document_;
    std::string name_;
};

PlanDocument::PlanDocument(QObject* parent) : QObject(parent) {
    options_.window_shares = {0.05};
    options_.threads = std::max(1U, std::thread::hardware_concurrency());
}

void PlanDocument::replace(plan::Plan plan) {
    plan_ = std::move(plan);
    undo_.clear();
    predict();
    Q_EMIT rebuilt();
}

void PlanDocument::set_head(std::size_t index, plan::Head head, const QString& what) {
    if (plan_.heads.at(index) == head) return;
    undo_.push(new SwapHead(*this, index, std::move(head), what));
}

void PlanDocument::add_head(plan::Head head) {
    plan::Plan next = plan_;
    next.heads.push_back(std::move(head));
    set_plan(std::move(next), tr("Add a head"));
}

void PlanDocument::remove_head(std::size_t index) {
    plan::Plan next = plan_;
    next.heads.erase(next.heads.begin() + static_cast<std::ptrdiff_t>(index));
    set_plan(std::move(next), tr("Remove a head"));
}

void PlanDocument::set_plan(plan::Plan plan, const QString& what) {
    undo_.push(new SwapPlan(*this, std::move(plan), what));
}

void PlanDocument::rename(std::string name) {
    if (plan_.name != name) undo_.push(new SwapName(*this, std::move(name)));
}

double PlanDocument::radius(std::size_t index) const {
    if (index < sprinklers_.heads.size()) {
        return sprinklers_.heads[index].radius / plan_.units.length.unit.si();
    }
    return plan_.heads[index].radius.value_or(0.0);
}

void PlanDocument::predict() {
    overlap_.reset();
    problem_.clear();
    sprinklers_ = {};
    try {
        sprinklers_ = plan::sprinklers_of(plan_);
        overlap_ = plan::overlap_of(plan_, options_);
    } catch (const InputError& e) {
        problem_ = q(e.issues().front().text());
    }
    Q_EMIT predicted();
}

void PlanDocument::predict_after(std::size_t index) {
    if (!overlap_) {
        predict();
        return;
    }
    try {
        // Checks the whole plan again: a head may have been dragged off the turf.
        plan::Sprinklers next = plan::sprinklers_of(plan_);
        const bool same_profiles = next.profiles.size() == sprinklers_.profiles.size();
        sprinklers_ = std::move(next);
        if (same_profiles && overlap_->field.replace(index, sprinklers_.heads[index])) {
            overlap_->prediction = plan::summarise(overlap_->field, overlap_->ground, options_);
            problem_.clear();
            Q_EMIT predicted();
            return;
        }
    } catch (const InputError& e) {
        overlap_.reset();
        problem_ = q(e.issues().front().text());
        Q_EMIT predicted();
        return;
    }
    predict();
}

}  // namespace evenfall::desktop
