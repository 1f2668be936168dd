// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/xlsx/layout.h"
#include "reports/xlsx/safe_sheet.h"

/// Charts of a report as charts of the workbook that follow its cells.
namespace evenfall::reports {

/// Adds the chart with its upper left corner in `row`, column 0.
void insert_series_chart(lxw_workbook* book, const SafeSheet& sheet, const Layout& layout,
                         const Table& table, const Chart& chart, lxw_row_t row);

/// Writes the map as cells in their places, each a formula that points at its catch, coloured by
/// the spreadsheet's own three-colour scale; cans that form no grid become a scatter chart.
void insert_map(lxw_workbook* book, const SafeSheet& sheet, Formats& formats, const Layout& layout,
                const Table& table, const Chart& chart, lxw_row_t row);

}  // namespace evenfall::reports
