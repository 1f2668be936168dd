// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/evidence_view.h"

#include "app/desktop/core_words.h"
#include "app/desktop/review/review_view.h"
#include "app/desktop/shown.h"
#include "core/input_error.h"
#include "core/units/number.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>

namespace evenfall::desktop {
namespace {

/// Context of the strings of this file.
struct EvidenceView {
    Q_DECLARE_TR_FUNCTIONS(EvidenceView)
};

/// Whether the code stands there as a word of its own, not within a longer one.
bool names(const QString& where, const std::string& code) {
    if (code.empty()) return false;
    const QRegularExpression word(QStringLiteral("(^|[ ,;])") + QRegularExpression::escape(stranger_text(code)) + QStringLiteral("($|[ ,;])"));
    return word.match(where).hasMatch();
}

void stand_out(std::vector<FigureCell>& row) {
    for (FigureCell& cell : row) cell.strong = true;
}

/// Tests whose cans stand side by side, row by row in the order of their sheets.
TitledRows tests_side_by_side(const std::vector<const review::FiledTest*>& tests) {
    TitledRows t;
    t.title = EvidenceView::tr("Catches as typed");
    std::size_t most = 0;
    for (const auto* one : tests) {
        static const QStringList unit_names{QStringLiteral("mL"), QStringLiteral("mm"), QStringLiteral("in")};
        const QString unit = unit_names.value(static_cast<int>(one->test.catch_unit) - 1);
        // Narrow, so that two tests have room beside each other in the panel.
        t.heads << EvidenceView::tr("Can")
                << EvidenceView::tr("%1\n%2, %3").arg(stranger_text(one->test.code), q(calendar::format_date(one->test.date)), unit);
        most = std::max(most, one->test.catches.size());
    }
    for (std::size_t i = 0; i < most; ++i) {
        std::vector<FigureCell> row;
        for (const auto* one : tests) {
            if (i >= one->test.catches.size()) {
                row.push_back(text_cell({}));
                row.push_back(text_cell({}, true));
                continue;
            }
            const audit::Catch& can = one->test.catches[i];
            row.push_back(text_cell(stranger_text(can.can)));
            QString reading = q(units::format_shortest(can.reading));
            if (!can.excluded.empty()) reading += QLatin1Char(' ') + EvidenceView::tr("(left out: %1)").arg(stranger_text(can.excluded));
            row.push_back(text_cell(reading, true));
        }
        t.rows.push_back(std::move(row));
    }
    return t;
}

TitledRows readings_of(const review::FiledMeter& m) {
    TitledRows t;
    t.title = EvidenceView::tr("Meter %1, register in %2").arg(stranger_text(m.meter.code), q(m.meter.unit.name));
    t.heads << EvidenceView::tr("Read at (UTC)") << EvidenceView::tr("Register");
    for (const auto& r : m.readings) {
        t.rows.push_back({text_cell(q(calendar::format_instant(r.at))), text_cell(q(units::format_shortest(r.value)), true)});
    }
    return t;
}

/// The days that are named stand out.
TitledRows weather_of(const review::FiledWeather& w, const QString& where) {
    TitledRows t;
    t.title = EvidenceView::tr("Weather of station %1 as typed").arg(stranger_text(w.station));
    t.heads << EvidenceView::tr("Day") << EvidenceView::tr("Rain, %1").arg(stranger_text(w.units.rain))
            << EvidenceView::tr("Reference ET, %1").arg(stranger_text(w.units.reference_et)) << EvidenceView::tr("Wind, %1").arg(stranger_text(w.units.wind));
    const auto cell = [](const std::optional<double>& v) { return text_cell(v ? q(units::format_shortest(*v)) : not_recorded(), true); };
    for (const auto& d : w.days) {
        t.rows.push_back({text_cell(q(calendar::format_date(d.date))), cell(d.rain), cell(d.reference_et), cell(d.wind)});
        if (names(where, calendar::format_date(d.date))) stand_out(t.rows.back());
    }
    return t;
}

TitledRows areas_of(const review::Filing& f, const QString& where) {
    TitledRows t;
    t.title = EvidenceView::tr("Areas");
    t.heads << EvidenceView::tr("Area") << EvidenceView::tr("Size as typed") << EvidenceView::tr("Sector") << EvidenceView::tr("Meter");
    for (const auto& a : f.areas) {
        t.rows.push_back({text_cell(stranger_text(a.area.code)), text_cell(q(a.area.size.text()), true), text_cell(stranger_text(a.sector)), text_cell(stranger_text(a.area.meter))});
        if (names(where, a.area.code)) stand_out(t.rows.back());
    }
    return t;
}

TitledRows invoices_of(const review::Filing& f) {
    TitledRows t;
    t.title = EvidenceView::tr("Invoices");
    t.heads << EvidenceView::tr("Number") << EvidenceView::tr("Of") << EvidenceView::tr("Date") << EvidenceView::tr("Amount")
            << EvidenceView::tr("Attachment");
    for (const auto& i : f.request.invoices) {
        t.rows.push_back({text_cell(stranger_text(i.number)), text_cell(stranger_text(i.vendor)), text_cell(i.date ? q(calendar::format_date(*i.date)) : not_recorded()),
                          text_cell(money_text(i.amount, printable(i.currency, 8)), true), text_cell(stranger_text(i.attachment))});
    }
    return t;
}

TitledRows devices_of(const review::Filing& f) {
    TitledRows t;
    t.title = EvidenceView::tr("Devices");
    t.heads << EvidenceView::tr("Kind") << EvidenceView::tr("Count");
    for (const auto& d : f.request.devices) t.rows.push_back({text_cell(stranger_text(d.kind)), text_cell(q(units::format_shortest(d.count)), true)});
    return t;
}

TitledRows attachments_of(const review::Filing& f) {
    TitledRows t;
    t.title = EvidenceView::tr("Attachments");
    t.heads << EvidenceView::tr("File") << EvidenceView::tr("Kind") << EvidenceView::tr("Bytes") << EvidenceView::tr("SHA-256");
    for (const auto& a : f.attachments) {
        t.rows.push_back({text_cell(stranger_text(a.path)), text_cell(stranger_text(a.kind)), text_cell(shown_number(static_cast<double>(a.size), 0), true),
                          text_cell(q(a.sha256).left(16))});
    }
    return t;
}

/// The tests that are named; all of them where tests are meant and none is named.
std::vector<const review::FiledTest*> tests_at(const review::Filing& filing, const QString& where) {
    std::vector<const review::FiledTest*> named, all;
    for (const auto& t : filing.tests) {
        all.push_back(&t);
        // Of weather on a day: what was caught on it.
        if (names(where, t.test.code) || names(where, calendar::format_date(t.test.date))) named.push_back(&t);
    }
    return named.empty() && where.contains(QStringLiteral("tests")) ? all : named;
}

std::vector<const review::FiledMeter*> meters_at(const review::Filing& filing, const QString& where) {
    std::vector<const review::FiledMeter*> named, all;
    for (const auto& m : filing.meters) {
        all.push_back(&m);
        if (names(where, m.meter.code)) named.push_back(&m);
    }
    return named.empty() ? all : named;
}

}  // namespace

Evidence claim_evidence(const workflow::ReviewedCase& c, int row) {
    const auto at = static_cast<std::size_t>(row);
    if (!c.review || row < 0 || at >= c.review->claims.size()) return {};
    const review::CheckedClaim& claim = c.review->claims[at];
    const QString name = claim.claim.subject.empty()
                             ? claim_name(claim.claim.name)
                             : EvidenceView::tr("%1 of %2").arg(claim_name(claim.claim.name), stranger_text(claim.claim.subject));
    const FigureRows rows = claims_table(c);
    const auto& cells = rows.rows[at];
    return {EvidenceView::tr("%1: claimed %2, recomputed %3, %4").arg(name, cells[2].text, cells[3].text, cells[4].text),
            core_words(claim.why), claim.evidence};
}

Evidence rule_evidence(const workflow::ReviewedCase& c, int row) {
    const auto at = static_cast<std::size_t>(row);
    if (!c.review || row < 0 || at >= c.review->rules.size()) return {};
    const review::JudgedRule& rule = c.review->rules[at];
    return {EvidenceView::tr("%1: %2").arg(outcome_title(rule.outcome), data_words(rule.words)), core_words(rule.why), rule.evidence};
}

Evidence question_evidence(const workflow::ReviewedCase& c, int row) {
    const auto at = static_cast<std::size_t>(row);
    if (!c.review || row < 0 || at >= c.review->questions.size()) return {};
    return {core_words(c.review->questions[at].sentence), {}, c.review->questions[at].evidence};
}

int telling_claim(const workflow::ReviewedCase& c) {
    if (!c.review || c.review->claims.empty()) return -1;
    const auto& all = c.review->claims;
    const auto at = std::find_if(all.begin(), all.end(), [](const auto& claim) { return claim.agreement == review::Agreement::differs; });
    return at == all.end() ? 0 : static_cast<int>(at - all.begin());
}

int telling_rule(const workflow::ReviewedCase& c) {
    if (!c.review || c.review->rules.empty()) return -1;
    const auto& all = c.review->rules;
    const auto at = std::find_if(all.begin(), all.end(), [](const auto& rule) { return rule.outcome == review::RuleOutcome::not_met; });
    return at == all.end() ? 0 : static_cast<int>(at - all.begin());
}

std::vector<TitledRows> evidence_tables(const review::Filing& filing, const QString& where) {
    std::vector<TitledRows> out;
    const auto tests = tests_at(filing, where);
    if (!tests.empty()) out.push_back(tests_side_by_side(tests));
    if (where.contains(QStringLiteral("meter"))) {
        for (const auto* m : meters_at(filing, where)) out.push_back(readings_of(*m));
    }
    if (where.contains(QStringLiteral("weather"))) out.push_back(weather_of(filing.weather, where));
    if (where.contains(QStringLiteral("area"))) out.push_back(areas_of(filing, where));
    if (where.contains(QStringLiteral("invoice"))) out.push_back(invoices_of(filing));
    if (where.contains(QStringLiteral("device"))) out.push_back(devices_of(filing));
    if (where.contains(QStringLiteral("attachment")) || where.contains(QStringLiteral("photo"))) out.push_back(attachments_of(filing));
    return out;
}

}  // namespace evenfall::desktop
