// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meter/use.h"

#include "core/reference/table.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace evenfall::meter {
namespace {

using calendar::Instant;
using units::Volume;

double seconds_between(Instant from, Instant to) {
    return static_cast<double>((to - from).count());
}

bool is_estimate(const Reading& r) { return r.kind == ReadingKind::estimated; }

/// Largest part of a register's range that is still taken for water running back.
double backward_share() {
    static const double share = reference::Table::named("meter_screens.csv")
                                    .find("name", "backward_share")->number("value");
    return share;
}

/// What one count means while a register is in place.
struct Era {
    Volume per_count;
    std::optional<int> digits;
};

Era first_era(const Meter& m) {
    const Volume count = m.rated_flow ? m.rated_flow->quantity() * units::hour : m.unit.unit;
    return {m.multiplier * count, m.digits};
}

/// Unit and multiplier may change apart from each other, so both are followed.
struct Register {
    explicit Register(const Meter& m)
        : count(m.rated_flow ? m.rated_flow->quantity() * units::hour : m.unit.unit),
          multiplier(m.multiplier),
          era(first_era(m)) {}
    void change(const Exchange& e) {
        if (e.unit) count = e.unit->unit;
        if (e.multiplier) multiplier = *e.multiplier;
        era = {multiplier * count, e.digits ? e.digits : era.digits};
    }
    Volume count;
    double multiplier;
    Era era;
};

/// The old register still shows its final value at the very moment of the exchange.
bool before_exchange(const Reading& r, const Exchange& e) {
    return r.at < e.at || (r.at == e.at && r.value == e.final_value);
}

class RegisterWalk {
  public:
    RegisterWalk(const Meter& meter, MeterRecord& out) : meter_(meter), out_(out), now_(meter) {}

    void read(const Reading& r) {
        while (next_ < meter_.exchanges.size() && !before_exchange(r, meter_.exchanges[next_])) {
            exchange(meter_.exchanges[next_++]);
        }
        step_to(r);
    }
    void finish() {
        while (next_ < meter_.exchanges.size()) exchange(meter_.exchanges[next_++]);
    }

  private:
    void exchange(const Exchange& e) {
        step_to({e.at, {}, e.final_value, ReadingKind::measured});
        now_.change(e);
        last_ = Reading{e.at, {}, e.first_value, ReadingKind::measured};
    }
    void step_to(const Reading& r) {
        if (last_ && r.at > last_->at) add(*last_, r);
        last_ = r;
    }
    void add(const Reading& a, const Reading& b) {
        const auto counts = register_difference(a.value, b.value, now_.era.digits);
        if (!counts) {
            out_.problems.push_back({ProblemKind::register_fell, a.at, b.at, Volume{}});
            return;
        }
        const Volume v = *counts * now_.era.per_count;
        if (*counts < 0) out_.problems.push_back({ProblemKind::ran_backward, a.at, b.at, v});
        out_.intervals.push_back({a.at, b.at, v, is_estimate(a) || is_estimate(b)});
    }

    const Meter& meter_;
    MeterRecord& out_;
    Register now_;
    std::size_t next_ = 0;
    std::optional<Reading> last_;
};

VolumeInterval part_of(const VolumeInterval& whole, Instant from, Instant to) {
    const double share = seconds_between(from, to) / seconds_between(whole.from, whole.to);
    return {from, to, share * whole.volume, whole.estimated};
}

/// Logged volumes in order of time; where two overlap the one that starts later is cut.
void separate(std::vector<VolumeInterval>& logged, std::vector<RecordProblem>& problems) {
    std::sort(logged.begin(), logged.end(), [](const VolumeInterval& a, const VolumeInterval& b) {
        return std::pair(a.from, a.to) < std::pair(b.from, b.to);
    });
    std::vector<VolumeInterval> kept;
    kept.reserve(logged.size());
    for (const VolumeInterval& v : logged) {
        if (kept.empty() || v.from >= kept.back().to) {
            kept.push_back(v);
            continue;
        }
        const Instant until = std::min(v.to, kept.back().to);
        problems.push_back(
            {ProblemKind::overlap, v.from, until, part_of(v, v.from, until).volume});
        if (v.to > until) kept.push_back(part_of(v, until, v.to));
    }
    logged = std::move(kept);
}

/// Register differences clipped to the time that no logged volume covers, then both in order.
std::vector<VolumeInterval> merged(const std::vector<VolumeInterval>& registers,
                                   const std::vector<VolumeInterval>& logged) {
    if (logged.empty()) return registers;
    std::vector<VolumeInterval> all = logged;
    std::size_t k = 0;
    for (const VolumeInterval& r : registers) {
        while (k < logged.size() && logged[k].to <= r.from) ++k;
        Instant from = r.from;
        for (std::size_t j = k; j < logged.size() && logged[j].from < r.to; ++j) {
            if (logged[j].from > from) all.push_back(part_of(r, from, logged[j].from));
            from = std::max(from, logged[j].to);
        }
        if (from < r.to) all.push_back(part_of(r, from, r.to));
    }
    std::sort(all.begin(), all.end(), [](const VolumeInterval& a, const VolumeInterval& b) {
        return a.from < b.from;
    });
    return all;
}

/// Running sums of one period.
struct Sum {
    double total = 0.0;
    double allotted = 0.0;   // measured, but reaches outside the period
    double estimates = 0.0;
    double size = 0.0;       // sum of absolute volumes: shares stay in 0 to 1 with backward flow
    double seconds = 0.0;
};

PeriodUse as_use(const Sum& s, double period_seconds) {
    PeriodUse use;
    if (s.seconds <= 0) return use;
    use.volume = Volume::from_si(s.total);
    use.covered_share = s.seconds / period_seconds;
    if (s.size > 0) {
        use.from_estimates = s.estimates / s.size;
        use.estimated_share = (s.estimates + s.allotted) / s.size;
    }
    return use;
}

void add_part(Sum& sum, const VolumeInterval& v, Instant from, Instant to) {
    const double seconds = seconds_between(from, to);
    const bool whole = from == v.from && to == v.to;
    const double part = whole ? v.volume.si()
                              : v.volume.si() * seconds / seconds_between(v.from, v.to);
    sum.total += part;
    sum.size += std::abs(part);
    sum.seconds += seconds;
    if (v.estimated) {
        sum.estimates += std::abs(part);
    } else if (!whole) {
        sum.allotted += std::abs(part);
    }
}

}  // namespace

