// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/waste_account.h"

#include "core/input_error.h"
#include "tests/budget/draws.h"

#include <catch2/catch.hpp>

#include <limits>

using namespace evenfall;
using namespace evenfall::budget;
using Catch::Matchers::WithinAbs;
using units::us_gallon;

namespace {

WasteInputs inputs(double use, double need, double leak, double off, double achieved,
                   double target) {
    return {use * us_gallon,       need * us_gallon,
            leak * us_gallon,      units::Share::of(off),
            units::Multiplier::of(achieved), units::Multiplier::of(target)};
}

struct Expected {
    double used, unavoidable, avoidable, off_target, leak, over_scheduled, short_of_need;
};

void check(const WasteAccount& account, const Expected& e) {
    CHECK_THAT(account.used_by_turf.in(us_gallon), WithinAbs(e.used, 1e-9));
    CHECK_THAT(account.uneven_unavoidable.in(us_gallon), WithinAbs(e.unavoidable, 1e-9));
    CHECK_THAT(account.uneven_avoidable.in(us_gallon), WithinAbs(e.avoidable, 1e-9));
    CHECK_THAT(account.off_target.in(us_gallon), WithinAbs(e.off_target, 1e-9));
    CHECK_THAT(account.leak.in(us_gallon), WithinAbs(e.leak, 1e-9));
    CHECK_THAT(account.over_scheduled.in(us_gallon), WithinAbs(e.over_scheduled, 1e-9));
    CHECK_THAT(account.short_of_need.in(us_gallon), WithinAbs(e.short_of_need, 1e-9));
}

}  // namespace

// DERIVED by hand from the definition in the header; every figure is exact.
TEST_CASE("a waste account worked by hand", "[budget][derived]") {
    SECTION("every line has water") {
        // leak 100; off 0.1 x 900 = 90; R 810; used 500; E 310;
        // unavoidable 500 x 0.2 = 100; avoidable 500 x (1.4 - 1.2) = 100; rest 110.
        check(waste_account(inputs(1000, 500, 100, 0.1, 1.4, 1.2)),
              {500, 100, 100, 90, 100, 110, 0});
    }
    SECTION("the excess ends inside the avoidable part") {
        // R 650; E 150; unavoidable 100; avoidable 50 of 100; nothing over.
        check(waste_account(inputs(650, 500, 0, 0, 1.4, 1.2)), {500, 100, 50, 0, 0, 0, 0});
    }
    SECTION("the excess ends inside the unavoidable part") {
        check(waste_account(inputs(540, 500, 0, 0, 1.4, 1.2)), {500, 40, 0, 0, 0, 0, 0});
    }
    SECTION("more even than the target: nothing is avoidable, less is unavoidable") {
        check(waste_account(inputs(650, 500, 0, 0, 1.1, 1.2)), {500, 50, 0, 0, 0, 100, 0});
    }
    SECTION("under-watered") {
        // off 0.2 x 300 = 60; R 240; short 260.
        check(waste_account(inputs(300, 500, 0, 0.2, 1.4, 1.2)), {240, 0, 0, 60, 0, 0, 260});
    }
    SECTION("no need: all that reached the turf is over-scheduled") {
        check(waste_account(inputs(300, 0, 0, 0, 1.4, 1.2)), {0, 0, 0, 0, 0, 300, 0});
    }
    SECTION("no use") {
        check(waste_account(inputs(0, 500, 0, 0, 1.4, 1.2)), {0, 0, 0, 0, 0, 0, 500});
    }
    SECTION("a leak above the volume is cut to it") {
        check(waste_account(inputs(300, 500, 400, 0.1, 1.4, 1.2)), {0, 0, 0, 0, 300, 0, 500});
    }
}

