// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/portfolio_report.h"

#include "core/units/number.h"

#include <algorithm>

namespace evenfall::reports {
namespace {

constexpr std::size_t charted = 15;  // sites in a chart; more bars cannot be read on a page

std::string name_of(const PortfolioSite& s) { return s.name.empty() ? s.code : s.name; }

/// Most over budget first; sites that cannot be judged last, by their code.
std::vector<PortfolioSite> ranked(std::vector<PortfolioSite> sites) {
    std::stable_sort(sites.begin(), sites.end(), [](const PortfolioSite& a, const PortfolioSite& b) {
        if (a.over_budget.has_value() != b.over_budget.has_value()) return a.over_budget.has_value();
        if (!a.over_budget || *a.over_budget == *b.over_budget) return a.code < b.code;
        return *a.over_budget > *b.over_budget;
    });
    return sites;
}

Table ranking(const std::vector<PortfolioSite>& sites, const std::optional<WaterPrice>& price,
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
             {"size", "Size", shown.size_format()},
             {"use", "Use", v},
             {"need", "Need", v},
             {"budget", "Budget", v},
             {"over_budget", "Over budget", v},
             {"over_per_area", "Over budget by area", per_area},
             {"leak", "Leak", v},
             {"avoidable", "Could be saved", v},
             {"judged", "Months judged", {}}},
            {}};
    if (price) t.columns.push_back({"money", "Over budget, worth", {2, price->currency}});
    double rank = 1.0;
    for (const PortfolioSite& s : sites) {
        std::optional<double> rate;
        if (s.over_budget && s.size.si() > 0.0) {
            rate = shown.volume(*s.over_budget) / shown.size(s.size);
        }
        std::vector<Cell> cells{number(rank),
                                text(s.code),
                                text(s.name),
                                number(shown.size(s.size)),
                                number(shown.volume(s.use)),
                                number(shown.volume(s.need)),
                                number(shown.volume(s.budget)),
                                number(shown.volume(s.over_budget)),
                                computed(rate, "{over_budget}/{size}"),
                                number(shown.volume(s.leak)),
                                number(shown.volume(s.avoidable)),
                                number(static_cast<double>(s.months_judged))};
        if (price) cells.push_back(number(s.money));
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
               const std::string& program, const std::optional<WaterPrice>& price,
               const Frame& frame, Answer& answer) {
    const auto judged = std::count_if(sites.begin(), sites.end(), [](const PortfolioSite& s) {
        return s.over_budget.has_value();
    });
    answer.sentences.push_back("From " + period + " " + std::to_string(judged) + " of " +
                               std::to_string(sites.size()) +
                               " sites could be held against the program \"" + program + "\".");
    units::Volume over, use;
    std::size_t over_count = 0;
    for (const auto& s : sites) {
        if (s.use) use += *s.use;
        if (!s.over_budget) continue;
        over += *s.over_budget;
        if (s.over_budget->si() > 0.0) ++over_count;
    }
    if (judged == 0) return;
    std::string line = std::to_string(over_count) + " of them used more than the program grants, " +
                       both(over, frame.units) + " in all";
    if (use.si() > 0.0) line += ", " + percent(over / use) + " of all metered water";
    if (price) {
        line += ", worth " + units::format_grouped(over / price->per * price->amount, 2) + " " +
                price->currency;
    }
    answer.sentences.push_back(line + ".");
    if (over_count == 0) return;
    units::Volume first;
    const std::size_t few = std::min<std::size_t>(3, over_count);
    for (std::size_t i = 0; i < few; ++i) first += *sites[i].over_budget;
    answer.sentences.push_back(std::to_string(few) + (few == 1 ? " site makes" : " sites make") +
                               " up " + percent(first / over) + " of it.");
}

std::vector<Fix> fixes_of(const std::vector<PortfolioSite>& sites,
                          const std::optional<WaterPrice>& price, const Shown& shown) {
    std::vector<Fix> fixes;
    for (const auto& s : sites) {
        if (fixes.size() == 3 || !s.over_budget || !(s.over_budget->si() > 0.0)) break;
        std::string why = "It used " + both(*s.over_budget, shown.us() ? UnitsShown::us
                                                                       : UnitsShown::metric) +
                          " more than granted";
        if (s.leak && s.leak->si() > 0.0) {
            why += "; its readings show a leak of " +
                   both(*s.leak, shown.us() ? UnitsShown::us : UnitsShown::metric);
        }
        Cell money = s.money && price ? number(*s.money, {2, price->currency}) : unknown();
        fixes.push_back({"Look at " + name_of(s) + " (" + s.code + ")", why + ".",
                         number(shown.volume(*s.over_budget), shown.volume_format()), money});
    }
    return fixes;
}

}  // namespace

PortfolioSite portfolio_site(const budget::SeasonResult& season,
                             const std::optional<WaterPrice>& price) {
    PortfolioSite s;
    s.code = season.site;
    s.name = season.name;
    for (const auto& area : season.areas) s.size += area.size;
    s.areas = season.areas.size();
    s.use = season.total.use;
    s.need = season.total.need;
    s.budget = season.total.budget;
    s.over_budget = season.total.over_budget;
    if (season.total.account) {
        s.leak = season.total.account->leak;
        s.avoidable = season.total.account->avoidable();
    }
    if (price && s.over_budget) s.money = *s.over_budget / price->per * price->amount;
    s.months = season.months.size();
    s.months_judged = static_cast<std::size_t>(
        std::count_if(season.months.begin(), season.months.end(),
                      [](const budget::SeasonMonth& m) { return m.over_budget.has_value(); }));
    return s;
}

Report portfolio_report(const std::vector<PortfolioSite>& sites, const std::string& period,
                        const std::string& program, const std::optional<WaterPrice>& price,
                        const Frame& frame) {
    const Shown shown(frame.units);
    const auto order = ranked(sites);
    Report report = framed("portfolio", "Portfolio report",
                           std::to_string(sites.size()) + " sites, " + period, frame);
    sentences(order, period, program, price, frame, report.answer);
    report.answer.fixes = fixes_of(order, price, shown);
    const Table all = ranking(order, price, shown);
    report.sections.push_back(leader_section(all, "by_water", "By water over budget", "over_budget",
                                             "The sites that are furthest over their budget.",
                                             Tone::use));
    report.sections.push_back(leader_section(all, "by_size", "By water over budget for each " +
                                                 std::string(shown.us() ? "acre" : "hectare"),
                                             "over_per_area",
                                             "Small sites that waste a lot for their size show here.",
                                             Tone::need));
    if (price) {
        report.sections.push_back(leader_section(all, "by_money", "By money", "money",
                                                 "What the water over budget cost.",
                                                 Tone::over_scheduled));
    }
    report.sections.push_back({"all_sites", "All sites", {all}});
    report.notes.push_back({"Use, need, budget", "as in the season report of each site",
                            "by the month; months are never netted", "program \"" + program + "\"",
                            false});
    if (price) {
        report.notes.push_back({"Money", "water over budget x price",
                                "one price for all sites; water alone", price->source, false});
    }
    for (const auto& s : order) {
        if (!s.over_budget) {
            report.gaps.push_back(name_of(s) + " (" + s.code +
                                  "): cannot be judged; use or weather is missing.");
        } else if (s.months_judged < s.months) {
            report.gaps.push_back(name_of(s) + " (" + s.code + "): " +
                                  std::to_string(s.months - s.months_judged) + " of " +
                                  std::to_string(s.months) + " months are missing.");
        }
    }
    return report;
}

}  // namespace evenfall::reports