Volume volume_per_count(const Meter& meter, Instant at) {
    Register now(meter);
    for (const Exchange& e : meter.exchanges) {
        if (e.at <= at) now.change(e);
    }
    return now.era.per_count;
}

std::optional<double> register_difference(double first, double second, std::optional<int> digits) {
    const double plain = second - first;
    if (!digits) return plain < 0 ? std::nullopt : std::optional(plain);
    const double range = std::pow(10.0, *digits);
    const double back = backward_share() * range;
    if (plain < -back) return plain + range;
    if (plain >= range - back && plain <= range) return plain - range;  // back through zero
    return plain;
}

MeterRecord meter_record(const Meter& meter, std::span<const Reading> readings) {
    MeterRecord record;
    RegisterWalk walk(meter, record);
    std::vector<VolumeInterval> logged;
    for (const Reading& r : readings) {
        if (r.span.count() == 0) {
            walk.read(r);
        } else {
            const Instant start = r.at - r.span;
            logged.push_back(
                {start, r.at, r.value * volume_per_count(meter, start), is_estimate(r)});
        }
    }
    walk.finish();
    if (!logged.empty()) {
        separate(logged, record.problems);
        record.intervals = merged(record.intervals, logged);
    }
    return record;
}

std::vector<PeriodUse> use_between(std::span<const VolumeInterval> intervals,
                                   std::span<const Instant> edges) {
    if (edges.size() < 2) return {};
    const std::size_t periods = edges.size() - 1;
    std::vector<Sum> sums(periods);
    std::size_t k = 0;
    for (const VolumeInterval& v : intervals) {
        while (k < periods && edges[k + 1] <= v.from) ++k;
        for (std::size_t j = k; j < periods && edges[j] < v.to; ++j) {
            const Instant from = std::max(v.from, edges[j]);
            const Instant to = std::min(v.to, edges[j + 1]);
            if (from < to) add_part(sums[j], v, from, to);
        }
    }
    std::vector<PeriodUse> uses;
    uses.reserve(periods);
    for (std::size_t j = 0; j < periods; ++j) {
        uses.push_back(as_use(sums[j], seconds_between(edges[j], edges[j + 1])));
    }
    return uses;
}

std::vector<DayUse> daily_use(std::span<const VolumeInterval> intervals,
                              const calendar::TimeZone& zone, calendar::Date from,
                              calendar::Date to) {
    std::vector<Instant> edges;
    for (calendar::Date d = from; d <= to; d += std::chrono::days{1}) {
        edges.push_back(zone.start_of_day(d));
    }
    edges.push_back(zone.start_of_day(to + std::chrono::days{1}));
    std::vector<DayUse> days;
    calendar::Date date = from;
    for (const PeriodUse& p : use_between(intervals, edges)) {
        days.push_back({date, p.volume, p.estimated_share > 0, p.estimated_share, p.covered_share});
        date += std::chrono::days{1};
    }
    return days;
}

