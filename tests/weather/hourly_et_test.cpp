// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/hourly_et.h"

#include "core/input_error.h"
#include "core/weather/sun.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <cmath>

using namespace evenfall;
using namespace evenfall::weather;
using namespace evenfall::units;
using namespace std::chrono_literals;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

/// N'Diaye, Senegal: 16 degrees 13 minutes north, 16 degrees 15 minutes west, 8 m. FAO-56 example 19
/// keeps its hours on the zone meridian 15 W, an hour behind UTC.
HourlySetting ndiaye(Equation equation, Surface surface) {
    HourlySetting s;
    s.station.latitude = 16.0 + 13.0 / 60.0;
    s.station.elevation = 8.0 * metre;
    s.station.surface = surface;
    s.station.equation = equation;
    s.longitude = -16.25;
    s.night_clearness = 0.8;
    return s;
}

calendar::Instant clock(int hour) {
    return calendar::make_date(2015, 10, 1) + std::chrono::hours{hour + 1};
}

WeatherHour hour_of(int start, double t, double rh, double wind, std::optional<double> rs) {
    WeatherHour h{clock(start)};
    h.temperature = Temperature::celsius(t);
    h.rh_percent = rh;
    h.wind = wind * metre_per_second;
    if (rs) h.solar = *rs * megajoule_per_m2;
    return h;
}

/// A made day: warm and clear, with sensible humidity, for the sums.
std::vector<WeatherHour> made_day() {
    std::vector<WeatherHour> hours;
    for (int h = 0; h < 24; ++h) {
        const HourPlace place{16.2167, 16.25, 15.0, 274, h + 0.5, 1.0};
        const double swing = std::sin(2.0 * 3.14159265 * (h - 8) / 24.0);
        hours.push_back(hour_of(h, 30.0 + 6.0 * swing, 70.0 - 20.0 * swing, 2.0,
                                0.7 * extraterrestrial(place)));
    }
    return hours;
}

}  // namespace

// PUBLISHED. FAO-56 example 19: 0.00 mm between 2 and 3 h, 0.63 mm between 14 and 15 h, and the
// lines of its sheet. The station's wind is at 2 m, where Eq. 47 gives a factor of 1.0002.
TEST_CASE("FAO-56 example 19, hourly", "[weather][published]") {
    const auto fao = Equation::fao_56;
    const HourPlace afternoon{16.0 + 13.0 / 60.0, 16.25, 15.0, 274, 14.5, 1.0};
    CHECK_THAT(hour_angle(afternoon), WithinAbs(0.682, 5e-4));
    CHECK_THAT(extraterrestrial(afternoon), WithinAbs(3.543, 5e-4));
    CHECK_THAT(clear_sky(extraterrestrial(afternoon), 8.0), WithinAbs(2.658, 5e-4));
    CHECK_THAT(longwave_of_hour(38.0, 3.445, cloud_factor(0.922, fao), fao),
               WithinAbs(0.137, 5e-4));
    CHECK_THAT(longwave_of_hour(28.0, 3.402, cloud_factor(0.8, fao), fao), WithinAbs(0.100, 5e-4));
    HourPlace night = afternoon;
    night.midpoint_hour = 2.5;
    CHECK_THAT(hour_angle(night), WithinAbs(-2.46, 5e-3));
    CHECK(extraterrestrial(night) == 0.0);

    const std::vector hours{hour_of(2, 28.0, 90.0, 1.9, std::nullopt),
                            hour_of(14, 38.0, 52.0, 3.3, 2.450)};
    const auto et = hourly_reference_et(hours, ndiaye(fao, Surface::short_grass));
    REQUIRE(et.size() == 2);
    CHECK_THAT(et[0].et->in(millimetre), WithinAbs(0.00, 5e-3));
    CHECK_THAT(et[0].et->in(millimetre), WithinAbs(0.0043, 5e-5));  // recomputed, not printed
    CHECK_THAT(et[0].flags.at(0), Contains("assumed, Rs/Rso 0.8"));
    CHECK_THAT(et[1].et->in(millimetre), WithinAbs(0.63, 5e-3));
    CHECK(et[1].flags.empty());
    CHECK(et[1].method == "FAO-56 Penman-Monteith hourly");
}

// DERIVED. The same hour with the constants of ASCE-EWRI 2005 written out by hand (Cn 37, Cd 0.24,
// G 0.1 Rn; tall 66, 0.25, 0.04), from the terms of example 19: D 0.35820 x 2503/2503.06,
// gamma 0.06730, Rs 2.450, es - ea 3.17990, u2 3.30073, and Rnl with sigma 2.042e-10.
TEST_CASE("hourly with the constants of ASCE-EWRI 2005", "[weather][derived]") {
    const double rnl = 2.042e-10 * std::pow(38.0 + 273.16, 4) *
                       (0.34 - 0.14 * std::sqrt(3.44488)) * (1.35 * 2.450 / 2.65810 - 0.35);
    const double rn = 0.77 * 2.450 - rnl;
    const double delta = 0.35820 * 2503.0 / (4098.0 * 0.6108);
    const auto by_hand = [&](double cn, double cd, double g) {
        return (0.408 * delta * rn * (1.0 - g) + 0.06730 * cn / 311.0 * 3.30073 * 3.17990) /
               (delta + 0.06730 * (1.0 + cd * 3.30073));
    };
    const std::vector hours{hour_of(14, 38.0, 52.0, 3.3, 2.450)};
    const auto grass =
        hourly_reference_et(hours, ndiaye(Equation::asce_2005, Surface::short_grass));
    const auto tall =
        hourly_reference_et(hours, ndiaye(Equation::asce_2005, Surface::tall_alfalfa));
    // The hand terms carry five digits.
    CHECK_THAT(grass[0].et->in(millimetre), WithinAbs(by_hand(37.0, 0.24, 0.1), 5e-5));
    CHECK_THAT(tall[0].et->in(millimetre), WithinAbs(by_hand(66.0, 0.25, 0.04), 5e-5));
    CHECK(grass[0].method == "ASCE-EWRI 2005 hourly, short surface");
}

