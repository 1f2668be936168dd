// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/layout.h"

#include "core/input_error.h"
#include "core/plan/check_plan.h"
#include "core/plan/matched.h"
#include "core/plan/outline.h"
#include "core/reference/table.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace evenfall::plan {
namespace {

constexpr double degree = std::numbers::pi / 180.0;
const double row_ratio = std::sqrt(3.0) / 2.0;
/// Below this turn, in degrees, a corner of the outline is part of an edge.
constexpr double least_turn = 15.0;
/// A head keeps at least this share of its radius when it is drawn in so as not to throw over an edge.
constexpr double most_drawn_in = 0.75;

double length_of(Point a, Point b) { return std::hypot(b.x - a.x, b.y - a.y); }

/// Degrees clockwise from north of the way from a to b.
double bearing(Point a, Point b) {
    const double angle = std::atan2(b.x - a.x, b.y - a.y) / degree;
    return angle < 0.0 ? angle + 360.0 : angle;
}

double wrapped(double angle) {
    const double a = std::fmod(angle, 360.0);
    return a < 0.0 ? a + 360.0 : a;
}

double signed_area(const Ring& ring) {
    double twice = 0.0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point& a = ring[i];
        const Point& b = ring[(i + 1) % ring.size()];
        twice += a.x * b.y - b.x * a.y;
    }
    return twice / 2.0;
}

