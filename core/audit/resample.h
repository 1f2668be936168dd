// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/quarter_rule.h"
#include "core/audit/sample.h"
#include "core/sentence.h"
#include "core/stats/bca.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// How far a figure from a few dozen cans can be trusted: the cans are drawn again, with
/// replacement, and the figures worked out from each draw.
///
/// Cans are sorted once; a draw is how often each was taken, so a resample needs no sorting: the
/// low quarter is walked up from the driest can. Resample b has a generator seeded by (seed, b):
/// the answer is the same for any number of threads, on any machine and for any order of the sheet.
///
/// What the intervals mean: cans placed at random over the same ground on the same day. They say
/// nothing of wind on other days or of other zones. Cans in neat rows mostly represent the ground
/// better than random ones, so there the intervals are wide rather than narrow; but rows in step
/// with the heads catch at the same few places over and over, and no interval can tell (in the
/// table: field "cones", placement "grid"). tests/published/coverage.csv shows how often they hold.
///
/// Tests: tests/audit/resample_test.cpp, tests/published/bootstrap_test.cpp
namespace evenfall::audit {

struct Resampling {
    std::size_t resamples;
    std::uint64_t seed;
    double level;      ///< two-sided confidence, such as 0.90
    unsigned threads;  ///< 0: as many as the machine has
};

/// 10,000 resamples, a fixed seed, 90 %, all threads.
Resampling usual_resampling();

/// The figures of every resample.
struct ResampledFigures {
    stats::Replicates mean;        ///< metres of water
    stats::Replicates du_lq;
    stats::Replicates du_lh;
    stats::Replicates cu;
    stats::Replicates driest_can;  ///< mean / driest catch, the scheduling coefficient of that name
    Sentence scheme;               ///< "cans drawn one by one" or "blocks of ..."
    std::size_t resamples = 0;
    std::uint64_t seed = 0;
};

/// Each can drawn for itself.
/// @throws InputError for a level outside (0, 1), fewer than 100 resamples or fewer than 4 cans
ResampledFigures resample_cans(const Sample& sample, QuarterRule rule, const Resampling& how);

/// Neighbouring cans drawn together, because neighbours resemble each other: square windows around
/// randomly drawn cans, wrapped at the edges of the tested ground, until as many cans as before are
/// in the draw. On a line (pivot, lateral, traveller) the windows are stretches.
/// @param side  of a window; nothing: n^(1/4) cans on a plane and n^(1/3) on a line, at least two
/// @return nothing when positions are missing or fewer than three windows fit side by side
std::optional<ResampledFigures> resample_blocks(const Sample& sample, QuarterRule rule,
                                                const Resampling& how,
                                                std::optional<units::Length> side);

/// Plain BCa intervals from few cans are too short: at 90 %, 24 cans hold the true DU_LQ in 83 to
/// 87 of 100 simulated tests. Multiplying the normal quantiles of the tails by 1 + c / (number of
/// cans) mends that; c per figure is fitted to simulations and kept in
/// schemas/reference/interval_widening.csv, the check on fresh simulations is in
/// tests/published/coverage.csv.
/// @param figure  "du_lq", "du_lh", "cu" or "mean"
double widening_for(std::string_view figure, std::size_t cans);

/// How many more cans would halve the interval of DU_LQ, found by drawing larger tests from the
/// cans at hand. Nothing when the interval has no width or for a traveller's strips.
std::optional<std::size_t> more_cans_to_halve(const Sample& sample, QuarterRule rule,
                                              const Resampling& how);

}  // namespace evenfall::audit
