// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/overlap.h"

#include "core/input_error.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace evenfall::plan {
namespace {

/// Sum of the lowest share of the values; reorders them. The value at the border counts in part.
double lowest_sum(std::vector<float>& values, double share) {
    const double count = share * static_cast<double>(values.size());
    const auto whole = static_cast<std::size_t>(count);
    if (whole < values.size()) {
        std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(whole), values.end());
    }
    double sum = 0.0;
    for (std::size_t i = 0; i < whole; ++i) sum += static_cast<double>(values[i]);
    if (whole < values.size()) sum += (count - static_cast<double>(whole)) * static_cast<double>(values[whole]);
    return sum;
}

/// The mean of the driest window of so many cells that holds turf only, or nothing. Sums of
/// columns move down the field row by row, so the cost does not depend on the window.
std::optional<double> driest_window(const RateField& field, const std::vector<Surface>& ground,
                                    int wide, int high) {
    const Raster& r = field.raster();
    if (wide > r.columns || high > r.rows) return std::nullopt;
    const auto columns = static_cast<std::size_t>(r.columns);
    std::vector<double> sum(columns, 0.0);
    std::vector<int> turf(columns, 0);
    const auto add_row = [&](int row, double sign) {
        const std::size_t start = r.index(0, row);
        for (std::size_t c = 0; c < columns; ++c) {
            if (ground[start + c] != Surface::turf) continue;
            sum[c] += sign * static_cast<double>(field.rates()[start + c]);
            turf[c] += sign > 0.0 ? 1 : -1;
        }
    };
    std::optional<double> driest;
    for (int row = 0; row < r.rows; ++row) {
        add_row(row, 1.0);
        if (row >= high) add_row(row - high, -1.0);
        if (row + 1 < high) continue;
        double window = 0.0;
        long long cells = 0;
        for (std::size_t c = 0; c < columns; ++c) {
            window += sum[c];
            cells += turf[c];
            if (c >= static_cast<std::size_t>(wide)) {
                window -= sum[c - static_cast<std::size_t>(wide)];
                cells -= turf[c - static_cast<std::size_t>(wide)];
            }
            if (cells == static_cast<long long>(wide) * high && (!driest || window < *driest)) driest = window;
        }
    }
    if (driest) *driest = std::max(0.0, *driest / (static_cast<double>(wide) * high));
    return driest;
}

struct Sums {
    std::vector<float> turf;            ///< rates, mm/h
    double on = 0.0, outside = 0.0, no_water = 0.0;
    std::array<std::size_t, 4> reached{};  ///< by none, one, two, three or more heads
};

Sums sums_of(const RateField& field, const std::vector<Surface>& ground) {
    Sums sums;
    sums.turf.reserve(ground.size());
    for (std::size_t i = 0; i < ground.size(); ++i) {
        const float rate = field.rates()[i];
        switch (ground[i]) {
            case Surface::turf:
                sums.on += static_cast<double>(rate);
                sums.turf.push_back(rate);
                ++sums.reached[std::min<std::size_t>(field.counts()[i], 3)];
                break;
            case Surface::outside: sums.outside += static_cast<double>(rate); break;
            case Surface::no_water: sums.no_water += static_cast<double>(rate); break;
        }
    }
    return sums;
}

void add_uniformity(Prediction& p, std::vector<float>& turf, double sum) {
    const double n = static_cast<double>(turf.size());
    const double mean = sum / n;
    const auto [low, high] = std::minmax_element(turf.begin(), turf.end());
    p.lowest_rate = static_cast<double>(*low) * units::millimetre_per_hour;
    p.highest_rate = static_cast<double>(*high) * units::millimetre_per_hour;
    p.mean_rate = mean * units::millimetre_per_hour;
    if (!(mean > 0.0)) return;
    double deviation = 0.0;
    for (float rate : turf) deviation += std::abs(static_cast<double>(rate) - mean);
    p.cu = units::ChristiansenCu::of(1.0 - deviation / (n * mean));
    // Rounding may leave equal cells a hair above their own mean.
    p.du_lh = units::LowHalfDu::of(std::min(1.0, lowest_sum(turf, 0.5) / (0.5 * n * mean)));
    p.du_lq = units::LowQuarterDu::of(std::min(1.0, lowest_sum(turf, 0.25) / (0.25 * n * mean)));
}

