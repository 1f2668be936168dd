// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/use_record.h"

#include "core/calendar/time_zone.h"
#include "core/meter/use.h"
#include "core/sentences.h"
#include "core/units/number.h"
#include "core/weather/effective_rain.h"
#include "core/weather/landscape_coefficient.h"
#include "core/weather/reference_et.h"

#include <GeographicLib/Geodesic.hpp>
#include <GeographicLib/PolygonArea.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace evenfall::review {
namespace {

using calendar::Month;

constexpr int most_missing_days = 3;  // of a month's weather

/// Reference ET and rain of a month as depths, days without a value filled by the mean of the rest.
struct MonthWeather {
    double et_m = 0.0;
    double rain_m = 0.0;
    int et_days = 0;
    int rain_days = 0;
};

weather::StationSetting station_setting(const Filing& f, std::vector<Sentence>& remarks) {
    weather::StationSetting setting;
    setting.latitude = f.weather.latitude.value_or(f.site.latitude);
    if (f.weather.elevation) {
        setting.elevation = f.weather.elevation->quantity();
    } else if (f.site.elevation) {
        setting.elevation = f.site.elevation->quantity();
    } else {
        remarks.emplace_back(phrase("review", "the elevation of the weather station is not recorded; sea level is assumed where reference ET is computed"));
    }
    if (f.weather.wind_height) setting.wind_height = f.weather.wind_height->quantity();
    return setting;
}

std::map<Month, MonthWeather> monthly_weather(const Filing& f, UseRecord& record) {
    const auto setting = station_setting(f, record.remarks);
    std::map<Month, MonthWeather> months;
    std::vector<Sentence> methods;
    for (const weather::SheetRow& row : f.weather.days) {
        const auto day = weather::converted(row, f.weather.units);
        MonthWeather& m = months[calendar::month_of(day.date)];
        const auto et = weather::reference_et(day, setting);
        if (et.et) {
            m.et_m += et.et->si();
            ++m.et_days;
            add_once(methods, et.method);
        }
        if (day.rain) {
            m.rain_m += day.rain->si();
            ++m.rain_days;
        }
    }
    std::sort(methods.begin(), methods.end(), [](const Sentence& a, const Sentence& b) { return a.english() < b.english(); });
    for (const Sentence& method : methods) {
        record.method = record.method.empty() ? method : Sentence(phrase("review", "%1 and %2"), record.method, method);
    }
    return months;
}

units::Depth effective_rain(const weather::RainRule& rule, units::Depth rain, units::Depth crop_et) {
    using Kind = weather::RainRule::Kind;
    switch (rule.kind) {
        case Kind::none: return {};
        case Kind::share: return weather::effective_rain_share(rain, crop_et, *rule.share);
        case Kind::nrcs_monthly:
        case Kind::daily_balance: break;
    }
    return weather::effective_rain_nrcs(rain, crop_et, rule.storage.value_or(3.0 * units::inch));
}

/// Net need of all areas in a month, or nothing when the weather does not reach.
std::optional<units::Volume> need_of(const Filing& f, Month month, const MonthWeather& w,
                                     const weather::RainRule& rule) {
    const int days = calendar::days_in(month);
    if (w.et_days < days - most_missing_days) return std::nullopt;
    if (rule.kind != weather::RainRule::Kind::none && w.rain_days < days - most_missing_days) return std::nullopt;
    const units::Depth et = units::Depth::from_si(w.et_m * days / w.et_days);
    const units::Depth rain = units::Depth::from_si(w.rain_days > 0 ? w.rain_m * days / w.rain_days : 0.0);
    units::Volume need;
    for (const FiledArea& a : f.areas) {
        const double k = weather::landscape_coefficient(a.area, month).value.value();
        const units::Depth crop_et = k * et;
        const units::Depth net = crop_et - effective_rain(rule, rain, crop_et);
        if (net.si() > 0.0) need += net * a.area.size.quantity();
    }
    return need;
}

/// Water of the meters at the top, as intervals of one record per place: a meter that took the
/// place of another carries its record on.
std::vector<std::vector<meter::VolumeInterval>> top_records(const Filing& f) {
    std::map<std::string, std::string> place;  // meter -> the first meter that stood there
    for (const FiledMeter& m : f.meters) {
        std::string first = m.meter.code;
        for (std::size_t step = 0; step < f.meters.size(); ++step) {
            const auto here = std::find_if(f.meters.begin(), f.meters.end(), [&](const FiledMeter& o) { return o.meter.code == first; });
            if (here == f.meters.end() || here->meter.replaces.empty()) break;
            first = here->meter.replaces;
        }
        place[m.meter.code] = first;
    }
    std::map<std::string, std::vector<meter::VolumeInterval>> records;
    for (const FiledMeter& m : f.meters) {
        if (!m.meter.parent.empty()) continue;
        const auto record = meter::meter_record(m.meter, m.readings);
        auto& into = records[place[m.meter.code]];
        into.insert(into.end(), record.intervals.begin(), record.intervals.end());
    }
    std::vector<std::vector<meter::VolumeInterval>> all;
    for (auto& [code, intervals] : records) {
        std::sort(intervals.begin(), intervals.end(), [](const auto& a, const auto& b) { return a.from < b.from; });
        all.push_back(std::move(intervals));
    }
    return all;
}

}  // namespace

