// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/voronoi.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <boost/polygon/voronoi.hpp>
#include <cmath>
#include <cstdint>
#include <limits>
#include <string>

namespace evenfall::audit {
namespace {

namespace bg = boost::geometry;
using PointXy = bg::model::d2::point_xy<double>;
using Polygon = bg::model::polygon<PointXy>;
using MultiPolygon = bg::model::multi_polygon<Polygon>;
using Points = std::span<const std::pair<double, double>>;
using Site = boost::polygon::point_data<std::int32_t>;

std::string text_of(const std::pair<double, double>& p) {
    return units::format_shortest(p.first) + ", " + units::format_shortest(p.second);
}

double median_nearest_distance(Points points) {
    std::vector<double> nearest;
    nearest.reserve(points.size());
    for (const auto& p : points) {
        double least = std::numeric_limits<double>::infinity();
        for (const auto& q : points) {
            const double d = std::hypot(p.first - q.first, p.second - q.second);
            if (d > 0.0) least = std::min(least, d);
        }
        nearest.push_back(least);
    }
    std::sort(nearest.begin(), nearest.end());
    return nearest[nearest.size() / 2];
}

Polygon widened_hull(Points points) {
    bg::model::multi_point<PointXy> cloud;
    for (const auto& [x, y] : points) bg::append(cloud, PointXy(x, y));
    Polygon hull;
    bg::convex_hull(cloud, hull);
    const auto extent = static_cast<double>(bg::perimeter(hull));
    if (!(bg::area(hull) > 1e-9 * extent * extent)) {
        throw InputError(phrase("audit", "cans in one line"), phrase("audit", "positions that enclose some ground"));
    }
    const double out = median_nearest_distance(points) / 2.0;
    MultiPolygon wide;
    // Square corners; the limit of the miter keeps a needle-shaped hull from reaching far out.
    bg::buffer(hull, wide, bg::strategy::buffer::distance_symmetric<double>(out),
               bg::strategy::buffer::side_straight(), bg::strategy::buffer::join_miter(2.0),
               bg::strategy::buffer::end_flat(), bg::strategy::buffer::point_square());
    return wide.at(0);
}

Polygon polygon_of(Points outline) {
    if (outline.size() < 3)
        throw InputError(phrase("audit", "an outline of two corners"), phrase("audit", "at least three"));
    Polygon ground;
    for (const auto& [x, y] : outline) bg::append(ground, PointXy(x, y));
    bg::correct(ground);
    std::string why;
    if (!bg::is_valid(ground, why)) {
        throw InputError(phrase("audit", "an outline that crosses itself or has no area"),
                         phrase("audit", "a simple ring"));
    }
    return ground;
}

/// Cells of the points, in the units of the points. Four far sites make every cell finite; they
/// lie so far out that no border of theirs reaches the ground.
std::vector<Polygon> cells_of(Points points, const Polygon& ground) {
    const auto box = bg::return_envelope<bg::model::box<PointXy>>(ground);
    const PointXy middle = bg::return_centroid<PointXy>(box);
    const double half = std::max(box.max_corner().x() - box.min_corner().x(),
                                 box.max_corner().y() - box.min_corner().y()) / 2.0;
    constexpr double across = 134217728.0;    // 2^27 steps over half of the ground
    constexpr std::int32_t far = 1073741824;  // eight times as far
    const double scale = across / half;

    std::vector<Site> sites;
    for (const auto& [x, y] : points) {
        sites.emplace_back(static_cast<std::int32_t>(std::lround((x - middle.x()) * scale)),
                           static_cast<std::int32_t>(std::lround((y - middle.y()) * scale)));
    }
    for (const auto& [x, y] : {std::pair{far, 0}, {-far, 0}, {0, far}, {0, -far}}) {
        sites.emplace_back(x, y);
    }
    boost::polygon::voronoi_diagram<double> diagram;
    boost::polygon::construct_voronoi(sites.begin(), sites.end(), &diagram);

    std::vector<Polygon> cells(points.size());
    for (const auto& cell : diagram.cells()) {
        if (cell.source_index() >= points.size()) continue;
        Polygon& polygon = cells[cell.source_index()];
        const auto* edge = cell.incident_edge();
        do {
            const auto* v = edge->vertex0();
            if (v != nullptr) {
                bg::append(polygon, PointXy(v->x() / scale + middle.x(), v->y() / scale + middle.y()));
            }
            edge = edge->next();
        } while (edge != cell.incident_edge());
        bg::correct(polygon);
    }
    return cells;
}

}  // namespace

VoronoiShares voronoi_shares(std::span<const std::pair<double, double>> points,
                             std::span<const std::pair<double, double>> outline) {
    VoronoiShares result;
    result.outline_assumed = outline.empty();
    const Polygon ground = outline.empty() ? widened_hull(points) : polygon_of(outline);
    for (const auto& p : points) {
        if (!bg::covered_by(PointXy(p.first, p.second), ground)) {
            throw InputError({phrase("audit", "a can at %1"), text_of(p)},
                             phrase("audit", "cans inside the outline"));
        }
    }
    double total = 0.0;
    for (const Polygon& cell : cells_of(points, ground)) {
        MultiPolygon part;
        if (cell.outer().size() >= 4) bg::intersection(cell, ground, part);
        const double area = bg::area(part);
        if (!(area > 0.0)) {
            throw InputError(phrase("audit", "two cans in one place"),
                             phrase("audit", "a place of its own for every can"));
        }
        result.share.push_back(area);
        total += area;
    }
    for (double& s : result.share) s /= total;
    result.area = bg::area(ground);
    return result;
}

}  // namespace evenfall::audit
