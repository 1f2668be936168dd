// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meter/screens.h"

#include "core/calendar/month_words.h"
#include "core/meter/screen_text.h"
#include "core/reference/table.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace evenfall::meter {
namespace {

using calendar::Date;
using calendar::Instant;
using std::chrono::days;
using units::Volume;

std::optional<std::pair<Date, Date>> span_of(const ScreenInput& in) {
    if (in.record.intervals.empty()) return std::nullopt;
    return std::pair(in.zone.day_of(in.record.intervals.front().from),
                     in.zone.day_of(in.record.intervals.back().to));
}

std::vector<MonthUse> months_of(const ScreenInput& in) {
    const auto span = span_of(in);
    if (!span) return {};
    return monthly_use(in.record.intervals, in.zone, calendar::month_of(span->first),
                       calendar::month_of(span->second));
}

/// A month with need that lies by half or more in the days asked for: a few of its days may well
/// have needed nothing.
bool needs_water(std::span<const MonthNeed> needs, Date from, Date to) {
    return std::any_of(needs.begin(), needs.end(), [&](const MonthNeed& n) {
        const Date first = std::max(from, calendar::first_day(n.month));
        const Date last = std::min(to, calendar::last_day(n.month));
        return n.need.si() > 0 && 2 * ((last - first).count() + 1) >= calendar::days_in(n.month);
    });
}

/// The water of a day, or of the time between two daily readings. Spreading the latter over
/// calendar days would turn every second day's irrigation into one large and one small day.
std::vector<std::pair<Date, Volume>> daily_amounts(const ScreenInput& in) {
    std::vector<VolumeInterval> fine;
    std::vector<std::pair<Date, Volume>> amounts;
    for (const VolumeInterval& v : in.record.intervals) {
        if (v.to - v.from > std::chrono::hours{25}) continue;
        if (v.to - v.from >= std::chrono::hours{20}) amounts.emplace_back(in.zone.day_of(v.from), v.volume);
        else fine.push_back(v);
    }
    if (!fine.empty()) {
        const Date from = in.zone.day_of(fine.front().from);
        const Date to = in.zone.day_of(fine.back().to - std::chrono::seconds{1});
        for (const DayUse& d : daily_use(fine, in.zone, from, to)) {
            if (d.volume) amounts.emplace_back(d.date, *d.volume);
        }
    }
    std::stable_sort(amounts.begin(), amounts.end(),
                     [](const auto& a, const auto& b) { return a.first < b.first; });
    return amounts;
}

std::string percent_text(double share) { return units::format_fixed(share * 100, 1) + " %"; }

/// Readings of the same register value, one after the other.
void screen_stuck_run(const ScreenInput& in, std::span<const Reading> run,
                      std::span<const MonthNeed> needs, std::vector<MeterFinding>& found) {
    const Date from = in.zone.day_of(run.front().at);
    const Date to = in.zone.day_of(run.back().at);
    const bool many = static_cast<double>(run.size()) >= screen_limit("stuck_readings");
    const bool lasting = static_cast<double>((to - from).count()) >= screen_limit("stuck_days");
    if (!many || !lasting) return;
    const bool thirsty = needs_water(needs, from, to);
    if (!needs.empty() && !thirsty) return;  // off season: standing still is right
    found.push_back(make_finding(
        FindingKind::stuck_register, in.meter.code, from, to, std::nullopt,
        thirsty ? Sentence(phrase("meter",
                                  "Meter %1 stood at %2 %3 over %4 readings, though the turf needed water. "
                                  "Check that the register turns."),
                           in.meter.code, units::format_shortest(run.front().value), days_text(from, to), run.size())
                : Sentence(phrase("meter",
                                  "Meter %1 stood at %2 %3 over %4 readings. If water ran in this time the "
                                  "register is stuck."),
                           in.meter.code, units::format_shortest(run.front().value), days_text(from, to), run.size()),
        thirsty ? Confidence::fair : Confidence::low, "stuck_days"));
}

std::optional<double> largest_flow_gpm(const Meter& meter) {
    if (!meter.size) return std::nullopt;
    const double inches = meter.size->quantity().in(units::inch_length);
    for (const auto& row : reference::Table::named("meter_sizes.csv").rows()) {
        // Sizes are names: 1 1/2 in is also sold as 40 mm, so the nearest within 7 % is meant.
        if (std::abs(row.number("size_in") / inches - 1) < 0.07) return row.number("largest_gpm");
    }
    return std::nullopt;
}

}  // namespace

