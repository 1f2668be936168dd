// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/rule_table.h"

#include "core/audit/resample.h"
#include "core/audit/uniformity.h"
#include "core/sentences.h"
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

void settle(JudgedRule& j, bool met, Sentence why, Sentence evidence) {
    j.outcome = met ? RuleOutcome::met : RuleOutcome::not_met;
    j.why = std::move(why);
    j.evidence = std::move(evidence);
}

void leave_open(JudgedRule& j, Sentence why, Sentence missing, Sentence evidence) {
    j.outcome = RuleOutcome::cannot_tell;
    j.why = std::move(why);
    j.missing = std::move(missing);
    j.evidence = std::move(evidence);
}

Sentence in_areas() { return phrase("review", "areas"); }
Sentence in_meters() { return phrase("review", "meters"); }
Sentence in_tests() { return phrase("review", "tests"); }
Sentence in_meters_and_weather() { return phrase("review", "meters; weather"); }
Sentence in_test(const std::string& code) { return {phrase("review", "tests, %1"), code}; }

bool among(const std::vector<std::string>& values, const std::string& value) {
    return std::find(values.begin(), values.end(), value) != values.end();
}

void leave_without_areas(JudgedRule& j) {
    leave_open(j, phrase("review", "no area is filed"), phrase("review", "the areas of the site"), in_areas());
}

void leave_without_tests(JudgedRule& j) {
    leave_open(j, phrase("review", "no catch test is filed"), phrase("review", "the catch tests"), in_tests());
}

Sentence test_after_the_work() { return phrase("review", "a catch test made after the work, with every reading"); }

void judge_sector(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    for (const FiledArea& a : c.filing.areas) {
        const Sentence evidence(phrase("review", "areas, %1"), a.area.code);
        const std::string code = printable(a.area.code);
        if (a.sector.empty()) {
            return leave_open(j, {phrase("review", "area %1 has no sector"), code}, {phrase("review", "the sector of area %1"), code}, evidence);
        }
        if (!among(rule.any_of, a.sector)) {
            return settle(j, false, {phrase("review", "area %1 is of the sector %2"), code, printable(a.sector)}, evidence);
        }
    }
    if (c.filing.areas.empty()) return leave_without_areas(j);
    settle(j, true, phrase("review", "every area is of an accepted sector"), in_areas());
}

void judge_area(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    if (c.filing.areas.empty()) return leave_without_areas(j);
    units::Area sum;
    for (const FiledArea& a : c.filing.areas) sum += a.area.size.quantity();
    const bool met = sum.si() >= rule.at_least.value_or(0.0) * (1.0 - 1e-9) && sum.si() <= rule.at_most.value_or(1e300) * (1.0 + 1e-9);
    settle(j, met, {phrase("review", "the areas add up to %1 ac (%2 ha)"), format_fixed(sum.in(units::acre), 3), format_fixed(sum.in(units::hectare), 3)}, in_areas());
}

void judge_meter_type(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    if (c.filing.meters.empty()) {
        return leave_open(j, phrase("review", "no meter is filed"), phrase("review", "the meters with their readings"), in_meters());
    }
    for (const FiledMeter& m : c.filing.meters) {
        const Sentence evidence(phrase("review", "meters, %1"), m.meter.code);
        const std::string code = printable(m.meter.code);
        if (m.type.empty()) {
            return leave_open(j, {phrase("review", "meter %1 has no type"), code}, {phrase("review", "the type of meter %1"), code}, evidence);
        }
        if (!among(rule.any_of, m.type)) {
            return settle(j, false, {phrase("review", "meter %1 is of the type %2"), code, printable(m.type)}, evidence);
        }
    }
    settle(j, true, phrase("review", "every meter is of an accepted type"), in_meters());
}

void judge_evidence(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    const auto n = std::count_if(c.filing.attachments.begin(), c.filing.attachments.end(), [&](const Attachment& a) { return a.kind == rule.what; });
    const double needed = rule.at_least.value_or(1.0);
    const Sentence why(phrase("review", "%1 attachments of the kind %2 came along; %3 are asked for"), n, rule.what, format_fixed(needed, 0));
    const Sentence evidence = phrase("review", "attachments");
    if (static_cast<double>(n) >= needed) return settle(j, true, why, evidence);
    leave_open(j, why, {phrase("review", "%1 more: %2"), format_fixed(needed - static_cast<double>(n), 0), rule.what}, evidence);
}

