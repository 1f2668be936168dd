// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/report.h"

#include <xlsxwriter.h>

#include <cstdint>
#include <map>
#include <string>
#include <vector>

/// Where everything of a report lies in its workbook, told before a cell is written, because
/// formulas may point forward. Tests: tests/reports/xlsx_test.cpp
namespace evenfall::reports {

/// "Season months" for the section key season_months; at most 31 characters.
std::string sheet_name(const std::string& key);

struct TablePlace {
    std::string sheet;
    std::uint32_t head_row = 0;       ///< of the column heads, from 0
    std::uint32_t first_row = 0;      ///< of the first row of the table
    std::uint32_t data_rows = 0;      ///< totals left out
};

class Layout {
  public:
    /// Titles, paragraphs and tables come first, in their order, charts below them.
    explicit Layout(const Report& report);

    const TablePlace& of(const std::string& table) const { return tables_.at(table); }
    /// First row of a chart, from 0.
    std::uint32_t chart_row(const std::string& chart) const { return charts_.at(chart); }

    /// "='Sheet'!B5-season_use": the formula with addresses, for a cell in that row of that table.
    std::string formula(const std::string& formula, const Table& table, std::size_t row) const;
    /// "'Sheet'!$B$5:$B$16"
    std::string column_range(const Table& table, std::size_t column) const;
    std::string cell_address(const Table& table, std::size_t row, std::size_t column) const;

    static constexpr std::size_t line_width = 110;     ///< characters of a line of running text
    static constexpr std::uint32_t chart_rows = 21;    ///< rows kept for a chart
    static constexpr std::uint32_t map_extra_rows = 4; ///< title, sentence, axis, scale

  private:
    std::uint32_t place_table(const Table& table, const std::string& sheet, std::uint32_t row);

    const Report& report_;
    std::map<std::string, TablePlace> tables_;
    std::map<std::string, std::uint32_t> charts_;
};

/// The cans of a map set out in rows and columns, largest y at the top, when their positions form
/// a grid of at most 60 by 200 places; empty for cans that lie anyhow.
struct GridOfCans {
    std::vector<double> xs, ys;                       ///< ascending
    std::vector<std::vector<std::size_t>> row_of;     ///< [y from the top][x]: table row or npos
    static constexpr std::size_t none = static_cast<std::size_t>(-1);
};
GridOfCans grid_of_cans(const Table& table, const MapChart& map);

}  // namespace evenfall::reports
