// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/number.h"

#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace evenfall::tests {

/// The columns of a plain file below tests/data: "#" lines, a header, cells without quotes.
inline std::map<std::string, std::vector<std::string>> read_columns(const std::string& name) {
    std::ifstream in(std::string(EVENFALL_SOURCE_DIR) + "/tests/data/" + name);
    if (!in) throw std::runtime_error("no test data " + name);
    std::vector<std::string> header;
    std::map<std::string, std::vector<std::string>> columns;
    for (std::string line; std::getline(in, line);) {
        if (line.empty() || line[0] == '#') continue;
        std::istringstream cells(line);
        std::size_t at = 0;
        for (std::string cell; std::getline(cells, cell, ','); ++at) {
            if (columns.size() < at + 1 && header.size() == at) header.push_back(cell);
            else columns[header.at(at)].push_back(cell);
        }
    }
    return columns;
}

inline std::vector<double> numbers(const std::vector<std::string>& cells) {
    std::vector<double> values;
    for (const std::string& cell : cells) {
        const auto value = units::parse_number(cell);
        if (!value) throw std::runtime_error("not a number: " + cell);
        values.push_back(*value);
    }
    return values;
}

}  // namespace evenfall::tests
