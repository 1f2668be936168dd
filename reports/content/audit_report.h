// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/frame.h"

#include "core/audit/catch_test.h"
#include "core/audit/multiplier.h"
#include "core/audit/sample.h"
#include "core/audit/test_analysis.h"
#include "core/audit/uniformity.h"

#include <optional>
#include <string>
#include <vector>

/// The report on catch tests: one, or all of a site. Each test gets a section with its sheet as
/// read, the catches in order, and every figure as a formula that leads back to them.
/// Tests: tests/reports/text_test.cpp, tests/golden
namespace evenfall::reports {

/// An interval for DU_LQ, and how it was made.
struct DuInterval {
    double low;
    double high;
    std::string method;  ///< "bias-corrected bootstrap, 10,000 resamples, seed 1, 95 %"
};

struct AuditedTest {
    audit::CatchTest test;
    std::string area_name;
    std::optional<audit::Sample> sample;
    std::optional<audit::UniformityResult> result;
    std::optional<audit::Multipliers> multipliers;
    std::optional<DuInterval> interval;
    std::optional<audit::TestAnalysis> analysis;  ///< everything else that is said of the test
    std::string problem;  ///< why there is no result; empty when there is one
};

/// Analyses the test by the usual choices; a test that is refused keeps its sheet and says why.
AuditedTest audited(const audit::CatchTest& test, std::string area_name, audit::QuarterRule rule);

/// @param place  "Test T-1, Harrow Bend" or "All tests, Harrow Bend"
/// @param fixes  from the season of the same place, where there is one: a catch test alone cannot
///               tell what a repair is worth
Report audit_report(const std::vector<AuditedTest>& tests, const std::string& place,
                    const std::vector<Fix>& fixes, const Frame& frame);

}  // namespace evenfall::reports