double distance_to_segment(Point p, Point a, Point b) {
    const double l2 = (b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y);
    if (l2 == 0.0) return length_of(p, a);
    const double t = std::clamp(((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / l2, 0.0, 1.0);
    return length_of(p, {a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)});
}

/// Axes along the longest edge of a polygon.
struct Frame {
    double c = 1.0, s = 0.0;
    Point to(Point p) const { return {c * p.x + s * p.y, -s * p.x + c * p.y}; }
    Point from(Point p) const { return {c * p.x - s * p.y, s * p.x + c * p.y}; }
};

class Fitter {
  public:
    Fitter(const Plan& outline, const LayoutOrder& order) : order_(order) {
        out_.plan = outline;
        out_.plan.heads.clear();
        out_.plan.assumed.clear();
    }

    Layout run() {
        check_order();
        for (const Polygon& polygon : out_.plan.turf) fit_polygon(polygon);
        assign_stations();
        out_.method = name_of(order_.pattern) + " layout from the outside in: corners, edges, interior";
        out_.source = order_.shares.source + " [" + order_.shares.mark + "]";
        require_sound(out_.plan);
        return std::move(out_);
    }

  private:
    void check_order() {
        const auto refuse = [](double found, const Sentence& expected) {
            throw InputError(units::format_shortest(found), expected);
        };
        if (!(order_.smallest_radius > 0.0) || !std::isfinite(order_.smallest_radius)) {
            refuse(order_.smallest_radius, "a smallest radius above zero");
        }
        if (!(order_.largest_radius >= order_.smallest_radius) || !std::isfinite(order_.largest_radius)) {
            refuse(order_.largest_radius, "a largest radius of at least the smallest");
        }
        if (!(order_.rate.si() > 0.0) || !std::isfinite(order_.rate.si())) {
            refuse(order_.rate.si(), "a design rate above zero");
        }
        for (double share : {order_.shares.in_row, order_.shares.between_rows}) {
            if (!(share > 0.0) || !(share <= 1.0)) refuse(share, "a spacing share above 0, up to 1");
        }
        if (order_.most_flow && !(order_.most_flow->si() > 0.0)) {
            refuse(order_.most_flow->si(), "a station flow above zero");
        }
        if (out_.plan.turf.empty()) throw InputError(phrase("plan", "no outline"), phrase("plan", "at least one outline"));
        for (const Polygon& polygon : out_.plan.turf) {
            const Sentence fault = outline_fault(polygon);
            if (!fault.empty()) throw InputError({phrase("plan", "an outline that %1"), fault}, phrase("plan", "a sound outline"));
        }
    }

    void warn(const std::string& sentence) {
        if (std::find(out_.warnings.begin(), out_.warnings.end(), sentence) == out_.warnings.end()) {
            out_.warnings.push_back(sentence);
        }
    }

    std::string in_unit(double value) const {
        return units::format_fixed(value, 1) + " " + std::string(out_.plan.units.length.name);
    }

    /// Spacings that divide the narrow side, and the radius that goes with them.
    void choose_spacing(double narrow, double along) {
        const double widest = order_.largest_radius * 2.0;
        const bool triangle = order_.pattern == Pattern::equilateral;
        const double most_row = triangle ? row_ratio * order_.shares.in_row * widest : order_.shares.between_rows * widest;
        const double rows = std::max(1.0, std::ceil(narrow / most_row - 1e-9));
        row_ = narrow / rows;
        const double in_row = triangle ? row_ / row_ratio : row_ * order_.shares.in_row / order_.shares.between_rows;
        const double heads = std::max(1.0, std::ceil(along / in_row - 1e-9));
        spacing_ = along / heads;
        const double diameter = triangle ? std::max(spacing_, row_ / row_ratio) / order_.shares.in_row
                                         : std::max(spacing_ / order_.shares.in_row, row_ / order_.shares.between_rows);
        radius_ = diameter / 2.0;
        if (radius_ < order_.smallest_radius) {
            warn("a strip " + in_unit(narrow) + " wide is too narrow for heads that throw at least " +
                 in_unit(order_.smallest_radius) + ": they throw past it; choose heads of about " + in_unit(radius_));
            radius_ = order_.smallest_radius;
        }
        const double share = spacing_ / (2.0 * radius_);
        if (std::max(share, row_ / (2.0 * radius_)) > plan_limit("widest_share") && order_.pattern != Pattern::rectangular) {
            warn("the spacing is " + units::format_fixed(100.0 * share, 0) + " % of the diameter");
        }
        if (out_.radius == 0.0) {
            out_.spacing = spacing_;
            out_.row_spacing = row_;
            out_.radius = radius_;
            out_.share_of_diameter = share;
        }
    }

    void add(const char* prefix, std::size_t& count, Point at, double arc, double facing, double radius) {
        if (out_.plan.heads.size() >= most_heads) {
            throw InputError("more than " + std::to_string(most_heads) + " heads",
                             "a larger radius or a smaller outline");
        }
        // Where two outlines share a corner, one head is enough.
        if (prefix[0] == 'C') {
            for (const Point& c : corners_) {
                if (length_of(c, at) < 0.05 * spacing_) return;
            }
            corners_.push_back(at);
        }
        Head h;
        h.id = prefix + std::to_string(++count);
        h.x = at.x;
        h.y = at.y;
        h.arc = std::clamp(arc, 1.0, 360.0);
        h.facing = wrapped(facing);
        h.radius = radius;
        const double length = out_.plan.units.length.unit.si();
        const double shrink = radius / radius_;
        const units::Area ground = units::Area::from_si(spacing_ * row_ * length * length * shrink * shrink);
        h.flow = (order_.rate * ground).si() * h.arc / 360.0 / out_.plan.units.flow.unit.si();
        out_.plan.heads.push_back(h);
    }

    /// Corners and edges of one ring. @param turned  +1 when the turf lies left of the way round
    void fit_ring(const Ring& ring, double turned) {
        const std::size_t n = ring.size();
        std::vector<std::size_t> corners;
        std::vector<char> sharp;  // water thrown past this end of an edge leaves the turf
        for (std::size_t i = 0; i < n; ++i) {
            const Point& before = ring[(i + n - 1) % n];
            const Point& at = ring[i];
            const Point& after = ring[(i + 1) % n];
            // Clockwise from the way on to the way back is the outside for a left-hand turf.
            const double on = bearing(at, after);
            const double back = bearing(at, before);
            const double inside = turned > 0.0 ? wrapped(on - back) : wrapped(back - on);
            if (std::abs(inside - 180.0) < least_turn) continue;
            corners.push_back(i);
            sharp.push_back(inside < 120.0 ? 1 : 0);
            const double facing = turned > 0.0 ? back + inside / 2.0 : on + inside / 2.0;
            add("C", out_.corner_heads, at, inside, facing, radius_);
        }
        const bool whole = corners.empty();
        if (whole) {
            corners.push_back(0);
            sharp.push_back(0);
        }
        for (std::size_t k = 0; k < corners.size(); ++k) {
            const std::size_t next = (k + 1) % corners.size();
            fit_run(ring, {corners[k], corners[next], sharp[k] != 0, sharp[next] != 0, whole}, turned);
        }
    }

    /// The line between two corners; the whole ring when it has no corner.
    struct Run {
        std::size_t from, to;
        bool sharp_from, sharp_to;
        bool whole;
    };

    /// Heads in equal steps along a run, which may bend slightly.
    void fit_run(const Ring& ring, const Run& run, double turned) {
        std::vector<Point> line{ring[run.from]};
        for (std::size_t i = (run.from + 1) % ring.size();; i = (i + 1) % ring.size()) {
            line.push_back(ring[i]);
            if (i == run.to) break;
        }
        double total = 0.0;
        for (std::size_t i = 1; i < line.size(); ++i) total += length_of(line[i - 1], line[i]);
        const Point along = frame_.to({line.back().x - line.front().x, line.back().y - line.front().y});
        const double most = std::abs(along.x) >= std::abs(along.y) ? spacing_ : row_;
        const double steps = std::max(1.0, std::ceil(total / most - 0.02));
        double walked = 0.0;
        std::size_t piece = 1;
        for (double k = run.whole ? 0.0 : 1.0; k < steps; k += 1.0) {
            const double at = total * k / steps;
            while (piece + 1 < line.size() && walked + length_of(line[piece - 1], line[piece]) < at) {
                walked += length_of(line[piece - 1], line[piece]);
                ++piece;
            }
            const Point& a = line[piece - 1];
            const Point& b = line[piece];
            const double l = length_of(a, b);
            const double t = l > 0.0 ? (at - walked) / l : 0.0;
            double room = radius_;
            if (run.sharp_from) room = std::min(room, at);
            if (run.sharp_to) room = std::min(room, total - at);
            add("E", out_.edge_heads, {a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)}, 180.0,
                bearing(a, b) - turned * 90.0, std::max(room, most_drawn_in * radius_));
        }
    }

    void fit_interior(const Polygon& polygon, const Box& box) {
        const Ground ground({polygon});
        const double rows = std::round((box.y1 - box.y0) / row_);
        const double columns = std::round((box.x1 - box.x0) / spacing_);
        for (double j = 1.0; j < rows; j += 1.0) {
            const bool moved = order_.pattern == Pattern::equilateral && std::fmod(j, 2.0) == 1.0;
            for (double i = 0.0; i <= columns; i += 1.0) {
                const Point at = frame_.from({box.x0 + spacing_ * (i + (moved ? 0.5 : 0.0)), box.y0 + row_ * j});
                if (!ground.covers(at, 0.0)) continue;
                double edge = std::numeric_limits<double>::infinity();
                for (const Ring& ring : polygon) {
                    for (std::size_t k = 0; k < ring.size(); ++k) {
                        edge = std::min(edge, distance_to_segment(at, ring[k], ring[(k + 1) % ring.size()]));
                    }
                }
                if (edge < most_drawn_in * std::min(spacing_, row_)) continue;
                add("I", out_.interior_heads, at, 360.0, 0.0,
                    std::min(radius_, std::max(edge, most_drawn_in * radius_)));
            }
        }
    }

    void fit_polygon(const Polygon& polygon) {
        const Ring& outer = polygon.front();
        std::size_t longest = 0;
        for (std::size_t i = 1; i < outer.size(); ++i) {
            if (length_of(outer[i], outer[(i + 1) % outer.size()]) >
                length_of(outer[longest], outer[(longest + 1) % outer.size()]) * (1.0 + 1e-9)) {
                longest = i;
            }
        }
        const Point& a = outer[longest];
        const Point& b = outer[(longest + 1) % outer.size()];
        const double l = length_of(a, b);
        frame_ = {(b.x - a.x) / l, (b.y - a.y) / l};
        Box box = box_in_frame(outer);
        // Rows run along the box of the turf; its longest edge may lie across it.
        if (box.y1 - box.y0 > box.x1 - box.x0) {
            frame_ = {-frame_.s, frame_.c};
            box = box_in_frame(outer);
        }
        choose_spacing(box.y1 - box.y0, box.x1 - box.x0);
        if ((box.y1 - box.y0) / row_ * ((box.x1 - box.x0) / spacing_) > 4.0 * static_cast<double>(most_heads)) {
            throw InputError("more than " + std::to_string(most_heads) + " heads",
                             "a larger radius or a smaller outline");
        }
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const double turn = (signed_area(polygon[i]) > 0.0) == (i == 0) ? 1.0 : -1.0;
            fit_ring(polygon[i], turn);
        }
        fit_interior(polygon, box);
    }

    Box box_in_frame(const Ring& ring) const {
        Ring turned;
        for (const Point& p : ring) turned.push_back(frame_.to(p));
        return box_of({{turned}});
    }

    /// Neighbours run together: heads in strips from west to east, a new station when one is full.
    void assign_stations() {
        std::vector<std::size_t> order(out_.plan.heads.size());
        for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
        const double strip = 2.0 * std::max(out_.spacing, out_.row_spacing);
        const auto& heads = out_.plan.heads;
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            const double sa = std::floor(heads[a].x / strip);
            const double sb = std::floor(heads[b].x / strip);
            if (sa != sb) return sa < sb;
            return heads[a].y < heads[b].y;
        });
        const double unit = out_.plan.units.flow.unit.si();
        for (std::size_t i : order) {
            Head& h = out_.plan.heads[i];
            const double flow = *h.flow * unit;
            const bool full = !out_.stations.empty() && order_.most_flow &&
                              out_.stations.back().flow.si() + flow > order_.most_flow->si() * (1.0 + 1e-12);
            if (out_.stations.empty() || full) {
                out_.stations.push_back({std::to_string(out_.stations.size() + 1), 0, units::Flow{}});
            }
            StationFlow& s = out_.stations.back();
            h.station = s.station;
            s.flow += units::Flow::from_si(flow);
            ++s.heads;
            if (order_.most_flow && flow > order_.most_flow->si()) {
                warn("one head alone takes more than the most a station may");
            }
        }
    }

    const LayoutOrder& order_;
    Layout out_;
    double spacing_ = 0.0, row_ = 0.0, radius_ = 0.0;
    Frame frame_;
    std::vector<Point> corners_;
};

}  // namespace

