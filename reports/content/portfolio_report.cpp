// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/portfolio_report.h"

#include "core/units/number.h"

#include <algorithm>

namespace evenfall::reports {
namespace {

using budget::Portfolio;
using budget::PortfolioSite;

constexpr std::size_t charted = 15;  // sites in a chart; more bars cannot be read on a page

std::string name_of(const PortfolioSite& s) { return s.name.empty() ? s.site : s.name; }

/// Most over budget first whatever the portfolio was ranked by; sites that cannot be judged last.
std::vector<PortfolioSite> ranked(std::vector<PortfolioSite> sites) {
    std::stable_sort(sites.begin(), sites.end(), [](const PortfolioSite& a, const PortfolioSite& b) {
        const auto &x = a.total.over_budget, &y = b.total.over_budget;
        if (x.has_value() != y.has_value()) return x.has_value();
        if (!x || *x == *y) return a.site < b.site;
        return *x > *y;
    });
    return sites;
}

/// The currency of all sites that have money; empty when none has or they differ.
std::string currency_of(const std::vector<PortfolioSite>& sites) {
    std::string currency;
    for (const auto& s : sites) {
        if (!s.avoidable_money) continue;
        if (!currency.empty() && currency != s.currency) return {};
        currency = s.currency;
    }
    return currency;
}

bool is_over(const PortfolioSite& s) {
    return s.total.over_budget && s.total.over_budget->si() > 0.0;
}

Table ranking(const std::vector<PortfolioSite>& sites, const std::string& currency,
              const Shown& shown) {
    const NumberFormat v = shown.volume_format();
    NumberFormat per_area = v;
    per_area.unit += "/" + shown.size_format().unit;
    Table t{"sites",
            "All sites, most over budget first",
            "Over budget is summed over the months; a month under budget does not make up for one "
            "over it.",
            {{"rank", "Rank", {}},
             {"site", "Site", {}, true},
             {"name", "Name", {}, true},
             {"size", "Size counted", shown.size_format()},
             {"use", "Use", v},
             {"need", "Need", v},
             {"budget", "Budget", v},
             {"over_budget", "Over budget", v},
             {"over_per_area", "Over budget by area", per_area},
             {"leak", "Leak", v},
             {"avoidable", "Could be saved", v}},
            {}};
    if (!currency.empty()) t.columns.push_back({"money", "Avoidable waste, cost", {2, currency}});
    double rank = 1.0;
    for (const PortfolioSite& s : sites) {
        const budget::SeasonFigures& f = s.total;
        std::optional<double> rate;
        if (f.over_budget && s.size_counted.si() > 0.0) {
            rate = shown.volume(*f.over_budget) / shown.size(s.size_counted);
        }
        Cell leak = unknown(), avoidable = unknown();
        if (f.account) {
            leak = number(shown.volume(f.account->leak));
            avoidable = number(shown.volume(f.account->avoidable()));
        }
        std::vector<Cell> cells{number(rank),
                                text(s.site),
                                text(s.name),
                                number(shown.size(s.size_counted)),
                                number(shown.volume(f.use)),
                                number(shown.volume(f.need)),
                                number(shown.volume(f.budget)),
                                number(shown.volume(f.over_budget)),
                                computed(rate, "{over_budget}/{size}"),
                                leak,
                                avoidable};
        if (!currency.empty()) cells.push_back(number(s.avoidable_money));
        t.add(std::to_string(static_cast<int>(rank)), std::move(cells));
        rank += 1.0;
    }
    if (sites.empty()) return t;
    // Totals over what is known.
    std::vector<Cell> cells(t.columns.size());
    cells[1] = text("Total");
    for (const char* key : {"size", "use", "need", "budget", "over_budget", "leak", "avoidable",
                            "money"}) {
        const auto c = t.column_index(key);
        if (!c) continue;
        std::optional<double> sum;
        for (const auto& value : t.values(key)) {
            if (value) sum = sum.value_or(0.0) + *value;
        }
        cells[*c] = computed(sum, "SUM({sites." + std::string(key) + "})");
    }
    t.add("total", std::move(cells), RowKind::total);
    return t;
}

/// The first sites by another measure, with formulas that lead to the ranking.
Table leaders(const Table& all, const std::string& key, const std::string& title,
              const std::string& column) {
    const std::size_t value = *all.column_index(column), name = *all.column_index("name");
    const std::size_t code = *all.column_index("site");
    std::vector<const Row*> rows;
    for (const Row& row : all.rows) {
        if (row.kind == RowKind::data && row.cells[value].number()) rows.push_back(&row);
    }
    std::stable_sort(rows.begin(), rows.end(), [&](const Row* a, const Row* b) {
        return *a->cells[value].number() > *b->cells[value].number();
    });
    if (rows.size() > charted) rows.resize(charted);
    Table t{key,
            title,
            "",
            {{"site", "Site", {}, true},
             {"name", "Name", {}, true},
             {"value", all.columns[value].title, all.columns[value].format}},
            {}};
    for (const Row* row : rows) {
        t.add(row->key, {row->cells[code], row->cells[name],
                         computed(row->cells[value].number(),
                                  "{sites[" + row->key + "]." + column + "}")});
    }
    return t;
}

Chart bars(const Table& t, const std::string& sentence, Tone tone) {
    SeriesChart c;
    c.categories = {t.key, "site"};
    c.series = {{t.columns[2].title, {t.key, "value"}, Draw::bar, tone, {}, {}}};
    c.x = {"Site", ""};
    c.y = {t.columns[2].title, t.columns[2].format.unit};
    c.horizontal = true;
    return {t.key + "_chart", t.title, sentence, c};
}

Section leader_section(const Table& all, const std::string& key, const std::string& title,
                       const std::string& column, const std::string& sentence, Tone tone) {
    Section s{key, title, {}};
    Table t = leaders(all, key + "_sites", title, column);
    if (t.rows.empty()) {
        s.blocks.emplace_back(Paragraph{"No site can be ranked so: the figures are missing."});
        return s;
    }
    s.blocks.emplace_back(bars(t, sentence, tone));
    s.blocks.emplace_back(std::move(t));
    return s;
}

void sentences(const std::vector<PortfolioSite>& sites, const std::string& period,
               const std::string& program, const std::string& currency, const Frame& frame,
               Answer& answer) {
    const auto judged = std::count_if(sites.begin(), sites.end(), [](const PortfolioSite& s) {
        return s.total.over_budget.has_value();
    });
    answer.sentences.push_back("From " + period + " " + std::to_string(judged) + " of " +
                               std::to_string(sites.size()) +
                               " sites could be held against the program \"" + program + "\".");
    if (judged == 0) return;
    units::Volume over, use;
    double money = 0.0;
    for (const auto& s : sites) {
        use += s.total.use.value_or(units::Volume{});
        over += s.total.over_budget.value_or(units::Volume{});
        money += s.avoidable_money.value_or(0.0);
    }
    const auto over_count =
        static_cast<std::size_t>(std::count_if(sites.begin(), sites.end(), is_over));
    std::string line = std::to_string(over_count) + " of them used more than the program grants, " +
                       both(over, frame.units) + " in all";
    if (use.si() > 0.0) line += ", " + percent(over / use) + " of all metered water";
    answer.sentences.push_back(line + ".");
    if (over_count > 0) {
        units::Volume first;
        const std::size_t few = std::min<std::size_t>(3, over_count);
        for (std::size_t i = 0; i < few; ++i) first += *sites[i].total.over_budget;
        answer.sentences.push_back(std::to_string(few) + (few == 1 ? " site makes" : " sites make") +
                                   " up " + percent(first / over) + " of it.");
    }
    if (!currency.empty()) {
        answer.sentences.push_back("The waste that could be avoided costs " +
                                   units::format_grouped(money, 2) + " " + currency + ".");
    }
}

std::vector<Fix> fixes_of(const std::vector<PortfolioSite>& sites, const Frame& frame) {
    const Shown shown(frame.units);
    std::vector<Fix> fixes;
    for (const auto& s : sites) {
        if (fixes.size() == 3 || !is_over(s)) break;
        std::string why = "It used " + both(*s.total.over_budget, frame.units) + " more than granted";
        if (s.total.account && s.total.account->leak.si() > 0.0) {
            why += "; its readings show a leak of " + both(s.total.account->leak, frame.units);
        }
        if (s.avoidable_money) {
            why += "; the money is what all its avoidable waste costs, water and energy";
        }
        fixes.push_back({"Look at " + name_of(s) + " (" + s.site + ")", why + ".",
                         number(shown.volume(*s.total.over_budget), shown.volume_format()),
                         s.avoidable_money ? number(*s.avoidable_money, {2, s.currency}) : unknown()});
    }
    return fixes;
}

}  // namespace

Report portfolio_report(const Portfolio& portfolio, const std::string& period,
                        const std::string& program, const Frame& frame) {
    const Shown shown(frame.units);
    const auto order = ranked(portfolio.sites);
    const std::string currency = currency_of(order);
    Report report = framed("portfolio", "Portfolio report",
                           std::to_string(order.size()) + " sites, " + period, frame);
    sentences(order, period, program, currency, frame, report.answer);
    report.answer.fixes = fixes_of(order, frame);
    const Table all = ranking(order, currency, shown);
    report.sections.push_back(leader_section(all, "by_water", "By water over budget", "over_budget",
                                             "The sites that are furthest over their budget.",
                                             Tone::use));
    report.sections.push_back(
        leader_section(all, "by_size",
                       std::string("By water over budget for each ") +
                           (shown.us() ? "acre" : "hectare"),
                       "over_per_area", "Small sites that waste a lot for their size show here.",
                       Tone::need));
    if (!currency.empty()) {
        report.sections.push_back(leader_section(all, "by_money", "By money", "money",
                                                 "What the avoidable waste cost, water and energy.",
                                                 Tone::over_scheduled));
    }
    report.sections.push_back({"all_sites", "All sites", {all}});
    report.notes.push_back({"Use, need, budget", "as in the season report of each site",
                            "by the month; months are never netted", "program \"" + program + "\"",
                            false});
    if (!currency.empty()) {
        report.notes.push_back({"Money", "avoidable waste at the rates of each site",
                                "water and energy", "rates in the book", false});
    }
    for (const auto& s : order) {
        const auto days = static_cast<double>(s.total.days);
        if (!s.total.over_budget) {
            report.gaps.push_back(name_of(s) + " (" + s.site +
                                  "): cannot be judged; use or weather is missing.");
        } else if (s.total.days_counted < 0.99 * days) {
            report.gaps.push_back(name_of(s) + " (" + s.site + "): only " +
                                  units::format_fixed(s.total.days_counted, 0) + " of " +
                                  units::format_fixed(days, 0) + " days could be counted.");
        }
    }
    return report;
}

}  // namespace evenfall::reports
