// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/recompute.h"

#include "core/audit/uniformity.h"
#include "core/sentences.h"
#include "core/units/number.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

namespace evenfall::review {
namespace {

using audit::QuarterRule;
using units::format_shortest;

/// Slack for binary fractions: a tie such as 0.725 is not exactly half way.
constexpr double slack = 1e-9;
/// A total may be rounded as coarsely as this share of itself and still be meant honestly.
constexpr double coarsest = 0.02;

/// A number as typed, with what its last digit stands for.
struct TypedNumber {
    double value = 0.0;
    double step = 1.0;         ///< one unit of the last digit
    double coarse_step = 1.0;  ///< the same when trailing zeros only fill the number up
};

/// "1,234,000" without its commas; nothing when they do not part thousands: "0,72" is no number
/// here, for nobody can tell what its writer meant.
std::optional<std::string> without_thousands(const std::string& text) {
    const std::size_t first = text.find(',');
    if (first == std::string::npos) return text;
    if (first == 0 || first > 3 || text.front() == '0') return std::nullopt;
    const std::size_t end = std::min(text.find('.'), text.size());
    std::string digits = text.substr(0, first);
    for (std::size_t at = first; at < end; at += 4) {
        if (text[at] != ',' || at + 4 > end) return std::nullopt;
        digits += text.substr(at + 1, 3);
    }
    if (digits.find(',') != std::string::npos) return std::nullopt;
    return digits + text.substr(end);
}

std::optional<TypedNumber> typed_number(const std::string& text) {
    const auto plain = without_thousands(text);
    if (!plain) return std::nullopt;
    const std::string& digits = *plain;
    const auto value = units::parse_number(digits);
    if (!value || digits.find_first_of("eE") != std::string::npos) return std::nullopt;
    TypedNumber n{*value, 1.0, 1.0};
    const std::size_t point = digits.find('.');
    if (point != std::string::npos) {
        const std::size_t end = digits.find_last_of("0123456789");
        n.step = std::pow(10.0, -static_cast<double>(end - point));
        n.coarse_step = n.step;
    } else {
        for (std::size_t i = digits.size(); i-- > 1 && digits[i] == '0';) n.coarse_step *= 10.0;
    }
    return n;
}

bool rounds_to(const TypedNumber& typed, double ours, double step) {
    return std::abs(typed.value - ours) <= 0.5 * step * (1.0 + slack) + slack * std::abs(ours);
}

bool cut_to(const TypedNumber& typed, double ours) {
    if (std::signbit(ours) != std::signbit(typed.value) && typed.value != 0.0) return false;
    const double rest = std::abs(ours) - std::abs(typed.value);
    return rest >= -slack * std::abs(ours) && rest < typed.step * (1.0 + slack);
}

/// What else would have led to a claim: a figure and the words for it.
struct Habit {
    double figure;
    Sentence words;
};

void judge(CheckedClaim& c, const TypedNumber& typed, double ours, const std::vector<Habit>& habits) {
    c.claimed = typed.value;
    c.recomputed = ours;
    if (rounds_to(typed, ours, typed.step)) {
        c.agreement = Agreement::agrees;
        c.why = phrase("review", "our figure rounds to the one claimed");
        return;
    }
    c.agreement = Agreement::explained;
    if (cut_to(typed, ours)) {
        c.why = phrase("review", "the figure was cut instead of rounded");
        return;
    }
    for (double step = 10.0 * typed.step; step <= typed.coarse_step && step <= coarsest * std::abs(typed.value); step *= 10.0) {
        if (!rounds_to(typed, ours, step)) continue;
        c.why = {phrase("review", "the figure was rounded to the nearest %1"), format_shortest(step)};
        return;
    }
    for (const Habit& habit : habits) {
        if (rounds_to(typed, habit.figure, typed.step) || cut_to(typed, habit.figure)) {
            c.why = habit.words;
            return;
        }
    }
    c.agreement = Agreement::differs;
    c.why = phrase("review", "no rounding or rule that was tried leads from the raw data to the claim");
}

/// Ratios may be typed as 0.72 or as 72 with "%"; figures and habits are scaled alike.
void judge_ratio(CheckedClaim& c, TypedNumber typed, double ours, std::vector<Habit> habits) {
    const bool percent = c.claim.unit == "%";
    if (!percent && !c.claim.unit.empty()) {
        c.why = {phrase("review", "the unit %1 is not one of a ratio"), printable(c.claim.unit)};
        return;
    }
    if (percent) {
        for (Habit& h : habits) h.figure *= 100.0;
        ours *= 100.0;
    } else if (typed.value > 1.5 && ours <= 1.0) {
        typed.value /= 100.0;
        typed.step /= 100.0;
        typed.coarse_step = typed.step;
        judge(c, typed, ours, habits);
        if (c.agreement == Agreement::agrees) {
            c.agreement = Agreement::explained;
            c.why = phrase("review", "typed in per cent without saying so");
        }
        return;
    }
    judge(c, typed, ours, habits);
}

constexpr std::array all_rules{QuarterRule::whole_cans, QuarterRule::nearest, QuarterRule::round_up,
                               QuarterRule::part_can};

/// The ratio from means that were rounded to so many decimals first, as on paper sheets.
double from_rounded_means(units::Depth part, units::Depth whole, units::Depth unit, int decimals) {
    const double scale = std::pow(10.0, decimals);
    return std::round(part.in(unit) * scale) / std::round(whole.in(unit) * scale);
}

/// What a millilitre in the test's cans amounts to as a depth, or the unit of the readings.
units::Depth sheet_unit(const audit::CatchTest& test) {
    if (test.catch_unit == audit::CatchUnit::inch) return units::inch;
    if (test.catch_unit == audit::CatchUnit::millimetre || !test.throat_area) return units::millimetre;
    return units::millilitre / test.throat_area->quantity();
}

using Figure = std::function<double(const audit::UniformityResult&)>;

std::vector<Habit> uniformity_habits(const audit::CatchTest& test, QuarterRule rule, const Claim& claim,
                                     const Figure& figure) {
    std::vector<Habit> habits;
    if (claim.name == "du_lq") {
        for (const QuarterRule other : all_rules) {
            if (other == rule) continue;
            habits.push_back({figure(audit::analyse_uniformity(test, other)),
                              {phrase("review", "the quarter rule %1 leads to it"), audit::text_of(other)}});
        }
    }
    if (claim.name == "du_lq" || claim.name == "du_lh") {
        for (const QuarterRule each : all_rules) {
            const auto u = audit::analyse_uniformity(test, each);
            const units::Depth part = claim.name == "du_lq" ? u.low_quarter_mean : u.low_half_mean;
            for (const int decimals : {0, 1, 2}) {
                Sentence words(phrase("review", "means rounded to %1 decimals on the sheet before the ratio lead to it"), decimals);
                if (each != rule && claim.name != "du_lh") {
                    words = {phrase("review", "%1, with the quarter rule %2"), std::move(words), audit::text_of(each)};
                }
                habits.push_back({from_rounded_means(part, u.mean, sheet_unit(test), decimals), std::move(words)});
            }
        }
    }
    return habits;
}

const FiledTest* find_test(const Filing& f, const std::string& code) {
    const auto found = std::find_if(f.tests.begin(), f.tests.end(), [&](const FiledTest& t) { return t.test.code == code; });
    return found == f.tests.end() ? nullptr : &*found;
}

QuarterRule claimed_rule(const Filing& f, const Claim& claim) {
    return audit::quarter_rule_named(claim.quarter_rule).value_or(f.conventions.quarter_rule);
}

/// If counting the cans that were left out leads to the claim, that is said; it is no excuse.
void look_at_excluded(CheckedClaim& c, const audit::CatchTest& test, QuarterRule rule, const Figure& figure,
                      const TypedNumber& typed, double scale) {
    if (c.agreement != Agreement::differs) return;
    audit::CatchTest whole = test;
    bool any = false;
    for (audit::Catch& can : whole.catches) {
        any = any || !can.excluded.empty();
        can.excluded.clear();
    }
    if (any && rounds_to(typed, scale * figure(audit::analyse_uniformity(whole, rule)), typed.step)) {
        c.why = phrase("review", "the claim follows only when the cans that the sheet leaves out are counted");
    }
}

void check_uniformity(CheckedClaim& c, const Filing& f, const TypedNumber& typed) {
    const FiledTest* filed = find_test(f, c.claim.subject);
    if (filed == nullptr) {
        c.why = {phrase("review", "the filing holds no test %1"), printable(c.claim.subject)};
        return;
    }
    c.evidence = {phrase("review", "tests, %1"), filed->test.code};
    const QuarterRule rule = claimed_rule(f, c.claim);
    c.method = {phrase("review", "catches of %1, quarter rule %2"), calendar::format_date(filed->test.date), audit::text_of(rule)};
    const auto u = audit::analyse_uniformity(filed->test, rule);
    const std::string& name = c.claim.name;
    if (name == "cans") return judge(c, typed, static_cast<double>(u.cans), {});
    if (name == "mean_depth") {
        const auto unit = units::unit_named<units::Depth>(c.claim.unit);
        return judge(c, typed, u.mean.in(unit.unit), {});
    }
    if (name == "net_rate") {
        if (!u.net_rate) {
            c.why = phrase("review", "no rate: the test has no run time, or the machine moves");
            return;
        }
        return judge(c, typed, u.net_rate->in(units::unit_named<units::Rate>(c.claim.unit).unit), {});
    }
    const Figure figure = name == "du_lq"   ? Figure([](const auto& r) { return r.du_lq.value(); })
                          : name == "du_lh" ? Figure([](const auto& r) { return r.du_lh.value(); })
                                            : Figure([](const auto& r) { return r.cu.value(); });
    judge_ratio(c, typed, figure(u), uniformity_habits(filed->test, rule, c.claim, figure));
    look_at_excluded(c, filed->test, rule, figure, typed, c.claim.unit == "%" ? 100.0 : 1.0);
}

void check_area(CheckedClaim& c, const Filing& f, const TypedNumber& typed) {
    const auto area = std::find_if(f.areas.begin(), f.areas.end(), [&](const FiledArea& a) { return a.area.code == c.claim.subject; });
    if (area == f.areas.end()) {
        c.why = {phrase("review", "the filing holds no area %1"), printable(c.claim.subject)};
        return;
    }
    c.evidence = {phrase("review", "areas, %1"), area->area.code};
    c.method = phrase("review", "area of the outline on the WGS 84 ellipsoid");
    const auto size = outline_area(area->outline);
    if (!size) {
        c.why = phrase("review", "the filing holds no outline of the area");
        return;
    }
    judge(c, typed, size->in(units::unit_named<units::Area>(c.claim.unit).unit), {});
    // A drawn outline is no survey: a few per cent are within the pen.
    if (c.agreement == Agreement::differs && std::abs(*c.claimed - *c.recomputed) <= 0.05 * *c.recomputed) {
        c.agreement = Agreement::explained;
        c.why = phrase("review", "within 5 % of the outline, which is as well as one is drawn");
    }
}

units::Volume total(const std::vector<UseSpell>& spells) {
    units::Volume sum;
    for (const UseSpell& s : spells) sum += s.use;
    return sum;
}

void check_savings(CheckedClaim& c, const UseRecord& record, const SavingsAnswer& answer, const TypedNumber& typed) {
    c.evidence = phrase("review", "meters and weather");
    if (!answer.savings) {
        const Sentence reason = answer.refused.empty() ? Sentence(phrase("review", "no record")) : answer.refused.front();
        c.why = {phrase("review", "no savings can be told: %1"), reason};
        return;
    }
    const NormalisedSavings& s = *answer.savings;
    c.method = s.method;
    double ours = s.fraction;
    double low = s.low / s.expected;
    double high = s.high / s.expected;
    const double days_before = std::max(1.0, static_cast<double>(record.before.size()));
    const double plain_before = total(record.before).si() / days_before * static_cast<double>(record.after.size());
    double plain = 1.0 - s.used / plain_before;
    double scale = c.claim.unit == "%" ? 100.0 : 1.0;
    if (c.claim.name == "savings") {
        scale = 1.0 / units::unit_named<units::Volume>(c.claim.unit).unit.si();
        ours = s.saved;
        low = s.low;
        high = s.high;
        plain = plain_before - s.used;
    }
    judge(c, typed, ours * scale, {});
    if (c.agreement != Agreement::differs) return;
    const auto words = [&](double v) { return units::format_fixed(v * scale, scale >= 1.0 ? 1 : 3); };
    if (typed.value >= low * scale && typed.value <= high * scale) {
        c.agreement = Agreement::explained;
        c.why = {phrase("review", "inside our 90 % interval from %1 to %2"), words(low), words(high)};
    } else if (rounds_to(typed, plain * scale, typed.step)) {
        c.why = {phrase("review", "the claim is the plain difference of mean monthly use; with the weather taken out the interval is %1 to %2"),
                 words(low), words(high)};
    } else {
        c.why = {phrase("review", "outside our 90 % interval from %1 to %2"), words(low), words(high)};
    }
}

void check_one(CheckedClaim& c, const Filing& f, const UseRecord& record, const SavingsAnswer& savings) {
    const auto typed = typed_number(c.claim.text);
    if (!typed) {
        c.why = {phrase("review", "\"%1\" is not a plain number"), printable(c.claim.text)};
        return;
    }
    c.claimed = typed->value;
    const std::string& name = c.claim.name;
    if (name == "du_lq" || name == "du_lh" || name == "cu" || name == "mean_depth" || name == "net_rate" || name == "cans") {
        check_uniformity(c, f, *typed);
    } else if (name == "area_size") {
        check_area(c, f, *typed);
    } else if (name == "use_before" || name == "use_after") {
        const auto& spells = name == "use_before" ? record.before : record.after;
        c.evidence = phrase("review", "meters");
        c.method = record.method;
        if (spells.empty()) c.why = phrase("review", "no whole month is metered on that side of the change");
        else judge(c, *typed, total(spells).in(units::unit_named<units::Volume>(c.claim.unit).unit), {});
    } else if (name == "savings" || name == "savings_share") {
        check_savings(c, record, savings, *typed);
    } else if (name == "cost") {
        double sum = 0.0;
        for (const Invoice& i : f.request.invoices) sum += i.currency == c.claim.unit ? i.amount : 0.0;
        c.evidence = phrase("review", "request.invoices");
        c.method = {phrase("review", "sum of the invoices in %1"), printable(c.claim.unit)};
        judge(c, *typed, sum, {});
    } else if (name == "devices") {
        double sum = 0.0;
        for (const Device& d : f.request.devices) sum += d.kind == c.claim.subject ? d.count : 0.0;
        c.evidence = phrase("review", "request.devices");
        c.method = phrase("review", "sum over the list of devices");
        judge(c, *typed, sum, {});
    } else {
        c.why = {phrase("review", "there is no way to recompute a claim named %1"), printable(name)};
    }
}

}  // namespace

std::string_view text_of(Agreement agreement) {
    switch (agreement) {
        case Agreement::agrees: return "agrees";
        case Agreement::explained: return "explained";
        case Agreement::differs: return "differs";
        case Agreement::cannot_tell: return "cannot tell";
    }
    return "";
}

std::vector<CheckedClaim> check_claims(const Filing& filing, const UseRecord& record,
                                       const SavingsAnswer& savings) {
    std::vector<CheckedClaim> checked;
    for (const Claim& claim : filing.claims) {
        CheckedClaim c;
        c.claim = claim;
        try {
            check_one(c, filing, record, savings);
        } catch (const InputError& e) {
            // A test that cannot be analysed or a unit that does not fit: the claim stands alone.
            c.agreement = Agreement::cannot_tell;
            c.why = sentence_of(e);
        }
        checked.push_back(std::move(c));
    }
    return checked;
}

}  // namespace evenfall::review
