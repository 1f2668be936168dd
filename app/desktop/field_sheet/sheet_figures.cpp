// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/sheet_figures.h"

#include "app/desktop/core_words.h"
#include "core/audit/multiplier.h"

#include <QCoreApplication>

namespace evenfall::desktop {
namespace {

/// Context of the strings of this file.
struct SheetFigures {
    Q_DECLARE_TR_FUNCTIONS(SheetFigures)
};

struct Maker {
    const FieldSheet& sheet;
    UnitsShown units;
    std::vector<Figure> figures;

    Figure& add(const char* key, const QString& name, const QString& value) {
        Figure f;
        f.key = QLatin1String(key);
        f.name = name;
        f.value = value;
        if (sheet.result()) {
            f.why.method = core_words(sheet.result()->layout) + QStringLiteral("; ") + core_words(sheet.result()->weights);
            f.why.inputs << SheetFigures::tr("cans that count: %1 of %2 read, from this sheet")
                                .arg(sheet.result()->cans)
                                .arg(sheet.result()->cans_read);
        }
        figures.push_back(std::move(f));
        return figures.back();
    }
};

}  // namespace

QString words_of(audit::QuarterRule rule) {
    switch (rule) {
        case audit::QuarterRule::whole_cans: return SheetFigures::tr("whole cans that fit into a quarter");
        case audit::QuarterRule::nearest: return SheetFigures::tr("the number of cans nearest to a quarter");
        case audit::QuarterRule::round_up: return SheetFigures::tr("cans until a quarter is reached");
        case audit::QuarterRule::part_can: return SheetFigures::tr("exactly a quarter, the last can in part");
    }
    return {};
}

QString short_words_of(audit::QuarterRule rule) {
    switch (rule) {
        case audit::QuarterRule::whole_cans: return SheetFigures::tr("whole cans");
        case audit::QuarterRule::nearest: return SheetFigures::tr("nearest number");
        case audit::QuarterRule::round_up: return SheetFigures::tr("rounded up");
        case audit::QuarterRule::part_can: return SheetFigures::tr("part of a can");
    }
    return {};
}

std::vector<Figure> sheet_figures(const FieldSheet& sheet, UnitsShown units) {
    Maker m{sheet, units, {}};
    const auto& r = sheet.result();
    const QString none = QStringLiteral("–");
    const QString christiansen = r ? core_words(r->coefficient) : SheetFigures::tr("Christiansen coefficient");
    {
        const auto& interval = sheet.interval();
        QString value = r ? shown_percent(r->du_lq.value()) : none;
        if (r && interval) {
            value += QStringLiteral(" (%1–%2)").arg(shown_number(interval->low * 100.0, 0),
                                                    shown_number(interval->high * 100.0, 0));
        }
        auto& f = m.add("du_lq", SheetFigures::tr("DU, low quarter"), value);
        f.why.formula = SheetFigures::tr("mean of the lowest quarter ÷ mean of all");
        if (r) {
            f.why.inputs << SheetFigures::tr("mean of the lowest quarter: %1, from the cans").arg(shown(r->low_quarter_mean, units))
                         << SheetFigures::tr("mean of all: %1, from the cans").arg(shown(r->mean, units));
            f.why.convention = SheetFigures::tr("the quarter is %1 (%2 cans here)")
                                   .arg(words_of(r->quarter_rule), shown_number(r->cans_in_low_quarter, 2));
        }
        if (interval) {
            f.why.inputs << SheetFigures::tr("in brackets: the %1 interval, cans drawn again 10,000 times (%2)")
                                .arg(shown_percent(interval->level, 0), core_words(stats::text_of(interval->method)));
        }
        f.why.source = SheetFigures::tr("Irrigation Association, Landscape Irrigation Auditor worksheet");
    }
    {
        auto& f = m.add("du_lh", SheetFigures::tr("DU, low half"), r ? shown_percent(r->du_lh.value()) : none);
        f.why.formula = SheetFigures::tr("mean of the drier half ÷ mean of all");
        if (r) f.why.inputs << SheetFigures::tr("mean of the drier half: %1, from the cans").arg(shown(r->low_half_mean, units));
        f.why.convention = SheetFigures::tr("exactly half; a middle can counts in part");
        f.why.source = SheetFigures::tr("von Bernuth & Mecham, Defining the Run Time Multiplier");
    }
    {
        auto& f = m.add("cu", SheetFigures::tr("Uniformity coefficient"), r ? shown_percent(r->cu.value()) : none);
        f.why.formula = SheetFigures::tr("1 − mean distance from the mean ÷ mean");
        if (r) f.why.inputs << christiansen;
        f.why.source = SheetFigures::tr("Christiansen 1942, in the form of Zoldoske & Solomon 1988");
    }
    {
        auto& f = m.add("mean", SheetFigures::tr("Mean depth caught"), r ? shown(r->mean, units) : none);
        f.why.formula = SheetFigures::tr("volume ÷ throat area, mean over the cans");
        if (!sheet.data().throat_area.empty()) {
            f.why.inputs << SheetFigures::tr("throat area: %1, as typed").arg(q(sheet.data().throat_area));
        }
        f.why.source = SheetFigures::tr("definition of depth: volume over area");
    }
    {
        const bool has = r && r->net_rate;
        auto& f = m.add("net_rate", SheetFigures::tr("Net application rate"), has ? shown(*r->net_rate, units) : none);
        f.why.formula = SheetFigures::tr("mean depth ÷ run time");
        if (!sheet.data().minutes.empty()) {
            f.why.inputs << SheetFigures::tr("run time: %1 min, as typed").arg(q(sheet.data().minutes));
        } else {
            f.why.inputs << SheetFigures::tr("run time: not recorded");
        }
        f.why.source = SheetFigures::tr("Irrigation Association, Landscape Irrigation Auditor worksheet");
    }
    {
        QString value = none;
        QString linear;
        QString upper;
        QString source;
        if (r) {
            const auto all = audit::multipliers(r->du_lq, r->du_lh);
            if (all.low_half) value = QStringLiteral("× ") + shown_number(all.low_half->value(), 2);
            linear = shown_number(all.linear.value(), 2);
            if (all.low_quarter) upper = shown_number(all.low_quarter->value(), 2);
            source = core_words(all.linear_source);
        }
        auto& f = m.add("multiplier", SheetFigures::tr("Run-time multiplier"), value);
        f.why.formula = SheetFigures::tr("1 ÷ DU of the low half");
        if (r) {
            f.why.inputs << SheetFigures::tr("beside it, the linear form from DU of the low quarter: %1").arg(linear);
            if (!upper.isEmpty()) f.why.inputs << SheetFigures::tr("upper bound, 1 ÷ DU of the low quarter: %1").arg(upper);
        }
        f.why.convention = SheetFigures::tr("low-half form where cans exist");
        f.why.source = SheetFigures::tr("von Bernuth & Mecham; linear form: %1").arg(source);
    }
    return m.figures;
}

}  // namespace evenfall::desktop
