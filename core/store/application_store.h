// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/application.h"
#include "core/store/book.h"

#include <optional>
#include <string>
#include <vector>

/// Rebate applications in the book. Every change is a row of the history and a line of the journal,
/// with who and when. Use the writing functions within a Transaction.
/// Tests: tests/store/filing_store_test.cpp
namespace evenfall::store {

/// Stores an application with its filings and its history so far, at least one status.
/// @param entered  instant for the journal where it is written down later than it happened; empty: the
///                 journal has each change at its own time
/// @throws BookError when the code is taken, a filing is not in the book or the history is empty
void add_application(Book& book, const review::Application& application, const std::string& entered = {});
std::optional<review::Application> find_application(const Book& book, const std::string& code);
/// Of one program, or all when `program` is empty, in alphabetical order of their codes.
std::vector<review::Application> applications(const Book& book, const std::string& program);

/// @throws BookError when the application is not in the book, or that status may not follow
void add_status(Book& book, const std::string& application, const review::StatusChange& change);
/// Adds a filing to an application; one that belongs to it already is left alone.
/// @throws BookError when either is not in the book
void add_application_filing(Book& book, const std::string& application, const review::ApplicationFiling& filing,
                            const std::string& at, const std::string& who);

/// Takes a filing out of an application again; the filing stays in the book.
/// @throws BookError when it does not belong to that application
void remove_application_filing(Book& book, const std::string& application, const std::string& sha256,
                               const std::string& at, const std::string& who);
/// Codes of the applications that a filing belongs to.
std::vector<std::string> applications_with_filing(const Book& book, const std::string& sha256);

}  // namespace evenfall::store
