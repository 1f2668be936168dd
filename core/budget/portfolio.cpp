// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/portfolio.h"

#include "core/budget/season_sums.h"
#include "core/input_error.h"

#include <algorithm>
#include <atomic>
#include <exception>
#include <set>
#include <thread>

namespace evenfall::budget {
namespace {

std::optional<double> avoidable_money(const SeasonResult& season) {
    if (!season.cost) return std::nullopt;
    const PeriodCost& cost = season.cost->total;
    if (!cost.avoidable && !cost.energy_cost_avoidable) return std::nullopt;
    return cost.avoidable.value_or(0.0) + cost.energy_cost_avoidable.value_or(0.0);
}

PortfolioSite site_of(const SeasonResult& season) {
    PortfolioSite site;
    site.site = season.site;
    site.name = season.name;
    site.total = season.total;
    for (const AreaSeason& area : season.areas) {
        site.size += area.size;
        if (area.total.account) site.size_counted += area.size;
    }
    if (site.total.over_budget && site.size_counted.si() > 0.0) {
        site.over_budget_depth = *site.total.over_budget / site.size_counted;
    }
    site.avoidable_money = avoidable_money(season);
    if (season.cost) site.currency = season.cost->currency;
    return site;
}

std::optional<double> figure_of(const PortfolioSite& site, RankBy order) {
    switch (order) {
        case RankBy::over_budget:
            if (site.total.over_budget) return site.total.over_budget->si();
            break;
        case RankBy::per_area:
            if (site.over_budget_depth) return site.over_budget_depth->si();
            break;
        case RankBy::money: return site.avoidable_money;
    }
    return std::nullopt;
}

bool one_currency(std::span<const PortfolioSite> sites) {
    std::set<std::string> currencies;
    for (const PortfolioSite& site : sites) {
        if (site.avoidable_money) currencies.insert(site.currency);
    }
    return currencies.size() <= 1;
}

void rank(Portfolio& out) {
    const bool comparable = out.order != RankBy::money || one_currency(out.sites);
    const auto figure = [&](const PortfolioSite& site) {
        return comparable ? figure_of(site, out.order) : std::nullopt;
    };
    std::sort(out.sites.begin(), out.sites.end(), [&](const auto& a, const auto& b) {
        const auto fa = figure(a);
        const auto fb = figure(b);
        if (fa && fb && *fa != *fb) return *fa > *fb;
        if (fa.has_value() != fb.has_value()) return fa.has_value();
        return a.site < b.site;
    });
    int next = 0;
    for (PortfolioSite& site : out.sites) {
        if (figure(site)) site.rank = ++next;
    }
}

}  // namespace

std::vector<SeasonResult> seasons(std::span<const SeasonInputs> sites, unsigned threads) {
    std::vector<SeasonResult> results(sites.size());
    std::vector<std::exception_ptr> failures(sites.size());
    std::atomic<std::size_t> next{0};
    const auto work = [&] {
        for (std::size_t i = next++; i < sites.size(); i = next++) {
            try {
                results[i] = season(sites[i]);
            } catch (...) {
                failures[i] = std::current_exception();
            }
        }
    };
    {
        std::vector<std::jthread> others;
        for (unsigned t = 1; t < threads; ++t) others.emplace_back(work);
        work();
    }
    for (const auto& failure : failures) {
        if (failure) std::rethrow_exception(failure);
    }
    return results;
}

Portfolio portfolio(std::span<const SeasonResult> seasons, RankBy order) {
    Portfolio out;
    out.order = order;
    for (const SeasonResult& season : seasons) {
        if (season.from != seasons.front().from || season.to != seasons.front().to) {
            throw InputError({phrase("budget", "season of %1, %2 to %3"), season.site,
                              calendar::format_month(season.from), calendar::format_month(season.to)},
                             {phrase("budget", "%1 to %2"), calendar::format_month(seasons.front().from),
                              calendar::format_month(seasons.front().to)});
        }
        out.sites.push_back(site_of(season));
        if (out.months.empty()) {
            for (const SeasonMonth& month : season.months) {
                SeasonMonth sum;
                sum.month = month.month;
                sum.days = month.days;
                out.months.push_back(sum);
            }
        }
        for (std::size_t k = 0; k < season.months.size(); ++k) {
            add_volumes(out.months[k], season.months[k]);
            add_if_known(out.months[k].need, season.months[k].need);
            add_if_known(out.months[k].budget, season.months[k].budget);
            add_if_known(out.months[k].over_budget, season.months[k].over_budget);
        }
    }
    out.total = total_of_all(out.months);
    rank(out);
    return out;
}

}  // namespace evenfall::budget
