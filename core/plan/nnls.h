// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

/// Least squares with no negative unknown, on the normal equations.
///
///     minimise  1/2 s' G s - b' s   with every s >= 0
///
/// G = A' A (plus a diagonal where the caller regularises) must be positive definite; then the answer
/// is unique. Active set of Lawson & Hanson, Solving Least Squares Problems, 1974, ch. 23, in the form
/// on normal equations of Bro & de Jong, J. Chemometrics 11, 1997 (from memory). Ends after at most
/// ten steps per unknown.
/// Tests: tests/plan/plan_against_audit_test.cpp, against scipy.optimize.nnls.
namespace evenfall::plan {

/// @param g  n x n, row by row, symmetric
/// @throws std::logic_error  sizes that do not fit or a matrix that is not positive definite
std::vector<double> nonnegative_least_squares(const std::vector<double>& g, const std::vector<double>& b);

/// Inverse of a symmetric positive definite matrix, row by row. @throws std::logic_error
std::vector<double> inverse_of(const std::vector<double>& g, std::size_t n);

}  // namespace evenfall::plan
