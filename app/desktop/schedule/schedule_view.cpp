// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/schedule/schedule_view.h"

#include "app/desktop/core_words.h"
#include "app/desktop/month_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>

namespace evenfall::desktop {
namespace {

using schedule::ScheduleMonth;
using schedule::StationWeek;

/// Context of the strings of this file.
struct ScheduleView {
    Q_DECLARE_TR_FUNCTIONS(ScheduleView)
};

QString clock_text(std::chrono::minutes after_midnight) {
    const auto m = after_midnight.count() % (24 * 60);
    return QStringLiteral("%1:%2").arg(m / 60, 2, 10, QLatin1Char('0')).arg(m % 60, 2, 10, QLatin1Char('0'));
}

QString days_text(const std::vector<int>& weekdays) {
    QStringList names;
    for (const int d : weekdays) names << day_title(d);
    return names.join(QLatin1Char(' '));
}

/// Assumptions that concern this station's area.
QStringList assumed_of(const schedule::BaseSchedule& s, const StationWeek& station) {
    QStringList out;
    for (const auto& a : s.assumptions) {
        if (a.area == station.area) out << core_words(a.says);
    }
    return out;
}

Figure figure_of(const workflow::ScheduleAnswer& answer, const ScheduleMonth& month, const StationWeek& s,
                 const QString& key, const QString& name, const QString& value, const QString& formula,
                 UnitsShown units) {
    Figure f;
    f.key = key;
    f.name = ScheduleView::tr("%1, station %2, %3").arg(name, q(s.station), month_title(month.month));
    f.value = value;
    f.why.formula = formula;
    f.why.inputs
        << ScheduleView::tr("rate: %1, from %2").arg(shown(s.rate, units), core_words(s.rate_source))
        << ScheduleView::tr("net need of a week: %1, from the weather of the months chosen").arg(shown(s.net, units))
        << ScheduleView::tr("gross, for uneven water: %1, from net × run-time multiplier").arg(shown(s.gross, units))
        << ScheduleView::tr("days between irrigations that the soil allows: %1, from the soil of area %2")
               .arg(s.days_between)
               .arg(q(s.area))
        << ScheduleView::tr("times a week: %1; cycles each time: %2 of %3 min, soak %4 min")
               .arg(s.times_a_week)
               .arg(s.cycles)
               .arg(s.cycle_minutes)
               .arg(s.soak_minutes);
    const QStringList assumed = assumed_of(answer.schedule, s);
    for (const QString& a : assumed) f.why.inputs << QStringLiteral("* ") + a;
    f.why.assumed = !assumed.isEmpty();
    f.why.method = core_words(answer.schedule.method);
    if (answer.schedule.rule) f.why.convention = ScheduleView::tr("allowed: %1").arg(rule_text(*answer.schedule.rule));
    f.why.source = core_words(answer.schedule.source);
    return f;
}

const StationWeek* station_in(const ScheduleMonth& month, const std::string& code) {
    const auto at = std::find_if(month.stations.begin(), month.stations.end(), [&](const auto& s) { return s.station == code; });
    return at == month.stations.end() ? nullptr : &*at;
}

QString minutes_formula() {
    return ScheduleView::tr("gross depth of a week ÷ times a week ÷ rate, in whole minutes, × times a week");
}

FigureCell minutes_cell(const workflow::ScheduleAnswer& answer, const ScheduleMonth& month, const StationWeek& s,
                        UnitsShown units) {
    const QString value = shown_number(s.minutes_a_week, 0);
    return {value,
            figure_of(answer, month, s, QStringLiteral("minutes_a_week"), ScheduleView::tr("Minutes a week"),
                      ScheduleView::tr("%1 min").arg(value), minutes_formula(), units),
            true, false, false};
}

Figure shortfall(const workflow::ScheduleAnswer& answer, const ScheduleMonth& month) {
    Figure f;
    f.key = QStringLiteral("short");
    f.name = ScheduleView::tr("Does not fit, %1").arg(month_title(month.month));
    f.value = ScheduleView::tr("%1 min a week (%2)")
                  .arg(shown_number(month.short_minutes_a_week, 0), shown_percent(month.short_share, 0));
    f.why.formula = ScheduleView::tr("minutes run beyond the end of the window, summed over the days of a week");
    if (answer.schedule.rule) f.why.inputs << ScheduleView::tr("allowed: %1").arg(rule_text(*answer.schedule.rule));
    f.why.method = core_words(answer.schedule.method);
    f.why.source = core_words(answer.schedule.source);
    return f;
}

}  // namespace

QString day_title(int weekday) {
    return ScheduleView::tr("Mon Tue Wed Thu Fri Sat Sun").split(QLatin1Char(' ')).value(weekday);
}

QString rule_text(const schedule::WateringRule& rule) {
    QStringList days;
    for (int d = 0; d < 7; ++d) {
        if (rule.days.at(static_cast<std::size_t>(d))) days << day_title(d);
    }
    return ScheduleView::tr("%1, %2–%3, %4 at once")
        .arg(days.join(QStringLiteral(" ")), clock_text(rule.starts), clock_text(rule.ends))
        .arg(rule.stations_at_once);
}

FigureRows minutes_table(const workflow::ScheduleAnswer& answer, UnitsShown units) {
    FigureRows t;
    const auto& months = answer.schedule.months;
    if (months.empty()) return t;
    t.heads << ScheduleView::tr("Station, %1").arg(static_cast<int>(months.front().month.year()));
    for (const auto& m : months) t.heads << month_name(m.month);
    for (const auto& first : months.front().stations) {
        std::vector<FigureCell> row{text_cell(q(first.station))};
        for (const auto& m : months) {
            const StationWeek* s = station_in(m, first.station);
            row.push_back(s ? minutes_cell(answer, m, *s, units) : text_cell(QStringLiteral("–"), true));
        }
        t.rows.push_back(std::move(row));
    }
    if (!answer.schedule.rule) return t;
    std::vector<FigureCell> last{{ScheduleView::tr("Does not fit"), std::nullopt, false, true, false}};
    for (const auto& m : months) {
        last.push_back({shown_number(m.short_minutes_a_week, 0), shortfall(answer, m), true, true, m.short_minutes_a_week > 0});
    }
    t.rows.push_back(std::move(last));
    return t;
}

FigureRows month_table(const workflow::ScheduleAnswer& answer, std::size_t index, UnitsShown units) {
    FigureRows t;
    t.heads << ScheduleView::tr("Station") << ScheduleView::tr("Rate") << ScheduleView::tr("Net a week")
            << ScheduleView::tr("Gross a week") << ScheduleView::tr("Days between") << ScheduleView::tr("Times a week")
            << ScheduleView::tr("Cycles × min") << ScheduleView::tr("Soak, min") << ScheduleView::tr("Min a week")
            << ScheduleView::tr("Days");
    const ScheduleMonth& month = answer.schedule.months.at(index);
    for (const StationWeek& s : month.stations) {
        const auto cell = [&](const char* key, const QString& name, const QString& value, const QString& formula) {
            return FigureCell{value, figure_of(answer, month, s, QLatin1String(key), name, value, formula, units), true, false, false};
        };
        std::vector<FigureCell> row{text_cell(q(s.station))};
        row.push_back(cell("rate", ScheduleView::tr("Rate"), shown(s.rate, units), ScheduleView::tr("as tested or entered")));
        row.push_back(cell("net", ScheduleView::tr("Net a week"), shown(s.net, units),
                           ScheduleView::tr("need of the month × 7 ÷ days of the month")));
        row.push_back(cell("gross", ScheduleView::tr("Gross a week"), shown(s.gross, units),
                           ScheduleView::tr("net a week × run-time multiplier of the area")));
        row.push_back(cell("days_between", ScheduleView::tr("Days between"), QString::number(s.days_between),
                           ScheduleView::tr("allowed depletion × available water ÷ ET of a day, whole days, 1 to 7")));
        row.push_back(cell("times", ScheduleView::tr("Times a week"), QString::number(s.times_a_week),
                           ScheduleView::tr("7 ÷ days between, rounded up, not more than the days allowed")));
        row.push_back(cell("cycles", ScheduleView::tr("Cycles"),
                           QStringLiteral("%1 × %2").arg(s.cycles).arg(s.cycle_minutes),
                           ScheduleView::tr("run ÷ longest run before water leaves the ground, rounded up")));
        row.push_back(cell("soak", ScheduleView::tr("Soak"), QString::number(s.soak_minutes),
                           ScheduleView::tr("water that may stand ÷ intake rate of the soil")));
        row.push_back(minutes_cell(answer, month, s, units));
        FigureCell days = text_cell(days_text(s.weekdays));
        if (s.too_few_days) {
            days.text += QStringLiteral("  ") + ScheduleView::tr("(too few for the soil)");
            days.warn = true;
        }
        row.push_back(std::move(days));
        t.rows.push_back(std::move(row));
    }
    return t;
}

FigureRows starts_table(const workflow::ScheduleAnswer& answer, std::size_t index) {
    FigureRows t;
    const auto& rule = answer.schedule.rule;
    t.heads << ScheduleView::tr("Day") << (rule ? ScheduleView::tr("Start") : ScheduleView::tr("After opening"))
            << ScheduleView::tr("Station") << ScheduleView::tr("Minutes") << ScheduleView::tr("Cycle");
    const ScheduleMonth& month = answer.schedule.months.at(index);
    for (const auto& day : month.days) {
        for (const auto& start : day.plan.starts) {
            const StationWeek& s = month.stations.at(start.station);
            const std::chrono::minutes at{start.start};
            t.rows.push_back({text_cell(day_title(day.weekday)), text_cell(clock_text(rule ? rule->starts + at : at)),
                              text_cell(q(s.station)), text_cell(QString::number(start.minutes), true),
                              text_cell(ScheduleView::tr("%1 of %2").arg(start.cycle).arg(s.cycles))});
        }
    }
    return t;
}

std::vector<Figure> schedule_figures(const workflow::ScheduleAnswer& answer) {
    const auto& s = answer.schedule;
    std::vector<Figure> figures;
    const auto add = [&](const char* key, const QString& name, const QString& value, const QString& formula) {
        Figure f;
        f.key = QLatin1String(key);
        f.name = name;
        f.value = value;
        f.why.formula = formula;
        f.why.method = core_words(s.method);
        f.why.source = core_words(s.source);
        figures.push_back(std::move(f));
    };
    const std::size_t stations = s.months.empty() ? 0 : s.months.front().stations.size();
    add("stations", ScheduleView::tr("Stations scheduled"), QString::number(stations),
        ScheduleView::tr("stations with a known rate on an area with a known need; an area that was tested and has none counts as one"));
    add("months", ScheduleView::tr("Months known"), QString::number(s.months.size()),
        ScheduleView::tr("calendar months whose need is known for every area, means over the years chosen"));
    add("left_out", ScheduleView::tr("Left out"), QString::number(s.left_out.size()),
        ScheduleView::tr("stations without a rate or a need, areas without a station"));
    for (const auto& u : s.left_out) figures.back().why.inputs << q(u.station) + QStringLiteral(": ") + core_words(u.reason);
    const auto worst = std::max_element(s.months.begin(), s.months.end(), [](const auto& a, const auto& b) {
        return a.short_minutes_a_week < b.short_minutes_a_week;
    });
    if (worst != s.months.end()) {
        Figure f = shortfall(answer, *worst);
        f.key = QStringLiteral("worst");
        if (!s.rule) {
            f.name = ScheduleView::tr("Water window");
            f.value = ScheduleView::tr("none kept");
        } else if (worst->short_minutes_a_week == 0) {
            f.name = ScheduleView::tr("Water window");
            f.value = ScheduleView::tr("every run fits");
        }
        figures.push_back(std::move(f));
    }
    return figures;
}

QStringList schedule_findings(const workflow::ScheduleAnswer& answer) {
    QStringList out;
    const auto& s = answer.schedule;
    std::map<std::string, QStringList> few;
    for (const auto& m : s.months) {
        if (m.short_minutes_a_week > 0) {
            out << ScheduleView::tr("%1: %2 minutes a week, %3 of the runs, do not fit into the window.")
                       .arg(month_title(m.month), shown_number(m.short_minutes_a_week, 0), shown_percent(m.short_share, 0));
        }
        for (const auto& w : m.stations) {
            if (w.too_few_days) few[w.station] << month_name(m.month);
        }
    }
    for (const auto& [station, months] : few) {
        out << ScheduleView::tr("Station %1: the soil asks for more days than are allowed in %2.")
                   .arg(q(station), months.join(QStringLiteral(", ")));
    }
    for (const auto& u : s.left_out) out << ScheduleView::tr("Left out: %1, %2").arg(q(u.station), core_words(u.reason));
    for (const auto& a : s.assumptions) out << ScheduleView::tr("Assumed: %1").arg(core_words(a.says));
    return out;
}

}  // namespace evenfall::desktop
