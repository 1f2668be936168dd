// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/plan/plan.h"
#include "core/plan/plan_against_audit.h"
#include "core/store/book.h"

#include <string>

/// Design plans from a book or a file, and keeping them.
/// Tests: tests/plan/plan_command_test.cpp, tests/app/desktop_plan_audit_test.cpp
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

/// A catch test from a table of catches.
/// @param test  its code; empty: the only one in the file
/// @throws InputError as exchange::read_catches, and when the file has no such test or several
audit::CatchTest catch_test_in(const std::string& file, const std::string& test);

/// What a can caught less what the design gives there when every head delivers the common output.
units::Depth difference_at(const plan::PlanAgainstAudit& audit, const plan::CanComparison& can);

/// drier, wetter  the difference is beyond the limits for islands (schemas/reference/plan_limits.csv),
///                as a share of the mean catch
enum class Fell { drier, as_designed, wetter };
Fell fell_at(const plan::PlanAgainstAudit& audit, const plan::CanComparison& can);

}  // namespace evenfall::workflow
