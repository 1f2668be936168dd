// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/sentence.h"
#include "core/weather/weather_day.h"

#include <filesystem>
#include <string>
#include <vector>

/// Tables read straight from a file, for the commands that need no book.
/// Every issue of the file is found before anything is returned.
/// Tests: tests/exchange/plain_files_test.cpp
namespace evenfall::exchange {

struct CatchFile {
    std::vector<audit::CatchTest> tests;  ///< in the order in which they begin; one without a code
                                          ///< when the file has no column "test"
    std::vector<Sentence> notes;
};

/// @throws InputError with every issue: unknown or missing columns, text in a number, a negative
///   catch, a can that stands twice, an empty file, a file that was cut
CatchFile read_catches(const std::filesystem::path& path);

struct WeatherFile {
    std::string station;  ///< empty when the file names none
    std::vector<weather::WeatherDay> days;  ///< sorted by date
    std::vector<Sentence> notes;
};

/// A daily table of one station.
/// @throws InputError as read_catches, and for a day that stands twice or a second station
WeatherFile read_weather(const std::filesystem::path& path);

}  // namespace evenfall::exchange
