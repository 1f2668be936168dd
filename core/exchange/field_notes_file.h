// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/field_notes.h"
#include "core/exchange/row_reader.h"
#include "core/units/quantity.h"

#include <filesystem>
#include <optional>
#include <string_view>
#include <utility>
#include <vector>

/// The tables that go with a catch sheet: pressures, findings and the corners of the tested ground.
/// Tests: tests/exchange/field_notes_file_test.cpp, tests/exchange/field_notes_import_test.cpp
namespace evenfall::exchange {

/// What stands in the column `finding` where an inspection found nothing.
inline constexpr std::string_view no_finding = "none";

/// One row as a record; every issue is noted in the reader, at its column.
audit::PressureReading read_pressure(RowReader& row);
/// Nothing for `no_finding`, and for a row with issues.
std::optional<audit::Finding> read_finding(RowReader& row);

/// Columns `place`, `pressure_psi|_kpa|_bar`, and optionally `nozzle_low_...`, `nozzle_high_...` and
/// `test`, which is then the same in every row.
/// @throws InputError with every issue and its row
std::vector<audit::PressureReading> read_pressures(const std::filesystem::path& path);

/// Columns `finding` (a key of schemas/reference/findings.csv), and optionally `place`, `count`,
/// `severity` (minor, moderate, severe), `corrected` (yes, no), `note` and `test`. A table with a
/// header alone, or with `none` as its only finding, means an inspection that found nothing.
/// @throws InputError with every issue and its row; an unknown finding names the nearest known one
std::vector<audit::Finding> read_findings(const std::filesystem::path& path);

/// Columns `x_m|x_ft` and `y_m|y_ft`, the corners in order.
/// @throws InputError with every issue and its row
std::vector<std::pair<units::Length, units::Length>> read_outline(const std::filesystem::path& path);

}  // namespace evenfall::exchange