void judge_invoice(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    const auto& invoices = c.filing.request.invoices;
    const double needed = rule.at_least.value_or(1.0);
    if (static_cast<double>(invoices.size()) < needed) {
        const Sentence missing = needed == 1.0 ? Sentence(phrase("review", "an invoice")) : Sentence(phrase("review", "%1 invoices"), format_fixed(needed, 0));
        return leave_open(j, {phrase("review", "%1 invoices are listed"), invoices.size()}, missing, phrase("review", "request.invoices"));
    }
    for (const Invoice& i : invoices) {
        if (i.attachment.empty()) {
            return leave_open(j, {phrase("review", "invoice %1 is listed and did not come along"), printable(i.number)},
                              {phrase("review", "a copy of invoice %1"), printable(i.number)}, {phrase("review", "request.invoices, %1"), i.number});
        }
    }
    settle(j, true, {phrase("review", "%1 invoices came along"), invoices.size()}, phrase("review", "request.invoices"));
}

void judge_certified(JudgedRule& j, const Case& c) {
    const Auditor& a = c.filing.auditor;
    const Sentence auditor = phrase("review", "auditor");
    if (a.certification.empty()) {
        return leave_open(j, phrase("review", "no certification number is given"), phrase("review", "the auditor's certification number and its expiry"), auditor);
    }
    if (!a.expires) {
        return leave_open(j, phrase("review", "the expiry of the certification is not given"), phrase("review", "the expiry of the auditor's certification"), auditor);
    }
    if (c.filing.tests.empty()) return leave_without_tests(j);
    for (const FiledTest& t : c.filing.tests) {
        if (*a.expires < t.test.date) {
            return settle(j, false,
                          {phrase("review", "the certification expired on %1, before test %2 of %3"), calendar::format_date(*a.expires),
                           printable(t.test.code), calendar::format_date(t.test.date)},
                          {phrase("review", "auditor; tests, %1"), t.test.code});
        }
    }
    settle(j, true, {phrase("review", "valid until %1; all tests are earlier. The number itself is to be checked with who issued it"), calendar::format_date(*a.expires)}, auditor);
}

void judge_count(JudgedRule& j, const ProgramRule& rule, const Case& c, Phase phase) {
    const auto n = std::count_if(c.filing.tests.begin(), c.filing.tests.end(), [&](const FiledTest& t) { return t.phase == phase; });
    const bool before = phase == Phase::before;
    const Sentence why = before ? Sentence(phrase("review", "%1 catch tests before the work are filed"), n)
                                : Sentence(phrase("review", "%1 catch tests after the work are filed"), n);
    if (static_cast<double>(n) >= rule.at_least.value_or(1.0)) return settle(j, true, why, in_tests());
    leave_open(j, why, before ? Sentence(phrase("review", "a catch test made before the work, with every reading")) : test_after_the_work(), in_tests());
}

/// Runs `look` on every test; it returns what is wrong, empty when nothing is.
template <class Look>
void judge_each_test(JudgedRule& j, const Case& c, Phrase fine, Look look) {
    if (c.filing.tests.empty()) return leave_without_tests(j);
    for (const FiledTest& t : c.filing.tests) {
        const Sentence evidence = in_test(t.test.code);
        try {
            const JudgedRule before = j;
            look(t, evidence);
            if (j.outcome != before.outcome || !j.why.empty()) return;
        } catch (const InputError& e) {
            return leave_open(j, {phrase("review", "test %1 cannot be analysed: %2"), printable(t.test.code), sentence_of(e)},
                              {phrase("review", "the full sheet of test %1"), printable(t.test.code)}, evidence);
        }
    }
    settle(j, true, fine, in_tests());
}

void judge_cans(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    judge_each_test(j, c, phrase("review", "every test has as many cans"), [&](const FiledTest& t, const Sentence& evidence) {
        const auto u = audit::analyse_uniformity(t.test, audit::QuarterRule::whole_cans);
        if (static_cast<double>(u.cans) < rule.at_least.value_or(0.0)) {
            settle(j, false, {phrase("review", "test %1 has %2 cans that count"), printable(t.test.code), u.cans}, evidence);
        }
    });
}

