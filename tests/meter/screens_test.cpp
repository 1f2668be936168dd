// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/meter/screens.h"

#include "core/meter/screen_text.h"
#include "tests/meter/records.h"

#include <catch2/catch.hpp>

#include <functional>

// All CONSTRUCTED: records made here with a known fault, and the same record without it.
using namespace evenfall;
using namespace evenfall::meter;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;
using std::chrono::July;
using std::chrono::year;
using tests::at;
using tests::logged;
using tests::meter_in;
using tests::reg;

namespace {

/// Hourly volumes in gallons from 1 July 2024 on, `gallons(day, hour)`.
std::vector<Reading> hourly(int days, const std::function<double(int, int)>& gallons) {
    std::vector<Reading> out;
    calendar::Instant t = at("2024-07-01T00:00:00Z");
    for (int d = 0; d < days; ++d) {
        for (int h = 0; h < 24; ++h) {
            t += std::chrono::hours{1};
            out.push_back({t, std::chrono::hours{1}, gallons(d, h), ReadingKind::measured});
        }
    }
    return out;
}

struct Case {
    explicit Case(std::vector<Reading> r, Meter m = meter_in("gal"))
        : meter(std::move(m)), readings(std::move(r)), record(meter_record(meter, readings)) {}
    ScreenInput input() const { return {meter, readings, record, zone}; }
    Meter meter;
    std::vector<Reading> readings;
    MeterRecord record;
    calendar::TimeZone zone;
};

double irrigation(int h) { return h >= 20 && h < 23 ? 6000 : 0; }

}  // namespace

