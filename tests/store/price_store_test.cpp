// SPDX-License-Identifier: GPL-3.0-or-later
// Prices, pumps, stations and settings come out of the book as they went in.
#include "core/store/price_store.h"
#include "core/store/site_store.h"
#include "core/store/station_store.h"

#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::store;
using evenfall::tests::Scratch;

namespace {

Book book_with_area(const Scratch& scratch) {
    Book book = Book::create(scratch / "b.evenfall");
    site::Site site;
    site.code = std::string("S1");
    site.name = std::string("One");
    add_site(book, site, std::nullopt);
    site::Area area;
    area.code = std::string("A1");
    area.site = std::string("S1");
    area.size = units::parse_measure<units::Area>("2ac");
    add_area(book, area, std::nullopt);
    return book;
}

}  // namespace

TEST_CASE("rates and pumps", "[store]") {
    const Scratch scratch;
    Book book = book_with_area(scratch);
    budget::WaterRate rate;
    rate.code = std::string("W-2023");
    rate.from = calendar::make_date(2023, 1, 1);
    rate.unit = units::unit_named<units::Volume>("ccf");
    rate.currency = std::string("USD");
    rate.tiers = {{10.0, 2.5}, {std::nullopt, 4.0}};
    rate.fixed_per_month = 12.5;
    rate.sewer_price = 0.0;
    rate.sewer_share = units::Share::of(0.8);
    add_water_rate(book, rate, std::nullopt);
    rate.code = std::string("W-2024");
    rate.site = std::string("S1");
    rate.from = calendar::make_date(2024, 1, 1);
    rate.to = calendar::make_date(2024, 12, 31);
    rate.sewer_price.reset();
    add_water_rate(book, rate, std::nullopt);

    const auto rates = water_rates(book);
    REQUIRE(rates.size() == 2);
    CHECK(rates[0].code == "W-2023");
    CHECK(rates[0].site.empty());
    CHECK_FALSE(rates[0].to.has_value());
    CHECK(rates[0].unit.name == "ccf");
    CHECK(rates[0].fixed_per_month == 12.5);
    CHECK(rates[0].sewer_price == 0.0);
    CHECK(rates[0].sewer_share.value() == 0.8);
    REQUIRE(rates[0].tiers.size() == 2);
    CHECK(rates[0].tiers[0].up_to == 10.0);
    CHECK(rates[0].tiers[0].price == 2.5);
    CHECK_FALSE(rates[0].tiers[1].up_to.has_value());
    CHECK(rates[1].site == "S1");
    CHECK(rates[1].to == calendar::make_date(2024, 12, 31));
    CHECK_FALSE(rates[1].sewer_price.has_value());
    CHECK_THROWS_AS(add_water_rate(book, rate, std::nullopt), BookError);
    rate.code = std::string("W-X");
    rate.site = std::string("nowhere");
    CHECK_THROWS_AS(add_water_rate(book, rate, std::nullopt), BookError);

    add_energy_rate(book, {"E", "S1", rate.from, std::nullopt, "USD", 0.17}, std::nullopt);
    REQUIRE(energy_rates(book).size() == 1);
    CHECK(energy_rates(book)[0].price_per_kwh == 0.17);

    budget::Pump pump;
    pump.code = std::string("P");
    pump.site = std::string("S1");
    pump.pressure = units::parse_measure<units::Pressure>("80psi");
    pump.efficiency = units::Efficiency::of(0.65);
    pump.share = 0.5;
    add_pump(book, pump, std::nullopt);
    REQUIRE(pumps(book, "S1").size() == 1);
    const auto out = pumps(book, "S1")[0];
    CHECK_FALSE(out.lift.has_value());
    CHECK(out.pressure->text() == "80 psi");
    CHECK(out.efficiency.value() == 0.65);
    CHECK(out.share == 0.5);
    CHECK(pumps(book, "S2").empty());
}

TEST_CASE("stations, watering rules and settings of areas", "[store]") {
    const Scratch scratch;
    Book book = book_with_area(scratch);
    schedule::Station station;
    station.code = std::string("1");
    station.area = std::string("A1");
    station.rate = units::parse_measure<units::Rate>("0.45in_h");
    station.rate_source = std::string("catch test T-1");
    station.arc_degrees = 180.0;
    add_station(book, station, std::nullopt);
    const auto all = stations(book, "S1");
    REQUIRE(all.size() == 1);
    CHECK(all[0].rate->value == 0.45);
    CHECK(all[0].arc_degrees == 180.0);
    CHECK_FALSE(all[0].flow.has_value());

    CHECK_FALSE(watering_rule(book, "S1").has_value());
    schedule::WateringRule rule;
    rule.site = std::string("S1");
    rule.days = {true, false, true, false, true, false, false};
    rule.starts = std::chrono::hours{22};
    rule.ends = std::chrono::hours{6};
    set_watering_rule(book, rule);
    rule.stations_at_once = 2;
    set_watering_rule(book, rule);
    const auto read = watering_rule(book, "S1").value();
    CHECK(read.days == rule.days);
    CHECK(read.starts == rule.starts);
    CHECK(read.ends == rule.ends);
    CHECK(read.stations_at_once == 2);

    set_area_setting(book, {"A1", std::nullopt, "", true});
    CHECK_FALSE(area_settings(book, "S1").at(0).off_target.has_value());
    CHECK(area_settings(book, "S1").at(0).special);
    set_area_setting(book, {"A1", units::Share::of(0.0), "plan P", false});
    CHECK(area_settings(book, "S1").at(0).off_target.value().value() == 0.0);
    CHECK_FALSE(area_settings(book, "S1").at(0).salt);
    set_area_setting(book, {"A1", std::nullopt, "", false, weather::SaltCase{1.2, 4.0}});
    CHECK(area_settings(book, "S1").at(0).salt.value().water_ec == 1.2);
    CHECK(area_settings(book, "S1").at(0).salt.value().soil_ec_limit == 4.0);
    CHECK(area_settings(book, "S1").size() == 1);
}
