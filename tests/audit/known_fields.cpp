// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/audit/known_fields.h"

#include "core/stats/normal.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace evenfall::test {
namespace {

/// Sum of four exponentials over four: gamma of shape 4 with mean 1.
double skewed(stats::SplitMix64& random) {
    double sum = 0.0;
    for (int i = 0; i < 4; ++i) sum -= std::log(1.0 - random.unit());
    return sum / 4.0;
}

constexpr int heads = 8;          // along each side of the ground
constexpr double radius = 1.0;
constexpr double spacing = 1.1;   // 0.55 of the diameter
constexpr double extent = heads * spacing;

/// Depth at a place on the ground, which is repeated without end; `spread` of the heads' flows.
double cones(double x, double y, double spread) {
    const int column = static_cast<int>(std::floor(x / spacing));
    const int row = static_cast<int>(std::floor(y / spacing));
    double depth = 0.0;
    for (int i = column - 1; i <= column + 2; ++i) {
        for (int j = row - 1; j <= row + 2; ++j) {
            const double d = std::hypot(x - i * spacing, y - j * spacing);
            if (d >= radius) continue;
            const auto wrap = [](int k) { return static_cast<unsigned>((k % heads + heads) % heads); };
            stats::SplitMix64 own = stats::generator_for(99, wrap(i) * heads + wrap(j));
            depth += (1.0 + spread * (2.0 * own.unit() - 1.0)) * (1.0 - d / radius);
        }
    }
    return 10.0 * depth;
}

Truth truth_of(std::vector<double> v) {
    std::sort(v.begin(), v.end());
    const auto n = v.size();
    const auto mean_of = [&](std::size_t k) {
        return std::accumulate(v.begin(), v.begin() + static_cast<std::ptrdiff_t>(k), 0.0) /
               static_cast<double>(k);
    };
    const double mean = mean_of(n);
    double deviation = 0.0;
    for (const double x : v) deviation += std::abs(x - mean);
    return {mean_of(n / 4) / mean, mean_of(n / 2) / mean,
            1.0 - deviation / (mean * static_cast<double>(n)), mean};
}

Truth truth_of_cones(double spread) {
    constexpr int steps = 800;
    std::vector<double> v;
    for (int i = 0; i < steps; ++i) {
        for (int j = 0; j < steps; ++j) {
            v.push_back(cones((i + 0.5) * extent / steps, (j + 0.5) * extent / steps, spread));
        }
    }
    return truth_of(std::move(v));
}

Truth truth_of_skewed() {
    stats::SplitMix64 random(7);
    std::vector<double> v(4'000'000);
    for (double& x : v) x = 10.0 * skewed(random);
    return truth_of(std::move(v));
}

double spread_of(const Field& field) { return field.name == "uneven" ? 0.3 : 0.0; }

}  // namespace

std::vector<Field> known_fields() {
    const Truth normal{1.0 - 1.271106 * 0.2, 1.0 - 0.797885 * 0.2, 1.0 - 0.797885 * 0.2, 10.0};
    const Truth alike = truth_of_cones(0.0);
    const Truth uneven = truth_of_cones(0.3);
    return {{"normal", "random", normal},      {"even", "random", {0.625, 0.75, 0.75, 10.0}},
            {"skewed", "random", truth_of_skewed()}, {"cones", "random", alike},
            {"cones", "grid", alike},          {"uneven", "random", uneven},
            {"uneven", "grid", uneven}};
}

audit::Sample drawn_test(const Field& field, std::size_t n, stats::SplitMix64& random) {
    audit::Sample sample;
    sample.layout = phrase("audit", "solid-set grid");
    const auto add = [&](double mm, std::optional<audit::Point> at) {
        sample.cans.push_back({std::to_string(sample.cans.size() + 1), mm * units::millimetre, 1.0, at});
    };
    const auto at_place = [&](double x, double y) {
        add(cones(x, y, spread_of(field)), audit::Point{x * units::metre, y * units::metre});
    };
    if (field.placement == "grid") {
        const auto k = static_cast<std::size_t>(std::sqrt(static_cast<double>(n)) + 1e-9);
        const double step = extent / static_cast<double>(k);
        const double x0 = random.unit() * step;
        const double y0 = random.unit() * step;
        for (std::size_t i = 0; i < k; ++i) {
            for (std::size_t j = 0; j < k; ++j) {
                at_place(x0 + static_cast<double>(i) * step, y0 + static_cast<double>(j) * step);
            }
        }
        return sample;
    }
    for (std::size_t i = 0; i < n; ++i) {
        if (field.name == "normal") {
            add(std::max(0.0, 10.0 + 2.0 * stats::normal_quantile(random.unit())), std::nullopt);
        } else if (field.name == "even") {
            add(5.0 + 10.0 * random.unit(), std::nullopt);
        } else if (field.name == "skewed") {
            add(10.0 * skewed(random), std::nullopt);
        } else {
            const double x = random.unit() * extent;
            at_place(x, random.unit() * extent);
        }
    }
    return sample;
}

}  // namespace evenfall::test
