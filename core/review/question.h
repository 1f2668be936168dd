// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/filing.h"
#include "core/sentence.h"

#include <string>
#include <vector>

/// Things about a filing that an officer may want to ask about. Each is a question to the sender,
/// not a finding against them: every one has innocent answers.
/// Limits: schemas/reference/review_questions.csv. Tests: tests/review/verdict_test.cpp
namespace evenfall::review {

struct Question {
    std::string key;       ///< stable, such as copied_cans
    Sentence sentence;     ///< ends with a question mark
    Sentence evidence;     ///< where to look in the filing
    bool operator==(const Question&) const = default;
};

/// copied_cans     the same readings in two tests, in the same order or in another
/// one_factor      before and after readings that differ by one factor
/// even_digits     last digits spread more evenly than chance would
/// rain, wind      a test on a day that the weather record shows as wet or windy
/// outline         a size that disagrees with the drawn outline
/// run_hours       a metered volume that the measured rate could not deliver in the hours of a night
/// meter_in_test   a metered volume during a test that disagrees with rate x time x area
/// order_of_dates  a test "before" that was made after the change, or the other way round; a test
///                 or an invoice dated after the filing was written
std::vector<Question> questions(const Filing& filing);

/// What ties a filing to others: the same photo, invoice or run of readings should occur in one
/// application only.
struct Fingerprint {
    std::string kind;   ///< photo, invoice, attachment, catches
    std::string key;    ///< equal for equal things
    Sentence words;     ///< for a person: "invoice 118 of Bright Basin Supply"
    Sentence evidence;
};
std::vector<Fingerprint> fingerprints(const Filing& filing);

/// The question that two filings with one fingerprint raise.
Question shared_with(const Fingerprint& fingerprint, const std::string& other_filing);

}  // namespace evenfall::review
