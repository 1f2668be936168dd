// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <string>

/// Radius and flow of a nozzle at a pressure, from its table.
///
/// Between two rows both are interpolated on a straight line in pressure. Outside the rows, or
/// outside the stated operating range, the nozzle is refused: a table says nothing there.
/// With one row only, flow follows the square-root law of an orifice,
///     q = q0 sqrt(p / p0)
/// the radius stays as in the row, and the result is flagged as an assumption.
/// All numbers are in the plan's own units.
/// Source of the law: orifice equation; any hydraulics text. Tests: tests/plan/profile_test.cpp
namespace evenfall::plan {

struct Throw {
    double radius = 0.0;
    double flow = 0.0;
    Sentence assumed;     ///< when the square-root law was used, else empty
};

/// @throws InputError  pressure not above zero, outside the table or outside the operating range
Throw throw_at(const Nozzle& nozzle, double pressure, const PlanUnits& units);

}  // namespace evenfall::plan
