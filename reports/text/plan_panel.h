// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/text/plan_drawing.h"
#include "reports/text/svg_page.h"

#include <string>

/// Legend, head schedule and station table beside a plan drawing, and what the two have in common.
/// For plan_drawing.cpp. Tests: tests/plan/plan_drawing_test.cpp
namespace evenfall::reports {

struct PanelPlace {
    double x = 0.0;       ///< millimetres
    double y = 0.0;       ///< of the first line of text
    double width = 0.0;
    double bottom = 0.0;  ///< no row begins below it
};

void draw_panel(SvgPage& page, const plan::Plan& plan, const PlanDrawing& drawing, const PanelPlace& place);

/// A ring with the arc blacked in: what is watered is told without colour.
void draw_head_symbol(SvgPage& page, double x, double y, double arc, double facing);

/// Steps of the rate scale.
inline constexpr int rate_steps = 8;
/// Of islands and differences: dry 0, even 1, wet 2; else the step of the rate scale.
std::string fill_of(PlanView view, int kind);

std::string rate_text(units::Rate rate, UnitsShown units);

}  // namespace evenfall::reports
