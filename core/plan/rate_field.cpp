// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/rate_field.h"

#include "core/input_error.h"
#include "core/plan/span_kernel.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <numbers>
#include <thread>

namespace evenfall::plan {
namespace {

constexpr double degree = std::numbers::pi / 180.0;
constexpr double mm_per_hour_per_m_s = 3.6e6;
/// With this many cells to the radius a full circle adds up to its flow without help; see the test.
constexpr double fine_enough = 24.0;

/// p tabulated over its softened reach, in units of the profile.
/// @param softened_share  width of the softening as a share of the radius
std::vector<float> tabulate(const RadialProfile& profile, double softened_share) {
    const double edge = profile.at(1.0);
    const double end = edge > 0.0 ? 1.0 + softened_share / 2.0 : 1.0;
    const double soft_from = edge > 0.0 ? std::max(0.0, 1.0 - softened_share / 2.0) : 1.0;
    const double top = profile.at(soft_from);
    std::vector<float> table(static_cast<std::size_t>(table_steps) + 2, 0.0F);
    for (int i = 0; i <= table_steps; ++i) {
        const double u = end * i / table_steps;
        const double p = u <= soft_from ? profile.at(u) : top * (end - u) / (end - soft_from);
        table[static_cast<std::size_t>(i)] = static_cast<float>(edge > 0.0 || u < 1.0 ? p : 0.0);
    }
    return table;
}

/// Integral of 2 pi t p(t) over the table, t from 0 to 1.
double table_volume(const std::vector<float>& table) {
    double volume = 0.0;
    for (int i = 0; i < table_steps; ++i) {
        const auto k = static_cast<std::size_t>(i);
        volume += ring_volume(static_cast<double>(i) / table_steps, static_cast<double>(table[k]),
                              (i + 1.0) / table_steps, static_cast<double>(table[k + 1]));
    }
    return volume;
}

double value_in(const float* table, double t) {
    const int step = static_cast<int>(t);
    const double part = t - step;
    return static_cast<double>(table[step]) +
           part * (static_cast<double>(table[step + 1]) - static_cast<double>(table[step]));
}

/// From x where n_x dx + n_y dy >= slack, on one row.
struct HalfLine {
    double from = -1e300;
    double to = 1e300;
};

/// Runs work(first row, last row) over bands of rows. Four bands per thread, taken in turn: the turf
/// is rarely spread evenly over the rows.
template <class Work>
void in_bands(int rows, unsigned threads, Work&& work) {
    const unsigned team_size = std::clamp(threads, 1U, 64U);
    const int bands = std::min(rows, static_cast<int>(team_size) * 4);
    std::atomic<int> next{0};
    const auto take = [&] {
        for (int band = next++; band < bands; band = next++) {
            const auto row = [&](int n) { return static_cast<int>(static_cast<long long>(rows) * n / bands); };
            work(row(band), row(band + 1) - 1);
        }
    };
    std::vector<std::jthread> team;
    for (unsigned i = 1; i < team_size; ++i) team.emplace_back(take);
    take();
}

HalfLine cut(double nx, double ny, double dy, double slack) {
    const double rest = slack - ny * dy;
    if (std::abs(nx) < 1e-12) return rest <= 0.0 ? HalfLine{} : HalfLine{1.0, 0.0};
    if (nx > 0.0) return {rest / nx, 1e300};
    return {-1e300, rest / nx};
}

}  // namespace

/// A head ready to paint.
struct RateField::Painted {
    double cx = 0.0, cy = 0.0;       ///< m, where its pattern is centred
    double reach = 0.0;              ///< m, softened end of the throw
    double radius = 0.0;             ///< m
    double xx = 1.0, xy = 0.0, yy = 1.0;  ///< the pattern distance squared, a quadratic form
    double half_height = 0.0, half_width = 0.0;
    bool part = false;               ///< part circle
    bool wide = false;               ///< more than half a circle
    double from_x = 0.0, from_y = 0.0, to_x = 0.0, to_y = 0.0;  ///< normals into the arc
    double slack = 0.0;
    int column = 0;                  ///< in which cx lies
    int first_row = 0, last_row = 0, first_column = 0, last_column = 0;
    double correction = 1.0;
    SpanHead head{};

