// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <optional>
#include <string>
#include <string_view>

/// How much of a rain the turf can use. The daily root-zone balance answers the same question
/// with the soil itself: core/budget/root_zone.h.
///
/// Source: USDA-NRCS (1993) National Engineering Handbook part 623 chapter 2, section 623.0207 and
///   table 2-43; first in USDA-SCS (1970) Technical Release 21. The equation's constants are quoted
///   in public research code and agree with the table.
/// Tests: tests/weather/effective_rain_test.cpp
namespace evenfall::weather {

/// Storage factor SF = 0.531747 + 0.295164 D - 0.057697 D^2 + 0.003804 D^3, D usable soil water
/// storage in inches, commonly 40 to 60 % of the available water in the root zone.
/// @throws InputError outside 0.75 to 7 in, the range of the handbook's table
double storage_factor(units::Depth storage);

/// The bare equation, not kept within rain and crop ET, as the handbook's table prints it:
/// Pe = SF (0.70917 P^0.82416 - 0.11556) 10^(0.02426 ETc), inches a month.
units::Depth effective_rain_uncapped(units::Depth rain, units::Depth crop_et, units::Depth storage);

/// Monthly effective rain: the equation, kept within 0 and the smaller of rain and crop ET.
/// @param storage  usable storage; 3 in is the handbook's normal case
/// @throws InputError for a negative or unbelievable month (over 200 in), or the storage as above
units::Depth effective_rain_nrcs(units::Depth rain, units::Depth crop_et, units::Depth storage);

/// A fixed share of the rain, not above crop ET.
/// @throws InputError for negative rain or crop ET
units::Depth effective_rain_share(units::Depth rain, units::Depth crop_et, units::Share share);

/// The convention a caller chose, so that results can name it.
struct RainRule {
    enum class Kind { none, share, nrcs_monthly, daily_balance };
    Kind kind;
    std::optional<units::Share> share;   ///< with Kind::share
    std::optional<units::Depth> storage; ///< with Kind::nrcs_monthly
    Sentence name() const;               ///< "NRCS monthly, storage 3 in"
    Sentence source() const;
};
/// "none", "share:0.25", "nrcs", "nrcs:2.5in" or "balance".
/// @throws InputError for anything else
RainRule parse_rain_rule(std::string_view text);

}  // namespace evenfall::weather
