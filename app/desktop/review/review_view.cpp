// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/review/review_view.h"

#include "app/desktop/core_words.h"
#include "app/desktop/shown.h"
#include "core/input_error.h"
#include "core/units/number.h"

#include <QCoreApplication>
#include <cmath>

namespace evenfall::desktop {
namespace {

using review::Agreement;
using review::RuleOutcome;
using workflow::ReviewedCase;

/// Context of the strings of this file.
struct ReviewView {
    Q_DECLARE_TR_FUNCTIONS(ReviewView)
};

/// Text of a stranger, fit to be shown.
QString safe(const std::string& text) { return q(printable(text, 400)); }

FigureCell telling(const QString& text, bool warn) { return {text, std::nullopt, false, false, warn}; }

QString agreement_text(Agreement agreement) {
    switch (agreement) {
        case Agreement::agrees: return ReviewView::tr("= agrees");
        case Agreement::explained: return ReviewView::tr("≈ explained");
        case Agreement::differs: return ReviewView::tr("≠ differs");
        case Agreement::cannot_tell: break;
    }
    return ReviewView::tr("? cannot tell");
}

QString outcome_text(RuleOutcome outcome) {
    switch (outcome) {
        case RuleOutcome::met: return ReviewView::tr("✓ met");
        case RuleOutcome::not_met: return ReviewView::tr("✗ not met");
        case RuleOutcome::cannot_tell: break;
    }
    return ReviewView::tr("? cannot tell");
}

struct ClaimWords {
    QString name;
    QString formula;
};

ClaimWords words_of(const std::string& claim) {
    if (claim == "du_lq") return {ReviewView::tr("DU, low quarter"), ReviewView::tr("mean of the lowest quarter of the catches ÷ mean")};
    if (claim == "du_lh") return {ReviewView::tr("DU, low half"), ReviewView::tr("mean of the lower half of the catches ÷ mean")};
    if (claim == "cu") return {ReviewView::tr("Uniformity coefficient"), ReviewView::tr("1 − mean distance from the mean ÷ mean")};
    if (claim == "mean_depth") return {ReviewView::tr("Mean depth"), ReviewView::tr("mean of the catches")};
    if (claim == "net_rate") return {ReviewView::tr("Net rate"), ReviewView::tr("mean depth ÷ run time")};
    if (claim == "cans") return {ReviewView::tr("Cans that count"), ReviewView::tr("cans read and not left out")};
    if (claim == "area_size") return {ReviewView::tr("Size of the area"), ReviewView::tr("area within the drawn outline")};
    if (claim == "use_before") return {ReviewView::tr("Use before the change"), ReviewView::tr("sum of the metered months before it")};
    if (claim == "use_after") return {ReviewView::tr("Use after the change"), ReviewView::tr("sum of the metered months after it")};
    if (claim == "savings") return {ReviewView::tr("Water saved"), ReviewView::tr("use to be expected from the weather − use after the change")};
    if (claim == "savings_share") return {ReviewView::tr("Share of water saved"), ReviewView::tr("water saved ÷ use to be expected from the weather")};
    if (claim == "cost") return {ReviewView::tr("Cost"), ReviewView::tr("sum of the invoices")};
    if (claim == "devices") return {ReviewView::tr("Devices"), ReviewView::tr("sum over the list of devices")};
    return {safe(claim), {}};
}

QString money(double amount, const std::string& currency) {
    return shown_number(amount, 2) + QChar(0xA0) + q(currency);
}

QString asked_for(const ReviewedCase& c) {
    return c.review && c.review->payment ? money(c.review->payment->total, c.review->payment->currency) : QStringLiteral("–");
}

/// To four decimals, without the zeros behind.
QString rounded(double value) { return q(units::format_shortest(std::round(value * 1e4) / 1e4)); }

Figure recomputed(const ReviewedCase& c, const review::CheckedClaim& claim, const QString& value) {
    Figure f;
    const ClaimWords words = words_of(claim.claim.name);
    f.key = QStringLiteral("recomputed");
    f.name = claim.claim.subject.empty() ? words.name : ReviewView::tr("%1 of %2").arg(words.name, safe(claim.claim.subject));
    f.value = value;
    f.why.formula = words.formula;
    f.why.inputs << ReviewView::tr("claimed: %1 %2, as typed by the sender").arg(safe(claim.claim.text), safe(claim.claim.unit)).trimmed()
                 << ReviewView::tr("raw data: %1, from the filing").arg(safe(claim.evidence))
                 << ReviewView::tr("verdict: %1, %2").arg(agreement_text(claim.agreement), core_words(claim.why));
    f.why.method = q(claim.method);
    if (c.filing) f.why.convention = ReviewView::tr("quarter rule %1").arg(q(audit::text_of(c.filing->conventions.quarter_rule)));
    f.why.source = ReviewView::tr("the filing %1, worked out again here").arg(c.review->sha256.empty() ? QString() : q(c.review->sha256).left(12));
    return f;
}

/// "2026-01-05 17:00".
QString to_the_minute(calendar::Instant at) {
    return q(calendar::format_instant(at)).left(16).replace(QLatin1Char('T'), QLatin1Char(' '));
}

/// Tests whose cans stand side by side, row by row in the order of their sheets.
TitledRows tests_side_by_side(const std::vector<const review::FiledTest*>& tests) {
    TitledRows t;
    t.title = ReviewView::tr("Catches as typed");
    std::size_t most = 0;
    for (const auto* one : tests) {
        static const QStringList unit_names{QStringLiteral("mL"), QStringLiteral("mm"), QStringLiteral("in")};
        const QString unit = unit_names.value(static_cast<int>(one->test.catch_unit) - 1);
        t.heads << ReviewView::tr("Can, %1").arg(safe(one->test.code))
                << ReviewView::tr("%1, %2").arg(q(calendar::format_date(one->test.date)), unit);
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
            row.push_back(text_cell(safe(can.can)));
            QString reading = q(units::format_shortest(can.reading));
            if (!can.excluded.empty()) reading += QLatin1Char(' ') + ReviewView::tr("(left out: %1)").arg(safe(can.excluded));
            row.push_back(text_cell(reading, true));
        }
        t.rows.push_back(std::move(row));
    }
    return t;
}

TitledRows readings_of(const review::FiledMeter& m) {
    TitledRows t;
    t.title = ReviewView::tr("Meter %1, register in %2").arg(safe(m.meter.code), q(m.meter.unit.name));
    t.heads << ReviewView::tr("Read at (UTC)") << ReviewView::tr("Register");
    for (const auto& r : m.readings) {
        t.rows.push_back({text_cell(q(calendar::format_instant(r.at))), text_cell(q(units::format_shortest(r.value)), true)});
    }
    return t;
}

TitledRows weather_of(const review::FiledWeather& w) {
    TitledRows t;
    t.title = ReviewView::tr("Weather of station %1 as typed").arg(safe(w.station));
    t.heads << ReviewView::tr("Day") << ReviewView::tr("Rain, %1").arg(safe(w.units.rain))
            << ReviewView::tr("Reference ET, %1").arg(safe(w.units.reference_et)) << ReviewView::tr("Wind, %1").arg(safe(w.units.wind));
    const auto cell = [](const std::optional<double>& v) { return text_cell(v ? q(units::format_shortest(*v)) : not_recorded(), true); };
    for (const auto& d : w.days) {
        t.rows.push_back({text_cell(q(calendar::format_date(d.date))), cell(d.rain), cell(d.reference_et), cell(d.wind)});
    }
    return t;
}

TitledRows areas_of(const review::Filing& f) {
    TitledRows t;
    t.title = ReviewView::tr("Areas");
    t.heads << ReviewView::tr("Area") << ReviewView::tr("Size as typed") << ReviewView::tr("Sector") << ReviewView::tr("Meter");
    for (const auto& a : f.areas) {
        t.rows.push_back({text_cell(safe(a.area.code)), text_cell(q(a.area.size.text()), true), text_cell(safe(a.sector)), text_cell(safe(a.area.meter))});
    }
    return t;
}

TitledRows invoices_of(const review::Filing& f) {
    TitledRows t;
    t.title = ReviewView::tr("Invoices");
    t.heads << ReviewView::tr("Number") << ReviewView::tr("Of") << ReviewView::tr("Date") << ReviewView::tr("Amount")
            << ReviewView::tr("Attachment");
    for (const auto& i : f.request.invoices) {
        t.rows.push_back({text_cell(safe(i.number)), text_cell(safe(i.vendor)), text_cell(i.date ? q(calendar::format_date(*i.date)) : not_recorded()),
                          text_cell(money(i.amount, printable(i.currency, 8)), true), text_cell(safe(i.attachment))});
    }
    return t;
}

TitledRows devices_of(const review::Filing& f) {
    TitledRows t;
    t.title = ReviewView::tr("Devices");
    t.heads << ReviewView::tr("Kind") << ReviewView::tr("Count");
    for (const auto& d : f.request.devices) t.rows.push_back({text_cell(safe(d.kind)), text_cell(q(units::format_shortest(d.count)), true)});
    return t;
}

TitledRows attachments_of(const review::Filing& f) {
    TitledRows t;
    t.title = ReviewView::tr("Attachments");
    t.heads << ReviewView::tr("File") << ReviewView::tr("Kind") << ReviewView::tr("Bytes") << ReviewView::tr("SHA-256");
    for (const auto& a : f.attachments) {
        t.rows.push_back({text_cell(safe(a.path)), text_cell(safe(a.kind)), text_cell(shown_number(static_cast<double>(a.size), 0), true),
                          text_cell(q(a.sha256).left(16))});
    }
    return t;
}

}  // namespace

