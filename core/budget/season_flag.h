// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"

#include <string_view>
#include <vector>

namespace evenfall::budget {

/// What a reader has to know about a figure of a season: an input that was assumed, filled or
/// absent. Tests: tests/budget/season_test.cpp
enum class SeasonFlag {
    eto_missing,         ///< no reference ET: need, budget and account are absent, not zero
    eto_filled,          ///< gaps filled with the mean of the month's other days
    eto_inputs_assumed,  ///< on some days an input was replaced or refused
    rain_missing,        ///< no rain recorded: need is absent under a rule that counts rain
    rain_filled,         ///< gaps filled with the mean of the month's other days
    weather_part_month,  ///< the weather record covers a part of the month
    meter_part_month,    ///< the meter covers a part of the month
    meter_gap,           ///< a gap inside: need and budget are scaled to the time that was metered
    no_meter,            ///< no meter is named, or it is not in the book
    no_readings,         ///< the meter has no volume in the month
    readings_estimated,  ///< a part of the volume was not read as such; see estimated_share
    use_negative,        ///< water ran backward: shown, but there is no account
    submeters_above,     ///< submeters add up to more than the meter above them
    share_assumed,       ///< a shared meter was split by area x coefficient
    coefficient_assumed,
    no_catch_test,       ///< planning value of the head type
    head_type_unknown,   ///< not even a head type is recorded
    test_later,          ///< the catch test is of a later date than the month
    off_target_assumed,  ///< not known: counted as 0
    leak_not_screened,   ///< the readings cannot show a leak: counted as 0
    leak_above_use,      ///< the leak was cut to the volume
    leaching_included,   ///< the need contains water that carries salt below the roots
    areas_missing,       ///< some areas have no account
    months_missing       ///< some months have no account
};

/// Stable key for files: the enumerator's name.
std::string_view key_of(SeasonFlag flag);
/// A sentence for a person.
Phrase sentence_of(SeasonFlag flag);

/// A set in the order of the enumeration, without doubles.
void add_flag(std::vector<SeasonFlag>& flags, SeasonFlag flag);
void add_flags(std::vector<SeasonFlag>& flags, const std::vector<SeasonFlag>& more);
bool has_flag(const std::vector<SeasonFlag>& flags, SeasonFlag flag);

}  // namespace evenfall::budget
