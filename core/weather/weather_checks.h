// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/weather/reference_et.h"
#include "core/weather/weather_day.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Looks a weather record over before anyone computes with it: what cannot be, what is hardly so,
/// sensors that stick or drift, gaps, days that come twice.
///
/// Day by day: temperature beyond records, Tmin above Tmax, dew point above Tmin, humidity out of
/// range, radiation above what arrives outside the atmosphere or well above a clear sky, sunshine
/// longer than the day, wind and rain below zero or beyond records, a recorded ETo out of range.
/// Over runs of days: the same reading to the last digit, wind that never moves, radiation that never
/// reaches the clear-sky line (a sensor that reads low), humidity that never rises at night,
/// temperatures that look like Fahrenheit taken as Celsius.
/// Days of one kind in a row become one finding.
///
/// Limits: schemas/reference/weather_limits.csv, a source on each row; mainly FAO-56 annex 5 and
/// ASCE-EWRI 2005 appendix D. Tests: tests/weather/weather_checks_test.cpp
namespace evenfall::weather {

/// impossible: reference_et() does not use the value. suspect: it is used, and someone should look.
enum class Severity { impossible, suspect };

struct WeatherFinding {
    std::string kind;          ///< stable name, such as "radiation_above_clear_sky"
    Severity severity;
    calendar::Date from;
    calendar::Date to;         ///< the same day for a single one
    int days;                  ///< that show it, at most the days from `from` to `to`
    Sentence sentence;         ///< for a person, with the first day's value
    Phrase source;             ///< of the limit
};

/// @param days  in any order; days that come twice are found, not refused
/// @return in order of the first day, then of the kind
/// @throws InputError for an impossible setting
std::vector<WeatherFinding> check_weather(std::span<const WeatherDay> days,
                                          const StationSetting& setting);

}  // namespace evenfall::weather
