// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/regression.h"

#include "core/input_error.h"
#include "tests/data/read_columns.h"

#include <catch2/catch.hpp>

#include <cmath>

using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace evenfall;
using stats::Intercept;
using tests::numbers;
using tests::read_columns;

namespace {
/// Agreement to so many significant digits.
auto to_digits(double value, int digits) { return WithinRel(value, 0.5 * std::pow(10.0, 1 - digits) / 10.0); }
}  // namespace

// PUBLISHED. NIST/ITL Statistical Reference Datasets, Norris, certified values; 12 digits is what
// a QR fit in double precision is advised to give.
TEST_CASE("NIST Norris", "[stats][published]") {
    const auto data = read_columns("nist-norris.csv");
    const std::vector<std::vector<double>> x{numbers(data.at("x"))};
    const auto fit = stats::least_squares(x, numbers(data.at("y")), Intercept::fitted);
    CHECK(fit.n == 36);
    CHECK_THAT(fit.coefficients[0], to_digits(-0.262323073774029, 12));
    CHECK_THAT(fit.coefficients[1], to_digits(1.00211681802045, 12));
    CHECK_THAT(fit.standard_errors[0], to_digits(0.232818234301152, 12));
    CHECK_THAT(fit.standard_errors[1], to_digits(0.429796848199937e-03, 12));
    CHECK_THAT(fit.residual_sd, to_digits(0.884796396144373, 12));
    CHECK_THAT(fit.r_squared, to_digits(0.999993745883712, 12));
    CHECK_THAT(fit.regression_ss, to_digits(4255954.13232369, 12));
    CHECK_THAT(fit.residual_ss, to_digits(26.6173985294224, 12));
    CHECK_THAT(fit.f, to_digits(5436385.54079785, 12));
}

// PUBLISHED. NIST/ITL StRD, NoInt1, certified values; R2 about zero. The estimates are held to
// 13 digits.
TEST_CASE("NIST NoInt1", "[stats][published]") {
    const auto data = read_columns("nist-noint1.csv");
    const std::vector<std::vector<double>> x{numbers(data.at("x"))};
    const auto fit = stats::least_squares(x, numbers(data.at("y")), Intercept::none);
    CHECK(fit.n == 11);
    CHECK_THAT(fit.coefficients[0], to_digits(2.07438016528926, 13));
    CHECK_THAT(fit.standard_errors[0], to_digits(0.165289256198347e-01, 13));
    CHECK_THAT(fit.residual_sd, to_digits(3.56753034006338, 13));
    CHECK_THAT(fit.r_squared, to_digits(0.999365492298663, 13));
    CHECK_THAT(fit.regression_ss, to_digits(200457.727272727, 13));
    CHECK_THAT(fit.residual_ss, to_digits(127.272727272727, 13));
    CHECK_THAT(fit.f, to_digits(15750.25, 13));
}

// PUBLISHED. NIST/ITL StRD, Longley, certified values: six collinear predictors, 10 digits.
// F from memory, recomputed exactly.
TEST_CASE("NIST Longley", "[stats][published]") {
    const auto data = read_columns("nist-longley.csv");
    std::vector<std::vector<double>> x;
    for (const char* name : {"x1", "x2", "x3", "x4", "x5", "x6"}) x.push_back(numbers(data.at(name)));
    const auto fit = stats::least_squares(x, numbers(data.at("y")), Intercept::fitted);
    const double estimates[] = {-3482258.63459582,       15.0618722713733,
                                -0.358191792925910e-01,  -2.02022980381683,
                                -1.03322686717359,       -0.511041056535807e-01,
                                1829.15146461355};
    const double errors[] = {890420.383607373,      84.9149257747669,      0.334910077722432e-01,
                             0.488399681651699,     0.214274163161675,     0.226073200069370,
                             455.478499142212};
    REQUIRE(fit.p == 7);
    for (std::size_t i = 0; i < 7; ++i) {
        CAPTURE(i);
        CHECK_THAT(fit.coefficients[i], to_digits(estimates[i], 10));
        CHECK_THAT(fit.standard_errors[i], to_digits(errors[i], 10));
    }
    CHECK_THAT(fit.residual_sd, to_digits(304.854073561965, 10));
    CHECK_THAT(fit.r_squared, to_digits(0.995479004577296, 10));
    CHECK_THAT(fit.f, to_digits(330.285339234588, 10));
}

