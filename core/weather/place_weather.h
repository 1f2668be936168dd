// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/time_zone.h"
#include "core/sentence.h"
#include "core/weather/hourly_et.h"
#include "core/weather/reference_et.h"
#include "core/weather/weather_day.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Reference ET and rain of a place day by day: from one station's daily record, from its hours, or
/// from several stations mixed by distance.
///
/// Hours    a day's ET and rain are the sums of its hours where these cover it in full. Else the daily
///          record of the station stands in, flagged; without one the day has no ET.
/// Mixing   x = sum(w_i x_i) / sum(w_i),  w_i = d_i^-p   over the stations that have a value that day
///          ET and rain are mixed each by itself. Each station's ET is worked out with its own
///          latitude, elevation and anemometer; nothing is corrected for the elevation of the place. A
///          station without a value is carried by the others' weights, flagged. A station within 1 m
///          of the place stands alone on the days on which it has a value.
///
/// Units: d as any length, p a plain number above 0 (2 is usual), ET and rain as depths.
/// Source: inverse-distance weighting with p = 2, D. Shepard (1968), A two-dimensional interpolation
///   function for irregularly-spaced data, Proc. 23rd ACM National Conference, 517-524, from memory;
///   its use between weather stations is common practice.
/// Tests: tests/weather/place_weather_test.cpp
namespace evenfall::weather {

struct PlaceDay {
    calendar::Date date;
    std::optional<units::Depth> et = {};
    std::optional<units::Depth> rain = {};
    Sentence method = no_method;  ///< of `et`
    Phrase source = {};
    std::vector<std::string> flags = {};    ///< what was assumed or refused for `et`
    std::vector<Sentence> remarks = {};     ///< of `flags`, and of rain: what was filled, alike on each day
};

/// @throws InputError for an impossible setting
PlaceDay day_by_record(const WeatherDay& day, const StationSetting& setting);
/// One for each day of the record, in its order.
std::vector<PlaceDay> days_by_record(std::span<const WeatherDay> days, const StationSetting& setting);

/// One for each day that has hours or stands in the daily record, in order of date.
/// @param hours  in order of time, not overlapping
/// @param daily  sorted, no day twice; may be empty
/// @throws InputError as hourly_reference_et()
std::vector<PlaceDay> days_by_hours(std::span<const WeatherHour> hours, const HourlySetting& setting,
                                    const calendar::TimeZone& zone, std::span<const WeatherDay> daily);

struct StationDays {
    std::string code;
    units::Length distance;      ///< from the place
    std::vector<PlaceDay> days;  ///< sorted, no day twice
};

/// Weights of stations that all have a value; they add up to 1.
/// @throws InputError for no station, a power that is not above 0 and at most 10, or a distance below 0
std::vector<double> distance_weights(std::span<const units::Length> distances, double power);

/// One for each day on which any station has a value, in order of date.
/// @throws InputError as distance_weights()
std::vector<PlaceDay> mixed_by_distance(std::span<const StationDays> stations, double power);

}  // namespace evenfall::weather
