// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/time_zone.h"
#include "core/weather/reference_et.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Reference evapotranspiration hour by hour, and days made of such hours.
///
/// The equation is that of core/weather/penman_monteith.h with hourly constants; e0(T) of the hour
/// is its saturation pressure, and soil heat is a share of net radiation that differs by day and
/// night. What is daytime: net radiation above zero (ASCE-EWRI 2005); the sun up (FAO-56).
/// The cloud factor needs Rs/Rso, which means nothing at night or with the sun low (under 0.3 rad):
/// there the ratio of the last good hour is carried on, and before the first good hour the setting's
/// night clearness stands in, flagged. Dew makes hours slightly negative; they stay so, because only
/// then do the hours add up to the day.
/// There is no published rule for an hour's missing temperature, humidity or radiation, so such an
/// hour stays empty. Missing wind is taken as 2 m/s and flagged.
///
/// Source: FAO-56 Eq. 53 and chapter 4; ASCE-EWRI 2005. Tests: tests/weather/hourly_et_test.cpp
namespace evenfall::weather {

/// One period of an hourly record, an hour or less. Instants are UTC, so no clock change, and no
/// doubt about the zone's longitude, gets into the angle of the sun.
struct WeatherHour {
    calendar::Instant start;
    units::Duration length = 1.0 * units::hour;
    std::optional<units::Temperature> temperature = {};
    std::optional<units::Temperature> tdew = {};
    std::optional<double> rh_percent = {};
    std::optional<units::Pressure> vapour_pressure = {};
    std::optional<units::Insolation> solar = {};  ///< over the period
    std::optional<units::Speed> wind = {};
    std::optional<units::Depth> rain = {};
};

struct HourlySetting {
    StationSetting station;
    double longitude = 0.0;                      ///< degrees east, -180 to 180
    std::optional<double> night_clearness = {};  ///< Rs/Rso before the first good hour; empty: 0.75
};

struct HourlyEt {
    calendar::Instant start;
    units::Duration length;
    std::optional<units::Depth> et;
    Sentence method;
    std::vector<std::string> flags;
    Phrase source;
};

/// @param hours  in order of time, not overlapping
/// @throws InputError for an impossible setting (see check_setting), a longitude beyond 180
///   degrees, a night clearness outside 0.3 to 1, hours out of order or overlapping, a period that
///   is not above zero and at most an hour
std::vector<HourlyEt> hourly_reference_et(std::span<const WeatherHour> hours,
                                          const HourlySetting& setting);

/// Sums by the site's calendar day. A day whose hours do not cover it in full has no ET and says
/// how much is covered: an hour at noon cannot be filled with the mean of the rest.
std::vector<ReferenceEt> days_of(std::span<const HourlyEt> hours, const calendar::TimeZone& zone);

}  // namespace evenfall::weather
