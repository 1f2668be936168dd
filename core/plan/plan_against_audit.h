// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/plan/plan.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <optional>
#include <string>
#include <vector>

/// Holds a design plan against a catch test on the same ground and names the heads that explain the
/// difference.
///
/// Predicted depth at can i: p_i = t sum_j r_ij, r_ij the rate of head j at the can (profile.h), t the
/// run time. The fit looks for outputs s_j >= 0, the share of its designed flow that head j delivers:
///     minimise  sum_i ((c_i - t sum_j r_ij s_j) / e_i)^2 + sum_j ((s_j - g) / w)^2
///       c_i  catch, e_i its error: `can_scatter` of the larger of g p_i and a quarter of the mean catch
///       g    common output, the median of c_i / p_i where p_i is at least a quarter of its mean; it
///            takes up pressure, evaporation and run time that all heads share
///       w    how far outputs stray from g before any can is read: g / 2, kept wide so that cans decide
/// The error of s_j comes from the inverse of the matrix of this fit, scaled up where the cans scatter
/// more about it than `can_scatter` explains.
///
/// A head is called weak (strong) when s_j stays below (above) the limit times g by `surest_z` standard
/// errors; as designed when it lies between the limits and its error is small enough that half an
/// output would have stood out; else "cannot tell", with the reason: no can in its reach, or cans that see it only together with others.
/// Limits: schemas/reference/plan_limits.csv. Positions of cans are in the frame of the plan.
///
/// The fit blames heads for what it cannot see: wind, a tilted or turned head, a wrong profile. It says
/// where to look first; only a look at the head tells what is wrong.
/// Method: Bayesian linear model with a common prior (derived). How often it finds planted faults and
/// cries wolf is bounded in the same tests.
/// Tests: tests/plan/plan_against_audit_test.cpp
namespace evenfall::plan {

struct CanComparison {
    std::string can;
    Point place;                     ///< plan unit
    units::Depth caught;
    units::Depth predicted;          ///< by the design
    units::Depth fitted;             ///< by the outputs found
    std::size_t heads = 0;           ///< that reach it
    bool on_turf = true;
};

enum class Verdict { as_designed, weak, strong, cannot_tell };

std::string text_of(Verdict verdict);

struct HeadOutput {
    std::string head;
    Verdict verdict = Verdict::cannot_tell;
    double output = 0.0;             ///< share of its designed flow
    double error = 0.0;              ///< standard error of that
    std::size_t cans = 0;            ///< in its reach
    Sentence evidence;
};

struct PlanAgainstAudit {
    std::vector<CanComparison> cans;   ///< that count, in the order of the sheet
    std::vector<HeadOutput> heads;     ///< in plan order
    units::Depth mean_caught, mean_predicted;
    std::optional<units::LowQuarterDu> du_caught, du_predicted;  ///< at the same cans
    double common_output = 1.0;        ///< g
    double scatter = 0.0;              ///< of a can about the fit, as a share
    units::Depth difference_before;    ///< root mean square of caught less g times predicted
    units::Depth difference_after;     ///< of caught less fitted
    std::vector<Sentence> notes;
    Sentence method, convention, source;
};

/// @throws InputError  an unsound plan or test, a test without positions or run time, fewer than four
///                     cans that the plan wets, most cans outside the outline, or more than 3,000 heads
///                     in reach of cans
PlanAgainstAudit plan_against_audit(const Plan& plan, const audit::CatchTest& test);

}  // namespace evenfall::plan
