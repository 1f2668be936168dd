// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season.h"
#include "core/budget/season_intervals.h"

#include "core/input_error.h"
#include "tests/budget/season_case.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace evenfall;
using namespace evenfall::budget;
using namespace evenfall::budget::test;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using calendar::make_date;
using units::inch;
using units::us_gallon;

namespace {

/// Gallons in an inch over an acre, exact: 43,560 x 144 / 231.
constexpr double acre_inch_gal = 27154.285714285714;

double gallons(const std::optional<units::Volume>& volume) { return volume.value().in(us_gallon); }

}  // namespace

// DERIVED by hand. Need 0.2 x 30 x 0.8 = 4.8 in over an acre = 130,340.5714 gal; budget / 0.85 =
// 153,341.8487; multiplier 4/3 from the cans, target 1/0.85.
TEST_CASE("a month of one area, worked by hand", "[budget][derived]") {
    const auto result = season(one_area_june());
    REQUIRE(result.areas.size() == 1);
    REQUIRE(result.months.size() == 1);
    const AreaMonth& m = result.areas[0].months[0];
    CHECK(m.flags.empty());
    CHECK(m.days_counted == 30.0);
    CHECK_THAT(m.reference_et.value().in(inch), WithinAbs(6.0, 1e-12));
    CHECK_THAT(m.need_depth.value().in(inch), WithinAbs(4.8, 1e-12));
    const double need = 4.8 * acre_inch_gal;
    CHECK_THAT(gallons(m.need), WithinAbs(need, 1e-6));
    CHECK_THAT(gallons(m.budget), WithinAbs(need / 0.85, 1e-6));
    CHECK_THAT(gallons(m.use), WithinAbs(200000.0, 1e-6));
    CHECK_THAT(gallons(m.over_budget), WithinAbs(200000.0 - need / 0.85, 1e-6));
    const WasteAccount& account = m.account.value();
    CHECK_THAT(account.used_by_turf.in(us_gallon), WithinAbs(need, 1e-6));
    CHECK_THAT(account.uneven_unavoidable.in(us_gallon), WithinAbs(need * (1 / 0.85 - 1), 1e-6));
    CHECK_THAT(account.uneven_avoidable.in(us_gallon), WithinAbs(need * (4 / 3. - 1 / 0.85), 1e-6));
    CHECK_THAT(account.over_scheduled.in(us_gallon), WithinAbs(200000 - need * 4 / 3, 1e-6));
    CHECK(account.leak == units::Volume{});
    CHECK(account.short_of_need == units::Volume{});

    // The site and the total are the same month.
    CHECK(result.months[0].account == m.account);
    CHECK(result.total.account == m.account);
    CHECK(gallons(result.total.outside_account) == 0.0);

    const UniformityChoice& choice = result.areas[0].uniformity.at(m.uniformity);
    CHECK_THAT(choice.achieved.value(), WithinRel(4.0 / 3.0, 1e-12));
    CHECK_THAT(choice.du_lq.value(), WithinRel(0.5, 1e-12));
    CHECK_THAT(choice.linear.value().value(), WithinRel(1 / 0.7, 1e-12));
    CHECK_THAT(choice.upper_bound.value().value(), WithinRel(2.0, 1e-12));
    CHECK_FALSE(choice.assumed);
}

