// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/field_notes.h"
#include "core/input_error.h"
#include "core/reference/table.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// What is seen on a walk over the ground, from the list in schemas/reference/findings.csv.
/// Tests: tests/audit/field_checks_test.cpp
namespace evenfall::audit {

/// An entry of the list.
struct FindingKind {
    std::string key;
    std::string name;
    std::string look_for;
    std::string remedy;
    std::string caution;  ///< empty where none is called for
};

std::vector<FindingKind> finding_kinds();
std::optional<FindingKind> finding_kind(std::string_view key);

std::string_view text_of(Severity severity);
std::optional<Severity> severity_named(std::string_view name);

/// Unknown kinds (with the nearest known one), counts below one.
std::vector<Issue> check(std::span<const Finding> findings, const std::string& file);

/// One line of what to do, worst first: findings of a kind together.
struct FindingSummary {
    FindingKind kind;
    int count = 0;
    int corrected = 0;
    Severity worst = Severity::minor;
    std::vector<std::string> places;
};

/// @throws InputError with every issue of check()
std::vector<FindingSummary> summarise(std::span<const Finding> findings, const std::string& file);

}  // namespace evenfall::audit
