// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <filesystem>
#include <vector>

/// Nozzle tables as CSV: one row per nozzle and pressure.
///
///     nozzle*, pressure_psi|pressure_kpa|pressure_bar*, radius_ft|radius_m*,
///     flow_gpm|flow_l_min|flow_l_s|flow_m3_h*, lowest_psi|..., highest_psi|...  (operating range)
///
/// Rows of one nozzle may stand in any order; the operating range may stand in each of its rows or in
/// one, but must agree. Values are turned into the units of the plan they go into.
/// Example: schemas/tables/nozzles.csv (invented). Tests: tests/plan/nozzle_table_test.cpp
namespace evenfall::exchange {

/// @throws InputError with every issue: row and column, offending text, what was expected
std::vector<plan::Nozzle> read_nozzles(const std::filesystem::path& path, const plan::PlanUnits& units);

}  // namespace evenfall::exchange