// CONSTRUCTED. The night takes the cloud cover of the last bright hour, not of the first.
TEST_CASE("the cloud factor is carried through the night", "[weather][constructed]") {
    const auto setting = ndiaye(Equation::asce_2005, Surface::short_grass);
    auto clear = made_day();
    auto cloudy = made_day();
    for (int h = 12; h < 24; ++h) cloudy[static_cast<std::size_t>(h)].solar =
        0.4 * *cloudy[static_cast<std::size_t>(h)].solar;
    const auto a = hourly_reference_et(clear, setting);
    const auto b = hourly_reference_et(cloudy, setting);
    CHECK(a[2].et == b[2].et);    // before dawn: not yet known
    CHECK_FALSE(a[2].flags.empty());
    CHECK(b[22].et > a[22].et);   // after dusk: cloud keeps the heat in
    CHECK(b[22].flags.empty());
}

// CONSTRUCTED.
TEST_CASE("days of hours, complete and not", "[weather][constructed]") {
    const auto setting = ndiaye(Equation::asce_2005, Surface::short_grass);
    auto hours = made_day();
    const calendar::TimeZone zone("XXX1");  // an hour behind UTC
    const auto et = hourly_reference_et(hours, setting);
    const auto days = days_of(et, zone);
    REQUIRE(days.size() == 1);
    CHECK(days[0].date == calendar::make_date(2015, 10, 1));
    double sum = 0.0;
    for (const auto& h : et) sum += h.et->in(millimetre);
    CHECK_THAT(days[0].et->in(millimetre), WithinAbs(sum, 1e-12));
    CHECK(sum > 4.0);
    CHECK(sum < 9.0);

    hours[12].temperature.reset();
    const auto gap = days_of(hourly_reference_et(hours, setting), zone);
    CHECK_FALSE(gap[0].et);
    CHECK_THAT(gap[0].flags.back(), Contains("23.0 of 24 hours"));
}

// CONSTRUCTED. Quarter hours of the same weather add up to the hour; only the path of the sun
// within the hour differs, and Rs stays what it was.
TEST_CASE("shorter periods", "[weather][constructed]") {
    const auto setting = ndiaye(Equation::asce_2005, Surface::short_grass);
    const std::vector whole{hour_of(14, 38.0, 52.0, 3.3, 2.450)};
    std::vector<WeatherHour> quarters;
    for (int q = 0; q < 4; ++q) {
        auto h = whole.front();
        h.start += std::chrono::minutes{15 * q};
        h.length = 15.0 * minute;
        h.solar = 0.25 * *h.solar;
        quarters.push_back(h);
    }
    double sum = 0.0;
    for (const auto& q : hourly_reference_et(quarters, setting)) sum += q.et->in(millimetre);
    CHECK_THAT(sum, WithinAbs(hourly_reference_et(whole, setting)[0].et->in(millimetre), 2e-3));
}

// CONSTRUCTED. An hour with a gap stays empty; what cannot be is not used.
TEST_CASE("hours with gaps and impossible values", "[weather][constructed]") {
    const auto setting = ndiaye(Equation::asce_2005, Surface::short_grass);
    const auto one = [&](auto change) {
        auto h = hour_of(14, 38.0, 52.0, 3.3, 2.450);
        change(h);
        return hourly_reference_et(std::vector{h}, setting)[0];
    };
    CHECK_FALSE(one([](auto& h) { h.temperature.reset(); }).et);
    CHECK_FALSE(one([](auto& h) { h.temperature = Temperature::celsius(100.4); }).et);
    CHECK_FALSE(one([](auto& h) { h.rh_percent.reset(); }).et);
    CHECK_FALSE(one([](auto& h) { h.rh_percent = 520.0; }).et);
    CHECK_FALSE(one([](auto& h) { h.solar.reset(); }).et);
    CHECK_FALSE(one([](auto& h) { h.solar = 680.0 * megajoule_per_m2; }).et);
    CHECK_FALSE(one([](auto& h) { h.solar = -1.0 * megajoule_per_m2; }).et);
    const auto calm = one([](auto& h) { h.wind.reset(); });
    CHECK(calm.et);
    CHECK_THAT(calm.flags.back(), Contains("2 m/s assumed"));

    auto bad = setting;
    bad.longitude = 190.0;
    CHECK_THROWS_AS(hourly_reference_et(made_day(), bad), InputError);
    bad = setting;
    bad.night_clearness = 0.1;
    CHECK_THROWS_AS(hourly_reference_et(made_day(), bad), InputError);
    auto twice = made_day();
    twice[5].start = twice[4].start;
    CHECK_THROWS_WITH(hourly_reference_et(twice, setting), Contains("do not overlap"));
}