Phrase text_of(FindingKind kind) {
    switch (kind) {
        case FindingKind::never_zero:
            return phrase("meter", "never-zero days");
        case FindingKind::overnight_flow:
            return phrase("meter", "overnight flow");
        case FindingKind::use_without_need:
            return phrase("meter", "use without need");
        case FindingKind::spike:
            return phrase("meter", "spike");
        case FindingKind::stuck_register:
            return phrase("meter", "stuck register");
        case FindingKind::gap:
            return phrase("meter", "gap");
        case FindingKind::impossible_flow:
            return phrase("meter", "impossible flow");
        case FindingKind::register_fell:
            return phrase("meter", "register fell");
        case FindingKind::ran_backward:
            return phrase("meter", "ran backward");
        case FindingKind::overlap:
            return phrase("meter", "overlapping volumes");
        case FindingKind::master_sub:
            return phrase("meter", "master against submeters");
        case FindingKind::bill_differs:
            return phrase("meter", "bill against readings");
    }
    return {};
}

Phrase text_of(Confidence confidence) {
    switch (confidence) {
        case Confidence::low:
            return phrase("meter", "low");
        case Confidence::fair:
            return phrase("meter", "fair");
        case Confidence::high:
            return phrase("meter", "high");
    }
    return {};
}

std::vector<MeterFinding> use_without_need(const ScreenInput& in,
                                           std::span<const MonthNeed> needs) {
    const auto months = months_of(in);
    double sum = 0.0;
    double counted = 0.0;
    for (const MonthUse& m : months) {
        if (m.volume) {
            sum += m.volume->si();
            counted += 1;
        }
    }
    const double least = counted > 0 ? screen_limit("no_need_share") * sum / counted : 0.0;
    std::vector<MeterFinding> found;
    for (const MonthUse& m : months) {
        const auto need = std::find_if(needs.begin(), needs.end(),
                                       [&](const MonthNeed& n) { return n.month == m.month; });
        if (need == needs.end() || need->need.si() > 0 || !m.volume) continue;
        if (!(m.volume->si() > least) || !(m.volume->si() > 0)) continue;
        found.push_back(
            make_finding(FindingKind::use_without_need, in.meter.code, calendar::first_day(m.month),
                         calendar::last_day(m.month), m.volume,
                         {phrase("meter", "Meter %1 passed %2 in %3, a month in which the turf needed no water."),
                          in.meter.code, volume_text(*m.volume), calendar::month_words(m.month)},
                         m.estimated_share > 0.5 ? Confidence::low : Confidence::fair, "no_need_share"));
    }
    return found;
}

