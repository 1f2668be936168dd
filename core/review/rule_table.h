// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/filing.h"
#include "core/review/rebate_program.h"
#include "core/review/recompute.h"
#include "core/review/savings.h"
#include "core/sentence.h"

#include <string>
#include <string_view>
#include <vector>

/// A program's rules held against a filing, one by one.
/// Tests: tests/review/verdict_test.cpp
namespace evenfall::review {

enum class RuleOutcome { met, not_met, cannot_tell };
std::string_view text_of(RuleOutcome outcome);

struct JudgedRule {
    RuleKind kind{};
    std::string words;        ///< of the program
    RuleOutcome outcome = RuleOutcome::cannot_tell;
    Sentence why;
    Sentence evidence;        ///< where it stands in the filing
    Sentence missing;         ///< what the applicant can send to settle it; empty when nothing would
};

/// @param is_signed  the filing's signature was there and held
std::vector<JudgedRule> judge_rules(const RebateProgram& program, const Filing& filing, bool is_signed,
                                    const std::vector<CheckedClaim>& claims, const SavingsAnswer& savings);

}  // namespace evenfall::review