void judge_wind(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    judge_each_test(j, c, phrase("review", "no test was windier"), [&](const FiledTest& t, const Sentence& evidence) {
        const std::string code = printable(t.test.code);
        if (!t.test.wind) {
            return leave_open(j, {phrase("review", "the wind during test %1 is not recorded"), code}, {phrase("review", "the wind during test %1"), code}, evidence);
        }
        if (t.test.wind->quantity().si() > rule.at_most.value_or(1e300) * (1.0 + 1e-9)) {
            settle(j, false, {phrase("review", "test %1 was made in a wind of %2"), code, t.test.wind->text()}, evidence);
        }
    });
}

void judge_mean_catch(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    judge_each_test(j, c, phrase("review", "every test caught as much"), [&](const FiledTest& t, const Sentence& evidence) {
        const auto u = audit::analyse_uniformity(t.test, audit::QuarterRule::whole_cans);
        if (u.mean.si() < rule.at_least.value_or(0.0) * (1.0 - 1e-9)) {
            settle(j, false, {phrase("review", "test %1 caught %2 mm on average"), printable(t.test.code), format_fixed(u.mean.in(units::millimetre), 2)}, evidence);
        }
    });
}

void judge_audit_age(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    std::optional<calendar::Date> newest;
    for (const FiledTest& t : c.filing.tests) {
        if (t.phase == Phase::after && (!newest || t.test.date > *newest)) newest = t.test.date;
    }
    if (!newest) return leave_open(j, phrase("review", "no catch test after the work is filed"), test_after_the_work(), in_tests());
    const auto written = std::chrono::floor<std::chrono::days>(c.filing.written);
    const auto age = (written - *newest).count();
    settle(j, age >= 0 && static_cast<double>(age) <= rule.at_most.value_or(1e300),
           {phrase("review", "the newest test after the work is of %1, %2 days before the filing"), calendar::format_date(*newest), age}, in_tests());
}

struct Mean {
    std::optional<double> du;
    std::optional<double> probability;  ///< that it reaches the threshold; one test only
    Sentence words;
    Sentence evidence;
    Sentence problem;
};

/// DU of the tests of one side; of several areas the mean weighted by area, of several tests of one
/// area the newest.
Mean mean_du(const Case& c, Phase phase, std::optional<double> threshold) {
    Mean m;
    double weight = 0.0;
    double sum = 0.0;
    const FiledTest* only = nullptr;
    std::vector<Sentence> words;
    std::string tests;
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
            words.push_back({phrase("review", "test %1 gives %2"), printable(newest->test.code), format_fixed(u.du_lq.value(), 3)});
            tests += (tests.empty() ? "" : ", ") + newest->test.code;
            only = newest;
        } catch (const InputError& e) {
            m.problem = {phrase("review", "test %1 cannot be analysed: %2"), printable(newest->test.code), sentence_of(e)};
        }
    }
    if (weight > 0.0 && m.problem.empty()) m.du = sum / weight;
    if (m.du && threshold && words.size() == 1) {
        const auto sample = audit::sample_of(only->test, audit::usual_choices());
        const auto drawn = audit::resample_cans(sample, c.filing.conventions.quarter_rule, {resamples, seed, 0.90, 1});
        m.probability = drawn.du_lq.confidence_of_at_least(*threshold);
    }
    m.words = {phrase("review", "%1, quarter rule %2"), Sentence::joined(std::move(words), "; "), audit::text_of(c.filing.conventions.quarter_rule)};
    m.evidence = in_test(tests);
    return m;
}

/// Met, not met or open by the probability that a threshold is reached.
void settle_by(JudgedRule& j, double probability, double certainty, const Sentence& why, Phrase more, const Sentence& evidence) {
    const Sentence words(phrase("review", "%1; probability of reaching the threshold %2 %, %3 % asked for"), why,
                         format_fixed(100.0 * probability, 0), format_fixed(100.0 * certainty, 0));
    if (probability >= certainty) settle(j, true, words, evidence);
    else if (probability <= 1.0 - certainty) settle(j, false, words, evidence);
    else leave_open(j, words, more, evidence);
}

