// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/savings.h"

#include "core/reference/table.h"
#include "core/sentences.h"
#include "core/stats/regression.h"
#include "core/units/number.h"

#include <boost/math/distributions/students_t.hpp>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace evenfall::review {
namespace {

constexpr double days_in_a_month = 365.25 / 12.0;

double rule(std::string_view name) {
    const reference::Row* row = reference::Table::named("savings_rules.csv").find("rule", name);
    if (row == nullptr) throw std::logic_error("savings_rules.csv: no rule " + std::string(name));
    return row->number("value");
}

void check_spells(std::span<const Spell> spells) {
    for (const Spell& s : spells) {
        if (!(s.length > 0.0) || !std::isfinite(s.length) || !std::isfinite(s.driver) ||
            !std::isfinite(s.use)) {
            throw InputError({phrase("review", "a spell of %1 days"), units::format_shortest(s.length)},
                             phrase("review", "a length above zero, and finite use and need"));
        }
    }
}

struct Fit {
    stats::Regression regression;
    std::optional<double> change_point;
    /// Bayesian information criterion, without terms that all models share.
    double criterion = 0.0;
    std::size_t p = 0;
};

double explained(double driver, std::optional<double> change_point) {
    return change_point ? std::max(0.0, driver - *change_point) : driver;
}

Fit fit_with(std::span<const Spell> before, std::optional<double> change_point) {
    std::vector<std::vector<double>> x(1);
    std::vector<double> y;
    for (const Spell& s : before) {
        x[0].push_back(explained(s.driver, change_point));
        y.push_back(s.use / s.length);
    }
    Fit fit;
    fit.regression = stats::least_squares(x, y, stats::Intercept::fitted);
    fit.change_point = change_point;
    fit.p = fit.regression.p + (change_point ? 1 : 0);
    const double n = static_cast<double>(before.size());
    fit.criterion = n * std::log(std::max(fit.regression.residual_ss, 1e-300) / n) +
                    static_cast<double>(fit.p) * std::log(n);
    return fit;
}

/// Tries a change point half way between each two neighbouring drivers that leave at least three
/// spells on either side; the best by residual sum of squares, or nothing when there is no room.
std::optional<Fit> fit_change_point(std::span<const Spell> before) {
    std::vector<double> drivers;
    for (const Spell& s : before) drivers.push_back(s.driver);
    std::sort(drivers.begin(), drivers.end());
    std::optional<Fit> best;
    for (std::size_t i = 3; i + 3 <= drivers.size(); ++i) {
        if (!(drivers[i] > drivers[i - 1])) continue;
        const double c = 0.5 * (drivers[i - 1] + drivers[i]);
        Fit fit = fit_with(before, c);
        if (!best || fit.regression.residual_ss < best->regression.residual_ss) best = std::move(fit);
    }
    return best;
}

Fit fit_baseline(std::span<const Spell> before, BaselineForm form) {
    if (form == BaselineForm::linear) return fit_with(before, std::nullopt);
    std::optional<Fit> bent = fit_change_point(before);
    if (form == BaselineForm::change_point) {
        if (!bent) {
            throw InputError({phrase("review", "%1 spells before the change"), before.size()},
                             phrase("review", "at least three on either side of a change point"));
        }
        return *std::move(bent);
    }
    Fit straight = fit_with(before, std::nullopt);
    return bent && bent->criterion < straight.criterion ? *std::move(bent) : straight;
}

/// Kept below 1, where nothing would be left to judge by.
double within_reason(double rho) { return std::clamp(rho, 0.0, 0.95); }

double effective_number(double n, double rho) { return n * (1.0 - rho) / (1.0 + rho); }

Baseline describe(const Fit& fit, CvDivisor divisor) {
    const stats::Regression& r = fit.regression;
    Baseline b;
    b.form = fit.change_point ? BaselineForm::change_point : BaselineForm::linear;
    b.intercept = r.coefficients[0];
    b.slope = r.coefficients[1];
    b.change_point = fit.change_point;
    b.n = r.n;
    b.p = fit.p;
    b.r_squared = r.r_squared;
    b.divisor = divisor;
    const double n = static_cast<double>(r.n);
    b.residual_sd = std::sqrt(r.residual_ss / (n - static_cast<double>(fit.p)));
    double mean = 0.0;
    double bias = 0.0;
    for (std::size_t i = 0; i < r.n; ++i) {
        mean += (r.fitted[i] + r.residuals[i]) / n;
        bias += r.residuals[i];
    }
    const double under =
        divisor == CvDivisor::n_minus_p ? n - static_cast<double>(fit.p) : n - 1.0;
    b.cv_rmse = std::sqrt(r.residual_ss / under) / std::abs(mean);
    b.nmbe = bias / (under * mean);
    b.autocorrelation = stats::lag_one_autocorrelation(r.residuals);
    b.corrected_autocorrelation =
        within_reason(b.autocorrelation + (1.0 + 3.0 * b.autocorrelation) / n);
    b.effective_n = effective_number(n, b.corrected_autocorrelation);
    return b;
}

Sentence method_text(const Baseline& b, double confidence) {
    const Sentence fit(phrase("review", "use per day on net ET need per day, %1, fitted by least squares before the change; CV(RMSE) over %2; %3 % interval of the summed saving from the least-squares variance"),
                       text_of(b.form), text_of(b.divisor), units::format_fixed(100.0 * confidence, 0));
    if (!(b.corrected_autocorrelation > 0.0)) return {phrase("review", "%1, residuals not positively autocorrelated"), fit};
    return {phrase("review", "%1, widened for a lag-1 autocorrelation of %2 (corrected for few spells)"), fit,
            units::format_fixed(b.corrected_autocorrelation, 2)};
}

}  // namespace

