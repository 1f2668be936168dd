// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <string>
#include <utility>
#include <vector>

/// Small plans for the tests of this room, in metres and cubic metres per hour. Constructed.
namespace evenfall::plan_test {

inline plan::PlanUnits metric() {
    return {units::unit_named<units::Length>("m"), units::unit_named<units::Flow>("m3_h"),
            units::unit_named<units::Pressure>("kpa")};
}

inline std::string numbered(const char* prefix, int n) { return prefix + std::to_string(n); }

inline plan::Polygon rectangle(double x0, double y0, double x1, double y1) {
    return {{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}};
}

inline plan::Head head(const std::string& id, double x, double y, double radius, double flow,
                       double arc = 360.0, double facing = 0.0, const std::string& profile = "cone") {
    plan::Head h;
    h.id = id;
    h.x = x;
    h.y = y;
    h.radius = radius;
    h.flow = flow;
    h.arc = arc;
    h.facing = facing;
    h.profile = profile;
    return h;
}

/// Full circles on every node that can reach the rectangle (0,0)-(width,height), which is the turf;
/// the outline that holds the heads is wider and counted as no-water ground around the turf.
inline plan::Plan lattice(double width, double height, double radius, double flow,
                          const std::vector<std::pair<double, double>>& nodes) {
    plan::Plan p;
    p.units = metric();
    double x0 = 0.0, y0 = 0.0, x1 = width, y1 = height;
    for (const auto& [x, y] : nodes) {
        x0 = std::min(x0, x);
        y0 = std::min(y0, y);
        x1 = std::max(x1, x);
        y1 = std::max(y1, y);
    }
    p.turf = {rectangle(x0, y0, x1, y1)};
    const plan::Polygon frame{{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}},
                              {{0.0, 0.0}, {0.0, height}, {width, height}, {width, 0.0}}};
    if (x0 < 0.0) p.no_water = {frame};
    int n = 0;
    for (const auto& [x, y] : nodes) p.heads.push_back(head(numbered("H", ++n), x, y, radius, flow));
    return p;
}

/// Rows of full circles `across` apart, rows `up` apart, alternate rows moved by half a spacing
/// when `offset`, over everything that reaches (0,0)-(width,height).
inline plan::Plan repeating(double width, double height, double radius, double flow, double across,
                            double up, bool offset) {
    std::vector<std::pair<double, double>> nodes;
    const int columns = static_cast<int>(width / across + 0.5);
    const int rows = static_cast<int>(height / up + 0.5);
    const int more = static_cast<int>(radius / std::min(across, up)) + 2;
    for (int j = -more; j <= rows + more; ++j) {
        for (int i = -more; i <= columns + more; ++i) {
            nodes.emplace_back(across * (i + (offset && (j % 2 != 0) ? 0.5 : 0.0)), up * j);
        }
    }
    return lattice(width, height, radius, flow, nodes);
}

/// A lawn of 90 by 45 ft with quarter, half and full circles at head-to-head spacing of 15 ft.
inline plan::Plan lawn(const std::string& profile = "cone") {
    plan::Plan p;
    p.units = {units::unit_named<units::Length>("ft"), units::unit_named<units::Flow>("gpm"),
               units::unit_named<units::Pressure>("psi")};
    p.turf = {rectangle(0.0, 0.0, 90.0, 45.0)};
    int n = 0;
    for (int j = 0; j <= 3; ++j) {
        for (int i = 0; i <= 6; ++i) {
            const int ex = i == 0 ? 1 : i == 6 ? -1 : 0;   // where the inside lies
            const int ey = j == 0 ? 1 : j == 3 ? -1 : 0;
            double arc = 360.0, facing = 0.0;
            if (ex != 0 && ey != 0) {
                arc = 90.0;
                facing = ex > 0 ? (ey > 0 ? 45.0 : 135.0) : (ey > 0 ? 315.0 : 225.0);
            } else if (ex != 0 || ey != 0) {
                arc = 180.0;
                facing = ex > 0 ? 90.0 : ex < 0 ? 270.0 : ey > 0 ? 0.0 : 180.0;
            }
            p.heads.push_back(head(numbered("H", ++n), 15.0 * i, 15.0 * j, 15.0,
                                   3.6 * arc / 360.0, arc, facing, profile));
            p.heads.back().station = arc < 100.0 ? "A" : arc < 200.0 ? "B" : "C";
        }
    }
    return p;
}

}  // namespace evenfall::plan_test
