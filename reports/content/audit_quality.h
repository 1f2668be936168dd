// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/frame.h"

#include "core/audit/test_analysis.h"

#include <string>
#include <vector>

namespace evenfall::reports {

/// Tables on whether a test can be relied on and what its figures are called: rules met or not,
/// dry spots, ratings side by side. Tables without rows are left out. `key` starts their keys.
/// Tests: tests/reports/text_test.cpp, tests/golden
std::vector<Table> quality_tables(const audit::TestAnalysis& analysis, const std::string& key,
                                  const Shown& shown);

}  // namespace evenfall::reports