// DERIVED by hand from FAO-29 Eq. 9: LR = 1.2 / (5 x 4 - 1.2) = 0.0638298; need 4.8 in / (1 - LR).
TEST_CASE("salty water adds its leaching requirement to the need", "[budget][derived]") {
    auto inputs = one_area_june();
    inputs.settings[0].salt = weather::SaltCase{1.2, 4.0};
    const auto result = season(inputs);
    const AreaMonth& m = result.areas[0].months[0];
    const double need = 4.8 / (1.0 - 1.2 / 18.8);
    CHECK_THAT(m.leaching, WithinRel(1.2 / 18.8, 1e-12));
    CHECK_THAT(m.need_depth.value().in(inch), WithinAbs(need, 1e-12));
    CHECK_THAT(gallons(m.budget), WithinAbs(need * acre_inch_gal / 0.85, 1e-6));
    CHECK(has_flag(m.flags, SeasonFlag::leaching_included));
    const auto salt_note = std::find_if(result.notes.begin(), result.notes.end(),
                                        [](const Note& n) { return n.topic == "leaching"; });
    REQUIRE(salt_note != result.notes.end());
    CHECK_THAT(salt_note->method.english(), Catch::Matchers::Contains("LR 0.064"));

    // The intervals lie around the same need.
    const auto intervals = season_intervals(inputs, result, {200, 0, 1, 0.90, 1});
    CHECK(intervals.total->need.low.in(us_gallon) < need * acre_inch_gal);
    CHECK(intervals.total->need.high.in(us_gallon) > need * acre_inch_gal);
}

// DERIVED by hand. New turf at 1.0 for the first 15 of 30 days, the record's 0.8 after: 0.9, 5.4 in.
TEST_CASE("new turf changes the coefficient of its days", "[budget][derived]") {
    auto in = one_area_june();
    const auto from = calendar::first_day(in.from);
    in.plantings = {{in.areas[0].code, weather::PlantingKind::establishment, from,
                     from + std::chrono::days{14}, "", 1.0},
                    {"elsewhere", weather::PlantingKind::shade, from, {}, "", 0.5}};
    const auto m = season(in).areas[0].months[0];
    CHECK_THAT(m.need_depth.value().in(inch), WithinAbs(5.4, 1e-12));
    CHECK_THAT(m.coefficient.value().value.value(), WithinAbs(0.9, 1e-12));
    in.plantings[0].coefficient = 9.0;
    CHECK_THROWS_AS(season(in), InputError);
}

// DERIVED. Leak 20,000 and 10 % off target: off (200,000 - 20,000) x 0.1 = 18,000.
TEST_CASE("leak and off-target water come off first", "[budget][derived]") {
    auto in = one_area_june();
    in.meters[0].leaks = {{in.from, 20000.0 * us_gallon}};
    in.settings[0].off_target = units::Share::of(0.1);
    const auto account = season(in).areas[0].months[0].account.value();
    CHECK_THAT(account.leak.in(us_gallon), WithinAbs(20000, 1e-6));
    CHECK_THAT(account.off_target.in(us_gallon), WithinAbs(18000, 1e-6));
    CHECK_THAT(account.over_scheduled.in(us_gallon), WithinAbs(0.0, 1e-6));
    CHECK_THAT(account.use().in(us_gallon), WithinAbs(200000, 1e-6));
}

// The NRCS equation itself is checked in tests/weather; here that a month uses it as a whole.
// DERIVED: 3 in of rain, crop ET 4.8 in, storage 3 in: 1.000674 x (0.70917 x 3^0.82416 - 0.11556)
// x 10^(0.02426 x 4.8) = 2.1434 in.
TEST_CASE("effective rain by the monthly form", "[budget][derived]") {
    auto in = one_area_june();
    in.rain = weather::parse_rain_rule("nrcs");
    for (auto& day : in.weather) day.rain = 0.1 * inch;
    const auto m = season(in).areas[0].months[0];
    CHECK_THAT(m.rain.value().in(inch), WithinAbs(3.0, 1e-9));
    CHECK_THAT(m.effective_rain.value().in(inch), WithinAbs(2.1434, 5e-5));
    CHECK_THAT(m.need_depth.value().in(inch), WithinAbs(4.8 - m.effective_rain.value().in(inch), 1e-12));
    in.rain = weather::parse_rain_rule("share:0.5");
    CHECK_THAT(season(in).areas[0].months[0].effective_rain.value().in(inch), WithinAbs(1.5, 1e-9));
}

