// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <filesystem>
#include <string>
#include <string_view>

/// Design plans as JSON files; the form is described in schemas/filing/plan.schema.json.
///
/// Reading is strict: every key must be known (the nearest known one is named), every number finite,
/// no key may stand twice, and the whole plan must be sound (core/plan/check_plan.h). Every issue
/// carries a JSON path such as heads[3].arc, or row and column where the text is not JSON.
/// A file is checked for depth and size while it streams by, before anything is built from it, so a
/// hostile one cannot fill the memory.
/// Tests: tests/plan/plan_file_test.cpp, tests/fuzz/plan_fuzz.cpp
namespace evenfall::exchange {

/// @throws InputError  with all issues found
plan::Plan read_plan(const std::filesystem::path& path);

/// @param file  named in the issues
/// @throws InputError
plan::Plan parse_plan(std::string_view text, const std::string& file);

/// Outlines and units of such a file, for a layout to be fitted to; heads may be missing and are left
/// out. @throws InputError
plan::Plan read_plan_outline(const std::filesystem::path& path);

/// The plan as such a file, numbers in the shortest form that reads back the same.
std::string plan_text(const plan::Plan& plan);

}  // namespace evenfall::exchange
