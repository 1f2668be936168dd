// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/columns.h"
#include "core/exchange/row_reader.h"
#include "core/exchange/row_source.h"

#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

/// A map file says how somebody else's table is to be read: which of its columns is which of
/// ours, its date order, decimal mark and delimiter, and whether it is wide (a column for each
/// meter). JSON, described by schemas/tables/map.schema.json; one map serves every file of its
/// source. Tests: tests/exchange/table_map_test.cpp
namespace evenfall::exchange {

struct WideTable {
    std::string time;                           ///< their column with the time
    std::string value = "register";             ///< what the cells are: "register" or "volume"
    std::optional<double> minutes;              ///< length of each volume's interval, which ends at the time
    std::map<std::string, std::string> meters;  ///< their column to meter code
};

struct TableMap {
    std::optional<Kind> kind;
    std::optional<char> delimiter;
    CellFormat format;
    std::string sheet;                             ///< of a workbook; empty: its only or first one
    std::map<std::string, std::string> columns;    ///< their column to ours
    std::map<std::string, std::string> constants;  ///< our column to the text it has in every row
    std::vector<std::string> ignore;               ///< their columns that are left out
    std::optional<WideTable> wide;
    std::string crs;  ///< of a map file that names none, such as "EPSG:32612"
    std::optional<units::NamedUnit<units::Length>> drawing_unit;  ///< of a plane drawing
};

/// @throws InputError for a file that is no map: unknown keys, wrong types, impossible values,
///   each with the path of the place
TableMap read_table_map(const std::filesystem::path& path);

/// `rows` as the map says. The result keeps `rows` alive.
/// @throws InputError for a column that the map names and the table lacks
std::unique_ptr<RowSource> mapped(std::unique_ptr<RowSource> rows, const TableMap& map);

}  // namespace evenfall::exchange
