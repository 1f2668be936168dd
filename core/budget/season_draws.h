// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/season.h"
#include "core/stats/random.h"

#include <cstdint>
#include <string_view>
#include <vector>

/// What one Monte Carlo draw takes for one area: the working part of season_intervals.cpp.
namespace evenfall::budget {

/// Generator of draw `number` for what is named, such as "area A-1".
stats::SplitMix64 named_generator(std::uint64_t seed, std::string_view name, std::uint64_t number);

struct SiteDraw {
    double reference_et = 1.0;
};

struct AreaDraw {
    double et = 1.0;         ///< on ETc: site and coefficient together
    double size = 1.0;
    double meter = 1.0;
    double estimated = 1.0;  ///< on the estimated part of a volume
    double soil = 1.0;
    std::vector<double> multiplier;                 ///< for each choice of uniformity
    std::vector<std::vector<TestedCans>> cans;      ///< the same; empty without a test
};

SiteDraw draw_site(std::uint64_t seed, std::uint64_t number);
/// @param with_cans  also give the drawn cans, for the account by cans
AreaDraw draw_area(const AreaSeason& area, const SiteDraw& site, std::uint64_t seed,
                   std::uint64_t number, bool with_cans);

}  // namespace evenfall::budget
