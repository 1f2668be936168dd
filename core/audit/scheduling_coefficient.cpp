// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/scheduling_coefficient.h"

#include "core/audit/low_share.h"
#include "core/reference/table.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace evenfall::audit {
namespace {

using units::format_fixed;

/// Sum of a step function from its start to `to`, by running sums over its cells.
double sum_to(std::span<const double> running, double to) {
    const double last = static_cast<double>(running.size() - 1);
    const double at = std::clamp(to, 0.0, last);
    const auto cell = static_cast<std::size_t>(std::min(std::floor(at), last - 1.0));
    const double part = at - static_cast<double>(cell);
    return running[cell] + part * (running[cell + 1] - running[cell]);
}

/// Places where a window of `width` over n cells can be driest: one of its edges on a cell edge.
std::vector<double> starts_of(std::size_t n, double width, bool wrap) {
    std::vector<double> starts;
    const auto cells = static_cast<double>(n);
    const auto add = [&](double s) {
        if (wrap) s -= cells * std::floor(s / cells);
        if (s > cells - width + 1e-9 && !wrap) return;
        if (s < -1e-9) return;
        starts.push_back(std::clamp(s, 0.0, wrap ? cells : cells - width));
    };
    for (std::size_t i = 0; i <= n; ++i) {
        add(static_cast<double>(i));
        add(static_cast<double>(i) - width);
    }
    std::sort(starts.begin(), starts.end());
    starts.erase(std::unique(starts.begin(), starts.end(),
                             [](double a, double b) { return b - a < 1e-9; }),
                 starts.end());
    return starts;
}

struct Lattice {
    std::size_t columns = 0;
    std::size_t rows = 0;
    std::vector<double> cells;  ///< top row first
    double left = 0.0;          ///< edges and steps of the ground, m
    double top = 0.0;
    double dx = 0.0;
    double dy = 0.0;
};

/// Distinct coordinates with a tolerance, ascending; nothing when their steps differ.
std::optional<std::vector<double>> even_steps(std::vector<double> v) {
    std::sort(v.begin(), v.end());
    const double slack = 1e-6 * std::max(1e-9, v.back() - v.front());
    std::vector<double> distinct;
    for (const double x : v) {
        if (distinct.empty() || x - distinct.back() > slack) distinct.push_back(x);
    }
    if (distinct.size() < 2) return std::nullopt;
    const double step = (distinct.back() - distinct.front()) / static_cast<double>(distinct.size() - 1);
    for (std::size_t i = 0; i < distinct.size(); ++i) {
        if (std::abs(distinct[i] - distinct.front() - static_cast<double>(i) * step) > 0.02 * step) {
            return std::nullopt;
        }
    }
    return distinct;
}

std::optional<Lattice> lattice_of(const Sample& sample) {
    if (!sample.equal_weights) return std::nullopt;
    std::vector<double> xs;
    std::vector<double> ys;
    for (const SampleCan& c : sample.cans) {
        if (!c.position) return std::nullopt;
        xs.push_back(c.position->x.si());
        ys.push_back(c.position->y.si());
    }
    const auto x = even_steps(xs);
    const auto y = even_steps(ys);
    if (!x || !y || x->size() * y->size() != sample.cans.size()) return std::nullopt;
    Lattice l;
    l.columns = x->size();
    l.rows = y->size();
    l.dx = (x->back() - x->front()) / static_cast<double>(l.columns - 1);
    l.dy = (y->back() - y->front()) / static_cast<double>(l.rows - 1);
    l.left = x->front() - l.dx / 2.0;
    l.top = y->back() + l.dy / 2.0;
    l.cells.assign(sample.cans.size(), std::numeric_limits<double>::quiet_NaN());
    for (const SampleCan& c : sample.cans) {
        const auto column = std::lround((c.position->x.si() - x->front()) / l.dx);
        const auto row = std::lround((y->back() - c.position->y.si()) / l.dy);
        double& cell = l.cells[static_cast<std::size_t>(row) * l.columns + static_cast<std::size_t>(column)];
        if (!std::isnan(cell)) return std::nullopt;
        cell = c.depth.si();
    }
    return l;
}

SchedulingResult result(DrySpot spot, std::optional<double> share, double mean, double spot_mean,
                        std::string where, std::string how) {
    SchedulingResult r{spot, share, std::nullopt, units::Depth::from_si(spot_mean), std::move(where),
                       std::move(how)};
    if (spot_mean > 0.0) r.value = units::SchedulingCoefficient::of(mean / spot_mean);
    return r;
}

SchedulingResult on_lattice(const Lattice& l, double share, double mean) {
    const double side = std::sqrt(share);
    const double width = side * static_cast<double>(l.columns);
    const double height = side * static_cast<double>(l.rows);
    const GridWindow w = driest_window(l.cells, l.columns, width, height, false);
    const double x0 = l.left + w.column * l.dx;
    const double y1 = l.top - w.row * l.dy;
    return result(DrySpot::window, share, mean, w.mean,
                  "x " + format_fixed(x0, 1) + " to " + format_fixed(x0 + width * l.dx, 1) + " m, y " +
                      format_fixed(y1 - height * l.dy, 1) + " to " + format_fixed(y1, 1) + " m",
                  "sliding window of the ground's shape");
}

bool is_line(const Sample& sample) {
    return std::all_of(sample.cans.begin(), sample.cans.end(), [](const SampleCan& c) {
        return c.position && c.position->y.si() == 0.0;
    });
}

/// Driest stretch that stands for the share, cans in order along the line.
SchedulingResult on_line(const Sample& sample, double share, double mean) {
    std::vector<const SampleCan*> order;
    for (const SampleCan& c : sample.cans) order.push_back(&c);
    std::sort(order.begin(), order.end(),
              [](auto* a, auto* b) { return a->position->x < b->position->x; });
    std::vector<double> weight{0.0};
    std::vector<double> water{0.0};
    for (const SampleCan* c : order) {
        weight.push_back(weight.back() + c->weight);
        water.push_back(water.back() + c->weight * c->depth.si());
    }
    const double length = share * weight.back();
    const auto water_to = [&](double w) {
        const auto it = std::upper_bound(weight.begin(), weight.end(), w);
        const auto i = std::min<std::size_t>(static_cast<std::size_t>(it - weight.begin()), order.size());
        if (i == 0) return 0.0;
        const double span = weight[i] - weight[i - 1];
        return water[i - 1] + (span > 0.0 ? (w - weight[i - 1]) / span : 0.0) * (water[i] - water[i - 1]);
    };
    double driest = std::numeric_limits<double>::infinity();
    double start = 0.0;
    for (const double edge : weight) {
        for (const double from : {edge, edge - length}) {
            if (from < 0.0 || from + length > weight.back() * (1.0 + 1e-12)) continue;
            const double m = (water_to(from + length) - water_to(from)) / length;
            if (m < driest) {
                driest = m;
                start = from;
            }
        }
    }
    const auto can_at = [&](double w) {
        const auto it = std::upper_bound(weight.begin(), weight.end(), w);
        return std::clamp<std::size_t>(static_cast<std::size_t>(it - weight.begin()), 1, order.size()) - 1;
    };
    const double slack = 1e-9 * weight.back();
    return result(DrySpot::window, share, mean, std::max(0.0, driest),
                  order[can_at(start + slack)]->label + " to " +
                      order[can_at(start + length - slack)]->label,
                  "sliding stretch of the line");
}

/// Driest can with its nearest neighbours up to the share.
SchedulingResult among_neighbours(const Sample& sample, double share, double mean) {
    double total = 0.0;
    for (const SampleCan& c : sample.cans) total += c.weight;
    double driest = std::numeric_limits<double>::infinity();
    const SampleCan* middle = nullptr;
    std::vector<std::pair<double, const SampleCan*>> near;
    for (const SampleCan& c : sample.cans) {
        near.clear();
        for (const SampleCan& o : sample.cans) {
            near.emplace_back(std::hypot((c.position->x - o.position->x).si(),
                                         (c.position->y - o.position->y).si()),
                              &o);
        }
        std::sort(near.begin(), near.end(), [](const auto& a, const auto& b) {
            return a.first != b.first ? a.first < b.first : a.second->depth < b.second->depth;
        });
        double weight = 0.0;
        double water = 0.0;
        for (const auto& [distance, o] : near) {
            const double w = std::min(o->weight, share * total - weight);
            if (!(w > 0.0)) break;
            weight += w;
            water += w * o->depth.si();
        }
        if (weight > 0.0 && water / weight < driest) {
            driest = water / weight;
            middle = &c;
        }
    }
    return result(DrySpot::window, share, mean, driest, "around can " + middle->label,
                  "can with its nearest neighbours");
}

}  // namespace

