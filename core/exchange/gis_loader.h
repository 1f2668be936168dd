// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/gis_interface.h"
#include "core/exchange/row_source.h"
#include "core/exchange/table_map.h"

#include <filesystem>
#include <memory>

/// Workbooks and maps, through a module that is loaded when the first one is given.
/// Tests: tests/exchange/gis_test.cpp
namespace evenfall::exchange {

/// Told from the ending of the name.
enum class FileForm { text, workbook, map };
FileForm form_of(const std::filesystem::path& path);

/// Looks in the folder named by the environment variable EVENFALL_MODULES, beside the program, and
/// in ../lib/evenfall from there.
/// @throws InputError when the module is not installed or of another version
const gis::Module& gis_module();

/// A sheet as rows. @throws InputError
std::unique_ptr<RowSource> workbook_rows(const std::filesystem::path& path, const std::string& sheet);

/// The outlines of a map as rows of an areas table. Of the attributes those are kept that the map
/// file names, or that are columns of the areas table; a note lists the others. Two columns are
/// added: `outline` with the outline as GeoJSON, and `outline_m2` with its size.
/// @throws InputError
std::unique_ptr<RowSource> outline_rows(const std::filesystem::path& path, const TableMap& map);

}  // namespace evenfall::exchange
