// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/units/quantity.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Intervals around the accounts of a season, as season_intervals.h makes them.
namespace evenfall::budget {

struct IntervalChoice {
    int draws = 0;         ///< of the multiplier method; 100 or more
    int can_draws = 0;     ///< of the account by cans, which costs more; 0: none
    std::uint64_t seed = 0;
    double confidence = 0.0;  ///< such as 0.90, in (0, 1)
    unsigned threads = 1;
};

struct VolumeInterval {
    units::Volume low;
    units::Volume high;
};

struct AccountIntervals {
    VolumeInterval need;
    VolumeInterval use;
    std::array<VolumeInterval, 7> lines;                   ///< as waste_lines()
    std::optional<std::array<VolumeInterval, 8>> by_cans;  ///< as can_lines()
};

struct SeasonIntervals {
    IntervalChoice choice;
    std::vector<std::optional<AccountIntervals>> areas;   ///< totals, as SeasonResult::areas
    std::vector<std::optional<AccountIntervals>> months;  ///< of the site
    std::optional<AccountIntervals> total;                ///< of the site
    Sentence method;
    Sentence source;
};

}  // namespace evenfall::budget
