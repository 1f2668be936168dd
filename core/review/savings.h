// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/sentence.h"
#include "core/units/quantity.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Savings with the weather taken out: what the site would have used after the change had nothing
/// been changed, less what it did use.
///
/// The baseline is fitted on the spells before the change, as means per day so that spells of
/// unlike length can stand together:
///
///     linear        y = b0 + b1 x                   y use per day, x net ET need per day
///     change point  y = b0 + b1 max(0, x - c)       nothing happens until the need passes c
///
///     savings  S = sum_j d_j (b0 + b1 x_j) - U      d_j days of an after spell, U the use in them
///     fraction F = S / sum_j d_j (b0 + b1 x_j)
///
/// Interval of S (least squares): sd^2 = s^2 (sum d_j^2 w + v' (X'X)^-1 v), v = sum d_j (1, x_j),
/// with s the residual sd of a spell's mean per day. Neighbouring spells that miss on the same side
/// (lag-1 autocorrelation rho > 0) hold less information than their number: the variance grows by
/// (1 + rho) / (1 - rho) and t is taken at n' - p degrees of freedom, n' = n (1 - rho)/(1 + rho).
/// In a dozen residuals rho comes out too low, and intervals too narrow, so here it is corrected
/// for that, rho + (1 + 3 rho)/n, and not below 0. w is 1: a spell's mean is taken to scatter alike
/// whatever its length.
///
///     CV(RMSE) = sqrt(RSS / divisor) / mean y       divisor n - p, or n - c with c explanatory
///                                                   variables: both are in use, so it is named
///     NMBE     = sum (y - fitted) / (divisor mean y)
///     fractional uncertainty dS/S = t 1.26 CV(RMSE) / F sqrt((n/n')(1 + 2/n') / m)
///                                                   m after spells; approximate, of the guideline,
///                                                   with rho as it comes out
///
/// Sources: ASHRAE Guideline 14-2014 annex B (from memory); the n - c divisor, CalTRACK Methods 2.0,
///   4.3.2.2; prediction variance, any regression text; bias of rho, Marriott & Pope (1954)
///   Biometrika 41:390-402 (from memory, checked by simulation). Limits: schemas/reference/savings_rules.csv.
/// Tests: tests/review/savings_test.cpp. How often it errs: tests/review/savings_power_test.cpp.
namespace evenfall::review {

/// One metered spell: a month, a billing period, a week.
struct UseSpell {
    calendar::Date first;
    double days = 0.0;
    units::Volume use;   ///< over the spell
    units::Volume need;  ///< net ET need of the turf over the spell: (ETc - effective rain) x area
};

/// The same without dates and units, for any use that follows a driver.
struct Spell {
    double length = 0.0;
    double driver = 0.0;  ///< mean per unit of length
    double use = 0.0;     ///< total
};

enum class BaselineForm { linear, change_point, better_of_both };
enum class CvDivisor { n_minus_p, n_minus_c };
/// Whether the line must rise with the driver: more need, more water.
enum class Slope { must_rise, free };

struct Baseline {
    BaselineForm form = BaselineForm::linear;  ///< the one fitted
    double intercept = 0.0;      ///< b0, per unit of length
    double slope = 0.0;          ///< b1
    std::optional<double> change_point;
    double residual_sd = 0.0;    ///< s
    double r_squared = 0.0;
    double cv_rmse = 0.0;
    double nmbe = 0.0;
    CvDivisor divisor = CvDivisor::n_minus_p;
    double autocorrelation = 0.0;  ///< rho of the residuals in the order given
    double corrected_autocorrelation = 0.0;  ///< used for the interval; never below 0
    double effective_n = 0.0;      ///< n' by the corrected rho
    std::size_t n = 0;
    std::size_t p = 0;

    double at(double driver) const;  ///< fitted use per unit of length
};

struct NormalisedSavings {
    Baseline baseline;
    double expected = 0.0;   ///< use after, had nothing been changed
    double used = 0.0;
    double saved = 0.0;      ///< expected - used; below zero when use rose
    double fraction = 0.0;   ///< F
    double confidence = 0.0; ///< of the interval, two-sided
    double low = 0.0;
    double high = 0.0;
    std::optional<double> fractional_uncertainty;  ///< dS/S at that confidence; absent when S <= 0
    std::size_t after_spells = 0;
    Sentence method;         ///< names form, divisor, interval and what was done about rho

    /// Larger than chance would make it: the whole interval lies above zero.
    bool significant() const { return low > 0.0; }
    /// Probability that the true saving is at least `threshold`, by the same distribution.
    double probability_of(double threshold) const;

    double standard_deviation = 0.0;
    double degrees_of_freedom = 0.0;
};

/// Savings, or the reasons why none can be told: one sentence each.
struct SavingsAnswer {
    std::optional<NormalisedSavings> savings;
    std::vector<Sentence> refused;      ///< empty exactly when there are savings
    std::vector<Sentence> remarks;      ///< what weakens them
};

struct SavingsChoices {
    BaselineForm form;
    CvDivisor divisor;
    Slope slope;
    double confidence;  ///< such as 0.90
};

/// Fit and forecast without any rule about whether the data are good enough.
/// @throws InputError for fewer spells than coefficients, values not finite, lengths of zero or less
NormalisedSavings normalised_savings(std::span<const Spell> before, std::span<const Spell> after,
                                     const SavingsChoices& choices);

/// The same under the limits of schemas/reference/savings_rules.csv, for water. Volumes in the
/// result are in cubic metres. Never throws for poor data: it refuses and says why.
SavingsAnswer water_savings(std::span<const UseSpell> before, std::span<const UseSpell> after,
                            const SavingsChoices& choices);

Phrase text_of(BaselineForm form);
std::string_view text_of(CvDivisor divisor);

}  // namespace evenfall::review
