// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/schedule/base_schedule.h"

#include "core/input_error.h"
#include "tests/budget/draws.h"
#include "tests/schedule/schedule_case.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace evenfall;
using namespace evenfall::schedule;
using namespace evenfall::schedule::test;
using Catch::Matchers::WithinAbs;
using units::inch;

namespace {

constexpr std::array<bool, 7> every_day{true, true, true, true, true, true, true};
constexpr std::array<bool, 7> three_days{true, false, true, false, true, false, false};

}  // namespace

// DERIVED by hand. 1.4 in net, 1.75 in gross a week. The soil holds 0.5 in readily, 0.2 in a day:
// 2 days between, so 4 times a week, 0.4375 in each; at 1.6 in/h 16.41 min; longest 9.43: two cycles
// of 8.2, so 9 whole minutes; soak 66; 4 x 2 x 9 = 72 minutes a week.
TEST_CASE("a station's week, worked by hand", "[schedule][derived]") {
    const std::vector areas{area("A")};
    const std::vector stations{station("1", "A", 1.6)};
    const auto s = base_schedule("S", areas, stations, rule(every_day, 22, 6));
    REQUIRE(s.months.size() == 1);
    const StationWeek& w = s.months[0].stations.at(0);
    CHECK_THAT(w.net.in(inch), WithinAbs(1.4, 1e-12));
    CHECK_THAT(w.gross.in(inch), WithinAbs(1.75, 1e-12));
    CHECK(w.days_between == 2);
    CHECK(w.times_a_week == 4);
    CHECK(w.weekdays == std::vector<int>{0, 1, 3, 5});
    CHECK(w.cycles == 2);
    CHECK(w.cycle_minutes == 9);
    CHECK(w.soak_minutes == 66);
    CHECK(w.minutes_a_week == 72);
    CHECK_FALSE(w.too_few_days);
    CHECK(s.months[0].short_minutes_a_week == 0);
    REQUIRE(s.months[0].days.size() == 4);
    const auto& starts = s.months[0].days[0].plan.starts;
    REQUIRE(starts.size() == 2);
    CHECK(starts[0].start == 0);
    CHECK(starts[1].start == 75);  // 9 minutes, then 66 of soak
}

// DERIVED. Three allowed days: 1.75 / 3 = 0.5833 in each, 21.875 min at 1.6 in/h, three cycles of 8.
TEST_CASE("fewer allowed days than the soil asks for", "[schedule][derived]") {
    const std::vector areas{area("A")};
    const std::vector stations{station("1", "A", 1.6)};
    const auto s = base_schedule("S", areas, stations, rule(three_days, 22, 6));
    const StationWeek& w = s.months[0].stations.at(0);
    CHECK(w.times_a_week == 3);
    CHECK(w.too_few_days);
    CHECK(w.weekdays == std::vector<int>{0, 2, 4});
    CHECK(w.cycles == 3);
    CHECK(w.cycle_minutes == 8);
}

// DERIVED. The same nozzle flow over half and a quarter of the circle is two and four times the
// rate, so half and a quarter of the minutes: on a soil that takes it all, 437.5, 218.75 and
// 109.4 min for 0.4375 in at 0.06 in/h, up to whole minutes.
TEST_CASE("unmatched arcs run in proportion", "[schedule][derived]") {
    auto one = area("A");
    one.intake = 5.0 * units::inch_per_hour;
    one.full_circle_rate = 0.06 * units::inch_per_hour;
    one.rate_source = std::string("catch test");
    std::vector<Station> stations;
    for (const double arc : {360.0, 180.0, 90.0}) {
        Station s;
        s.code = std::to_string(stations.size() + 1);
        s.area = std::string("A");
        s.arc_degrees = arc;
        stations.push_back(s);
    }
    const auto s = base_schedule("S", std::vector{one}, stations, std::nullopt);
    const auto& weeks = s.months[0].stations;
    REQUIRE(weeks.size() == 3);
    CHECK(weeks[0].cycle_minutes == 438);
    CHECK(weeks[1].cycle_minutes == 219);
    CHECK(weeks[2].cycle_minutes == 110);
    CHECK(weeks[0].weekdays == weeks[2].weekdays);
    CHECK(s.assumptions.size() == 1);  // no watering rule
}

// DERIVED. Window of one hour; 2 stations of 100 minutes on one line: the first runs 40 beyond, the
// second all of its 100. On two lines each runs 40 beyond.
TEST_CASE("what does not fit into the window is stated", "[schedule][derived]") {
    auto one = area("A");
    one.intake = 5.0 * units::inch_per_hour;
    const double rate = 0.4375 / (100.0 / 60.0);
    const std::vector stations{station("1", "A", rate), station("2", "A", rate)};
    auto r = rule(every_day, 23, 0);
    auto month = base_schedule("S", std::vector{one}, stations, r).months[0];
    CHECK(month.stations[0].cycle_minutes == 100);
    CHECK(month.days[0].short_minutes == 140);
    CHECK(month.short_minutes_a_week == 560);
    CHECK_THAT(month.short_share, WithinAbs(0.7, 1e-12));
    r.stations_at_once = 2;
    month = base_schedule("S", std::vector{one}, stations, r).months[0];
    CHECK(month.short_minutes_a_week == 320);
}

