// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdlib>
#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

/// Rows of a file under tests/data/weather, by header name. Test data only: no quotes inside.
namespace evenfall::test {

struct DataRow {
    std::map<std::string, std::string> cells;
    const std::string& text(const std::string& column) const { return cells.at(column); }
    double number(const std::string& column) const { return std::stod(cells.at(column)); }
};

inline std::vector<DataRow> read_data(const std::string& name) {
    std::ifstream in(std::string(EVENFALL_SOURCE_DIR) + "/tests/data/weather/" + name);
    if (!in) throw std::runtime_error("cannot read " + name);
    std::vector<std::string> header;
    std::vector<DataRow> rows;
    for (std::string line; std::getline(in, line);) {
        if (line.empty() || line.front() == '#') continue;
        std::vector<std::string> cells;
        std::stringstream ss(line);
        for (std::string cell; std::getline(ss, cell, ',');) cells.push_back(cell);
        if (header.empty()) {
            header = cells;
            continue;
        }
        cells.resize(header.size());
        DataRow row;
        for (std::size_t i = 0; i < header.size(); ++i) row.cells[header[i]] = cells[i];
        rows.push_back(row);
    }
    return rows;
}

}  // namespace evenfall::test
