// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/moment.h"
#include "app/workflow/plans.h"
#include "app/workflow/reports.h"
#include "app/workflow/review_book.h"
#include "app/workflow/write_report.h"
#include "core/input_error.h"
#include "reports/content/review_report.h"

#include <ostream>

namespace evenfall::cli {
namespace {

/// What a kind of report cannot do without is asked for by name.
void require(bool given, const std::string& kind, const std::string& option) {
    if (!given) throw ArgumentError("report " + kind + " needs " + option);
}

struct Named {
    reports::Report report;
    std::string name;  ///< of the files, without ending
};

Named season(const store::Book& book, const ReportOptions& o, audit::QuarterRule rule,
             const reports::Frame& frame) {
    require(!o.site.empty(), o.kind, "--site");
    require(o.from.has_value(), o.kind, "--from");
    require(o.to.has_value(), o.kind, "--to");
    return {workflow::season_report_of(book, {o.site, *o.from, *o.to, o.program, o.rain, rule}, frame),
            "season-" + workflow::file_name_of(o.site) + "-" + calendar::format_month(*o.from) + "-to-" +
                calendar::format_month(*o.to)};
}

Named audit_of(const store::Book& book, const ReportOptions& o, audit::QuarterRule rule,
               const reports::Frame& frame) {
    require(!o.site.empty() || !o.test.empty(), o.kind, "--test or --site");
    if (!o.test.empty()) {
        return {workflow::audit_report_of_test(book, o.test, rule, frame),
                "audit-" + workflow::file_name_of(o.test)};
    }
    return {workflow::audit_report_of_site(book, o.site, rule, frame),
            "audit-" + workflow::file_name_of(o.site)};
}

Named portfolio(const store::Book& book, const ReportOptions& o, audit::QuarterRule rule,
                const reports::Frame& frame) {
    require(o.from.has_value(), o.kind, "--from");
    require(o.to.has_value(), o.kind, "--to");
    const workflow::PortfolioQuestion question{*o.from, *o.to, o.program, o.rain, rule,
                                               budget::RankBy::over_budget};
    return {workflow::portfolio_report_of(book, question, frame, [](std::size_t, std::size_t) {}),
            "portfolio-" + calendar::format_month(*o.from) + "-to-" + calendar::format_month(*o.to)};
}

Named plan_of(const store::Book& book, const ReportOptions& o, const reports::Frame& frame) {
    require(!o.plan.empty(), o.kind, "--plan");
    const auto plan = workflow::plan_named(book, o.plan);
    return {workflow::plan_report_of(plan.plan, frame), "plan-" + workflow::file_name_of(plan.code)};
}

Named review_of(const store::Book& book, const ReportOptions& o, const reports::Frame& frame) {
    require(o.application.empty() != o.filing.empty(), o.kind, "either --application or --filing");
    // Budget programs and rebate programs are two things: the default of the first is none of the second.
    const std::string program = o.program == ReportOptions().program ? std::string() : o.program;
    const auto stored = workflow::review_in_book(book, {o.application, o.filing, program});
    return {reports::review_report(stored.review, frame), "review-" + workflow::file_name_of(stored.name)};
}

Named made_of(const store::Book& book, const ReportOptions& o, audit::QuarterRule rule,
              const reports::Frame& frame) {
    if (o.kind == "audit") return audit_of(book, o, rule, frame);
    if (o.kind == "season") return season(book, o, rule, frame);
    if (o.kind == "portfolio") return portfolio(book, o, rule, frame);
    if (o.kind == "plan") return plan_of(book, o, frame);
    if (o.kind == "review") return review_of(book, o, frame);
    throw InputError("report " + o.kind, "audit, season, portfolio, plan or review");
}

}  // namespace

int run(const ReportOptions& o, Streams& streams) {
    const auto book = store::Book::open(o.book, store::Access::read_only);
    const auto rule = audit::quarter_rule_named(o.quarter_rule);
    if (!rule) throw InputError(o.quarter_rule, "a quarter rule");
    const reports::Frame frame{
        o.system == "metric" ? reports::UnitsShown::metric : reports::UnitsShown::us, "",
        workflow::present_moment(), "Evenfall " EVENFALL_VERSION,
        {{o.kind == "audit" ? "Auditor" : o.kind == "review" ? "Reviewed by" : "Prepared by", o.signer, o.certification,
          o.certification_expires}}};
    const Named made = made_of(book, o, *rule, frame);
    const workflow::ReportOrder order{o.formats, o.out, made.name, o.paper,
                                      std::filesystem::path(streams.program_folder) / "evenfall-print"};
    const auto files = workflow::write_report(made.report, order);
    if (o.json) {
        Json list = Json::array();
        for (const auto& file : files) list.push_back(file.string());
        streams.out << print({{"files", std::move(list)}});
    } else {
        for (const auto& file : files) streams.out << file.string() << '\n';
    }
    return done;
}

}  // namespace evenfall::cli
