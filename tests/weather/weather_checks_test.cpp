// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/weather_checks.h"

#include "core/weather/sun.h"
#include "tests/weather/csv_data.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

using namespace evenfall;
using namespace evenfall::weather;
using namespace evenfall::units;
using Catch::Matchers::Contains;
using std::chrono::days;

namespace {

StationSetting fallon() {
    StationSetting s;
    s.latitude = 39.4575;
    s.elevation = 1208.5 * metre;
    s.wind_height = 3.0 * metre;
    return s;
}

std::vector<WeatherDay> fallon_july() {
    std::vector<WeatherDay> record;
    for (const auto& row : test::read_data("agrimet-faln-2015-07.csv")) {
        WeatherDay day{calendar::parse_date(row.text("date")).value()};
        day.tmin = Temperature::fahrenheit(row.number("tmin_F"));
        day.tmax = Temperature::fahrenheit(row.number("tmax_F"));
        day.tdew = Temperature::fahrenheit(row.number("tdew_F"));
        day.solar = row.number("rs_langley") * langley;
        day.wind = row.number("wind_mph") * mile_per_hour;
        record.push_back(day);
    }
    return record;
}

const WeatherFinding* find(const std::vector<WeatherFinding>& all, const std::string& kind) {
    const auto it = std::find_if(all.begin(), all.end(),
                                 [&](const auto& f) { return f.kind == kind; });
    return it == all.end() ? nullptr : &*it;
}

/// The findings of July with one thing changed.
template <class Change>
std::vector<WeatherFinding> with(Change change) {
    auto record = fallon_july();
    change(record);
    return check_weather(record, fallon());
}

bool shows(const std::vector<WeatherFinding>& all, const std::string& kind, Severity severity) {
    const auto* f = find(all, kind);
    return f != nullptr && f->severity == severity && !f->sentence.empty() && !f->source.english().empty();
}

}  // namespace

// PUBLISHED data (a federal weather network's own month, published with its ET): nothing in it is
// impossible. Its arid nights put the dew point below Tmin, as FAO-56 annex 6 says of such places.
TEST_CASE("a good station month has nothing impossible", "[weather][published]") {
    const auto findings = check_weather(fallon_july(), fallon());
    for (const auto& f : findings) {
        CAPTURE(f.kind, f.sentence);
        CHECK(f.severity == Severity::suspect);
    }
    CHECK(find(findings, "gap") == nullptr);
    CHECK(findings.size() <= 2);
}

// CONSTRUCTED. Each fault alone is found, with its severity, sentence and source.
TEST_CASE("faults of a single day", "[weather][constructed]") {
    const auto impossible = Severity::impossible;
    const auto suspect = Severity::suspect;
    CHECK(shows(with([](auto& r) { std::swap(r[9].tmax, r[9].tmin); }), "minimum_above_maximum",
                impossible));
    CHECK(shows(with([](auto& r) { r[9].tmax = Temperature::celsius(98.6); }),
                "temperature_impossible", impossible));
    CHECK(shows(with([](auto& r) { r[9].tmin = Temperature::celsius(-80.0); }),
                "temperature_impossible", impossible));
    CHECK(shows(with([](auto& r) { r[9].tdew = Temperature::celsius(36.0); }),
                "dew_point_above_maximum", impossible));
    CHECK(shows(with([](auto& r) { r[9].tdew = Temperature::celsius(15.0); }),
                "dew_point_above_minimum", suspect));
    CHECK(shows(with([](auto& r) { r[9].tmin = Temperature::celsius(-25.0); }), "range_too_wide",
                suspect));
    CHECK(shows(with([](auto& r) { r[9].rhmax_percent = 103.0; }), "humidity_above_100", suspect));
    CHECK(shows(with([](auto& r) { r[9].rhmax_percent = 108.0; }), "humidity_impossible",
                impossible));
    CHECK(shows(with([](auto& r) { r[9].rhmin_percent = 0.0; }), "humidity_impossible",
                impossible));
    CHECK(shows(with([](auto& r) {
              r[9].rhmin_percent = 80.0;
              r[9].rhmax_percent = 40.0;
          }),
          "humidity_swapped", impossible));
    CHECK(shows(with([](auto& r) { r[9].rhmin_percent = 2.0; }), "humidity_very_low", suspect));
    CHECK(shows(with([](auto& r) { r[9].solar = 680.0 * megajoule_per_m2; }),
                "radiation_impossible", impossible));
    CHECK(shows(with([](auto& r) { r[9].solar = -1.0 * megajoule_per_m2; }),
                "radiation_impossible", impossible));
    CHECK(shows(with([](auto& r) { r[9].solar = 36.0 * megajoule_per_m2; }),
                "radiation_above_clear_sky", suspect));
    CHECK(shows(with([](auto& r) { r[9].solar = 0.5 * megajoule_per_m2; }), "radiation_very_low",
                suspect));
    CHECK(shows(with([](auto& r) { r[9].sunshine = 16.0 * hour; }), "sunshine_impossible",
                impossible));
    CHECK(shows(with([](auto& r) { r[9].wind = -1.0 * metre_per_second; }), "wind_impossible",
                impossible));
    CHECK(shows(with([](auto& r) { r[9].wind = 30.0 * metre_per_second; }), "wind_very_high",
                suspect));
    CHECK(shows(with([](auto& r) { r[9].rain = -0.2 * millimetre; }), "rain_impossible",
                impossible));
    CHECK(shows(with([](auto& r) { r[9].rain = 30.0 * inch; }), "rain_very_high", suspect));
    CHECK(shows(with([](auto& r) { r[9].reference_et = 8.0 * inch; }), "recorded_et_impossible",
                impossible));
    const auto one = with([](auto& r) { r[9].rain = -0.2 * millimetre; });
    CHECK(find(one, "rain_impossible")->from == calendar::make_date(2015, 7, 10));
    CHECK_THAT(find(one, "rain_impossible")->sentence.english(), Contains("-0.2 mm"));
}

