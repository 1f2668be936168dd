// SPDX-License-Identifier: GPL-3.0-or-later
// Weather of a place from hours and from several stations. CONSTRUCTED where not said otherwise.
#include "core/weather/place_weather.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>
#include <cmath>

using namespace evenfall;
using namespace evenfall::weather;
using namespace evenfall::units;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

const calendar::Date july_1 = calendar::make_date(2024, 7, 1);

PlaceDay place_day(std::optional<double> et, std::optional<double> rain) {
    PlaceDay d;
    d.date = july_1;
    if (et) {
        d.et = *et * millimetre;
        d.method = "made up";
        d.source = citation("a source");
    }
    if (rain) d.rain = *rain * millimetre;
    return d;
}

PlaceDay mixed(const std::vector<StationDays>& stations, double power = 2.0) {
    const auto days = mixed_by_distance(stations, power);
    REQUIRE(days.size() == 1);
    return days.front();
}

/// A clear, even day of hours from midnight UTC on.
std::vector<WeatherHour> hours(int count) {
    std::vector<WeatherHour> out;
    for (int h = 0; h < count; ++h) {
        WeatherHour hour{calendar::Instant{july_1} + std::chrono::hours{h}};
        hour.temperature = Temperature::celsius(20.0 + 8.0 * std::sin((h - 9) / 24.0 * 6.2831853));
        hour.rh_percent = 50.0;
        hour.wind = 2.0 * metre_per_second;
        hour.solar = std::max(0.0, 2.5 * std::sin((h - 5.5) / 13.0 * 3.1415927)) * (h > 5 && h < 19 ? 1.0 : 0.0) *
                     megajoule_per_m2;
        hour.rain = 0.25 * millimetre;
        out.push_back(hour);
    }
    return out;
}

HourlySetting greenwich() {
    HourlySetting s;
    s.station.latitude = 40.0;
    s.station.elevation = 100.0 * metre;
    return s;
}

}  // namespace

// DERIVED from the definition: at 1, 2 and 2 units with p = 2 the weights are 1, 1/4, 1/4 over 3/2.
TEST_CASE("weights fall with the power of the distance", "[weather][derived]") {
    const std::vector<Length> d{1.0 * kilometre, 2.0 * kilometre, 2.0 * kilometre};
    const auto w = distance_weights(d, 2.0);
    CHECK_THAT(w[0], WithinAbs(2.0 / 3.0, 1e-12));
    CHECK_THAT(w[1], WithinAbs(1.0 / 6.0, 1e-12));
    CHECK_THAT(distance_weights(d, 1.0)[0], WithinAbs(0.5, 1e-12));
    // The unit of length is no matter.
    const std::vector<Length> feet{1.0 * foot, 2.0 * foot, 2.0 * foot};
    CHECK(std::abs(distance_weights(std::vector<Length>{1e4 * foot, 2e4 * foot, 2e4 * foot}, 2.0)[0] - w[0]) < 1e-12);
    CHECK(distance_weights(feet, 2.0)[0] > 0.0);
    const std::vector<Length> here{0.2 * metre, 5.0 * kilometre};
    CHECK(distance_weights(here, 2.0) == std::vector<double>{1.0, 0.0});
    CHECK_THROWS_AS(distance_weights({}, 2.0), InputError);
    CHECK_THROWS_AS(distance_weights(d, 0.0), InputError);
    CHECK_THROWS_AS(distance_weights(d, std::nan("")), InputError);
    CHECK_THROWS_AS(distance_weights(std::vector<Length>{-1.0 * metre}, 2.0), InputError);
}

TEST_CASE("ET and rain of stations are mixed each by itself", "[weather][derived]") {
    std::vector<StationDays> stations{{"near", 10.0 * kilometre, {place_day(6.0, 0.0)}},
                                      {"far", 20.0 * kilometre, {place_day(3.0, 10.0)}}};
    const auto both = mixed(stations);
    CHECK_THAT(both.et->in(millimetre), WithinAbs(0.8 * 6.0 + 0.2 * 3.0, 1e-12));
    CHECK_THAT(both.rain->in(millimetre), WithinAbs(2.0, 1e-12));
    CHECK(both.method == "made up, mixed by distance from near, far");
    CHECK(both.source.english() == "a source");
    CHECK(both.flags.empty());
    CHECK(both.remarks.empty());

    SECTION("a gap of one is carried by the other and said") {
        stations[0].days[0].et.reset();
        const auto d = mixed(stations);
        CHECK_THAT(d.et->in(millimetre), WithinAbs(3.0, 1e-12));
        CHECK_THAT(d.rain->in(millimetre), WithinAbs(2.0, 1e-12));
        REQUIRE(d.flags.size() == 1);
        CHECK(d.flags[0] == "no ET of near: the others' weights carry it");
        REQUIRE(d.remarks.size() == 1);
        CHECK(d.remarks[0] == d.flags[0]);
        stations[1].days.clear();
        const auto alone = mixed(stations);
        CHECK_FALSE(alone.et.has_value());
        CHECK(alone.rain->si() == 0.0);
        REQUIRE(alone.remarks.size() == 1);
        CHECK_THAT(alone.remarks[0].english(), Contains("no rain of far"));
    }
    SECTION("a station's own flags keep its name") {
        stations[1].days[0].flags = {"wind missing"};
        CHECK(mixed(stations).flags == std::vector<std::string>{"far: wind missing"});
    }
    SECTION("a station at the place stands alone, and the others fill its gaps") {
        stations[0].distance = 0.0 * metre;
        CHECK(mixed(stations).et->in(millimetre) == 6.0);
        CHECK(mixed(stations).flags.empty());
        stations[0].days[0].et.reset();
        CHECK_THAT(mixed(stations).et->in(millimetre), WithinAbs(3.0, 1e-12));
        CHECK_THAT(mixed(stations).flags.front(), Contains("no ET of near"));
    }
    SECTION("the order of the stations does not matter") {
        std::vector<StationDays> turned{stations[1], stations[0]};
        CHECK_THAT(mixed(turned).et->in(millimetre), WithinAbs(both.et->in(millimetre), 1e-12));
    }
    SECTION("stations that agree give what they agree on, whatever the power") {
        stations[1].days[0].et = 6.0 * millimetre;
        for (const double power : {0.5, 1.0, 2.0, 4.0}) {
            CHECK_THAT(mixed(stations, power).et->in(millimetre), WithinAbs(6.0, 1e-12));
        }
    }
}

