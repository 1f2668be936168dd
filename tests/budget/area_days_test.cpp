// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/area_days.h"

#include "core/input_error.h"
#include "tests/budget/season_case.h"

#include <catch2/catch.hpp>

#include <numeric>

using namespace evenfall;
using namespace evenfall::budget;
using namespace evenfall::budget::test;
using Catch::Matchers::WithinAbs;
using calendar::make_date;
using units::Depth;
using units::millimetre;

namespace {

DailyWeather recorded(const std::vector<weather::WeatherDay>& days) {
    weather::StationSetting station;
    station.latitude = 38.0;
    return daily_weather(days, station, days.front().date, days.back().date);
}

}  // namespace

// DERIVED. Two days of 30 missing: the others sum to 28 x 5, filled to 150 mm.
TEST_CASE("days add up to the sums of their month, gaps filled", "[budget][derived]") {
    auto days = weather_days(make_date(2023, 6, 1), make_date(2023, 7, 31), 5.0 * millimetre,
                             1.0 * millimetre);
    days[3].reference_et.reset();
    days[9].reference_et.reset();
    days[9].rain.reset();
    const auto weather = recorded(days);
    const std::vector k{units::LandscapeCoefficient::of(0.8), units::LandscapeCoefficient::of(0.5)};
    const auto area = area_days(weather, month(2023, 6), k);
    REQUIRE(area.crop_et.size() == 61);
    const Depth june = std::accumulate(area.crop_et.begin(), area.crop_et.begin() + 30, Depth{});
    CHECK_THAT(june.in(millimetre), WithinAbs(150.0 * 0.8, 1e-9));
    CHECK_THAT(area.crop_et[30].in(millimetre), WithinAbs(2.5, 1e-12));
    CHECK_THAT(area.rain[9].in(millimetre), WithinAbs(1.0, 1e-12));
}

// DERIVED by hand. TAW 40 mm, p 0.5: readily 20 mm, start 10 mm short. ETc 6 mm.
// Day 1: rain 25, 15 drain, effective 10, D 0 + 6 = 6. Day 2: 12. Day 3: 18. Day 4: 24 > 20, refilled:
// 0. Day 5: rain 4 on a full soil: all drains, effective 0, D 6. Day 6: rain 3: effective 3, D 9.
TEST_CASE("effective rain by the daily balance", "[budget][derived]") {
    AreaDays area;
    area.first = make_date(2023, 6, 1);
    area.crop_et.assign(6, 6.0 * millimetre);
    area.rain = {25.0 * millimetre, {}, {}, {}, 4.0 * millimetre, 3.0 * millimetre};
    const auto effective = effective_rain_by_balance(area, 40.0 * millimetre, 0.5);
    const std::vector expected{10.0, 0.0, 0.0, 0.0, 0.0, 3.0};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        CAPTURE(i);
        CHECK_THAT(effective[i].in(millimetre), WithinAbs(expected[i], 1e-9));
    }
}

TEST_CASE("a season under the daily rain rule", "[budget]") {
    auto in = one_area_june();
    in.rain = weather::parse_rain_rule("balance");
    in.weather[12].rain = 0.2 * units::inch;
    const auto month_ = season(in).areas[0].months[0];
    CHECK(month_.effective_rain.value().si() > 0.0);
    CHECK(month_.effective_rain.value() <= 0.2 * units::inch);
    CHECK_THAT((*month_.landscape_et - *month_.effective_rain - *month_.need_depth).si(),
               WithinAbs(0.0, 1e-15));
    for (auto& day : in.weather) day.rain.reset();
    CHECK(has_flag(season(in).areas[0].months[0].flags, SeasonFlag::rain_missing));
}

TEST_CASE("weather sums: limits of what may be filled", "[budget][derived]") {
    auto days = weather_days(make_date(2023, 6, 1), make_date(2023, 6, 30), 5.0 * millimetre, {});
    for (std::size_t i = 0; i < 20; i += 2) days[i].reference_et.reset();
    const auto ten = recorded(days);
    CHECK(sum_weather(ten, make_date(2023, 6, 1), make_date(2023, 6, 30)).reference_et.has_value());
    CHECK(sum_weather(ten, make_date(2023, 6, 1), make_date(2023, 6, 30)).et_filled);
    days[22].reference_et.reset();
    const auto eleven = recorded(days);
    CHECK_FALSE(sum_weather(eleven, make_date(2023, 6, 1), make_date(2023, 6, 30)).reference_et);
    // Of ten days only a third may be missing.
    CHECK_FALSE(sum_weather(ten, make_date(2023, 6, 1), make_date(2023, 6, 10)).reference_et);
}
