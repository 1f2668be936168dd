// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/review_report.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>

namespace evenfall::reports {
namespace {

using review::Agreement;
using review::Decision;
using review::Review;
using review::RuleOutcome;

Column words(std::string key, std::string title) { return {std::move(key), std::move(title), {}, true}; }
Column figures(std::string key, std::string title, NumberFormat format) {
    return {std::move(key), std::move(title), std::move(format), false};
}

/// Text of a stranger as one printable cell.
Cell safe(const std::string& value) { return value.empty() ? unknown() : text(printable(value, 400)); }
Cell safe(const Sentence& value) { return safe(value.english()); }

std::string row_key(std::size_t i) { return std::to_string(i + 1); }

std::string verdict(const Review& r) {
    switch (r.decision) {
        case Decision::approve: return "Every rule of the program is met: approve.";
        case Decision::decline: return "At least one rule of the program is not met: decline.";
        case Decision::send_more: return "No rule is broken, but something is missing or cannot be told: ask for more.";
        case Decision::none: return "No program was named, so nothing is decided; the figures were worked out again.";
    }
    return "";
}

Table claims_table(const Review& r) {
    Table t{"claims", "Claims beside our figures",
            "Each figure the sender stands for, and the same figure worked out again from the raw data in the filing.",
            {words("claim", "Claim"), words("subject", "Of"), figures("claimed", "Claimed", {4, ""}),
             figures("recomputed", "Recomputed", {4, ""}), words("unit", "Unit"), words("verdict", "Verdict"),
             words("why", "Why"), words("evidence", "Raw data")},
            {}};
    for (std::size_t i = 0; i < r.claims.size(); ++i) {
        const auto& c = r.claims[i];
        t.add(row_key(i), {safe(c.claim.name), safe(c.claim.subject), number(c.claimed), number(c.recomputed), c.claim.unit.empty() ? text("ratio") : safe(c.claim.unit),
                           text(std::string(review::text_of(c.agreement))), safe(c.why), safe(c.evidence)});
    }
    return t;
}

Table rules_table(const Review& r) {
    Table t{"rules", "Rules of the program", "Each rule, whether it is met, why, and where the evidence stands in the filing.",
            {words("rule", "Rule"), words("outcome", "Outcome"), words("why", "Why"), words("evidence", "Evidence")}, {}};
    for (std::size_t i = 0; i < r.rules.size(); ++i) {
        const auto& j = r.rules[i];
        t.add(row_key(i), {safe(j.words), text(std::string(review::text_of(j.outcome))), safe(j.why), safe(j.evidence)});
    }
    return t;
}

Table payment_table(const review::Payment& p) {
    Table t{"payment", "Payment, were it approved", "Line by line, caps last.",
            {words("line", "Line"), words("working", "Working"), figures("amount", "Amount", {2, p.currency})}, {}};
    for (std::size_t i = 0; i < p.lines.size(); ++i) {
        t.add(row_key(i), {safe(p.lines[i].words), safe(p.lines[i].working), number(p.lines[i].amount)});
    }
    Cell total = computed(p.total, "SUM({payment.amount})");
    total.role = CellRole::result;
    if (p.lines.empty()) total = number(p.total);
    t.add("total", {text("Total"), unknown(), total}, RowKind::total);
    return t;
}

Table questions_table(const Review& r) {
    Table t{"questions", "Questions to the sender", "None of these is a finding against anyone; each has innocent answers.",
            {words("question", "Question"), words("evidence", "Where to look")}, {}};
    for (std::size_t i = 0; i < r.questions.size(); ++i) {
        t.add(row_key(i), {safe(r.questions[i].sentence), safe(r.questions[i].evidence)});
    }
    return t;
}

Table savings_table(const review::NormalisedSavings& s, const Shown& shown) {
    const auto volume = [](double m3) { return units::Volume::from_si(m3); };
    Table t{"savings", "Water saved, weather taken out", "What the site would have used had nothing been changed, less what it used.",
            {words("figure", "Figure"), figures("value", "Value", shown.volume_format())}, {}};
    const NumberFormat share{1, "", true};
    const auto line = [&](const std::string& key, const std::string& name, Cell cell) { t.add(key, {text(name), std::move(cell)}); };
    line("expected", "Use expected after the change", number(shown.volume(volume(s.expected))));
    line("used", "Use after the change", number(shown.volume(volume(s.used))));
    Cell saved = computed(shown.volume(volume(s.saved)), "{savings[expected].value}-{savings[used].value}");
    saved.role = CellRole::result;
    line("saved", "Saved", saved);
    line("low", "Saved, lower end of the interval", number(shown.volume(volume(s.low))));
    line("high", "Saved, upper end of the interval", number(shown.volume(volume(s.high))));
    line("share", "Saved, share of the use expected", number(s.fraction, share));
    line("confidence", "Confidence of the interval", number(s.confidence, share));
    line("cv", "Scatter about the baseline, CV(RMSE)", number(s.baseline.cv_rmse, share));
    line("r2", "Share of the variation explained", number(s.baseline.r_squared, share));
    return t;
}

void add_answer(Report& report, const Review& r) {
    auto& sentences = report.answer.sentences;
    sentences.push_back(verdict(r));
    const auto differing = std::count_if(r.claims.begin(), r.claims.end(), [](const auto& c) { return c.agreement == Agreement::differs; });
    const std::string claimed = std::to_string(r.claims.size()) + (r.claims.size() == 1 ? " figure is claimed" : " figures are claimed");
    if (r.claims.empty()) sentences.push_back("No figure is claimed.");
    else if (differing == 0) sentences.push_back(claimed + ", and none of them contradicts the raw data.");
    else sentences.push_back(claimed + "; " + std::to_string(differing) + (differing == 1 ? " of them does" : " of them do") + " not follow from the raw data.");
    for (const auto& j : r.rules) {
        if (j.outcome == RuleOutcome::not_met) sentences.push_back("Not met: " + printable(j.words, 300) + "; " + printable(j.why.english(), 400) + ".");
    }
    if (r.decision == Decision::approve && r.payment) {
        sentences.push_back("Payment: " + units::format_grouped(r.payment->total, 2) + " " + r.payment->currency + ".");
    }
    for (const Sentence& item : r.missing) report.gaps.push_back("To be sent: " + printable(item.english(), 400) + ".");
    for (const Sentence& why : r.savings.refused) report.gaps.push_back("No savings: " + printable(why.english(), 400) + ".");
    for (const Sentence& remark : r.record_remarks) report.gaps.push_back(printable(remark.english(), 400) + ".");
    report.answer.figures = {"summary", "Summary", "", {words("item", "Item"), words("value", "Value")}, {}};
    auto& summary = report.answer.figures;
    summary.add("filing", {text("Filing"), safe(r.filing)});
    summary.add("sha256", {text("SHA-256"), safe(r.sha256)});
    summary.add("signed", {text("Signature"), text(r.is_signed ? "by the key in the filing; whose it is was not checked" : "none")});
    summary.add("application", {text("Application"), safe(r.application)});
    summary.add("applicant", {text("Applicant"), safe(r.applicant)});
    summary.add("program", {text("Program"), safe(r.program)});
    summary.add("questions", {text("Questions"), text(std::to_string(r.questions.size()))});
}

}  // namespace

Report review_report(const Review& r, const Frame& frame) {
    Report report = framed("review", "Review of filing " + printable(r.filing), "Site " + printable(r.site), frame);
    const Shown shown(frame.units);
    add_answer(report, r);
    report.sections.push_back({"claims", "Claims", {claims_table(r)}});
    if (!r.rules.empty()) report.sections.push_back({"rules", "Rules", {rules_table(r)}});
    if (r.payment) report.sections.push_back({"payment", "Payment", {payment_table(*r.payment)}});
    if (r.savings.savings) {
        report.sections.push_back({"savings", "Savings", {savings_table(*r.savings.savings, shown)}});
        report.notes.push_back({"water saved", r.savings.savings->method.english(), "CV(RMSE) over " + std::string(review::text_of(r.savings.savings->baseline.divisor)),
                                "ASHRAE Guideline 14-2014 annex B, from memory; least-squares prediction variance", false});
    }
    if (!r.questions.empty()) report.sections.push_back({"questions", "Questions", {questions_table(r)}});
    for (const auto& c : r.claims) {
        if (!c.method.empty()) report.notes.push_back({printable(c.claim.name) + " " + printable(c.claim.subject), c.method.english(), "", "raw data of the filing", false});
    }
    return report;
}

}  // namespace evenfall::reports
