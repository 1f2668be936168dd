// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meter/use.h"

#include "tests/meter/records.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::meter;
using namespace std::chrono_literals;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using tests::at;
using tests::logged;
using tests::meter_in;
using tests::reg;

namespace {
using std::chrono::April;
using std::chrono::February;
using std::chrono::January;
using std::chrono::July;
using std::chrono::March;
using std::chrono::November;
using std::chrono::year;

MonthUse month(const Meter& m, const std::vector<Reading>& readings, calendar::Month which,
               const std::string& zone = "UTC0") {
    return monthly_use(m, readings, calendar::TimeZone(zone), which, which).front();
}
}  // namespace

// DERIVED. Proration example of the reference notes, section 12: 12 Jan to 10 Feb (29 days)
// 58 HCF, 10 Feb to 12 Mar (30 days in a 28-day February) 75 HCF; February is
// 9 x 2.0 + 19 x 2.5 = 65.5 HCF.
TEST_CASE("a month across two billing periods", "[meter][derived]") {
    const Meter m = meter_in("ccf");
    const std::vector<Reading> readings{reg("2023-01-12T00:00:00Z", 100),
                                        reg("2023-02-10T00:00:00Z", 158),
                                        reg("2023-03-12T00:00:00Z", 233)};
    const MonthUse feb = month(m, readings, year{2023} / February);
    REQUIRE(feb.volume);
    CHECK_THAT(feb.volume->in(units::hundred_cubic_feet), WithinAbs(65.5, 1e-9));
    CHECK(feb.days_covered == 28);
    CHECK_THAT(feb.estimated_share, WithinAbs(1.0, 1e-12));  // no reading falls on its edges
    CHECK_THAT(feb.from_estimates, WithinAbs(0.0, 1e-12));
    const auto all = monthly_use(m, readings, calendar::TimeZone(), year{2023} / January,
                                 year{2023} / March);
    double sum = 0;
    for (const auto& part : all) sum += part.volume->in(units::hundred_cubic_feet);
    CHECK_THAT(sum, WithinAbs(133.0, 1e-9));
}

// PUBLISHED. NIST Handbook 44 (2023) appendix C and SP 811 appendix B: exact or printed values.
//   1 ft3 = 7.480 519 gal (printed), 1 acre-foot = 325 851 gal (printed), 1 gal = 3.785 412 L,
//   1 m3 = 264.172 05 gal (printed 264.172)
TEST_CASE("register units against printed conversions", "[meter][published]") {
    struct Row { const char* unit; double gallons; double tolerance; };
    const auto row = GENERATE(values<Row>({{"gal", 1, 1e-12},
                                           {"hgal", 100, 1e-10},
                                           {"kgal", 1000, 1e-9},
                                           {"ft3", 7.480519, 5e-7},
                                           {"ccf", 748.0519, 5e-5},
                                           {"m3", 264.172, 5e-4},
                                           {"acre_ft", 325851, 0.5},
                                           {"acre_in", 27154.3, 0.05}}));
    CAPTURE(row.unit);
    const MonthUse use = month(meter_in(row.unit),
                               {reg("2024-07-01T00:00:00Z", 10), reg("2024-08-01T00:00:00Z", 11)},
                               year{2024} / July);
    CHECK_THAT(use.volume->in(units::us_gallon), WithinAbs(row.gallons, row.tolerance));
    CHECK(use.estimated_share == 0.0);
}

