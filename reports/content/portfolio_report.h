// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/frame.h"

#include "core/budget/portfolio.h"

#include <string>

/// The report on many sites: every site ranked, by water over budget, over budget per area, and
/// the money that avoidable waste costs.
/// Tests: tests/reports/text_test.cpp, tests/golden
namespace evenfall::reports {

/// @param period  "Jan 2025 to Dec 2025"
/// @param program title of the program that all were held against
Report portfolio_report(const budget::Portfolio& portfolio, const std::string& period,
                        const std::string& program, const Frame& frame);

}  // namespace evenfall::reports
