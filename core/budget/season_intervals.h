// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/account_intervals.h"
#include "core/budget/season.h"

/// How well the account of a season is known, by Monte Carlo.
///
/// Each draw takes, once for the whole season, so that months do not average out what is wrong in
/// all of them:
///     ET           ETo x N(1, s) for the site, coefficient x N(1, s) for each area
///     meter        volume x (1 + even draw in +-h) for each metered place, and the estimated part
///                  of a month's volume x N(1, s)
///     area         size x N(1, s)
///     uniformity   the cans of each test drawn anew with replacement; without a test, DU_LQ even
///                  over the planning range of the head type
///     soil         available water x N(1, s), for the account by cans
/// and makes the account again. The ends are quantiles of the draws, so a line that a limit holds
/// at zero has a low end of zero. Effective rain, shares of a meter, off-target share and program
/// are taken as they are.
///
/// Draws are numbered and each has a generator of its own, keyed by the codes of place and area:
/// the figures depend on the seed alone, not on threads or on the order of areas.
/// Sizes of s and h: schemas/reference/season_uncertainty.csv.
/// Tests: tests/budget/season_intervals_test.cpp
namespace evenfall::budget {

/// @param season  made by season() from these inputs
/// @throws InputError for fewer than 100 draws or a confidence outside (0, 1)
SeasonIntervals season_intervals(const SeasonInputs& inputs, const SeasonResult& season,
                                 const IntervalChoice& choice);

}  // namespace evenfall::budget
