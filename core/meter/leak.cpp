// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meter/screen_text.h"
#include "core/meter/screens.h"

#include <algorithm>
#include <cmath>

namespace evenfall::meter {
namespace {

using calendar::Date;
using calendar::Instant;
using std::chrono::days;
using std::chrono::hours;
using units::Volume;

/// One hour of the record that is covered by readings close together.
struct HourFlow {
    Date date;
    int hour;        // on the site's clock, counted from midnight in elapsed hours
    double volume;   // m3
};

std::vector<VolumeInterval> short_intervals(const MeterRecord& record) {
    const auto longest = std::chrono::seconds{std::lround(screen_limit("short_interval"))};
    std::vector<VolumeInterval> kept;
    for (const VolumeInterval& v : record.intervals) {
        if (v.to - v.from <= longest && !v.estimated) kept.push_back(v);
    }
    return kept;
}

/// Hours that are covered but for a minute.
constexpr double whole_hour = 59.0 / 60.0;

std::vector<HourFlow> hourly(const ScreenInput& in) {
    const auto fine = short_intervals(in.record);
    std::vector<HourFlow> out;
    if (fine.empty()) return out;
    std::vector<Instant> edges;
    std::vector<std::pair<Date, int>> names;
    const Date first = in.zone.day_of(fine.front().from);
    const Date last = in.zone.day_of(fine.back().to);
    for (Date d = first; d <= last; d += days{1}) {
        const Instant next = in.zone.start_of_day(d + days{1});
        int h = 0;
        for (Instant t = in.zone.start_of_day(d); t < next; t += hours{1}) {
            edges.push_back(t);
            names.emplace_back(d, h++);
        }
    }
    edges.push_back(in.zone.start_of_day(last + days{1}));
    const auto sums = use_between(fine, edges);
    for (std::size_t i = 0; i < sums.size(); ++i) {
        if (sums[i].volume && sums[i].covered_share >= whole_hour) {
            out.push_back({names[i].first, names[i].second, sums[i].volume->si()});
        }
    }
    return out;
}

/// Flow in m3 per hour that stands for irrigation: a high percentile of the hours that ran.
double running_flow(const std::vector<HourFlow>& flows) {
    std::vector<double> moving;
    for (const HourFlow& f : flows) {
        if (f.volume > 0) moving.push_back(f.volume);
    }
    return percentile(moving, screen_limit("running_percentile") / 100);
}

std::vector<DayFloor> floors_of(const std::vector<HourFlow>& flows) {
    std::vector<DayFloor> out;
    const double needed = screen_limit("hours_needed");
    for (std::size_t i = 0; i < flows.size();) {
        DayFloor day{flows[i].date, Volume::from_si(flows[i].volume), 0.0};
        for (; i < flows.size() && flows[i].date == day.date; ++i) {
            day.lowest_hour = std::min(day.lowest_hour, Volume::from_si(flows[i].volume));
            day.hours += 1;
        }
        if (day.hours >= needed) out.push_back(day);
    }
    return out;
}

/// Days in a row that never stood still.
struct Run {
    std::vector<DayFloor> floors;
    bool round_the_clock = false;  // irrigation, not a leak

    Volume leak_of(std::size_t i) const {
        std::vector<double> near;
        for (const DayFloor& f : floors) {
            if (std::abs((f.date - floors[i].date).count()) <= 7) {
                near.push_back(f.lowest_hour.si());
            }
        }
        return floors[i].hours * Volume::from_si(std::min(floors[i].lowest_hour.si(), median(near)));
    }
    Volume total() const {
        Volume sum;
        for (std::size_t i = 0; i < floors.size(); ++i) sum += leak_of(i);
        return sum;
    }
    Confidence confidence() const {
        const auto n = static_cast<double>(floors.size());
        if (round_the_clock || n < screen_limit("leak_days")) return Confidence::low;
        return n >= screen_limit("sure_days") ? Confidence::high : Confidence::fair;
    }
};

/// A day that is not covered neither ends nor lengthens a run, for as long as a week.
constexpr days longest_hole{7};

std::vector<Run> runs_of(const std::vector<DayFloor>& floors, double running) {
    std::vector<Run> runs;
    bool open = false;
    for (const DayFloor& f : floors) {
        if (!(f.lowest_hour.si() > 0)) {
            open = false;
            continue;
        }
        if (!open || f.date - runs.back().floors.back().date > longest_hole) runs.emplace_back();
        runs.back().floors.push_back(f);
        open = true;
    }
    const auto too_short = [](const Run& r) {
        return static_cast<double>(r.floors.size()) < screen_limit("leak_days");
    };
    runs.erase(std::remove_if(runs.begin(), runs.end(), too_short), runs.end());
    for (Run& r : runs) {
        std::vector<double> lowest;
        for (const DayFloor& f : r.floors) lowest.push_back(f.lowest_hour.si());
        r.round_the_clock = median(lowest) > screen_limit("leak_share_of_running") * running;
    }
    return runs;
}

/// Use between two readings about a day apart.
struct DayUseSeen {
    Date date;  // on which most of it lies
    Instant from;
    Instant to;
    double volume;
};

struct DailyRun {
    std::vector<DayUseSeen> days;
    std::vector<double> leak;  // of each day, m3

