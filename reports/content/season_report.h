// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/frame.h"

#include "core/budget/season.h"

#include <optional>
#include <string>
#include <vector>

/// The report on a season of one site: use against budget, where the water went, what to fix.
/// Volumes of the account are formulas that start from metered use, need, leak, off-target share
/// and the two multipliers of each area and month.
/// Tests: tests/reports/text_test.cpp, tests/golden
namespace evenfall::reports {

/// @param price  of water, used where the result carries no rates of its own; without either the
///               report says volumes only
Report season_report(const budget::SeasonResult& season, const std::optional<WaterPrice>& price,
                     const Frame& frame);

/// The three losses worth most: leaks by meter; over-scheduling, avoidable unevenness and water
/// off target by area. Most valuable first; losses of zero are no losses.
std::vector<Fix> season_fixes(const budget::SeasonResult& season,
                              const std::optional<WaterPrice>& price, const Shown& shown);

}  // namespace evenfall::reports