// CONSTRUCTED, worked by hand.
TEST_CASE("a register that passes its last number goes on from zero", "[meter][constructed]") {
    Meter m = meter_in("gal");
    m.digits = 6;
    m.multiplier = 10;
    const std::vector<Reading> readings{reg("2024-07-01T00:00:00Z", 999'900),
                                        reg("2024-08-01T00:00:00Z", 250)};
    const MonthUse use = month(m, readings, year{2024} / July);
    CHECK_THAT(use.volume->in(units::us_gallon), WithinAbs(3500, 1e-9));  // (100 + 250) x 10
    CHECK(meter_record(m, readings).problems.empty());
}

// CONSTRUCTED, worked by hand.
TEST_CASE("water that ran back is a negative volume and a problem", "[meter][constructed]") {
    Meter m = meter_in("gal");
    m.digits = 6;
    const std::vector<Reading> readings{reg("2024-07-01T00:00:00Z", 500),
                                        reg("2024-07-02T00:00:00Z", 480),
                                        reg("2024-08-01T00:00:00Z", 980)};
    const MeterRecord record = meter_record(m, readings);
    REQUIRE(record.problems.size() == 1);
    CHECK(record.problems[0].kind == ProblemKind::ran_backward);
    CHECK_THAT(record.problems[0].volume.in(units::us_gallon), WithinAbs(-20, 1e-9));
    const MonthUse use = month(m, readings, year{2024} / July);
    CHECK_THAT(use.volume->in(units::us_gallon), WithinAbs(480, 1e-9));
    CHECK(*register_difference(3, 999'990, 6) == -13);  // back through zero
    CHECK(*register_difference(10, 600'000, 6) == 599'990);  // a whole season at once
}

// CONSTRUCTED.
TEST_CASE("a fall without known digits is no volume", "[meter][constructed]") {
    const Meter m = meter_in("gal");
    const std::vector<Reading> readings{reg("2024-07-01T00:00:00Z", 5000),
                                        reg("2024-07-11T00:00:00Z", 100),
                                        reg("2024-08-01T00:00:00Z", 2200)};
    const MeterRecord record = meter_record(m, readings);
    REQUIRE(record.problems.size() == 1);
    CHECK(record.problems[0].kind == ProblemKind::register_fell);
    const MonthUse use = month(m, readings, year{2024} / July);
    CHECK_THAT(use.volume->in(units::us_gallon), WithinAbs(2100, 1e-9));
    CHECK(use.days_covered == 21);
}

// CONSTRUCTED, worked by hand: 40 kgal on the old register, then 3 x 100 gal = 0.3 and
// 120 x 100 gal on the new one, which counts in hundreds.
TEST_CASE("a register exchanged in mid-month", "[meter][constructed]") {
    Meter m = meter_in("kgal");
    m.exchanges.push_back({at("2024-07-11T12:00:00Z"), 1040.0, 3.0,
                           units::unit_named<units::Volume>("hgal"), std::nullopt, 5});
    const std::vector<Reading> readings{reg("2024-07-01T00:00:00Z", 1000),
                                        reg("2024-08-01T00:00:00Z", 123)};
    const MonthUse use = month(m, readings, year{2024} / July);
    CHECK_THAT(use.volume->in(units::us_gallon), WithinAbs(40'000 + 12'000, 1e-6));
    CHECK(use.estimated_share == 0.0);

    SECTION("a reading at the very moment, of the old register or of the new") {
        for (double value : {1040.0, 3.0}) {
            auto more = readings;
            more.insert(more.begin() + 1, reg("2024-07-11T12:00:00Z", value));
            CHECK_THAT(month(m, more, year{2024} / July).volume->in(units::us_gallon),
                       WithinAbs(52'000, 1e-6));
            CHECK(meter_record(m, more).problems.empty());
        }
    }
    SECTION("no reading of the new register yet") {
        const MonthUse early = month(m, {readings.front()}, year{2024} / July);
        CHECK_THAT(early.volume->in(units::us_gallon), WithinAbs(40'000, 1e-6));
        CHECK(early.days_covered == 11);  // 10.5 days
    }
}

// CONSTRUCTED. A meter taken out and another put in, each with a row of its own.
TEST_CASE("meters that stood at one place after one another", "[meter][constructed]") {
    std::vector<Meter> meters(3, meter_in("gal"));
    meters[0].code = "new";
    meters[0].replaces = "old";
    meters[1].code = "other";
    meters[2].code = "old";
    CHECK(meters_in_turn(meters, "old") == std::vector<std::size_t>{2, 0});
    CHECK(meters_in_turn(meters, "new") == std::vector<std::size_t>{2, 0});
    CHECK(meters_in_turn(meters, "other") == std::vector<std::size_t>{1});
    CHECK(meters_in_turn(meters, "none").empty());
    meters[2].replaces = "new";  // a circle
    CHECK(meters_in_turn(meters, "old").size() == 2);

    const std::vector<MeterRecord> records{
        meter_record(meters[2], std::vector<Reading>{reg("2024-07-01T00:00:00Z", 0),
                                                     reg("2024-07-11T00:00:00Z", 100)}),
        meter_record(meters[0], std::vector<Reading>{reg("2024-07-11T00:00:00Z", 7),
                                                     reg("2024-08-01T00:00:00Z", 57)})};
    const auto joined = records_in_turn(records);
    const auto use = monthly_use(joined, calendar::TimeZone(), year{2024} / July,
                                 year{2024} / July);
    CHECK_THAT(use[0].volume->in(units::us_gallon), WithinAbs(150, 1e-9));
}

// CONSTRUCTED, worked by hand. Clocks in this zone go forward on 10 March 2024 at 02:00 and back
// on 3 November 2024 at 02:00, so these days have 23 and 25 hours.
TEST_CASE("days on which the clock is changed", "[meter][constructed]") {
    const calendar::TimeZone zone("PST8PDT,M3.2.0,M11.1.0");
    const Meter m = meter_in("gal");
    SECTION("spring: 10 gal/h from 9 March 00:00 to 12 March 00:00 local, 71 hours") {
        const std::vector<Reading> readings{reg("2024-03-09T08:00:00Z", 0),
                                            reg("2024-03-12T07:00:00Z", 710)};
        const auto days = daily_use(m, readings, zone, calendar::make_date(2024, 3, 9),
                                    calendar::make_date(2024, 3, 11));
        CHECK_THAT(days[0].volume->in(units::us_gallon), WithinAbs(240, 1e-9));
        CHECK_THAT(days[1].volume->in(units::us_gallon), WithinAbs(230, 1e-9));
        CHECK_THAT(days[2].volume->in(units::us_gallon), WithinAbs(240, 1e-9));
        CHECK(days[1].estimated);
    }
    SECTION("autumn: 25 hours") {
        const std::vector<Reading> readings{reg("2024-11-02T07:00:00Z", 0),
                                            reg("2024-11-05T08:00:00Z", 730)};
        const auto days = daily_use(m, readings, zone, calendar::make_date(2024, 11, 2),
                                    calendar::make_date(2024, 11, 4));
        CHECK_THAT(days[0].volume->in(units::us_gallon), WithinAbs(240, 1e-9));
        CHECK_THAT(days[1].volume->in(units::us_gallon), WithinAbs(250, 1e-9));
        CHECK_THAT(days[2].volume->in(units::us_gallon), WithinAbs(240, 1e-9));
    }
}

// CONSTRUCTED, worked by hand: 290 gal from 1 February to 1 March, 29 days in 2024.
TEST_CASE("a leap day has its share", "[meter][constructed]") {
    const Meter m = meter_in("gal");
    const std::vector<Reading> readings{reg("2024-01-31T00:00:00Z", 0),
                                        reg("2024-03-02T00:00:00Z", 310)};
    CHECK_THAT(month(m, readings, year{2024} / February).volume->in(units::us_gallon),
               WithinAbs(290, 1e-9));
    const auto days = daily_use(m, readings, calendar::TimeZone(), calendar::make_date(2024, 2, 29),
                                calendar::make_date(2024, 2, 29));
    CHECK_THAT(days[0].volume->in(units::us_gallon), WithinAbs(10, 1e-9));
}

// CONSTRUCTED.
TEST_CASE("logged volumes, quarter-hourly, with an overlap and a register beside them",
          "[meter][constructed]") {
    const Meter m = meter_in("gal");
    std::vector<Reading> readings{logged("2024-07-01T00:15:00Z", 900, 5),
                                  logged("2024-07-01T00:30:00Z", 900, 7)};
    CHECK_THAT(month(m, readings, year{2024} / July).volume->in(units::us_gallon),
               WithinAbs(12, 1e-12));
    SECTION("the part that was logged twice is left out and reported") {
        readings.push_back(logged("2024-07-01T00:45:00Z", 1800, 10));  // from 00:15
        const MeterRecord record = meter_record(m, readings);
        REQUIRE(record.problems.size() == 1);
        CHECK(record.problems[0].kind == ProblemKind::overlap);
        CHECK_THAT(record.problems[0].volume.in(units::us_gallon), WithinAbs(5, 1e-9));
        CHECK_THAT(month(m, readings, year{2024} / July).volume->in(units::us_gallon),
                   WithinAbs(17, 1e-9));
    }
    SECTION("a register fills only the time that was not logged") {
        readings.insert(readings.begin(), reg("2024-07-01T00:00:00Z", 0));
        readings.push_back(reg("2024-07-01T01:00:00Z", 40));
        // 12 logged in the first half hour; the register's 40 gal/h for the second half: 20
        CHECK_THAT(month(m, readings, year{2024} / July).volume->in(units::us_gallon),
                   WithinAbs(32, 1e-9));
    }
}

// CONSTRUCTED: one estimated reading between two measured ones, 100 + 300 gal in the month.
TEST_CASE("estimated readings show as a share", "[meter][constructed]") {
    const Meter m = meter_in("gal");
    const std::vector<Reading> readings{
        reg("2024-07-01T00:00:00Z", 0), reg("2024-07-11T00:00:00Z", 100),
        reg("2024-07-21T00:00:00Z", 300, ReadingKind::estimated),
        reg("2024-08-01T00:00:00Z", 400)};
    const MonthUse use = month(m, readings, year{2024} / July);
    CHECK_THAT(use.from_estimates, WithinAbs(0.75, 1e-12));
    CHECK_THAT(use.estimated_share, WithinAbs(0.75, 1e-12));
}

TEST_CASE("no reading is no volume, and standing still is zero", "[meter][constructed]") {
    const Meter m = meter_in("gal");
    CHECK_FALSE(month(m, {}, year{2024} / July).volume.has_value());
    CHECK_FALSE(month(m, {reg("2024-07-01T00:00:00Z", 5)}, year{2024} / July).volume.has_value());
    const MonthUse still = month(
        m, {reg("2024-07-01T00:00:00Z", 5), reg("2024-08-01T00:00:00Z", 5)}, year{2024} / July);
    REQUIRE(still.volume);
    CHECK(still.volume->si() == 0.0);
    CHECK(still.estimated_share == 0.0);
}

// CONSTRUCTED: 36.5 h at 200 gpm = 438,000 gal.
TEST_CASE("hours of a pump at its rated flow", "[meter][constructed]") {
    Meter m = meter_in("gal");
    m.rated_flow = units::parse_measure<units::Flow>("200gpm");
    const MonthUse use = month(
        m, {reg("2024-07-01T00:00:00Z", 1200.5), reg("2024-08-01T00:00:00Z", 1237)},
        year{2024} / July);
    CHECK_THAT(use.volume->in(units::us_gallon), WithinAbs(438'000, 1e-6));
}

// CONSTRUCTED, worked by hand: 60 gal over two days with reference ET 4 and 8 mm: 20 and 40.
TEST_CASE("spreading by reference ET", "[meter][constructed]") {
    const Meter m = meter_in("gal");
    const auto record = meter_record(m, std::vector<Reading>{reg("2024-07-01T00:00:00Z", 0),
                                                             reg("2024-07-03T00:00:00Z", 60)});
    const calendar::TimeZone zone;
    const auto first = calendar::make_date(2024, 7, 1);
    const auto weighted = spread_by_weight(record.intervals, {first, {4, 8}}, zone);
    const auto days = daily_use(weighted, zone, first, first + std::chrono::days{1});
    CHECK_THAT(days[0].volume->in(units::us_gallon), WithinAbs(20, 1e-9));
    CHECK_THAT(days[1].volume->in(units::us_gallon), WithinAbs(40, 1e-9));
    CHECK(days[0].estimated);
    SECTION("weights that are missing or all zero leave it even") {
        for (const DayWeights& w : {DayWeights{first, {4}}, DayWeights{first, {0, 0}}}) {
            const auto even = daily_use(spread_by_weight(record.intervals, w, zone), zone, first,
                                        first);
            CHECK_THAT(even[0].volume->in(units::us_gallon), WithinAbs(30, 1e-9));
        }
    }
}

// CONSTRUCTED.
TEST_CASE("master meter less submeters", "[meter][constructed]") {
    const auto m = year{2024} / July;
    const auto gal = [](double v) { return v * units::us_gallon; };
    const std::vector<MonthUse> master{{m, gal(100), 0, 31, 0}};
    const std::vector<std::vector<MonthUse>> subs{{{m, gal(60), 0, 31, 0}}, {{m, gal(30), 0, 31, 0}}};
    CHECK_THAT(unaccounted(master, subs)[0].unaccounted->in(units::us_gallon), WithinAbs(10, 1e-9));
    const std::vector<std::vector<MonthUse>> lacking{{{m, gal(60), 0, 31, 0}},
                                                     {{m, std::nullopt, 0, 0, 0}}};
    CHECK_FALSE(unaccounted(master, lacking)[0].unaccounted.has_value());
}