double Baseline::at(double driver) const {
    return intercept + slope * explained(driver, change_point);
}

double NormalisedSavings::probability_of(double threshold) const {
    if (!(standard_deviation > 0.0)) return saved >= threshold ? 1.0 : 0.0;
    const boost::math::students_t t(degrees_of_freedom);
    return boost::math::cdf(t, (saved - threshold) / standard_deviation);
}

NormalisedSavings normalised_savings(std::span<const Spell> before, std::span<const Spell> after,
                                     const SavingsChoices& choices) {
    check_spells(before);
    check_spells(after);
    if (after.empty()) throw InputError(phrase("review", "no spell after the change"), phrase("review", "at least one"));
    const Fit fit = fit_baseline(before, choices.form);
    if (fit.regression.n <= fit.p) {
        throw InputError({phrase("review", "%1 spells before the change"), fit.regression.n},
                         {phrase("review", "more than the %1 coefficients of the baseline"), fit.p});
    }
    NormalisedSavings s;
    s.baseline = describe(fit, choices.divisor);
    s.confidence = choices.confidence;
    s.after_spells = after.size();
    double squares = 0.0;
    double v[2] = {0.0, 0.0};
    for (const Spell& spell : after) {
        s.expected += spell.length * s.baseline.at(spell.driver);
        s.used += spell.use;
        squares += spell.length * spell.length;
        v[0] += spell.length;
        v[1] += spell.length * explained(spell.driver, fit.change_point);
    }
    s.saved = s.expected - s.used;
    s.fraction = s.saved / s.expected;

    const double n = static_cast<double>(s.baseline.n);
    const double p = static_cast<double>(s.baseline.p);
    const double widening = n / s.baseline.effective_n;
    s.standard_deviation = s.baseline.residual_sd *
                           std::sqrt(widening * (squares + fit.regression.quadratic_form(v)));
    s.degrees_of_freedom = std::max(1.0, s.baseline.effective_n - p);
    const double t = stats::two_sided_t(choices.confidence, s.degrees_of_freedom);
    s.low = s.saved - t * s.standard_deviation;
    s.high = s.saved + t * s.standard_deviation;
    if (s.saved > 0.0 && s.expected > 0.0) {
        const double m = static_cast<double>(after.size());
        const double plain_n = effective_number(n, within_reason(s.baseline.autocorrelation));
        s.fractional_uncertainty =
            stats::two_sided_t(choices.confidence, std::max(1.0, plain_n - p)) *
            rule("fractional_factor") * s.baseline.cv_rmse / s.fraction *
            std::sqrt(n / plain_n * (1.0 + 2.0 / plain_n) / m);
    }
    s.method = method_text(s.baseline, choices.confidence);
    return s;
}

