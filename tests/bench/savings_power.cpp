// SPDX-License-Identifier: GPL-3.0-or-later
// Power study: how often a true saving of 0, 5, 10 or 20 % is called significant (the whole 90 %
// interval lies above zero), how often the interval holds the truth, how often the baseline is
// refused; on simulated sites, and the time beside the bare regressions of the same sites.
#include "core/review/savings.h"
#include "core/stats/regression.h"
#include "tests/review/simulated_site.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>

using namespace evenfall;
using namespace evenfall::review;

namespace {

void study(const tests::Simulation& what, int sites) {
    const SavingsChoices choices{BaselineForm::linear, CvDivisor::n_minus_p, Slope::must_rise, 0.90};
    int judged = 0;
    int significant = 0;
    int covered = 0;
    for (int i = 0; i < sites; ++i) {
        const auto site = tests::simulate(what, static_cast<std::uint64_t>(i));
        const auto answer = water_savings(site.before, site.after, choices);
        if (!answer.savings) continue;
        ++judged;
        if (answer.savings->significant()) ++significant;
        // The truth: what was used is (1 - saving) of what would have been used.
        const double truth = answer.savings->used * what.true_saving / (1.0 - what.true_saving);
        if (answer.savings->low <= truth && truth <= answer.savings->high) ++covered;
    }
    std::printf("%4d %4d  %5.0f %% %6.1f  %6.0f %%  %9.1f %%  %9.1f %%  %7.1f %%\n",
                what.before_months, what.after_months, 100.0 * what.scatter, what.autocorrelation,
                100.0 * what.true_saving, 100.0 * significant / judged, 100.0 * covered / judged,
                100.0 * (sites - judged) / sites);
}

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

}  // namespace

int main(int argc, char** argv) {
    const int sites = argc > 1 ? std::atoi(argv[1]) : 4000;
    std::printf("months    scatter   rho   saving  significant  90 %% holds   refused   (%d sites each)\n", sites);
    for (const int before : {12, 24, 36}) {
        for (const double scatter : {0.08, 0.15}) {
            for (const double rho : {0.0, 0.4}) {
                for (const double saving : {0.0, 0.05, 0.10, 0.20}) {
                    study({before, 12, scatter, rho, saving}, sites);
                }
            }
        }
    }
    std::vector<tests::SimulatedSite> made;
    for (int i = 0; i < 2000; ++i) made.push_back(tests::simulate({}, static_cast<std::uint64_t>(i)));
    double sum = 0.0;
    auto start = std::chrono::steady_clock::now();
    for (const auto& site : made) {
        std::vector<std::vector<double>> x(1);
        std::vector<double> y;
        for (const auto& s : site.before) {
            x[0].push_back(s.need.si() / s.days);
            y.push_back(s.use.si() / s.days);
        }
        sum += stats::least_squares(x, y, stats::Intercept::fitted).r_squared;
    }
    const double bare = seconds_since(start);
    start = std::chrono::steady_clock::now();
    for (const auto& site : made) {
        const auto a = water_savings(site.before, site.after,
                                     {BaselineForm::linear, CvDivisor::n_minus_p, Slope::must_rise, 0.90});
        if (a.savings) sum += a.savings->fraction;
    }
    const double whole = seconds_since(start);
    std::printf("2000 sites: savings %.1f ms, bare regressions %.1f ms, ratio %.2f (%g)\n",
                1e3 * whole, 1e3 * bare, whole / bare, sum);
}
