// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"

#include <string>
#include <vector>

/// The invented scenario: Harrow Bend Turf, a sod farm with solid-set, hose-reel and pivot
/// fields, and Alder Vale College, a campus with rotors and sprays, over two seasons. All names,
/// places and figures are made up. The files are what a manager would bring, typed by hand or
/// saved from a register, and go through the ordinary import; nothing is put into the book by
/// another way.
///
/// Planted faults, which the reports must bring to light:
///   leak            meter AV-M1 runs on at 1.9 gpm from 10 June to 20 August 2025
///   bad coverage    area AV-PLAY: worn nozzles, the dry corner is kept green by overwatering
///   over-scheduled  areas AV-WALK and AV-GATE keep their July minutes until November
///   meter change    HB-M3 gave way to HB-M3B on 18 June 2025
/// Tests: tests/app/demo_test.cpp
namespace evenfall::demo {

struct TableFile {
    std::string name;  ///< such as "readings.csv"
    std::string text;
};

/// Files in an order in which they can be imported. The same text on every call.
std::vector<TableFile> scenario_files();

inline constexpr calendar::Month first_month = std::chrono::year{2024} / 1;
inline constexpr calendar::Month last_month = std::chrono::year{2025} / 12;

// Parts, each one table.
std::string sites_table();
std::string areas_table();
std::string meters_table();
std::string weather_stations_table();
std::string weather_table();
std::string readings_table();
std::string grid_catches_table();
std::string pivot_catches_table();
std::string traveller_catches_table();

/// Millimetres of rain on each day of the scenario, one row per station, as weather_table shows it.
struct DailyRain {
    std::string station;
    std::vector<double> mm;
};
std::vector<DailyRain> scenario_rain();

}  // namespace evenfall::demo