// DERIVED: a shortage in one month stays beside the waste of another.
TEST_CASE("accounts add line by line, and nothing is netted", "[budget][derived]") {
    auto sum = waste_account(inputs(300, 500, 0, 0, 1.2, 1.2));
    sum += waste_account(inputs(900, 500, 0, 0, 1.2, 1.2));
    check(sum, {800, 100, 0, 0, 0, 300, 200});
    CHECK_THAT(sum.use().in(us_gallon), WithinAbs(1200.0, 1e-9));
    CHECK_THAT(sum.not_used().in(us_gallon), WithinAbs(400.0, 1e-9));
    CHECK_THAT(sum.avoidable().in(us_gallon), WithinAbs(300.0, 1e-9));
}

TEST_CASE("an account closes to the metered volume", "[budget][property][constructed]") {
    test::Draws draws(20240601);
    for (int i = 0; i < 50000; ++i) {
        const double use = draws.between(0.0, 1e7);
        const auto in = inputs(use, draws.between(0.0, 1e7), draws.between(0.0, use * 1.2),
                               draws.between(0.0, 1.0), draws.between(1.0, 3.0),
                               draws.between(1.0, 2.0));
        const auto account = waste_account(in);
        REQUIRE(std::abs(account.use().in(us_gallon) - use) <= 1e-9 * use);
        for (const WasteLine& line : waste_lines()) REQUIRE((account.*line.part).si() >= 0.0);
        // Short and over-scheduled exclude each other within a month.
        REQUIRE((account.short_of_need.si() == 0.0 || account.over_scheduled.si() == 0.0));
        const units::Volume reached = in.use - account.leak - account.off_target;
        REQUIRE(std::abs((account.used_by_turf + account.short_of_need - in.need).si()) <=
                1e-9 * std::max(reached, in.need).si());
    }
}

TEST_CASE("more even application never raises waste at equal need",
          "[budget][property][constructed]") {
    test::Draws draws(7);
    for (int i = 0; i < 20000; ++i) {
        const double need = draws.between(0.0, 1e6);
        const double off = draws.between(0.0, 0.3);
        const double target = draws.between(1.0, 1.4);
        const double even = draws.between(1.0, 2.5);
        const double uneven = draws.between(even, 2.5);
        // Each run as long as its own unevenness asks for.
        const auto a = waste_account(inputs(need * even / (1 - off), need, 0, off, even, target));
        const auto b = waste_account(inputs(need * uneven / (1 - off), need, 0, off, uneven, target));
        REQUIRE(a.not_used().si() <= b.not_used().si() * (1 + 1e-12));
        REQUIRE(a.avoidable().si() <= b.avoidable().si() * (1 + 1e-9) + 1e-9);
        // The same volume: what the turf cannot use does not grow. The parts are added up again,
        // so the last bit is open.
        const double use = draws.between(0.0, 3e6);
        const auto c = waste_account(inputs(use, need, 0, off, even, target));
        const auto d = waste_account(inputs(use, need, 0, off, uneven, target));
        REQUIRE(c.not_used().si() <= d.not_used().si() + 1e-14 * c.use().si());
    }
}

TEST_CASE("an account refuses what cannot be", "[budget]") {
    CHECK_THROWS_AS(waste_account(inputs(-1, 1, 0, 0, 1, 1)), InputError);
    CHECK_THROWS_AS(waste_account(inputs(1, -1, 0, 0, 1, 1)), InputError);
    CHECK_THROWS_AS(waste_account(inputs(1, 1, -1, 0, 1, 1)), InputError);
    CHECK_THROWS_AS(waste_account(inputs(1, 1, 0, 0, 0.99, 1)), InputError);
    CHECK_THROWS_AS(waste_account(inputs(1, 1, 0, 0, 1, 0.5)), InputError);
    const double nan = std::numeric_limits<double>::quiet_NaN();
    CHECK_THROWS_AS(waste_account(inputs(nan, 1, 0, 0, 1, 1)), InputError);
    CHECK_THROWS_AS(units::Share::of(1.01), InputError);
}