    /// Calls paint(row, first column, last column) for the runs within the block that lie no
    /// farther than `distance` from the centre and in the arc.
    template <class Paint>
    void for_each_run(const Raster& raster, double distance, const CellBlock& block,
                      Paint&& run) const {
        const int low = std::max(first_row, block.first_row);
        const int high = std::min(last_row, block.last_row);
        for (int row = low; row <= high; ++row) {
            const double dy = raster.y(row) - cy;
            // xx dx^2 + 2 xy dx dy + yy dy^2 = distance^2
            const double middle = -xy * dy / xx;
            const double w2 = (distance * distance - yy * dy * dy) / xx + middle * middle;
            if (w2 < 0.0) continue;
            const double w = std::sqrt(w2);
            const HalfLine circle{middle - w, middle + w};
            const auto clip = [&](const HalfLine& line) {
                const double a = (cx + std::max(line.from, circle.from) - raster.x0) / raster.hx - 0.5;
                const double b = (cx + std::min(line.to, circle.to) - raster.x0) / raster.hx - 0.5;
                if (!(a <= b)) return;
                const int first = std::max(static_cast<int>(std::ceil(a)), block.first_column);
                const int last = std::min(static_cast<int>(std::floor(b)), block.last_column);
                if (first <= last) run(row, first, last);
            };
            if (!part) {
                clip({});
                continue;
            }
            const HalfLine after = cut(from_x, from_y, dy, slack);
            const HalfLine before = cut(to_x, to_y, dy, slack);
            if (!wide) {
                clip({std::max(after.from, before.from), std::min(after.to, before.to)});
            } else if (after.from > after.to) {
                clip(before);
            } else if (before.from > before.to) {
                clip(after);
            } else if (std::max(after.from, before.from) <= std::min(after.to, before.to)) {
                // They overlap: together one run.
                clip({std::min(after.from, before.from), std::max(after.to, before.to)});
            } else {
                clip(after);
                clip(before);
            }
        }
    }

