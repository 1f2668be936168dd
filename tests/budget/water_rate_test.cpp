// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/water_rate.h"

#include "core/input_error.h"
#include "tests/budget/season_case.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::budget;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using calendar::make_date;
using units::hundred_cubic_feet;

namespace {

WaterRate rate(const char* code, calendar::Date from, std::optional<calendar::Date> to) {
    WaterRate r;
    r.code = std::string(code);
    r.from = from;
    r.to = to;
    r.unit = units::unit_named<units::Volume>("ccf");
    r.currency = std::string("USD");
    r.tiers = {{10.0, 2.0}, {30.0, 3.0}, {std::nullopt, 5.0}};
    r.fixed_per_month = 20.0;
    r.sewer_price = 1.0;
    r.sewer_share = units::Share::of(0.5);
    return r;
}

double total(const std::vector<WaterRate>& rates, calendar::Month month, double ccf) {
    return WaterRates(rates, "S").bill(month, ccf * hundred_cubic_feet).value().total();
}

}  // namespace

// DERIVED by hand: 40 ccf = 10 x 2 + 20 x 3 + 10 x 5 = 130; sewer 40 x 0.5 = 20; fixed 20.
TEST_CASE("a bill by tiers", "[budget][derived]") {
    const std::vector rates{rate("R", make_date(2023, 1, 1), std::nullopt)};
    const auto june = test::month(2023, 6);
    const auto bill = WaterRates(rates, "S").bill(june, 40.0 * hundred_cubic_feet).value();
    CHECK_THAT(bill.water, WithinAbs(130.0, 1e-9));
    CHECK_THAT(bill.sewer, WithinAbs(20.0, 1e-9));
    CHECK_THAT(bill.fixed, WithinAbs(20.0, 1e-9));
    CHECK_THAT(total(rates, june, 0.0), WithinAbs(20.0, 1e-9));
    CHECK_THAT(total(rates, june, 10.0), WithinAbs(45.0, 1e-9));
    CHECK_THAT(total(rates, june, 30.0), WithinAbs(115.0, 1e-9));
}

// DERIVED. From 16 June a flat 4 a ccf: 15 of 30 days at each. First half: 20 ccf, tiers 5, 15:
// 10 + 30 + 5 x 5 = 65, sewer 10, fixed 10; second half: 20 x 4 = 80, fixed 10.
TEST_CASE("a rate that changes within a month is billed by days", "[budget][derived]") {
    auto later = rate("R2", make_date(2023, 6, 16), std::nullopt);
    later.tiers = {{std::nullopt, 4.0}};
    later.sewer_price.reset();
    const std::vector rates{later, rate("R1", make_date(2023, 1, 1), make_date(2023, 6, 15))};
    CHECK_THAT(total(rates, test::month(2023, 6), 40.0), WithinAbs(175.0, 1e-9));
}

TEST_CASE("a day without a rate leaves the bill unknown", "[budget]") {
    const std::vector rates{rate("R", make_date(2023, 6, 2), make_date(2023, 8, 31))};
    const WaterRates checked(rates, "S");
    CHECK_FALSE(checked.bill(test::month(2023, 6), units::Volume{}).has_value());
    CHECK(checked.bill(test::month(2023, 7), units::Volume{}).has_value());
    CHECK_FALSE(checked.bill(test::month(2023, 9), units::Volume{}).has_value());
}

TEST_CASE("a site's own rates go before the general ones", "[budget]") {
    auto own = rate("OWN", make_date(2023, 1, 1), std::nullopt);
    own.site = std::string("S");
    own.tiers = {{std::nullopt, 1.0}};
    const std::vector rates{rate("ALL", make_date(2023, 1, 1), std::nullopt), own};
    CHECK(WaterRates(rates, "S").text() == "OWN, 2023-01-01 to further on");
    CHECK(WaterRates(rates, "T").text() == "ALL, 2023-01-01 to further on");
}

TEST_CASE("rates that cannot be are refused", "[budget]") {
    const auto first = make_date(2023, 1, 1);
    std::vector rates{rate("R1", first, make_date(2023, 6, 30)),
                      rate("R2", make_date(2023, 7, 1), std::nullopt)};
    CHECK_NOTHROW(WaterRates(rates, "S"));
    SECTION("overlap of a day") {
        rates[0].to = make_date(2023, 7, 1);
        CHECK_THROWS_WITH(WaterRates(rates, "S"),
                          Contains("R1") && Contains("R2") && Contains("2023-07-01"));
    }
    SECTION("open range before another") { rates[0].to.reset(); }
    SECTION("backward") { rates[0].to = make_date(2022, 1, 1); }
    SECTION("mixed currencies") { rates[1].currency = std::string("EUR"); }
    SECTION("negative price") { rates[1].tiers[1].price = -3.0; }
    SECTION("falling limits") { rates[1].tiers[1].up_to = 5.0; }
    SECTION("closed last tier") { rates[1].tiers[2].up_to = 50.0; }
    SECTION("open tier in the middle") { rates[1].tiers[1].up_to.reset(); }
    SECTION("no tier") { rates[1].tiers.clear(); }
    SECTION("sewer price below zero") { rates[1].sewer_price = -1.0; }
    CHECK_THROWS_AS(WaterRates(rates, "S"), InputError);
}

// DERIVED: 10 days at 0.10 and 20 at 0.16 of a 30-day month: 0.14.
TEST_CASE("energy price of a month", "[budget][derived]") {
    std::vector<EnergyRate> rates{{"E1", "", make_date(2023, 1, 1), make_date(2023, 6, 10), "USD", 0.10},
                                  {"E2", "", make_date(2023, 6, 11), std::nullopt, "USD", 0.16}};
    const EnergyRates checked(rates, "S");
    CHECK_THAT(checked.price_per_kwh(test::month(2023, 6)).value(), WithinAbs(0.14, 1e-12));
    CHECK_FALSE(checked.price_per_kwh(test::month(2022, 12)).has_value());
    rates[0].to.reset();
    CHECK_THROWS_AS(EnergyRates(rates, "S"), InputError);
}
