// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/overlap.h"
#include "core/plan/plan.h"
#include "core/plan/plan_against_audit.h"
#include "reports/content/report.h"

#include <string>

/// A design plan as a drawing to scale on an A3 sheet (ISO 216, 420 x 297 mm), as SVG: outline,
/// heads with their arcs, legend, north arrow, scale bar, head schedule and station table.
///
/// Views: the layout; the predicted rate in the house's steps of depth; islands, ground well below and
/// well above the mean (limits in schemas/reference/plan_limits.csv), told by pattern as well as tone;
/// and the difference between catch and design at each can, with its number printed.
/// The scale is the largest of the usual ones that fits: 1:100, 1:200, 1:250 ... in metres, 1 in = 10 ft,
/// 20 ft ... in feet. Fields are drawn in blocks of cells, 300 at most across.
/// Tests: tests/plan/plan_drawing_test.cpp
namespace evenfall::reports {

enum class PlanView { layout, rate, islands, difference };

struct PlanDrawing {
    PlanView view = PlanView::layout;
    UnitsShown units = UnitsShown::us;
    std::string title;
    const plan::Overlap* overlap = nullptr;            ///< for rate and islands
    const plan::PlanAgainstAudit* audit = nullptr;     ///< for difference
};

/// @throws InputError        an unsound plan
/// @throws std::logic_error  a view without what it shows
std::string draw_plan(const plan::Plan& plan, const PlanDrawing& drawing);

}  // namespace evenfall::reports
