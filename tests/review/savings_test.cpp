// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/savings.h"

#include "core/input_error.h"
#include "tests/data/read_columns.h"
#include "tests/review/simulated_site.h"

#include <catch2/catch.hpp>

using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using namespace evenfall;
using namespace evenfall::review;

namespace {

constexpr SavingsChoices usual{BaselineForm::linear, CvDivisor::n_minus_p, Slope::must_rise, 0.90};

struct Weeks {
    std::vector<Spell> before;
    std::vector<Spell> after;
};

Weeks heating_gas() {
    const auto data = tests::read_columns("whiteside-gas.csv");
    const auto temperature = tests::numbers(data.at("temp_c"));
    const auto gas = tests::numbers(data.at("gas"));
    Weeks weeks;
    for (std::size_t i = 0; i < gas.size(); ++i) {
        (data.at("period")[i] == "Before" ? weeks.before : weeks.after)
            .push_back({1.0, temperature[i], gas[i]});
    }
    return weeks;
}

}  // namespace

// DERIVED from the published whiteside data (Venables & Ripley 2002, section 6.1; source in the
// file): baseline of the weeks before projected on the weeks after, by rational arithmetic.
// The driver is temperature, so the line falls, and there is no intercept in days to speak of.
TEST_CASE("savings of heating gas by insulation", "[review][derived]") {
    const Weeks weeks = heating_gas();
    REQUIRE(weeks.before.size() == 26);
    REQUIRE(weeks.after.size() == 30);
    const SavingsChoices choices{BaselineForm::linear, CvDivisor::n_minus_p, Slope::free, 0.90};
    const auto s = normalised_savings(weeks.before, weeks.after, choices);
    CHECK_THAT(s.baseline.intercept, WithinAbs(6.853827699, 5e-10));
    CHECK_THAT(s.baseline.slope, WithinAbs(-0.393238822, 5e-10));
    CHECK_THAT(s.baseline.r_squared, WithinAbs(0.943808071, 5e-10));
    CHECK_THAT(s.baseline.cv_rmse, WithinAbs(0.059228156, 5e-10));
    CHECK_THAT(s.baseline.nmbe, WithinAbs(0.0, 1e-12));
    CHECK_THAT(s.expected, WithinAbs(152.960153, 5e-7));
    CHECK_THAT(s.used, WithinAbs(104.5, 1e-9));
    CHECK_THAT(s.saved, WithinAbs(48.460153, 5e-7));
    CHECK_THAT(s.fraction, WithinAbs(0.316815535, 5e-10));
    // The weeks are sorted by temperature within each period, so rho is that of the file's order.
    const double n = 26.0;
    const double widening = n / s.baseline.effective_n;
    CHECK(widening >= 1.0);
    CHECK_THAT(s.standard_deviation / std::sqrt(widening), WithinAbs(2.320700, 5e-7));
}

// DERIVED: the exact sd of 2.320700 gives 8.19 % at 90 % and the factor form 7.64 %, both without
// autocorrelation. The weeks are put in an order whose residuals alternate, so rho is not positive.
TEST_CASE("intervals without autocorrelation", "[review][derived]") {
    Weeks weeks = heating_gas();
    const auto residual = [](const Spell& s) { return s.use - (6.853827699 - 0.393238822 * s.driver); };
    std::sort(weeks.before.begin(), weeks.before.end(),
              [&](const Spell& a, const Spell& b) { return residual(a) < residual(b); });
    std::vector<Spell> alternating;
    for (std::size_t i = 0; i < 13; ++i) {
        alternating.push_back(weeks.before[i]);
        alternating.push_back(weeks.before[25 - i]);
    }
    const SavingsChoices choices{BaselineForm::linear, CvDivisor::n_minus_p, Slope::free, 0.90};
    const auto s = normalised_savings(alternating, weeks.after, choices);
    REQUIRE(s.baseline.autocorrelation < 0.0);
    CHECK(s.baseline.effective_n == 26.0);
    CHECK_THAT(s.standard_deviation, WithinAbs(2.320700, 5e-7));
    CHECK_THAT((s.high - s.low) / 2.0 / s.saved * 100.0, WithinAbs(8.19, 5e-3));
    CHECK_THAT(*s.fractional_uncertainty * 100.0, WithinAbs(7.64, 5e-3));
    CHECK(s.significant());
    CHECK_THAT(s.probability_of(s.low), WithinAbs(0.95, 1e-9));
    CHECK_THAT(s.probability_of(s.saved), WithinAbs(0.5, 1e-9));
    const SavingsChoices other{BaselineForm::linear, CvDivisor::n_minus_c, Slope::free, 0.90};
    CHECK_THAT(normalised_savings(alternating, weeks.after, other).baseline.cv_rmse,
               WithinAbs(0.05803, 5e-6));
}

// CONSTRUCTED: exact points on y = 2 + 3 max(0, x - 4); found again, and used in the forecast.
TEST_CASE("a change point is found", "[review][constructed]") {
    std::vector<Spell> before;
    for (int x = 0; x <= 9; ++x) {
        // A hair of scatter, so that the criterion has something to weigh.
        const double y = 2.0 + 3.0 * std::max(0.0, x - 4.5) + (x % 2 == 0 ? 1e-3 : -1e-3);
        before.push_back({30.0, static_cast<double>(x), 30.0 * y});
    }
    const std::vector<Spell> after{{10.0, 2.0, 15.0}, {10.0, 8.5, 130.0}};
    const SavingsChoices choices{BaselineForm::better_of_both, CvDivisor::n_minus_p, Slope::free, 0.9};
    const auto s = normalised_savings(before, after, choices);
    CHECK(s.baseline.form == BaselineForm::change_point);
    REQUIRE(s.baseline.change_point);
    CHECK(*s.baseline.change_point == 4.5);
    CHECK(s.baseline.p == 3);
    CHECK_THAT(s.expected, WithinAbs(10.0 * 2.0 + 10.0 * 14.0, 0.1));
    CHECK_THAT(s.saved, WithinAbs(15.0, 0.1));
}

