// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/pumping.h"

#include "core/budget/season_cost.h"
#include "core/input_error.h"
#include "tests/budget/season_case.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::budget;
using namespace evenfall::units;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// PUBLISHED in common use, digits from memory (0.00314 kWh per 1000 gal and foot, 1.024 per
// acre-foot and foot); more digits DERIVED from rho = 1000 kg/m3 and g = 9.80665 m/s2.
TEST_CASE("pump energy per volume and head", "[budget][derived]") {
    const auto full = Efficiency::of(1.0);
    CHECK_THAT(pump_energy(thousand_gallons, foot, full).in(kilowatt_hour),
               WithinAbs(0.00314301365, 5e-12));
    CHECK_THAT(pump_energy(acre_foot, foot, full).in(kilowatt_hour), WithinAbs(1.02415548807, 5e-12));
    CHECK_THAT(pump_energy(hundred_cubic_feet, foot, full).in(kilowatt_hour),
               WithinAbs(0.00235113748, 5e-12));
    CHECK_THAT(pump_energy(cubic_metre, metre, full).in(kilowatt_hour),
               WithinAbs(0.00272406944, 5e-12));
}

// CONSTRUCTED examples of the reference notes: 1 acre-ft by 200 ft at 0.60 is 341.39 kWh;
// 100,000 gal at 80 psi and 0.65 are 89.23 kWh.
TEST_CASE("pump energy of two jobs", "[budget][constructed]") {
    CHECK_THAT(pump_energy(acre_foot, 200.0 * foot, Efficiency::of(0.6)).in(kilowatt_hour),
               WithinAbs(341.39, 0.005));
    Pump pump;
    pump.pressure = Typed<Pressure>{80.0, unit_named<Pressure>("psi")};
    CHECK_THAT(pump_energy(100.0 * thousand_gallons, total_head(pump), Efficiency::of(0.65))
                   .in(kilowatt_hour),
               WithinAbs(89.23, 0.005));
}

// Nebraska Pumping Plant Performance Criteria, electric, from memory: 0.885 water horsepower hours
// a kWh, that is 65.99 % overall. 1 hp h = 550 ft lbf/s x 3600 s.
TEST_CASE("pumping plant criterion", "[budget][published]") {
    const double water_horsepower_hour = 550.0 * 3600.0 * 0.3048 * 0.45359237 * 9.80665;
    const double per_kwh = 0.6599 * 3.6e6 / water_horsepower_hour;
    CHECK_THAT(per_kwh, WithinAbs(0.885, 0.0005));
    const auto volume = Volume::from_si(water_horsepower_hour / (1000.0 * 9.80665 * 10.0));
    CHECK_THAT(pump_energy(0.885 * volume, 10.0 * metre, Efficiency::of(0.6599)).in(kilowatt_hour),
               WithinAbs(1.0, 0.0005));
}

TEST_CASE("pumps that cannot be are refused", "[budget]") {
    CHECK_THROWS_AS(pump_energy(cubic_metre, metre, Efficiency::of(0.0)), InputError);
    CHECK_THROWS_AS(pump_energy(-1.0 * cubic_metre, metre, Efficiency::of(0.5)), InputError);
    CHECK_THROWS_AS(total_head(Pump{}), InputError);
    Pump pump;
    pump.lift = Typed<Length>{-5.0, unit_named<Length>("m")};
    CHECK_THROWS_AS(total_head(pump), InputError);
}

// DERIVED by hand from the month of season_test.cpp: use 200,000 gal at 3 a kgal up to 150 kgal and
// 10 above, fixed 7: 450 + 500 + 7 = 957. Not used: 200,000 - 130,340.571 = 69,659.429 gal, of
// which 50,000 at 10 and 19,659.429 at 3: 558.978. Pump: 0.003143013652 kWh per kgal and foot,
// 100 ft, 0.5: 125.7205 kWh; at 0.2: 25.144.
TEST_CASE("waste in money and energy", "[budget][derived]") {
    const auto result = season(test::one_area_june());
    WaterRate rate;
    rate.code = std::string("R");
    rate.from = calendar::make_date(2023, 1, 1);
    rate.unit = unit_named<Volume>("kgal");
    rate.currency = std::string("USD");
    rate.tiers = {{150.0, 3.0}, {std::nullopt, 10.0}};
    rate.fixed_per_month = 7.0;
    Pump pump;
    pump.lift = Typed<Length>{100.0, unit_named<Length>("ft")};
    pump.efficiency = Efficiency::of(0.5);
    const std::vector<EnergyRate> energy{{"E", "", rate.from, std::nullopt, "USD", 0.2}};
    const auto cost = season_cost(result, WaterRates(std::vector{rate}, "S"),
                                  EnergyRates(energy, "S"), std::vector{pump});
    CHECK(cost.currency == "USD");
    CHECK(cost.months_without_bill == 0);
    CHECK_THAT(cost.total.bill.value().total(), WithinAbs(957.0, 1e-9));
    CHECK_THAT(cost.total.not_used.value(), WithinAbs(558.978, 5e-4));
    double lines = 0.0;
    for (const auto& money : cost.total.money) lines += money.value_or(0.0);
    CHECK_THAT(lines, WithinRel(cost.total.not_used.value(), 1e-12));
    const auto& account = result.total.account.value();
    CHECK_THAT(cost.total.avoidable.value(),
               WithinRel(558.97828571 * (account.avoidable() / account.not_used()), 1e-9));
    CHECK_THAT(cost.total.energy.value().in(kilowatt_hour), WithinAbs(125.7205, 5e-5));
    CHECK_THAT(cost.total.energy_cost.value(), WithinAbs(25.144, 5e-4));

    const auto nothing = season_cost(result, WaterRates({}, "S"), EnergyRates({}, "S"), {});
    CHECK_FALSE(nothing.total.bill.has_value());
    CHECK_FALSE(nothing.total.energy.has_value());
}