std::vector<MeterFinding> spikes(const ScreenInput& in) {
    const auto amounts = daily_amounts(in);
    const days reach{static_cast<int>(screen_limit("spike_window"))};
    std::vector<MeterFinding> found;
    for (std::size_t i = 0; i < amounts.size(); ++i) {
        const auto& [date, volume] = amounts[i];
        std::vector<double> near;  // of the days around that had water
        for (std::size_t j = i; j-- > 0 && amounts[j].first >= date - reach;) {
            if (amounts[j].second.si() > 0) near.push_back(amounts[j].second.si());
        }
        for (std::size_t j = i + 1; j < amounts.size() && amounts[j].first <= date + reach; ++j) {
            if (amounts[j].second.si() > 0) near.push_back(amounts[j].second.si());
        }
        if (static_cast<double>(near.size()) < screen_limit("spike_least")) continue;
        const double middle = median(near);
        std::vector<double> deviations;
        for (double v : near) deviations.push_back(std::abs(v - middle));
        // 1.4826: makes the median absolute deviation of normal data its standard deviation.
        const double scale = 1.4826 * median(deviations);
        const double v = volume.si();
        if (!(middle > 0) || v <= screen_limit("spike_times") * middle ||
            v <= middle + screen_limit("spike_deviations") * scale) {
            continue;
        }
        const Volume above = Volume::from_si(v - middle);
        found.push_back(make_finding(
            FindingKind::spike, in.meter.code, date, date, above,
            {phrase("meter",
                    "Meter %1 passed %2 on %3, %4 times the usual watered day around it (%5). A broken line, a "
                    "hydrant or a misread register."),
             in.meter.code, volume_text(volume), calendar::format_date(date), units::format_fixed(v / middle, 1),
             volume_text(Volume::from_si(middle))},
            Confidence::fair, "spike_times"));
    }
    return found;
}

std::vector<MeterFinding> stuck_register(const ScreenInput& in,
                                         std::span<const MonthNeed> needs) {
    std::vector<Reading> registers;
    for (const Reading& r : in.readings) {
        if (r.span.count() == 0) registers.push_back(r);
    }
    std::vector<MeterFinding> found;
    for (std::size_t i = 0; i < registers.size();) {
        std::size_t j = i + 1;
        while (j < registers.size() && registers[j].value == registers[i].value) ++j;
        screen_stuck_run(in, std::span(registers).subspan(i, j - i), needs, found);
        i = j;
    }
    return found;
}

namespace {

/// How far apart readings usually are around interval `at`. A logger is taken out, a reader comes
/// weekly from now on: where the rhythm changes, the slower of the two sides is the usual one.
double usual_spacing(std::span<const VolumeInterval> intervals, std::size_t at) {
    const auto reach = static_cast<std::size_t>(screen_limit("gap_neighbours"));
    const auto spacing_in = [&](std::size_t from, std::size_t to) {
        std::vector<double> spacing;
        for (std::size_t i = from; i < to; ++i) {
            spacing.push_back(static_cast<double>((intervals[i].to - intervals[i].from).count()));
        }
        return spacing.empty() ? 0.0 : median(spacing);
    };
    const double before = spacing_in(at - std::min(at, reach), at);
    const double after = spacing_in(at + 1, std::min(intervals.size(), at + 1 + reach));
    // A single interval has no rhythm to fall out of.
    return before + after > 0 ? std::max(before, after) : HUGE_VAL;
}

}  // namespace

std::vector<MeterFinding> gaps(const ScreenInput& in) {
    const auto& intervals = in.record.intervals;
    std::vector<MeterFinding> found;
    const auto report = [&](Instant from, Instant to, std::optional<Volume> volume) {
        const double hours = static_cast<double>((to - from).count()) / 3600;
        const Sentence length = hours < 72 ? Sentence(phrase("meter", "%1 hours"), units::format_fixed(hours, 1))
                                           : Sentence(phrase("meter", "%1 days"), units::format_fixed(hours / 24, 1));
        const Sentence silence{phrase("meter", "Meter %1 has no reading for %2, from %3 to %4"), in.meter.code,
                               length, calendar::format_local_time(in.zone.to_local(from)),
                               calendar::format_local_time(in.zone.to_local(to))};
        found.push_back(make_finding(
            FindingKind::gap, in.meter.code, in.zone.day_of(from), in.zone.day_of(to), volume,
            volume ? Sentence(phrase("meter", "%1; the volume in between, %2, is known but its days are not."),
                              silence, volume_text(*volume))
                   : Sentence(phrase("meter", "%1; what passed in between is not known."), silence),
            Confidence::high, "gap_times"));
    };
    for (std::size_t i = 0; i < intervals.size(); ++i) {
        const VolumeInterval& v = intervals[i];
        const double longest = std::max(screen_limit("gap_times") * usual_spacing(intervals, i),
                                        screen_limit("gap_least"));
        if (static_cast<double>((v.to - v.from).count()) > longest) {
            report(v.from, v.to, v.volume);
        }
        if (i + 1 < intervals.size()) {
            const Instant next = intervals[i + 1].from;
            const auto hole = static_cast<double>((next - v.to).count());
            if (hole >= screen_limit("gap_least")) report(v.to, next, std::nullopt);
        }
    }
    return found;
}