TEST_CASE("what is not known is absent, not zero", "[budget]") {
    auto in = one_area_june();
    SECTION("no weather at all") {
        in.weather.clear();
        const auto m = season(in).areas[0].months[0];
        CHECK_FALSE(m.need.has_value());
        CHECK_FALSE(m.budget.has_value());
        CHECK_FALSE(m.account.has_value());
        CHECK_FALSE(m.over_budget.has_value());
        CHECK_THAT(gallons(m.use), WithinAbs(200000, 1e-6));
        CHECK_THAT(gallons(m.outside_account), WithinAbs(200000, 1e-6));
        CHECK(has_flag(m.flags, SeasonFlag::eto_missing));
    }
    SECTION("eleven scattered days without ETo") {
        for (std::size_t i = 0; i < 22; i += 2) in.weather[i].reference_et.reset();
        const auto m = season(in).areas[0].months[0];
        CHECK_FALSE(m.need.has_value());
        CHECK(has_flag(m.flags, SeasonFlag::eto_missing));
    }
    SECTION("five days in a row without ETo") {
        for (std::size_t i = 10; i < 15; ++i) in.weather[i].reference_et.reset();
        CHECK_FALSE(season(in).areas[0].months[0].need.has_value());
    }
    SECTION("a few days without ETo are filled with the mean, and say so") {
        for (std::size_t i = 10; i < 14; ++i) in.weather[i].reference_et.reset();
        const auto m = season(in).areas[0].months[0];
        CHECK_THAT(m.need_depth.value().in(inch), WithinAbs(4.8, 1e-12));
        CHECK(has_flag(m.flags, SeasonFlag::eto_filled));
    }
    SECTION("rows of the record that are not there are gaps too") {
        in.weather.erase(in.weather.begin() + 10, in.weather.begin() + 13);
        const auto m = season(in).areas[0].months[0];
        CHECK_THAT(m.need_depth.value().in(inch), WithinAbs(4.8, 1e-12));
        CHECK(has_flag(m.flags, SeasonFlag::eto_filled));
    }
    SECTION("rain not recorded under a rule that counts it") {
        in.rain = weather::parse_rain_rule("nrcs");
        for (auto& day : in.weather) day.rain.reset();
        const auto m = season(in).areas[0].months[0];
        CHECK_FALSE(m.need.has_value());
        CHECK(m.reference_et.has_value());
        CHECK(has_flag(m.flags, SeasonFlag::rain_missing));
    }
    SECTION("no readings") {
        in.meters[0].readings.clear();
        const auto result = season(in);
        const auto& m = result.areas[0].months[0];
        CHECK_FALSE(m.use.has_value());
        CHECK_FALSE(m.account.has_value());
        CHECK_THAT(gallons(m.need), WithinAbs(4.8 * acre_inch_gal, 1e-6));
        CHECK(has_flag(m.flags, SeasonFlag::no_readings));
        CHECK(has_flag(result.total.flags, SeasonFlag::months_missing));
        CHECK_FALSE(result.total.use.has_value());
    }
    SECTION("no meter, and one that is not there") {
        in.areas[0].meter.clear();
        CHECK(has_flag(season(in).areas[0].months[0].flags, SeasonFlag::no_meter));
        in.areas[0].meter = std::string("X");
        const auto result = season(in);
        CHECK(has_flag(result.areas[0].months[0].flags, SeasonFlag::no_meter));
        CHECK(result.findings.front().sentence == "Its meter X is not among the site's meters.");
        // The meter that is there feeds nothing now; its water is still the site's.
        CHECK_THAT(gallons(result.total.use), WithinAbs(200000, 1e-6));
        CHECK_THAT(gallons(result.total.outside_account), WithinAbs(200000, 1e-6));
    }
}

