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

FigureCell telling(const QString& text, bool warn) { return {text, std::nullopt, false, false, warn}; }

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
    return {stranger_text(claim), {}};
}

QString asked_for(const ReviewedCase& c) {
    return c.review && c.review->payment ? money_text(c.review->payment->total, c.review->payment->currency) : QStringLiteral("–");
}

/// To four decimals, without the zeros behind.
QString rounded(double value) { return q(units::format_shortest(std::round(value * 1e4) / 1e4)); }

Figure recomputed(const ReviewedCase& c, const review::CheckedClaim& claim, const QString& value) {
    Figure f;
    const ClaimWords words = words_of(claim.claim.name);
    f.key = QStringLiteral("recomputed");
    f.name = claim.claim.subject.empty() ? words.name : ReviewView::tr("%1 of %2").arg(words.name, stranger_text(claim.claim.subject));
    f.value = value;
    f.why.formula = words.formula;
    f.why.inputs << ReviewView::tr("claimed: %1 %2, as typed by the sender").arg(stranger_text(claim.claim.text), stranger_text(claim.claim.unit)).trimmed()
                 << ReviewView::tr("raw data: %1, from the filing").arg(place_words(claim.evidence))
                 << ReviewView::tr("verdict: %1, %2").arg(agreement_title(claim.agreement), core_words(claim.why));
    f.why.method = core_words(claim.method);
    if (c.filing) f.why.convention = ReviewView::tr("quarter rule %1").arg(q(audit::text_of(c.filing->conventions.quarter_rule)));
    f.why.source = ReviewView::tr("the filing %1, worked out again here").arg(c.review->sha256.empty() ? QString() : q(c.review->sha256).left(12));
    return f;
}

/// "2026-01-05 17:00".
QString to_the_minute(calendar::Instant at) {
    return q(calendar::format_instant(at)).left(16).replace(QLatin1Char('T'), QLatin1Char(' '));
}

}  // namespace

QString stranger_text(const std::string& text) { return q(printable(text, 400)); }

QString data_words(const std::string& text) { return core_words(printable(text, 400)); }

QString place_words(const Sentence& evidence) { return core_words(printable_sentence(evidence, 400)); }

QString money_text(double amount, const std::string& currency) {
    return shown_number(amount, 2) + QChar(0xA0) + q(currency);
}

QString agreement_title(Agreement agreement) {
    switch (agreement) {
        case Agreement::agrees: return ReviewView::tr("= agrees");
        case Agreement::explained: return ReviewView::tr("≈ explained");
        case Agreement::differs: return ReviewView::tr("≠ differs");
        case Agreement::cannot_tell: break;
    }
    return ReviewView::tr("? cannot tell");
}

QString outcome_title(RuleOutcome outcome) {
    switch (outcome) {
        case RuleOutcome::met: return ReviewView::tr("✓ met");
        case RuleOutcome::not_met: return ReviewView::tr("✗ not met");
        case RuleOutcome::cannot_tell: break;
    }
    return ReviewView::tr("? cannot tell");
}

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

namespace {

Figure risk_of(const ReviewedCase& c, const QString& name) {
    Figure risk;
    risk.key = QStringLiteral("risk");
    risk.name = ReviewView::tr("Risk points of %1").arg(name);
    risk.value = c.review ? shown_number(c.review->risk(), 0) : QStringLiteral("–");
    risk.why.formula = ReviewView::tr("3 for each claim that differs, 2 for each question, 1 for each rule that cannot be told");
    risk.why.method = ReviewView::tr("only puts the work in order: points × money asked for");
    risk.why.source = ReviewView::tr("chosen for this program, not published");
    return risk;
}

std::vector<FigureCell> queue_row(const ReviewedCase& c, const QString& name, const QString& status) {
    const Figure risk = risk_of(c, name);
    // A case that nothing can be worked out for says so on its page.
    QString rules = c.review ? decision_title(c.review->decision) : c.problem.empty() ? QStringLiteral("…") : QStringLiteral("–");
    if (!status.isEmpty()) rules.prepend(status + QLatin1Char('\n'));
    return {text_cell(name + QLatin1Char('\n') + stranger_text(c.application.applicant)), text_cell(rules),
            {risk.value, risk, true, false, false}, text_cell(asked_for(c), true)};
}

}  // namespace

FigureRows queue_table(const std::vector<ReviewedCase>& queue, const std::vector<workflow::WaitingFiling>& waiting) {
    FigureRows t;
    t.heads << ReviewView::tr("Case") << ReviewView::tr("Status, rules") << ReviewView::tr("Risk") << ReviewView::tr("If approved");
    for (const ReviewedCase& c : queue) {
        t.rows.push_back(queue_row(c, stranger_text(c.application.code), status_title(c.application.status())));
    }
    if (waiting.empty()) return t;
    std::vector<FigureCell> heading(static_cast<std::size_t>(t.heads.size()));
    heading.front() = {ReviewView::tr("Filings without an application: %1").arg(waiting.size()), std::nullopt, false, true, false};
    t.rows.push_back(std::move(heading));
    for (const auto& w : waiting) t.rows.push_back(queue_row(w.reviewed, stranger_text(w.filing.code), {}));
    return t;
}