QString status_title(review::Status status) {
    switch (status) {
        case review::Status::received: return ReviewView::tr("received");
        case review::Status::incomplete: return ReviewView::tr("incomplete");
        case review::Status::under_review: return ReviewView::tr("under review");
        case review::Status::approved: return ReviewView::tr("approved");
        case review::Status::declined: return ReviewView::tr("declined");
        case review::Status::paid: return ReviewView::tr("paid");
    }
    return {};
}

QString decision_title(review::Decision decision) {
    switch (decision) {
        case review::Decision::approve: return ReviewView::tr("✓ approve");
        case review::Decision::decline: return ReviewView::tr("✗ decline");
        case review::Decision::send_more: return ReviewView::tr("? ask for more");
        case review::Decision::none: break;
    }
    return ReviewView::tr("figures only");
}

FigureRows queue_table(const std::vector<ReviewedCase>& queue) {
    FigureRows t;
    t.heads << ReviewView::tr("Application") << ReviewView::tr("Status") << ReviewView::tr("By the rules") << ReviewView::tr("Risk")
            << ReviewView::tr("If approved") << ReviewView::tr("Applicant");
    for (const ReviewedCase& c : queue) {
        Figure risk;
        risk.key = QStringLiteral("risk");
        risk.name = ReviewView::tr("Risk points of %1").arg(safe(c.application.code));
        risk.value = c.review ? shown_number(c.review->risk(), 0) : QStringLiteral("–");
        risk.why.formula = ReviewView::tr("3 for each claim that differs, 2 for each question, 1 for each rule that cannot be told");
        risk.why.method = ReviewView::tr("only puts the work in order: points × money asked for");
        risk.why.source = ReviewView::tr("chosen for this program, not published");
        std::vector<FigureCell> row{text_cell(safe(c.application.code)), text_cell(status_title(c.application.status())),
                                    text_cell(c.review ? decision_title(c.review->decision) : QStringLiteral("…"))};
        row.push_back({risk.value, risk, true, false, false});
        row.push_back(text_cell(asked_for(c), true));
        row.push_back(text_cell(safe(c.application.applicant)));
        t.rows.push_back(std::move(row));
    }
    return t;
}

