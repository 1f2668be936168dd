// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace evenfall::audit {

/// What the low quarter is when it does not end between two cans. No published rule was found
/// (the Irrigation Association worksheet has a field for a quarter of the cans and no rounding),
/// and the four can differ by more than three points, so there is no default: the caller chooses
/// and every result names the choice. With weights (pivot, irregular positions) "a quarter" is a
/// quarter of the weight; with equal weights that is a quarter of the cans.
/// Frozen: the numbers are stored in filings.
enum class QuarterRule : int {
    whole_cans = 1,  ///< as many of the lowest cans as fit into a quarter; never none
    nearest = 2,     ///< the number of cans whose weight is nearest to a quarter, half up
    round_up = 3,    ///< as few cans as reach a quarter
    part_can = 4     ///< exactly a quarter; the last can counts in part
};

/// "whole-cans", "nearest", "round-up", "part-can".
std::string_view text_of(QuarterRule rule);
/// The rule of that name, or nothing.
std::optional<QuarterRule> quarter_rule_named(std::string_view name);

}  // namespace evenfall::audit
