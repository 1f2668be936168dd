// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/overlap.h"
#include "core/plan/plan.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <optional>
#include <string>

/// What a change of nozzle, pressure, spacing or layout is worth.
///
/// Two plans are compared at equal turf quality: each season the drier half of the turf gets the
/// need on average. For need N (a depth), turf area A, low-half uniformity of the predicted field and
/// off-target share o:
///     season water = N A (1 / DU_LH) / (1 - o)
///     saving = (water before - water after) x price
///     payback = cost / saving per season; none when nothing is saved
/// Pressure on a head whose radius and flow were typed changes its flow by the square-root law and
/// leaves its radius, flagged; heads with a nozzle table follow the table.
/// A forecast from drawings, not a measured saving. Source: low-half multiplier, von Bernuth & Mecham
/// (read in part). Tests: tests/plan/layout_test.cpp
namespace evenfall::plan {

/// The plan with another nozzle on the heads that have `from`; typed radius and flow give way to the
/// new table, each head keeping its pressure. @throws InputError when no head has it
Plan with_nozzle(const Plan& plan, const std::string& from, const std::string& to);

/// The plan at another pressure (plan unit), for one station or, when empty, for all heads.
/// @throws InputError  pressure not above zero, off a table, no such station, or a head whose
///                     pressure was not recorded
Plan with_pressure(const Plan& plan, const std::string& station, double pressure);

/// The plan drawn wider or closer by a factor about the south-west corner of the outline's box, with
/// the outline as it was; heads that leave the outline are dropped. For repeating patterns.
/// @throws InputError  factor outside 0.25 to 4, or no head left
Plan with_spacing(const Plan& plan, double factor);

struct WhatIfTerms {
    units::Depth season_need;
    std::optional<double> price_per_m3;    ///< water and pumping together
    std::optional<double> cost_of_change;
    std::string currency;
};

struct WhatIfSide {
    std::optional<units::LowQuarterDu> du_lq;
    std::optional<units::LowHalfDu> du_lh;
    std::optional<units::Multiplier> multiplier;
    units::Share off_target = units::Share::of(0.0);
    std::optional<units::Volume> season;   ///< empty when half the turf stays dry
    std::optional<double> money;
};

struct WhatIf {
    WhatIfSide before, after;
    std::optional<units::Volume> saved;    ///< negative when the change costs water
    std::optional<double> money_saved;     ///< per season
    std::optional<double> payback_seasons; ///< empty when nothing is saved or no cost is given
    std::string method;
    std::string source;
};

WhatIf compare(const Prediction& before, const Prediction& after, const WhatIfTerms& terms);

}  // namespace evenfall::plan
