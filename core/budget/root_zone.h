// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

#include <cstddef>
#include <span>
#include <vector>

/// Daily water balance of the root zone (FAO-56 chapter 8), for an area as one bucket or for every
/// can of its catch test at once: each can is a bucket that gets the day's irrigation times that
/// can's share of the mean. What drains below the roots at the wet cans and what the dry cans lack is
/// the rigorous answer to how much uneven application costs.
///
/// Terms of one day, all as depth of water; Dr is the depletion below field capacity, TAW the
/// available water:
///     in   = rain + irrigation x share - runoff         runoff = what exceeds the day's intake
///     Ks   = min(1, (TAW - Dr)/((1 - p) TAW))            stress factor (Eq. 84)
///     ETa  = min(Ks ETc, TAW - Dr)                       what the turf gets
///     DP   = what is above field capacity, drained the same day (Eq. 88)
/// Order of the terms, which the papers do not agree on, so it is named (DayOrder):
///     water_first   Dr <- Dr - in; DP and Dr >= 0; then Ks and ETa from that Dr; Dr <- Dr + ETa.
///                   FAO-56 example 38: water falls early in the day.
///     water_last    Ks and ETa from the Dr of the morning; Dr <- Dr + ETa - in; then DP and Dr >= 0.
///                   Eq. 85 and 88 as printed.
/// No capillary rise. Rain comes in net of its runoff: a day's total does not tell its rate.
/// Nothing is created: rain + irrigation = ETa + DP + runoff + gain in storage, for each bucket.
///
/// Tests: tests/budget/root_zone_test.cpp; speed: tests/bench/root_zone_bench.cpp
namespace evenfall::budget {

enum class DayOrder { water_first, water_last };

/// p of Table 22 as it stands, or adjusted each day to the crop ET (see soil.h).
enum class DepletionRule { fixed, adjusted_to_et };

struct RootZone {
    units::Depth available;        ///< TAW, above zero
    double depletion_share;        ///< p, in (0, 1)
    DepletionRule rule;
    units::Depth start_depletion;  ///< Dr before the first day, 0 to TAW
    DayOrder order;
};

/// Days in a row, one element each; the spans are of equal length.
struct RootZoneDays {
    std::span<const units::Depth> crop_et;     ///< ETc = Kc ETo without stress; below zero counts as 0
    std::span<const units::Depth> rain;        ///< net of runoff
    std::span<const units::Depth> irrigation;  ///< mean over the area
    std::span<const units::Depth> intake_limit = {};  ///< most irrigation a bucket takes in that day; empty: no runoff
    std::span<const units::Depth> available = {};     ///< TAW of the day where roots grow; empty: constant
};

/// Sums since the start or the last clear, and the depletion now.
struct BucketTotals {
    units::Depth crop_et;       ///< without stress
    units::Depth actual_et;
    units::Depth irrigation;
    units::Depth rain;
    units::Depth drainage;      ///< below the roots
    units::Depth runoff;
    double stress_days = 0.0;   ///< days with Ks below 1; a mean over cans may be a fraction
    units::Depth depletion;     ///< at the end
    units::Depth start_depletion;
};

class RootZoneBalance {
  public:
    /// One bucket per share; for the area as a whole a single share of 1.
    /// @param shares   irrigation of a can over the mean, finite and not negative
    /// @param weights  area each can stands for; empty: the same for all
    /// @throws InputError for an impossible root zone, share or weight, or no bucket at all
    RootZoneBalance(const RootZone& zone, std::span<const double> shares,
                    std::span<const double> weights = {});

    /// Runs these days on from where the balance stands.
    /// @throws InputError, with nothing changed, for spans of unequal length or a value that is
    ///   negative (rain, irrigation, limit) or not finite
    void advance(const RootZoneDays& days);

    /// Begins new sums, such as those of the next month; the depletions stay.
    void clear_totals();

    std::size_t buckets() const { return share_.size(); }
    BucketTotals can(std::size_t i) const;
    /// Weighted mean over the cans.
    BucketTotals mean() const;

  private:
    void check(const RootZoneDays& days) const;

    RootZone zone_;
    units::Depth crop_et_, irrigation_, rain_;
    // One array per term, so that a day is one pass over contiguous numbers [m].
    std::vector<double> share_, weight_, start_, depletion_, drainage_, runoff_, actual_et_, stress_;
};

/// A can's share of the weighted mean of all cans.
/// @throws InputError when a depth is negative, the mean is zero or the weights do not fit
std::vector<double> shares_of_mean(std::span<const units::Depth> depths,
                                   std::span<const double> weights = {});

/// What uneven application did, against the same water spread evenly: both runs and the difference.
struct UnevennessCost {
    BucketTotals cans;              ///< mean over the cans
    BucketTotals even;              ///< one bucket that gets the mean
    units::Depth extra_loss;        ///< drainage and runoff, cans less even
    units::Depth extra_shortage;    ///< ETc - ETa, cans less even
};
UnevennessCost unevenness_cost(const RootZone& zone, const RootZoneDays& days,
                               std::span<const double> shares,
                               std::span<const double> weights = {});

/// One area of a portfolio.
struct RootZoneCase {
    RootZone zone;
    RootZoneDays days;
    std::vector<double> shares;
    std::vector<double> weights;
};

/// The mean of every case, spread over threads. Each case is computed alone and written to its own
/// place, so the figures do not depend on the number of threads.
/// @param threads  1 or more
/// @throws InputError of the first case (in their order) that is wrong
std::vector<BucketTotals> run_cases(std::span<const RootZoneCase> cases, unsigned threads);

}  // namespace evenfall::budget
