// SPDX-License-Identifier: GPL-3.0-or-later
// Daily balances of 1,000 areas x 100 cans x 10 years against a bare-array loop of the same
// arithmetic in the same run. Prints one and two threads, the ratio and the peak memory.
#include "core/budget/root_zone.h"

#include <sys/resource.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <thread>
#include <vector>

using namespace evenfall;
using namespace evenfall::budget;
using namespace evenfall::units;

namespace {

constexpr std::size_t areas = 1000;
constexpr std::size_t cans = 100;
constexpr std::size_t day_count = 3650;

double draw(std::uint64_t& state) {
    state = state * 6364136223846793005ULL + 1442695040888963407ULL;
    return static_cast<double>(state >> 11U) * 0x1p-53;
}

struct Input {
    std::vector<Depth> et, rain, water;
    std::vector<std::vector<double>> shares;
    std::vector<double> available;
};

Input make_input() {
    Input in;
    std::uint64_t seed = 42;
    for (std::size_t t = 0; t < day_count; ++t) {
        const double season =
            0.5 - 0.5 * std::cos(2.0 * 3.141592653589793 * static_cast<double>(t) / 365.25);
        in.et.push_back((1.0 + 6.0 * season) * millimetre);
        in.rain.push_back(draw(seed) < 0.15 ? 20.0 * draw(seed) * millimetre : Depth{});
        in.water.push_back(t % 3 == 0 ? 16.0 * season * millimetre : Depth{});
    }
    for (std::size_t a = 0; a < areas; ++a) {
        std::vector<Depth> depths;
        for (std::size_t i = 0; i < cans; ++i) depths.push_back((0.4 + 1.2 * draw(seed)) * millimetre);
        in.shares.push_back(shares_of_mean(depths));
        in.available.push_back(0.020 + 0.030 * draw(seed));
    }
    return in;
}

constexpr double p = 0.45;

/// The same arithmetic over plain arrays and nothing else: one day of all cans.
void bare_day(const double* __restrict__ share, double* __restrict__ dr, double* __restrict__ dp,
              double* __restrict__ ro, double* __restrict__ et, double* __restrict__ stress,
              double etc, double rain, double water, double limit, double taw, double scale) {
    for (std::size_t i = 0; i < cans; ++i) {
        const double applied = water * share[i];
        const double taken = applied < limit ? applied : limit;
        double d = dr[i] - (rain + taken);
        dp[i] += d < 0.0 ? -d : 0.0;
        d = d < 0.0 ? 0.0 : d;
        const double left = taw - d > 0.0 ? taw - d : 0.0;
        const double factor = left * scale;
        const double wanted = factor < 1.0 ? factor * etc : etc;
        const double e = wanted < left ? wanted : left;
        dr[i] = d + e;
        ro[i] += applied - taken;
        et[i] += e;
        stress[i] += factor < 1.0 ? 1.0 : 0.0;
    }
}

/// Mean drainage of an area; the other sums go through `sink`, so that none is left out.
double bare_area(const Input& in, std::size_t area, double& sink) {
    double dr[cans] = {}, dp[cans] = {}, ro[cans] = {}, et[cans] = {}, stress[cans] = {};
    const double taw = in.available[area];
    for (std::size_t t = 0; t < day_count; ++t) {
        bare_day(in.shares[area].data(), dr, dp, ro, et, stress, in.et[t].si(), in.rain[t].si(),
                 in.water[t].si(), 1e9, taw, 1.0 / ((1.0 - p) * taw));
    }
    double sum = 0.0;
    for (std::size_t i = 0; i < cans; ++i) {
        sum += dp[i];
        sink += ro[i] + et[i] + stress[i];
    }
    return sum / static_cast<double>(cans);
}

double seconds_of(auto work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

}  // namespace

int main() {
    const Input in = make_input();
    std::vector<RootZoneCase> cases;
    for (std::size_t a = 0; a < areas; ++a) {
        cases.push_back({{Depth::from_si(in.available[a]), p, DepletionRule::fixed, Depth{},
                          DayOrder::water_first},
                         {in.et, in.rain, in.water},
                         in.shares[a],
                         {}});
    }
    std::vector<double> bare(areas);
    std::vector<double> sinks(areas);
    std::vector<BucketTotals> ours;
    bool right = true;
    for (const unsigned threads : {1U, 2U}) {
        double best_bare = 1e300;
        double best_ours = 1e300;
        for (int round = 0; round < 3; ++round) {
            best_bare = std::min(best_bare, seconds_of([&] {
                std::vector<std::jthread> workers;
                for (unsigned w = 0; w < threads; ++w) {
                    workers.emplace_back([&, w] {
                        for (std::size_t a = w; a < areas; a += threads) {
                            bare[a] = bare_area(in, a, sinks[a]);
                        }
                    });
                }
            }));
            best_ours = std::min(best_ours, seconds_of([&] { ours = run_cases(cases, threads); }));
        }
        for (std::size_t a = 0; a < areas; ++a) {
            right = right && std::abs(ours[a].drainage.si() - bare[a]) <= 1e-9 * bare[a];
        }
        std::printf("%u thread(s): balances %.3f s, bare loop %.3f s, ratio %.3f, %.0f M bucket-days/s\n",
                    threads, best_ours, best_bare, best_ours / best_bare,
                    static_cast<double>(areas * cans * day_count) / best_ours / 1e6);
    }
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    std::printf("peak memory %.1f MiB, figures %s\n", static_cast<double>(usage.ru_maxrss) / 1024.0,
                right ? "equal" : "DIFFERENT");
    return right ? EXIT_SUCCESS : EXIT_FAILURE;
}
