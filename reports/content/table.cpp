// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/table.h"

#include <stdexcept>

namespace evenfall::reports {

std::string Column::head() const {
    if (format.percent) return title + ", %";
    return format.unit.empty() ? title : title + ", " + format.unit;
}

std::string printed_in(const Row& row, std::size_t column, const Table& table) {
    const Cell& cell = row.cells[column];
    if (row.kind == RowKind::total && cell.empty()) return {};
    return printed(cell, table.columns[column].format, false);
}

std::optional<std::size_t> Table::column_index(std::string_view column) const {
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (columns[i].key == column) return i;
    }
    return std::nullopt;
}

std::optional<std::size_t> Table::row_index(std::string_view row) const {
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (rows[i].key == row) return i;
    }
    return std::nullopt;
}

std::vector<std::optional<double>> Table::values(std::string_view column) const {
    const auto index = column_index(column);
    if (!index) throw std::logic_error("table " + key + " has no column " + std::string(column));
    std::vector<std::optional<double>> out;
    for (const Row& row : rows) {
        if (row.kind == RowKind::data) out.push_back(row.cells[*index].number());
    }
    return out;
}

std::vector<std::string> Table::labels(std::string_view column) const {
    const auto index = column_index(column);
    if (!index) throw std::logic_error("table " + key + " has no column " + std::string(column));
    std::vector<std::string> out;
    for (const Row& row : rows) {
        if (row.kind != RowKind::data) continue;
        Cell plain = row.cells[*index];
        plain.assumed = false;
        out.push_back(printed(plain, columns[*index].format, false));
    }
    return out;
}

void Table::add(std::string row_key, std::vector<Cell> cells, RowKind kind) {
    if (cells.size() != columns.size()) {
        throw std::logic_error("table " + key + ", row " + row_key + ": " +
                               std::to_string(cells.size()) + " cells for " +
                               std::to_string(columns.size()) + " columns");
    }
    rows.push_back({std::move(row_key), std::move(cells), kind});
}

}  // namespace evenfall::reports
