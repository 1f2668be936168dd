// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <string>

/// What readers of plans fill in. Files and the book keep it as text beside the plan.
/// Tests: tests/plan/plan_file_test.cpp
namespace evenfall::plan {

inline constexpr Phrase full_circles_assumed = phrase("plan", "heads without an arc are taken as full circles");
inline constexpr Phrase cones_assumed = phrase("plan", "heads without a profile are taken as cones");

/// Text that was kept, as the sentence it was when it is one of the above.
Sentence kept_assumption(const std::string& text);

}  // namespace evenfall::plan
