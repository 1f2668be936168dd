// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/decision.h"
#include "core/store/book.h"
#include "core/store/filing_store.h"

#include <optional>
#include <string>

/// The review of what the book holds: the filings of an application together, or one filing. Worked
/// out again from the frozen copy; attachments are not in the book, only their names and digests.
/// Tests: tests/app/review_command_test.cpp
namespace evenfall::workflow {

struct ReviewQuestion {
    std::string application;  ///< its number; or
    std::string filing;       ///< code or SHA-256 of a filing
    std::string program;      ///< rebate program by name or file; empty: the application's own, or none.
                              ///< An application is judged by no other than its own
};

struct StoredReview {
    std::string name;         ///< of the application or filing
    review::Review review;
    std::optional<review::RebateProgram> program;
};

/// @throws InputError  nothing of that name in the book, a code that several filings have, an
///   application that cannot be worked out, a program that cannot be read or is another one
StoredReview review_in_book(const store::Book& book, const ReviewQuestion& question);

/// A filing by its SHA-256, or by its code where one filing only has it.
/// @throws InputError when there is none, or several have that code
store::StoredFiling filing_named(const store::Book& book, const std::string& name);

}  // namespace evenfall::workflow
