// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/portfolio.h"

#include "app/workflow/season.h"
#include "core/input_error.h"
#include "core/stats/parallel.h"
#include "core/store/site_store.h"

#include <algorithm>
#include <mutex>
#include <numeric>
#include <optional>

namespace evenfall::workflow {
namespace {

/// What became of one site: its season, or the reason why there is none.
struct Outcome {
    std::optional<budget::SeasonResult> season;
    std::string reason;
};

/// The sites with those of one weather station together, so that its days are read once.
std::vector<std::size_t> by_weather(const std::vector<site::Site>& sites) {
    std::vector<std::size_t> order(sites.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return sites[a].weather < sites[b].weather; });
    return order;
}

Outcome outcome_of(const store::Book& book, const std::string& site, const PortfolioQuestion& question,
                   WeatherAtHand& weather) {
    try {
        auto inputs = season_inputs(book,
                                    {site, question.from, question.to, question.program, question.rain,
                                     question.quarter_rule},
                                    weather);
        inputs.account_by_cans = false;
        auto result = budget::season(inputs);
        result.cost = season_cost_of(book, result);
        return {std::move(result), {}};
    } catch (const InputError& error) {
        return {std::nullopt, error.what()};
    }
}

}  // namespace

PortfolioAnswer answer_portfolio(const store::Book& book, const PortfolioQuestion& question,
                                 const std::function<void(std::size_t, std::size_t)>& progress) {
    // What is wrong for every site is said once.
    if (question.to < question.from) {
        throw InputError({phrase("workflow", "%1 to %2"), calendar::format_month(question.from),
                          calendar::format_month(question.to)},
                         phrase("workflow", "months in order, the first one first"));
    }
    static_cast<void>(program_named(question.program));
    static_cast<void>(weather::parse_rain_rule(question.rain));

    const auto sites = store::sites(book);
    const auto order = by_weather(sites);
    std::vector<Outcome> outcomes(sites.size());
    std::mutex one_at_a_time;
    std::size_t finished = 0;
    stats::in_pieces(sites.size(), 0, [&](std::size_t begin, std::size_t end) {
        const auto own = store::Book::open(book.file(), store::Access::read_only);
        WeatherAtHand weather;
        for (std::size_t i = begin; i < end; ++i) {
            outcomes[order[i]] = outcome_of(own, sites[order[i]].code, question, weather);
            const std::lock_guard lock(one_at_a_time);
            progress(++finished, sites.size());
        }
    });

    PortfolioAnswer answer;
    std::vector<budget::SeasonResult> results;
    for (std::size_t i = 0; i < sites.size(); ++i) {
        if (outcomes[i].season) results.push_back(*std::move(outcomes[i].season));
        else answer.problems.push_back({sites[i].code, outcomes[i].reason});
    }
    answer.portfolio = budget::portfolio(results, question.order);
    return answer;
}

}  // namespace evenfall::workflow
