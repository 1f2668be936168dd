// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/sentence.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A rebate application as the officer keeps it. Its figures stand in its filings; here is who
/// asked for what, and what became of it.
/// Tests: tests/review/application_test.cpp
namespace evenfall::review {

/// Stored: frozen.
enum class Status : int { received = 1, incomplete = 2, under_review = 3, approved = 4, declined = 5, paid = 6 };
Phrase text_of(Status status);
std::optional<Status> status_named(std::string_view text);

/// Whether an application may go from one status to another:
///   received      -> incomplete, under review, approved, declined
///   incomplete    -> received, under review, declined
///   under review  -> incomplete, approved, declined
///   approved      -> paid, under review (opened again)
///   declined      -> under review (an appeal)
///   paid          -> nothing
bool may_follow(Status from, Status to);

struct StatusChange {
    calendar::Instant at;
    std::string who;
    Status status = Status::received;
    std::string note;
    std::optional<double> amount;   ///< money, with approved and paid
};

struct ApplicationFiling {
    std::string sha256;             ///< name of the filing
    std::string role;               ///< before, after or both
};

struct Application {
    std::string code;
    std::string applicant;
    std::string site;
    std::string program;
    std::string currency;
    std::vector<ApplicationFiling> filings;
    std::vector<StatusChange> history;  ///< oldest first; the last one is where it stands

    /// Received when there is no history yet.
    Status status() const;
};

/// What the program has left: its budget less what stands approved or was paid. An application
/// counts once, with the amount of its last status, and only while that is approved or paid.
double budget_left(double budget, const std::vector<Application>& of_the_program);

}  // namespace evenfall::review
