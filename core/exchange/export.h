// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/table_file.h"
#include "core/store/book.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <string>
#include <vector>

/// A whole book as tables that import reads back: sites, meters, exchanges of registers, areas and
/// their outlines, weather stations, days and hours, readings, catch tests with their pressures and
/// findings, bills, plantings, prices, energy
/// rates, pumps, stations, watering rules and settings of areas, and every design plan as a plan file.
///
/// Values stand as they were typed, in their units and with every digit; times are UTC. Imported into
/// a new book, the tables give the same records, and exporting that book gives the same bytes.
///
/// What stands is written, not what it replaced: earlier revisions, the journal, the list of imported
/// files, filings and applications stay in the book, and `left_out` says how many there are.
/// Readings and weather are written as they are read, so memory does not grow with them.
/// Tests: tests/exchange/export_test.cpp, tests/app/export_command_test.cpp
namespace evenfall::exchange {

struct ExportedPlan {
    std::string file;   ///< below the folder
    std::string code;
    std::string site;
};

struct ExportResult {
    std::vector<ExportedFile> files;
    std::vector<ExportedPlan> plans;
    std::vector<std::string> left_out;  ///< sentences
};

/// @param folder    exists and is empty
/// @param progress  called with the name of each kind as it begins
/// @throws BookError when the book cannot be read, InputError for a value no table has a column for,
///   std::runtime_error when a file cannot be written
ExportResult export_book(const store::Book& book, const std::filesystem::path& folder,
                         const std::function<void(const std::string&)>& progress);

}  // namespace evenfall::exchange
