// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/schedule/base_schedule.h"

#include "core/input_error.h"
#include "core/schedule/cycle_soak.h"
#include "core/units/number.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <set>

namespace evenfall::schedule {

using units::Depth;
using units::Duration;
using units::Rate;

namespace {

constexpr int week = 7;

struct Placed {
    const Station* station;
    const AreaPlan* area;
    Rate rate;
    Sentence source;
};

void check(std::span<const AreaPlan> areas, std::span<const Station> stations,
           const std::optional<WateringRule>& rule) {
    if (rule && (rule->days_a_week() == 0 || rule->stations_at_once < 1 ||
                 rule->starts == rule->ends)) {
        throw InputError({phrase("schedule", "watering rule of site %1"), rule->site},
                         phrase("schedule", "at least one day, a window and one station at a time or more"));
    }
    std::set<std::string> codes;
    for (const Station& station : stations) {
        if (!codes.insert(station.code).second) {
            throw InputError({phrase("schedule", "station %1 twice"), station.code},
                             phrase("schedule", "each station once"));
        }
    }
    for (const AreaPlan& area : areas) {
        const bool same = area.months.size() == areas.front().months.size() &&
                          std::equal(area.months.begin(), area.months.end(),
                                     areas.front().months.begin(),
                                     [](const auto& a, const auto& b) { return a.month == b.month; });
        if (area.months.empty() || !same) {
            throw InputError({phrase("schedule", "area %1"), area.area},
                             phrase("schedule", "the same months for every area, at least one"));
        }
        if (!(area.available.si() > 0.0) || !(area.depletion_share > 0.0) ||
            !(area.intake.si() > 0.0) || !(area.accumulation.si() > 0.0)) {
            throw InputError({phrase("schedule", "area %1"), area.area},
                             phrase("schedule", "soil figures above zero"));
        }
    }
}

std::optional<Placed> place(const Station& station, const AreaPlan& area) {
    if (station.rate && station.rate->quantity().si() > 0.0) {
        return Placed{&station, &area, station.rate->quantity(), station.rate_source};
    }
    if (area.full_circle_rate && area.full_circle_rate->si() > 0.0) {
        const double arc = station.arc_degrees.value_or(360.0);
        return Placed{
            &station,
            &area,
            *area.full_circle_rate * (360.0 / arc),
            {phrase("schedule", "%1, at an arc of %2 degrees"), area.rate_source, units::format_shortest(arc)}};
    }
    return std::nullopt;
}

int minutes_up(Duration d) {
    // 12.0000000001 minutes are 12.
    return static_cast<int>(std::ceil(d.in(units::minute) - 1e-6));
}

/// floor(p TAW / ETc of a day), from 1 to 7.
int days_between(const AreaPlan& area, Depth et_of_day) {
    const Depth allowed = area.available * area.depletion_share;
    if (!(et_of_day.si() > 0.0)) return week;
    return std::clamp(static_cast<int>(std::floor(allowed / et_of_day + 1e-9)), 1, week);
}

StationWeek week_of(const Placed& placed, std::size_t k, int allowed_days) {
    const AreaPlan& area = *placed.area;
    const MonthDepths& depths = area.months[k];
    const double days = calendar::days_in(depths.month);
    StationWeek out;
    out.station = placed.station->code;
    out.area = area.area;
    out.rate = placed.rate;
    out.rate_source = placed.source;
    out.net = depths.need * (week / days);
    out.gross = out.net * area.multiplier.value();
    out.days_between = days_between(area, depths.landscape_et / days);
    if (!(out.gross.si() > 0.0)) return out;
    const int wanted = (week + out.days_between - 1) / out.days_between;
    out.times_a_week = std::min(wanted, allowed_days);
    out.too_few_days = wanted > allowed_days;
    const Duration run = out.gross / static_cast<double>(out.times_a_week) / placed.rate;
    const auto cycles = cycle_and_soak(run, placed.rate, area.intake, area.accumulation);
    out.cycles = cycles.cycles;
    out.cycle_minutes = minutes_up(cycles.cycle);
    out.soak_minutes = minutes_up(cycles.soak);
    out.minutes_a_week = out.times_a_week * out.cycles * out.cycle_minutes;
    return out;
}

/// n of the allowed days, evenly spaced, beginning where the busiest of them carries the least.
std::vector<int> pick_days(const std::vector<int>& allowed, int n, const std::array<int, week>& load) {
    std::vector<int> best;
    int best_load = 0;
    const auto count = static_cast<int>(allowed.size());
    for (int offset = 0; offset < count; ++offset) {
        std::vector<int> days;
        int busiest = 0;
        for (int k = 0; k < n; ++k) {
            const int index = (offset + k * count / n) % count;
            days.push_back(allowed[static_cast<std::size_t>(index)]);
            busiest = std::max(busiest, load[static_cast<std::size_t>(days.back())]);
        }
        if (best.empty() || busiest < best_load) {
            best = days;
            best_load = busiest;
        }
    }
    std::sort(best.begin(), best.end());
    return best;
}

std::vector<int> allowed_days(const std::optional<WateringRule>& rule) {
    std::vector<int> days;
    for (int d = 0; d < week; ++d) {
        if (!rule || rule->days[static_cast<std::size_t>(d)]) days.push_back(d);
    }
    return days;
}

void choose_days(ScheduleMonth& month, const std::vector<int>& allowed) {
    std::array<int, week> load{};
    std::vector<std::string> areas;
    for (const StationWeek& s : month.stations) {
        if (std::find(areas.begin(), areas.end(), s.area) == areas.end()) areas.push_back(s.area);
    }
    for (const std::string& area : areas) {
        int times = 0;
        for (const StationWeek& s : month.stations) {
            if (s.area == area) times = std::max(times, s.times_a_week);
        }
        if (times == 0) continue;
        const auto days = pick_days(allowed, times, load);
        for (StationWeek& s : month.stations) {
            if (s.area != area || s.times_a_week == 0) continue;
            s.weekdays = days;
            for (const int d : days) {
                load[static_cast<std::size_t>(d)] += s.cycles * s.cycle_minutes;
            }
        }
    }
}

void fit(ScheduleMonth& month, const std::optional<WateringRule>& rule) {
    int minutes = 0;
    for (int day = 0; day < week; ++day) {
        std::vector<DayRunOf> runs;
        for (std::size_t i = 0; i < month.stations.size(); ++i) {
            const StationWeek& s = month.stations[i];
            if (std::find(s.weekdays.begin(), s.weekdays.end(), day) == s.weekdays.end()) continue;
            runs.push_back({i, s.cycles, s.cycle_minutes, s.soak_minutes});
        }
        if (runs.empty()) continue;
        WeekDayPlan plan{day, plan_day(runs, rule ? rule->stations_at_once : 1), 0};
        for (const StartTime& start : plan.plan.starts) {
            minutes += start.minutes;
            if (!rule) continue;
            const auto window = static_cast<int>(rule->window().count());
            const int beyond = start.start + start.minutes - window;
            plan.short_minutes += std::clamp(beyond, 0, start.minutes);
        }
        month.short_minutes_a_week += plan.short_minutes;
        month.days.push_back(std::move(plan));
    }
    if (minutes > 0) month.short_share = static_cast<double>(month.short_minutes_a_week) / minutes;
}

std::vector<Placed> place_all(std::span<const AreaPlan> areas, std::span<const Station> stations,
                              std::vector<Unscheduled>& left_out) {
    std::vector<Placed> placed;
    std::set<std::string> with_station;
    for (const Station& station : stations) {
        const auto area = std::find_if(areas.begin(), areas.end(),
                                       [&](const AreaPlan& a) { return a.area == station.area; });
        if (area == areas.end()) {
            left_out.push_back({station.code, {phrase("schedule", "its area %1 has no need known"), station.area}});
            continue;
        }
        with_station.insert(station.area);
        if (const auto one = place(station, *area)) {
            placed.push_back(*one);
        } else {
            left_out.push_back({station.code, phrase("schedule", "no application rate: test it or enter its rate")});
        }
    }
    for (const AreaPlan& area : areas) {
        if (with_station.count(area.area) == 0) left_out.push_back({area.area, phrase("schedule", "no station")});
    }
    return placed;
}

}  // namespace

BaseSchedule base_schedule(const std::string& site, std::span<const AreaPlan> areas,
                           std::span<const Station> stations,
                           const std::optional<WateringRule>& rule) {
    check(areas, stations, rule);
    BaseSchedule out;
    out.site = site;
    out.rule = rule;
    out.method = phrase("schedule",
                        "week net x run-time multiplier / rate of the station; days by p x available water "
                        "over ET of a day; cycles by allowable surface accumulation; whole minutes, up");
    out.source = phrase("schedule", "FAO-56 Eq. 82 and 83; trade formula for cycles (memory)");
    const auto placed = place_all(areas, stations, out.left_out);
    for (const AreaPlan& area : areas) {
        if (area.soil_assumed) {
            out.assumptions.push_back(
                {area.area,
                 {phrase("schedule", "area %1: a soil figure is assumed, see the notes of the season"), area.area}});
        }
    }
    if (!rule) {
        out.assumptions.push_back(
            {"", phrase("schedule", "no watering rule: every day is allowed and no window is kept")});
    }
    if (areas.empty()) return out;

    const auto allowed = allowed_days(rule);
    for (std::size_t k = 0; k < areas.front().months.size(); ++k) {
        ScheduleMonth month;
        month.month = areas.front().months[k].month;
        for (const Placed& one : placed) {
            month.stations.push_back(week_of(one, k, static_cast<int>(allowed.size())));
        }
        choose_days(month, allowed);
        fit(month, rule);
        out.months.push_back(std::move(month));
    }
    return out;
}

}  // namespace evenfall::schedule
