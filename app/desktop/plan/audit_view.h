// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/figure.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/shown.h"
#include "app/workflow/plans.h"

#include <QPointF>
#include <vector>

/// What is shown of a plan held against a catch test. Values are the core's; a difference is told
/// by a sign, a shape and a number, and by colour only besides.
/// Tests: tests/app/desktop_plan_audit_test.cpp
namespace evenfall::desktop {

/// Heads that deliver less or more first, then those that cannot be told, then the rest.
std::vector<std::size_t> heads_in_order(const plan::PlanAgainstAudit& audit);
FigureRows heads_table(const plan::PlanAgainstAudit& audit);
FigureRows cans_table(const plan::PlanAgainstAudit& audit, UnitsShown units);
std::vector<Figure> audit_figures(const plan::PlanAgainstAudit& audit, UnitsShown units);

/// A can on the drawing.
struct CanMark {
    QPointF place;  ///< plan unit, north up
    workflow::Fell fell;
    QString text;   ///< difference with its sign, in the unit shown
    QString tip;
};
std::vector<CanMark> can_marks(const plan::PlanAgainstAudit& audit, UnitsShown units);

/// "▼ less than most", "▲ more than most", "= as designed", "? cannot tell".
QString verdict_text(plan::Verdict verdict);

}  // namespace evenfall::desktop
