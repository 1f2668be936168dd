// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/filing.h"

#include <string>
#include <string_view>

/// A filing as the text of data/filing.json and back. Members are described in
/// schemas/filing/filing.md and, for programs, in schemas/filing/filing.schema.json.
/// Tests: tests/exchange/filing_hostile_test.cpp
namespace evenfall::exchange {

/// Version of the form; a reader refuses what is newer.
inline constexpr int filing_form = 1;

/// In canonical form (filing_canonical.h).
/// @throws InputError for a number that is not finite or text that is not UTF-8
std::string write_filing_json(const review::Filing& filing);

/// @param file  for messages
/// @throws InputError with every problem found, each with its JSON path: text that is no JSON, too
///   deep, of a newer form, not in canonical form (with the first byte that differs), members that
///   are unknown, missing, of the wrong kind or out of range, codes that point at nothing
review::Filing read_filing_json(std::string_view text, const std::string& file);

/// What a book does not hold and a filing needs, typed by the sender: who they are and what they
/// ask for. A JSON object with any of `applicant`, `auditor`, `request`, `claims` as in a filing,
/// and `sector` and `meter_type` for areas and meters.
struct FilingWords {
    review::Person applicant;
    review::Auditor auditor;
    review::Request request;
    std::vector<review::Claim> claims;
    std::string sector;
    std::string meter_type;
};

/// @throws InputError with every problem found, each with its JSON path
FilingWords read_filing_words(std::string_view text, const std::string& file);

}  // namespace evenfall::exchange
