// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plan/audit_view.h"

#include "app/desktop/core_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <numeric>

namespace evenfall::desktop {
namespace {

/// Context of the strings of this file.
struct AuditView {
    Q_DECLARE_TR_FUNCTIONS(AuditView)
};

int rank(plan::Verdict verdict) {
    switch (verdict) {
        case plan::Verdict::weak: return 0;
        case plan::Verdict::strong: return 1;
        case plan::Verdict::cannot_tell: return 2;
        case plan::Verdict::as_designed: break;
    }
    return 3;
}

QString signed_text(units::Depth d, UnitsShown units) {
    const QString text = shown(d, units);
    return d.si() > 0.0 ? QLatin1Char('+') + text : QString(text).replace(QLatin1Char('-'), QChar(0x2212));
}

QString fell_text(workflow::Fell fell) {
    switch (fell) {
        case workflow::Fell::drier: return AuditView::tr("▼ drier");
        case workflow::Fell::wetter: return AuditView::tr("▲ wetter");
        case workflow::Fell::as_designed: break;
    }
    return AuditView::tr("= as designed");
}

Figure figure_of(const plan::PlanAgainstAudit& audit, const QString& key, const QString& name, const QString& value,
                 const QString& formula, const QStringList& inputs) {
    Figure f;
    f.key = key;
    f.name = name;
    f.value = value;
    f.why.formula = formula;
    f.why.inputs = inputs;
    f.why.inputs << AuditView::tr("%1 cans that count, from the catch test").arg(audit.cans.size());
    f.why.method = core_words(audit.method);
    f.why.convention = core_words(audit.convention);
    f.why.source = core_words(audit.source);
    return f;
}

}  // namespace

QString verdict_text(plan::Verdict verdict) {
    switch (verdict) {
        case plan::Verdict::weak: return AuditView::tr("▼ less than most");
        case plan::Verdict::strong: return AuditView::tr("▲ more than most");
        case plan::Verdict::cannot_tell: return AuditView::tr("? cannot tell");
        case plan::Verdict::as_designed: break;
    }
    return AuditView::tr("= as designed");
}

std::vector<std::size_t> heads_in_order(const plan::PlanAgainstAudit& audit) {
    std::vector<std::size_t> order(audit.heads.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return rank(audit.heads[a].verdict) < rank(audit.heads[b].verdict);
    });
    return order;
}

FigureRows heads_table(const plan::PlanAgainstAudit& audit) {
    FigureRows t;
    t.heads << AuditView::tr("Head") << AuditView::tr("Verdict") << AuditView::tr("Output") << AuditView::tr("Cans");
    for (const std::size_t i : heads_in_order(audit)) {
        const plan::HeadOutput& h = audit.heads[i];
        const bool told = h.verdict != plan::Verdict::cannot_tell || h.cans > 0;
        const QString output = told ? AuditView::tr("%1 ± %2").arg(shown_percent(h.output, 0), shown_percent(h.error, 0))
                                    : QStringLiteral("–");
        FigureCell verdict = text_cell(verdict_text(h.verdict));
        verdict.warn = h.verdict == plan::Verdict::weak || h.verdict == plan::Verdict::strong;
        FigureCell share = text_cell(output, true);
        share.figure = figure_of(audit, QStringLiteral("output"), AuditView::tr("Output of head %1").arg(q(h.head)), output,
                                 AuditView::tr("share of its designed flow that explains the catches best, ± one standard error"),
                                 {core_words(h.evidence)});
        t.rows.push_back({text_cell(q(h.head)), std::move(verdict), std::move(share), text_cell(QString::number(h.cans), true)});
    }
    return t;
}

