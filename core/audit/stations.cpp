// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/stations.h"

#include "core/audit/sample.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>

namespace evenfall::audit {
namespace {

bool read_after_every_station(const CatchTest& test) {
    return std::all_of(test.catches.begin(), test.catches.end(), [](const Catch& c) {
        return !c.excluded.empty() || !c.by_station.empty();
    });
}

double reading_of(const Catch& c, const std::string& station) {
    for (const StationCatch& s : c.by_station) {
        if (s.station == station) return s.reading;
    }
    return 0.0;
}

}  // namespace

std::optional<units::Duration> run_time(const CatchTest& test) {
    if (test.stations.size() > 1) return std::nullopt;
    if (test.minutes) return *test.minutes * units::minute;
    if (test.stations.size() == 1) return test.stations.front().minutes * units::minute;
    return std::nullopt;
}

StationSplit split_stations(const CatchTest& test) {
    if (auto issues = check(test); !issues.empty()) throw InputError(std::move(issues));
    StationSplit split;
    if (test.stations.size() < 2) return split;
    const bool told = read_after_every_station(test);
    if (!told) {
        split.why_not = "the cans were read once after all stations, so one station's rate cannot be told";
    }
    for (const StationRun& run : test.stations) {
        StationFigures f{run.station, run.minutes * units::minute, {}, 0, std::nullopt, std::nullopt};
        if (told) {
            units::Depth water;
            std::size_t cans = 0;
            for (const Catch& c : test.catches) {
                if (!c.excluded.empty()) continue;
                Catch one = c;
                one.reading = reading_of(c, run.station);
                water += depth_of(test, one);
                ++cans;
                if (one.reading > 0.0) ++f.wetted;
            }
            f.mean = water / static_cast<double>(cans);
            f.area_rate = f.mean / f.run;
            if (f.wetted > 0) f.wetted_rate = water / static_cast<double>(f.wetted) / f.run;
        }
        split.stations.push_back(std::move(f));
    }
    return split;
}

CatchTest with_minutes(const CatchTest& test, const std::map<std::string, double>& minutes) {
    if (auto issues = check(test); !issues.empty()) throw InputError(std::move(issues));
    if (test.stations.empty() || !read_after_every_station(test)) {
        throw InputError(phrase("audit", "cans read once"), phrase("audit", "cans read after every station"));
    }
    for (const auto& [station, m] : minutes) {
        const bool known = std::any_of(test.stations.begin(), test.stations.end(),
                                       [&s = station](const StationRun& r) { return r.station == s; });
        if (!known) throw InputError(station, phrase("audit", "one of the stations that ran"));
        if (!(std::isfinite(m) && m >= 0.0)) {
            throw InputError(units::format_shortest(m), phrase("audit", "minutes of zero or more"));
        }
    }
    CatchTest changed = test;
    changed.stations.clear();
    std::map<std::string, double> factor;
    for (const StationRun& run : test.stations) {
        const auto it = minutes.find(run.station);
        const double m = it == minutes.end() ? run.minutes : it->second;
        factor[run.station] = m / run.minutes;
        if (m > 0.0) changed.stations.push_back({run.station, m});
    }
    for (Catch& c : changed.catches) {
        std::vector<StationCatch> kept;
        double sum = 0.0;
        for (const StationCatch& s : c.by_station) {
            const double f = factor.at(s.station);
            if (f > 0.0) kept.push_back({s.station, s.reading * f});
            sum += s.reading * f;
        }
        c.by_station = std::move(kept);
        c.reading = sum;
    }
    if (changed.stations.size() == 1) changed.minutes = changed.stations.front().minutes;
    return changed;
}

}  // namespace evenfall::audit