// CONSTRUCTED: spells of unlike length on one line leave no residual, whatever their length.
TEST_CASE("spells of unlike length", "[review][constructed]") {
    const std::vector<Spell> before{{28, 1.0, 28 * 5.0}, {31, 2.0, 31 * 7.0}, {61, 3.0, 61 * 9.0}, {30, 4.0, 330}};
    const std::vector<Spell> after{{45, 2.5, 45 * 8.0 - 36.0}};
    const SavingsChoices choices{BaselineForm::linear, CvDivisor::n_minus_p, Slope::free, 0.9};
    const auto s = normalised_savings(before, after, choices);
    CHECK_THAT(s.saved, WithinAbs(36.0, 1e-9));
    CHECK_THAT(s.fraction, WithinAbs(0.1, 1e-12));
}

TEST_CASE("a simulated site is judged", "[review][constructed]") {
    tests::Simulation what;
    what.true_saving = 0.20;
    const auto site = tests::simulate(what, 1);
    const auto answer = water_savings(site.before, site.after, usual);
    REQUIRE(answer.savings);
    CHECK(answer.refused.empty());
    CHECK(answer.savings->low < answer.savings->saved);
    CHECK(answer.savings->saved < answer.savings->high);
    CHECK_THAT(answer.savings->method.english(), Contains("n - p"));
}

TEST_CASE("too little is refused with the reason", "[review][constructed]") {
    tests::Simulation what;
    what.before_months = 8;
    what.after_months = 1;
    const auto site = tests::simulate(what, 3);
    const auto answer = water_savings(site.before, site.after, usual);
    CHECK_FALSE(answer.savings);
    REQUIRE(answer.refused.size() == 3);
    CHECK_THAT(answer.refused[0].english(), Contains("8 metered spells before"));
    CHECK_THAT(answer.refused[1].english(), Contains("1 metered spells after"));
    CHECK_THAT(answer.refused[2].english(), Contains("days metered after"));
}

TEST_CASE("a baseline that explains nothing is refused", "[review][constructed]") {
    auto site = tests::simulate({}, 5);
    tests::Draw draw(99);
    for (auto& spell : site.before) {
        spell.use = units::Volume::from_si(1000.0 * (0.2 + draw.uniform()) * spell.days);
    }
    const auto answer = water_savings(site.before, site.after, usual);
    CHECK_FALSE(answer.savings);
    REQUIRE_FALSE(answer.refused.empty());
    CHECK_THAT(answer.refused[0].english(), Contains("explains only"));
}

TEST_CASE("use that falls with the need is refused", "[review][constructed]") {
    auto site = tests::simulate({}, 6);
    for (auto& spell : site.before) {
        spell.use = units::Volume::from_si(200.0 * spell.days) - 0.3 * spell.need;
        if (spell.use.si() < 0.0) spell.use = units::Volume{};
    }
    const auto answer = water_savings(site.before, site.after, usual);
    CHECK_FALSE(answer.savings);
    REQUIRE_FALSE(answer.refused.empty());
    CHECK_THAT(answer.refused.back().english(), Contains("did not rise"));
}

TEST_CASE("constant need and no use are refused, not computed", "[review][constructed]") {
    auto site = tests::simulate({}, 7);
    for (auto& spell : site.before) spell.need = spell.days * units::cubic_metre;
    auto answer = water_savings(site.before, site.after, usual);
    CHECK_FALSE(answer.savings);
    CHECK_FALSE(answer.refused.empty());
    site = tests::simulate({}, 7);
    for (auto& spell : site.before) spell.use = units::Volume{};
    answer = water_savings(site.before, site.after, usual);
    CHECK_FALSE(answer.savings);
    CHECK_FALSE(answer.refused.empty());
}

TEST_CASE("a hotter summer after than any before is remarked", "[review][constructed]") {
    auto site = tests::simulate({}, 8);
    for (auto& spell : site.after) spell.need = 2.0 * spell.need;
    const auto answer = water_savings(site.before, site.after, usual);
    REQUIRE(answer.savings);
    REQUIRE(answer.remarks.size() == 1);
    CHECK_THAT(answer.remarks[0].english(), Contains("outside the range"));
}

TEST_CASE("bad spells are refused", "[review][constructed]") {
    const std::vector<Spell> good{{1, 1, 1}, {1, 2, 2.5}, {1, 3, 3}};
    const SavingsChoices choices{BaselineForm::linear, CvDivisor::n_minus_p, Slope::free, 0.9};
    CHECK_THROWS_AS(normalised_savings(good, std::vector<Spell>{}, choices), InputError);
    CHECK_THROWS_AS(normalised_savings(good, std::vector<Spell>{{0, 1, 1}}, choices), InputError);
    CHECK_THROWS_AS(normalised_savings(good, std::vector<Spell>{{1, std::nan(""), 1}}, choices), InputError);
}
