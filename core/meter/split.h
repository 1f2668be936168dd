// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/site/site.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// One meter, many areas: which part of the water is whose.
///
///     share_i = w_i / sum of w      with w_i = area x coefficient (area_times_coefficient)
///                                   or w_i = minutes x flow       (minutes_times_flow)
///
/// given_shares takes the shares written down for the areas; areas without one divide what is
/// left by area x coefficient. The shares always add up to 1, so no water is lost in the split.
/// Convention of this project, no outside source. Tests: tests/meter/split_test.cpp
namespace evenfall::meter {

enum class SplitRule { given_shares, area_times_coefficient, minutes_times_flow };

Phrase text_of(SplitRule rule);

struct SplitInput {
    std::string area;                   ///< code
    units::Area size;
    double coefficient = 1.0;           ///< landscape coefficient over the period, 0 or more
    std::optional<double> given_share;  ///< 0 to 1
    std::optional<units::Duration> run_time{};
    std::optional<units::Flow> flow{};
};

struct SplitPart {
    std::string area;
    units::Share share;
    bool assumed;  ///< not written down and not measured: it follows from area x coefficient
};

/// Parts in the order given.
/// @throws InputError when given shares add up to more than 1 (or to less, with no area left to
///   take the rest), when a run time or flow is missing under minutes_times_flow, or when all
///   weights are zero
std::vector<SplitPart> split_meter(std::span<const SplitInput> areas, SplitRule rule);

}  // namespace evenfall::meter