void judge_du_after(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    const Mean m = mean_du(c, Phase::after, rule.certainty ? rule.at_least : std::nullopt);
    if (!m.du) {
        return leave_open(j, m.problem.empty() ? Sentence(phrase("review", "no catch test after the work is filed")) : m.problem, test_after_the_work(), in_tests());
    }
    if (!rule.certainty) return settle(j, *m.du >= *rule.at_least, m.words, m.evidence);
    if (!m.probability) {
        return leave_open(j, {phrase("review", "%1; no probability can be told from several areas or readings all alike"), m.words},
                          phrase("review", "one area per filing, or more cans"), m.evidence);
    }
    settle_by(j, *m.probability, *rule.certainty, m.words, phrase("review", "a test with more cans"), m.evidence);
}

void judge_improvement(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    const Mean before = mean_du(c, Phase::before, std::nullopt);
    const Mean after = mean_du(c, Phase::after, std::nullopt);
    if (!before.du || !after.du) {
        return leave_open(j, phrase("review", "tests on both sides of the work are needed"),
                          phrase("review", "catch tests made before and after the work, with every reading"), in_tests());
    }
    settle(j, *after.du - *before.du >= *rule.at_least - 1e-12, {phrase("review", "before: %1; after: %2"), before.words, after.words},
           Sentence::joined({before.evidence, after.evidence}, "; "));
}

void judge_savings(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    if (!c.savings.savings) {
        std::vector<Sentence> why{phrase("review", "no savings can be told")};
        why.insert(why.end(), c.savings.refused.begin(), c.savings.refused.end());
        return leave_open(j, Sentence::joined(std::move(why), ": "),
                          phrase("review", "meter readings and weather for a full year before the work and for the months after it"), in_meters_and_weather());
    }
    const NormalisedSavings& s = *c.savings.savings;
    const Sentence words(phrase("review", "saved %1 %, 90 % interval %2 to %3 %"), format_fixed(100.0 * s.fraction, 1),
                         format_fixed(100.0 * s.low / s.expected, 1), format_fixed(100.0 * s.high / s.expected, 1));
    if (!rule.certainty) return settle(j, s.fraction >= *rule.at_least, words, in_meters_and_weather());
    settle_by(j, s.probability_of(*rule.at_least * s.expected), *rule.certainty, words,
              phrase("review", "readings of more months after the work"), in_meters_and_weather());
}

void judge_claims(JudgedRule& j, const Case& c) {
    const Sentence evidence = phrase("review", "claims");
    std::vector<Sentence> differing;
    std::vector<Sentence> open;
    for (const CheckedClaim& claim : c.claims) {
        const Sentence name = claim.claim.subject.empty() ? Sentence(claim.claim.name)
                                                          : Sentence(phrase("review", "%1 of %2"), claim.claim.name, printable(claim.claim.subject));
        if (claim.agreement == Agreement::differs) differing.push_back(name);
        if (claim.agreement == Agreement::cannot_tell) open.push_back(name);
    }
    if (!differing.empty()) {
        return settle(j, false, {phrase("review", "these do not follow from the raw data: %1"), Sentence::joined(differing, ", ")}, evidence);
    }
    if (!open.empty()) {
        const Sentence names = Sentence::joined(open, ", ");
        return leave_open(j, {phrase("review", "these cannot be recomputed: %1"), names}, {phrase("review", "the raw data behind %1"), names}, evidence);
    }
    if (c.claims.empty()) return settle(j, true, phrase("review", "nothing is claimed"), evidence);
    settle(j, true, {phrase("review", "all %1 figures follow from the raw data"), c.claims.size()}, evidence);
}

void judge(JudgedRule& j, const ProgramRule& rule, const Case& c) {
    switch (rule.kind) {
        case RuleKind::sector: return judge_sector(j, rule, c);
        case RuleKind::area: return judge_area(j, rule, c);
        case RuleKind::meter_type: return judge_meter_type(j, rule, c);
        case RuleKind::evidence: return judge_evidence(j, rule, c);
        case RuleKind::invoice: return judge_invoice(j, rule, c);
        case RuleKind::signed_filing:
            if (c.is_signed) return settle(j, true, {phrase("review", "signed by the key %1; whose key that is, is for the officer to find out"), c.filing.signing_key}, phrase("review", "signature"));
            return leave_open(j, phrase("review", "the filing is not signed"), phrase("review", "the filing again, signed by the auditor"), phrase("review", "signature"));
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
