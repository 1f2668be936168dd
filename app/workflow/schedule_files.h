// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/schedule/base_schedule.h"

#include <filesystem>
#include <string>

/// A base schedule as files for others, each whole or not at all.
/// Tests: tests/app/schedule_test.cpp, tests/app/desktop_schedule_test.cpp
namespace evenfall::workflow {

/// The rows of schedule::schedule_rows as CSV (RFC 4180).
std::string schedule_table_text(const schedule::BaseSchedule& schedule);

/// @throws std::runtime_error when the file cannot be written
void write_schedule_table(const schedule::BaseSchedule& schedule, const std::filesystem::path& file);

/// @param made_at  when the schedule was made
/// @throws InputError          when the schedule has no watering rule
/// @throws std::runtime_error  when the file cannot be written
void write_schedule_calendar(const schedule::BaseSchedule& schedule, calendar::Instant made_at,
                             const std::filesystem::path& file);

}  // namespace evenfall::workflow