std::vector<MeterFinding> impossible_flow(const ScreenInput& in) {
    const auto largest = largest_flow_gpm(in.meter);
    if (!largest) return {};
    const units::Flow limit =
        screen_limit("over_size_times") * *largest * units::gallon_per_minute;
    std::vector<MeterFinding> found;
    for (const VolumeInterval& v : in.record.intervals) {
        const units::Flow flow =
            v.volume / (static_cast<double>((v.to - v.from).count()) * units::second);
        if (!(flow > limit)) continue;
        const Date from = in.zone.day_of(v.from);
        const Date to = in.zone.day_of(v.to - std::chrono::seconds{1});
        if (!found.empty() && from <= found.back().to + days{1}) {  // one stretch, one finding
            found.back().to = to;
            *found.back().volume += v.volume;
            continue;
        }
        found.push_back(make_finding(
            FindingKind::impossible_flow, in.meter.code, from, to, v.volume,
            {phrase("meter",
                    "Meter %1 shows a mean flow of %2 %3; the largest normal flow of its size (%4) is %5. "
                    "Check the reading, the register unit and the multiplier."),
             in.meter.code, flow_text(flow), days_text(from, to), in.meter.size->text(),
             flow_text(*largest * units::gallon_per_minute)},
            Confidence::high, "over_size_times"));
    }
    return found;
}

std::vector<MeterFinding> record_problems(const ScreenInput& in) {
    std::vector<MeterFinding> found;
    for (const RecordProblem& p : in.record.problems) {
        const Date from = in.zone.day_of(p.from);
        const Date to = in.zone.day_of(p.to);
        switch (p.kind) {
            case ProblemKind::register_fell:
                found.push_back(make_finding(
                    FindingKind::register_fell, in.meter.code, from, to, std::nullopt,
                    {phrase("meter",
                            "Meter %1 shows less at the end than at the start %2. Without the number of digits "
                            "of its register this is no volume: it may have rolled over, been exchanged or "
                            "been misread."),
                     in.meter.code, days_text(from, to)},
                    Confidence::high, "backward_share"));
                break;
            case ProblemKind::ran_backward:
                found.push_back(make_finding(
                    FindingKind::ran_backward, in.meter.code, from, to, p.volume,
                    {phrase("meter",
                            "Meter %1 ran backward by %2 %3. Water may have flowed back into the supply: have "
                            "the backflow preventer tested by a licensed tester."),
                     in.meter.code, volume_text(-p.volume), days_text(from, to)},
                    Confidence::fair, "backward_share"));
                break;
            case ProblemKind::overlap:
                found.push_back(make_finding(
                    FindingKind::overlap, in.meter.code, from, to, p.volume,
                    {phrase("meter",
                            "Meter %1 has two volumes for the same time %2; %3 of the later one was left out."),
                     in.meter.code, days_text(from, to), volume_text(p.volume)},
                    Confidence::high, "gap_least"));
                break;
        }
    }
    return found;
}