// PUBLISHED, from memory: Venables & Ripley (2002) section 6.1, regressions on the whiteside data,
// as printed (four decimals); more digits DERIVED by rational arithmetic.
TEST_CASE("heating gas before insulation", "[stats][published]") {
    const auto data = read_columns("whiteside-gas.csv");
    std::vector<std::vector<double>> x(1);
    std::vector<double> y;
    const auto temperature = numbers(data.at("temp_c"));
    const auto gas = numbers(data.at("gas"));
    for (std::size_t i = 0; i < gas.size(); ++i) {
        if (data.at("period")[i] != "Before") continue;
        x[0].push_back(temperature[i]);
        y.push_back(gas[i]);
    }
    const auto fit = stats::least_squares(x, y, Intercept::fitted);
    CHECK_THAT(fit.coefficients[0], WithinAbs(6.8538, 5e-5));
    CHECK_THAT(fit.coefficients[1], WithinAbs(-0.3932, 5e-5));
    CHECK_THAT(fit.standard_errors[0], WithinAbs(0.1184, 5e-5));
    CHECK_THAT(fit.standard_errors[1], WithinAbs(0.0196, 5e-5));
    CHECK_THAT(fit.residual_sd, WithinAbs(0.2813, 5e-5));
    CHECK_THAT(fit.r_squared, WithinAbs(0.9438, 5e-5));
    CHECK_THAT(fit.coefficients[0], WithinAbs(6.853827699, 5e-10));
    CHECK_THAT(fit.coefficients[1], WithinAbs(-0.393238822, 5e-10));
    CHECK_THAT(fit.standard_errors[0], WithinAbs(0.118423410, 5e-10));
    CHECK_THAT(fit.residual_sd, WithinAbs(0.281333740, 5e-10));
}

// PUBLISHED. Student's t table, two-sided 90 % and 95 %, three decimals (any statistics text, from
// memory); the fractional value is DERIVED with scipy.stats.t.ppf.
TEST_CASE("Student's t", "[stats][published]") {
    CHECK_THAT(stats::two_sided_t(0.90, 24), WithinAbs(1.711, 5e-4));
    CHECK_THAT(stats::two_sided_t(0.95, 10), WithinAbs(2.228, 5e-4));
    CHECK_THAT(stats::two_sided_t(0.90, 1), WithinAbs(6.314, 5e-4));
}

// CONSTRUCTED: residuals +1, -1, +1, -1 have products -3 over squares 4.
TEST_CASE("autocorrelation of residuals", "[stats][constructed]") {
    CHECK(stats::lag_one_autocorrelation(std::vector{1.0, -1.0, 1.0, -1.0}) == -0.75);
    CHECK(stats::lag_one_autocorrelation(std::vector{0.0, 0.0}) == 0.0);
}

TEST_CASE("what cannot be fitted is refused", "[stats][constructed]") {
    const std::vector<double> y{1, 2, 3, 4};
    const std::vector<std::vector<double>> twice{{1, 2, 3, 5}, {2, 4, 6, 10}};
    CHECK_THROWS_AS(stats::least_squares(twice, y, Intercept::none), InputError);
    const std::vector<std::vector<double>> constant{{3, 3, 3, 3}};
    CHECK_THROWS_AS(stats::least_squares(constant, y, Intercept::fitted), InputError);
    const std::vector<std::vector<double>> zero{{0, 0, 0, 0}};
    CHECK_THROWS_AS(stats::least_squares(zero, y, Intercept::none), InputError);
    const std::vector<std::vector<double>> short_column{{1, 2, 3}};
    CHECK_THROWS_AS(stats::least_squares(short_column, y, Intercept::none), InputError);
    const std::vector<std::vector<double>> fine{{1, 2}};
    CHECK_THROWS_AS(stats::least_squares(fine, std::vector<double>{1, 2}, Intercept::fitted), InputError);
    const std::vector<std::vector<double>> missing{{1, 2, 3, std::nan("")}};
    CHECK_THROWS_AS(stats::least_squares(missing, y, Intercept::fitted), InputError);
}
