// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/schedule/day_plan.h"
#include "core/schedule/station.h"
#include "core/sentence.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// Minutes per station and week for each month: the base that a person then adjusts to the weather.
///
///     week net   = need of the month x 7 / days of the month
///     week gross = week net x M                      M run-time multiplier of the area
///     days between irrigations = floor(p TAW / ETc of a day), 1 to 7
///     times a week n = ceil(7 / days between), not more than there are allowed days
///     run = week gross / n / PR                      PR the station's own rate
///
/// Stations of one area with unmatched rates (arcs that throw the same flow over less ground) run
/// in inverse proportion to their rates, so each puts down the same depth. Where only the rate of a
/// full circle is known, a station of arc a has that rate x 360 / a.
///
/// Runs are whole minutes: up when cut, so that a short run is not lost. Cycles and soak follow
/// cycle_soak.h. Each area takes the allowed days, evenly spaced, that carry the least so far.
/// What does not fit into the window of a day is stated as a shortfall, never cut silently.
/// Tests: tests/schedule/base_schedule_test.cpp
namespace evenfall::schedule {

/// Need and ET of one month, as depths over the whole month.
struct MonthDepths {
    calendar::Month month;
    units::Depth need;
    units::Depth landscape_et;
};

struct AreaPlan {
    std::string area;                ///< code
    std::vector<MonthDepths> months;
    units::Multiplier multiplier = units::Multiplier::of(1.0);
    Sentence multiplier_method;
    units::Depth available;          ///< TAW
    double depletion_share = 0.0;    ///< p
    units::Rate intake;
    units::Depth accumulation;
    bool soil_assumed = false;
    std::optional<units::Rate> full_circle_rate;  ///< for stations that have only an arc
    Sentence rate_source;
};

struct StationWeek {
    std::string station;
    std::string area;
    units::Rate rate;
    Sentence rate_source;
    units::Depth net;           ///< a week
    units::Depth gross;         ///< a week
    int days_between = 1;       ///< that the soil allows
    int times_a_week = 0;
    std::vector<int> weekdays;  ///< 0 Monday to 6 Sunday
    int cycles = 1;             ///< each time
    int cycle_minutes = 0;
    int soak_minutes = 0;
    int minutes_a_week = 0;
    bool too_few_days = false;  ///< the rule allows fewer days than the soil asks for
};

struct WeekDayPlan {
    int weekday = 0;
    DayPlan plan;               ///< station: index into ScheduleMonth::stations
    int short_minutes = 0;      ///< run beyond the end of the window; 0 without a window
};

struct ScheduleMonth {
    calendar::Month month;
    std::vector<StationWeek> stations;   ///< in the order given
    std::vector<WeekDayPlan> days;       ///< that have a run
    int short_minutes_a_week = 0;
    /// What the shortfall leaves out, over the areas of the stations that are cut, as a share of
    /// the minutes of the week, 0 to 1.
    double short_share = 0.0;
};

struct Unscheduled {
    std::string station;  ///< or the area's code, when it has no station
    Sentence reason;
};

struct Assumption {
    std::string area;  ///< code; empty: of the whole schedule
    Sentence says;
};

struct BaseSchedule {
    std::string site;
    std::optional<WateringRule> rule;    ///< absent: every day allowed, no window
    std::vector<ScheduleMonth> months;
    std::vector<Unscheduled> left_out;
    Sentence method;
    Sentence source;
    std::vector<Assumption> assumptions;
};

/// @param stations  of the areas; the others are left out, with the reason
/// @throws InputError for a rule with no day or no window, an area without months or with months
///   unlike the others, a station twice, or a soil figure that is not above zero
BaseSchedule base_schedule(const std::string& site, std::span<const AreaPlan> areas,
                           std::span<const Station> stations,
                           const std::optional<WateringRule>& rule);

}  // namespace evenfall::schedule
