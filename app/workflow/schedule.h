// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/workflow/season.h"
#include "core/schedule/base_schedule.h"
#include "core/store/book.h"

#include <optional>
#include <string>
#include <vector>

/// The base schedule of a site from its book. Tests: tests/app/schedule_test.cpp
namespace evenfall::workflow {

struct ScheduleQuestion {
    std::string site;
    calendar::Month from{};   ///< months whose weather the schedule is made from
    calendar::Month to{};
    std::string program;      ///< as in SeasonQuestion
    std::string rain;
    audit::QuarterRule quarter_rule;
    int year = 0;             ///< the schedule is for
    std::optional<schedule::WateringRule> rule;  ///< in place of the book's
};

struct ScheduleAnswer {
    schedule::BaseSchedule schedule;
    std::vector<budget::Note> notes;  ///< of the season behind it
};

/// Need and ET of each calendar month are means over the years of the range in which they are
/// known. Stations are those of the book; an area without any that has a timed catch test is one
/// station at that test's net rate.
/// @throws InputError as answer_season, and when no month is known for any area
ScheduleAnswer answer_schedule(const store::Book& book, const ScheduleQuestion& question);

/// "mon,wed,fri" and "22:00-06:00" as a rule. @throws InputError for anything else
schedule::WateringRule watering_rule_from(const std::string& site, const std::string& days,
                                          const std::string& window, int stations_at_once);

}  // namespace evenfall::workflow
