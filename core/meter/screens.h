// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/calendar/time_zone.h"
#include "core/meter/meter.h"
#include "core/meter/use.h"
#include "core/sentence.h"
#include "core/units/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// Screens: what a meter's own record says is wrong. Each finding names days, gallons and how
/// sure it is; each limit is a row of schemas/reference/meter_screens.csv with its source.
/// A screen points at something to look at on the ground; it proves nothing by itself.
/// Tests: tests/meter/screens_test.cpp
namespace evenfall::meter {

enum class FindingKind {
    never_zero,       ///< flow in every hour of the day, day after day: a leak
    overnight_flow,   ///< flow in every hour of the night window
    use_without_need, ///< water in a month when the turf needed none
    spike,            ///< a day far above the days around it
    stuck_register,   ///< no movement
    gap,              ///< no readings
    impossible_flow,  ///< more than a meter of that size passes
    register_fell,    ///< lower than before, unexplained
    ran_backward,
    overlap,          ///< two logged volumes for the same time
    master_sub,       ///< master meter and submeters disagree
    bill_differs      ///< the bill says something else than the readings
};

enum class Confidence { low, fair, high };

Phrase text_of(FindingKind kind);
Phrase text_of(Confidence confidence);

struct MeterFinding {
    FindingKind kind;
    std::string meter;
    calendar::Date from;
    calendar::Date to;  ///< last day, included
    std::optional<units::Volume> volume;  ///< lost, in doubt or missing; nothing when unknown
    Sentence sentence;                    ///< for a person, in gallons and cubic metres
    Confidence confidence;
    Sentence limit;   ///< the limit that was crossed, with its value
    Sentence source;  ///< where the limit comes from
};

/// A meter with its record, ready to be screened.
struct ScreenInput {
    const Meter& meter;
    std::span<const Reading> readings;  ///< latest revisions, sorted by `at`
    const MeterRecord& record;          ///< of these readings
    const calendar::TimeZone& zone;
};

/// The lowest flow of a day, where the record is fine enough to show it hour by hour.
struct DayFloor {
    calendar::Date date;
    units::Volume lowest_hour;   ///< volume of the hour with the least flow
    double hours = 0.0;          ///< hours of the day that are covered
};

/// Days whose record shows every hour, in order; days that do not are left out.
std::vector<DayFloor> day_floors(const ScreenInput& input);

/// Never-zero days: at least `leak_days` days in a row in which no hour stood still, so long as
/// the lowest flow is small against the flow while irrigating (else it is irrigation round the
/// clock and reported as such, without counting as a leak).
///     leak of a day = min(lowest hour, median of the lowest hours within a week) x 24 h
/// Leaks of less than one count of the register per hour do not show.
/// Where readings come daily, a day takes the place of an hour: at least `daily_leak_days` readings
/// in a row with use, the lowest of them within three days on either side small against a day of
/// irrigation. That can show a leak only where some days are not irrigated; it is never sure.
/// Source: night-flow and never-zero rules, reference notes "Meters, bills, leaks" (memory).
std::vector<MeterFinding> never_zero_days(const ScreenInput& input);

struct MonthLeak {
    calendar::Month month;
    units::Volume volume;         ///< zero when nothing was found
    int days = 0;                 ///< days the leak was seen
    Confidence confidence = Confidence::low;
    bool screened = false;        ///< false: no day of the month has an hour-by-hour or daily record
};

/// The leak volume of each month, both ends included, by never_zero_days. Never above the use of
/// the hours it was seen in.
std::vector<MonthLeak> leak_by_month(const ScreenInput& input, calendar::Month from,
                                     calendar::Month to);

/// Flow all through the night window on `night_nights` nights in a row that never_zero_days does
/// not explain. Nights with a flow like irrigation are left out.
std::vector<MeterFinding> overnight_flow(const ScreenInput& input);

/// The turf's need over the areas of one meter.
struct MonthNeed {
    calendar::Month month;
    units::Volume need;
};

std::vector<MeterFinding> use_without_need(const ScreenInput& input,
                                           std::span<const MonthNeed> needs);

/// Days above the median of the watered days around them by `spike_times` and by `spike_deviations`
/// scaled median absolute deviations. Only days read at least daily can be screened.
std::vector<MeterFinding> spikes(const ScreenInput& input);

/// @param needs  months with need make a register that stands still suspect; may be empty
std::vector<MeterFinding> stuck_register(const ScreenInput& input,
                                         std::span<const MonthNeed> needs);

std::vector<MeterFinding> gaps(const ScreenInput& input);

/// Needs the meter's size; without one nothing is found.
std::vector<MeterFinding> impossible_flow(const ScreenInput& input);

/// What reading the record itself brought up: falls, backward flow, overlaps.
std::vector<MeterFinding> record_problems(const ScreenInput& input);

/// @param months  from unaccounted(), of the master meter
std::vector<MeterFinding> master_against_submeters(const std::string& master,
                                                   std::span<const MonthUnaccounted> months);

/// A water bill: the volume charged for the days from `from` up to but without `to`.
struct Bill {
    std::string meter;
    calendar::Date from;
    calendar::Date to;
    units::Typed<units::Volume> volume;
};

std::vector<MeterFinding> bill_against_readings(const ScreenInput& input,
                                                std::span<const Bill> bills);

/// Every screen of one meter, by date.
std::vector<MeterFinding> all_screens(const ScreenInput& input, std::span<const MonthNeed> needs,
                                      std::span<const Bill> bills);

}  // namespace evenfall::meter
