// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/workflow/portfolio.h"
#include "app/workflow/season.h"
#include "core/plan/plan.h"
#include "reports/content/frame.h"
#include "reports/content/report.h"

#include <functional>
#include <string>
#include <vector>

/// Reports from a book: what to load and which builder to call.
/// Tests: tests/app/demo_test.cpp, tests/plan/plan_command_test.cpp
namespace evenfall::workflow {

/// The season report of a site; what the meters' own records say stands among the findings.
reports::Report season_report_of(const store::Book& book, const SeasonQuestion& question,
                                 const reports::Frame& frame);

/// The audit report of one catch test.
/// @throws InputError for a test that is not in the book
reports::Report audit_report_of_test(const store::Book& book, const std::string& test,
                                     audit::QuarterRule rule, const reports::Frame& frame);

/// The audit report of all catch tests of a site.
/// @throws InputError for a site that is not in the book
reports::Report audit_report_of_site(const store::Book& book, const std::string& site,
                                     audit::QuarterRule rule, const reports::Frame& frame);

/// The portfolio report of all sites; a site that could not be computed stands among the gaps.
reports::Report portfolio_report_of(const store::Book& book, const PortfolioQuestion& question,
                                    const reports::Frame& frame,
                                    const std::function<void(std::size_t, std::size_t)>& progress);

/// The report on a design plan.
/// @throws InputError for a plan that is not sound
reports::Report plan_report_of(const plan::Plan& plan, const reports::Frame& frame);

}  // namespace evenfall::workflow