std::string_view text_of(DrySpot spot) {
    switch (spot) {
        case DrySpot::window: return "driest window";
        case DrySpot::can: return "driest can";
        case DrySpot::low_quarter: return "low quarter";
    }
    return "";
}

GridWindow driest_window(std::span<const double> cells, std::size_t columns, double width,
                         double height, bool wrap) {
    const std::size_t rows = cells.size() / columns;
    const std::size_t repeat = wrap ? 2 : 1;
    const std::size_t wide = columns * repeat;
    const std::size_t high = rows * repeat;
    // Running sums down each column, then over columns for each place of the window.
    std::vector<std::vector<double>> down(wide, std::vector<double>(high + 1, 0.0));
    for (std::size_t c = 0; c < wide; ++c) {
        for (std::size_t r = 0; r < high; ++r) {
            down[c][r + 1] = down[c][r] + cells[(r % rows) * columns + c % columns];
        }
    }
    GridWindow driest{std::numeric_limits<double>::infinity(), 0.0, 0.0};
    std::vector<double> across(wide + 1, 0.0);
    for (const double row : starts_of(rows, height, wrap)) {
        for (std::size_t c = 0; c < wide; ++c) {
            across[c + 1] = across[c] + sum_to(down[c], row + height) - sum_to(down[c], row);
        }
        for (const double column : starts_of(columns, width, wrap)) {
            const double mean =
                (sum_to(across, column + width) - sum_to(across, column)) / (width * height);
            if (mean < driest.mean * (1.0 - 1e-12)) driest = {mean, column, row};
        }
    }
    return driest;
}

