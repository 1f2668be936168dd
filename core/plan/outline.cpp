// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/outline.h"

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#include <boost/geometry/geometries/segment.hpp>
#include <boost/geometry/index/rtree.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace evenfall::plan {
namespace {

namespace bg = boost::geometry;
namespace bgi = boost::geometry::index;
using BoostPoint = bg::model::d2::point_xy<double>;
using BoostPolygon = bg::model::polygon<BoostPoint>;

/// Closed and turned the way the library wants.
BoostPolygon to_boost(const Polygon& polygon) {
    BoostPolygon out;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        if (i > 0) out.inners().emplace_back();
        auto& ring = i == 0 ? out.outer() : out.inners().back();
        for (const Point& p : polygon[i]) ring.emplace_back(p.x, p.y);
    }
    bg::correct(out);
    return out;
}

/// The library's message says "... at: (x, y)"; only its place is passed on.
Sentence placed(const Sentence& fault, const std::string& message) {
    const std::size_t open = message.find('(');
    const std::size_t close = message.find(')', open);
    if (open == std::string::npos || close == std::string::npos) return fault;
    return {phrase("plan", "%1 near %2"), fault, message.substr(open + 1, close - open - 1)};
}

}  // namespace

Sentence outline_fault(const Polygon& polygon) {
    if (polygon.empty()) return phrase("plan", "has no ring");
    for (const Ring& ring : polygon) {
        if (ring.size() < 3) return phrase("plan", "has a ring with fewer than three points");
        for (const Point& p : ring) {
            if (!std::isfinite(p.x) || !std::isfinite(p.y)) return phrase("plan", "has a point that is not finite");
        }
    }
    const BoostPolygon shape = to_boost(polygon);
    bg::validity_failure_type why{};
    std::string message;
    if (!bg::is_valid(shape, message) && !bg::is_valid(shape, why)) {
        switch (why) {
            case bg::failure_self_intersections: return placed(phrase("plan", "crosses itself"), message);
            case bg::failure_spikes: return placed(phrase("plan", "has a spike"), message);
            case bg::failure_few_points: return phrase("plan", "has a ring with fewer than three different points");
            case bg::failure_interior_rings_outside: return phrase("plan", "has a hole outside its outer ring");
            case bg::failure_nested_interior_rings: return phrase("plan", "has a hole inside a hole");
            case bg::failure_disconnected_interior: return phrase("plan", "has holes that cut it in two");
            case bg::failure_wrong_orientation:  // no turn is right where the signed area is zero
                return bg::intersects(shape) ? phrase("plan", "crosses itself") : phrase("plan", "encloses no area");
            case bg::failure_duplicate_points: break;  // harmless: the same corner typed twice
            default: return placed(phrase("plan", "is not a sound outline"), message);
        }
    }
    if (!(bg::area(shape) > 0.0)) return phrase("plan", "encloses no area");
    return {};
}

double outline_area(const Polygon& polygon) { return bg::area(to_boost(polygon)); }

Box box_of(const std::vector<Polygon>& polygons) {
    constexpr double far = std::numeric_limits<double>::infinity();
    Box box{far, far, -far, -far};
    for (const Polygon& polygon : polygons) {
        for (const Ring& ring : polygon) {
            for (const Point& p : ring) {
                box.x0 = std::min(box.x0, p.x);
                box.y0 = std::min(box.y0, p.y);
                box.x1 = std::max(box.x1, p.x);
                box.y1 = std::max(box.y1, p.y);
            }
        }
    }
    return box;
}

struct Ground::Index {
    using Segment = bg::model::segment<BoostPoint>;
    using Entry = std::pair<Segment, std::size_t>;  // with the number of its polygon
    bgi::rtree<Entry, bgi::quadratic<16>> lines;
    std::size_t polygons = 0;
    double right = 0.0;  // a place east of everything
};

Ground::Ground(const std::vector<Polygon>& polygons) : index_(std::make_unique<Index>()) {
    std::vector<Index::Entry> all;
    for (std::size_t n = 0; n < polygons.size(); ++n) {
        for (const Ring& ring : polygons[n]) {
            for (std::size_t i = 0; i < ring.size(); ++i) {
                const Point& a = ring[i];
                const Point& b = ring[(i + 1) % ring.size()];
                all.emplace_back(Index::Segment({a.x, a.y}, {b.x, b.y}), n);
            }
        }
    }
    index_->polygons = polygons.size();
    index_->right = polygons.empty() ? 0.0 : box_of(polygons).x1 + 1.0;
    index_->lines = decltype(index_->lines)(all.begin(), all.end());
}

Ground::~Ground() = default;

bool Ground::covers(Point p, double slack) const {
    using BoostBox = bg::model::box<BoostPoint>;
    const BoostPoint at(p.x, p.y);
    const BoostBox near({p.x - slack, p.y - slack}, {p.x + slack, p.y + slack});
    for (auto it = index_->lines.qbegin(bgi::intersects(near)); it != index_->lines.qend(); ++it) {
        if (bg::distance(at, it->first) <= slack) return true;
    }
    if (p.x > index_->right) return false;
    // Lines crossed on the way east, odd for inside; counted per polygon, since two may touch.
    std::vector<char> odd(index_->polygons, 0);
    const BoostBox ray({p.x, p.y}, {index_->right, p.y});
    for (auto it = index_->lines.qbegin(bgi::intersects(ray)); it != index_->lines.qend(); ++it) {
        const BoostPoint a = it->first.first;
        const BoostPoint b = it->first.second;
        if ((a.y() > p.y) == (b.y() > p.y)) continue;
        const double x = a.x() + (p.y - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
        if (x > p.x) odd[it->second] ^= 1;
    }
    return std::find(odd.begin(), odd.end(), 1) != odd.end();
}

}  // namespace evenfall::plan
