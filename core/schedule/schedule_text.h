// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/schedule/base_schedule.h"

#include <string>
#include <vector>

/// A base schedule for other programs: rows of a table, and a calendar.
/// Tests: tests/schedule/schedule_text_test.cpp
namespace evenfall::schedule {

/// Header first; cells as plain text, units in the header. One row per month and station.
std::vector<std::vector<std::string>> schedule_rows(const BaseSchedule& schedule);

/// iCalendar (RFC 5545): one weekly event for each station, cycle and weekday of each month, with
/// local times that follow the wall clock wherever they are read ("floating", section 3.3.5). Needs
/// a watering rule, since without a window there is no time to start at. Lines end in CR LF and
/// are folded at 75 octets between UTF-8 characters; text is escaped (3.3.11).
/// A run that begins after midnight stands on the day after the one on which its window opened.
/// @param made_at  when the schedule was made (DTSTAMP)
/// @throws InputError when the schedule has no watering rule
std::string schedule_calendar(const BaseSchedule& schedule, calendar::Instant made_at);

}  // namespace evenfall::schedule