std::vector<double> usual_window_shares() {
    std::vector<double> shares;
    for (const auto& row : reference::Table::named("scheduling_windows.csv").rows()) {
        shares.push_back(row.number("share"));
    }
    return shares;
}

std::vector<SchedulingResult> scheduling_coefficients(const Sample& sample, units::LowQuarterDu du_lq,
                                                      std::span<const double> shares) {
    std::vector<double> value;
    std::vector<double> weight;
    for (const SampleCan& c : sample.cans) {
        value.push_back(c.depth.si());
        weight.push_back(c.weight);
    }
    const double mean = mean_of(value, weight);
    const double total = std::accumulate(weight.begin(), weight.end(), 0.0);
    // A can of no weight (on the pivot point itself) stands for no ground and is no spot.
    const SampleCan* driest = nullptr;
    for (const SampleCan& c : sample.cans) {
        if (c.weight > 0.0 && (driest == nullptr || c.depth < driest->depth)) driest = &c;
    }
    std::vector<SchedulingResult> results;
    results.push_back(result(DrySpot::can, driest->weight / total, mean, driest->depth.si(),
                             driest->label, "lowest catch"));
    results.push_back(result(DrySpot::low_quarter, std::nullopt, mean, mean * du_lq.value(),
                             "wherever they are", "1 / DU_LQ"));
    const bool placed = std::all_of(sample.cans.begin(), sample.cans.end(),
                                    [](const SampleCan& c) { return c.position.has_value(); });
    const auto lattice = lattice_of(sample);
    for (const double share : shares) {
        if (!(share > 0.0 && share < 1.0)) {
            throw InputError(units::format_shortest(share), phrase("audit", "a share of the ground between 0 and 1"));
        }
        if (!placed) continue;
        if (lattice) results.push_back(on_lattice(*lattice, share, mean));
        else if (is_line(sample)) results.push_back(on_line(sample, share, mean));
        else results.push_back(among_neighbours(sample, share, mean));
    }
    return results;
}

}  // namespace evenfall::audit
