// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"

#include <string>
#include <vector>

/// Field sheets made up in a test.
namespace evenfall::test {

/// A grid of cans read in millimetres, no positions.
inline audit::CatchTest sheet(const std::vector<double>& mm) {
    audit::CatchTest t;
    t.catch_unit = audit::CatchUnit::millimetre;
    for (std::size_t i = 0; i < mm.size(); ++i) {
        audit::Catch c;
        c.can = std::to_string(i + 1);
        c.reading = mm[i];
        t.catches.push_back(c);
    }
    return t;
}

/// Cans along a pivot's radius or a lateral.
inline audit::CatchTest line(const std::vector<double>& distance_m, const std::vector<double>& mm,
                             audit::Layout layout = audit::Layout::pivot) {
    audit::CatchTest t = sheet(mm);
    t.layout = layout;
    for (std::size_t i = 0; i < mm.size(); ++i) t.catches[i].distance = distance_m[i];
    return t;
}

/// A traveller's row: cans every `spacing`, the first half a spacing from the path on both sides.
inline audit::CatchTest row_across(const std::vector<double>& left, const std::vector<double>& right,
                                   double spacing_m, double lane_m) {
    audit::CatchTest t = sheet({});
    t.layout = audit::Layout::traveller;
    t.lane_spacing = {lane_m, units::unit_named<units::Length>("m")};
    const auto add = [&](const std::vector<double>& mm, audit::Side side, char letter) {
        for (std::size_t i = 0; i < mm.size(); ++i) {
            audit::Catch c;
            c.can = std::string(1, letter).append(std::to_string(i + 1));
            c.side = side;
            c.distance = spacing_m * (static_cast<double>(i) + 0.5);
            c.reading = mm[i];
            t.catches.push_back(c);
        }
    };
    add(left, audit::Side::left, 'L');
    add(right, audit::Side::right, 'R');
    return t;
}

/// Rows of a rectangular grid, the first row at the top.
inline audit::CatchTest grid(const std::vector<std::vector<double>>& rows, double spacing_m = 1.0) {
    audit::CatchTest t = sheet({});
    for (std::size_t r = 0; r < rows.size(); ++r) {
        for (std::size_t c = 0; c < rows[r].size(); ++c) {
            audit::Catch can;
            can.can = std::to_string(r + 1) + "-" + std::to_string(c + 1);
            can.x = spacing_m * static_cast<double>(c);
            can.y = -spacing_m * static_cast<double>(r);
            can.reading = rows[r][c];
            t.catches.push_back(can);
        }
    }
    return t;
}

}  // namespace evenfall::test
