// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/raster.h"

#include "core/input_error.h"
#include "core/plan/outline.h"

#include <algorithm>
#include <cmath>

namespace evenfall::plan {
namespace {

constexpr double usual_cell_m = 0.25;
constexpr double cells_per_radius = 32.0;
constexpr double fewest_cells_per_radius = 4.0;
/// Limits of one computation: about 0.6 GB of field, and about a minute on two slow cores.
constexpr double most_cells = 64e6;
constexpr double most_updates = 2e10;

double smallest_radius(const Sprinklers& all) {
    double least = all.heads.front().radius;
    for (const Sprinkler& s : all.heads) least = std::min(least, s.radius);
    return least;
}

struct Work {
    Raster raster;
    double cells = 0.0;
    double updates = 0.0;
};

Work lay_out(const Box& box, double reach, double painted, double cell) {
    const double width = box.x1 - box.x0;
    const double height = box.y1 - box.y0;
    Work work;
    const double across = std::ceil(width / cell - 1e-9);
    const double up = std::ceil(height / cell - 1e-9);
    Raster& r = work.raster;
    r.hx = width / across;
    r.hy = height / up;
    // One cell more than the reach: the softened edge of a flat profile spreads over half a cell.
    const double margin_x = std::ceil(reach / r.hx) + 1.0;
    const double margin_y = std::ceil(reach / r.hy) + 1.0;
    r.x0 = box.x0 - margin_x * r.hx;
    r.y0 = box.y0 - margin_y * r.hy;
    work.cells = (across + 2.0 * margin_x) * (up + 2.0 * margin_y);
    work.updates = painted / (r.hx * r.hy);
    if (work.cells <= most_cells) {
        r.columns = static_cast<int>(across + 2.0 * margin_x);
        r.rows = static_cast<int>(up + 2.0 * margin_y);
    }
    return work;
}

/// Marks the cells of one row whose centres lie inside the polygon, `slack` m beyond its lines.
void paint_row(const Polygon& polygon, const Raster& raster, int row, double length, double slack,
               Surface value, std::vector<double>& crossings, Surface* cells) {
    const double y = raster.y(row);
    crossings.clear();
    for (const Ring& ring : polygon) {
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Point& a = ring[i];
            const Point& b = ring[i + 1 < ring.size() ? i + 1 : 0];
            const double ay = a.y * length;
            const double by = b.y * length;
            if ((ay > y) == (by > y)) continue;
            crossings.push_back(length * (a.x + (b.x - a.x) * ((y - ay) / (by - ay))));
        }
    }
    std::sort(crossings.begin(), crossings.end());
    for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) {
        const double from = (crossings[i] - slack - raster.x0) / raster.hx - 0.5;
        const double to = (crossings[i + 1] + slack - raster.x0) / raster.hx - 0.5;
        const int first = std::max(0, static_cast<int>(std::ceil(from)));
        const int last = std::min(raster.columns - 1, static_cast<int>(std::floor(to)));
        for (int c = first; c <= last; ++c) {
            if (value == Surface::no_water && cells[c] != Surface::turf) continue;
            cells[c] = value;
        }
    }
}

/// Rows that the polygon's box meets; keeps the work linear in what is painted.
void paint(const Polygon& polygon, const Raster& raster, double length, double slack, Surface value,
           std::vector<Surface>& ground) {
    const Box box = box_of({polygon});
    const int low = std::max(0, static_cast<int>(std::floor((box.y0 * length - raster.y0) / raster.hy)));
    const int high = std::min(raster.rows - 1,
                              static_cast<int>(std::floor((box.y1 * length - raster.y0) / raster.hy)));
    std::vector<double> crossings;
    for (int row = low; row <= high; ++row) {
        paint_row(polygon, raster, row, length, slack, value, crossings,
                  ground.data() + raster.index(0, row));
    }
}

}  // namespace

double default_cell(const Sprinklers& all) {
    return std::min(usual_cell_m, smallest_radius(all) / cells_per_radius);
}

Raster raster_for(const Plan& plan, const Sprinklers& all, const PatternMap& map,
                  std::optional<units::Length> cell) {
    const double length = plan.units.length.unit.si();
    Box box = box_of(plan.turf);
    box = {box.x0 * length, box.y0 * length, box.x1 * length, box.y1 * length};
    double farthest = 0.0;
    double painted = 0.0;
    for (const Sprinkler& s : all.heads) {
        farthest = std::max(farthest, s.radius);
        painted += 3.2 * s.radius * s.radius;
    }
    const double reach = farthest * map.reach + 0.2;  // heads may stand 0.1 m outside
    if (cell) {
        const double asked = cell->si();
        const double most = smallest_radius(all) / fewest_cells_per_radius;
        if (!(asked > 0.0) || !(asked <= most)) {
            throw InputError({phrase("plan", "a cell of %1 m"), units::format_shortest(asked)},
                             {phrase("plan", "a cell above zero and at most a quarter of the smallest radius, %1 m"), units::format_shortest(most)});
        }
        const Work work = lay_out(box, reach, painted, asked);
        if (work.cells > most_cells || work.updates > most_updates) {
            throw InputError({phrase("plan", "a cell of %1 m"), units::format_shortest(asked)},
                             {phrase("plan", "a cell large enough for at most 64 million cells and 20 billion updates; this plan would take %1 million and %2 billion"),
                              units::format_fixed(work.cells / 1e6, 1), units::format_fixed(work.updates / 1e9, 1)});
        }
        return work.raster;
    }
    double size = default_cell(all);
    Work work = lay_out(box, reach, painted, size);
    while (work.cells > most_cells || work.updates > most_updates) {
        size *= 1.25;
        work = lay_out(box, reach, painted, size);
    }
    if (size > smallest_radius(all) / fewest_cells_per_radius) {
        throw InputError({phrase("plan", "heads of %1 m on an outline this large"), units::format_shortest(smallest_radius(all))},
                         phrase("plan", "a plan that 64 million cells and 20 billion updates can resolve; split it"));
    }
    return work.raster;
}

std::vector<Surface> ground_of(const Plan& plan, const Raster& raster) {
    std::vector<Surface> ground(raster.cells(), Surface::outside);
    const double length = plan.units.length.unit.si();
    // Centres within a millionth of a cell of a line count as turf, so that rounding does not
    // decide; core/plan/rate_field.cpp draws the edges of arcs the same way.
    const double slack = 1e-6 * std::min(raster.hx, raster.hy);
    for (const Polygon& p : plan.turf) paint(p, raster, length, slack, Surface::turf, ground);
    for (const Polygon& p : plan.no_water) paint(p, raster, length, -slack, Surface::no_water, ground);
    return ground;
}

}  // namespace evenfall::plan
