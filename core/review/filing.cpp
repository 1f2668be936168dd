// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/filing.h"

#include "core/input_error.h"

#include <algorithm>
#include <set>

namespace evenfall::review {
namespace {

/// Adds records of one kind, each code once. @param form  what is said of one that occurs twice
template <class Record, class Code, class Same>
void merge(std::vector<Record>& into, const std::vector<Record>& more, PhraseOf<1> form, Code code,
           Same same) {
    for (const Record& record : more) {
        const auto known = std::find_if(into.begin(), into.end(), [&](const Record& r) {
            return code(r) == code(record);
        });
        if (known == into.end()) {
            into.push_back(record);
        } else if (!same(*known, record)) {
            throw InputError({form, printable(code(record))}, phrase("review", "filings that agree about it"));
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
        throw InputError({phrase("review", "meter %1, with two units or multipliers"), printable(more.meter.code)},
                         phrase("review", "filings that agree about it"));
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
    if (into.station != more.station || !(into.units == more.units)) {
        throw InputError(phrase("review", "weather of two stations or in two sets of units"), phrase("review", "one weather record"));
    }
    into.days.insert(into.days.end(), more.days.begin(), more.days.end());
    std::stable_sort(into.days.begin(), into.days.end(),
                     [](const weather::SheetRow& a, const weather::SheetRow& b) { return a.date < b.date; });
    into.days.erase(std::unique(into.days.begin(), into.days.end()), into.days.end());
    for (std::size_t i = 1; i < into.days.size(); ++i) {
        if (into.days[i].date == into.days[i - 1].date) {
            throw InputError({phrase("review", "weather of %1, twice and unlike"), calendar::format_date(into.days[i].date)},
                             phrase("review", "filings that agree about it"));
        }
    }
}

template <class T>
void append(std::vector<T>& into, const std::vector<T>& more) {
    into.insert(into.end(), more.begin(), more.end());
}

}  // namespace

Filing together(const std::vector<Filing>& filings) {
    if (filings.empty()) throw InputError(phrase("review", "no filing"), phrase("review", "at least one"));
    Filing all = filings.front();
    for (std::size_t i = 1; i < filings.size(); ++i) {
        const Filing& more = filings[i];
        if (more.site.code != all.site.code) {
            throw InputError({phrase("review", "filings of the sites %1 and %2"), printable(all.site.code), printable(more.site.code)},
                             phrase("review", "filings of one site"));
        }
        merge(all.areas, more.areas, phrase("review", "area %1, twice with unlike contents"), [](const FiledArea& a) { return a.area.code; }, same_area);
        merge(all.tests, more.tests, phrase("review", "test %1, twice with unlike contents"), [](const FiledTest& t) { return t.test.code; }, same_test);
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
