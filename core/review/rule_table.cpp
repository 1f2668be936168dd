// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/rule_table.h"

#include "core/audit/resample.h"
#include "core/audit/uniformity.h"
#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>

namespace evenfall::review {
namespace {

using units::format_fixed;

constexpr std::size_t resamples = 2000;      // enough for a probability to about 0.01
constexpr std::uint64_t seed = 20240517;

/// Everything a rule may look at.
struct Case {
    const Filing& filing;
    bool is_signed;
    const std::vector<CheckedClaim>& claims;
    const SavingsAnswer& savings;
};

void settle(JudgedRule& j, bool met, std::string why, std::string evidence) {
    j.outcome = met ? RuleOutcome::met : RuleOutcome::not_met;
    j.why = std::move(why);
    j.evidence = std::move(evidence);
}

void leave_open(JudgedRule& j, std::string why, std::string missing, std::string evidence = {}) {
    j.outcome = RuleOutcome::cannot_tell;
    j.why = std::move(why);
    j.missing = std::move(missing);
    j.evidence = std::move(evidence);
}

bool among(const std::vector<std::string>& values, const std::string& value) {
    return std::find(values.begin(), values.end(), value) != values.end();
}

void judge_sector(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    for (const FiledArea& a : c.filing.areas) {
        const std::string evidence = "areas, " + a.area.code;
        if (a.sector.empty()) return leave_open(j, "area " + printable(a.area.code) + " has no sector", "the sector of area " + printable(a.area.code), evidence);
        if (!among(rule.any_of, a.sector)) return settle(j, false, "area " + printable(a.area.code) + " is of the sector " + printable(a.sector), evidence);
    }
    if (c.filing.areas.empty()) return leave_open(j, "no area is filed", "the areas of the site", "areas");
    settle(j, true, "every area is of an accepted sector", "areas");
}

void judge_area(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    if (c.filing.areas.empty()) return leave_open(j, "no area is filed", "the areas of the site", "areas");
    units::Area sum;
    for (const FiledArea& a : c.filing.areas) sum += a.area.size.quantity();
    const bool met = sum.si() >= rule.at_least.value_or(0.0) * (1.0 - 1e-9) && sum.si() <= rule.at_most.value_or(1e300) * (1.0 + 1e-9);
    settle(j, met, "the areas add up to " + format_fixed(sum.in(units::acre), 3) + " ac (" + format_fixed(sum.in(units::hectare), 3) + " ha)", "areas");
}

void judge_meter_type(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    if (c.filing.meters.empty()) return leave_open(j, "no meter is filed", "the meters with their readings", "meters");
    for (const FiledMeter& m : c.filing.meters) {
        const std::string evidence = "meters, " + m.meter.code;
        if (m.type.empty()) return leave_open(j, "meter " + printable(m.meter.code) + " has no type", "the type of meter " + printable(m.meter.code), evidence);
        if (!among(rule.any_of, m.type)) return settle(j, false, "meter " + printable(m.meter.code) + " is of the type " + printable(m.type), evidence);
    }
    settle(j, true, "every meter is of an accepted type", "meters");
}

void judge_evidence(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    const auto n = std::count_if(c.filing.attachments.begin(), c.filing.attachments.end(), [&](const Attachment& a) { return a.kind == rule.what; });
    const double needed = rule.at_least.value_or(1.0);
    const std::string why = std::to_string(n) + " attachments of the kind " + rule.what + " came along; " + format_fixed(needed, 0) + " are asked for";
    if (static_cast<double>(n) >= needed) settle(j, true, why, "attachments");
    else leave_open(j, why, format_fixed(needed - static_cast<double>(n), 0) + " more: " + rule.what, "attachments");
}

void judge_invoice(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    const auto& invoices = c.filing.request.invoices;
    const double needed = rule.at_least.value_or(1.0);
    if (static_cast<double>(invoices.size()) < needed) {
        return leave_open(j, std::to_string(invoices.size()) + " invoices are listed", needed == 1.0 ? std::string("an invoice") : format_fixed(needed, 0) + " invoices", "request.invoices");
    }
    for (const Invoice& i : invoices) {
        if (i.attachment.empty()) {
            return leave_open(j, "invoice " + printable(i.number) + " is listed and did not come along", "a copy of invoice " + printable(i.number), "request.invoices, " + i.number);
        }
    }
    settle(j, true, std::to_string(invoices.size()) + " invoices came along", "request.invoices");
}

void judge_certified(JudgedRule& j, const Case& c) {
    const Auditor& a = c.filing.auditor;
    if (a.certification.empty()) return leave_open(j, "no certification number is given", "the auditor's certification number and its expiry", "auditor");
    if (!a.expires) return leave_open(j, "the expiry of the certification is not given", "the expiry of the auditor's certification", "auditor");
    if (c.filing.tests.empty()) return leave_open(j, "no catch test is filed", "the catch tests", "tests");
    for (const FiledTest& t : c.filing.tests) {
        if (*a.expires < t.test.date) {
            return settle(j, false, "the certification expired on " + calendar::format_date(*a.expires) + ", before test " + printable(t.test.code) + " of " + calendar::format_date(t.test.date), "auditor; tests, " + t.test.code);
        }
    }
    settle(j, true, "valid until " + calendar::format_date(*a.expires) + "; all tests are earlier. The number itself is to be checked with who issued it", "auditor");
}

void judge_count(JudgedRule& j, const ProgramRule& rule, const Case& c, Phase phase) {
    const auto n = std::count_if(c.filing.tests.begin(), c.filing.tests.end(), [&](const FiledTest& t) { return t.phase == phase; });
    const char* side = phase == Phase::before ? "before" : "after";
    const std::string why = std::to_string(n) + " catch tests " + side + " the work are filed";
    if (static_cast<double>(n) >= rule.at_least.value_or(1.0)) settle(j, true, why, "tests");
    else leave_open(j, why, std::string("a catch test made ") + side + " the work, with every reading", "tests");
}

/// Runs `look` on every test; it returns what is wrong, empty when nothing is.
template <class Look>
void judge_each_test(JudgedRule& j, const Case& c, const std::string& fine, Look look) {
    if (c.filing.tests.empty()) return leave_open(j, "no catch test is filed", "the catch tests", "tests");
    for (const FiledTest& t : c.filing.tests) {
        const std::string evidence = "tests, " + t.test.code;
        try {
            const JudgedRule before = j;
            look(t, evidence);
            if (j.outcome != before.outcome || !j.why.empty()) return;
        } catch (const InputError& e) {
            return leave_open(j, "test " + printable(t.test.code) + " cannot be analysed: " + e.what(), "the full sheet of test " + printable(t.test.code), evidence);
        }
    }
    settle(j, true, fine, "tests");
}

void judge_cans(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    judge_each_test(j, c, "every test has as many cans", [&](const FiledTest& t, const std::string& evidence) {
        const auto u = audit::analyse_uniformity(t.test, audit::QuarterRule::whole_cans);
        if (static_cast<double>(u.cans) < rule.at_least.value_or(0.0)) {
            settle(j, false, "test " + printable(t.test.code) + " has " + std::to_string(u.cans) + " cans that count", evidence);
        }
    });
}

void judge_wind(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    judge_each_test(j, c, "no test was windier", [&](const FiledTest& t, const std::string& evidence) {
        if (!t.test.wind) return leave_open(j, "the wind during test " + printable(t.test.code) + " is not recorded", "the wind during test " + printable(t.test.code), evidence);
        if (t.test.wind->quantity().si() > rule.at_most.value_or(1e300) * (1.0 + 1e-9)) {
            settle(j, false, "test " + printable(t.test.code) + " was made in a wind of " + t.test.wind->text(), evidence);
        }
    });
}

void judge_mean_catch(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    judge_each_test(j, c, "every test caught as much", [&](const FiledTest& t, const std::string& evidence) {
        const auto u = audit::analyse_uniformity(t.test, audit::QuarterRule::whole_cans);
        if (u.mean.si() < rule.at_least.value_or(0.0) * (1.0 - 1e-9)) {
            settle(j, false, "test " + printable(t.test.code) + " caught " + format_fixed(u.mean.in(units::millimetre), 2) + " mm on average", evidence);
        }
    });
}

void judge_audit_age(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    std::optional<calendar::Date> newest;
    for (const FiledTest& t : c.filing.tests) {
        if (t.phase == Phase::after && (!newest || t.test.date > *newest)) newest = t.test.date;
    }
    if (!newest) return leave_open(j, "no catch test after the work is filed", "a catch test made after the work, with every reading", "tests");
    const auto written = std::chrono::floor<std::chrono::days>(c.filing.written);
    const auto age = (written - *newest).count();
    settle(j, age >= 0 && static_cast<double>(age) <= rule.at_most.value_or(1e300),
           "the newest test after the work is of " + calendar::format_date(*newest) + ", " + std::to_string(age) + " days before the filing", "tests");
}

struct Mean {
    std::optional<double> du;
    std::optional<double> probability;  ///< that it reaches the threshold; one test only
    std::string words;
    std::string evidence;
    std::string problem;
};

/// DU of the tests of one side; of several areas the mean weighted by area, of several tests of one
/// area the newest.
Mean mean_du(const Case& c, Phase phase, std::optional<double> threshold) {
    Mean m;
    double weight = 0.0;
    double sum = 0.0;
    const FiledTest* only = nullptr;
    std::size_t used = 0;
    for (const FiledArea& a : c.filing.areas) {
        const FiledTest* newest = nullptr;
        for (const FiledTest& t : c.filing.tests) {
            if (t.phase == phase && t.test.area == a.area.code && (newest == nullptr || t.test.date > newest->test.date)) newest = &t;
        }
        if (newest == nullptr) continue;
        try {
            const auto u = audit::analyse_uniformity(newest->test, c.filing.conventions.quarter_rule);
            sum += u.du_lq.value() * a.area.size.quantity().si();
            weight += a.area.size.quantity().si();
            m.words += (m.words.empty() ? "" : "; ") + ("test " + printable(newest->test.code) + " gives " + format_fixed(u.du_lq.value(), 3));
            m.evidence += (m.evidence.empty() ? "tests, " : ", ") + newest->test.code;
            only = newest;
            ++used;
        } catch (const InputError& e) {
            m.problem = "test " + printable(newest->test.code) + " cannot be analysed: " + e.what();
        }
    }
    if (weight > 0.0 && m.problem.empty()) m.du = sum / weight;
    if (m.du && threshold && used == 1) {
        const auto sample = audit::sample_of(only->test, audit::usual_choices());
        const auto drawn = audit::resample_cans(sample, c.filing.conventions.quarter_rule, {resamples, seed, 0.90, 1});
        m.probability = drawn.du_lq.confidence_of_at_least(*threshold);
    }
    m.words += ", quarter rule " + std::string(audit::text_of(c.filing.conventions.quarter_rule));
    return m;
}

/// Met, not met or open by the probability that a threshold is reached.
void settle_by(JudgedRule& j, double probability, double certainty, const std::string& why, const std::string& more,
               const std::string& evidence) {
    const std::string words = why + "; probability of reaching the threshold " + format_fixed(100.0 * probability, 0) + " %, " + format_fixed(100.0 * certainty, 0) + " % asked for";
    if (probability >= certainty) settle(j, true, words, evidence);
    else if (probability <= 1.0 - certainty) settle(j, false, words, evidence);
    else leave_open(j, words, more, evidence);
}

void judge_du_after(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    const Mean m = mean_du(c, Phase::after, rule.certainty ? rule.at_least : std::nullopt);
    if (!m.du) return leave_open(j, m.problem.empty() ? "no catch test after the work is filed" : m.problem, "a catch test made after the work, with every reading", "tests");
    if (!rule.certainty) return settle(j, *m.du >= *rule.at_least, m.words, m.evidence);
    if (!m.probability) return leave_open(j, m.words + "; no probability can be told from several areas or readings all alike", "one area per filing, or more cans", m.evidence);
    settle_by(j, *m.probability, *rule.certainty, m.words, "a test with more cans", m.evidence);
}

void judge_improvement(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    const Mean before = mean_du(c, Phase::before, std::nullopt);
    const Mean after = mean_du(c, Phase::after, std::nullopt);
    if (!before.du || !after.du) {
        return leave_open(j, "tests on both sides of the work are needed", "catch tests made before and after the work, with every reading", "tests");
    }
    settle(j, *after.du - *before.du >= *rule.at_least - 1e-12,
           "before: " + before.words + "; after: " + after.words, before.evidence + "; " + after.evidence);
}

void judge_savings(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    if (!c.savings.savings) {
        std::string why = "no savings can be told";
        for (const std::string& reason : c.savings.refused) why += ": " + reason;
        return leave_open(j, why, "meter readings and weather for a full year before the work and for the months after it", "meters; weather");
    }
    const NormalisedSavings& s = *c.savings.savings;
    const std::string words = "saved " + format_fixed(100.0 * s.fraction, 1) + " %, 90 % interval " + format_fixed(100.0 * s.low / s.expected, 1) + " to " + format_fixed(100.0 * s.high / s.expected, 1) + " %";
    if (!rule.certainty) return settle(j, s.fraction >= *rule.at_least, words, "meters; weather");
    settle_by(j, s.probability_of(*rule.at_least * s.expected), *rule.certainty, words, "readings of more months after the work", "meters; weather");
}

void judge_claims(JudgedRule& j, const Case& c) {
    std::string differing;
    std::string open;
    for (const CheckedClaim& claim : c.claims) {
        const std::string name = claim.claim.name + (claim.claim.subject.empty() ? "" : " of " + printable(claim.claim.subject));
        if (claim.agreement == Agreement::differs) differing += (differing.empty() ? "" : ", ") + name;
        if (claim.agreement == Agreement::cannot_tell) open += (open.empty() ? "" : ", ") + name;
    }
    if (!differing.empty()) return settle(j, false, "these do not follow from the raw data: " + differing, "claims");
    if (!open.empty()) return leave_open(j, "these cannot be recomputed: " + open, "the raw data behind " + open, "claims");
    settle(j, true, c.claims.empty() ? "nothing is claimed" : "all " + std::to_string(c.claims.size()) + " figures follow from the raw data", "claims");
}

void judge(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    switch (rule.kind) {
        case RuleKind::sector: return judge_sector(j, rule, c);
        case RuleKind::area: return judge_area(j, rule, c);
        case RuleKind::meter_type: return judge_meter_type(j, rule, c);
        case RuleKind::evidence: return judge_evidence(j, rule, c);
        case RuleKind::invoice: return judge_invoice(j, rule, c);
        case RuleKind::signed_filing:
            if (c.is_signed) return settle(j, true, "signed by the key " + c.filing.signing_key + "; whose key that is, is for the officer to find out", "signature");
            return leave_open(j, "the filing is not signed", "the filing again, signed by the auditor", "signature");
        case RuleKind::certified: return judge_certified(j, c);
        case RuleKind::test_before: return judge_count(j, rule, c, Phase::before);
        case RuleKind::test_after: return judge_count(j, rule, c, Phase::after);
        case RuleKind::cans: return judge_cans(j, rule, c);
        case RuleKind::wind: return judge_wind(j, rule, c);
        case RuleKind::mean_catch: return judge_mean_catch(j, rule, c);
        case RuleKind::audit_age: return judge_audit_age(j, rule, c);
        case RuleKind::du_after: return judge_du_after(j, rule, c);
        case RuleKind::du_improvement: return judge_improvement(j, rule, c);
        case RuleKind::savings_share: return judge_savings(j, rule, c);
        case RuleKind::claims: return judge_claims(j, c);
    }
}

}  // namespace

std::string_view text_of(RuleOutcome outcome) {
    switch (outcome) {
        case RuleOutcome::met: return "met";
        case RuleOutcome::not_met: return "not met";
        case RuleOutcome::cannot_tell: return "cannot tell";
    }
    return "";
}

std::vector<JudgedRule> judge_rules(const RebateProgram& program, const Filing& filing, bool is_signed,
                                    const std::vector<CheckedClaim>& claims, const SavingsAnswer& savings) {
    const Case c{filing, is_signed, claims, savings};
    std::vector<JudgedRule> judged;
    for (const ProgramRule& rule : program.rules) {
        JudgedRule j;
        j.kind = rule.kind;
        j.words = rule.words;
        judge(j, rule, c);
        judged.push_back(std::move(j));
    }
    return judged;
}

}  // namespace evenfall::review