// CONSTRUCTED.
TEST_CASE("gaps, days that come twice and any order", "[weather][constructed]") {
    const auto gap = with([](auto& r) { r.erase(r.begin() + 5, r.begin() + 9); });
    REQUIRE(find(gap, "gap") != nullptr);
    CHECK(find(gap, "gap")->from == calendar::make_date(2015, 7, 6));
    CHECK(find(gap, "gap")->to == calendar::make_date(2015, 7, 9));
    CHECK(find(gap, "gap")->days == 4);
    const auto twice = with([](auto& r) { r.push_back(r[3]); });
    REQUIRE(find(twice, "day_twice") != nullptr);
    CHECK(find(twice, "day_twice")->from == calendar::make_date(2015, 7, 4));
    const auto turned = with([](auto& r) { std::reverse(r.begin(), r.end()); });
    CHECK(turned.size() == check_weather(fallon_july(), fallon()).size());
}

// CONSTRUCTED. A sensor that sticks, a bearing that fails, a cell that reads low, a wrong unit.
TEST_CASE("faults that show over days", "[weather][constructed]") {
    const auto stuck = with([](auto& r) {
        for (std::size_t i = 10; i < 15; ++i) r[i].tmin = r[10].tmin;
    });
    REQUIRE(find(stuck, "stuck_tmin") != nullptr);
    CHECK(find(stuck, "stuck_tmin")->days == 5);
    CHECK(find(stuck, "stuck_tmin")->from == calendar::make_date(2015, 7, 11));
    CHECK(find(with([](auto& r) {
              for (std::size_t i = 10; i < 13; ++i) r[i].tmin = r[10].tmin;
          }),
          "stuck_tmin") == nullptr);
    // Dry weather and saturated air are not stuck sensors.
    CHECK(find(with([](auto& r) {
              for (auto& d : r) d.rain = Depth{};
          }),
          "stuck_rain") == nullptr);
    CHECK(find(with([](auto& r) {
              for (auto& d : r) d.rhmax_percent = 100.0;
          }),
          "stuck_rhmax") == nullptr);

    const auto calm = with([](auto& r) {
        for (std::size_t i = 3; i < 12; ++i) r[i].wind = (0.1 + 0.01 * static_cast<double>(i)) * metre_per_second;
    });
    REQUIRE(find(calm, "wind_always_low") != nullptr);
    CHECK(find(calm, "wind_always_low")->days == 9);
    CHECK(find(calm, "wind_always_low")->from == calendar::make_date(2015, 7, 4));

    const auto fahrenheit = with([](auto& r) {
        for (auto& d : r) {
            d.tmax = Temperature::celsius(d.tmax->in_fahrenheit());
            d.tmin = Temperature::celsius(d.tmin->in_fahrenheit());
        }
    });
    CHECK(find(fahrenheit, "temperature_impossible") != nullptr);
    CHECK(find(fahrenheit, "temperature_impossible")->days == 31);
    CHECK(find(fahrenheit, "night_too_warm") != nullptr);
    CHECK(find(fahrenheit, "temperatures_look_like_fahrenheit") != nullptr);

    const auto dry = with([](auto& r) {
        for (auto& d : r) d.rhmax_percent = 55.0 + static_cast<double>(d.date.time_since_epoch().count() % 7);
    });
    CHECK(find(dry, "humidity_never_high") != nullptr);
}

// CONSTRUCTED. A pyranometer that reads 12 % low for a year: every block of days says so; one that
// reads right never does.
TEST_CASE("a radiation sensor that reads low", "[weather][constructed]") {
    const auto year = [](double gain) {
        std::vector<WeatherDay> record;
        for (int i = 0; i < 365; ++i) {
            WeatherDay d{calendar::make_date(2015, 1, 1) + days{i}};
            const double ra = extraterrestrial(39.4575, calendar::day_of_year(d.date));
            const double clouds = i % 5 == 0 ? 1.0 : 0.4 + 0.1 * (i % 4);
            d.solar = gain * clouds * clear_sky(ra, 1208.5) * megajoule_per_m2;
            record.push_back(d);
        }
        return check_weather(record, fallon());
    };
    const auto low = year(0.88);
    REQUIRE(find(low, "radiation_reads_low") != nullptr);
    CHECK(find(low, "radiation_reads_low")->days >= 300);
    CHECK(find(year(1.0), "radiation_reads_low") == nullptr);
    CHECK(find(year(1.12), "radiation_above_clear_sky") != nullptr);
}

// CONSTRUCTED. What the checks call impossible, reference ET does not use.
TEST_CASE("checks and reference ET agree on what is impossible", "[weather][constructed]") {
    auto record = fallon_july();
    record[0].solar = 60.0 * megajoule_per_m2;
    record[1].wind = 70.0 * metre_per_second;
    record[2].tmax = Temperature::celsius(100.0);
    record[3].rhmax_percent = 140.0;
    record[3].tdew.reset();
    const auto findings = check_weather(record, fallon());
    for (std::size_t i = 0; i < 4; ++i) {
        const bool found = std::any_of(findings.begin(), findings.end(), [&](const auto& f) {
            return f.severity == Severity::impossible && f.from <= record[i].date &&
                   record[i].date <= f.to;
        });
        CAPTURE(i);
        CHECK(found);
        CHECK_FALSE(reference_et(record[i], fallon()).flags.empty());
    }
    CHECK(check_weather({}, fallon()).empty());
}
