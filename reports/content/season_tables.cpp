// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/season_tables.h"

#include "core/budget/waste_account.h"

#include <algorithm>

namespace evenfall::reports {
namespace {

using budget::AreaMonth;
using budget::AreaSeason;
using budget::SeasonFigures;
using budget::SeasonFlag;
using budget::SeasonMonth;
using budget::SeasonResult;
using budget::WasteAccount;

/// Metered water on days whose need is known: what the account closes to.
std::optional<units::Volume> counted_use(const SeasonFigures& f) {
    if (!f.account || !f.use) return std::nullopt;
    return *f.use - f.outside_account.value_or(units::Volume{});
}

bool has_any(const SeasonFigures& f, std::initializer_list<SeasonFlag> flags) {
    return std::any_of(flags.begin(), flags.end(),
                       [&](SeasonFlag flag) { return budget::has_flag(f.flags, flag); });
}

Cell with_mark(Cell cell, bool assumed) {
    cell.assumed = assumed && !cell.empty();
    return cell;
}

Cell input(std::optional<double> value) {
    Cell cell = number(value);
    cell.role = CellRole::input;
    return cell;
}

bool need_assumed(const SeasonFigures& f) {
    return has_any(f, {SeasonFlag::eto_filled, SeasonFlag::eto_inputs_assumed,
                       SeasonFlag::rain_filled, SeasonFlag::coefficient_assumed,
                       SeasonFlag::meter_gap});
}

std::string month_key(const SeasonMonth& m) { return calendar::format_month(m.month); }

/// A column summed, in a total row; unknown stays unknown.
Cell total(std::optional<double> value, const std::string& table, const std::string& column) {
    return computed(value, "SUM({" + table + "." + column + "})");
}

std::string area_month_key(std::size_t area, const AreaMonth& m) {
    return "a" + std::to_string(area + 1) + " " + month_key(m);
}

}  // namespace

Tone tone_of(std::string_view key) {
    if (key == "used_by_turf") return Tone::need;
    if (key == "uneven_unavoidable") return Tone::uneven;
    if (key == "uneven_avoidable") return Tone::uneven_avoidable;
    if (key == "off_target") return Tone::off_target;
    if (key == "leak") return Tone::leak;
    return Tone::over_scheduled;
}

std::string short_words(const budget::WasteLine& line) {
    const std::string_view middle = " application";
    std::string words(line.words.english());
    if (const auto at = words.find(middle); at != std::string::npos) words.erase(at, middle.size());
    return words;
}

Table season_months(const SeasonResult& season, const Shown& shown) {
    const NumberFormat v = shown.volume_format(), d = shown.month_depth_format();
    Table t{"months",
            "Use against budget by month",
            "Depths are means over the site; \"use counted\" is metered on days whose need is known.",
            {{"month", "Month", {}, true},
             {"days", "Days counted", {1, ""}},
             {"eto", "Reference ET", d},
             {"rain", "Rain", d},
             {"effective_rain", "Effective rain", d},
             {"need_depth", "Need", d},
             {"use", "Use", v},
             {"outside", "Use outside the account", v},
             {"use_counted", "Use counted", v},
             {"need", "Need of the areas", v},
             {"budget", "Budget", v},
             {"over_budget", "Over budget", v},
             {"estimated", "Use not read as such", {1, "", true}}},
            {}};
    const auto row = [&](const SeasonFigures& f, const std::string& label, bool is_total) {
        const auto volume = [&](const char* column, std::optional<units::Volume> value,
                                const std::string& formula) {
            if (is_total) return total(shown.volume(value), "months", column);
            return formula.empty() ? number(shown.volume(value))
                                   : computed(shown.volume(value), formula);
        };
        Cell use = with_mark(volume("use", f.use, ""), f.estimated_share > 0.0);
        if (!is_total) use.role = CellRole::input;
        Cell over = volume("over_budget", f.over_budget, "MAX(0,{use_counted}-{budget})");
        if (!is_total) over.role = CellRole::result;
        return std::vector<Cell>{
            text(label), number(f.days_counted), number(shown.depth(f.reference_et)),
            number(shown.depth(f.rain)), number(shown.depth(f.effective_rain)),
            number(shown.depth(f.need_depth)), use, volume("outside", f.outside_account, ""),
            volume("use_counted", counted_use(f), "{use}-{outside}"),
            with_mark(volume("need", f.need, ""), need_assumed(f)),
            with_mark(volume("budget", f.budget, ""), need_assumed(f)), over,
            f.use ? number(f.estimated_share) : unknown()};
    };
    for (const SeasonMonth& m : season.months) {
        t.add(month_key(m), row(m, calendar::format_month_name(m.month), false));
    }
    t.add("total", row(season.total, "Total", true), RowKind::total);
    // Named, because the answer page and other tables lead here.
    const auto name = [&](const char* column, const char* cell_name) {
        Cell& cell = t.rows.back().cells[*t.column_index(column)];
        if (!cell.empty()) cell.name = cell_name;
    };
    name("use", "season_use");
    name("need", "season_need");
    name("budget", "season_budget");
    name("over_budget", "season_over_budget");
    name("use_counted", "season_use_counted");
    return t;
}

Table season_cumulative(const SeasonResult& season, const Shown& shown) {
    const NumberFormat v = shown.volume_format();
    Table t{"cumulative",
            "Use and budget added up",
            "From the first month on; months without a figure add nothing.",
            {{"month", "Month", {}, true},
             {"use", "Use counted", v},
             {"need", "Need", v},
             {"budget", "Budget", v}},
            {}};
    if (season.months.empty()) return t;
    const std::string first = month_key(season.months.front());
    std::optional<double> use, need, budget;
    const auto grow = [&](std::optional<double>& sum, std::optional<units::Volume> part) {
        if (part) sum = sum.value_or(0.0) + shown.volume(*part);
    };
    for (const SeasonMonth& m : season.months) {
        grow(use, counted_use(m));
        grow(need, m.need);
        grow(budget, m.budget);
        const auto sum = [&](const char* column) {
            return "SUM({months[" + first + ".." + month_key(m) + "]." + column + "})";
        };
        t.add(month_key(m), {text(calendar::format_month_name(m.month)),
                             computed(use, sum("use_counted")), computed(need, sum("need")),
                             computed(budget, sum("budget"))});
    }
    return t;
}

Table season_waste_months(const SeasonResult& season, const Shown& shown) {
    const NumberFormat v = shown.volume_format();
    Table t{"waste_months",
            "Where the water went, by month",
            "The parts but the shortage add up to the use counted.",
            {{"month", "Month", {}, true}},
            {}};
    for (const auto& line : budget::waste_lines()) {
        t.columns.push_back({std::string(line.key), std::string(line.words.english()), v});
    }
    t.columns.push_back({"use_counted", "Use counted", v});
    const auto row = [&](const SeasonFigures& f, const std::string& label, bool is_total) {
        std::vector<Cell> cells{text(label)};
        std::string parts;
        for (const auto& line : budget::waste_lines()) {
            const std::string key(line.key);
            if (line.in_use) {
                if (!parts.empty()) parts += '+';
                parts += "{" + key + "}";
            }
            const auto value = f.account ? std::optional(shown.volume(*f.account.*line.part))
                                         : std::nullopt;
            cells.push_back(is_total ? total(value, "waste_months", key)
                                     : computed(value, "SUMPRODUCT(({area_months.month}={month})*1,"
                                                       "{area_months." + key + "})"));
        }
        Cell use = computed(f.account ? std::optional(shown.volume(f.account->use())) : std::nullopt,
                            parts);
        use.role = CellRole::result;
        cells.push_back(use);
        return cells;
    };
    for (const SeasonMonth& m : season.months) {
        t.add(month_key(m), row(m, calendar::format_month_name(m.month), false));
    }
    t.add("total", row(season.total, "Total", true), RowKind::total);
    return t;
}

Table season_waste_parts(const SeasonResult& season, const SeasonMoney& money,
                         const Shown& shown) {
    Table t{"waste_parts",
            "Where the water of the season went",
            "The parts add up to the use counted.",
            {{"part", "Part", {}, true},
             {"volume", "Water", shown.volume_format()},
             {"share", "Of the use", {1, "", true}}},
            {}};
    if (!season.total.account) return t;
    const auto& price = money.price();
    if (money.known()) t.columns.push_back({"money", "Worth", {2, money.currency()}});
    if (price) {
        t.columns.push_back({"price", "Price", {6, price->currency + "/" + shown.volume_format().unit}});
    }
    const WasteAccount& a = *season.total.account;
    const double all = shown.volume(a.use());
    const double unit_price = price ? price->amount / shown.volume(price->per) : 0.0;
    const auto row = [&](const std::string& label, double volume, Cell cell, Cell worth_of) {
        std::vector<Cell> cells{text(label), std::move(cell),
                                computed(all > 0.0 ? std::optional(volume / all) : std::nullopt,
                                         "{volume}/{waste_parts[total].volume}")};
        if (money.known()) cells.push_back(std::move(worth_of));
        if (price) {
            Cell p = number(unit_price);
            p.role = CellRole::choice;
            p.limits = Limits{0.0, 1e6, "Price of water. Source: " + price->source};
            cells.push_back(p);
        }
        return cells;
    };
    double worth_of_all = 0.0;
    for (std::size_t i = 0; i < budget::waste_lines().size(); ++i) {
        const auto& line = budget::waste_lines()[i];
        if (!line.in_use) continue;
        const std::string key(line.key);
        const auto worth_of = money.of_line(i, a.*line.part);
        worth_of_all += worth_of.value_or(0.0);
        const double volume = shown.volume(a.*line.part);
        t.add(key, row(short_words(line), volume,
                       computed(volume, "{waste_months[total]." + key + "}"),
                       price ? computed(worth_of, "{volume}*{price}") : number(worth_of)));
    }
    Cell sum = unknown();
    if (money.known()) sum = computed(worth_of_all, "SUM({waste_parts.money})");
    t.add("total", row("Use counted", all, computed(all, "SUM({waste_parts.volume})"), sum),
          RowKind::total);
    if (money.known() && !price) {
        t.footnotes.push_back("Water that the turf did not use is valued at what the bill would be "
                              "less without it.");
    }
    return t;
}

Table season_by_cans(const budget::CanAccount& account, const Shown& shown) {
    Table t{"by_cans",
            "The same by a daily balance at every can",
            "Each can of the catch tests is a bucket of its own; what drains below the roots is "
            "lost. Only the areas with a test are in it, so the sums differ from those above.",
            {{"part", "Part", {}, true}, {"volume", "Water", shown.volume_format()}},
            {}};
    for (const auto& line : budget::can_lines()) {
        t.add(std::string(line.key),
              {text(std::string(line.words.english())), number(shown.volume(account.*line.part))});
    }
    return t;
}

Table season_costs(const SeasonResult& season) {
    const budget::SeasonCost& cost = *season.cost;
    const NumberFormat money{2, cost.currency}, energy{0, "kWh"};
    Table t{"costs",
            "Money and energy by month",
            cost.convention.english(),
            {{"month", "Month", {}, true},
             {"bill", "Bill", money},
             {"not_used", "Worth of what the turf did not use", money},
             {"avoidable", "Worth of what could be saved", money},
             {"energy", "Energy", energy},
             {"energy_cost", "Energy cost", money}},
            {}};
    const auto row = [&](const budget::PeriodCost& c, const std::string& label, bool is_total) {
        const auto cell = [&](const char* column, std::optional<double> value) {
            return is_total ? total(value, "costs", column) : number(value);
        };
        std::optional<double> bill, kilowatt_hours;
        if (c.bill) bill = c.bill->total();
        if (c.energy) kilowatt_hours = c.energy->in(units::kilowatt_hour);
        return std::vector<Cell>{text(label),
                                 cell("bill", bill),
                                 cell("not_used", c.not_used),
                                 cell("avoidable", c.avoidable),
                                 cell("energy", kilowatt_hours),
                                 cell("energy_cost", c.energy_cost)};
    };
    for (std::size_t i = 0; i < season.months.size() && i < cost.months.size(); ++i) {
        t.add(month_key(season.months[i]),
              row(cost.months[i], calendar::format_month_name(season.months[i].month), false));
    }
    t.add("total", row(cost.total, "Total", true), RowKind::total);
    return t;
}

Table season_areas(const SeasonResult& season, const Shown& shown) {
    const NumberFormat v = shown.volume_format();
    Table t{"areas",
            "The areas",
            "",
            {{"area", "Area", {}, true},
             {"name", "Name", {}, true},
             {"size", "Size", shown.size_format()},
             {"use", "Use", v},
             {"need", "Need", v},
             {"budget", "Budget", v},
             {"over_budget", "Over budget", v},
             {"avoidable", "Could be saved", v},
             {"du_lq", "DU_LQ", {3, ""}},
             {"multiplier", "Multiplier", {3, ""}},
             {"method", "Multiplier from", {}, true}},
            {}};
    for (const AreaSeason& a : season.areas) {
        const std::string key = std::to_string(t.rows.size() + 1);
        const SeasonFigures& f = a.total;
        const budget::UniformityChoice* u = a.uniformity.empty() ? nullptr : &a.uniformity.back();
        const auto sum = [&](std::optional<units::Volume> value, const std::string& column) {
            return computed(shown.volume(value), "SUMPRODUCT(({area_months.area}={area})*1,"
                                                 "{area_months." + column + "})");
        };
        Cell saved = unknown();
        if (f.account) saved = number(shown.volume(f.account->avoidable()));
        const std::string tests = u == nullptr || u->tests.empty() ? "" : ", test " + u->tests.front();
        t.add(key, {text(a.area), text(a.name), number(shown.size(a.size)), sum(f.use, "use"), sum(f.need, "need"),
                    sum(f.budget, "budget"), sum(f.over_budget, "over_budget"), saved,
                    with_mark(number(u ? std::optional(u->du_lq.value()) : std::nullopt), u && u->assumed),
                    with_mark(number(u ? std::optional(u->achieved.value()) : std::nullopt), u && u->assumed),
                    text(u ? u->method.english() + tests : "not known")});
    }
    return t;
}

Table season_area_months(const SeasonResult& season, const Shown& shown) {
    const NumberFormat v = shown.volume_format(), ratio{3, ""};
    Table t{"area_months",
            "The account of each area and month",
            "Off target = share x (use - leak). What reaches the area covers the need first; the "
            "rest is unevenness up to the multiplier, then over-scheduling.",
            {{"area", "Area", {}, true},
             {"month", "Month", {}, true},
             {"use", "Use", v},
             {"outside", "Outside the account", v},
             {"need", "Need", v},
             {"budget", "Budget", v},
             {"over_budget", "Over budget", v},
             {"leak_found", "Leak found", v},
             {"off_share", "Off-target share", ratio},
             {"achieved", "Multiplier achieved", ratio},
             {"target", "Multiplier attainable", ratio},
             {"leak", "Leak", v},
             {"off_target", "Off target", v},
             {"reached", "Reached the area", v},
             {"used_by_turf", "Used by the turf", v},
             {"uneven_unavoidable", "Uneven, unavoidable", v},
             {"uneven_avoidable", "Uneven, avoidable", v},
             {"over_scheduled", "Over-scheduled", v},
             {"short", "Short of need", v}},
            {}};
    const std::string shortage(budget::waste_lines().back().key);
    t.columns.back().key = shortage;
    const double target = season.program.target_multiplier().value();
    for (std::size_t i = 0; i < season.areas.size(); ++i) {
        const AreaSeason& a = season.areas[i];
        for (const AreaMonth& m : a.months) {
            std::vector<Cell> cells{text(a.area), text(calendar::format_month_name(m.month)),
                                    with_mark(input(shown.volume(m.use)), m.estimated_share > 0.0),
                                    input(shown.volume(m.outside_account)),
                                    with_mark(input(shown.volume(m.need)), need_assumed(m)),
                                    with_mark(number(shown.volume(m.budget)), need_assumed(m)),
                                    computed(shown.volume(m.over_budget),
                                             "MAX(0,{use}-{outside}-{budget})")};
            if (m.account && m.inputs) {
                const WasteAccount& w = *m.account;
                const auto vol = [&](units::Volume x) { return shown.volume(x); };
                const bool planned = has_any(m, {SeasonFlag::no_catch_test});
                cells.push_back(input(vol(m.inputs->leak)));
                cells.push_back(with_mark(input(m.inputs->off_target.value()),
                                          has_any(m, {SeasonFlag::off_target_assumed})));
                cells.push_back(with_mark(input(m.inputs->achieved.value()), planned));
                cells.push_back(input(target));
                const std::string least = "MIN({achieved},{target})";
                const auto reached = w.use() - w.leak - w.off_target;
                cells.push_back(computed(vol(w.leak), "MIN({leak_found},{use}-{outside})"));
                cells.push_back(
                    computed(vol(w.off_target), "{off_share}*({use}-{outside}-{leak})"));
                cells.push_back(computed(vol(reached), "{use}-{outside}-{leak}-{off_target}"));
                cells.push_back(computed(vol(w.used_by_turf), "MIN({reached},{need})"));
                cells.push_back(computed(vol(w.uneven_unavoidable), "MIN({reached}-{used_by_turf},"
                                         "{need}*(" + least + "-1))"));
                cells.push_back(computed(
                    vol(w.uneven_avoidable),
                    "MIN({reached}-{used_by_turf}-{uneven_unavoidable},{need}*({achieved}-" + least +
                        "))"));
                cells.push_back(computed(vol(w.over_scheduled),
                                         "{reached}-{used_by_turf}-{uneven_unavoidable}-"
                                         "{uneven_avoidable}"));
                cells.push_back(computed(vol(w.short_of_need), "MAX(0,{need}-{reached})"));
                for (std::size_t c = 11; c < cells.size(); ++c) cells[c].role = CellRole::working;
            } else {
                cells.resize(t.columns.size());
            }
            t.add(area_month_key(i, m), std::move(cells));
        }
    }
    return t;
}

}  // namespace evenfall::reports
