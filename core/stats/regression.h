// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

/// Ordinary least squares: y = b0 + b1 x1 + ... + bk xk, or the same without b0.
///
/// Solved by a Householder QR decomposition (Eigen) of the columns scaled to length one, then one
/// step of refinement with residuals in extended precision. The normal equations are never formed:
/// they lose half of the digits, which on collinear data is all of them.
///
///   n   observations            p   fitted coefficients, the intercept counted
///   s   = sqrt(RSS / (n - p)), the residual standard deviation
///   R2  = 1 - RSS / TSS, TSS about the mean with an intercept and about zero without one
///   F   = (regression SS / (p - [intercept])) / s^2
///
/// Tests: tests/stats/regression_test.cpp, NIST Statistical Reference Datasets.
namespace evenfall::stats {

enum class Intercept { fitted, none };

struct Regression {
    std::vector<double> coefficients;     ///< the intercept first, where there is one
    std::vector<double> standard_errors;  ///< in the same order
    std::vector<double> fitted;
    std::vector<double> residuals;        ///< y - fitted
    std::vector<double> unscaled;         ///< (X'X)^-1, p x p, row by row
    std::size_t n = 0;
    std::size_t p = 0;
    bool intercept = false;
    double residual_ss = 0.0;
    double regression_ss = 0.0;
    double residual_sd = 0.0;
    double r_squared = 0.0;               ///< 0 where y does not vary at all
    double f = 0.0;                       ///< infinite for an exact fit

    double degrees_of_freedom() const { return static_cast<double>(n - p); }
    /// sum over i, j of v_i v_j (X'X)^-1_ij. The variance of v'b is s^2 times that.
    double quadratic_form(std::span<const double> v) const;
};

/// @param columns  the explanatory variables, one vector of n values each
/// @throws InputError  values that are not finite, columns of unlike length, no more observations
///                     than coefficients, or columns that repeat each other
Regression least_squares(std::span<const std::vector<double>> columns, std::span<const double> y,
                         Intercept intercept);

/// rho = sum e_i e_(i-1) / sum e_i^2 over neighbouring residuals; 0 for a perfect fit.
double lag_one_autocorrelation(std::span<const double> residuals);

/// The value t with P(|T| <= t) = confidence for Student's distribution.
/// @param degrees_of_freedom  above 0, need not be whole  @param confidence  in (0, 1)
double two_sided_t(double confidence, double degrees_of_freedom);

}  // namespace evenfall::stats