    SpanRow row_at(const Raster& raster, const PatternMap& map, int row, int first, int last,
                   float* cells) const {
        const double step = table_steps / reach;
        const double dy = raster.y(row) - cy;
        return {cells,
                first - column,
                last - first + 1,
                static_cast<float>(map.xx * raster.hx * step),
                static_cast<float>(map.xy * dy * step),
                static_cast<float>(map.xy * raster.hx * step),
                static_cast<float>(map.yy * dy * step)};
    }
};

RateField::RateField(Sprinklers all, const PatternMap& map, const Raster& raster, unsigned threads)
    : all_(std::move(all)), map_(map), raster_(raster) {
    rates_.resize(raster_.cells());
    counts_.resize(raster_.cells());
    painted_.reserve(all_.heads.size());
    for (const Sprinkler& head : all_.heads) painted_.push_back(prepare(head));
    sort_heads();
    repaint(threads);
    recount(threads);
}

RateField::RateField(RateField&&) noexcept = default;
RateField& RateField::operator=(RateField&&) noexcept = default;
RateField::~RateField() = default;

const std::vector<float>& RateField::table_for(std::size_t profile, double softened_share) {
    const RadialProfile& shape = all_.profiles[profile];
    if (!(shape.at(1.0) > 0.0)) softened_share = 0.0;
    const auto [place, fresh] = tables_.try_emplace({profile, softened_share});
    if (fresh) place->second = tabulate(shape, softened_share);
    return place->second;
}

RateField::Painted RateField::prepare(const Sprinkler& head) {
    Painted p;
    const double cell = std::max(raster_.hx, raster_.hy);
    p.radius = head.radius;
    p.cx = head.x + map_.shift_x * head.radius;
    p.cy = head.y + map_.shift_y * head.radius;
    const std::vector<float>& table = table_for(head.profile, cell / head.radius);
    p.reach = head.radius;
    if (all_.profiles[head.profile].at(1.0) > 0.0) p.reach += cell / 2.0;
    // |M d|^2 with M symmetric.
    p.xx = map_.xx * map_.xx + map_.xy * map_.xy;
    p.xy = map_.xy * (map_.xx + map_.yy);
    p.yy = map_.yy * map_.yy + map_.xy * map_.xy;
    // det M = 1, so the box of the ellipse is reach sqrt(yy) wide and reach sqrt(xx) high.
    p.half_width = p.reach * std::sqrt(p.yy);
    p.half_height = p.reach * std::sqrt(p.xx);
    p.part = head.arc < 360.0;
    p.wide = head.arc > 180.0;
    if (p.part) {
        const double from = (head.facing - head.arc / 2.0) * degree;
        const double to = (head.facing + head.arc / 2.0) * degree;
        // n . (M d) = (M n) . d
        p.from_x = map_.xx * std::cos(from) - map_.xy * std::sin(from);
        p.from_y = map_.xy * std::cos(from) - map_.yy * std::sin(from);
        p.to_x = -map_.xx * std::cos(to) + map_.xy * std::sin(to);
        p.to_y = -map_.xy * std::cos(to) + map_.yy * std::sin(to);
        p.slack = -1e-6 * std::min(raster_.hx, raster_.hy);
    }
    const double column = (p.cx - raster_.x0) / raster_.hx - 0.5;
    p.column = static_cast<int>(std::floor(column));
    p.first_column = static_cast<int>(std::floor((p.cx - p.half_width - raster_.x0) / raster_.hx - 0.5));
    p.last_column = static_cast<int>(std::ceil((p.cx + p.half_width - raster_.x0) / raster_.hx - 0.5));
    p.first_row = static_cast<int>(std::floor((p.cy - p.half_height - raster_.y0) / raster_.hy - 0.5));
    p.last_row = static_cast<int>(std::ceil((p.cy + p.half_height - raster_.y0) / raster_.hy - 0.5));
    p.head.fraction = static_cast<float>(column - p.column);
    p.head.table = table.data();

    const double flow = head.flow * mm_per_hour_per_m_s;
    double scale = flow / (head.arc / 360.0 * p.reach * p.reach * table_volume(table));
    if (p.part || head.radius < fine_enough * cell) {
        double sum = 0.0;
        const double step = table_steps / p.reach;
        const CellBlock everywhere{p.first_column, p.last_column, p.first_row, p.last_row};
        p.for_each_run(raster_, p.reach, everywhere, [&](int row, int first, int last) {
            const double dy = raster_.y(row) - p.cy;
            for (int c = first; c <= last; ++c) {
                const double dx = raster_.x(c) - p.cx;
                const double u = map_.xx * dx + map_.xy * dy;
                const double v = map_.xy * dx + map_.yy * dy;
                sum += value_in(p.head.table,
                                std::min(std::sqrt(u * u + v * v) * step, double{table_steps}));
            }
        });
        if (!(sum > 0.0)) {
            throw InputError({phrase("plan", "an arc of %1 degrees on cells of %2 m"), units::format_shortest(head.arc), units::format_fixed(cell, 3)},
                             phrase("plan", "an arc that holds at least one cell centre; take a smaller cell"));
        }
        p.correction = flow / (scale * sum * raster_.cell_area());
        scale *= p.correction;
    }
    p.head.scale = static_cast<float>(scale);
    return p;
}

void RateField::sort_heads() {
    order_.resize(painted_.size());
    for (std::size_t i = 0; i < order_.size(); ++i) order_[i] = i;
    std::sort(order_.begin(), order_.end(), [this](std::size_t a, std::size_t b) {
        const Painted& pa = painted_[a];
        const Painted& pb = painted_[b];
        if (pa.cy != pb.cy) return pa.cy < pb.cy;
        return a < b;
    });
}

void RateField::paint(const CellBlock& block) {
    const SpanKernel& kernel = span_kernel();
    const auto add = map_.still ? kernel.add_upright : kernel.add_slanted;
    for (std::size_t i : order_) {
        const Painted& p = painted_[i];
        if (p.last_row < block.first_row || p.first_row > block.last_row ||
            p.last_column < block.first_column || p.first_column > block.last_column) {
            continue;
        }
        p.for_each_run(raster_, p.reach, block, [&](int row, int first, int last) {
            add(p.head, p.row_at(raster_, map_, row, first, last,
                                 rates_.data() + raster_.index(first, row)));
        });
    }
}

void RateField::paint_counts(const CellBlock& block) {
    const SpanKernel& kernel = span_kernel();
    for (std::size_t i : order_) {
        const Painted& p = painted_[i];
        if (p.last_row < block.first_row || p.first_row > block.last_row ||
            p.last_column < block.first_column || p.first_column > block.last_column) {
            continue;
        }
        // A cell exactly at the end of the throw is reached, whichever way it was rounded.
        p.for_each_run(raster_, p.radius * (1.0 + 1e-9), block, [&](int row, int first, int last) {
            kernel.count(counts_.data() + raster_.index(first, row), last - first + 1);
        });
    }
}

void RateField::repaint(unsigned threads) {
    in_bands(raster_.rows, threads, [this](int low, int high) {
        std::fill(rates_.begin() + static_cast<std::ptrdiff_t>(raster_.index(0, low)),
                  rates_.begin() + static_cast<std::ptrdiff_t>(raster_.index(0, high + 1)), 0.0F);
        paint({0, raster_.columns - 1, low, high});
    });
}

void RateField::recount(unsigned threads) {
    in_bands(raster_.rows, threads, [this](int low, int high) {
        std::fill(counts_.begin() + static_cast<std::ptrdiff_t>(raster_.index(0, low)),
                  counts_.begin() + static_cast<std::ptrdiff_t>(raster_.index(0, high + 1)), std::uint16_t{0});
        paint_counts({0, raster_.columns - 1, low, high});
    });
}

double RateField::largest_correction() const {
    double largest = 0.0;
    for (const Painted& p : painted_) largest = std::max(largest, std::abs(p.correction - 1.0));
    return largest;
}

std::optional<CellBlock> RateField::replace(std::size_t head, const Sprinkler& with) {
    const Painted fresh = prepare(with);
    if (fresh.first_column < 0 || fresh.first_row < 0 || fresh.last_column >= raster_.columns ||
        fresh.last_row >= raster_.rows) {
        return std::nullopt;
    }
    const Painted& old = painted_[head];
    const CellBlock block{std::max(0, std::min(old.first_column, fresh.first_column)),
                          std::min(raster_.columns - 1, std::max(old.last_column, fresh.last_column)),
                          std::max(0, std::min(old.first_row, fresh.first_row)),
                          std::min(raster_.rows - 1, std::max(old.last_row, fresh.last_row))};
    all_.heads[head] = with;
    painted_[head] = fresh;
    sort_heads();
    for (int row = block.first_row; row <= block.last_row; ++row) {
        const auto from = raster_.index(block.first_column, row);
        const auto count = static_cast<std::ptrdiff_t>(block.last_column - block.first_column + 1);
        std::fill_n(rates_.begin() + static_cast<std::ptrdiff_t>(from), count, 0.0F);
        std::fill_n(counts_.begin() + static_cast<std::ptrdiff_t>(from), count, std::uint16_t{0});
    }
    paint(block);
    paint_counts(block);
    return block;
}

}  // namespace evenfall::plan
