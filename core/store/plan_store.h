// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "core/store/book.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Design plans in the book, numbers as typed. Tests: tests/store/plan_store_test.cpp
namespace evenfall::store {

struct StoredPlan {
    std::string code;
    std::string site;
    int revision = 0;
    plan::Plan plan;
};

/// Codes of the plans of one site, or of all sites when `site` is empty, in alphabetical order.
std::vector<std::string> plan_codes(const Book& book, const std::string& site);

/// The latest revision.
std::optional<StoredPlan> find_plan(const Book& book, const std::string& code);

/// Adds a plan, or a new revision of one whose code is there. Call inside a Transaction.
/// @return the revision, from 0
/// @throws BookError   no such site, or the code belongs to a plan of another site
/// @throws InputError  the plan is not sound
int add_plan(Book& book, const std::string& code, const std::string& site, const plan::Plan& plan,
             std::optional<std::int64_t> import);

}  // namespace evenfall::store