// DERIVED. The meter is read on 11 June and 1 July: 20 of 30 days, need 0.2 x 20 x 0.8 = 3.2 in.
TEST_CASE("a part of a month counts by its days", "[budget][derived]") {
    auto in = one_area_june();
    SECTION("of the meter") {
        in.meters = {meter_input("M", {{make_date(2023, 6, 11), 0}, {make_date(2023, 7, 1), 90000}})};
        in.rain = weather::parse_rain_rule("nrcs");
        for (auto& day : in.weather) day.rain = 0.1 * inch;
        const auto m = season(in).areas[0].months[0];
        CHECK(m.days_counted == 20.0);
        CHECK(has_flag(m.flags, SeasonFlag::meter_part_month));
        CHECK_THAT(m.landscape_et.value().in(inch), WithinAbs(3.2, 1e-12));
        // Two thirds of the whole month's effective rain.
        CHECK_THAT(m.effective_rain.value().in(inch), WithinAbs(2.1434 * 2 / 3, 5e-5));
        CHECK_THAT(gallons(m.use), WithinAbs(90000, 1e-6));
        CHECK_THAT(m.account.value().use().in(us_gallon), WithinAbs(90000, 1e-6));
    }
    SECTION("of the weather: use of the other days stays outside the account") {
        in.weather.resize(15);
        const auto m = season(in).areas[0].months[0];
        CHECK(m.days_counted == 15.0);
        CHECK(has_flag(m.flags, SeasonFlag::weather_part_month));
        CHECK_THAT(m.need_depth.value().in(inch), WithinAbs(2.4, 1e-12));
        CHECK_THAT(gallons(m.use), WithinAbs(200000, 1e-6));
        CHECK_THAT(gallons(m.outside_account), WithinAbs(100000, 1e-6));
        CHECK_THAT(m.account.value().use().in(us_gallon), WithinAbs(100000, 1e-6));
    }
    SECTION("of both, with no day in common") {
        in.weather.resize(10);
        in.meters = {meter_input("M", {{make_date(2023, 6, 11), 0}, {make_date(2023, 7, 1), 90000}})};
        const auto m = season(in).areas[0].months[0];
        CHECK_FALSE(m.account.has_value());
        CHECK_THAT(gallons(m.outside_account), WithinAbs(90000, 1e-6));
    }
}

// DERIVED. 2 and 1 acre at coefficients 0.8 and 0.4: weights 1.6 and 0.4, so 80 % and 20 %.
TEST_CASE("a shared meter is split by need, or as written down", "[budget][derived]") {
    auto in = one_area_june();
    in.areas = {area("A", 2.0, 0.8, "M"), area("B", 1.0, 0.4, "M")};
    in.settings = {};
    auto result = season(in);
    CHECK_THAT(gallons(result.areas[0].months[0].use), WithinAbs(160000, 1e-6));
    CHECK_THAT(gallons(result.areas[1].months[0].use), WithinAbs(40000, 1e-6));
    CHECK(has_flag(result.areas[0].months[0].flags, SeasonFlag::share_assumed));
    CHECK(has_flag(result.areas[1].months[0].flags, SeasonFlag::no_catch_test));
    CHECK(has_flag(result.areas[1].months[0].flags, SeasonFlag::off_target_assumed));

    in.areas[0].share = 0.5;
    in.areas[1].share = 0.5;
    result = season(in);
    CHECK_THAT(gallons(result.areas[1].months[0].use), WithinAbs(100000, 1e-6));
    CHECK_FALSE(has_flag(result.areas[1].months[0].flags, SeasonFlag::share_assumed));

    in.areas[1].share = 0.7;
    CHECK_THROWS_AS(season(in), InputError);
}

