// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/can_account.h"

#include "core/input_error.h"
#include "tests/budget/draws.h"
#include "tests/budget/season_case.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <numeric>

using namespace evenfall;
using namespace evenfall::budget;
using Catch::Matchers::WithinAbs;
using units::cubic_metre;
using units::Depth;
using units::millimetre;

namespace {

/// One period over all the days, 1000 m2, so that 1 mm is 1 m3.
CanCase one_period(std::vector<Depth> crop_et, std::vector<Depth> rain, double reached_m3) {
    CanCase area;
    area.zone = {100.0 * millimetre, 0.5, DepletionRule::fixed, 20.0 * millimetre,
                 DayOrder::water_first};
    area.size = 1000.0 * units::square_metre;
    area.by_day.assign(crop_et.size(), 1.0);
    area.crop_et = std::move(crop_et);
    area.rain = std::move(rain);
    CanPeriod period;
    period.days = area.crop_et.size();
    period.reached = reached_m3 * cubic_metre;
    area.periods = {period};
    area.target = units::LowQuarterDu::of(0.75);
    return area;
}

TestedCans cans(std::vector<double> shares, double du) {
    TestedCans tested;
    tested.weights.assign(shares.size(), 1.0);
    tested.shares = std::move(shares);
    tested.du_lq = units::LowQuarterDu::of(du);
    return tested;
}

}  // namespace

// DERIVED by hand. 20 mm short of full, 30 mm mean, cans at half and one and a half of it, ET 5 mm.
// Cans: 15 mm drains 0, 45 mm drains 25: mean 12.5. Even: 10. Drawn to DU 0.75 the cans get 22.5 and
// 37.5 mm and drain 2.5 and 17.5: mean 10. Rain alone drains nothing. Stored: the cans end 10 and 5
// mm short, 12.5 gained; rain alone loses 5: 17.5. ET is 5 everywhere, so irrigation added none.
TEST_CASE("an account by cans worked by hand", "[budget][derived]") {
    const auto area = one_period({5.0 * millimetre}, {Depth{}}, 30.0);
    const std::vector tests{cans({0.5, 1.5}, 0.5)};
    const auto accounts = can_accounts(area, tests);
    REQUIRE(accounts.size() == 1);
    const CanAccount& a = accounts[0];
    CHECK_THAT(a.used_by_turf.in(cubic_metre), WithinAbs(0.0, 1e-9));
    CHECK_THAT(a.over_scheduled.in(cubic_metre), WithinAbs(10.0, 1e-9));
    CHECK_THAT(a.uneven_unavoidable.in(cubic_metre), WithinAbs(0.0, 1e-9));
    CHECK_THAT(a.uneven_avoidable.in(cubic_metre), WithinAbs(2.5, 1e-9));
    CHECK_THAT(a.stored.in(cubic_metre), WithinAbs(17.5, 1e-9));
    CHECK_THAT(a.short_of_need.in(cubic_metre), WithinAbs(0.0, 1e-9));
    CHECK_THAT(a.use().in(cubic_metre), WithinAbs(30.0, 1e-9));
}

// DERIVED. 80 mm short with p 0.5 of 100 mm: without water Ks = 20 / 50 = 0.4, ET 4 of 10 mm. Cans
// get 0 and 40 mm: the dry one ETs 4, the other stands 40 mm short, Ks 1, ET 10. Irrigation added
// 0 and 6 mm of ET, mean 3; the dry can lacks 6, mean 3. Nothing drains; stored: ends 84 and 50,
// gains -4 and 30, mean 13, against -4 with rain alone: 17.
TEST_CASE("what the dry cans lack is their own line", "[budget][derived]") {
    auto area = one_period({10.0 * millimetre}, {Depth{}}, 20.0);
    area.zone.start_depletion = 80.0 * millimetre;
    const std::vector tests{cans({0.0, 2.0}, 0.0)};
    const auto a = can_accounts(area, tests).at(0);
    CHECK_THAT(a.used_by_turf.in(cubic_metre), WithinAbs(3.0, 1e-9));
    CHECK_THAT(a.short_of_need.in(cubic_metre), WithinAbs(3.0, 1e-9));
    CHECK_THAT(a.stored.in(cubic_metre), WithinAbs(17.0, 1e-9));
    CHECK_THAT(a.stress_days, WithinAbs(0.5, 1e-12));
    CHECK_THAT(a.use().in(cubic_metre), WithinAbs(20.0, 1e-9));
}

