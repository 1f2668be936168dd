// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/season_report.h"

#include "reports/content/season_money.h"
#include "reports/content/season_tables.h"

#include "core/budget/season_flag.h"
#include "core/units/number.h"

#include <algorithm>
#include <map>

namespace evenfall::reports {
namespace {

using budget::SeasonFlag;
using budget::SeasonMonth;
using budget::SeasonResult;

std::string span_of(const SeasonResult& s) {
    return calendar::format_month_name(s.from) + " to " + calendar::format_month_name(s.to);
}

/// ", worth 1,234.00 USD", or nothing.
std::string worth_of(std::optional<double> amount, const SeasonMoney& money) {
    if (!amount) return {};
    return ", worth " + units::format_grouped(*amount, 2) + " " + money.currency();
}

/// What to enter so that the season can be judged.
std::string what_is_needed(const SeasonResult& s) {
    std::vector<std::string> needed;
    if (s.areas.empty()) needed.push_back("its areas with their size and plants");
    if (!s.total.use) needed.push_back("its meters, with readings from before the first month to after the last one");
    if (!s.total.need) {
        needed.push_back("weather of nearly every day: highest and lowest temperature at least, better with radiation, "
                         "humidity and wind, and rain");
    }
    std::string line = "To judge this season the book still needs ";
    for (std::size_t i = 0; i < needed.size(); ++i) line += (i == 0 ? "" : "; ") + needed[i];
    return line + ".";
}

void sentences(const SeasonResult& s, const SeasonMoney& money, const Frame& frame, Answer& answer) {
    const auto& t = s.total;
    if (!t.use) {
        answer.sentences.push_back("No metered use is recorded from " + span_of(s) +
                                   ", so nothing can be said about it.");
    } else {
        answer.sentences.push_back("From " + span_of(s) + " the meters counted " +
                                   both(*t.use, frame.units) + ".");
    }
    if (t.need) {
        std::string line = "In the months that can be judged the turf needed " +
                           both(*t.need, frame.units);
        if (t.budget) {
            line += "; the program \"" + s.program.title + "\" grants " +
                    both(*t.budget, frame.units);
        }
        answer.sentences.push_back(line + ".");
    } else {
        answer.sentences.push_back("The need of the turf is not known: the weather record does not "
                                   "allow it.");
    }
    if (!t.use || !t.need) answer.sentences.push_back(what_is_needed(s));
    if (t.over_budget) {
        const auto over = std::count_if(s.months.begin(), s.months.end(), [](const SeasonMonth& m) {
            return m.over_budget && m.over_budget->si() > 0.0;
        });
        const auto judged = std::count_if(s.months.begin(), s.months.end(),
                                          [](const SeasonMonth& m) { return m.over_budget; });
        std::string line = std::to_string(over) + " of " + std::to_string(judged) +
                           " months were over the budget, by " + both(*t.over_budget, frame.units) +
                           " in all";
        answer.sentences.push_back(line + worth_of(money.over_budget(), money) + ".");
    }
    if (t.account && t.account->use().si() > 0.0) {
        const auto& a = *t.account;
        answer.sentences.push_back(
            "Of the water in the account the turf used " + percent(a.used_by_turf / a.use()) +
            "; " + percent(a.avoidable() / a.use()) + " (" + both(a.avoidable(), frame.units) +
            ") could be saved by repair, more even coverage or shorter runs" +
            worth_of(money.avoidable(), money) + ".");
        if (a.short_of_need.si() > 0.0) {
            answer.sentences.push_back("In some areas and months the turf got " +
                                       both(a.short_of_need, frame.units) +
                                       " less than it needed.");
        }
    }
}

Table figures(const SeasonResult& s, const Shown& shown) {
    Table t{"answer_figures",
            "The season in figures",
            "",
            {{"figure", "Figure", {}, true}, {"value", "Value", shown.volume_format()}},
            {}};
    const auto add = [&](const char* key, const char* words, std::optional<units::Volume> v,
                         const char* name) {
        Cell cell = computed(shown.volume(v), std::string("{=") + name + "}");
        cell.format = shown.volume_format();
        t.add(key, {text(words), cell});
    };
    add("use", "Metered use", s.total.use, "season_use");
    add("need", "Need of the turf", s.total.need, "season_need");
    add("budget", "Budget", s.total.budget, "season_budget");
    add("over", "Over budget, summed over the months", s.total.over_budget, "season_over_budget");
    return t;
}

Chart use_chart(const SeasonResult& s, const Shown& shown) {
    SeriesChart c;
    c.categories = {"months", "month"};
    c.series = {{"Use", {"months", "use_counted"}, Draw::bar, Tone::use, {}, {}},
                {"Budget", {"months", "budget"}, Draw::bar, Tone::budget, {}, {}},
                {"Need", {"months", "need"}, Draw::bar, Tone::need, {}, {}}};
    c.x = {"Month", ""};
    c.y = {"Water", shown.volume_format().unit};
    return {"use_budget", "Use against budget",
            "Months whose dark bar stands above the hatched one used more than \"" +
                s.program.title + "\" grants.",
            c};
}

Chart cumulative_chart(const Shown& shown) {
    SeriesChart c;
    c.categories = {"cumulative", "month"};
    c.series = {{"Use", {"cumulative", "use"}, Draw::line, Tone::use, {}, {}},
                {"Budget", {"cumulative", "budget"}, Draw::line, Tone::budget, {}, {}},
                {"Need", {"cumulative", "need"}, Draw::line, Tone::need, {}, {}}};
    c.x = {"Month", ""};
    c.y = {"Water since the start", shown.volume_format().unit};
    return {"cumulative_use", "Use added up over the season",
            "The distance between the line of use and the dashed line of the budget is what the "
            "season is over or under so far.",
            c};
}

Chart waste_months_chart(const Shown& shown) {
    SeriesChart c;
    c.categories = {"waste_months", "month"};
    for (const auto& line : budget::waste_lines()) {
        if (!line.in_use) continue;
        c.series.push_back({short_words(line), {"waste_months", std::string(line.key)},
                            Draw::stacked, tone_of(line.key), {}, {}});
    }
    c.x = {"Month", ""};
    c.y = {"Water", shown.volume_format().unit};
    return {"waste_by_month", "Where the water went, by month",
            "Each bar is the metered use of a month; only its lowest part was used by the turf.", c};
}

Chart waste_parts_chart(const Shown& shown) {
    SeriesChart c;
    c.categories = {"waste_parts", "part"};
    c.series = {{"Water", {"waste_parts", "volume"}, Draw::bar, Tone::use, {}, {}}};
    c.x = {"Part", ""};
    c.y = {"Water", shown.volume_format().unit};
    c.horizontal = true;
    return {"waste_season", "Where the water of the season went",
            "The parts add up to the metered use that can be judged.", c};
}

Chart areas_chart(const Shown& shown) {
    SeriesChart c;
    c.categories = {"areas", "area"};
    c.series = {{"Over budget", {"areas", "over_budget"}, Draw::bar, Tone::use, {}, {}},
                {"Could be saved", {"areas", "avoidable"}, Draw::bar, Tone::uneven_avoidable, {}, {}}};
    c.x = {"Area", ""};
    c.y = {"Water", shown.volume_format().unit};
    c.horizontal = true;
    return {"areas_over", "Areas over budget and what could be saved",
            "Long bars are where to look first.", c};
}

void gaps(const SeasonResult& s, Report& report) {
    if (s.areas.empty()) report.gaps.push_back("No area of the site is recorded.");
    if (!s.total.use) report.gaps.push_back("No metered use of these months is recorded.");
    std::map<SeasonFlag, std::vector<std::string>> months;
    for (const SeasonMonth& m : s.months) {
        for (const SeasonFlag flag : m.flags) {
            months[flag].push_back(calendar::format_month_name(m.month));
        }
    }
    for (const auto& [flag, names] : months) {
        std::string line(budget::sentence_of(flag).english());
        if (!line.empty() && line.back() == '.') line.pop_back();
        line += " (";
        if (names.size() == s.months.size() && names.size() > 1) {
            line += "all months";
        } else {
            for (std::size_t i = 0; i < names.size(); ++i) line += (i == 0 ? "" : ", ") + names[i];
        }
        report.gaps.push_back(line + ").");
    }
}

std::string capital(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 32);
    }
    return text;
}

