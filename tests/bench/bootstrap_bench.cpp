// SPDX-License-Identifier: GPL-3.0-or-later
// Times the bootstrap of catch tests.
//
//     bootstrap_bench one CANS     BCa intervals of all figures, 10,000 resamples, one thread and all
//     bootstrap_bench many         10,000 tests of 24 cans, 1,000 resamples each, one thread and all,
//                                  with the bare loop that only draws the cans
//
// bootstrap_ratio.R runs the first beside R's package boot and prints the ratio.
#include "core/audit/resample.h"
#include "core/stats/parallel.h"
#include "core/stats/random.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string_view>
#include <thread>

using namespace evenfall;
using namespace evenfall::audit;

namespace {

/// The same catches as bootstrap_ratio.R: 10 + 4 sin(1.7 i), i from 1.
Sample sample(std::size_t cans) {
    Sample s;
    s.layout = phrase("audit", "solid-set grid");
    for (std::size_t i = 1; i <= cans; ++i) {
        s.cans.push_back({std::to_string(i),
                          (10.0 + 4.0 * std::sin(1.7 * static_cast<double>(i))) * units::millimetre, 1.0,
                          std::nullopt});
    }
    return s;
}

/// Milliseconds of the fastest of `times` runs, by the clock on the wall.
template <class Work>
double fastest(int times, const Work& work) {
    double best = 1e300;
    for (int t = 0; t < times; ++t) {
        const auto start = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::milli> spent = std::chrono::steady_clock::now() - start;
        best = std::min(best, spent.count());
    }
    return best;
}

/// Milliseconds of processor time per run: what a busy machine does not falsify.
template <class Work>
double processor_time(int times, const Work& work) {
    const std::clock_t start = std::clock();
    for (int t = 0; t < times; ++t) work();
    return 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC / times;
}

void one(std::size_t cans) {
    const Sample s = sample(cans);
    const auto run = [&](unsigned threads) {
        const auto r = resample_cans(s, QuarterRule::part_can, {10'000, 1, 0.90, threads});
        if (!r.du_lq.interval(0.90)) std::abort();
    };
    const double single = processor_time(10, [&] { run(1); });
    std::printf("%zu %.4f %.4f\n", cans, single, fastest(7, [&] { run(0); }));
}

void many() {
    constexpr std::size_t tests = 10'000;
    constexpr std::size_t resamples = 1'000;
    constexpr std::size_t cans = 24;
    const Sample s = sample(cans);
    std::vector<double> low(tests);
    const auto analyse = [&](unsigned threads) {
        return fastest(1, [&] {
            stats::in_pieces(tests, threads, [&](std::size_t begin, std::size_t end) {
                for (std::size_t t = begin; t < end; ++t) {
                    const auto r = resample_cans(s, QuarterRule::part_can, {resamples, t, 0.90, 1});
                    low[t] = r.du_lq.interval(0.90)->low;
                }
            });
        });
    };
    unsigned checksum = 0;
    const double bare = fastest(1, [&] {
        std::uint32_t times[cans] = {};
        for (std::size_t t = 0; t < tests; ++t) {
            for (std::size_t b = 0; b < resamples; ++b) {
                stats::SplitMix64 random = stats::generator_for(t, b);
                for (std::size_t d = 0; d < cans; ++d) ++times[random.below(cans)];
            }
        }
        checksum += times[0];
    });
    const double single = analyse(1);
    const double all = analyse(0);
    std::printf("10,000 tests of 24 cans, 1,000 resamples each\n"
                "drawing alone, one thread   %8.0f ms (%u)\n"
                "five figures, one thread    %8.0f ms, %.2f times the drawing\n"
                "five figures, %u threads     %8.0f ms, %.2f times as fast as one\n",
                bare, checksum, single, single / bare, std::thread::hardware_concurrency(), all, single / all);
}

}  // namespace

int main(int argc, char** argv) {
    const std::string_view what = argc > 1 ? argv[1] : "";
    if (what == "one" && argc > 2) one(std::strtoul(argv[2], nullptr, 10));
    else if (what == "many") many();
    else {
        std::fprintf(stderr, "bootstrap_bench one CANS | many\n");
        return 2;
    }
    return 0;
}
