// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/workflow/review_desk.h"
#include "core/calendar/date.h"
#include "core/store/filing_store.h"

#include <functional>
#include <string>
#include <vector>

/// What an officer does by hand: opening an application that came on paper or in a filing without a
/// number, and putting filings where they belong. Each is a line of the journal with who and when.
/// Tests: tests/app/applications_test.cpp
namespace evenfall::workflow {

struct OpenedByHand {
    std::string number;
    std::string applicant;             ///< empty: as the first of its filings says
    std::string site;                  ///< code; empty: as the first of its filings says
    review::RebateProgram program;
    calendar::Date received;           ///< not after `at`
    std::string note;                  ///< may be empty
    std::vector<std::string> filings;  ///< code or SHA-256 of filings in the book; may be empty
    std::string who;
    std::string at;                    ///< instant at which it is written down
};

/// Opens an application. It stands received, from the day given; with filings it is reviewed at once
/// and stands incomplete or under review then, as if they had carried its number.
/// @throws InputError  no number, applicant, site or name of whoever opens it; a number that is
///   taken; a day that is to come; a filing as attach_filings. Nothing is written then
/// @throws store::BookError
review::Application open_application(store::Book& book, const OpenedByHand& opened);

struct FilingMove {
    std::string application;
    std::vector<std::string> filings;  ///< code or SHA-256; all are moved or none
    std::string who;                   ///< required
    std::string at;                    ///< instant
};

/// Puts filings into an application. Where the application stands stays as it is.
/// @throws InputError  not in the book; a filing of another site, or that belongs to an application
///   already. Nothing is written then
review::Application attach_filings(store::Book& book, const FilingMove& move);

/// Takes filings out again, as long as the application waits for a decision.
/// @throws InputError  not in the book; a filing of another application; one that is decided
review::Application take_out_filings(store::Book& book, const FilingMove& move);

/// A received filing that belongs to no application, worked out as if it were one without a number:
/// judged by the program that it names, where that is known.
struct WaitingFiling {
    store::StoredFiling filing;
    ReviewedCase reviewed;
};

/// @throws InputError for a filing that is not in the book
WaitingFiling waiting_filing(const store::Book& book, const std::string& sha256, const KnownPrograms& known);

/// All of them in the order they came in, their raw data left out.
/// @param progress  as in review_queue
std::vector<WaitingFiling> waiting_filings(const store::Book& book, const KnownPrograms& known,
                                           const std::function<void(std::size_t, std::size_t)>& progress);

}  // namespace evenfall::workflow