std::string name_of(Pattern pattern) {
    switch (pattern) {
        case Pattern::square: return "square";
        case Pattern::rectangular: return "rectangular";
        case Pattern::equilateral: return "equilateral";
    }
    return "";
}

SpacingShares spacing_for(Pattern pattern, units::Speed wind) {
    const double mph = wind.in(units::mile_per_hour);
    double highest = 0.0;
    for (const reference::Row& row : reference::Table::named("spacing_by_wind.csv").rows()) {
        if (row.text("layout") != name_of(pattern)) continue;
        highest = std::max(highest, row.number("high_mph"));
        // A billionth of slack: 3 mph goes to m/s and back as 3.0000000000000004.
        if (!(mph >= 0.0) || mph > row.number("high_mph") * (1.0 + 1e-9)) continue;
        const double share = row.number("share");
        return {share, row.maybe_number("row_share").value_or(share * row_ratio), std::string(row.source()),
                std::string(reference::text_of(row.mark()))};
    }
    throw InputError("a wind of " + units::format_fixed(mph, 1) + " mph",
                     "0 to " + units::format_fixed(highest, 0) + " mph, for which spacings are known");
}

Layout fit_layout(const Plan& outline, const LayoutOrder& order) { return Fitter(outline, order).run(); }

}  // namespace evenfall::plan