std::vector<MeterFinding> master_against_submeters(const std::string& master,
                                                   std::span<const MonthUnaccounted> months) {
    std::vector<MeterFinding> found;
    for (const MonthUnaccounted& m : months) {
        if (!m.unaccounted || !(m.master->si() > 0 || m.submeters->si() > 0)) continue;
        const double share =
            m.master->si() > 0 ? *m.unaccounted / *m.master : -1.0;
        const bool lost = share > screen_limit("master_share");
        const bool excess = share < -screen_limit("master_excess");
        if (!lost && !excess) continue;
        found.push_back(make_finding(
            FindingKind::master_sub, master, calendar::first_day(m.month), calendar::last_day(m.month), m.unaccounted,
            lost ? Sentence(phrase("meter",
                                   "Master meter %1 passed %2 more than its submeters in %3 (%4 unaccounted). A "
                                   "leak between them, an unmetered use or a slow submeter."),
                            master, volume_text(*m.unaccounted), calendar::month_words(m.month), percent_text(share))
                 : Sentence(phrase("meter",
                                   "The submeters of %1 passed %2 more than the master meter in %3. One of the "
                                   "meters, units or multipliers is wrong."),
                            master, volume_text(-*m.unaccounted), calendar::month_words(m.month)),
            Confidence::fair, lost ? "master_share" : "master_excess"));
    }
    return found;
}

std::vector<MeterFinding> bill_against_readings(const ScreenInput& in,
                                                std::span<const Bill> bills) {
    std::vector<MeterFinding> found;
    for (const Bill& b : bills) {
        if (b.meter != in.meter.code || b.to <= b.from) continue;
        const std::vector<Instant> edges{in.zone.start_of_day(b.from), in.zone.start_of_day(b.to)};
        const PeriodUse use = use_between(in.record.intervals, edges).front();
        // A bill against half a record would only say that the record has a gap.
        if (!use.volume || use.covered_share < 0.98) continue;
        const Volume billed = b.volume.quantity();
        const Volume difference = billed - *use.volume;
        const double size = std::abs(difference.si());
        const double length = static_cast<double>((b.to - b.from).count());
        const double mean_day = std::abs(use.volume->si()) / length;
        if (size <= screen_limit("bill_share") * std::abs(use.volume->si()) ||
            size <= 2 * mean_day) {
            continue;
        }
        const Date last = b.to - days{1};
        found.push_back(make_finding(
            FindingKind::bill_differs, in.meter.code, b.from, last, difference,
            difference.si() > 0
                ? Sentence(phrase("meter",
                                  "The bill of meter %1 %2 says %3, the readings say %4: %5 too much was billed, "
                                  "or the unit differs."),
                           in.meter.code, days_text(b.from, last), volume_text(billed), volume_text(*use.volume),
                           volume_text(Volume::from_si(size)))
                : Sentence(phrase("meter",
                                  "The bill of meter %1 %2 says %3, the readings say %4: %5 too little was "
                                  "billed, or the unit differs."),
                           in.meter.code, days_text(b.from, last), volume_text(billed), volume_text(*use.volume),
                           volume_text(Volume::from_si(size))),
            use.estimated_share > 0.25 ? Confidence::low : Confidence::fair, "bill_share"));
    }
    return found;
}

std::vector<MeterFinding> all_screens(const ScreenInput& in, std::span<const MonthNeed> needs,
                                      std::span<const Bill> bills) {
    std::vector<MeterFinding> all;
    const auto add = [&](std::vector<MeterFinding> some) {
        all.insert(all.end(), std::make_move_iterator(some.begin()),
                   std::make_move_iterator(some.end()));
    };
    add(never_zero_days(in));
    add(overnight_flow(in));
    add(use_without_need(in, needs));
    add(spikes(in));
    add(stuck_register(in, needs));
    add(gaps(in));
    add(impossible_flow(in));
    add(record_problems(in));
    add(bill_against_readings(in, bills));
    std::stable_sort(all.begin(), all.end(), [](const MeterFinding& a, const MeterFinding& b) {
        return a.from < b.from;
    });
    return all;
}

}  // namespace evenfall::meter
