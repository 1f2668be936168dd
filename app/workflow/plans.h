// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "core/store/book.h"

#include <string>

/// Design plans from a book or a file, and keeping them.
/// Tests: tests/plan/plan_command_test.cpp
namespace evenfall::workflow {

struct NamedPlan {
    std::string code;
    plan::Plan plan;
};

/// The plan of that code in the book, else the plan file of that name.
/// @throws InputError when there is neither
NamedPlan plan_named(const store::Book& book, const std::string& code_or_file);

/// Puts a plan into the book, a new revision when its code is there, with a line in the journal.
/// @return the revision
/// @throws InputError, store::BookError as store::add_plan
int keep_plan(store::Book& book, const plan::Plan& plan, const std::string& site, const std::string& code,
              const std::string& who);

}  // namespace evenfall::workflow
