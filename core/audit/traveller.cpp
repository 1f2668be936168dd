// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/traveller.h"

#include <algorithm>
#include <cmath>

namespace evenfall::audit {
namespace {

/// A can's strip of the caught profile, metres from the path, right positive.
struct Cell {
    double at;
    double from;
    double to;
    double depth;
};

std::vector<Cell> cells_of(const CatchTest& test) {
    std::vector<Cell> cells;
    for (const Catch& c : test.catches) {
        if (!c.excluded.empty()) continue;
        const double at = *c.distance * test.position_unit.unit.si();
        cells.push_back({*c.side == Side::left ? -at : at, 0.0, 0.0, depth_of(test, c).si()});
    }
    std::sort(cells.begin(), cells.end(), [](const Cell& a, const Cell& b) { return a.at < b.at; });
    for (std::size_t i = 0; i + 1 < cells.size(); ++i) {
        cells[i].to = cells[i + 1].from = (cells[i].at + cells[i + 1].at) / 2.0;
    }
    Cell& first = cells.front();
    Cell& last = cells.back();
    first.from = first.at - (first.to - first.at);
    last.to = last.at + (last.at - last.from);
    return cells;
}

double median_gap(const std::vector<Cell>& cells) {
    std::vector<double> gaps;
    for (std::size_t i = 1; i < cells.size(); ++i) gaps.push_back(cells[i].at - cells[i - 1].at);
    std::sort(gaps.begin(), gaps.end());
    return gaps[gaps.size() / 2];
}

/// Integral of the profile from `from` to `to`.
double water_between(const std::vector<Cell>& cells, double from, double to) {
    double water = 0.0;
    for (const Cell& c : cells) {
        const double width = std::min(to, c.to) - std::max(from, c.from);
        if (width > 0.0) water += width * c.depth;
    }
    return water;
}

}  // namespace

Overlap overlap_lanes(const CatchTest& test) {
    const std::vector<Cell> cells = cells_of(test);
    const double lane = test.lane_spacing->quantity().si();
    const double spacing = median_gap(cells);
    const auto per_lane = static_cast<std::size_t>(std::max(4.0, std::round(lane / spacing)));
    const std::size_t lanes = test.opposite_pulls ? 2 : 1;
    const double width = lane / static_cast<double>(per_lane);
    const int reach = static_cast<int>(
        std::ceil(std::max(-cells.front().from, cells.back().to) / lane)) + 1;

    Overlap overlap;
    overlap.can_spacing = spacing * units::metre;
    for (std::size_t i = 0; i < per_lane * lanes; ++i) {
        const double from = static_cast<double>(i) * width;
        double water = 0.0;
        for (int k = -reach; k <= reach + static_cast<int>(lanes); ++k) {
            const double a = from - k * lane;
            const double b = a + width;
            const bool mirrored = test.opposite_pulls && k % 2 != 0;
            water += mirrored ? water_between(cells, -b, -a) : water_between(cells, a, b);
        }
        overlap.strips.push_back({(from + width / 2.0) * units::metre, width * units::metre,
                                  units::Depth::from_si(water / width)});
    }
    double largest = 0.0;
    for (const Cell& c : cells) largest = std::max(largest, c.depth);
    if (largest > 0.0) {
        overlap.edge_share = std::max(cells.front().depth, cells.back().depth) / largest;
    }
    return overlap;
}

units::Depth depth_from_flow(units::Flow flow, units::Length lane_spacing, units::Speed travel) {
    // Ground passed in a time t is W v t and the water let out in it q t: the time drops out.
    const units::Duration t = 1.0 * units::second;
    return flow * t / (lane_spacing * (travel * t));
}

}  // namespace evenfall::audit