std::vector<MonthUse> monthly_use(std::span<const VolumeInterval> intervals,
                                  const calendar::TimeZone& zone, calendar::Month from,
                                  calendar::Month to) {
    std::vector<Instant> edges;
    for (calendar::Month m = from; m <= to; m = calendar::plus_months(m, 1)) {
        edges.push_back(zone.start_of_day(calendar::first_day(m)));
    }
    edges.push_back(zone.start_of_day(calendar::first_day(calendar::plus_months(to, 1))));
    std::vector<MonthUse> months;
    calendar::Month month = from;
    for (const PeriodUse& p : use_between(intervals, edges)) {
        const double days = p.covered_share * calendar::days_in(month);
        months.push_back({month, p.volume, p.estimated_share, static_cast<int>(std::lround(days)),
                          p.from_estimates});
        month = calendar::plus_months(month, 1);
    }
    return months;
}

std::vector<DayUse> daily_use(const Meter& meter, std::span<const Reading> readings,
                              const calendar::TimeZone& zone, calendar::Date from,
                              calendar::Date to) {
    return daily_use(meter_record(meter, readings).intervals, zone, from, to);
}

std::vector<MonthUse> monthly_use(const Meter& meter, std::span<const Reading> readings,
                                  const calendar::TimeZone& zone, calendar::Month from,
                                  calendar::Month to) {
    return monthly_use(meter_record(meter, readings).intervals, zone, from, to);
}

std::vector<VolumeInterval> spread_by_weight(std::span<const VolumeInterval> intervals,
                                             const DayWeights& weights,
                                             const calendar::TimeZone& zone) {
    const auto weight_of = [&](calendar::Date d) -> std::optional<double> {
        const auto i = (d - weights.first).count();
        if (i < 0 || i >= static_cast<long>(weights.weights.size())) return std::nullopt;
        return weights.weights[static_cast<std::size_t>(i)];
    };
    std::vector<VolumeInterval> out;
    for (const VolumeInterval& v : intervals) {
        std::vector<VolumeInterval> pieces;
        std::vector<double> parts;
        double sum = 0.0;
        bool known = true;
        Instant from = v.from;
        while (from < v.to) {
            const calendar::Date d = zone.day_of(from);
            const Instant to = std::min(v.to, zone.start_of_day(d + std::chrono::days{1}));
            const auto w = weight_of(d);
            known = known && w.has_value();
            parts.push_back(w.value_or(0.0) * seconds_between(from, to));
            sum += parts.back();
            pieces.push_back({from, to, Volume{}, true});
            from = to;
        }
        if (pieces.size() < 2 || !known || sum <= 0) {
            out.push_back(v);
            continue;
        }
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            pieces[i].volume = parts[i] / sum * v.volume;
            out.push_back(pieces[i]);
        }
    }
    return out;
}

std::vector<std::size_t> meters_in_turn(std::span<const Meter> meters, std::string_view code) {
    const auto find = [&](auto&& wanted) -> std::optional<std::size_t> {
        for (std::size_t i = 0; i < meters.size(); ++i) {
            if (wanted(meters[i])) return i;
        }
        return std::nullopt;
    };
    auto at = find([&](const Meter& m) { return m.code == code; });
    if (!at) return {};
    std::vector<std::size_t> chain{*at};
    const auto is_new = [&](std::size_t i) {  // a circle in the records must not hang us
        return std::find(chain.begin(), chain.end(), i) == chain.end();
    };
    while (!meters[chain.front()].replaces.empty()) {
        at = find([&](const Meter& m) { return m.code == meters[chain.front()].replaces; });
        if (!at || !is_new(*at)) break;
        chain.insert(chain.begin(), *at);
    }
    while (true) {
        at = find([&](const Meter& m) { return m.replaces == meters[chain.back()].code; });
        if (!at || !is_new(*at)) break;
        chain.push_back(*at);
    }
    return chain;
}

std::vector<VolumeInterval> records_in_turn(std::span<const MeterRecord> records) {
    std::vector<VolumeInterval> all;
    for (const MeterRecord& r : records) {
        all.insert(all.end(), r.intervals.begin(), r.intervals.end());
    }
    std::vector<RecordProblem> cut;  // two meters side by side for a while: no finding of its own
    separate(all, cut);
    return all;
}

std::vector<MonthUnaccounted> unaccounted(std::span<const MonthUse> master,
                                          std::span<const std::vector<MonthUse>> submeters) {
    std::vector<MonthUnaccounted> months;
    for (std::size_t i = 0; i < master.size(); ++i) {
        MonthUnaccounted m{master[i].month, master[i].volume, Volume{}, std::nullopt};
        for (const std::vector<MonthUse>& sub : submeters) {
            const auto part = i < sub.size() ? sub[i].volume : std::nullopt;
            if (!part) {
                m.submeters.reset();
                break;
            }
            *m.submeters += *part;
        }
        if (submeters.empty()) m.submeters.reset();
        if (m.master && m.submeters) m.unaccounted = *m.master - *m.submeters;
        months.push_back(m);
    }
    return months;
}

}  // namespace evenfall::meter