namespace {

std::vector<Spell> plain_spells(std::span<const UseSpell> spells) {
    std::vector<Spell> plain;
    for (const UseSpell& s : spells) plain.push_back({s.days, s.need.si() / s.days, s.use.si()});
    return plain;
}

double total_days(std::span<const UseSpell> spells) {
    double days = 0.0;
    for (const UseSpell& s : spells) days += s.days;
    return days;
}

/// Counts and lengths that must be there before anything is fitted.
std::vector<Sentence> too_little(std::span<const UseSpell> before, std::span<const UseSpell> after) {
    std::vector<Sentence> reasons;
    const auto need = [&](double found, const char* name, PhraseOf<2> form) {
        const double least = rule(name);
        if (found >= least) return;
        reasons.push_back({form, units::format_fixed(found, 0), units::format_fixed(least, 0)});
    };
    need(static_cast<double>(before.size()), "minimum_before_spells",
         phrase("review", "%1 metered spells before the change; at least %2 are needed"));
    need(total_days(before), "minimum_before_days", phrase("review", "%1 days metered before the change; at least %2 are needed"));
    need(static_cast<double>(after.size()), "minimum_after_spells",
         phrase("review", "%1 metered spells after the change; at least %2 are needed"));
    need(total_days(after), "minimum_after_days", phrase("review", "%1 days metered after the change; at least %2 are needed"));
    return reasons;
}

double largest_cv(double after_days) {
    const double months = after_days / days_in_a_month;
    if (months > 60.0) return rule("maximum_cv_rmse_long");
    return rule(months >= 12.0 ? "maximum_cv_rmse_medium" : "maximum_cv_rmse_short");
}

std::vector<Sentence> poor_baseline(const Baseline& b, double after_days, Slope slope) {
    std::vector<Sentence> reasons;
    if (b.r_squared < rule("minimum_r_squared")) {
        reasons.push_back({phrase("review", "the need of the turf explains only %1 % of how use varied before the change; at least %2 % is asked for"),
                           units::format_fixed(100.0 * b.r_squared, 0), units::format_fixed(100.0 * rule("minimum_r_squared"), 0)});
    }
    const double limit = largest_cv(after_days);
    if (!(b.cv_rmse <= limit)) {
        reasons.push_back({phrase("review", "use before the change scatters by %1 % about the baseline (CV(RMSE), %2); at most %3 % is accepted"),
                           units::format_fixed(100.0 * b.cv_rmse, 1), text_of(b.divisor), units::format_fixed(100.0 * limit, 0)});
    }
    if (slope == Slope::must_rise && !(b.slope > 0.0)) {
        reasons.emplace_back(phrase("review", "use before the change did not rise with the need of the turf, so the weather cannot be taken out"));
    }
    return reasons;
}

void remark_range(std::span<const Spell> before, std::span<const Spell> after,
                  std::vector<Sentence>& remarks) {
    const auto less = [](const Spell& a, const Spell& b) { return a.driver < b.driver; };
    const auto [low, high] = std::minmax_element(before.begin(), before.end(), less);
    const double room = rule("maximum_extrapolation") * (high->driver - low->driver);
    const auto outside = std::count_if(after.begin(), after.end(), [&](const Spell& s) {
        return s.driver < low->driver - room || s.driver > high->driver + room;
    });
    if (outside > 0) {
        remarks.push_back({phrase("review", "%1 of %2 spells after the change had a need outside the range seen before it: the baseline is stretched there"),
                           outside, after.size()});
    }
}

}  // namespace

SavingsAnswer water_savings(std::span<const UseSpell> before, std::span<const UseSpell> after,
                            const SavingsChoices& choices) {
    SavingsAnswer answer;
    answer.refused = too_little(before, after);
    if (!answer.refused.empty()) return answer;
    const std::vector<Spell> x = plain_spells(before);
    const std::vector<Spell> y = plain_spells(after);
    try {
        NormalisedSavings savings = normalised_savings(x, y, choices);
        answer.refused = poor_baseline(savings.baseline, total_days(after), choices.slope);
        if (answer.refused.empty() && !(savings.expected > 0.0)) {
            answer.refused.emplace_back(phrase("review", "the baseline expects no use after the change"));
        }
        if (answer.refused.empty()) answer.savings = std::move(savings);
    } catch (const InputError& e) {
        answer.refused.push_back({phrase("review", "no baseline can be fitted: %1"), sentence_of(e)});
    }
    if (answer.savings) remark_range(x, y, answer.remarks);
    return answer;
}

Phrase text_of(BaselineForm form) {
    switch (form) {
        case BaselineForm::linear: return phrase("review", "straight line with intercept");
        case BaselineForm::change_point: return phrase("review", "line with a change point");
        case BaselineForm::better_of_both: return phrase("review", "straight or with a change point, whichever the Bayesian information criterion prefers");
    }
    return {};
}

std::string_view text_of(CvDivisor divisor) {
    return divisor == CvDivisor::n_minus_p ? "n - p" : "n - c";
}

}  // namespace evenfall::review
