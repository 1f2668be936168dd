// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/portfolio.h"
#include "core/store/book.h"

#include <functional>
#include <string>
#include <vector>

/// Every site of a book over the same months. Tests: tests/app/portfolio_test.cpp
namespace evenfall::workflow {

struct PortfolioQuestion {
    calendar::Month from{};
    calendar::Month to{};
    std::string program;  ///< as in SeasonQuestion
    std::string rain;
    audit::QuarterRule quarter_rule;
    budget::RankBy order;
};

/// A site that is in the book but could not be computed, and why.
struct SiteProblem {
    std::string site;
    std::string reason;
};

struct PortfolioAnswer {
    budget::Portfolio portfolio;
    std::vector<SiteProblem> problems;
};

/// Site by site, so that one with a mistake in its records is reported and the others are answered.
/// Every processor takes its part of the sites, with a reading connection of its own to the book's
/// file; the answer does not depend on how many there are.
/// @param progress  called after each site with the number done and the number there are, from any
///   of the threads, never from two at once
/// @throws InputError for a range, program or rain rule that cannot be used by any site
PortfolioAnswer answer_portfolio(const store::Book& book, const PortfolioQuestion& question,
                                 const std::function<void(std::size_t, std::size_t)>& progress);

}  // namespace evenfall::workflow
