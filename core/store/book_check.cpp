// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book_check.h"

#include "core/calendar/time_zone.h"
#include "core/input_error.h"
#include "core/meter/screens.h"
#include "core/store/meter_store.h"
#include "core/store/site_store.h"
#include "core/store/weather_store.h"
#include "core/units/number.h"

#include <algorithm>
#include <map>

namespace evenfall::store {
namespace {

using Problems = std::vector<BookProblem>;

/// Shares typed with three decimals may add up to a little more.
constexpr double share_slack = 0.0015;

void check_installation(const meter::Meter& m, const std::vector<meter::Reading>& readings,
                        const calendar::TimeZone& zone, Problems& out) {
    if (readings.empty()) {
        out.push_back({Severity::gap, "meter " + m.code, {phrase("store", "Meter %1 has no readings."), m.code}});
        return;
    }
    const auto first = zone.day_of(readings.front().at - readings.front().span);
    const auto last = zone.day_of(readings.back().at);
    if (m.installed && first < *m.installed) {
        out.push_back({Severity::mistake, "meter " + m.code,
                       {phrase("store", "Meter %1 has a reading on %2, before it was installed on %3."), m.code,
                        calendar::format_date(first), calendar::format_date(*m.installed)}});
    }
    if (m.removed && last > *m.removed) {
        out.push_back({Severity::mistake, "meter " + m.code,
                       {phrase("store", "Meter %1 has a reading on %2, after it was removed on %3."), m.code,
                        calendar::format_date(last), calendar::format_date(*m.removed)}});
    }
}

void check_meter(const Book& book, const meter::Meter& m, const calendar::TimeZone& zone, Problems& out) {
    const auto readings = all_readings(book, m.code);
    check_installation(m, readings, zone, out);
    const auto record = meter::meter_record(m, readings);
    const meter::ScreenInput input{m, readings, record, zone};
    const auto add = [&](const std::vector<meter::MeterFinding>& findings, Severity severity) {
        for (const meter::MeterFinding& f : findings) {
            out.push_back({severity, "meter " + m.code, f.sentence.english()});
        }
    };
    add(meter::record_problems(input), Severity::mistake);
    add(meter::impossible_flow(input), Severity::mistake);
    add(meter::gaps(input), Severity::gap);
}

/// A meter that is, by way of its parents, upstream of itself.
void check_parents(const std::vector<meter::Meter>& all, Problems& out) {
    std::map<std::string, std::string> parent;
    for (const meter::Meter& m : all) parent[m.code] = m.parent;
    for (const meter::Meter& m : all) {
        std::string at = m.parent;
        for (std::size_t steps = 0; !at.empty() && steps <= all.size(); ++steps) {
            if (at == m.code) {
                out.push_back({Severity::mistake, "meter " + m.code,
                               {phrase("store", "Meter %1 stands upstream of itself by way of its parents."), m.code}});
                break;
            }
            const auto next = parent.find(at);
            at = next == parent.end() ? std::string() : next->second;
        }
    }
}

void check_shares(const Book& book, Problems& out) {
    std::map<std::string, double> shares;
    std::map<std::string, int> count;
    for (const site::Area& a : areas(book, "")) {
        if (a.meter.empty() || !a.share) continue;
        shares[a.meter] += *a.share;
        ++count[a.meter];
    }
    for (const auto& [code, sum] : shares) {
        if (sum <= 1 + share_slack * count[code]) continue;
        out.push_back({Severity::mistake, "meter " + code,
                       {phrase("store", "The shares of meter %1 add up to %2, more than the whole."), code,
                        units::format_shortest(sum)}});
    }
}

void check_weather(const Book& book, const WeatherStation& station, Problems& out) {
    const auto days = weather_days(book, station.code, calendar::make_date(calendar::first_year, 1, 1),
                                   calendar::make_date(calendar::last_year, 12, 31));
    const std::string record = "weather station " + station.code;
    for (std::size_t i = 0; i < days.size(); ++i) {
        const auto& d = days[i];
        if (d.tmax && d.tmin && *d.tmin > *d.tmax) {
            out.push_back({Severity::mistake, record,
                           {phrase("store", "On %1 station %2 has a lowest temperature above the highest."),
                            calendar::format_date(d.date), station.code}});
        }
        if (i == 0 || d.date == days[i - 1].date + std::chrono::days{1}) continue;
        const auto missing = (d.date - days[i - 1].date).count() - 1;
        const std::string after = calendar::format_date(days[i - 1].date);
        out.push_back({Severity::gap, record,
                       missing == 1 ? Sentence(phrase("store", "Station %1 lacks 1 day after %2."), station.code, after)
                                    : Sentence(phrase("store", "Station %1 lacks %2 days after %3."), station.code,
                                               missing, after)});
    }
}

/// The weather stations that a site names, and their places where it mixes several.
void check_stations(const Book& book, const site::Site& s, Problems& out) {
    const auto codes = site::weather_codes(s);
    const bool mixed = codes.size() > 1;
    const std::string record = "site " + s.code;
    if (mixed && !s.longitude) {
        out.push_back({Severity::gap, record,
                       {phrase("store", "Site %1 mixes weather stations by distance and has no longitude."), s.code}});
    }
    for (const std::string& code : codes) {
        const auto station = find_weather_station(book, code);
        if (!station) {
            out.push_back({Severity::gap, record,
                           {phrase("store", "Site %1 names weather station %2, which has no days in the book."), s.code, code}});
        } else if (mixed && (!station->latitude || !station->longitude)) {
            out.push_back({Severity::gap, record,
                           {phrase("store", "Site %1 mixes weather station %2 by distance, whose place is not recorded."), s.code,
                            code}});
        }
    }
}

}  // namespace

std::string_view text_of(Severity severity) {
    switch (severity) {
        case Severity::damage: return "damage";
        case Severity::mistake: return "mistake";
        case Severity::gap: return "gap";
    }
    return "";
}

std::vector<BookProblem> check_book(const Book& book) {
    Problems out;
    for (Sentence& line : book.integrity_problems()) {
        out.push_back({Severity::damage, "book", std::move(line)});
    }
    if (!out.empty()) return out;
    const auto all_meters = meters(book, "");
    check_parents(all_meters, out);
    check_shares(book, out);
    for (const site::Site& s : sites(book)) {
        check_stations(book, s, out);
        try {
            const calendar::TimeZone zone(s.time_zone);
            for (const meter::Meter& m : all_meters) {
                if (m.site == s.code) check_meter(book, m, zone, out);
            }
        } catch (const InputError& e) {
            for (const Issue& issue : e.issues()) {
                out.push_back({Severity::mistake, "site " + s.code, issue.sentence()});
            }
        }
    }
    for (const WeatherStation& w : weather_stations(book)) check_weather(book, w, out);
    return out;
}

}  // namespace evenfall::store
