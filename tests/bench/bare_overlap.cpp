// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/bare_overlap.h"

#include <algorithm>
#include <cmath>
#include <thread>

namespace evenfall::bench {
namespace {

constexpr int steps = 40;

template <class Band>
void in_bands(int rows, int threads, Band&& band) {
    std::vector<std::jthread> team;
    for (int i = 1; i < threads; ++i) {
        team.emplace_back([&band, rows, threads, i] { band(rows * i / threads, rows * (i + 1) / threads); });
    }
    band(0, rows / threads);
}

void naive_band(const BareJob& job, float* cells, int low, int high) {
    const float r2 = job.radius * job.radius;
    const float scale = steps / job.radius;
    for (const BareHead& h : job.heads) {
        const int y0 = std::max(low, static_cast<int>(std::ceil(h.y - job.radius)));
        const int y1 = std::min(high - 1, static_cast<int>(std::floor(h.y + job.radius)));
        const int x0 = std::max(0, static_cast<int>(std::ceil(h.x - job.radius)));
        const int x1 = std::min(job.columns - 1, static_cast<int>(std::floor(h.x + job.radius)));
        for (int y = y0; y <= y1; ++y) {
            float* row = cells + static_cast<long>(y) * job.columns;
            const float dy = static_cast<float>(y) - h.y;
            for (int x = x0; x <= x1; ++x) {
                const float dx = static_cast<float>(x) - h.x;
                const float d2 = dx * dx + dy * dy;
                if (d2 > r2) continue;
                const float t = std::sqrt(d2) * scale;
                const int k = static_cast<int>(t);
                const float f = t - static_cast<float>(k);
                const float* table = job.table.data() + k;
                row[x] += table[0] + f * (table[1] - table[0]);
            }
        }
    }
}

void span_band(const BareJob& job, float* cells, int low, int high) {
    constexpr int most = 128;
    float distance[most];
    const float r2 = job.radius * job.radius;
    const float scale = steps / job.radius;
    const float* __restrict table = job.table.data();
    for (const BareHead& h : job.heads) {
        const int y0 = std::max(low, static_cast<int>(std::ceil(h.y - job.radius)));
        const int y1 = std::min(high - 1, static_cast<int>(std::floor(h.y + job.radius)));
        for (int y = y0; y <= y1; ++y) {
            const float dy = static_cast<float>(y) - h.y;
            const float w = std::sqrt(std::max(0.0F, r2 - dy * dy));
            const int x0 = std::max(0, static_cast<int>(std::ceil(h.x - w)));
            const int x1 = std::min(job.columns - 1, static_cast<int>(std::floor(h.x + w)));
            for (int from = x0; from <= x1; from += most) {
                const int n = std::min(most, x1 - from + 1);
                float* __restrict row = cells + static_cast<long>(y) * job.columns + from;
                for (int i = 0; i < n; ++i) {
                    const float dx = static_cast<float>(from + i) - h.x;
                    distance[i] = std::sqrt(dx * dx + dy * dy) * scale;
                }
                for (int i = 0; i < n; ++i) {
                    const float t = distance[i];
                    const int k = static_cast<int>(t);
                    const float f = t - static_cast<float>(k);
                    row[i] += table[k] + f * (table[k + 1] - table[k]);
                }
            }
        }
    }
}

}  // namespace

void naive_overlap(const BareJob& job, float* cells, int threads) {
    in_bands(job.rows, threads, [&](int low, int high) { naive_band(job, cells, low, high); });
}

void span_overlap(const BareJob& job, float* cells, int threads) {
    in_bands(job.rows, threads, [&](int low, int high) { span_band(job, cells, low, high); });
}

}  // namespace evenfall::bench