FigureRows claims_table(const ReviewedCase& c) {
    FigureRows t;
    t.heads << ReviewView::tr("Claim") << ReviewView::tr("Of") << ReviewView::tr("Claimed") << ReviewView::tr("Recomputed")
            << ReviewView::tr("Verdict") << ReviewView::tr("Why");
    if (!c.review) return t;
    for (const auto& claim : c.review->claims) {
        const QString unit = claim.claim.unit.empty() ? QString() : QChar(0xA0) + safe(claim.claim.unit);
        const QString ours = claim.recomputed ? rounded(*claim.recomputed) + unit : QStringLiteral("–");
        t.rows.push_back({text_cell(words_of(claim.claim.name).name), text_cell(safe(claim.claim.subject)), text_cell(safe(claim.claim.text) + unit, true),
                          {ours, recomputed(c, claim, ours), true, false, false},
                          telling(agreement_text(claim.agreement), claim.agreement == Agreement::differs), text_cell(core_words(claim.why))});
    }
    return t;
}

FigureRows rules_table(const ReviewedCase& c) {
    FigureRows t;
    t.heads << ReviewView::tr("Outcome") << ReviewView::tr("Rule") << ReviewView::tr("Why") << ReviewView::tr("Please send");
    if (!c.review) return t;
    for (const auto& rule : c.review->rules) {
        t.rows.push_back({telling(outcome_text(rule.outcome), rule.outcome == RuleOutcome::not_met), text_cell(safe(rule.words)),
                          text_cell(core_words(rule.why)), text_cell(q(rule.missing))});
    }
    return t;
}

