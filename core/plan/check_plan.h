// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/input_error.h"
#include "core/plan/plan.h"

#include <string>
#include <vector>

/// Everything wrong with a plan, each with its place (heads[3].arc) and what was expected. Used for
/// files, for the book and for plans made in a program, so that nothing computes on a bad one.
/// Tests: tests/plan/plan_file_test.cpp
namespace evenfall::plan {

/// A head may stand this far outside the line and still belong to the turf: heads are set beside
/// kerbs, and drawings are rounded.
inline constexpr double head_slack_m = 0.1;

/// At most 100 issues; the last one says when there are more.
std::vector<Issue> faults_of(const Plan& plan, const std::string& file = "");

/// @throws InputError with all of them
void require_sound(const Plan& plan, const std::string& file = "");

}  // namespace evenfall::plan
