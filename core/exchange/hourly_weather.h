// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/weather/hourly_et.h"

#include <chrono>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

/// An hourly weather table read straight from a file, for the command that needs no book.
/// Columns: `time` and those of a weather table; the temperature of the hour stands in `tmean`, its
/// humidity in `rhmean`, and rs_mj_m2 or rs_langley is the sum over the hour.
/// Tests: tests/exchange/hourly_weather_test.cpp
namespace evenfall::exchange {

/// What the time in a row marks. Networks differ, and an hour's error moves the sun by 15 degrees.
enum class HourMark { start, end };

struct HourlyFile {
    std::string station;                   ///< empty when the file names none
    std::vector<weather::WeatherHour> hours;  ///< in order of time
    bool has_offsets = false;              ///< times carry their own offset from UTC
    std::optional<std::chrono::minutes> offset;  ///< of the first row, where it is not just "Z"
    std::vector<Sentence> notes;
};

/// True when the header has a column `time` and none named `date`.
/// @throws InputError for a file that cannot be opened or whose header cannot be read
bool is_hourly(const std::filesystem::path& path);

/// @param clock_offset  east of UTC, of times without an offset of their own; they are standard time
///   all year. Nothing: they are taken as UTC, and the caller says what that means.
/// @throws InputError with every issue: as read_weather, and for periods longer than an hour, a time
///   that stands twice, some times with an offset and some without
HourlyFile read_hourly_weather(const std::filesystem::path& path, HourMark mark,
                               std::optional<std::chrono::minutes> clock_offset);

}  // namespace evenfall::exchange