FigureRows questions_table(const ReviewedCase& c) {
    FigureRows t;
    t.heads << ReviewView::tr("Question to the sender") << ReviewView::tr("Where to look");
    if (!c.review) return t;
    for (const auto& one : c.review->questions) t.rows.push_back({text_cell(q(one.sentence)), text_cell(q(one.evidence))});
    return t;
}

FigureRows payment_table(const ReviewedCase& c) {
    FigureRows t;
    t.heads << ReviewView::tr("Line") << ReviewView::tr("Working") << ReviewView::tr("Amount");
    if (!c.review || !c.review->payment) return t;
    const review::Payment& p = *c.review->payment;
    for (const auto& line : p.lines) {
        t.rows.push_back({text_cell(safe(line.words)), text_cell(q(line.working)), text_cell(money(line.amount, p.currency), true)});
    }
    t.rows.push_back({{ReviewView::tr("Payment, were it approved"), std::nullopt, false, true, false}, text_cell({}),
                      {money(p.total, p.currency), std::nullopt, true, true, false}});
    return t;
}

FigureRows history_table(const ReviewedCase& c) {
    FigureRows t;
    t.heads << ReviewView::tr("When (UTC)") << ReviewView::tr("Who") << ReviewView::tr("Status") << ReviewView::tr("Amount")
            << ReviewView::tr("Reason");
    for (const auto& h : c.application.history) {
        t.rows.push_back({text_cell(to_the_minute(h.at)), text_cell(safe(h.who)), text_cell(status_title(h.status)),
                          text_cell(h.amount ? money(*h.amount, c.application.currency) : QString(), true), text_cell(safe(h.note))});
    }
    return t;
}

QString claim_evidence(const ReviewedCase& c, int row) {
    const auto at = static_cast<std::size_t>(row);
    return c.review && row >= 0 && at < c.review->claims.size() ? q(c.review->claims[at].evidence) : QString();
}

QString rule_evidence(const ReviewedCase& c, int row) {
    const auto at = static_cast<std::size_t>(row);
    return c.review && row >= 0 && at < c.review->rules.size() ? q(c.review->rules[at].evidence) : QString();
}

QString question_evidence(const ReviewedCase& c, int row) {
    const auto at = static_cast<std::size_t>(row);
    return c.review && row >= 0 && at < c.review->questions.size() ? q(c.review->questions[at].evidence) : QString();
}

QString reasons_of(const ReviewedCase& c) {
    if (!c.review) return {};
    QStringList lines;
    for (const auto& rule : c.review->rules) {
        if (rule.outcome == RuleOutcome::not_met) lines << safe(rule.words) + QStringLiteral(": ") + core_words(rule.why);
    }
    if (lines.isEmpty()) {
        for (const auto& missing : c.review->missing) lines << ReviewView::tr("please send: %1").arg(q(missing));
    }
    if (lines.isEmpty() && c.review->decision == review::Decision::approve) lines << ReviewView::tr("every rule of the program is met");
    return lines.join(QStringLiteral("; "));
}

std::vector<TitledRows> evidence_tables(const review::Filing& filing, const QString& evidence) {
    std::vector<TitledRows> out;
    std::vector<const review::FiledTest*> tests;
    for (const auto& t : filing.tests) {
        if (evidence.contains(q(t.test.code))) tests.push_back(&t);
    }
    if (!tests.empty()) out.push_back(tests_side_by_side(tests));
    if (evidence.contains(QStringLiteral("meter"))) {
        for (const auto& m : filing.meters) out.push_back(readings_of(m));
    }
    if (evidence.contains(QStringLiteral("weather"))) out.push_back(weather_of(filing.weather));
    if (evidence.contains(QStringLiteral("area"))) out.push_back(areas_of(filing));
    if (evidence.contains(QStringLiteral("invoice"))) out.push_back(invoices_of(filing));
    if (evidence.contains(QStringLiteral("device"))) out.push_back(devices_of(filing));
    if (evidence.contains(QStringLiteral("attachment")) || evidence.contains(QStringLiteral("photo"))) out.push_back(attachments_of(filing));
    return out;
}

}  // namespace evenfall::desktop
