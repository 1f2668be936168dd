// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/schedule.h"
#include "app/workflow/schedule_files.h"
#include "core/units/number.h"

#include <array>
#include <chrono>
#include <iomanip>
#include <ostream>

namespace evenfall::cli {
namespace {

using schedule::BaseSchedule;
using schedule::ScheduleMonth;
using schedule::StationWeek;

constexpr std::array day_names{"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"};

Json station_json(const StationWeek& s) {
    Json days = Json::array();
    for (const int d : s.weekdays) days.push_back(day_names[static_cast<std::size_t>(d)]);
    return {{"station", s.station},
            {"area", s.area},
            {"rate_in_h", s.rate.in(units::inch_per_hour)},
            {"rate_source", s.rate_source.english()},
            {"net_in_week", s.net.in(units::inch)},
            {"gross_in_week", s.gross.in(units::inch)},
            {"days_between", s.days_between},
            {"times_a_week", s.times_a_week},
            {"weekdays", std::move(days)},
            {"cycles", s.cycles},
            {"cycle_minutes", s.cycle_minutes},
            {"soak_minutes", s.soak_minutes},
            {"minutes_a_week", s.minutes_a_week},
            {"too_few_days", s.too_few_days}};
}

Json answer_json(const workflow::ScheduleAnswer& answer) {
    Json months = Json::array();
    for (const ScheduleMonth& m : answer.schedule.months) {
        Json stations = Json::array();
        for (const StationWeek& s : m.stations) stations.push_back(station_json(s));
        months.push_back({{"month", calendar::format_month(m.month)},
                          {"stations", std::move(stations)},
                          {"short_minutes_a_week", m.short_minutes_a_week},
                          {"short_share", m.short_share}});
    }
    Json left_out = Json::array();
    for (const auto& u : answer.schedule.left_out) {
        left_out.push_back({{"station", u.station}, {"reason", u.reason.english()}});
    }
    Json assumptions = Json::array();
    for (const auto& a : answer.schedule.assumptions) assumptions.push_back(a.says.english());
    return {{"site", answer.schedule.site},
            {"months", std::move(months)},
            {"left_out", std::move(left_out)},
            {"method", answer.schedule.method.english()},
            {"source", answer.schedule.source.english()},
            {"assumptions", std::move(assumptions)}};
}

void print_month(std::ostream& out, const ScheduleMonth& month) {
    out << '\n' << calendar::format_month_name(month.month) << '\n'
        << "  " << std::left << std::setw(16) << "station" << std::right << std::setw(10) << "in/week"
        << std::setw(8) << "times" << std::setw(14) << "cycles x min" << std::setw(7) << "soak"
        << std::setw(10) << "min/week" << "  days\n";
    for (const StationWeek& s : month.stations) {
        out << "  " << std::left << std::setw(16) << s.station << std::right << std::setw(10)
            << units::format_fixed(s.gross.in(units::inch), 2) << std::setw(8) << s.times_a_week
            << std::setw(14)
            << std::to_string(s.cycles) + " x " + std::to_string(s.cycle_minutes) << std::setw(7)
            << s.soak_minutes << std::setw(10) << s.minutes_a_week << " ";
        for (const int d : s.weekdays) out << ' ' << day_names[static_cast<std::size_t>(d)];
        out << (s.too_few_days ? "  (the soil asks for more days than are allowed)" : "") << '\n';
    }
    if (month.short_minutes_a_week > 0) {
        out << "  Does not fit: " << month.short_minutes_a_week << " minutes a week, "
            << units::format_fixed(100.0 * month.short_share, 0)
            << " % of the runs, lie beyond the window.\n";
    }
}

void print_text(std::ostream& out, const workflow::ScheduleAnswer& answer) {
    out << "Base schedule of site " << answer.schedule.site
        << ". Adjust it to the weather and to what the ground shows.\n";
    for (const ScheduleMonth& month : answer.schedule.months) print_month(out, month);
    for (const auto& u : answer.schedule.left_out) {
        out << "\nLeft out: " << u.station << ": " << u.reason << '\n';
    }
    out << "\nHow it was made\n  " << answer.schedule.method << ". " << answer.schedule.source << '\n';
    for (const auto& a : answer.schedule.assumptions) out << "  Assumed: " << a.says << '\n';
}

}  // namespace

int run(const ScheduleOptions& o, Streams& streams) {
    const auto book = store::Book::open(o.book, store::Access::read_only);
    workflow::ScheduleQuestion question{
        o.site, o.from, o.to, o.program, o.rain, audit::QuarterRule::whole_cans,
        o.year.value_or(static_cast<int>(o.to.year()) + 1), std::nullopt};
    if (!o.days.empty() || !o.window.empty()) {
        question.rule = workflow::watering_rule_from(o.site, o.days, o.window, o.at_once);
    }
    const auto answer = workflow::answer_schedule(book, question);
    if (!o.csv.empty()) workflow::write_schedule_table(answer.schedule, o.csv);
    if (!o.calendar.empty()) {
        const auto now = std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
        workflow::write_schedule_calendar(answer.schedule, now, o.calendar);
    }
    if (o.json) {
        streams.out << print(answer_json(answer));
    } else {
        print_text(streams.out, answer);
    }
    return done;
}

}  // namespace evenfall::cli
