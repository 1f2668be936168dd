// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/measure.h"

#include <array>
#include <chrono>
#include <optional>
#include <string>

/// What turns on and off together, and when it may. Plain records.
namespace evenfall::schedule {

struct Station {
    std::string code;         ///< unique in a book
    std::string area;
    std::string name;
    std::optional<units::Typed<units::Rate>> rate;  ///< net application rate
    std::string rate_source;  ///< "catch test T-1", "nozzle table"
    std::optional<double> arc_degrees;              ///< of its heads; empty: not recorded
    std::optional<units::Typed<units::Flow>> flow;  ///< while it runs
};

/// When a site may be watered.
struct WateringRule {
    std::string site;
    std::array<bool, 7> days{};        ///< Monday first
    std::chrono::minutes starts{0};    ///< after midnight on the site's clock
    std::chrono::minutes ends{0};      ///< before `starts`: the window runs past midnight
    int stations_at_once = 1;

    int days_a_week() const;
    std::chrono::minutes window() const;
};

}  // namespace evenfall::schedule
