// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/field_notes.h"
#include "core/reference/table.h"
#include "core/units/ratio.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// Pressures read during a test against what the nozzles ask for, and what they say of flow.
///
///     relative flow of a head    sqrt(p / p_mean)     flow of a fixed orifice goes with sqrt(p)
///     spread of flow             (q_max - q_min) / q_mean of the heads read
///
/// A pressure-regulating head or a nozzle that opens with pressure does not follow the square root:
/// then the spread is an upper bound. Opening, closing and working on pressurised lines is for
/// trained people; shut off and drain before taking a head apart.
/// Tests: tests/audit/field_checks_test.cpp
namespace evenfall::audit {

enum class PressureVerdict : int { below = 1, within = 2, above = 3, no_range = 4 };
std::string_view text_of(PressureVerdict verdict);

struct JudgedPressure {
    PressureReading reading;
    PressureVerdict verdict;
    double relative_flow;
};

struct PressureCheck {
    std::vector<JudgedPressure> readings;
    units::Pressure mean;
    units::Pressure lowest;
    units::Pressure highest;
    double flow_spread = 0.0;
    std::size_t below = 0;
    std::size_t above = 0;
    std::size_t without_range = 0;
};

/// @throws InputError for no readings, a pressure that is not finite and above zero, a range upside
///                    down; every issue with its row
PressureCheck check_pressures(std::span<const PressureReading> readings, const std::string& file);

/// From the tested area to the whole system, where pressure is lower somewhere else than in the
/// test. Forms in schemas/reference/low_pressure_correction.csv:
///
///     root_of_minimum   factor = 1 - k (1 - sqrt(p_min / p_mean)), k = 3/4 for DU_LQ, 1/2 for CU
///     range             factor = 1 - k (p_max - p_min) / p_mean
struct SystemFigure {
    std::string figure;   ///< "du_lq" or "cu"
    std::string form;
    double tested;
    double whole_system;
    std::string source;
    reference::Mark mark;
};

/// @param check  of pressures over the whole system, not the tested area alone
std::vector<SystemFigure> whole_system_figures(units::LowQuarterDu du_lq, units::ChristiansenCu cu,
                                               const PressureCheck& check);

}  // namespace evenfall::audit