/// "monthly table fao56_cool, July" without the month.
std::string without_month(const std::string& method) {
    static const char* const names[] = {"January", "February", "March",     "April",   "May",
                                        "June",    "July",     "August",    "September", "October",
                                        "November", "December"};
    for (const char* name : names) {
        const std::string tail = std::string(", ") + name;
        if (method.ends_with(tail)) {
            return method.substr(0, method.size() - tail.size()) + ", by the month";
        }
    }
    return method;
}

void notes(const SeasonResult& s, const std::optional<WaterPrice>& price, Report& report) {
    for (const budget::Note& n : s.notes) {
        Note note{capital(n.topic), without_month(n.method.english()), "", n.source.english(), n.assumed};
        // One line for the twelve months of a set of coefficients.
        if (std::find(report.notes.begin(), report.notes.end(), note) == report.notes.end()) {
            report.notes.push_back(std::move(note));
        }
    }
    report.notes.push_back({"Budget", "program \"" + s.program.title + "\": " + s.program.formula().english(),
                            "by the month; months are never netted", s.program.source, false});
    report.notes.push_back({"Waste account", "multiplier method, area by area and month by month",
                            "the parts but the shortage add up to the metered use",
                            "derived from the definition of the run-time multiplier", false});
    if (s.cost) {
        report.notes.push_back(
            {"Money and energy", s.cost->convention.english(), "", s.cost->source.english(), false});
    }
    if (price && !s.cost) {
        report.notes.push_back({"Money", "volume x price of " +
                                             units::format_shortest(price->amount) + " " +
                                             price->currency + " for " +
                                             both(price->per, UnitsShown::us),
                                "water alone, without energy and sewer", price->source, false});
    }
}

