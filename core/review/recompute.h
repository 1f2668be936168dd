// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/filing.h"
#include "core/review/savings.h"
#include "core/review/use_record.h"
#include "core/sentence.h"

#include <optional>
#include <string>
#include <vector>

/// Recompute, don't trust: every claim of a filing beside our own figure from its raw data.
///
/// A claim agrees when our figure rounds to what was typed: |claimed - ours| is at most half a unit
/// of its last digit. Where it does not, the honest habits are tried in turn before it is called
/// different: cut instead of rounded; a share typed in per cent; another quarter rule; means that
/// were rounded before the ratio was taken; a total rounded to whole tens, hundreds or thousands.
///
/// | claim         | subject | unit                        | our figure                              |
/// |---------------|---------|-----------------------------|-----------------------------------------|
/// | du_lq du_lh cu| test    | none or %                   | core/audit/uniformity.h                 |
/// | mean_depth    | test    | mm, in                      | the same                                |
/// | net_rate      | test    | mm_h, in_h                  | the same                                |
/// | cans          | test    | none                        | cans that count                         |
/// | area_size     | area    | any area unit               | its outline; without one cannot tell    |
/// | use_before use_after | none | any volume unit         | sum of the months on that side          |
/// | savings       | none    | any volume unit             | core/review/savings.h                   |
/// | savings_share | none    | none or %                   | the same                                |
/// | cost          | none    | currency                    | sum of the invoices                     |
/// | devices       | kind    | none                        | sum over the list of devices            |
///
/// Tests: tests/review/verdict_test.cpp, tests/review/verdict_test.cpp
namespace evenfall::review {

enum class Agreement {
    agrees,       ///< our figure rounds to the claim
    explained,    ///< an honest habit leads to the claim; `why` names it
    differs,      ///< nothing that was tried leads to it
    cannot_tell   ///< the raw data do not give the figure
};
std::string_view text_of(Agreement agreement);

struct CheckedClaim {
    Claim claim;
    std::optional<double> claimed;     ///< in the claim's unit
    std::optional<double> recomputed;  ///< in the same unit
    Agreement agreement = Agreement::cannot_tell;
    Sentence why;
    Sentence evidence;                 ///< where the raw data stand in the filing
    Sentence method;                   ///< of our figure, with its convention
};

/// @param record   use_record(filing)
/// @param savings  from that record
std::vector<CheckedClaim> check_claims(const Filing& filing, const UseRecord& record,
                                       const SavingsAnswer& savings);

}  // namespace evenfall::review
