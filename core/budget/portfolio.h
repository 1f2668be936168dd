// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/season.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// Many sites over the same months, ranked by what is worth looking at first.
/// Tests: tests/budget/portfolio_test.cpp; speed: tests/bench/portfolio_bench.cpp
namespace evenfall::budget {

enum class RankBy {
    over_budget,  ///< volume over budget
    per_area,     ///< the same over the area that has an account
    money         ///< what the avoidable waste costs, water and energy
};

struct PortfolioSite {
    std::string site;          ///< code
    std::string name;
    units::Area size;          ///< of all its areas
    units::Area size_counted;  ///< of those with an account
    SeasonFigures total;
    std::optional<units::Depth> over_budget_depth;  ///< over budget / size counted
    std::optional<double> avoidable_money;          ///< absent without rates
    std::string currency;
    int rank = 0;              ///< 1 is the worst; 0: the figure to rank by is not known
};

struct Portfolio {
    RankBy order = RankBy::over_budget;
    std::vector<PortfolioSite> sites;  ///< in order of rank, those without one at the end by code
    std::vector<SeasonMonth> months;   ///< sums over the sites
    SeasonFigures total;               ///< depths are left empty: sites have climates of their own
};

/// Seasons of the sites, each computed alone and put in its own place, so that the figures do not
/// depend on the number of threads.
/// @param threads  1 or more
/// @throws InputError of the first site, in their order, that cannot be computed
std::vector<SeasonResult> seasons(std::span<const SeasonInputs> sites, unsigned threads);

/// Sites with equal figures keep the order of their codes. Money in different currencies is not
/// comparable: then no site has a rank by money.
/// @throws InputError when the seasons do not cover the same months
Portfolio portfolio(std::span<const SeasonResult> seasons, RankBy order);

}  // namespace evenfall::budget