// DERIVED. Main meter 300,000, its submeter 200,000; a second main feeds area B.
TEST_CASE("a meter's own use leaves out the meters below it", "[budget][derived]") {
    auto in = one_area_june();
    const auto june = make_date(2023, 6, 1);
    const auto july = make_date(2023, 7, 1);
    in.meters.push_back(meter_input("MAIN", {{june, 0}, {july, 300000}}));
    in.meters[0].meter.parent = std::string("MAIN");
    SECTION("what the main shows beyond it is outside the account") {
        const auto result = season(in);
        CHECK_THAT(gallons(result.total.use), WithinAbs(300000, 1e-6));
        CHECK_THAT(gallons(result.total.outside_account), WithinAbs(100000, 1e-6));
        CHECK_THAT(result.total.account.value().use().in(us_gallon), WithinAbs(200000, 1e-6));
    }
    SECTION("an area on the main gets the rest") {
        in.areas.push_back(area("B", 1.0, 0.8, "MAIN"));
        const auto result = season(in);
        CHECK_THAT(gallons(result.areas[1].months[0].use), WithinAbs(100000, 1e-6));
        CHECK_THAT(gallons(result.total.use), WithinAbs(300000, 1e-6));
    }
    SECTION("submeters above the main") {
        in.meters[1] = meter_input("MAIN", {{june, 0}, {july, 150000}});
        in.areas.push_back(area("B", 1.0, 0.8, "MAIN"));
        const auto result = season(in);
        CHECK(gallons(result.areas[1].months[0].use) == 0.0);
        CHECK(has_flag(result.areas[1].months[0].flags, SeasonFlag::submeters_above));
    }
    SECTION("a circle of meters is refused") {
        in.meters[1].meter.parent = std::string("M");
        CHECK_THROWS_AS(season(in), InputError);
    }
}

// DERIVED. The old meter stood from 1 to 16 June and passed 80,000, the new one 120,000 after it.
TEST_CASE("meters that replaced one another are one place", "[budget][derived]") {
    auto in = one_area_june();
    const auto change = make_date(2023, 6, 16);
    in.meters = {meter_input("NEW", {{change, 5}, {make_date(2023, 7, 1), 120005}}),
                 meter_input("OLD", {{make_date(2023, 6, 1), 900}, {change, 80900}})};
    in.meters[0].meter.replaces = std::string("OLD");
    in.meters[0].leaks = {{in.from, 1000.0 * us_gallon}};
    in.meters[1].leaks = {{in.from, 500.0 * us_gallon}};
    for (const char* code : {"OLD", "NEW"}) {
        CAPTURE(code);
        in.areas[0].meter = std::string(code);
        const auto result = season(in);
        const AreaMonth& m = result.areas[0].months[0];
        CHECK(m.flags.empty());
        CHECK_THAT(gallons(m.use), WithinAbs(200000, 1e-6));
        CHECK_THAT(m.account.value().leak.in(us_gallon), WithinAbs(1500, 1e-6));
        CHECK(gallons(result.total.outside_account) == 0.0);
        REQUIRE(result.meters.size() == 1);
        CHECK(result.meters[0].meter == "OLD then NEW");
    }
    // One area may name the old meter and another the new: they share one place.
    in.areas.push_back(area("B", 1.0, 0.8, "OLD"));
    const auto result = season(in);
    CHECK_THAT(gallons(result.areas[0].months[0].use), WithinAbs(100000, 1e-6));
    CHECK_THAT(gallons(result.areas[1].months[0].use), WithinAbs(100000, 1e-6));
}

// DERIVED. June 100,000 (short 30,340.57), July 300,000 with need 4.96 in = 134,685.26.
TEST_CASE("months are not netted in the total", "[budget][derived]") {
    auto in = one_area_june();
    in.to = month(2023, 7);
    in.weather = weather_days(make_date(2023, 6, 1), make_date(2023, 7, 31), 0.2 * inch, {});
    in.meters = {meter_input("M", {{make_date(2023, 6, 1), 0}, {make_date(2023, 7, 1), 100000},
                                   {make_date(2023, 8, 1), 400000}})};
    const auto total = season(in).total;
    const double june = 4.8 * acre_inch_gal;
    const double july = 4.96 * acre_inch_gal;
    CHECK_THAT(total.account.value().short_of_need.in(us_gallon), WithinAbs(june - 100000, 1e-6));
    CHECK_THAT(gallons(total.over_budget), WithinAbs(300000 - july / 0.85, 1e-6));
    CHECK_THAT(total.account.value().used_by_turf.in(us_gallon), WithinAbs(100000 + july, 1e-6));
    CHECK_THAT(total.account.value().use().in(us_gallon), WithinAbs(400000, 1e-6));
}