/// Losses of one kind at one place.
struct Loss {
    std::string what;
    std::string why;
    units::Volume volume;
    units::Volume budget::WasteAccount::* part;  ///< the line of the account it belongs to
};

std::vector<Loss> losses_of(const SeasonResult& s) {
    std::vector<Loss> losses;
    std::map<std::string, units::Volume> leaks;
    for (const auto& a : s.areas) {
        if (!a.total.account) continue;
        const auto& w = *a.total.account;
        const std::string name = a.name.empty() ? a.area : a.name + " (" + a.area + ")";
        if (w.leak.si() > 0.0) leaks[a.meter] += w.leak;
        const auto share = [&](units::Volume v) { return percent(v / w.use()) + " of its water"; };
        losses.push_back({"Shorten the runs on " + name,
                          share(w.over_scheduled) +
                              " was beyond what the turf needed even with the coverage it has.",
                          w.over_scheduled, &budget::WasteAccount::over_scheduled});
        std::string even = share(w.uneven_avoidable) +
                           " went to keep the driest ground alive and could be saved with the "
                           "coverage that the program takes as attainable";
        if (!a.uniformity.empty()) {
            const auto& u = a.uniformity.back();
            even += "; its DU_LQ is " + units::format_fixed(u.du_lq.value(), 2);
            if (u.assumed) even += ", a planning value, not a test: test it first";
        }
        losses.push_back({"Water " + name + " more evenly", even + ".", w.uneven_avoidable,
                          &budget::WasteAccount::uneven_avoidable});
        losses.push_back({"Keep the water on " + name, share(w.off_target) + " fell outside it.",
                          w.off_target, &budget::WasteAccount::off_target});
    }
    for (const auto& [meter, volume] : leaks) {
        losses.push_back({"Find and repair the leak behind meter " + meter,
                          "Its readings show water running when nothing should run.", volume,
                          &budget::WasteAccount::leak});
    }
    return losses;
}

}  // namespace

std::vector<Fix> season_fixes(const SeasonResult& s, const std::optional<WaterPrice>& price,
                              const Shown& shown) {
    const SeasonMoney money(s, price);
    auto losses = losses_of(s);
    std::stable_sort(losses.begin(), losses.end(),
                     [](const Loss& a, const Loss& b) { return a.volume > b.volume; });
    std::vector<Fix> fixes;
    for (const Loss& loss : losses) {
        if (fixes.size() == 3 || !(loss.volume.si() > 0.0)) break;
        Cell worth_cell = unknown();
        for (std::size_t i = 0; i < budget::waste_lines().size(); ++i) {
            if (budget::waste_lines()[i].part != loss.part) continue;
            if (const auto amount = money.of_line(i, loss.volume)) {
                worth_cell = number(*amount, {2, money.currency()});
            }
        }
        fixes.push_back({loss.what, loss.why,
                         number(shown.volume(loss.volume), shown.volume_format()), worth_cell});
    }
    return fixes;
}

Report season_report(const SeasonResult& s, const std::optional<WaterPrice>& price,
                     const Frame& frame) {
    const Shown shown(frame.units);
    const std::string place = s.name.empty() ? s.site : s.name;
    Report report = framed("season", "Season report", place + ", " + span_of(s), frame);
    const SeasonMoney money(s, price);
    sentences(s, money, frame, report.answer);
    report.answer.fixes = season_fixes(s, price, shown);

    const Table months = season_months(s, shown);
    report.sections.push_back({"months",
                               "Use against budget",
                               {use_chart(s, shown), months}});
    report.sections.push_back({"cumulative",
                               "The season added up",
                               {cumulative_chart(shown), season_cumulative(s, shown)}});
    if (s.total.account) {
        report.sections.push_back({"waste",
                                   "Where the water went",
                                   {waste_parts_chart(shown), season_waste_parts(s, money, shown),
                                    waste_months_chart(shown), season_waste_months(s, shown)}});
        if (s.total.by_cans) {
            report.sections.back().blocks.emplace_back(season_by_cans(*s.total.by_cans, shown));
        }
    }
    if (s.cost) {
        report.sections.push_back({"costs", "Money and energy", {season_costs(s)}});
    }
    if (!s.areas.empty()) {
        report.sections.push_back(
            {"areas", "The areas", {areas_chart(shown), season_areas(s, shown)}});
        report.sections.push_back({"account",
                                   "How the account was made",
                                   {season_area_months(s, shown)}});
    }
    if (!s.findings.empty()) {
        Section findings{"findings", "What to look at", {}};
        for (const auto& f : s.findings) {
            findings.blocks.emplace_back(Paragraph{capital(f.record.english()) + ": " + f.sentence.english()});
        }
        report.sections.push_back(std::move(findings));
    }
    if (s.total.use && s.total.need && s.total.budget && s.total.over_budget) {
        report.answer.figures = figures(s, shown);
    }
    notes(s, price, report);
    gaps(s, report);
    return report;
}

}  // namespace evenfall::reports