    double total() const {
        double sum = 0.0;
        for (double v : leak) sum += v;
        return sum;
    }
};

std::vector<DayUseSeen> daily_record(const ScreenInput& in) {
    const double least = screen_limit("daily_least");
    const double longest = screen_limit("daily_longest");
    std::vector<DayUseSeen> out;
    for (const VolumeInterval& v : in.record.intervals) {
        const auto length = static_cast<double>((v.to - v.from).count());
        if (v.estimated || length < least || length > longest) continue;
        out.push_back({in.zone.day_of(v.from + (v.to - v.from) / 2), v.from, v.to, v.volume.si()});
    }
    return out;
}

/// The least use within three days on either side: what runs on when nothing is irrigated.
double floor_around(const std::vector<DayUseSeen>& seen, std::size_t i) {
    double lowest = seen[i].volume;
    for (std::size_t j = i >= 3 ? i - 3 : 0; j < seen.size() && j <= i + 3; ++j) {
        lowest = std::min(lowest, seen[j].volume);
    }
    return lowest;
}

/// Leaks that daily readings show.
std::vector<DailyRun> daily_runs(const std::vector<DayUseSeen>& seen) {
    std::vector<double> moving;
    for (const DayUseSeen& d : seen) {
        if (d.volume > 0) moving.push_back(d.volume);
    }
    const double running = percentile(moving, screen_limit("running_percentile") / 100);
    std::vector<DailyRun> runs(1);
    for (const DayUseSeen& d : seen) {
        auto& last = runs.back().days;
        const bool goes_on = !last.empty() && d.from - last.back().to <= hours{1};
        if (!last.empty() && (!goes_on || !(d.volume > 0))) runs.emplace_back();
        if (d.volume > 0) runs.back().days.push_back(d);
    }
    const auto is_leak = [&](DailyRun& run) {
        if (static_cast<double>(run.days.size()) < screen_limit("daily_leak_days")) return false;
        for (std::size_t i = 0; i < run.days.size(); ++i) run.leak.push_back(floor_around(run.days, i));
        return median(run.leak) <= screen_limit("leak_share_of_running") * running;
    };
    runs.erase(std::remove_if(runs.begin(), runs.end(), [&](DailyRun& r) { return !is_leak(r); }),
               runs.end());
    return runs;
}

MeterFinding daily_finding(const ScreenInput& in, const DailyRun& run) {
    const Volume total = Volume::from_si(run.total());
    const double seconds =
        static_cast<double>((run.days.back().to - run.days.front().from).count());
    return make_finding(
        FindingKind::never_zero, in.meter.code, run.days.front().date, run.days.back().date, total,
        {phrase("meter",
                "Meter %1 had no day without use %2; on its quietest days %3 ran on, %4 in all. Look for a leak: "
                "on a day without irrigation close the isolation valves one by one and watch the meter."),
         in.meter.code, days_text(run.days.front().date, run.days.back().date),
         flow_text(total / (seconds * units::second)), volume_text(total)},
        Confidence::fair, "daily_leak_days");
}

Sentence leak_sentence(const ScreenInput& in, const Run& run) {
    std::vector<double> lowest;
    for (const DayFloor& f : run.floors) lowest.push_back(f.lowest_hour.si());
    const units::Flow flow = Volume::from_si(median(lowest)) / units::hour;
    const Sentence head{phrase("meter", "Meter %1 never stood still for an hour %2: at least %3 at all hours"),
                        in.meter.code, days_text(run.floors.front().date, run.floors.back().date), flow_text(flow)};
    if (run.round_the_clock) {
        return {phrase("meter",
                       "%1. That is near its flow while irrigating, so irrigation round the clock is likelier "
                       "than a leak; look at the programs first."),
                head};
    }
    return {phrase("meter",
                   "%1, %2 in %3 days. Look for a leak: close the isolation valves one by one and watch the "
                   "meter."),
            head, volume_text(run.total()), run.floors.size()};
}

}  // namespace

std::vector<DayFloor> day_floors(const ScreenInput& in) { return floors_of(hourly(in)); }

std::vector<MeterFinding> never_zero_days(const ScreenInput& in) {
    const auto flows = hourly(in);
    std::vector<MeterFinding> found;
    for (const Run& run : runs_of(floors_of(flows), running_flow(flows))) {
        std::optional<Volume> volume;
        if (!run.round_the_clock) volume = run.total();
        found.push_back(make_finding(FindingKind::never_zero, in.meter.code,
                                     run.floors.front().date, run.floors.back().date, volume,
                                     leak_sentence(in, run), run.confidence(), "leak_days"));
    }
    for (const DailyRun& run : daily_runs(daily_record(in))) found.push_back(daily_finding(in, run));
    return found;
}

std::vector<MonthLeak> leak_by_month(const ScreenInput& in, calendar::Month from,
                                     calendar::Month to) {
    std::vector<MonthLeak> months;
    for (calendar::Month m = from; m <= to; m = calendar::plus_months(m, 1)) {
        months.push_back({m, Volume{}, 0, Confidence::low, false});
    }
    const auto month_at = [&](Date d) -> MonthLeak* {
        const auto n = (calendar::month_of(d) - from).count();
        if (n < 0 || n >= static_cast<long>(months.size())) return nullptr;
        return &months[static_cast<std::size_t>(n)];
    };
    const auto flows = hourly(in);
    const auto floors = floors_of(flows);
    for (const DayFloor& f : floors) {
        if (MonthLeak* m = month_at(f.date)) m->screened = true;
    }
    for (const Run& run : runs_of(floors, running_flow(flows))) {
        if (run.round_the_clock) continue;
        for (std::size_t i = 0; i < run.floors.size(); ++i) {
            MonthLeak* m = month_at(run.floors[i].date);
            if (m == nullptr) continue;
            m->volume += run.leak_of(i);
            m->days += 1;
            m->confidence = std::max(m->confidence, run.confidence());
        }
    }
    const auto seen = daily_record(in);
    for (const DayUseSeen& d : seen) {
        if (MonthLeak* m = month_at(d.date)) m->screened = true;
    }
    for (const DailyRun& run : daily_runs(seen)) {
        for (std::size_t i = 0; i < run.days.size(); ++i) {
            MonthLeak* m = month_at(run.days[i].date);
            if (m == nullptr) continue;
            m->volume += Volume::from_si(run.leak[i]);
            m->days += 1;
            m->confidence = std::max(m->confidence, Confidence::fair);
        }
    }
    return months;
}

std::vector<MeterFinding> overnight_flow(const ScreenInput& in) {
    const auto flows = hourly(in);
    const double irrigating = screen_limit("leak_share_of_running") * running_flow(flows);
    const int first = static_cast<int>(screen_limit("night_from"));
    const int end = static_cast<int>(screen_limit("night_to"));
    std::vector<Date> leaking;
    for (const Run& run : runs_of(floors_of(flows), running_flow(flows))) {
        for (const DayFloor& f : run.floors) leaking.push_back(f.date);
    }
    struct Night { Date date; double lowest; double volume; int hours; };
    std::vector<Night> nights;
    for (const HourFlow& f : flows) {
        if (f.hour < first || f.hour >= end) continue;
        if (nights.empty() || nights.back().date != f.date) {
            nights.push_back({f.date, f.volume, 0.0, 0});
        }
        nights.back().lowest = std::min(nights.back().lowest, f.volume);
        nights.back().volume += f.volume;
        nights.back().hours += 1;
    }
    std::vector<MeterFinding> found;
    std::vector<Night> run;
    const auto close = [&] {
        if (static_cast<double>(run.size()) >= screen_limit("night_nights")) {
            double volume = 0.0;
            double lowest = run.front().lowest;
            for (const Night& n : run) {
                volume += n.lowest * n.hours;
                lowest = std::min(lowest, n.lowest);
            }
            const Volume v = Volume::from_si(volume);
            found.push_back(make_finding(
                FindingKind::overnight_flow, in.meter.code, run.front().date, run.back().date, v,
                {phrase("meter",
                        "Meter %1 passed at least %2 all through the night window %3, %4 in these hours, though "
                        "it stood still at other hours. Look for a station that runs unplanned or a valve that "
                        "does not close."),
                 in.meter.code, flow_text(Volume::from_si(lowest) / units::hour),
                 days_text(run.front().date, run.back().date), volume_text(v)},
                Confidence::low, "night_nights"));
        }
        run.clear();
    };
    for (const Night& n : nights) {
        const bool whole = n.hours == end - first;
        const bool programmed = n.lowest > irrigating;
        if (!whole || programmed) continue;  // left out: says nothing about a leak
        const bool known = std::binary_search(leaking.begin(), leaking.end(), n.date);
        if (n.lowest > 0 && !known) {
            run.push_back(n);
        } else {
            close();
        }
    }
    close();
    return found;
}

}  // namespace evenfall::meter
