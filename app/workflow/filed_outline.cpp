// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/filed_outline.h"

#include "core/review/use_record.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace evenfall::workflow {
namespace {

using Ring = std::vector<std::pair<double, double>>;

constexpr double most_difference = 0.01;

Ring only_ring(const std::string& geojson) {
    try {
        const auto polygons = nlohmann::json::parse(geojson).at("coordinates");
        if (polygons.size() != 1 || polygons[0].size() != 1) return {};
        Ring ring;
        for (const auto& point : polygons[0][0]) {
            ring.emplace_back(point.at(0).get<double>(), point.at(1).get<double>());
        }
        if (ring.size() > 1 && ring.front() == ring.back()) ring.pop_back();
        return ring;
    } catch (const nlohmann::json::exception&) {
        throw store::BookError(phrase("workflow", "An area of the book has an outline that cannot be read."));
    }
}

bool in_degrees(const Ring& ring) {
    return std::all_of(ring.begin(), ring.end(), [](const auto& point) {
        return std::abs(point.first) <= 180.0 && std::abs(point.second) <= 90.0;
    });
}

}  // namespace

Ring ring_to_file(const store::AreaOutline& outline) {
    Ring ring = only_ring(outline.geojson);
    if (!in_degrees(ring)) return {};
    const auto area = review::outline_area(ring);
    if (!area || std::abs(*area / outline.measured - 1.0) > most_difference) return {};
    return ring;
}

}  // namespace evenfall::workflow
