// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/workflow/write_report.h"
#include "core/review/application.h"
#include "core/review/decision.h"
#include "core/store/book.h"
#include "reports/content/report.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

/// The applications of a book as an officer works through them: each is worked out again from the
/// filings frozen in the book, and what is decided goes into its history and the journal.
/// Tests: tests/app/review_desk_test.cpp
namespace evenfall::workflow {

struct ReviewedCase {
    review::Application application;
    std::optional<review::RebateProgram> program;  ///< the one it applies to, where it is known
    std::optional<review::Filing> filing;          ///< the raw data, for looking at the evidence
    std::optional<review::Review> review;
    Sentence problem;      ///< why it could not be worked out, or not in full; empty otherwise
};

/// Programs that do not come with Evenfall, read from their files by whoever asks.
using KnownPrograms = std::vector<review::RebateProgram>;

/// One application with its review. Its filings are one case (review::together); where they
/// contradict each other the newest stands alone, and `problem` says so.
/// @throws InputError for an application that is not in the book
ReviewedCase review_case(const store::Book& book, const std::string& application, const KnownPrograms& known);

/// A filing that belongs to no application as a case without a number, judged by the program that it
/// names, where that is known. @throws InputError for a filing that is not in the book
ReviewedCase filing_case(const store::Book& book, const std::string& sha256, const KnownPrograms& known);

/// Every application in the order in which to look at them: those that wait for a decision first,
/// most risk points times money asked for at the top; the decided ones after them, newest first.
/// Their raw data are left out.
/// @param progress  called after each with the number done and the number there are; what it throws
///   ends the work
std::vector<ReviewedCase> review_queue(const store::Book& book, const KnownPrograms& known,
                                       const std::function<void(std::size_t, std::size_t)>& progress);

/// Received, incomplete and under review: something is still to be decided.
bool waits_for_decision(review::Status status);

/// take_up     look at it: received or incomplete to under review
/// put_back    incomplete to received: what was missing has come
/// open_again  a decided one to under review
/// pay         an approved one to paid
enum class OfficerSays { approve, decline, send_more, open_again, take_up, put_back, pay };
inline constexpr std::size_t officer_answers = 7;

struct OfficerDecision {
    std::string application;
    OfficerSays says = OfficerSays::send_more;
    std::string reason;            ///< required where needs_reason() says so
    std::optional<double> amount;  ///< money; where needs_amount() says so, and only there
    std::string who;               ///< required
    std::string at;                ///< instant
};

/// The status a decision leads to.
review::Status status_after(OfficerSays says);
/// Approving, declining, asking for more and opening again are answers that somebody will want explained.
bool needs_reason(OfficerSays says);
/// With approve and pay.
bool needs_amount(OfficerSays says);
/// Whether an application of that status can be decided so, perhaps by taking it up again first.
bool can_decide(review::Status now, OfficerSays says);

/// Writes the decision into the history and the journal, with who, when and why. An incomplete
/// application that is approved is taken up again first, which is a line of its own.
/// @return the application as it stands then
/// @throws InputError        no reason, no name, an instant or an amount that cannot be
/// @throws store::BookError  no such application, or one that cannot be decided so; nothing is written
review::Application decide(store::Book& book, const OfficerDecision& decision);

/// One line of the history, as the command line writes it. @throws store::BookError
review::Application record_status(store::Book& book, const std::string& application, const review::StatusChange& change);

/// The letter to the applicant: as decided by the officer, with the reason written down; as the
/// rules come out while nothing is decided. The case must have a review.
std::string case_letter(const ReviewedCase& reviewed);

struct ReviewPapers {
    std::filesystem::path directory;
    std::vector<std::string> formats;     ///< of the memo, as in ReportOrder
    reports::UnitsShown units = reports::UnitsShown::us;
    std::string created;                  ///< instant
    std::string software;
    std::filesystem::path print_program;  ///< as in ReportOrder
};

/// The memo in each format and the letter, named by the filing's code.
/// @throws as write_report
std::vector<std::filesystem::path> write_review_papers(const review::Review& review, const std::string& letter,
                                                       const ReviewPapers& papers);

}  // namespace evenfall::workflow
