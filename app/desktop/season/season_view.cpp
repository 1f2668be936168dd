// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/season/season_view.h"

#include "app/desktop/core_words.h"
#include "app/desktop/month_words.h"
#include "core/calendar/date.h"

#include <QCoreApplication>
#include <QStringList>
#include <array>
#include <utility>

namespace evenfall::desktop {
namespace {

struct SeasonView {
    Q_DECLARE_TR_FUNCTIONS(SeasonView)
};

/// Method, source and assumptions of a topic, from the notes of the result.
void add_notes(Explanation& why, const budget::SeasonResult& result, const char* topic) {
    QStringList methods;
    QStringList sources;
    for (const auto& note : result.notes) {
        if (note.topic != topic) continue;
        methods << core_words(note.method);
        const QString source = core_words(note.source);
        if (!sources.contains(source)) sources << source;
    }
    if (!methods.isEmpty()) why.method += (why.method.isEmpty() ? QString() : QStringLiteral("\n")) + methods.join(QLatin1Char('\n'));
    if (!sources.isEmpty()) why.source += (why.source.isEmpty() ? QString() : QStringLiteral("; ")) + sources.join(QStringLiteral("; "));
}

bool any_assumed(const budget::SeasonResult& result, const char* topic) {
    for (const auto& note : result.notes) {
        if (note.topic == topic && note.assumed) return true;
    }
    return false;
}

template <class Q>
QString named(const QString& name, const std::optional<Q>& value, UnitsShown units, const QString& from) {
    return SeasonView::tr("%1: %2, from %3").arg(name, shown(value, units), from);
}

reports::Cell cell_of(const std::optional<units::Volume>& v, double per_si) {
    return v ? reports::number(v->si() / per_si) : reports::unknown();
}

reports::Table volume_table(const std::vector<std::pair<std::string, QString>>& columns, UnitsShown units) {
    reports::Table table;
    table.key = "months";
    table.title = utf8(SeasonView::tr("By month"));
    table.columns.push_back({"month", utf8(SeasonView::tr("Month")), {}, true});
    const auto unit = volume_unit(units);
    for (const auto& [key, name] : columns) {
        table.columns.push_back({key, utf8(name), {units == UnitsShown::us ? 0 : 1, utf8(unit.name), false}, false});
    }
    return table;
}

reports::SeriesChart chart_of(const reports::Table& table, const std::vector<reports::Tone>& tones,
                              reports::Draw draw, UnitsShown units) {
    reports::SeriesChart chart;
    chart.categories = {table.key, "month"};
    for (std::size_t i = 0; i < tones.size(); ++i) {
        const auto& column = table.columns[i + 1];
        chart.series.push_back({column.title, {table.key, column.key}, draw, tones[i], {}, {}});
    }
    chart.x = {"", ""};
    chart.y = {utf8(SeasonView::tr("Water")), utf8(volume_unit(units).name)};
    return chart;
}

QString volume_or_dash(const std::optional<units::Volume>& v, UnitsShown units) {
    return v ? shown(*v, units) : QStringLiteral("–");
}

}  // namespace

Figure season_figure(const workflow::SeasonAnswer& answer, const budget::SeasonFigures& p, const QString& when,
                     SeasonColumn column, UnitsShown units) {
    const budget::SeasonResult& result = answer.result;
    Figure f;
    Explanation& why = f.why;
    switch (column) {
        case SeasonColumn::use: {
            f.key = QStringLiteral("use");
            f.name = SeasonView::tr("Use");
            f.value = volume_or_dash(p.use, units);
            why.formula = SeasonView::tr("register difference × multiplier × unit of the register, summed over the meters");
            QStringList meters;
            for (const auto& m : answer.inputs.meters) meters << q(m.meter.code);
            why.inputs << SeasonView::tr("meters: %1, from the book").arg(meters.join(QStringLiteral(", ")))
                       << SeasonView::tr("share that was estimated: %1").arg(shown_percent(p.estimated_share));
            why.assumed = p.estimated_share > 0.0;
            add_notes(why, result, "use");
            break;
        }
        case SeasonColumn::need:
            f.key = QStringLiteral("need");
            f.name = SeasonView::tr("Need of the turf");
            f.value = volume_or_dash(p.need, units);
            why.formula = SeasonView::tr("(reference ET × landscape coefficient − effective rain, not below 0) × area, month by month");
            why.inputs << named(SeasonView::tr("reference ET"), p.reference_et, units, SeasonView::tr("the weather record"))
                       << named(SeasonView::tr("effective rain"), p.effective_rain, units, SeasonView::tr("the weather record"));
            for (const char* topic : {"reference ET", "landscape coefficient", "effective rain"}) {
                add_notes(why, result, topic);
                why.assumed = why.assumed || any_assumed(result, topic);
            }
            break;
        case SeasonColumn::budget:
            f.key = QStringLiteral("budget");
            f.name = SeasonView::tr("Budget");
            f.value = volume_or_dash(p.budget, units);
            why.formula = core_words(result.program.formula());
            why.inputs << named(SeasonView::tr("need"), p.need, units, SeasonView::tr("this season's account"));
            why.convention = SeasonView::tr("program: %1").arg(core_words(result.program.title_words()));
            add_notes(why, result, "budget");
            break;
        case SeasonColumn::over_budget:
            f.key = QStringLiteral("over_budget");
            f.name = SeasonView::tr("Over budget");
            f.value = volume_or_dash(p.over_budget, units);
            why.formula = SeasonView::tr("use − budget, where that is above 0, month by month");
            why.inputs << named(SeasonView::tr("use"), p.use, units, SeasonView::tr("the meters"))
                       << named(SeasonView::tr("budget"), p.budget, units, SeasonView::tr("the program"));
            why.convention = SeasonView::tr("a month under budget does not pay for one over it");
            add_notes(why, result, "budget");
            break;
        case SeasonColumn::reference_et:
            f.key = QStringLiteral("reference_et");
            f.name = SeasonView::tr("Reference ET");
            f.value = p.reference_et ? shown(*p.reference_et, units) : QStringLiteral("–");
            why.formula = SeasonView::tr("sum of the days");
            add_notes(why, result, "reference ET");
            why.assumed = any_assumed(result, "reference ET");
            break;
        case SeasonColumn::rain:
            f.key = QStringLiteral("rain");
            f.name = SeasonView::tr("Rain");
            f.value = p.rain ? shown(*p.rain, units) : QStringLiteral("–");
            why.formula = SeasonView::tr("sum of the days");
            why.inputs << named(SeasonView::tr("of it effective"), p.effective_rain, units, SeasonView::tr("the rule below"));
            add_notes(why, result, "effective rain");
            break;
        case SeasonColumn::leak:
            f.key = QStringLiteral("leak");
            f.name = SeasonView::tr("Leak");
            f.value = p.account ? shown(p.account->leak, units) : QStringLiteral("–");
            why.formula = SeasonView::tr("lowest hour of days on which no hour stood still × 24");
            why.method = SeasonView::tr("days that are never zero, see the findings");
            why.source = SeasonView::tr("screens of the meter's own record");
            break;
        case SeasonColumn::avoidable:
            f.key = QStringLiteral("avoidable");
            f.name = SeasonView::tr("Could be saved");
            f.value = p.account ? shown(p.account->avoidable(), units) : QStringLiteral("–");
            why.formula = SeasonView::tr("avoidable unevenness + off target + leak + over-scheduled");
            if (p.account) {
                for (const auto& line : budget::waste_lines()) {
                    why.inputs << QStringLiteral("%1: %2").arg(core_words(line.words), shown((*p.account).*(line.part), units));
                }
            }
            add_notes(why, result, "waste account");
            add_notes(why, result, "uniformity");
            why.assumed = any_assumed(result, "uniformity");
            break;
    }
    why.inputs.prepend(SeasonView::tr("period: %1").arg(when));
    if (p.days_counted > 0.0 && p.days_counted < p.days) {
        why.inputs << SeasonView::tr("days counted: %1 of %2").arg(shown_number(p.days_counted, 0)).arg(p.days);
    }
    for (const auto flag : p.flags) why.inputs << QStringLiteral("* ") + core_words(budget::sentence_of(flag));
    return f;
}

std::vector<Figure> season_figures(const workflow::SeasonAnswer& answer, UnitsShown units) {
    const QString when = month_title(answer.result.from) + QStringLiteral(" – ") + month_title(answer.result.to);
    std::vector<Figure> out;
    for (const auto column : {SeasonColumn::use, SeasonColumn::budget, SeasonColumn::over_budget, SeasonColumn::need,
                              SeasonColumn::avoidable, SeasonColumn::leak}) {
        out.push_back(season_figure(answer, answer.result.total, when, column, units));
    }
    return out;
}

ChartView use_chart(const workflow::SeasonAnswer& answer, UnitsShown units) {
    auto table = volume_table({{"use", SeasonView::tr("Use")}, {"budget", SeasonView::tr("Budget")}, {"need", SeasonView::tr("Need")}}, units);
    const double per = volume_unit(units).per_si;
    for (const auto& m : answer.result.months) {
        table.add(calendar::format_month(m.month), {reports::text(utf8(month_title(m.month))), cell_of(m.use, per),
                                                    cell_of(m.budget, per), cell_of(m.need, per)});
    }
    ChartView view{chart_of(table, {reports::Tone::use, reports::Tone::budget, reports::Tone::need}, reports::Draw::bar, units),
                   table, {}};
    const auto& over = answer.result.total.over_budget;
    view.sentence = over && over->si() > 0.0
                        ? SeasonView::tr("Over the season %1 more than the budget went through the meters.").arg(shown(*over, units))
                        : SeasonView::tr("What went through the meters, beside what the program grants and the turf needed.");
    return view;
}

ChartView cumulative_chart(const workflow::SeasonAnswer& answer, UnitsShown units) {
    auto table = volume_table({{"use", SeasonView::tr("Use so far")}, {"budget", SeasonView::tr("Budget so far")}}, units);
    const double per = volume_unit(units).per_si;
    std::optional<units::Volume> use{units::Volume{}};
    std::optional<units::Volume> budget{units::Volume{}};
    const auto add = [](std::optional<units::Volume>& sum, const std::optional<units::Volume>& more) {
        // A month that is not known ends the line: what follows could not be compared.
        if (sum && more) *sum += *more;
        else sum.reset();
    };
    for (const auto& m : answer.result.months) {
        add(use, m.use);
        add(budget, m.budget);
        table.add(calendar::format_month(m.month),
                  {reports::text(utf8(month_title(m.month))), cell_of(use, per), cell_of(budget, per)});
    }
    return {chart_of(table, {reports::Tone::use, reports::Tone::budget}, reports::Draw::line, units), table,
            SeasonView::tr("Use and budget added up from the first month on; where a month is not known the line ends.")};
}

ChartView waste_chart(const workflow::SeasonAnswer& answer, UnitsShown units) {
    static constexpr std::array tones{reports::Tone::need, reports::Tone::uneven, reports::Tone::uneven_avoidable,
                                      reports::Tone::off_target, reports::Tone::leak, reports::Tone::over_scheduled};
    const QStringList names{SeasonView::tr("Used by the turf"), SeasonView::tr("Uneven, unavoidable"),
                            SeasonView::tr("Uneven, avoidable"), SeasonView::tr("Off target"),
                            SeasonView::tr("Leak"), SeasonView::tr("Over-scheduled")};
    std::vector<std::pair<std::string, QString>> columns;
    std::vector<units::Volume budget::WasteAccount::*> parts;
    for (const auto& line : budget::waste_lines()) {
        if (!line.in_use) continue;
        columns.emplace_back(std::string(line.key), names.value(static_cast<int>(columns.size())));
        parts.push_back(line.part);
    }
    auto table = volume_table(columns, units);
    const double per = volume_unit(units).per_si;
    for (const auto& m : answer.result.months) {
        std::vector<reports::Cell> cells{reports::text(utf8(month_title(m.month)))};
        for (const auto part : parts) {
            cells.push_back(m.account ? reports::number(((*m.account).*part).si() / per) : reports::unknown());
        }
        table.add(calendar::format_month(m.month), std::move(cells));
    }
    return {chart_of(table, {tones.begin(), tones.end()}, reports::Draw::stacked, units), table,
            SeasonView::tr("Each bar is the metered water of a month, split by where it went; the parts add up to the use.")};
}

MonthsTable months_table(const workflow::SeasonAnswer& answer, UnitsShown units) {
    MonthsTable out;
    out.heads << SeasonView::tr("Month");
    static constexpr std::array columns{SeasonColumn::use, SeasonColumn::budget, SeasonColumn::over_budget,
                                        SeasonColumn::need, SeasonColumn::reference_et, SeasonColumn::rain,
                                        SeasonColumn::avoidable, SeasonColumn::leak};
    const auto add = [&](const QString& when, const budget::SeasonFigures& p, bool strong) {
        std::vector<FigureCell> row;
        row.push_back({when, std::nullopt, false, strong, false});
        for (const auto column : columns) {
            Figure f = season_figure(answer, p, when, column, units);
            if (out.heads.size() <= static_cast<int>(columns.size())) out.heads << f.name;
            const QString text = f.value;
            row.push_back({text, std::move(f), true, strong, false});
        }
        out.rows.push_back(std::move(row));
    };
    for (const auto& m : answer.result.months) add(month_title(m.month), m, false);
    add(SeasonView::tr("Together"), answer.result.total, true);
    return out;
}

MonthsTable areas_table(const workflow::SeasonAnswer& answer, UnitsShown units) {
    MonthsTable out;
    out.heads << SeasonView::tr("Area") << SeasonView::tr("Size") << SeasonView::tr("Multiplier");
    static constexpr std::array columns{SeasonColumn::use, SeasonColumn::budget, SeasonColumn::over_budget,
                                        SeasonColumn::need, SeasonColumn::avoidable, SeasonColumn::leak};
    const QString when = month_title(answer.result.from) + QStringLiteral(" – ") + month_title(answer.result.to);
    for (const auto& area : answer.result.areas) {
        std::vector<FigureCell> row;
        row.push_back({q(area.name.empty() ? area.area : area.name), std::nullopt, false, false, false});
        row.push_back({shown(area.size, units), std::nullopt, true, false, false});
        Figure m;
        m.name = SeasonView::tr("Run-time multiplier of %1").arg(q(area.area));
        m.value = QStringLiteral("–");
        if (!area.uniformity.empty()) {
            const auto& u = area.uniformity.back();
            m.value = QStringLiteral("× ") + shown_number(u.achieved.value(), 2);
            m.why.method = core_words(u.method);
            m.why.source = core_words(u.source);
            m.why.assumed = u.assumed;
            m.why.formula = SeasonView::tr("1 ÷ DU of the low half from cans; else the planning value of the head type");
            for (const auto& t : u.tests) m.why.inputs << SeasonView::tr("catch test %1, from the book").arg(q(t));
            m.why.inputs << SeasonView::tr("DU, low quarter: %1").arg(shown_percent(u.du_lq.value()));
        }
        const QString value = m.value;
        row.push_back({value, std::move(m), true, false, false});
        for (const auto column : columns) {
            Figure f = season_figure(answer, area.total, when, column, units);
            if (out.heads.size() <= static_cast<int>(columns.size()) + 2) out.heads << f.name;
            const QString text = f.value;
            row.push_back({text, std::move(f), true, false, false});
        }
        out.rows.push_back(std::move(row));
    }
    return out;
}

}  // namespace evenfall::desktop
