// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/decision.h"

#include "core/sentences.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>

namespace evenfall::review {
namespace {

using units::format_fixed;
using units::format_shortest;

/// Money in whole cents, halves away from zero.
double cents(double amount) { return std::round(amount * 100.0) / 100.0; }

double cost_of(const RebateProgram& program, const Filing& f) {
    double cost = 0.0;
    for (const Invoice& i : f.request.invoices) cost += i.currency == program.currency ? i.amount : 0.0;
    return cost;
}

PaymentLine line_of(const PaymentRule& rule, const RebateProgram& program, const Filing& f, const SavingsAnswer& savings) {
    PaymentLine line;
    line.words = rule.words;
    switch (rule.kind) {
        case PaymentKind::per_device: {
            double count = 0.0;
            for (const Device& d : f.request.devices) count += d.kind == rule.device ? d.count : 0.0;
            const double paid = rule.most ? std::min(count, *rule.most) : count;
            line.working = format_shortest(paid) + " x " + format_fixed(rule.amount, 2);
            if (paid < count) {
                line.working = {phrase("review", "%1 (%2 asked for, at most %3)"), line.working, format_shortest(count), format_shortest(*rule.most)};
            }
            line.amount = cents(paid * rule.amount);
            break;
        }
        case PaymentKind::share_of_cost: {
            const double cost = cost_of(program, f);
            line.working = format_shortest(rule.amount) + " x " + format_fixed(cost, 2);
            line.amount = cents(rule.amount * cost);
            if (rule.most && line.amount > *rule.most) {
                line.amount = *rule.most;
                line.working = {phrase("review", "%1, at most %2"), line.working, format_fixed(*rule.most, 2)};
            }
            break;
        }
        case PaymentKind::per_volume: {
            if (!savings.savings) {
                line.working = phrase("review", "no savings can be told");
                break;
            }
            const double volume = std::max(0.0, savings.savings->saved) / rule.per.si();
            line.working = {phrase("review", "%1 x %2 per %3"), format_fixed(volume, 2), format_fixed(rule.amount, 2), rule.per_text};
            line.amount = cents(volume * rule.amount);
            break;
        }
    }
    return line;
}

void cap(Payment& p, double most, Phrase words, const Sentence& working) {
    if (p.total <= most) return;
    p.lines.push_back({std::string(words.english()), working, cents(most - p.total)});
    p.total = cents(most);
}

void collect_missing(Review& r) {
    for (const JudgedRule& rule : r.rules) {
        if (rule.outcome == RuleOutcome::cannot_tell) add_once(r.missing, rule.missing);
    }
}

Decision decide(const Review& r) {
    const auto any = [&](RuleOutcome outcome) {
        return std::any_of(r.rules.begin(), r.rules.end(), [&](const JudgedRule& j) { return j.outcome == outcome; });
    };
    if (any(RuleOutcome::not_met)) return Decision::decline;
    return any(RuleOutcome::cannot_tell) ? Decision::send_more : Decision::approve;
}

}  // namespace

std::string_view text_of(Decision decision) {
    switch (decision) {
        case Decision::approve: return "approve";
        case Decision::decline: return "decline";
        case Decision::send_more: return "send more";
        case Decision::none: return "none";
    }
    return "";
}

double Review::risk() const {
    double points = 2.0 * static_cast<double>(questions.size());
    for (const CheckedClaim& c : claims) points += c.agreement == Agreement::differs ? 3.0 : 0.0;
    for (const JudgedRule& j : rules) points += j.outcome == RuleOutcome::cannot_tell ? 1.0 : 0.0;
    return points;
}

bool Review::recomputes() const {
    return std::all_of(claims.begin(), claims.end(), [](const CheckedClaim& c) {
        return c.agreement == Agreement::agrees || c.agreement == Agreement::explained;
    });
}

Payment work_out_payment(const RebateProgram& program, const Filing& f, const SavingsAnswer& savings) {
    Payment p;
    p.currency = program.currency;
    for (const PaymentRule& rule : program.payment) {
        p.lines.push_back(line_of(rule, program, f, savings));
        p.total += p.lines.back().amount;
    }
    p.total = cents(p.total);
    if (program.cap_share_of_cost) {
        const double cost = cost_of(program, f);
        cap(p, *program.cap_share_of_cost * cost, phrase("Core", "cut to a share of the invoices"),
            format_shortest(*program.cap_share_of_cost) + " x " + format_fixed(cost, 2));
    }
    if (program.cap_per_area) {
        units::Area size;
        for (const FiledArea& a : f.areas) size += a.area.size.quantity();
        cap(p, *program.cap_per_area * size.si(), phrase("Core", "cut to what the area allows"),
            {phrase("review", "%1 per %2, %3 ac"), format_shortest(program.cap_area_amount), program.cap_area_text, format_fixed(size.in(units::acre), 3)});
    }
    if (program.cap_application) {
        cap(p, *program.cap_application, phrase("Core", "cut to the most that one application gets"), format_fixed(*program.cap_application, 2));
    }
    return p;
}

Review review_filing(const Filing& filing, const std::string& sha256, bool is_signed,
                     const RebateProgram* program, std::optional<double> budget_left) {
    Review r;
    r.filing = filing.code;
    r.sha256 = sha256;
    r.application = filing.request.application;
    r.applicant = filing.applicant.name;
    r.site = filing.site.code;
    r.is_signed = is_signed;
    UseRecord record;
    try {
        record = use_record(filing);
        r.savings = water_savings(record.before, record.after,
                                  {BaselineForm::better_of_both, CvDivisor::n_minus_p, Slope::must_rise, 0.90});
    } catch (const InputError& e) {
        r.savings.refused.push_back({phrase("review", "the record cannot be used: %1"), sentence_of(e)});
    }
    r.record_remarks = record.remarks;
    r.claims = check_claims(filing, record, r.savings);
    r.questions = questions(filing);
    if (program == nullptr) return r;
    r.program = program->name + " " + program->version;
    r.rules = judge_rules(*program, filing, is_signed, r.claims, r.savings);
    r.payment = work_out_payment(*program, filing, r.savings);
    if (budget_left && r.payment->total > *budget_left) {
        r.payment->lines.push_back({std::string(phrase("Core", "more than the program has left").english()),
                                    {phrase("review", "%1 %2 left; nothing is taken off here"), format_fixed(*budget_left, 2), program->currency},
                                    0.0});
    }
    r.decision = decide(r);
    collect_missing(r);
    return r;
}

}  // namespace evenfall::review
