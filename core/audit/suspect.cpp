// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/suspect.h"

#include "core/audit/low_share.h"
#include "core/reference/table.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace evenfall::audit {
namespace {

double limit(std::string_view name) {
    const auto* row = reference::Table::named("audit_limits.csv").find("limit", name);
    if (row == nullptr) throw std::logic_error("no audit limit " + std::string(name));
    return row->number("value");
}

double median(std::vector<double> v) {
    const std::size_t half = v.size() / 2;
    std::sort(v.begin(), v.end());
    return v.size() % 2 == 1 ? v[half] : (v[half - 1] + v[half]) / 2.0;
}

std::vector<double> around(const Sample& sample, std::size_t i, std::size_t count, bool placed) {
    std::vector<std::pair<double, double>> near;
    for (std::size_t j = 0; j < sample.cans.size(); ++j) {
        if (j == i) continue;
        double distance = 0.0;
        if (placed) {
            const Point& a = *sample.cans[i].position;
            const Point& b = *sample.cans[j].position;
            distance = std::hypot((a.x - b.x).si(), (a.y - b.y).si());
        }
        near.emplace_back(distance, sample.cans[j].depth.si());
    }
    std::sort(near.begin(), near.end());
    std::size_t keep = placed ? std::min(count, near.size()) : near.size();
    // All cans at the same distance as the last one come along, so that the order cannot decide.
    while (keep < near.size() && near[keep].first <= near[keep - 1].first * (1.0 + 1e-9)) ++keep;
    std::vector<double> depths;
    for (std::size_t k = 0; k < keep; ++k) depths.push_back(near[k].second);
    return depths;
}

}  // namespace

std::vector<SuspectCan> suspect_cans(const Sample& sample) {
    const auto count = static_cast<std::size_t>(limit("suspect_neighbours"));
    const bool placed = std::all_of(sample.cans.begin(), sample.cans.end(),
                                    [](const SampleCan& c) { return c.position.has_value(); });
    std::vector<double> value;
    std::vector<double> weight;
    std::vector<double> expected;
    std::vector<double> difference;
    for (std::size_t i = 0; i < sample.cans.size(); ++i) {
        value.push_back(sample.cans[i].depth.si());
        weight.push_back(sample.cans[i].weight);
        expected.push_back(median(around(sample, i, count, placed)));
        difference.push_back(value[i] - expected[i]);
    }
    const double middle = median(difference);
    std::vector<double> absolute;
    for (const double d : difference) absolute.push_back(std::abs(d - middle));
    const double spread = median(absolute);
    const double mean = mean_of(value, weight);

    std::vector<SuspectCan> suspects;
    for (std::size_t i = 0; i < sample.cans.size(); ++i) {
        const double off = difference[i] - middle;
        if (std::abs(difference[i]) <= limit("suspect_share_of_mean") * mean) continue;
        // Where most cans agree with their neighbours exactly, any other can stands out.
        const double score = spread > 0.0 ? 0.6745 * off / spread : std::copysign(99.0, off);
        if (std::abs(score) <= limit("suspect_score")) continue;
        suspects.push_back({sample.cans[i].label, sample.cans[i].depth,
                            units::Depth::from_si(expected[i]), std::clamp(score, -99.0, 99.0)});
    }
    return suspects;
}

}  // namespace evenfall::audit
