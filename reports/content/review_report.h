// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/decision.h"
#include "reports/content/frame.h"
#include "reports/content/report.h"

/// The memo on a reviewed filing: decision with its reasons, claims beside our figures, rules,
/// payment, savings, questions and what is missing.
/// Tests: tests/reports/review_report_test.cpp
namespace evenfall::reports {

Report review_report(const review::Review& review, const Frame& frame);

}  // namespace evenfall::reports
