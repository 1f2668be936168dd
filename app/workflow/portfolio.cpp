// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/portfolio.h"

#include "app/workflow/season.h"
#include "core/input_error.h"
#include "core/store/site_store.h"

namespace evenfall::workflow {

PortfolioAnswer answer_portfolio(const store::Book& book, const PortfolioQuestion& question,
                                 const std::function<void(std::size_t, std::size_t)>& progress) {
    // What is wrong for every site is said once.
    if (question.to < question.from) {
        throw InputError(calendar::format_month(question.from) + " to " +
                             calendar::format_month(question.to),
                         "months in order, the first one first");
    }
    static_cast<void>(program_named(question.program));
    static_cast<void>(weather::parse_rain_rule(question.rain));

    PortfolioAnswer answer;
    std::vector<budget::SeasonResult> results;
    const auto sites = store::sites(book);
    for (std::size_t i = 0; i < sites.size(); ++i) {
        try {
            const auto inputs =
                season_inputs(book, {sites[i].code, question.from, question.to, question.program,
                                     question.rain, question.quarter_rule});
            auto result = budget::season(inputs);
            result.cost = season_cost_of(book, result);
            results.push_back(std::move(result));
        } catch (const InputError& error) {
            answer.problems.push_back({sites[i].code, error.what()});
        }
        progress(i + 1, sites.size());
    }
    answer.portfolio = budget::portfolio(results, question.order);
    return answer;
}

}  // namespace evenfall::workflow