FigureRows cans_table(const plan::PlanAgainstAudit& audit, UnitsShown units) {
    FigureRows t;
    t.heads << AuditView::tr("Can") << AuditView::tr("Caught") << AuditView::tr("Predicted") << AuditView::tr("Difference");
    for (const auto& c : audit.cans) {
        const auto fell = workflow::fell_at(audit, c);
        const QString difference = fell_text(fell).left(1) + QLatin1Char(' ') + signed_text(workflow::difference_at(audit, c), units);
        FigureCell cell = text_cell(difference, true);
        cell.warn = fell != workflow::Fell::as_designed;
        cell.figure = figure_of(audit, QStringLiteral("difference"), AuditView::tr("Difference at can %1").arg(q(c.can)), difference,
                                AuditView::tr("caught − common output × predicted"),
                                {AuditView::tr("caught: %1, from the catch test").arg(shown(c.caught, units)),
                                 AuditView::tr("predicted: %1, from the plan").arg(shown(c.predicted, units)),
                                 AuditView::tr("common output: %1, from all cans").arg(shown_percent(audit.common_output, 0)),
                                 AuditView::tr("explained by the outputs found: %1").arg(shown(c.fitted, units)),
                                 AuditView::tr("%1 heads reach it").arg(c.heads), fell_text(fell)});
        t.rows.push_back({text_cell(q(c.can)), text_cell(shown(c.caught, units), true), text_cell(shown(c.predicted, units), true),
                          std::move(cell)});
    }
    return t;
}

std::vector<Figure> audit_figures(const plan::PlanAgainstAudit& audit, UnitsShown units) {
    const auto share = [](const std::optional<units::LowQuarterDu>& du) {
        return du ? shown_percent(du->value()) : QStringLiteral("–");
    };
    const auto count = [&](plan::Verdict verdict) {
        return QString::number(std::count_if(audit.heads.begin(), audit.heads.end(), [&](const auto& h) { return h.verdict == verdict; }));
    };
    std::vector<Figure> f;
    f.push_back(figure_of(audit, QStringLiteral("du_caught"), AuditView::tr("DU, low quarter, caught"), share(audit.du_caught),
                          AuditView::tr("mean of the lowest quarter of the catches ÷ mean"),
                          {AuditView::tr("mean catch: %1").arg(shown(audit.mean_caught, units))}));
    f.push_back(figure_of(audit, QStringLiteral("du_designed"), AuditView::tr("DU, same cans, design"), share(audit.du_predicted),
                          AuditView::tr("the same of the predicted depths at the same cans"),
                          {AuditView::tr("mean predicted: %1").arg(shown(audit.mean_predicted, units))}));
    f.push_back(figure_of(audit, QStringLiteral("common_output"), AuditView::tr("All heads together"),
                          shown_percent(audit.common_output, 0),
                          AuditView::tr("median of caught ÷ predicted; takes up pressure, evaporation and run time that all heads share"), {}));
    f.push_back(figure_of(audit, QStringLiteral("difference"), AuditView::tr("Difference, before and after"),
                          shown(audit.difference_before, units) + QStringLiteral(" → ") + shown(audit.difference_after, units),
                          AuditView::tr("root mean square of what the design leaves unexplained at the cans, and what the outputs found leave"), {}));
    f.push_back(figure_of(audit, QStringLiteral("off"), AuditView::tr("Heads less / more"),
                          count(plan::Verdict::weak) + QStringLiteral(" / ") + count(plan::Verdict::strong),
                          AuditView::tr("output surely beyond the limits of plan_limits.csv, as shares of the common output"), {}));
    f.push_back(figure_of(audit, QStringLiteral("untold"), AuditView::tr("Heads that cannot be told"), count(plan::Verdict::cannot_tell),
                          AuditView::tr("no can in reach, or cans that see the head only together with others"), {}));
    return f;
}

std::vector<CanMark> can_marks(const plan::PlanAgainstAudit& audit, UnitsShown units) {
    const auto unit = depth_unit(units);
    std::vector<CanMark> marks;
    for (const auto& c : audit.cans) {
        const units::Depth d = workflow::difference_at(audit, c);
        QString text = signed_text(d, units);
        text.remove(QChar(0xA0) + unit.name);
        marks.push_back({QPointF(c.place.x, -c.place.y), workflow::fell_at(audit, c), text,
                         AuditView::tr("Can %1: caught %2, predicted %3, %4")
                             .arg(q(c.can), shown(c.caught, units), shown(c.predicted, units), fell_text(workflow::fell_at(audit, c)))});
    }
    return marks;
}

}  // namespace evenfall::desktop
