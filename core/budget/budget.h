// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/program.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <optional>
#include <span>

/// Need and budget of one area over one period, as volumes.
/// Tests: tests/budget/budget_test.cpp
namespace evenfall::budget {

/// ETc = ETo x K over the period.
/// @throws InputError for a reference ET or a coefficient below zero
units::Depth landscape_et(units::Depth reference_et, units::LandscapeCoefficient coefficient);

/// max(0, ETc - effective rain).
units::Depth need_depth(units::Depth landscape_et, units::Depth effective_rain);

/// What a budget is made of, all over the same period.
struct BudgetTerms {
    units::Depth reference_et;
    units::Depth need;                          ///< of the turf
    std::optional<units::Depth> rain;           ///< needed by programs that credit a share of it
    std::optional<units::Depth> effective_rain; ///< needed by programs that credit it
    units::Area size;
    bool special = false;                       ///< a special landscape area of an ordinance
};

/// The volume that the program grants; nothing when it credits rain and none was recorded.
/// Source: the program's own. @throws InputError for an area of zero or less
std::optional<units::Volume> budget(const Program& program, const BudgetTerms& terms);

/// One kind of planting in an ordinance's estimate of use.
struct Hydrozone {
    double plant_factor = 0.0;        ///< PF
    units::Area size;                 ///< HA
    units::Efficiency efficiency = units::Efficiency::of(1.0);  ///< IE
};

/// Maximum applied water allowance of the California model ordinance:
///     MAWA = ETo x c x [f LA + (s - f) SLA]
/// with f and s the program's factors and LA the whole landscape, special areas included. With
/// s = 1 these are the forms of 2009 (0.7 LA + 0.3 SLA) and of 2015 (ETAF LA + (1 - ETAF) SLA).
/// Source: California Code of Regulations, title 23, sections 490-495, texts of 2009 and 2015.
/// @throws InputError when `special` is larger than `landscape`, or the program is no allowance
units::Volume allowance(const Program& program, units::Depth reference_et, units::Area landscape,
                        units::Area special);

/// Estimated total water use of the same ordinance:
///     ETWU = ETo x c x (sum of PF HA / IE + SLA)
/// @throws InputError for an efficiency of zero or a negative plant factor
units::Volume estimated_total_use(const Program& program, units::Depth reference_et,
                                  std::span<const Hydrozone> zones, units::Area special);

}  // namespace evenfall::budget