// DERIVED by hand. 30 mm at a mean of 30 mm/h run for an hour; the ground takes 10 mm in that time and
// 5 mm may stand. The dry can gets 15 mm, all of it soaks in; the wet one 45 mm, 30 too many.
TEST_CASE("what a single run leaves on the ground", "[budget][derived]") {
    const auto area = one_period({5.0 * millimetre}, {Depth{}}, 30.0);
    std::vector tests{cans({0.5, 1.5}, 0.5)};
    const auto rate = 10.0 * (millimetre / units::hour);
    CHECK_FALSE(runoff_in_one_run(area, tests, rate, 5.0 * millimetre).has_value());
    tests[0].net_rate = 30.0 * (millimetre / units::hour);
    CHECK_THAT(runoff_in_one_run(area, tests, rate, 5.0 * millimetre).value().in(cubic_metre),
               WithinAbs(15.0, 1e-9));
    CHECK(runoff_in_one_run(area, tests, 3.0 * rate, 15.0 * millimetre).value() == units::Volume{});
}

TEST_CASE("an account by cans closes, and evenness never costs water",
          "[budget][property][constructed]") {
    test::Draws draws(41);
    for (int round = 0; round < 400; ++round) {
        std::vector<Depth> et, rain;
        const std::size_t days = 30 + draws.below(150);
        double sum_et = 0.0;
        for (std::size_t i = 0; i < days; ++i) {
            et.push_back(draws.between(1.0, 9.0) * millimetre);
            sum_et += et.back().in(millimetre);
            rain.push_back(draws.below(5) == 0 ? draws.between(0.0, 40.0) * millimetre : Depth{});
        }
        auto area = one_period(et, rain, sum_et * draws.between(0.2, 2.0));
        for (double& day : area.by_day) day = draws.below(3) == 0 ? draws.between(0.0, 1.0) : 0.0;
        std::vector<double> shares(4 + draws.below(40));
        for (double& share : shares) share = draws.between(0.0, 2.0);
        const double mean = std::accumulate(shares.begin(), shares.end(), 0.0) /
                            static_cast<double>(shares.size());
        for (double& share : shares) share /= mean;
        std::sort(shares.begin(), shares.end());
        const std::size_t quarter = shares.size() / 4;
        const double low = std::accumulate(shares.begin(), shares.begin() + static_cast<long>(quarter), 0.0) /
                           static_cast<double>(quarter);
        const auto a = can_accounts(area, std::vector{cans(shares, low)}).at(0);
        const double whole = area.periods[0].reached.si();
        REQUIRE(std::abs(a.use().si() - whole) <= 1e-9 * whole);
        REQUIRE(a.uneven_unavoidable.si() >= -1e-9 * whole);
        REQUIRE(a.uneven_avoidable.si() >= -1e-9 * whole);
        REQUIRE(a.used_by_turf.si() >= -1e-9 * whole);
        REQUIRE(a.over_scheduled.si() >= -1e-9 * whole);
        REQUIRE(a.short_of_need.si() >= 0.0);
    }
}

// A month of a season: both methods close to the same volume.
TEST_CASE("both methods stand side by side in a season", "[budget][derived]") {
    const auto result = season(test::one_area_june());
    const auto& month = result.areas[0].months[0];
    REQUIRE(month.by_cans.has_value());
    CHECK_THAT(month.by_cans->use().in(units::us_gallon), WithinAbs(200000.0, 1e-6));
    CHECK(month.by_cans->uneven_avoidable.si() > 0.0);
    CHECK(result.total.by_cans->use() == month.by_cans->use());
    CHECK(result.meters.at(0).total.by_cans->use() == month.by_cans->use());

    auto in = test::one_area_june();
    in.tests.clear();
    CHECK_FALSE(season(in).areas[0].months[0].by_cans.has_value());
}

TEST_CASE("an account by cans needs cans", "[budget]") {
    const auto area = one_period({5.0 * millimetre}, {Depth{}}, 30.0);
    CHECK_THROWS_AS(can_accounts(area, {}), InputError);
}
