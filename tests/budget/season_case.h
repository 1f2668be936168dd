// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/season.h"

#include <string>
#include <utility>
#include <vector>

/// Small seasons to work out by hand.
namespace evenfall::budget::test {

inline calendar::Month month(int year, unsigned m) {
    return std::chrono::year{year} / std::chrono::month{m};
}

/// Recorded ETo and rain, the same every day, for the days given.
inline std::vector<weather::WeatherDay> weather_days(calendar::Date from, calendar::Date to,
                                                     units::Depth et, units::Depth rain) {
    std::vector<weather::WeatherDay> days;
    for (auto d = from; d <= to; d += std::chrono::days{1}) {
        weather::WeatherDay day;
        day.date = d;
        day.reference_et = et;
        day.rain = rain;
        days.push_back(day);
    }
    return days;
}

/// Register readings at midnight UTC.
inline MeterInput meter_input(const std::string& code,
                              const std::vector<std::pair<calendar::Date, double>>& gallons) {
    MeterInput input{{}, {}, std::vector<MonthLeak>{}};
    input.meter.code = code;
    input.meter.site = std::string("S");
    input.meter.unit = units::unit_named<units::Volume>("gal");
    for (const auto& [date, value] : gallons) {
        meter::Reading reading;
        reading.at = calendar::Instant{date};
        reading.value = value;
        input.readings.push_back(reading);
    }
    return input;
}

inline site::Area area(const std::string& code, double acres, double coefficient,
                       const std::string& meter) {
    site::Area area;
    area.code = code;
    area.site = std::string("S");
    area.size = {acres, units::unit_named<units::Area>("ac")};
    area.coefficient = coefficient;
    area.head_type = std::string("rotor");
    area.meter = meter;
    return area;
}

/// Depths 10, 20, 20, 30: DU_LH = 15 / 20, so the multiplier is 4 / 3.
inline audit::CatchTest catch_test(const std::string& code, const std::string& area,
                                   calendar::Date date) {
    audit::CatchTest test;
    test.code = code;
    test.area = area;
    test.date = date;
    test.catch_unit = audit::CatchUnit::millimetre;
    int can = 0;
    for (const double depth : {10.0, 20.0, 20.0, 30.0}) {
        audit::Catch one;
        one.can = std::to_string(++can);
        one.x = can;
        one.y = 0.0;
        one.reading = depth;
        test.catches.push_back(one);
    }
    return test;
}

/// One acre, coefficient 0.8, 0.2 in of ETo a day, 200,000 gal in June 2023.
inline SeasonInputs one_area_june() {
    SeasonInputs in{{}, {}, {}, {}, {}, {}, {}, built_in_program("general"),
                    month(2023, 6), month(2023, 6),
                    weather::parse_rain_rule("none"), audit::QuarterRule::part_can};
    in.site.code = std::string("S");
    in.site.latitude = 38.0;
    in.station.latitude = 38.0;
    in.areas = {area("A", 1.0, 0.8, "M")};
    const auto june = calendar::make_date(2023, 6, 1);
    const auto july = calendar::make_date(2023, 7, 1);
    in.meters = {meter_input("M", {{june, 1000.0}, {july, 201000.0}})};
    in.weather = weather_days(june, calendar::make_date(2023, 6, 30), 0.2 * units::inch,
                              units::Depth{});
    in.tests = {catch_test("T", "A", calendar::make_date(2023, 5, 20))};
    in.settings = {{"A", units::Share::of(0.0), "measured", false}};
    return in;
}

}  // namespace evenfall::budget::test
