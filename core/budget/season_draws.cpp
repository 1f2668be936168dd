// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season_draws.h"

#include "core/audit/low_share.h"
#include "core/audit/multiplier.h"
#include "core/reference/table.h"
#include "core/stats/normal.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace evenfall::budget {
namespace {

/// Factors stay at least this far above zero, however unlucky the draw.
constexpr double least_factor = 0.05;

double known(std::string_view key) {
    const auto* row = reference::Table::named("season_uncertainty.csv").find("key", key);
    assert(row != nullptr);
    return row->number("value");
}

struct Sizes {
    double et = known("reference_et_sd");
    double coefficient = known("coefficient_sd");
    double area = known("area_sd");
    double meter = known("meter_half_width");
    double estimated = known("estimated_reading_sd");
    double soil = known("soil_capacity_sd");
};

const Sizes& sizes() {
    static const Sizes known_sizes;
    return known_sizes;
}

double factor(stats::SplitMix64& generator, double sd) {
    // Half a step inside, so that the quantile is finite.
    const double p = generator.unit() + 0x1p-54;
    return std::max(least_factor, 1.0 + sd * stats::normal_quantile(p));
}

/// The cans of a test drawn anew, brought back to a mean of 1; nothing when all drawn were dry.
std::optional<TestedCans> drawn_again(const TestedCans& test, stats::SplitMix64& generator) {
    const auto n = test.shares.size();
    std::vector<std::size_t> picked(n);
    for (auto& index : picked) index = generator.below(static_cast<std::uint32_t>(n));
    std::sort(picked.begin(), picked.end(), [&](std::size_t a, std::size_t b) {
        if (test.shares[a] != test.shares[b]) return test.shares[a] < test.shares[b];
        return test.weights[a] < test.weights[b];
    });
    TestedCans out;
    for (const std::size_t i : picked) {
        out.shares.push_back(test.shares[i]);
        out.weights.push_back(test.weights[i]);
    }
    const double weight = std::accumulate(out.weights.begin(), out.weights.end(), 0.0);
    if (!(weight > 0.0)) return std::nullopt;
    const double mean = audit::mean_of(out.shares, out.weights);
    if (!(mean > 0.0)) return std::nullopt;
    for (double& share : out.shares) share /= mean;
    const double low =
        audit::low_share(out.shares, out.weights, 0.25, audit::QuarterRule::part_can).mean;
    out.du_lq = units::LowQuarterDu::of(std::clamp(low, 0.0, 1.0));
    return out;
}

/// 1 / DU_LH of drawn cans; the linear form where half of them are dry.
double multiplier_of(const TestedCans& cans) {
    const double low_half =
        audit::low_share(cans.shares, cans.weights, 0.5, audit::QuarterRule::part_can).mean;
    if (low_half > 0.0) return std::max(1.0, 1.0 / low_half);
    return audit::linear_multiplier(cans.du_lq).value();
}

double planning_multiplier(const UniformityChoice& choice, stats::SplitMix64& generator) {
    const double low = choice.low.value_or(choice.du_lq).value();
    const double high = choice.high.value_or(choice.du_lq).value();
    const double du = low + (high - low) * generator.unit();
    return audit::linear_multiplier(units::LowQuarterDu::of(du)).value();
}

}  // namespace

stats::SplitMix64 named_generator(std::uint64_t seed, std::string_view name, std::uint64_t number) {
    std::uint64_t key = seed;
    for (const char c : name) key = stats::mixed(key ^ static_cast<unsigned char>(c));
    return stats::generator_for(key, number);
}

SiteDraw draw_site(std::uint64_t seed, std::uint64_t number) {
    auto generator = named_generator(seed, "site", number);
    return {factor(generator, sizes().et)};
}

AreaDraw draw_area(const AreaSeason& area, const SiteDraw& site, std::uint64_t seed,
                   std::uint64_t number, bool with_cans) {
    auto generator = named_generator(seed, "area " + area.area, number);
    AreaDraw draw;
    draw.et = site.reference_et * factor(generator, sizes().coefficient);
    draw.size = factor(generator, sizes().area);
    draw.soil = factor(generator, sizes().soil);
    auto of_place = named_generator(seed, "meter " + area.place, number);
    draw.meter = 1.0 + sizes().meter * (2.0 * of_place.unit() - 1.0);
    draw.estimated = factor(of_place, sizes().estimated);
    for (const UniformityChoice& choice : area.uniformity) {
        auto& cans = draw.cans.emplace_back();
        if (choice.tested.empty()) {
            draw.multiplier.push_back(planning_multiplier(choice, generator));
            continue;
        }
        double sum = 0.0;
        for (const TestedCans& test : choice.tested) {
            auto again = drawn_again(test, generator).value_or(test);
            sum += multiplier_of(again);
            if (with_cans) cans.push_back(std::move(again));
        }
        draw.multiplier.push_back(sum / static_cast<double>(choice.tested.size()));
    }
    return draw;
}

}  // namespace evenfall::budget