UseRecord use_record(const Filing& f) {
    UseRecord record;
    if (!f.request.change) {
        record.remarks.emplace_back(phrase("review", "the filing does not say when the change was made"));
        return record;
    }
    if (f.weather.days.empty()) {
        record.remarks.emplace_back(phrase("review", "the filing holds no weather record"));
        return record;
    }
    const calendar::TimeZone zone(f.site.time_zone);
    const auto rule = weather::parse_rain_rule(f.conventions.rain);
    if (rule.kind == weather::RainRule::Kind::daily_balance) {
        record.remarks.emplace_back(phrase("review", "effective rain by the monthly NRCS form: a daily balance needs the soil at every can"));
    }
    const auto weather = monthly_weather(f, record);
    const auto records = top_records(f);
    const Month change_month = calendar::month_of(*f.request.change);
    const bool at_start = *f.request.change == calendar::first_day(change_month);
    const bool at_end = *f.request.change == calendar::last_day(change_month);
    int left_out = 0;
    for (const auto& [month, w] : weather) {
        const bool split = month == change_month && !at_start && !at_end;
        const auto need = need_of(f, month, w, rule);
        units::Volume use;
        bool metered = !records.empty();
        for (const auto& intervals : records) {
            const auto months = meter::monthly_use(intervals, zone, month, month);
            if (months.front().days_covered < calendar::days_in(month) || !months.front().volume) {
                metered = false;
                break;
            }
            use += *months.front().volume;
        }
        if (split || !need || !metered) {
            ++left_out;
            continue;
        }
        const bool after = month > change_month || (month == change_month && at_start);
        (after ? record.after : record.before)
            .push_back({calendar::first_day(month), static_cast<double>(calendar::days_in(month)), use, *need});
    }
    if (left_out > 0) {
        record.remarks.push_back({phrase("review", "%1 months were left out: not metered on every day, without enough weather, or holding the change"),
                                  left_out});
    }
    record.method = {phrase("review", "%1; effective rain %2; whole months, meters linear between readings"), record.method, rule.name()};
    return record;
}

std::optional<units::Area> outline_area(const std::vector<std::pair<double, double>>& outline) {
    if (outline.size() < 3) return std::nullopt;
    GeographicLib::PolygonArea polygon(GeographicLib::Geodesic::WGS84());
    for (const auto& [longitude, latitude] : outline) polygon.AddPoint(latitude, longitude);
    double perimeter = 0.0;
    double area = 0.0;
    polygon.Compute(false, true, perimeter, area);
    return units::Area::from_si(std::abs(area));
}

}  // namespace evenfall::review