TEST_CASE("stations that cannot be scheduled are listed with the reason", "[schedule]") {
    const std::vector areas{area("A"), area("B")};
    std::vector stations{station("1", "A", 1.0), station("2", "A", 1.0), station("3", "X", 1.0)};
    stations[1].rate.reset();
    const auto s = base_schedule("S", areas, stations, std::nullopt);
    CHECK(s.months[0].stations.size() == 1);
    REQUIRE(s.left_out.size() == 3);
    CHECK(s.left_out[0].station == "2");
    CHECK(s.left_out[1].station == "3");
    CHECK(s.left_out[2].station == "B");
}

TEST_CASE("no need, no minutes", "[schedule]") {
    auto one = area("A");
    one.months[0].need = units::Depth{};
    const auto s = base_schedule("S", std::vector{one}, std::vector{station("1", "A", 1.0)},
                                 rule(every_day, 22, 6));
    CHECK(s.months[0].stations[0].minutes_a_week == 0);
    CHECK(s.months[0].days.empty());
}

TEST_CASE("a schedule refuses what cannot be", "[schedule]") {
    std::vector areas{area("A")};
    std::vector stations{station("1", "A", 1.0)};
    auto r = rule(every_day, 22, 6);
    SECTION("no day") { r.days = {}; }
    SECTION("no window") { r.ends = r.starts; }
    SECTION("no line") { r.stations_at_once = 0; }
    SECTION("a station twice") { stations.push_back(stations[0]); }
    SECTION("no month") { areas[0].months.clear(); }
    SECTION("soil that holds nothing") { areas[0].available = units::Depth{}; }
    SECTION("soil that takes nothing") { areas[0].intake = units::Rate{}; }
    CHECK_THROWS_AS(base_schedule("S", areas, stations, r), InputError);
}

TEST_CASE("every week puts down what it should, and nobody soaks too short",
          "[schedule][property][constructed]") {
    budget::test::Draws draws(51);
    for (int round = 0; round < 300; ++round) {
        std::vector<AreaPlan> areas;
        std::vector<Station> stations;
        for (std::size_t i = 0; i < 1 + draws.below(4); ++i) {
            auto one = area("A" + std::to_string(i));
            one.months[0].need = draws.between(0.0, 9.0) * inch;
            one.months[0].landscape_et = one.months[0].need + draws.between(0.0, 2.0) * inch;
            one.multiplier = units::Multiplier::of(draws.between(1.0, 2.0));
            one.available = draws.between(0.3, 3.0) * inch;
            one.intake = draws.between(0.05, 1.0) * units::inch_per_hour;
            areas.push_back(one);
            for (std::size_t k = 0; k < 1 + draws.below(5); ++k) {
                stations.push_back(station(std::to_string(i) + "-" + std::to_string(k), one.area,
                                           draws.between(0.1, 2.0)));
            }
        }
        auto r = rule(every_day, 21, 5);
        for (bool& day : r.days) day = draws.below(3) > 0;
        r.days[draws.below(7)] = true;
        r.stations_at_once = 1 + static_cast<int>(draws.below(3));
        const auto s = base_schedule("S", areas, stations, r);
        const ScheduleMonth& month = s.months[0];
        for (const StationWeek& w : month.stations) {
            const double put_down = w.rate.in(units::inch_per_hour) * w.minutes_a_week / 60.0;
            const double rounding =
                w.rate.in(units::inch_per_hour) / 60.0 * w.times_a_week * w.cycles;
            REQUIRE(put_down >= w.gross.in(inch) - 1e-5);
            REQUIRE(put_down <= w.gross.in(inch) + rounding + 1e-9);
            REQUIRE(static_cast<int>(w.weekdays.size()) == w.times_a_week);
            REQUIRE(std::is_sorted(w.weekdays.begin(), w.weekdays.end()));
            REQUIRE(std::adjacent_find(w.weekdays.begin(), w.weekdays.end()) == w.weekdays.end());
            for (const int d : w.weekdays) REQUIRE(r.days[static_cast<std::size_t>(d)]);
        }
        for (const WeekDayPlan& day : month.days) {
            const auto& starts = day.plan.starts;
            for (const StartTime& a : starts) {
                const auto running = std::count_if(starts.begin(), starts.end(), [&](const auto& b) {
                    return b.start <= a.start && a.start < b.start + b.minutes;
                });
                REQUIRE(running <= r.stations_at_once);
                for (const StartTime& b : starts) {
                    if (b.station != a.station || b.cycle != a.cycle + 1) continue;
                    REQUIRE(b.start >= a.start + a.minutes + month.stations[a.station].soak_minutes);
                }
            }
        }
    }
}