void add_windows(Prediction& p, const RateField& field, const std::vector<Surface>& ground,
                 std::size_t cells, const std::vector<double>& shares) {
    const double mean = p.mean_rate.in(units::millimetre_per_hour);
    const Raster& r = field.raster();
    for (double share : shares) {
        if (!(share > 0.0) || !(share <= 1.0)) {
            throw InputError({phrase("plan", "a window of %1"), units::format_shortest(share)},
                             phrase("plan", "a share of the turf above 0, up to 1"));
        }
        WindowCoefficient w{share, {}};
        const double side = std::sqrt(share * static_cast<double>(cells) * r.cell_area());
        const int wide = std::max(1, static_cast<int>(std::lround(side / r.hx)));
        const int high = std::max(1, static_cast<int>(std::lround(side / r.hy)));
        const auto driest = driest_window(field, ground, wide, high);
        if (driest && *driest > 1e-9 * mean && mean > 0.0) {
            w.value = units::SchedulingCoefficient::of(mean / *driest);
        }
        p.scheduling.push_back(w);
    }
}

}  // namespace

Prediction summarise(const RateField& field, const std::vector<Surface>& ground,
                     const OverlapOptions& options) {
    Sums sums = sums_of(field, ground);
    if (sums.turf.empty()) {
        throw InputError(phrase("plan", "an outline that holds no cell centre on turf"),
                         phrase("plan", "an outline wider than a cell, not all of it paved"));
    }
    Prediction p;
    const Raster& r = field.raster();
    const double n = static_cast<double>(sums.turf.size());
    const units::Area cell = units::Area::from_si(r.cell_area());
    add_uniformity(p, sums.turf, sums.on);
    add_windows(p, field, ground, sums.turf.size(), options.window_shares);
    const auto share = [n](std::size_t count) { return units::Share::of(static_cast<double>(count) / n); };
    p.coverage = {share(sums.reached[0]), share(sums.reached[1]), share(sums.reached[2] + sums.reached[3]),
                  share(sums.reached[3])};
    double flow = 0.0;
    for (const Sprinkler& s : field.sprinklers().heads) flow += s.flow;
    p.total_flow = units::Flow::from_si(flow);
    const double found = sums.on + sums.outside + sums.no_water;
    p.on_target_flow = sums.on * units::millimetre_per_hour * cell;
    p.balance_error = (found * units::millimetre_per_hour * cell).si() / flow - 1.0;
    p.off_target_share = units::Share::of(std::clamp((sums.outside + sums.no_water) / found, 0.0, 1.0));
    p.on_no_water_share = units::Share::of(std::clamp(sums.no_water / found, 0.0, 1.0));
    p.turf = n * cell;
    p.heads = field.sprinklers().heads.size();
    p.cell_width = units::Length::from_si(r.hx);
    p.cell_height = units::Length::from_si(r.hy);
    p.largest_correction = field.largest_correction();
    p.method = phrase("plan", "sum of radial profiles on a raster, rates at cell centres");
    p.convention = phrase("plan",
                          "all heads run for the same time; low quarter is exactly a quarter of the turf; scheduling "
                          "coefficient is mean over the driest square window of the stated share of the turf");
    p.source = phrase("plan", "conservation of each head's flow; uniformity by the usual definitions on equal areas");
    p.assumed = field.sprinklers().assumed;
    if (options.wind) {
        p.assumed.emplace_back(phrase("plan", "wind is approximate: patterns shifted and stretched as stated, not fitted to a measurement"));
    }
    return p;
}

Overlap overlap_of(const Plan& plan, const OverlapOptions& options) {
    const PatternMap map = pattern_map(options.wind);
    Sprinklers all = sprinklers_of(plan);
    const Raster raster = raster_for(plan, all, map, options.cell);
    std::vector<Surface> ground = ground_of(plan, raster);
    RateField field(std::move(all), map, raster, options.threads);
    Prediction prediction = summarise(field, ground, options);
    return {std::move(field), std::move(ground), std::move(prediction)};
}

}  // namespace evenfall::plan
