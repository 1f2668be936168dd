// SPDX-License-Identifier: GPL-3.0-or-later
// 5,000 full circles of 12 m radius on 40 ha, cells of 0.25 m: the rate field against the bare span
// loops and the naive loop, in one run on one machine; then the cost per head x cell, and the edit of
// one head. Prints milliseconds and ratios.
#include "core/plan/overlap.h"
#include "core/plan/rate_field.h"
#include "core/plan/span_kernel.h"
#include "tests/bench/bare_overlap.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <random>

using namespace evenfall;

namespace {

constexpr double side_m = 632.0;
constexpr double radius_m = 12.0;
constexpr double cell_m = 0.25;

plan::Plan scattered(int heads, double arc_share) {
    std::mt19937_64 draw(20260101);
    const auto uniform = [&](double a, double b) { return a + (b - a) * static_cast<double>(draw() >> 11) * 0x1p-53; };
    plan::Plan p;
    p.units = {units::unit_named<units::Length>("m"), units::unit_named<units::Flow>("m3_h"),
               units::unit_named<units::Pressure>("kpa")};
    p.turf = {{{{0.0, 0.0}, {side_m, 0.0}, {side_m, side_m}, {0.0, side_m}}}};
    for (int i = 0; i < heads; ++i) {
        plan::Head h;
        h.id = std::to_string(i);
        h.x = uniform(0.0, side_m);
        h.y = uniform(0.0, side_m);
        h.radius = radius_m;
        h.flow = 1.0;
        if (uniform(0.0, 1.0) < arc_share) {
            h.arc = uniform(45.0, 350.0);
            h.facing = uniform(0.0, 360.0);
        }
        p.heads.push_back(h);
    }
    return p;
}

template <class Work>
double time_ms(Work&& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

bench::BareJob bare_job(const plan::Sprinklers& all, const plan::Raster& r) {
    bench::BareJob job;
    job.columns = r.columns;
    job.rows = r.rows;
    job.radius = static_cast<float>(radius_m / r.hx);
    for (const auto& s : all.heads) {
        job.heads.push_back({static_cast<float>((s.x - r.x0) / r.hx - 0.5), static_cast<float>((s.y - r.y0) / r.hy - 0.5)});
    }
    std::sort(job.heads.begin(), job.heads.end(), [](const auto& a, const auto& b) { return a.y < b.y; });
    for (int i = 0; i <= 40; ++i) job.table.push_back(static_cast<float>(1.0 - i / 40.0));
    job.table.push_back(0.0F);
    return job;
}

void linear_in_heads() {
    for (const double arcs : {0.0, 1.0}) {
        for (const int heads : {1250, 5000, 20000}) {
            const plan::Plan p = scattered(heads, arcs);
            const plan::Sprinklers all = plan::sprinklers_of(p);
            const plan::Raster r = plan::raster_for(p, all, {}, cell_m * units::metre);
            plan::RateField field(all, {}, r, 2);
            double best = 1e300;
            for (int i = 0; i < 3; ++i) best = std::min(best, time_ms([&] { field.repaint(2); }));
            std::printf("%d heads, %s: %.1f ms, %.2f us a head\n", heads, arcs > 0.0 ? "part circles" : "full circles",
                        best, 1000.0 * best / heads);
        }
    }
}

void edit_one_head(const plan::Plan& p, plan::RateField& field) {
    double worst = 0.0, sum = 0.0;
    const int edits = 200;
    for (int i = 0; i < edits; ++i) {
        const std::size_t n = static_cast<std::size_t>(i) * 24;
        plan::Sprinkler s = field.sprinklers().heads[n];
        s.x = std::clamp(s.x + 1.0, 0.0, side_m);
        s.arc = 200.0;
        const double took = time_ms([&] { static_cast<void>(field.replace(n, s)); });
        worst = std::max(worst, took);
        sum += took;
    }
    std::printf("one head moved among %zu: mean %.2f ms, worst %.2f ms of %d edits\n", p.heads.size(), sum / edits, worst, edits);
}

void whole_prediction(const plan::Plan& p) {
    plan::OverlapOptions o;
    o.cell = cell_m * units::metre;
    o.window_shares = {0.01, 0.02, 0.05, 0.1};
    o.threads = 2;
    double best = 1e300;
    for (int i = 0; i < 3; ++i) best = std::min(best, time_ms([&] { static_cast<void>(plan::overlap_of(p, o)); }));
    std::printf("plan to figures (checks, field, DU, CU, four windows, coverage): %.0f ms\n", best);
}

}  // namespace

int main() {
    const plan::Plan p = scattered(5000, 0.0);
    const plan::Sprinklers all = plan::sprinklers_of(p);
    const plan::Raster r = plan::raster_for(p, all, {}, cell_m * units::metre);
    const bench::BareJob job = bare_job(all, r);
    std::vector<float> cells(r.cells());
    plan::RateField field(all, {}, r, 2);
    std::printf("raster %d x %d, kernel %s\n", r.columns, r.rows, plan::span_kernel().name);
    for (int threads : {1, 2}) {
        const auto team = static_cast<unsigned>(threads);
        double naive = 1e300, span = 1e300, ours = 1e300, counts = 1e300, all_of_it = 1e300;
        // Taken in turn, so that a busy machine disturbs all alike; each clears its cells first.
        for (int round = 0; round < 9; ++round) {
            const auto bare = [&](auto&& kernel) {
                return time_ms([&] {
                    std::fill(cells.begin(), cells.end(), 0.0F);
                    kernel(job, cells.data(), threads);
                });
            };
            naive = std::min(naive, bare(bench::naive_overlap));
            span = std::min(span, bare(bench::span_overlap));
            ours = std::min(ours, time_ms([&] { field.repaint(team); }));
            counts = std::min(counts, time_ms([&] { field.recount(team); }));
            all_of_it = std::min(all_of_it, time_ms([&] { const plan::RateField again(all, {}, r, team); }));
        }
        std::printf("%d thread(s), ms: naive %.1f, bare span %.1f, field %.1f, counts %.1f, a new field with both %.1f\n",
                    threads, naive, span, ours, counts, all_of_it);
        std::printf("  naive / bare span %.2f, field / bare span %.2f\n", naive / span, ours / span);
    }
    linear_in_heads();
    edit_one_head(p, field);
    whole_prediction(p);
    return 0;
}
