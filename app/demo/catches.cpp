// SPDX-License-Identifier: GPL-3.0-or-later
// Catch tests of the scenario. Grid catches come from overlapped cones of heads on a square, with
// some heads weak; the pivot and the reel from a profile along the line of cans.
#include "app/demo/random.h"
#include "app/demo/scenario.h"
#include "core/units/number.h"
#include "core/units/quantity.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace evenfall::demo {
namespace {

using namespace units;

struct GridTest {
    const char* code;
    const char* area;
    const char* date;
    double minutes;
    double wind_mph;
    double spacing_ft;      ///< of the heads
    double radius_ft;
    double peak_mm_h;       ///< under one head
    int columns, rows;      ///< of cans
    double can_spacing_ft;
    std::array<double, 4> strength;  ///< of the heads at the corners of the tested square
    std::uint64_t seed;
};

constexpr std::array grid_tests{
    GridTest{"T-NORTH-25", "HB-NORTH", "2025-05-14", 60, 2.5, 40, 42, 9.0, 6, 4, 8, {1, 1, 1, 1}, 301},
    GridTest{"T-RIVER-25", "HB-RIVER", "2025-05-15", 60, 6.5, 40, 38, 9.0, 6, 3, 8, {1, 0.8, 1, 0.9}, 302},
    GridTest{"T-PLAY-25", "AV-PLAY", "2025-06-03", 40, 3.0, 55, 44, 13.0, 6, 4, 10, {1, 0.3, 0.9, 0.55}, 303},
    GridTest{"T-COMMON-25", "AV-COMMON", "2025-06-04", 40, 2.0, 45, 45, 12.0, 6, 4, 8.5, {1, 0.95, 1, 0.9}, 304},
    GridTest{"T-WALK-25", "AV-WALK", "2025-06-05", 15, 1.5, 14, 14.5, 38.0, 5, 4, 3, {1, 0.85, 1, 0.9}, 305}};

/// mm/h at a point: heads on a lattice; those at the corners of the tested square may be weak.
double rate_at(const GridTest& t, double x_ft, double y_ft) {
    double rate = 0.0;
    for (int i = -2; i <= 3; ++i) {
        for (int j = -2; j <= 3; ++j) {
            const double d = std::hypot(x_ft - i * t.spacing_ft, y_ft - j * t.spacing_ft);
            if (d >= t.radius_ft) continue;
            const bool corner = (i == 0 || i == 1) && (j == 0 || j == 1);
            const double strength = corner ? t.strength.at(static_cast<std::size_t>(i + 2 * j)) : 1.0;
            rate += t.peak_mm_h * strength * (1.0 - d / t.radius_ft);
        }
    }
    return rate;
}

constexpr Area throat = 16.61 * square_inch;

std::string volume_ml(Depth depth) { return format_fixed((depth * throat).in(millilitre), 0); }

void append_grid(std::string& out, const GridTest& t) {
    Random random(t.seed);
    int can = 0;
    for (int row = 0; row < t.rows; ++row) {
        for (int column = 0; column < t.columns; ++column) {
            const double x = (column + 0.5) * t.can_spacing_ft;
            const double y = (row + 0.5) * t.can_spacing_ft;
            const Depth depth = rate_at(t, x, y) * (1.0 + 0.05 * random.bell()) *
                                millimetre_per_hour * (t.minutes * minute);
            out += std::string(t.code) + "," + t.area + "," + t.date + ",16.61," +
                   format_shortest(t.minutes) + "," + format_shortest(t.wind_mph) + "," +
                   std::to_string(++can) + "," + format_shortest(x) + "," + format_shortest(y) + "," +
                   volume_ml(depth) + ",\n";
        }
    }
}

}  // namespace

std::string grid_catches_table() {
    std::string out =
        "test,area,date,throat_area_in2,minutes,wind_mph,can,x_ft,y_ft,volume_ml,excluded\n";
    for (const GridTest& t : grid_tests) append_grid(out, t);
    return out;
}

std::string pivot_catches_table() {
    std::string out = "test,area,date,throat_area_in2,wind_mph,can,distance_ft,volume_ml,excluded\n";
    Random random(311);
    for (int i = 1; i <= 45; ++i) {
        const double distance = 20.0 * i;
        // A sprinkler near the fourth tower is plugged, and the outer end throws a little more.
        double inches = 0.62 + 0.04 * (distance / 900.0) + 0.025 * random.bell();
        if (i == 27 || i == 28) inches *= 0.55;
        const bool knocked_over = i == 9;
        out += "T-CIRC1-25,HB-CIRC1,2025-05-20,16.61,3.5," + std::to_string(i) + "," +
               format_shortest(distance) + "," + volume_ml((knocked_over ? 0.05 : inches) * inch) +
               (knocked_over ? ",can knocked over by the wheel\n" : ",\n");
    }
    return out;
}

std::string traveller_catches_table() {
    std::string out =
        "test,area,date,throat_area_in2,wind_mph,lane_spacing_ft,can,side,distance_ft,volume_ml\n";
    Random random(321);
    const double reach_ft = 150.0;
    for (const char* side : {"left", "right"}) {
        for (int i = 0; i < 15; ++i) {
            const double distance = 5.0 + 10.0 * i;
            // The right side is short: the gun's arc was set off centre.
            const double reach = side[0] == 'l' ? reach_ft : 0.9 * reach_ft;
            const double u = std::min(1.0, distance / reach);
            const double inches = std::max(0.0, 0.86 * (1.0 - u * u * u) + 0.02 * random.bell());
            out += "T-EAST-25,HB-EAST,2025-06-11,16.61,4,220," + std::string(1, side[0]) +
                   std::to_string(i + 1) + "," + side + "," + format_shortest(distance) + "," +
                   volume_ml(inches * inch) + "\n";
        }
    }
    return out;
}

}  // namespace evenfall::demo
