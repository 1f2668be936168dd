// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/regression.h"

#include "core/input_error.h"

#include <Eigen/Dense>
#include <boost/math/distributions/students_t.hpp>

#include <cmath>
#include <limits>
#include <string>

namespace evenfall::stats {
namespace {

using Matrix = Eigen::MatrixXd;
using Vector = Eigen::VectorXd;
using Index = Eigen::Index;

/// A scaled column that adds less than this to those before it repeats them.
constexpr double rank_limit = 1e-10;

Index index(std::size_t i) { return static_cast<Index>(i); }

void check_input(std::span<const std::vector<double>> columns, std::span<const double> y,
                 std::size_t p) {
    const auto finite = [](std::span<const double> values) {
        for (std::size_t i = 0; i < values.size(); ++i) {
            if (!std::isfinite(values[i])) {
                throw InputError({phrase("stats", "observation %1 of a regression"), i + 1},
                                 phrase("stats", "a finite number"));
            }
        }
    };
    finite(y);
    for (const auto& column : columns) {
        finite(column);
        if (column.size() != y.size()) {
            throw InputError({phrase("stats", "%1 explanatory values"), column.size()},
                             {phrase("stats", "as many as observations, %1"), y.size()});
        }
    }
    if (p == 0 || y.size() <= p) {
        throw InputError({phrase("stats", "%1 observations"), y.size()},
                         {phrase("stats", "more than the %1 coefficients of the model"), p});
    }
}

Matrix design(std::span<const std::vector<double>> columns, std::size_t n, bool intercept) {
    Matrix x(index(n), index(columns.size() + (intercept ? 1 : 0)));
    Index at = 0;
    if (intercept) x.col(at++).setOnes();
    for (const auto& column : columns) {
        for (std::size_t i = 0; i < n; ++i) x(index(i), at) = column[i];
        ++at;
    }
    return x;
}

/// y - X b, each sum in extended precision.
Vector residuals_of(const Matrix& x, const Vector& y, const Vector& b) {
    Vector e(y.size());
    for (Index i = 0; i < y.size(); ++i) {
        long double sum = y(i);
        for (Index j = 0; j < b.size(); ++j) sum -= static_cast<long double>(x(i, j)) * b(j);
        e(i) = static_cast<double>(sum);
    }
    return e;
}

double sum_of_squares(const Vector& v, double about) {
    long double sum = 0.0L;
    for (Index i = 0; i < v.size(); ++i) {
        const long double d = static_cast<long double>(v(i)) - about;
        sum += d * d;
    }
    return static_cast<double>(sum);
}

std::vector<double> plain(const Vector& v) { return {v.data(), v.data() + v.size()}; }

}  // namespace

double Regression::quadratic_form(std::span<const double> v) const {
    double sum = 0.0;
    for (std::size_t i = 0; i < p; ++i) {
        for (std::size_t j = 0; j < p; ++j) sum += v[i] * v[j] * unscaled[i * p + j];
    }
    return sum;
}

Regression least_squares(std::span<const std::vector<double>> columns, std::span<const double> y,
                         Intercept intercept) {
    Regression r;
    r.intercept = intercept == Intercept::fitted;
    r.n = y.size();
    r.p = columns.size() + (r.intercept ? 1 : 0);
    check_input(columns, y, r.p);

    const Matrix x = design(columns, r.n, r.intercept);
    const Vector target = Eigen::Map<const Vector>(y.data(), index(r.n));
    const Vector scale = x.colwise().norm().transpose();
    if (scale.minCoeff() <= 0.0) {
        throw InputError(phrase("stats", "an explanatory variable that is always 0"),
                         phrase("stats", "one that varies"));
    }
    const Matrix scaled = x * scale.cwiseInverse().asDiagonal();
    Eigen::ColPivHouseholderQR<Matrix> qr(scaled);
    qr.setThreshold(rank_limit);
    if (qr.rank() < index(r.p)) {
        throw InputError(phrase("stats", "an explanatory variable that follows from the others"),
                         phrase("stats", "variables that vary independently"));
    }
    Vector b = qr.solve(target).cwiseQuotient(scale);
    b += qr.solve(residuals_of(x, target, b)).cwiseQuotient(scale);

    const Vector e = residuals_of(x, target, b);
    const Matrix inverse_r = qr.matrixR()
                                 .topLeftCorner(index(r.p), index(r.p))
                                 .triangularView<Eigen::Upper>()
                                 .solve(Matrix::Identity(index(r.p), index(r.p)));
    Matrix half = qr.colsPermutation() * inverse_r;
    half = scale.cwiseInverse().asDiagonal() * half;
    const Matrix inverse = half * half.transpose();

    r.coefficients = plain(b);
    r.residuals = plain(e);
    r.fitted = plain(target - e);
    r.residual_ss = sum_of_squares(e, 0.0);
    const double total_ss = sum_of_squares(target, r.intercept ? target.mean() : 0.0);
    r.regression_ss = total_ss - r.residual_ss;
    r.residual_sd = std::sqrt(r.residual_ss / r.degrees_of_freedom());
    r.r_squared = total_ss > 0.0 ? 1.0 - r.residual_ss / total_ss : 0.0;
    const double explained_df = static_cast<double>(r.p - (r.intercept ? 1 : 0));
    r.f = r.residual_ss > 0.0
              ? r.regression_ss / explained_df / (r.residual_sd * r.residual_sd)
              : std::numeric_limits<double>::infinity();
    r.unscaled.resize(r.p * r.p);
    for (std::size_t i = 0; i < r.p; ++i) {
        for (std::size_t j = 0; j < r.p; ++j) r.unscaled[i * r.p + j] = inverse(index(i), index(j));
        r.standard_errors.push_back(r.residual_sd * std::sqrt(r.unscaled[i * r.p + i]));
    }
    return r;
}

double lag_one_autocorrelation(std::span<const double> residuals) {
    double products = 0.0;
    double squares = 0.0;
    for (std::size_t i = 0; i < residuals.size(); ++i) {
        squares += residuals[i] * residuals[i];
        if (i > 0) products += residuals[i] * residuals[i - 1];
    }
    return squares > 0.0 ? products / squares : 0.0;
}

double two_sided_t(double confidence, double degrees_of_freedom) {
    const boost::math::students_t distribution(degrees_of_freedom);
    return boost::math::quantile(distribution, 0.5 + confidence / 2.0);
}

}  // namespace evenfall::stats