FigureRows claims_table(const ReviewedCase& c) {
    FigureRows t;
    t.heads << ReviewView::tr("Claim") << ReviewView::tr("Of") << ReviewView::tr("Claimed") << ReviewView::tr("Recomputed")
            << ReviewView::tr("Verdict") << ReviewView::tr("Why");
    if (!c.review) return t;
    for (const auto& claim : c.review->claims) {
        const QString unit = claim.claim.unit.empty() ? QString() : QChar(0xA0) + stranger_text(claim.claim.unit);
        const QString ours = claim.recomputed ? rounded(*claim.recomputed) + unit : QStringLiteral("–");
        t.rows.push_back({text_cell(words_of(claim.claim.name).name), text_cell(stranger_text(claim.claim.subject)), text_cell(stranger_text(claim.claim.text) + unit, true),
                          {ours, recomputed(c, claim, ours), true, false, false},
                          telling(agreement_title(claim.agreement), claim.agreement == Agreement::differs), text_cell(core_words(claim.why))});
    }
    return t;
}

FigureRows rules_table(const ReviewedCase& c) {
    FigureRows t;
    t.heads << ReviewView::tr("Outcome") << ReviewView::tr("Rule") << ReviewView::tr("Why") << ReviewView::tr("Please send");
    if (!c.review) return t;
    for (const auto& rule : c.review->rules) {
        t.rows.push_back({telling(outcome_title(rule.outcome), rule.outcome == RuleOutcome::not_met), text_cell(data_words(rule.words)),
                          text_cell(core_words(rule.why)), text_cell(core_words(rule.missing))});
    }
    return t;
}

FigureRows questions_table(const ReviewedCase& c) {
    FigureRows t;
    t.heads << ReviewView::tr("Question to the sender") << ReviewView::tr("Where to look");
    if (!c.review) return t;
    for (const auto& one : c.review->questions) t.rows.push_back({text_cell(core_words(one.sentence)), text_cell(place_words(one.evidence))});
    return t;
}

FigureRows payment_table(const ReviewedCase& c) {
    FigureRows t;
    t.heads << ReviewView::tr("Line") << ReviewView::tr("Working") << ReviewView::tr("Amount");
    if (!c.review || !c.review->payment) return t;
    const review::Payment& p = *c.review->payment;
    for (const auto& line : p.lines) {
        t.rows.push_back({text_cell(data_words(line.words)), text_cell(core_words(line.working)), text_cell(money_text(line.amount, p.currency), true)});
    }
    t.rows.push_back({{ReviewView::tr("Payment, were it approved"), std::nullopt, false, true, false}, text_cell({}),
                      {money_text(p.total, p.currency), std::nullopt, true, true, false}});
    return t;
}

FigureRows history_table(const ReviewedCase& c) {
    FigureRows t;
    t.heads << ReviewView::tr("When (UTC)") << ReviewView::tr("Who") << ReviewView::tr("Status") << ReviewView::tr("Amount")
            << ReviewView::tr("Reason");
    for (const auto& h : c.application.history) {
        t.rows.push_back({text_cell(to_the_minute(h.at)), text_cell(stranger_text(h.who)), text_cell(status_title(h.status)),
                          text_cell(h.amount ? money_text(*h.amount, c.application.currency) : QString(), true), text_cell(data_words(h.note))});
    }
    return t;
}

FigureRows filings_table(const std::vector<store::StoredFiling>& filings) {
    FigureRows t;
    t.heads << ReviewView::tr("Filing") << ReviewView::tr("File") << ReviewView::tr("Came in (UTC)") << ReviewView::tr("Signature")
            << ReviewView::tr("SHA-256");
    for (const auto& f : filings) {
        t.rows.push_back({text_cell(stranger_text(f.code)), text_cell(stranger_text(f.file)), text_cell(q(f.at).left(16).replace(QLatin1Char('T'), QLatin1Char(' '))),
                          text_cell(f.key.empty() ? ReviewView::tr("not signed") : ReviewView::tr("signed")), text_cell(q(f.sha256).left(16))});
    }
    return t;
}

QString claim_name(const std::string& claim) { return words_of(claim).name; }

QString reasons_of(const ReviewedCase& c) {
    if (!c.review) return {};
    QStringList lines;
    for (const auto& rule : c.review->rules) {
        if (rule.outcome == RuleOutcome::not_met) lines << data_words(rule.words) + QStringLiteral(": ") + core_words(rule.why);
    }
    if (lines.isEmpty()) {
        for (const auto& missing : c.review->missing) lines << ReviewView::tr("please send: %1").arg(core_words(missing));
    }
    if (lines.isEmpty() && c.review->decision == review::Decision::approve) lines << ReviewView::tr("every rule of the program is met");
    return lines.join(QStringLiteral("; "));
}

}  // namespace evenfall::desktop
