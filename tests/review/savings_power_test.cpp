// SPDX-License-Identifier: GPL-3.0-or-later
// How often the savings method errs, on CONSTRUCTED sites with a known truth. The bounds are those
// of 95 % binomial limits about what a correct 90 % interval gives with so many sites, widened on
// the safe side only (an interval may hold the truth more often than it says).
// The whole table: tests/data/savings_power.csv, printed by bench_savings_power.
#include "core/review/savings.h"
#include "tests/review/simulated_site.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::review;

namespace {

struct Score {
    double significant = 0.0;
    double held = 0.0;
    double refused = 0.0;
};

Score score(const tests::Simulation& what, BaselineForm form) {
    constexpr int sites = 500;
    const SavingsChoices choices{form, CvDivisor::n_minus_p, Slope::must_rise, 0.90};
    int significant = 0;
    int held = 0;
    int judged = 0;
    for (int i = 0; i < sites; ++i) {
        const auto site = tests::simulate(what, static_cast<std::uint64_t>(i));
        const auto answer = water_savings(site.before, site.after, choices);
        if (!answer.savings) continue;
        ++judged;
        const double truth = answer.savings->used * what.true_saving / (1.0 - what.true_saving);
        significant += answer.savings->significant() ? 1 : 0;
        held += answer.savings->low <= truth && truth <= answer.savings->high ? 1 : 0;
    }
    return {double(significant) / judged, double(held) / judged, double(sites - judged) / sites};
}

}  // namespace

TEST_CASE("no saving is seldom called one", "[review][power][constructed]") {
    // Nominal: 5 % (one side of a 90 % interval).
    const auto form = GENERATE(BaselineForm::linear, BaselineForm::better_of_both);
    for (const double rho : {0.0, 0.2}) {
        const Score s = score({24, 12, 0.10, rho, 0.0}, form);
        CAPTURE(std::string(text_of(form).english()), rho, s.significant, s.held);
        CHECK(s.significant <= 0.072);
        CHECK(s.significant >= 0.005);
        CHECK(s.held >= 0.872);
        CHECK(s.held <= 0.985);
    }
}

TEST_CASE("savings that matter are seen", "[review][power][constructed]") {
    const Score five = score({24, 12, 0.10, 0.2, 0.05}, BaselineForm::linear);
    const Score ten = score({24, 12, 0.10, 0.2, 0.10}, BaselineForm::linear);
    const Score twenty = score({24, 12, 0.10, 0.2, 0.20}, BaselineForm::linear);
    CAPTURE(five.significant, ten.significant, twenty.significant);
    CHECK(five.significant < ten.significant);
    CHECK(ten.significant < twenty.significant);
    CHECK(five.significant > 0.15);
    CHECK(ten.significant > 0.60);
    CHECK(twenty.significant > 0.98);
    CHECK(twenty.held >= 0.872);
}
