// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/frame.h"

#include "core/budget/season.h"

#include <optional>
#include <string>
#include <vector>

/// The report on many sites: every site ranked, by water over budget, over budget per area, and
/// money. Sites are reduced one by one, so a caller never holds the seasons of all of them.
/// Tests: tests/reports/portfolio_report_test.cpp
namespace evenfall::reports {

struct PortfolioSite {
    std::string code;
    std::string name;
    units::Area size;                              ///< of its areas together
    std::size_t areas = 0;
    std::optional<units::Volume> use, need, budget, over_budget;
    std::optional<units::Volume> leak, avoidable;  ///< from the account
    std::optional<double> money;                   ///< that the water over budget costs
    std::size_t months = 0;
    std::size_t months_judged = 0;                 ///< with use and budget
};

/// What the portfolio needs of a season.
PortfolioSite portfolio_site(const budget::SeasonResult& season,
                             const std::optional<WaterPrice>& price);

/// @param period  "Jan 2025 to Dec 2025"
/// @param program title of the program that all were held against
Report portfolio_report(const std::vector<PortfolioSite>& sites, const std::string& period,
                        const std::string& program, const std::optional<WaterPrice>& price,
                        const Frame& frame);

}  // namespace evenfall::reports
