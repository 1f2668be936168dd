// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

/// What a chart says, without how it is drawn. Series point at columns of tables of the same
/// report; only fields between cans are held here, because no table has room for them.
/// Tests: tests/reports/content_test.cpp
namespace evenfall::reports {

struct ColumnRef {
    std::string table;
    std::string column;
    bool operator==(const ColumnRef&) const = default;
};

enum class Draw : int {
    bar = 1,      ///< side by side
    stacked = 2,  ///< on top of each other; the parts of one whole
    line = 3      ///< with a marker at each point
};

/// Which of the house's tones, patterns and markers a series gets. One meaning, one look, in all
/// reports: see look.h.
enum class Tone : int {
    use = 1,
    budget = 2,
    need = 3,
    uneven = 4,
    uneven_avoidable = 5,
    off_target = 6,
    leak = 7,
    over_scheduled = 8,
    reference = 9,      ///< a mean or a limit
    low_quarter = 10
};

struct Series {
    std::string name;
    ColumnRef values;
    Draw draw = Draw::bar;
    Tone tone = Tone::use;
    std::optional<ColumnRef> low = std::nullopt;   ///< interval, where it is known
    std::optional<ColumnRef> high = std::nullopt;
    bool operator==(const Series&) const = default;
};

struct Axis {
    std::string title;
    std::string unit;  ///< empty when there is none
    bool operator==(const Axis&) const = default;

    /// "Water, gal"
    std::string text() const { return unit.empty() ? title : title + ", " + unit; }
};

/// Bars or lines (all series alike) over the rows of one table.
struct SeriesChart {
    ColumnRef categories;
    std::vector<Series> series;
    Axis x;
    Axis y;
    bool horizontal = false;  ///< bars only: categories from top to bottom
    bool operator==(const SeriesChart&) const = default;
};

/// A field between the cans, on a regular grid, rows from the smallest y up.
struct Field {
    double x0 = 0.0, y0 = 0.0;  ///< centre of the first cell
    double dx = 0.0, dy = 0.0;
    std::size_t columns = 0, rows = 0;
    std::vector<double> values;  ///< columns x rows; NaN outside the cans
    std::string method;          ///< how it was interpolated
    bool operator==(const Field& o) const;
};

struct Contour {
    double level = 0.0;
    std::vector<std::vector<std::array<double, 2>>> lines;
    bool operator==(const Contour&) const = default;
};

/// Cans on the ground, each with its number printed.
struct MapChart {
    ColumnRef x, y, value, label;
    Axis x_axis, y_axis, value_axis;
    int decimals = 1;  ///< of the printed numbers
    std::optional<Field> field = std::nullopt;
    std::vector<Contour> contours = {};
    bool operator==(const MapChart&) const = default;
};

struct Chart {
    std::string key;       ///< unique in the report
    std::string title;
    std::string sentence;  ///< what it shows; never empty
    std::variant<SeriesChart, MapChart> content;
    bool operator==(const Chart&) const = default;
};

}  // namespace evenfall::reports
