// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/decision.h"

#include "core/sentences.h"
#include "core/units/number.h"

#include <cmath>

namespace evenfall::review {
namespace {

std::string numbered(const std::vector<std::string>& items) {
    std::string text;
    for (std::size_t i = 0; i < items.size(); ++i) text += "  " + std::to_string(i + 1) + ". " + items[i] + "\n";
    return text;
}

void tell_rules(std::string& text, const Review& r, RuleOutcome outcome, const std::string& heading) {
    std::vector<std::string> items;
    for (const JudgedRule& j : r.rules) {
        if (j.outcome == outcome) items.push_back(j.words + ": " + j.why.english());
    }
    if (!items.empty()) text += heading + "\n" + numbered(items) + "\n";
}

}  // namespace

std::string letter(const Review& r, const RebateProgram* program) {
    std::string text = "To: " + (r.applicant.empty() ? std::string("the applicant") : printable(r.applicant)) + "\n";
    if (!r.application.empty()) text += "Application: " + printable(r.application) + "\n";
    text += "Filing: " + printable(r.filing) + ", SHA-256 " + r.sha256 + "\n";
    if (program != nullptr) text += "Program: " + program->title + ", version " + program->version + "\n";
    text += "\n";
    switch (r.decision) {
        case Decision::approve: text += "Your application meets every rule of the program.\n\n"; break;
        case Decision::decline: text += "Your application does not meet the program, for the reasons below.\n\n"; break;
        case Decision::send_more: text += "Before we can decide, please send what is listed below.\n\n"; break;
        case Decision::none: text += "We worked your figures out again from the data you sent.\n\n"; break;
    }
    tell_rules(text, r, RuleOutcome::not_met, "Not met:");
    if (!r.missing.empty()) text += "Please send:\n" + numbered(english_of(r.missing)) + "\n";
    std::vector<std::string> differing;
    for (const CheckedClaim& c : r.claims) {
        if (c.agreement != Agreement::differs) continue;
        differing.push_back(c.claim.name + (c.claim.subject.empty() ? "" : " of " + printable(c.claim.subject)) +
                            ": you give " + printable(c.claim.text) + ", we find " +
                            units::format_shortest(std::round(*c.recomputed * 1e6) / 1e6) + "; " + c.why.english());
    }
    if (!differing.empty()) text += "Figures we do not find in the data:\n" + numbered(differing) + "\n";
    std::vector<std::string> asked;
    for (const Question& q : r.questions) asked.push_back(q.sentence.english());
    if (!asked.empty()) text += "Please also help us with these questions:\n" + numbered(asked) + "\n";
    if (r.decision == Decision::approve && r.payment) {
        text += "Payment: " + units::format_grouped(r.payment->total, 2) + " " + r.payment->currency + "\n\n";
    }
    text += "You may ask for the working of every figure, and have the decision looked at again.\n";
    return text;
}

}  // namespace evenfall::review