TEST_CASE("a leak shows as days without a still hour", "[meter][constructed]") {
    // 300 gal/h from day 10 to day 19, both included: 10 days x 24 h x 300 = 72,000 gal.
    const Case with(hourly(30, [](int d, int h) {
        return irrigation(h) + (d >= 10 && d < 20 ? 300 : 0);
    }));
    const auto found = never_zero_days(with.input());
    REQUIRE(found.size() == 1);
    CHECK(found[0].from == calendar::make_date(2024, 7, 11));
    CHECK(found[0].to == calendar::make_date(2024, 7, 20));
    CHECK(found[0].confidence == Confidence::high);
    CHECK_THAT(found[0].volume->in(units::us_gallon), WithinAbs(72'000, 1e-6));
    CHECK_THAT(found[0].sentence.english(), Catch::Matchers::Contains("72,000 gal"));
    const auto months = leak_by_month(with.input(), year{2024} / July, year{2024} / July);
    CHECK_THAT(months[0].volume.in(units::us_gallon), WithinAbs(72'000, 1e-6));
    CHECK(months[0].days == 10);
    CHECK(months[0].screened);

    const Case without(hourly(30, [](int, int h) { return irrigation(h); }));
    CHECK(never_zero_days(without.input()).empty());
    CHECK(leak_by_month(without.input(), year{2024} / July, year{2024} / July)[0].volume.si() == 0);
}

TEST_CASE("two leaking days are too few, a day of irrigation round the clock adds no leak",
          "[meter][constructed]") {
    const Case two(hourly(30, [](int d, int h) { return irrigation(h) + (d == 4 || d == 5 ? 9 : 0); }));
    CHECK(never_zero_days(two.input()).empty());
    const Case one_long_day(hourly(30, [](int d, int) { return d == 14 ? 6000.0 : 100.0; }));
    const auto found = never_zero_days(one_long_day.input());
    // The running flow of this meter is 100 gal/h most of the time, so it counts as round the clock.
    REQUIRE(found.size() == 1);
    CHECK_FALSE(found[0].volume.has_value());
    CHECK(found[0].confidence == Confidence::low);
    const Case leak_and_long_day(hourly(30, [](int d, int h) {
        return (d == 14 ? 6000.0 : irrigation(h)) + 100;
    }));
    const auto leak = never_zero_days(leak_and_long_day.input());
    REQUIRE(leak.size() == 1);
    CHECK_THAT(leak[0].volume->in(units::us_gallon), WithinAbs(30 * 24 * 100, 1e-6));
}

TEST_CASE("monthly readings cannot show a leak by the hour", "[meter][constructed]") {
    const Case c({reg("2024-06-01T00:00:00Z", 0), reg("2024-09-01T00:00:00Z", 9000)});
    CHECK(never_zero_days(c.input()).empty());
    CHECK_FALSE(leak_by_month(c.input(), year{2024} / July, year{2024} / July)[0].screened);
}

TEST_CASE("daily readings show a leak where some days are not irrigated", "[meter][constructed]") {
    // Every other day 20,000 gal; from day 20 to day 49 another 2,000 gal each day.
    const auto record = [](bool leaking, int every) {
        std::vector<Reading> days;
        double sum = 0;
        for (int d = 0; d <= 80; ++d) {
            days.push_back({at("2024-05-01T06:00:00Z") + std::chrono::days{d}, {}, sum});
            sum += (d % every == 0 ? 20'000 : 0) + (leaking && d >= 20 && d < 50 ? 2'000 : 0);
        }
        return days;
    };
    const Case with(record(true, 2));
    const auto found = never_zero_days(with.input());
    REQUIRE(found.size() == 1);
    CHECK(found[0].confidence == Confidence::fair);
    // Days 20 to 49 leak; the run also takes in a neighbouring irrigated day or none.
    CHECK_THAT(found[0].volume->in(units::us_gallon), WithinAbs(60'000, 2'001));
    double sum = 0;
    for (const auto& m : leak_by_month(with.input(), year{2024} / 5, year{2024} / 7)) {
        CHECK(m.screened);
        sum += m.volume.in(units::us_gallon);
    }
    CHECK_THAT(sum, WithinAbs(found[0].volume->in(units::us_gallon), 1e-6));
    CHECK(never_zero_days(Case(record(false, 2)).input()).empty());
    CHECK(never_zero_days(Case(record(false, 1)).input()).empty());  // irrigated every day: no telling
}

TEST_CASE("flow all through the night that is still by day", "[meter][constructed]") {
    const Case c(hourly(10, [](int d, int h) {
        return irrigation(h) + (d >= 3 && d < 7 && h < 6 ? 200 : 0);
    }));
    const auto found = overnight_flow(c.input());
    REQUIRE(found.size() == 1);
    CHECK(found[0].from == calendar::make_date(2024, 7, 4));
    CHECK(found[0].to == calendar::make_date(2024, 7, 7));
    CHECK_THAT(found[0].volume->in(units::us_gallon), WithinAbs(4 * 2 * 200, 1e-6));
    const Case programmed(hourly(10, [](int, int h) { return h < 6 ? 6000.0 : 0.0; }));
    CHECK(overnight_flow(programmed.input()).empty());
}

TEST_CASE("use in a month without need", "[meter][constructed]") {
    const Case c({reg("2024-01-01T00:00:00Z", 0), reg("2024-02-01T00:00:00Z", 900),
                  reg("2024-03-01T00:00:00Z", 900), reg("2024-08-01T00:00:00Z", 90'900)});
    const std::vector<MonthNeed> needs{{year{2024} / 1, units::Volume{}},
                                       {year{2024} / 2, units::Volume{}},
                                       {year{2024} / 7, 1000.0 * units::us_gallon}};
    const auto found = use_without_need(c.input(), needs);
    REQUIRE(found.size() == 1);
    CHECK(found[0].from == calendar::make_date(2024, 1, 1));
    CHECK_THAT(found[0].volume->in(units::us_gallon), WithinAbs(900, 1e-9));
}

TEST_CASE("a day far above its neighbours", "[meter][constructed]") {
    std::vector<Reading> days;
    double sum = 0;
    for (int d = 0; d < 40; ++d) {
        days.push_back({at("2024-07-01T00:00:00Z") + std::chrono::days{d}, {}, sum});
        sum += d == 20 ? 9000 : 1000 + 50 * (d % 3);
    }
    const auto found = spikes(Case(days).input());
    REQUIRE(found.size() == 1);
    CHECK(found[0].from == calendar::make_date(2024, 7, 21));
    CHECK_THAT(found[0].volume->in(units::us_gallon), WithinAbs(9000 - 1050, 1e-6));
}

TEST_CASE("watering every other day, read at six in the morning, is no spike", "[meter][constructed]") {
    std::vector<Reading> days;
    double sum = 0;
    for (int d = 0; d < 40; ++d) {
        days.push_back({at("2024-07-01T13:00:00Z") + std::chrono::days{d}, {}, sum});
        if (d % 2 == 0) sum += 1000 + 50 * (d % 3);
    }
    CHECK(spikes(Case(days).input()).empty());
}

TEST_CASE("a register that stands still", "[meter][constructed]") {
    std::vector<Reading> r{reg("2024-06-01T00:00:00Z", 10), reg("2024-07-01T00:00:00Z", 500),
                           reg("2024-07-10T00:00:00Z", 500), reg("2024-07-20T00:00:00Z", 500),
                           reg("2024-08-01T00:00:00Z", 700)};
    const std::vector<MonthNeed> thirsty{{year{2024} / 7, 1.0 * units::us_gallon}};
    const std::vector<MonthNeed> none{{year{2024} / 7, units::Volume{}}};
    const auto found = stuck_register(Case(r).input(), thirsty);
    REQUIRE(found.size() == 1);
    CHECK(found[0].confidence == Confidence::fair);
    CHECK(found[0].from == calendar::make_date(2024, 7, 1));
    CHECK(found[0].to == calendar::make_date(2024, 7, 20));
    CHECK(stuck_register(Case(r).input(), none).empty());
    CHECK(stuck_register(Case(r).input(), {})[0].confidence == Confidence::low);
    r[2].value = 501;
    CHECK(stuck_register(Case(r).input(), thirsty).empty());
}

TEST_CASE("gaps", "[meter][constructed]") {
    auto r = hourly(4, [](int, int) { return 1.0; });
    CHECK(gaps(Case(r).input()).empty());
    r.erase(r.begin() + 30, r.begin() + 40);
    const auto found = gaps(Case(r).input());
    REQUIRE(found.size() == 1);
    CHECK(found[0].from == calendar::make_date(2024, 7, 2));
    CHECK_FALSE(found[0].volume.has_value());
    CHECK_THAT(found[0].sentence.english(), Catch::Matchers::Contains("10.0 hours"));
}

// The largest normal flow of a 2 inch meter, 160 gpm: Maryland COMAR 20.70.06.03.
TEST_CASE("more than the meter's size passes", "[meter][constructed]") {
    Meter m = meter_in("gal");
    m.size = units::parse_measure<units::Length>("2in");
    const Case over(std::vector<Reading>{reg("2024-07-01T00:00:00Z", 0),
                                         reg("2024-07-02T00:00:00Z", 161 * 1440)}, m);
    REQUIRE(impossible_flow(over.input()).size() == 1);
    const Case under(std::vector<Reading>{reg("2024-07-01T00:00:00Z", 0),
                                          reg("2024-07-02T00:00:00Z", 159 * 1440)}, m);
    CHECK(impossible_flow(under.input()).empty());
    m.size = units::parse_measure<units::Length>("50mm");
    CHECK(impossible_flow(Case(over.readings, m).input()).size() == 1);
    m.size.reset();
    CHECK(impossible_flow(Case(over.readings, m).input()).empty());
}

TEST_CASE("falls and backward flow become findings", "[meter][constructed]") {
    const Case fell({reg("2024-07-01T00:00:00Z", 90), reg("2024-07-02T00:00:00Z", 10)});
    CHECK(record_problems(fell.input()).at(0).kind == FindingKind::register_fell);
    Meter m = meter_in("gal");
    m.digits = 6;
    const Case back(fell.readings, m);
    const auto found = record_problems(back.input());
    CHECK(found.at(0).kind == FindingKind::ran_backward);
    CHECK_THAT(found[0].volume->in(units::us_gallon), WithinAbs(-80, 1e-9));
    CHECK_THAT(found[0].sentence.english(), Catch::Matchers::Contains("backflow"));
}

TEST_CASE("master and submeters disagree", "[meter][constructed]") {
    const auto gal = [](double v) { return v * units::us_gallon; };
    const auto one = [&](double master, double subs) {
        const std::vector<MonthUnaccounted> months{
            {year{2024} / 7, gal(master), gal(subs), gal(master - subs)}};
        return master_against_submeters("M-0", months);
    };
    CHECK(one(1000, 960).empty());
    CHECK(one(1000, 940).size() == 1);
    CHECK(one(1000, 1020).empty());
    CHECK(one(1000, 1040).size() == 1);
    CHECK(one(0, 40).size() == 1);
    CHECK(one(0, 0).empty());
}

TEST_CASE("a bill that the readings do not bear out", "[meter][constructed]") {
    const Case c({reg("2024-07-01T00:00:00Z", 0), reg("2024-08-01T00:00:00Z", 31'000)});
    const auto bill = [&](double kgal) {
        const std::vector<Bill> bills{{"M-1", calendar::make_date(2024, 7, 1),
                                       calendar::make_date(2024, 8, 1),
                                       {kgal, units::unit_named<units::Volume>("kgal")}}};
        return bill_against_readings(c.input(), bills);
    };
    CHECK(bill(31).empty());
    CHECK(bill(32.9).empty());  // within two days' use
    REQUIRE(bill(34).size() == 1);
    CHECK_THAT(bill(34)[0].volume->in(units::us_gallon), WithinAbs(3000, 1e-6));
    CHECK(bill(27).size() == 1);
}

TEST_CASE("middle values", "[meter][derived]") {
    CHECK(median({3, 1, 2}) == 2);
    CHECK(median({4, 1, 2, 3}) == 2.5);
    CHECK(median({}) == 0);
    CHECK(percentile({5, 1, 3, 2, 4}, 0.9) == 5);
    CHECK(percentile({5, 1, 3, 2, 4}, 0.6) == 3);
}
