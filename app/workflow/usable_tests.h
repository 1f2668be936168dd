// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/audit/quarter_rule.h"
#include "core/budget/season.h"

#include <vector>

/// Catch tests that can be worked out, and why the others cannot: one sheet with a single can must not
/// keep a whole site from its season. Tests: tests/app/thin_record_test.cpp
namespace evenfall::workflow {

struct UsableTests {
    std::vector<audit::CatchTest> tests;               ///< in the order given
    std::vector<budget::SeasonFinding> left_out;
};

UsableTests usable_tests(std::vector<audit::CatchTest> all, audit::QuarterRule rule);

}  // namespace evenfall::workflow
