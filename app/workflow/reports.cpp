// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/reports.h"

#include "core/input_error.h"
#include "core/plan/overlap.h"
#include "core/store/catch_test_store.h"
#include "core/store/site_store.h"
#include "reports/content/audit_report.h"
#include "reports/content/plan_report.h"
#include "reports/content/portfolio_report.h"
#include "reports/content/raw_tables.h"
#include "reports/content/season_report.h"
#include "reports/text/plan_drawing.h"

#include <algorithm>
#include <memory>
#include <thread>
#include <utility>

namespace evenfall::workflow {
namespace {

reports::Frame framed_for(const reports::Frame& frame, const site::Site& site) {
    reports::Frame own = frame;
    if (own.organisation.empty()) own.organisation = site.organisation;
    return own;
}

std::string name_of_area(const store::Book& book, const std::string& code) {
    const auto area = store::find_area(book, code);
    return area && !area->name.empty() ? area->name : code;
}

}  // namespace

reports::Report season_report_of(const store::Book& book, const SeasonQuestion& question,
                                 const reports::Frame& frame) {
    SeasonAnswer answer = answer_season(book, question);
    for (const auto& f : answer.meter_findings) {
        answer.result.findings.push_back(
            {"meter " + f.meter, f.sentence.english() +
                                     " How sure: " + std::string(meter::text_of(f.confidence).english()) +
                                     ". Limit: " + f.limit.english() + " (" + f.source.english() + ")."});
    }
    auto report =
        reports::season_report(answer.result, std::nullopt, framed_for(frame, answer.inputs.site));
    const auto inputs = std::make_shared<const budget::SeasonInputs>(std::move(answer.inputs));
    report.raw_tables = {reports::readings_table(inputs), reports::weather_table(inputs)};
    return report;
}

reports::Report audit_report_of_test(const store::Book& book, const std::string& code,
                                     audit::QuarterRule rule, const reports::Frame& frame) {
    const auto test = store::find_catch_test(book, code);
    if (!test) throw InputError(code, phrase("workflow", "a catch test in the book"));
    const auto area = store::find_area(book, test->area);
    const auto site = area ? store::find_site(book, area->site) : std::nullopt;
    const auto tested = reports::audited(*test, name_of_area(book, test->area), rule);
    return reports::audit_report({tested}, "Test " + code + (site ? ", " + site->name : ""), {},
                                 site ? framed_for(frame, *site) : frame);
}

reports::Report audit_report_of_site(const store::Book& book, const std::string& code,
                                     audit::QuarterRule rule, const reports::Frame& frame) {
    const auto site = store::find_site(book, code);
    if (!site) throw InputError(code, phrase("workflow", "a site in the book"));
    std::vector<reports::AuditedTest> tests;
    for (const auto& test : store::catch_tests_of_site(book, code)) {
        tests.push_back(reports::audited(test, name_of_area(book, test.area), rule));
    }
    return reports::audit_report(tests, "All tests, " + site->name, {}, framed_for(frame, *site));
}

reports::Report portfolio_report_of(const store::Book& book, const PortfolioQuestion& question,
                                    const reports::Frame& frame,
                                    const std::function<void(std::size_t, std::size_t)>& progress) {
    const PortfolioAnswer answer = answer_portfolio(book, question, progress);
    const std::string period = calendar::format_month_name(question.from) + " to " +
                               calendar::format_month_name(question.to);
    auto report = reports::portfolio_report(answer.portfolio, period,
                                            program_named(question.program).title, frame);
    for (const SiteProblem& p : answer.problems) {
        report.gaps.push_back(p.site + ": could not be computed: " + p.reason + ".");
    }
    return report;
}

reports::Report plan_report_of(const plan::Plan& plan, const reports::Frame& frame) {
    plan::OverlapOptions options;
    options.window_shares = {0.01, 0.02, 0.05, 0.10};
    options.threads = std::max(1U, std::thread::hardware_concurrency());
    const plan::Overlap overlap = plan::overlap_of(plan, options);
    auto report = reports::plan_report(plan, overlap, frame);
    // The drawings that go to the site: what stands where, and where it will be dry and wet.
    for (const auto view : {reports::PlanView::layout, reports::PlanView::islands}) {
        report.sheets.push_back(reports::draw_plan(plan, {view, frame.units, plan.name, &overlap, nullptr}));
    }
    return report;
}

}  // namespace evenfall::workflow
