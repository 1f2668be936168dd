// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/sample.h"

#include "core/audit/traveller.h"
#include "core/audit/voronoi.h"
#include "core/reference/table.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace evenfall::audit {
namespace {

/// Indices of the cans that count.
std::vector<std::size_t> counting(const CatchTest& test) {
    std::vector<std::size_t> index;
    for (std::size_t i = 0; i < test.catches.size(); ++i) {
        if (test.catches[i].excluded.empty()) index.push_back(i);
    }
    return index;
}

SampleCan can_of(const CatchTest& test, const Catch& c) {
    SampleCan can{c.can, depth_of(test, c), 1.0, std::nullopt};
    const units::Length unit = test.position_unit.unit;
    if (c.distance) {
        can.position = {*c.distance * unit, units::Length{}};
    } else if (c.x && c.y) {
        can.position = {*c.x * unit, *c.y * unit};
    }
    return can;
}

/// Borders half way between neighbours on a line; the outermost cells reach as far out as in, but
/// not below `least`.
struct Border {
    double from;
    double to;
};
std::vector<Border> borders_of(const std::vector<double>& at, double least) {
    std::vector<std::size_t> order(at.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::sort(order.begin(), order.end(), [&](auto a, auto b) { return at[a] < at[b]; });
    std::vector<Border> borders(at.size());
    for (std::size_t k = 0; k + 1 < order.size(); ++k) {
        borders[order[k]].to = borders[order[k + 1]].from = (at[order[k]] + at[order[k + 1]]) / 2.0;
    }
    const std::size_t first = order.front();
    const std::size_t last = order.back();
    borders[first].from = std::max(least, 2.0 * at[first] - borders[first].to);
    borders[last].to = 2.0 * at[last] - borders[last].from;
    return borders;
}

void add_line(const CatchTest& test, const SampleChoices& choices, Sample& sample) {
    double farthest = 0.0;
    for (const std::size_t i : counting(test)) {
        farthest = std::max(farthest, *test.catches[i].distance);
    }
    const bool pivot = test.layout == Layout::pivot;
    const double inner = pivot ? choices.inner_share_left_out * farthest : 0.0;
    if (pivot && !(choices.inner_share_left_out >= 0.0 && choices.inner_share_left_out < 1.0)) {
        throw InputError(units::format_shortest(choices.inner_share_left_out),
                         phrase("audit", "an inner share to leave out from 0 to below 1"));
    }
    std::vector<double> at;
    for (const std::size_t i : counting(test)) {
        const Catch& c = test.catches[i];
        // The share is a product, so a can exactly on it may come out a bit beyond.
        if (inner > 0.0 && *c.distance <= inner * (1.0 + 1e-12)) continue;
        sample.cans.push_back(can_of(test, c));
        at.push_back(*c.distance);
    }
    if (sample.cans.size() < 4) {
        throw InputError({phrase("audit", "%1 cans beyond the inner share"), sample.cans.size()},
                         phrase("audit", "at least four"));
    }
    const std::vector<Border> borders = borders_of(at, pivot ? 0.0 : std::numeric_limits<double>::lowest());
    sample.equal_weights = false;
    if (!pivot) {
        sample.layout = phrase("audit", "lateral");
        sample.weights = phrase("audit", "length of machine each can stands for");
        sample.coefficient = phrase("audit", "Christiansen coefficient");
        for (std::size_t i = 0; i < at.size(); ++i) {
            sample.cans[i].weight = borders[i].to - borders[i].from;
        }
        const auto [low, high] = std::minmax_element(
            sample.cans.begin(), sample.cans.end(),
            [](const SampleCan& a, const SampleCan& b) { return a.weight < b.weight; });
        if (high->weight - low->weight <= 1e-9 * high->weight) {
            for (SampleCan& can : sample.cans) can.weight = 1.0;
            sample.equal_weights = true;
        }
        return;
    }
    sample.layout = phrase("audit", "centre pivot");
    sample.coefficient = phrase("audit", "Heermann-Hein coefficient");
    if (choices.pivot_weights == PivotWeights::distance) {
        sample.weights = phrase("audit", "distance from the pivot point");
        for (std::size_t i = 0; i < at.size(); ++i) sample.cans[i].weight = at[i];
    } else {
        sample.weights = phrase("audit", "ring area");
        for (std::size_t i = 0; i < at.size(); ++i) {
            sample.cans[i].weight =
                (borders[i].to + borders[i].from) * (borders[i].to - borders[i].from) / 2.0;
        }
    }
    if (inner > 0.0) {
        sample.notes.push_back({phrase("audit", "cans within the inner %1 % of the radius are left out"),
                                units::format_shortest(100.0 * choices.inner_share_left_out)});
    }
}

void add_traveller(const CatchTest& test, Sample& sample) {
    const Overlap overlap = overlap_lanes(test);
    sample.layout = phrase("audit", "traveller");
    sample.weights = phrase("audit", "each strip across the lane the same area");
    sample.coefficient = phrase("audit", "Christiansen coefficient");
    std::size_t number = 0;
    for (const Strip& s : overlap.strips) {
        sample.cans.push_back(
            {"strip " + std::to_string(++number), s.depth, 1.0, Point{s.middle, units::Length{}}});
    }
    sample.notes.push_back(test.opposite_pulls
                               ? phrase("audit", "neighbouring lanes pulled in opposite directions: two lanes shown")
                               : phrase("audit", "every lane pulled in the same direction"));
    const double limit = reference::Table::named("audit_limits.csv")
                             .find("limit", "traveller_edge_share")
                             ->number("value");
    if (overlap.edge_share > limit) {
        sample.notes.push_back({phrase("audit",
                                       "the outermost can still caught %1 % of the largest catch: the row of "
                                       "cans ended before the pattern"),
                                units::format_fixed(100.0 * overlap.edge_share, 0)});
    }
}

void add_plane(const CatchTest& test, const SampleChoices& choices, Sample& sample) {
    for (const std::size_t i : counting(test)) sample.cans.push_back(can_of(test, test.catches[i]));
    sample.coefficient = phrase("audit", "Christiansen coefficient");
    if (test.layout == Layout::grid) {
        sample.layout = phrase("audit", "solid-set grid");
        sample.weights = phrase("audit", "each can the same area");
        return;
    }
    sample.layout = phrase("audit", "irregular positions");
    if (choices.irregular_weights == IrregularWeights::equal) {
        sample.weights = phrase("audit", "each can the same area (positions not used)");
        return;
    }
    sample.equal_weights = false;
    sample.weights = phrase("audit", "Voronoi share of the tested ground");
    std::vector<std::pair<double, double>> at;
    for (const std::size_t i : counting(test)) {
        at.emplace_back(*test.catches[i].x, *test.catches[i].y);
    }
    const VoronoiShares shares = voronoi_shares(at, choices.outline);
    for (std::size_t i = 0; i < at.size(); ++i) sample.cans[i].weight = shares.share[i];
    if (shares.outline_assumed) {
        sample.notes.push_back(
            phrase("audit",
                   "no outline given: tested ground taken as the cans' hull widened by half the usual "
                   "distance between neighbours"));
    }
}

}  // namespace

SampleChoices usual_choices() {
    return {PivotWeights::distance, 0.0, IrregularWeights::voronoi, {}};
}

Sample sample_of(const CatchTest& test, const SampleChoices& choices) {
    if (auto issues = check(test); !issues.empty()) throw InputError(std::move(issues));
    Sample sample;
    switch (test.layout) {
        case Layout::pivot:
        case Layout::lateral: add_line(test, choices, sample); break;
        case Layout::traveller: add_traveller(test, sample); break;
        case Layout::grid:
        case Layout::irregular: add_plane(test, choices, sample); break;
    }
    return sample;
}

}  // namespace evenfall::audit
