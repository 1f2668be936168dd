// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/filing.h"

#include "core/input_error.h"

#include <algorithm>
#include <set>

namespace evenfall::review {
namespace {

units::Temperature temperature(double value, const std::string& unit) {
    if (unit == "c") return units::Temperature::celsius(value);
    if (unit == "f") return units::Temperature::fahrenheit(value);
    throw InputError(unit, "the temperature unit c or f");
}

units::Depth depth(double value, const std::string& unit) {
    if (unit == "mm") return value * units::millimetre;
    if (unit == "in") return value * units::inch;
    throw InputError(unit, "the depth unit mm or in");
}

units::Speed speed(double value, const std::string& unit) {
    if (unit == "m_s") return value * units::metre_per_second;
    if (unit == "mph") return value * units::mile_per_hour;
    if (unit == "km_d") return value * units::kilometre_per_day;
    throw InputError(unit, "the wind unit m_s, mph or km_d");
}

units::Insolation radiation(double value, const std::string& unit) {
    if (unit == "mj_m2") return value * units::megajoule_per_m2;
    if (unit == "langley") return value * units::langley;
    // A mean power over the day: 1 W/m2 for 86,400 s.
    if (unit == "w_m2") return value * units::Insolation::from_si(86400.0);
    throw InputError(unit, "the radiation unit mj_m2, w_m2 or langley");
}

template <class Convert>
auto maybe(const std::optional<double>& value, const std::string& unit, Convert convert)
    -> std::optional<decltype(convert(0.0, unit))> {
    if (!value) return std::nullopt;
    return convert(*value, unit);
}

/// Adds records of one kind, each code once.
template <class Record, class Code, class Same>
void merge(std::vector<Record>& into, const std::vector<Record>& more, const char* kind, Code code,
           Same same) {
    for (const Record& record : more) {
        const auto known = std::find_if(into.begin(), into.end(), [&](const Record& r) {
            return code(r) == code(record);
        });
        if (known == into.end()) {
            into.push_back(record);
        } else if (!same(*known, record)) {
            throw InputError(std::string(kind) + " " + printable(code(record)) + ", twice with unlike contents",
                             "filings that agree about it");
        }
    }
}

bool same_test(const FiledTest& a, const FiledTest& b) {
    return a.phase == b.phase && a.test.date == b.test.date && a.test.area == b.test.area &&
           a.test.catches.size() == b.test.catches.size() &&
           std::equal(a.test.catches.begin(), a.test.catches.end(), b.test.catches.begin(),
                      [](const audit::Catch& x, const audit::Catch& y) {
                          return x.can == y.can && x.reading == y.reading && x.excluded == y.excluded;
                      });
}

bool same_area(const FiledArea& a, const FiledArea& b) {
    return a.area.size.value == b.area.size.value && a.area.size.unit.name == b.area.size.unit.name &&
           a.area.meter == b.area.meter;
}

/// Readings of the same meter from two filings, the same reading once.
void merge_meter(std::vector<FiledMeter>& into, const FiledMeter& more) {
    const auto known = std::find_if(into.begin(), into.end(), [&](const FiledMeter& m) {
        return m.meter.code == more.meter.code;
    });
    if (known == into.end()) {
        into.push_back(more);
        return;
    }
    if (known->meter.unit.name != more.meter.unit.name || known->meter.multiplier != more.meter.multiplier) {
        throw InputError("meter " + printable(more.meter.code) + ", with two units or multipliers",
                         "filings that agree about it");
    }
    auto& readings = known->readings;
    readings.insert(readings.end(), more.readings.begin(), more.readings.end());
    std::stable_sort(readings.begin(), readings.end(),
                     [](const meter::Reading& a, const meter::Reading& b) { return a.at < b.at; });
    readings.erase(std::unique(readings.begin(), readings.end()), readings.end());
}

void merge_weather(FiledWeather& into, const FiledWeather& more) {
    if (more.days.empty()) return;
    if (into.days.empty()) {
        into = more;
        return;
    }
    if (into.station != more.station || into.units != more.units) {
        throw InputError("weather of two stations or in two sets of units", "one weather record");
    }
    into.days.insert(into.days.end(), more.days.begin(), more.days.end());
    std::stable_sort(into.days.begin(), into.days.end(),
                     [](const TypedWeatherDay& a, const TypedWeatherDay& b) { return a.date < b.date; });
    into.days.erase(std::unique(into.days.begin(), into.days.end()), into.days.end());
    for (std::size_t i = 1; i < into.days.size(); ++i) {
        if (into.days[i].date == into.days[i - 1].date) {
            throw InputError("weather of " + calendar::format_date(into.days[i].date) + ", twice and unlike",
                             "filings that agree about it");
        }
    }
}

template <class T>
void append(std::vector<T>& into, const std::vector<T>& more) {
    into.insert(into.end(), more.begin(), more.end());
}

}  // namespace

weather::WeatherDay in_si(const TypedWeatherDay& day, const WeatherUnits& units) {
    weather::WeatherDay si;
    si.date = day.date;
    si.tmax = maybe(day.tmax, units.temperature, temperature);
    si.tmin = maybe(day.tmin, units.temperature, temperature);
    si.tmean = maybe(day.tmean, units.temperature, temperature);
    si.tdew = maybe(day.tdew, units.temperature, temperature);
    si.rhmax_percent = day.rhmax;
    si.rhmin_percent = day.rhmin;
    si.rhmean_percent = day.rhmean;
    if (day.ea_kpa) si.vapour_pressure = *day.ea_kpa * units::kilopascal;
    si.solar = maybe(day.solar, units.radiation, radiation);
    if (day.sunshine_h) si.sunshine = *day.sunshine_h * units::hour;
    si.wind = maybe(day.wind, units.wind, speed);
    si.rain = maybe(day.rain, units.rain, depth);
    si.reference_et = maybe(day.reference_et, units.reference_et, depth);
    return si;
}

Filing together(const std::vector<Filing>& filings) {
    if (filings.empty()) throw InputError("no filing", "at least one");
    Filing all = filings.front();
    for (std::size_t i = 1; i < filings.size(); ++i) {
        const Filing& more = filings[i];
        if (more.site.code != all.site.code) {
            throw InputError("filings of the sites " + printable(all.site.code) + " and " + printable(more.site.code),
                             "filings of one site");
        }
        merge(all.areas, more.areas, "area", [](const FiledArea& a) { return a.area.code; }, same_area);
        merge(all.tests, more.tests, "test", [](const FiledTest& t) { return t.test.code; }, same_test);
        for (const FiledMeter& meter : more.meters) merge_meter(all.meters, meter);
        merge_weather(all.weather, more.weather);
        append(all.results, more.results);
        append(all.claims, more.claims);
        append(all.request.devices, more.request.devices);
        append(all.request.invoices, more.request.invoices);
        append(all.attachments, more.attachments);
        if (all.request.application.empty()) all.request.application = more.request.application;
        if (all.request.program.empty()) all.request.program = more.request.program;
        if (!all.request.change) all.request.change = more.request.change;
    }
    return all;
}

}  // namespace evenfall::review
