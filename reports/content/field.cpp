// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/field.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace evenfall::reports {
namespace {

constexpr double outside = std::numeric_limits<double>::quiet_NaN();

/// Median distance to the nearest other point.
double usual_spacing(const std::vector<FieldPoint>& points) {
    std::vector<double> nearest;
    for (std::size_t i = 0; i < points.size(); ++i) {
        double best = std::numeric_limits<double>::infinity();
        for (std::size_t j = 0; j < points.size(); ++j) {
            const double d = std::hypot(points[i].x - points[j].x, points[i].y - points[j].y);
            if (i != j && d > 0.0) best = std::min(best, d);
        }
        if (std::isfinite(best)) nearest.push_back(best);
    }
    if (nearest.empty()) return 0.0;
    std::nth_element(nearest.begin(), nearest.begin() + static_cast<std::ptrdiff_t>(nearest.size() / 2),
                     nearest.end());
    return nearest[nearest.size() / 2];
}

double interpolated(const std::vector<FieldPoint>& points, double x, double y, double reach) {
    double sum = 0.0, weights = 0.0, closest = std::numeric_limits<double>::infinity();
    for (const FieldPoint& p : points) {
        const double d = std::hypot(p.x - x, p.y - y);
        if (d < 1e-9 * reach) return p.value;
        closest = std::min(closest, d);
        const double w = 1.0 / (d * d * d);
        sum += w * p.value;
        weights += w;
    }
    return closest > reach ? outside : sum / weights;
}

/// One square of four cell centres. Corners counter-clockwise from the lower left.
struct Square {
    std::array<std::array<double, 2>, 4> at;
    std::array<double, 4> value;

    std::array<double, 2> crossing(std::size_t a, std::size_t b, double level) const {
        const double t = (level - value[a]) / (value[b] - value[a]);
        return {at[a][0] + t * (at[b][0] - at[a][0]), at[a][1] + t * (at[b][1] - at[a][1])};
    }
};

void add_lines(const Square& s, double level, Contour& contour) {
    // Sides 0-1, 1-2, 2-3, 3-0 that the line crosses, in order around the square.
    std::vector<std::array<double, 2>> cuts;
    for (std::size_t i = 0; i < 4; ++i) {
        const std::size_t j = (i + 1) % 4;
        if ((s.value[i] < level) != (s.value[j] < level)) cuts.push_back(s.crossing(i, j, level));
    }
    if (cuts.size() == 2) contour.lines.push_back({cuts[0], cuts[1]});
    if (cuts.size() != 4) return;
    const double middle = (s.value[0] + s.value[1] + s.value[2] + s.value[3]) / 4.0;
    // Corners 0 and 2 are cut off when the middle is on the side of corners 1 and 3.
    const bool cut_first = (middle < level) != (s.value[0] < level);
    if (cut_first) {
        contour.lines.push_back({cuts[3], cuts[0]});
        contour.lines.push_back({cuts[1], cuts[2]});
    } else {
        contour.lines.push_back({cuts[0], cuts[1]});
        contour.lines.push_back({cuts[2], cuts[3]});
    }
}

}  // namespace

std::optional<Field> field_between(const std::vector<FieldPoint>& points, std::size_t cells) {
    if (points.size() < 4 || cells == 0) return std::nullopt;
    const auto by_x = [](const FieldPoint& a, const FieldPoint& b) { return a.x < b.x; };
    const auto by_y = [](const FieldPoint& a, const FieldPoint& b) { return a.y < b.y; };
    const auto [west, east] = std::minmax_element(points.begin(), points.end(), by_x);
    const auto [south, north] = std::minmax_element(points.begin(), points.end(), by_y);
    const double spacing = usual_spacing(points);
    const double width = east->x - west->x, height = north->y - south->y;
    if (!(width > 0.0) || !(height > 0.0) || !(spacing > 0.0)) return std::nullopt;
    Field f;
    const double w = width + spacing, h = height + spacing;
    const double side = std::sqrt(w * h / static_cast<double>(cells));
    f.columns = std::max<std::size_t>(2, static_cast<std::size_t>(std::lround(w / side)));
    f.rows = std::max<std::size_t>(2, static_cast<std::size_t>(std::lround(h / side)));
    f.dx = w / static_cast<double>(f.columns);
    f.dy = h / static_cast<double>(f.rows);
    f.x0 = west->x - spacing / 2.0 + f.dx / 2.0;
    f.y0 = south->y - spacing / 2.0 + f.dy / 2.0;
    f.method = "inverse distance, power 3 (Shepard 1968)";
    f.values.reserve(f.columns * f.rows);
    for (std::size_t r = 0; r < f.rows; ++r) {
        for (std::size_t c = 0; c < f.columns; ++c) {
            f.values.push_back(interpolated(points, f.x0 + static_cast<double>(c) * f.dx,
                                            f.y0 + static_cast<double>(r) * f.dy, spacing));
        }
    }
    return f;
}

std::vector<Contour> contours_of(const Field& f, const std::vector<double>& levels) {
    std::vector<Contour> out;
    for (const double level : levels) {
        Contour contour;
        contour.level = level;
        for (std::size_t r = 0; r + 1 < f.rows; ++r) {
            for (std::size_t c = 0; c + 1 < f.columns; ++c) {
                const double x = f.x0 + static_cast<double>(c) * f.dx;
                const double y = f.y0 + static_cast<double>(r) * f.dy;
                const std::size_t k = r * f.columns + c;
                const Square s{{{{x, y}, {x + f.dx, y}, {x + f.dx, y + f.dy}, {x, y + f.dy}}},
                               {f.values[k], f.values[k + 1], f.values[k + f.columns + 1],
                                f.values[k + f.columns]}};
                if (std::all_of(s.value.begin(), s.value.end(),
                                [](double v) { return std::isfinite(v); })) {
                    add_lines(s, level, contour);
                }
            }
        }
        if (!contour.lines.empty()) out.push_back(std::move(contour));
    }
    return out;
}

std::vector<double> round_levels(const Field& field, std::size_t most) {
    double low = std::numeric_limits<double>::infinity(), high = -low;
    for (const double v : field.values) {
        if (!std::isfinite(v)) continue;
        low = std::min(low, v);
        high = std::max(high, v);
    }
    if (!(high > low) || most == 0) return {};
    const double raw = (high - low) / static_cast<double>(most);
    const double power = std::pow(10.0, std::floor(std::log10(raw)));
    double step = 10.0 * power;
    for (const double k : {5.0, 2.0, 1.0}) {
        if (k * power >= raw) step = k * power;
    }
    std::vector<double> levels;
    // By whole multiples: adding the step again and again would drift.
    for (double k = std::ceil(low / step); k * step < high; k += 1.0) {
        if (k * step > low) levels.push_back(k * step);
    }
    return levels;
}

}  // namespace evenfall::reports
