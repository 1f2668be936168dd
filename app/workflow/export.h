// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/workflow/season.h"
#include "core/exchange/export.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <vector>

/// A book as a folder of tables, and the areas with their results for a map.
/// Tests: tests/app/export_command_test.cpp
namespace evenfall::workflow {

/// The months for which the map shows use, need, budget and waste.
struct MapPeriod {
    calendar::Month from{};
    calendar::Month to{};
    std::string program;
    std::string rain;
};

struct ExportOrder {
    std::filesystem::path folder;      ///< must not be there yet, or be empty
    bool areas_geojson = false;        ///< also areas.geojson
    std::optional<MapPeriod> period{}; ///< nothing: catch tests only
    audit::QuarterRule quarter_rule;
};

struct ExportAnswer {
    exchange::ExportResult tables;
    std::optional<std::size_t> areas;  ///< in areas.geojson
    std::vector<std::string> gaps;     ///< what the map could not be told, sentences
};

/// Writes into a folder beside `order.folder` and renames it when all is there, so that a folder of
/// that name is whole or is not. CONTENTS.txt in it says what each file is, how to read it back and
/// what it does not hold.
/// @throws InputError  the folder is there already, a program or rule that cannot be read
/// @throws BookError, std::runtime_error as exchange::export_book; nothing is left behind then
ExportAnswer export_to_folder(const store::Book& book, const ExportOrder& order,
                              const std::function<void(const std::string&)>& progress);

}  // namespace evenfall::workflow
