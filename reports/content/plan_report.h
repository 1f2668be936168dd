// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/frame.h"

#include "core/plan/overlap.h"
#include "core/plan/plan.h"

#include <string>

/// The report on a design plan: what its heads should do together, as predicted. The map shows the
/// predicted rate as a field with its numbers at sample places.
/// Tests: tests/reports/text_test.cpp, tests/golden
namespace evenfall::reports {

Report plan_report(const plan::Plan& plan, const plan::Overlap& overlap, const Frame& frame);

}  // namespace evenfall::reports