TEST_CASE("days of records that overlap in part", "[weather][constructed]") {
    std::vector<StationDays> stations{{"a", 1.0 * kilometre, {}}, {"b", 1.0 * kilometre, {}}};
    for (int i = 0; i < 6; ++i) {
        PlaceDay d = place_day(i < 4 ? 2.0 : 4.0, 1.0);
        d.date = july_1 + std::chrono::days{i};
        if (i < 4) stations[0].days.push_back(d);
        if (i >= 2) stations[1].days.push_back(d);
    }
    const auto days = mixed_by_distance(stations, 2.0);
    REQUIRE(days.size() == 6);
    CHECK(days[0].remarks.size() == 2);
    CHECK(days[2].remarks.empty());
    CHECK(days[5].et->in(millimetre) == Approx(4.0));
    CHECK(std::is_sorted(days.begin(), days.end(), [](const auto& x, const auto& y) { return x.date < y.date; }));
}

TEST_CASE("a day's ET and rain are the sums of its hours", "[weather][constructed]") {
    const calendar::TimeZone utc;
    const auto whole = hours(24);
    const auto days = days_by_hours(whole, greenwich(), utc, {});
    REQUIRE(days.size() == 1);
    REQUIRE(days[0].et);
    double sum = 0.0;
    for (const auto& h : hourly_reference_et(whole, greenwich())) sum += h.et->in(millimetre);
    CHECK_THAT(days[0].et->in(millimetre), WithinAbs(sum, 1e-9));
    CHECK_THAT(days[0].rain->in(millimetre), WithinAbs(6.0, 1e-9));
    CHECK(days[0].method == "ASCE-EWRI 2005 hourly, short surface, summed by day");
    CHECK(days[0].remarks.empty());

    WeatherDay record;
    record.date = july_1;
    record.reference_et = 5.0 * millimetre;
    record.rain = 1.0 * millimetre;
    SECTION("whole hours stand before the daily record") {
        const std::vector daily{record};
        CHECK_THAT(days_by_hours(whole, greenwich(), utc, daily)[0].et->in(millimetre), WithinAbs(sum, 1e-9));
    }
    SECTION("a day that the hours do not cover takes the daily record, and says so") {
        const std::vector daily{record};
        const auto d = days_by_hours(hours(20), greenwich(), utc, daily)[0];
        CHECK(d.et->in(millimetre) == Approx(5.0));
        CHECK(d.rain->in(millimetre) == Approx(1.0));
        CHECK(d.method == "ETo as recorded by the station");
        REQUIRE(d.remarks.size() == 1);
        CHECK_THAT(d.remarks[0].english(), Contains("hours incomplete"));
        CHECK(d.flags.size() == 2);
    }
    SECTION("without a daily record there is no ET, and the rain is not known either") {
        const auto d = days_by_hours(hours(20), greenwich(), utc, {})[0];
        CHECK_FALSE(d.et.has_value());
        CHECK_FALSE(d.rain.has_value());
        CHECK_THAT(d.remarks.at(0).english(), Contains("no daily record"));
    }
    SECTION("days with a daily record alone stay, in order") {
        WeatherDay before = record;
        before.date = july_1 - std::chrono::days{1};
        WeatherDay after = record;
        after.date = july_1 + std::chrono::days{1};
        const std::vector daily{before, after};
        const auto all = days_by_hours(whole, greenwich(), utc, daily);
        REQUIRE(all.size() == 3);
        CHECK(all[0].et->in(millimetre) == Approx(5.0));
        CHECK(all[1].date == july_1);
        CHECK(all[2].remarks.empty());
    }
    SECTION("an hour without rain leaves the day's rain to the record") {
        auto dry = whole;
        dry[3].rain.reset();
        const std::vector daily{record};
        CHECK(days_by_hours(dry, greenwich(), utc, daily)[0].rain->in(millimetre) == Approx(1.0));
        CHECK_FALSE(days_by_hours(dry, greenwich(), utc, {})[0].rain.has_value());
    }
}