TEST_CASE("the test that stands for a month", "[budget]") {
    auto in = one_area_june();
    in.to = month(2023, 8);
    in.tests = {catch_test("T2", "A", make_date(2023, 7, 20)),
                catch_test("T1", "A", make_date(2023, 7, 5)),
                catch_test("OTHER", "Z", make_date(2023, 6, 5))};
    in.tests[0].catches[0].reading = 20.0;  // more even: 20, 20, 20, 30
    const auto result = season(in);
    const auto& months = result.areas[0].months;
    const auto& choices = result.areas[0].uniformity;
    REQUIRE(choices.size() == 2);
    CHECK(has_flag(months[0].flags, SeasonFlag::test_later));
    CHECK(choices[months[0].uniformity].tests == std::vector<std::string>{"T1"});
    CHECK(choices[months[1].uniformity].tests == std::vector<std::string>{"T2"});
    CHECK(choices[months[2].uniformity].tests == std::vector<std::string>{"T2"});
    // Two tests of one day are averaged: DU_LH 0.75 and 20 / 22.5.
    in.tests[0].date = in.tests[1].date;
    const auto both = season(in).areas[0].uniformity;
    REQUIRE(both.size() == 1);
    CHECK(both[0].tests == std::vector<std::string>{"T1", "T2"});
    CHECK_THAT(both[0].achieved.value(), WithinRel((4 / 3. + 22.5 / 20) / 2, 1e-12));
}

TEST_CASE("planning values where there is no test", "[budget]") {
    auto in = one_area_june();
    in.tests.clear();
    auto area = season(in).areas[0];
    CHECK(area.uniformity.at(0).assumed);
    CHECK(has_flag(area.months[0].flags, SeasonFlag::no_catch_test));
    CHECK_FALSE(has_flag(area.months[0].flags, SeasonFlag::head_type_unknown));
    in.areas[0].head_type = std::string("whatever");
    CHECK(has_flag(season(in).areas[0].months[0].flags, SeasonFlag::head_type_unknown));
}

// DERIVED. 51.1 in over June would be absurd; here ETo 6 in, factor 0.55, 0.62 gal per ft2 and inch:
// 6 x 0.62 x 0.55 x 43,560 = 89,123.76 gal.
TEST_CASE("an ordinance holds use against the year", "[budget][derived]") {
    auto in = one_area_june();
    in.program = built_in_program("california-2015-residential");
    const auto result = season(in);
    CHECK_THAT(gallons(result.total.budget), WithinAbs(89123.76, 0.005));
    REQUIRE(result.years.size() == 1);
    CHECK(result.years[0].year == 2023);
    CHECK(result.years[0].months == 1);
    CHECK_THAT(result.years[0].over.in(us_gallon), WithinAbs(200000 - 89123.76, 0.005));
}

TEST_CASE("a season refuses what cannot be", "[budget]") {
    auto in = one_area_june();
    SECTION("a day twice") { in.weather[4].date = in.weather[3].date; }
    SECTION("days out of order") { std::swap(in.weather[4], in.weather[5]); }
    SECTION("negative rain") { in.weather[3].rain = -1.0 * inch; }
    SECTION("backward range") { in.to = month(2023, 5); }
    SECTION("area of zero") { in.areas[0].size.value = 0.0; }
    SECTION("an area twice") { in.areas.push_back(in.areas[0]); }
    SECTION("a meter twice") { in.meters.push_back(in.meters[0]); }
    SECTION("latitude") { in.station.latitude = 91.0; }
    SECTION("coefficient typed as a percentage") { in.areas[0].coefficient = 80.0; }
    CHECK_THROWS_AS(season(in), InputError);
}

TEST_CASE("every figure names its method", "[budget]") {
    const auto result = season(one_area_june());
    for (const char* topic : {"reference ET", "effective rain", "landscape coefficient",
                              "uniformity", "budget", "waste account", "use", "low quarter"}) {
        CAPTURE(topic);
        const auto it = std::find_if(result.notes.begin(), result.notes.end(),
                                     [&](const Note& n) { return n.topic == topic; });
        REQUIRE(it != result.notes.end());
        CHECK_FALSE(it->method.empty());
        CHECK_FALSE(it->source.empty());
    }
}
