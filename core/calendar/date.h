// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

/// Days, months and instants. Core never asks a clock: today's date arrives as an argument.
/// Tests: tests/calendar/date_test.cpp
namespace evenfall::calendar {

using Date = std::chrono::sys_days;
using Month = std::chrono::year_month;
/// A point in time, UTC, whole seconds.
using Instant = std::chrono::sys_seconds;
/// Wall-clock time at a site, whole seconds; see time_zone.h.
using LocalTime = std::chrono::local_seconds;

/// Years a record may carry: 1900 to 2199. Anything else is a typing error.
inline constexpr int first_year = 1900;
inline constexpr int last_year = 2199;

/// "2024-02-29", and nothing but that; nothing for a day that does not exist.
std::optional<Date> parse_date(std::string_view text);
/// "2024-02".
std::optional<Month> parse_month(std::string_view text);
/// "2024-02-29T13:30", with "T" or a blank, seconds optional, without any offset.
std::optional<LocalTime> parse_local_time(std::string_view text);
/// "2024-02-29T13:30:00Z" or with an offset such as "-07:00"; nothing without one.
std::optional<Instant> parse_instant(std::string_view text);

std::string format_date(Date date);        ///< 2024-02-29
std::string format_month(Month month);     ///< 2024-02
std::string format_month_name(Month month);///< Feb 2024, in English, whatever the locale
std::string format_instant(Instant at);    ///< 2024-02-29T13:30:00Z
std::string format_local_time(LocalTime at);///< 2024-02-29T13:30:00

Date make_date(int year, unsigned month, unsigned day);  ///< asserts that the day exists
Date first_day(Month month);
Date last_day(Month month);
int days_in(Month month);
Month month_of(Date date);
/// 1 for 1 January.
int day_of_year(Date date);
/// The month that comes n later.
Month plus_months(Month month, int n);

}  // namespace evenfall::calendar
