// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/frame.h"

#include "core/audit/test_analysis.h"

#include <string>
#include <vector>

namespace evenfall::reports {

/// What the auditor noted beside the catches: pressures against the nozzles' ranges with the flow
/// they let through, uniformity corrected to the whole system, findings with their remedies. What
/// was not noted has no table; an inspection that found nothing is said in a sentence.
/// `key` starts the keys of the tables. Tests: tests/reports/audit_notes_test.cpp
std::vector<Block> note_blocks(const audit::TestAnalysis& analysis, const std::string& key,
                               const Shown& shown);

}  // namespace evenfall::reports
