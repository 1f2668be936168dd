// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/resample.h"

#include "core/audit/resample_kernel.h"
#include "core/reference/table.h"
#include "core/stats/parallel.h"
#include "core/stats/random.h"
#include "core/units/number.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>
#include <stdexcept>

namespace evenfall::audit {
namespace {

constexpr std::uint64_t usual_seed = 20260401;

struct Columns {
    std::vector<double> mean, du_lq, du_lh, cu, driest_can;
    explicit Columns(std::size_t n) : mean(n), du_lq(n), du_lh(n), cu(n), driest_can(n) {}
    void set(std::size_t i, const DrawnFigures& f) {
        mean[i] = f.mean;
        du_lq[i] = f.du_lq;
        du_lh[i] = f.du_lh;
        cu[i] = f.cu;
        driest_can[i] = f.driest_can;
    }
};

void require(const Sample& sample, const Resampling& how) {
    if (!(how.level > 0.0 && how.level < 1.0)) {
        throw InputError(units::format_shortest(how.level), phrase("audit", "a confidence level between 0 and 1"));
    }
    if (how.resamples < 100 || how.resamples > 10'000'000) {
        throw InputError({phrase("audit", "%1 resamples"), how.resamples}, phrase("audit", "100 to 10,000,000"));
    }
    if (sample.cans.size() < 4) {
        throw InputError({phrase("audit", "%1 cans"), sample.cans.size()}, phrase("audit", "at least four"));
    }
}

void take(std::span<std::int32_t> times, stats::SplitMix64& random, std::size_t draws) {
    const auto n = static_cast<std::uint32_t>(times.size());
    std::fill(times.begin(), times.end(), 0);
    for (std::size_t d = 0; d < draws; ++d) ++times[random.below(n)];
}

/// Figures of every resample by `draw(times, generator) -> number of cans drawn`.
template <class Draw>
Columns columns_of(const ResampleKernel& kernel, const Resampling& how, const Draw& draw) {
    Columns columns(how.resamples);
    stats::in_pieces(how.resamples, how.threads, [&](std::size_t begin, std::size_t end) {
        std::vector<std::int32_t> times(kernel.size());
        for (std::size_t b = begin; b < end; ++b) {
            stats::SplitMix64 random = stats::generator_for(how.seed, b);
            const std::size_t draws = draw(std::span(times), random);
            columns.set(b, kernel.figures(times, draws));
        }
    });
    return columns;
}

/// The figures without each can in turn.
Columns jackknife(const ResampleKernel& kernel) {
    const std::size_t n = kernel.size();
    Columns columns(n);
    std::vector<std::int32_t> times(n, 1);
    for (std::size_t i = 0; i < n; ++i) {
        times[i] = 0;
        columns.set(i, kernel.figures(times, n - 1));
        times[i] = 1;
    }
    return columns;
}

ResampledFigures collected(const ResampleKernel& kernel, Columns r, const Columns& j, const Resampling& how,
                           Sentence scheme) {
    const std::vector<std::int32_t> once(kernel.size(), 1);
    const DrawnFigures seen = kernel.figures(once, once.size());
    using stats::Replicates;
    return {Replicates(seen.mean, std::move(r.mean), j.mean),
            Replicates(seen.du_lq, std::move(r.du_lq), j.du_lq),
            Replicates(seen.du_lh, std::move(r.du_lh), j.du_lh),
            Replicates(seen.cu, std::move(r.cu), j.cu),
            Replicates(seen.driest_can, std::move(r.driest_can), j.driest_can),
            std::move(scheme),
            how.resamples,
            how.seed};
}

/// The ground the windows slide over, wrapped at its edges.
struct Ground {
    std::array<double, 2> extent{};  ///< 0: a line
    double side = 0.0;
    double spacing = 0.0;
};

double median_nearest(const Sample& sample) {
    std::vector<double> nearest;
    for (const SampleCan& a : sample.cans) {
        double least = std::numeric_limits<double>::infinity();
        for (const SampleCan& b : sample.cans) {
            if (&a == &b) continue;
            least = std::min(least, std::hypot((a.position->x - b.position->x).si(),
                                               (a.position->y - b.position->y).si()));
        }
        nearest.push_back(least);
    }
    std::sort(nearest.begin(), nearest.end());
    return nearest[nearest.size() / 2];
}

std::optional<Ground> ground_of(const Sample& sample, std::optional<units::Length> side) {
    const bool placed = std::all_of(sample.cans.begin(), sample.cans.end(),
                                    [](const SampleCan& c) { return c.position.has_value(); });
    if (!placed) return std::nullopt;
    Ground g;
    g.spacing = median_nearest(sample);
    if (!(g.spacing > 0.0)) return std::nullopt;
    const auto n = static_cast<double>(sample.cans.size());
    bool plane = false;
    for (std::size_t axis = 0; axis < 2; ++axis) {
        double low = std::numeric_limits<double>::infinity();
        double high = -low;
        for (const SampleCan& c : sample.cans) {
            const double v = axis == 0 ? c.position->x.si() : c.position->y.si();
            low = std::min(low, v);
            high = std::max(high, v);
        }
        // Each outer can stands for half a spacing beyond it.
        if (high > low) g.extent[axis] = high - low + g.spacing;
    }
    plane = g.extent[0] > 0.0 && g.extent[1] > 0.0;
    g.side = side ? side->si()
                  : g.spacing * std::max(2.0, std::round(std::pow(n, plane ? 0.25 : 1.0 / 3.0)));
    double windows = 1.0;
    for (const double e : g.extent) {
        if (e > 0.0) windows *= std::floor(e / g.side + 1e-9);
    }
    if (!(g.side > 0.0) || windows < 3.0) return std::nullopt;
    return g;
}

/// For every can the ranks of the cans in the window around it, itself included.
std::vector<std::vector<std::size_t>> windows_of(const Sample& sample, const Ground& ground,
                                                 std::span<const std::size_t> rank) {
    // From half a side before to just short of half a side after, so that a side of k spacings
    // takes k cans whether k is odd or even; the slack keeps rounding from deciding.
    const auto near = [&](double d, double extent) {
        if (extent <= 0.0) return true;
        d -= extent * std::round(d / extent);
        const double slack = 1e-9 * extent;
        return d >= -ground.side / 2.0 - slack && d < ground.side / 2.0 - slack;
    };
    std::vector<std::vector<std::size_t>> windows(sample.cans.size());
    for (std::size_t i = 0; i < sample.cans.size(); ++i) {
        for (std::size_t j = 0; j < sample.cans.size(); ++j) {
            const Point& a = *sample.cans[i].position;
            const Point& b = *sample.cans[j].position;
            if (near((a.x - b.x).si(), ground.extent[0]) && near((a.y - b.y).si(), ground.extent[1])) {
                windows[i].push_back(rank[j]);
            }
        }
    }
    return windows;
}

}  // namespace

Resampling usual_resampling() { return {10'000, usual_seed, 0.90, 0}; }

ResampledFigures resample_cans(const Sample& sample, QuarterRule rule, const Resampling& how) {
    require(sample, how);
    const ResampleKernel kernel(sample, rule);
    const std::size_t n = kernel.size();
    Columns columns = columns_of(kernel, how, [n](auto times, stats::SplitMix64& random) {
        take(times, random, n);
        return n;
    });
    return collected(kernel, std::move(columns), jackknife(kernel), how, phrase("audit", "cans drawn one by one"));
}

std::optional<ResampledFigures> resample_blocks(const Sample& sample, QuarterRule rule,
                                                const Resampling& how,
                                                std::optional<units::Length> side) {
    require(sample, how);
    const auto ground = ground_of(sample, side);
    if (!ground) return std::nullopt;
    const ResampleKernel kernel(sample, rule);
    const auto windows = windows_of(sample, *ground, kernel.rank());

    // Windows are drawn by the ground their middle can stands for, so that cans set close together
    // are not drawn more often than the ground they cover.
    std::vector<double> reach;
    double total = 0.0;
    for (const SampleCan& can : sample.cans) reach.push_back(total += can.weight);
    const bool equal = sample.equal_weights;
    const std::size_t n = kernel.size();
    Columns columns = columns_of(kernel, how, [&](auto times, stats::SplitMix64& random) {
        std::fill(times.begin(), times.end(), 0);
        std::size_t draws = 0;
        while (draws < n) {
            const std::size_t middle =
                equal ? random.below(static_cast<std::uint32_t>(n))
                      : std::min(n - 1, static_cast<std::size_t>(
                                            std::upper_bound(reach.begin(), reach.end(),
                                                             random.unit() * total) -
                                            reach.begin()));
            for (const std::size_t r : windows[middle]) ++times[r];
            draws += windows[middle].size();
        }
        return draws;
    });
    return collected(kernel, std::move(columns), Columns(0), how,
                     {phrase("audit", "blocks of %1 m of neighbouring cans, wrapped at the edges"),
                      units::format_fixed(ground->side, 1)});
}

double widening_for(std::string_view figure, std::size_t cans) {
    const auto* row = reference::Table::named("interval_widening.csv").find("figure", figure);
    if (row == nullptr) throw std::logic_error("no interval widening for " + std::string(figure));
    return 1.0 + row->number("per_can") / static_cast<double>(cans);
}

std::optional<std::size_t> more_cans_to_halve(const Sample& sample, QuarterRule rule,
                                              const Resampling& how) {
    require(sample, how);
    if (sample.layout.english() == "traveller") return std::nullopt;
    const ResampleKernel kernel(sample, rule);
    const std::size_t n = kernel.size();
    Resampling quick = how;
    quick.resamples = std::min<std::size_t>(how.resamples, 4000);
    const auto width = [&](std::size_t draws) {
        Columns c = columns_of(kernel, quick, [draws](auto times, stats::SplitMix64& random) {
            take(times, random, draws);
            return draws;
        });
        const stats::Replicates r(0.0, std::move(c.du_lq), {});
        const auto interval = r.percentile_interval(how.level);
        return interval ? interval->high - interval->low : 0.0;
    };
    const double now = width(n);
    if (!(now > 0.0)) return std::nullopt;
    // The width falls about as 1 / sqrt(draws); two corrections settle it to the noise.
    double draws = 4.0 * static_cast<double>(n);
    for (int step = 0; step < 3; ++step) {
        const double w = width(static_cast<std::size_t>(std::lround(draws)));
        if (!(w > 0.0)) return std::nullopt;
        draws = std::clamp(draws * std::pow(w / (now / 2.0), 2.0), 1.5 * static_cast<double>(n),
                           16.0 * static_cast<double>(n));
    }
    return static_cast<std::size_t>(std::ceil(draws)) - n;
}

}  // namespace evenfall::audit
