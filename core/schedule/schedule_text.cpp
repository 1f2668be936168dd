// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/schedule/schedule_text.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <array>

namespace evenfall::schedule {

using calendar::Date;
using std::chrono::days;
using std::chrono::minutes;

namespace {

constexpr std::size_t longest_line = 75;  ///< octets, without the line end
constexpr std::array day_names{"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

std::string escaped(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '\\' || c == ';' || c == ',') out += '\\';
        if (c == '\n') {
            out += "\\n";
        } else if (static_cast<unsigned char>(c) >= 0x20 && c != 0x7F) {
            out += c;  // other control characters have no place in a calendar
        }
    }
    return out;
}

bool begins_character(char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }

void add_line(std::string& out, const std::string& line) {
    std::size_t room = longest_line;
    std::size_t at = 0;
    while (line.size() - at > room) {
        std::size_t cut = at + room;
        while (cut > at + 1 && !begins_character(line[cut])) --cut;
        out.append(line, at, cut - at);
        out += "\r\n ";
        at = cut;
        room = longest_line - 1;  // the blank that marks a folded line
    }
    out.append(line, at, std::string::npos);
    out += "\r\n";
}

/// "20240603T220000" from a local time.
std::string basic(calendar::LocalTime at) {
    std::string text;
    for (const char c : calendar::format_local_time(at)) {
        if (c != '-' && c != ':') text += c;
    }
    return text;
}

std::string basic_utc(calendar::Instant at) {
    return basic(calendar::LocalTime{at.time_since_epoch()}) + "Z";
}

/// 0 Monday to 6 Sunday.
int weekday_of(Date date) {
    return static_cast<int>(std::chrono::weekday{date}.iso_encoding()) - 1;
}

/// First and last day of the month on which the window opens on that weekday.
struct Occurrences {
    Date first;
    Date last;
};
Occurrences occurrences(calendar::Month month, int weekday) {
    Date first = calendar::first_day(month);
    while (weekday_of(first) != weekday) first += days{1};
    Date last = calendar::last_day(month);
    while (weekday_of(last) != weekday) last -= days{1};
    return {first, last};
}

calendar::LocalTime local(Date date, minutes after_midnight) {
    return calendar::LocalTime{date.time_since_epoch()} + after_midnight;
}

void add_event(std::string& out, const BaseSchedule& schedule, const ScheduleMonth& month,
               const WeekDayPlan& day, const StartTime& start, calendar::Instant made_at) {
    const StationWeek& station = month.stations[start.station];
    const auto when = occurrences(month.month, day.weekday);
    const minutes begin = schedule.rule->starts + minutes{start.start};
    const std::string key = calendar::format_month(month.month) + "-" + station.station + "-" +
                            day_names[static_cast<std::size_t>(day.weekday)] + "-" +
                            std::to_string(start.cycle) + "-" + schedule.site;
    add_line(out, "BEGIN:VEVENT");
    add_line(out, "UID:" + escaped(key) + "@evenfall.invalid");
    add_line(out, "DTSTAMP:" + basic_utc(made_at));
    add_line(out, "DTSTART:" + basic(local(when.first, begin)));
    add_line(out, "DURATION:PT" + std::to_string(start.minutes) + "M");
    add_line(out, "RRULE:FREQ=WEEKLY;UNTIL=" + basic(local(when.last, begin)));
    add_line(out, "SUMMARY:" + escaped("Station " + station.station + ", " +
                                       std::to_string(start.minutes) + " min" +
                                       (station.cycles > 1 ? ", cycle " + std::to_string(start.cycle) +
                                                                 " of " +
                                                                 std::to_string(station.cycles)
                                                           : std::string())));
    add_line(out, "DESCRIPTION:" +
                      escaped("Base schedule for " + calendar::format_month_name(month.month) +
                              ", area " + station.area + ": " +
                              units::format_fixed(station.gross.in(units::inch), 2) +
                              " in a week. Adjust to the weather; do not water where rain has done it."));
    add_line(out, "END:VEVENT");
}

}  // namespace

std::vector<std::vector<std::string>> schedule_rows(const BaseSchedule& schedule) {
    std::vector<std::vector<std::string>> rows{
        {"month", "station", "area", "rate_in_h", "net_in_week", "gross_in_week", "days_between",
         "times_a_week", "weekdays", "cycles", "cycle_minutes", "soak_minutes", "minutes_a_week",
         "too_few_days"}};
    for (const ScheduleMonth& month : schedule.months) {
        for (const StationWeek& s : month.stations) {
            std::string weekdays;
            for (const int d : s.weekdays) {
                weekdays += (weekdays.empty() ? "" : " ") + std::string(day_names[static_cast<std::size_t>(d)]);
            }
            rows.push_back({calendar::format_month(month.month), s.station, s.area,
                            units::format_fixed(s.rate.in(units::inch_per_hour), 3),
                            units::format_fixed(s.net.in(units::inch), 3),
                            units::format_fixed(s.gross.in(units::inch), 3),
                            std::to_string(s.days_between), std::to_string(s.times_a_week), weekdays,
                            std::to_string(s.cycles), std::to_string(s.cycle_minutes),
                            std::to_string(s.soak_minutes), std::to_string(s.minutes_a_week),
                            s.too_few_days ? "yes" : "no"});
        }
    }
    return rows;
}

std::string schedule_calendar(const BaseSchedule& schedule, calendar::Instant made_at) {
    if (!schedule.rule) {
        throw InputError({phrase("schedule", "site %1 has no watering rule"), schedule.site},
                         phrase("schedule", "days and a window, to know when a run starts"));
    }
    std::string out;
    add_line(out, "BEGIN:VCALENDAR");
    add_line(out, "VERSION:2.0");
    add_line(out, "PRODID:-//Evenfall//Base schedule//EN");
    add_line(out, "CALSCALE:GREGORIAN");
    for (const ScheduleMonth& month : schedule.months) {
        for (const WeekDayPlan& day : month.days) {
            for (const StartTime& start : day.plan.starts) {
                add_event(out, schedule, month, day, start, made_at);
            }
        }
    }
    add_line(out, "END:VCALENDAR");
    return out;
}

}  // namespace evenfall::schedule
