// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/cell.h"

#include <cstddef>
#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// Tables of a report. Charts take their figures from tables, so what is drawn is also written.
/// Tests: tests/reports/content_test.cpp
namespace evenfall::reports {

struct Column {
    std::string key;       ///< a-z, 0-9 and "_"; used in formulas and as the column name in CSV
    std::string title;     ///< without unit
    NumberFormat format = {};
    bool is_text = false;  ///< set at the left; wraps
    bool operator==(const Column&) const = default;

    /// "Use, gal"
    std::string head() const;
};

enum class RowKind : int { data = 1, total = 2 };

struct Row {
    std::string key;  ///< unique in the table; no "]" and no ".."
    std::vector<Cell> cells;
    RowKind kind = RowKind::data;
    bool operator==(const Row&) const = default;
};

struct Table {
    std::string key;       ///< unique in the report: a-z, 0-9 and "_"
    std::string title;
    std::string sentence;  ///< what the table shows; may be empty
    std::vector<Column> columns;
    std::vector<Row> rows;
    std::vector<std::string> footnotes = {};
    bool operator==(const Table&) const = default;

    /// Index of the column, or nothing.
    std::optional<std::size_t> column_index(std::string_view column) const;
    std::optional<std::size_t> row_index(std::string_view row) const;
    /// The numbers of a column over its data rows; empty where a cell is not a number.
    std::vector<std::optional<double>> values(std::string_view column) const;
    /// The cells of a column over its data rows as printed, without unit.
    std::vector<std::string> labels(std::string_view column) const;
    /// Adds a data row. @throws std::logic_error when the number of cells is not that of the columns
    void add(std::string row_key, std::vector<Cell> cells, RowKind kind = RowKind::data);
};

/// A cell of a table as it is printed there: without the unit that the head carries. In a total row
/// an empty cell is a column that is not added up, not a gap.
std::string printed_in(const Row& row, std::size_t column, const Table& table);

using RawValue = std::variant<std::monostate, double, std::string_view>;

/// A long table that is written row by row and never held in memory: readings, weather days.
/// It goes into the workbook (a sheet of its own) and into CSV, not into print.
struct RawTable {
    using Sink = std::function<void(std::span<const RawValue>)>;
    std::string key;
    std::string title;
    std::string sentence;
    std::vector<Column> columns;
    /// Calls the sink once for each row, from the first to the last, each time the same.
    std::function<void(const Sink&)> produce;
};

}  // namespace evenfall::reports
