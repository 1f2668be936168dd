// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/portfolio.h"

#include "core/input_error.h"
#include "tests/budget/season_case.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::budget;
using namespace evenfall::budget::test;
using Catch::Matchers::WithinAbs;
using units::us_gallon;

namespace {

/// Sites that differ by what their meter passed and by their size.
SeasonInputs site_with(const char* code, double gallons, double acres) {
    auto in = one_area_june();
    in.site.code = std::string(code);
    in.areas[0].size.value = acres;
    in.meters = {meter_input("M", {{calendar::make_date(2023, 6, 1), 0.0},
                                   {calendar::make_date(2023, 7, 1), gallons}})};
    return in;
}

std::string order_of(const Portfolio& portfolio) {
    std::string order;
    for (const auto& site : portfolio.sites) order += site.site;
    return order;
}

}  // namespace

// DERIVED. Budget 153,341.85 gal an acre: over by 46,658 (A, 1 ac), 93,316 (B, 2 ac) and 60,000 (C).
TEST_CASE("sites are ranked by what they are over", "[budget][derived]") {
    std::vector inputs{site_with("A", 200000, 1.0), site_with("B", 400000, 2.0),
                       site_with("C", 153341.85 * 0.5 + 60000, 0.5), site_with("D", 1, 1.0)};
    inputs[3].meters[0].readings.clear();
    const auto all = seasons(inputs, 1);
    const auto by_volume = portfolio(all, RankBy::over_budget);
    CHECK(order_of(by_volume) == "BCAD");
    CHECK(by_volume.sites[0].rank == 1);
    CHECK(by_volume.sites[3].rank == 0);
    CHECK(order_of(portfolio(all, RankBy::per_area)) == "CABD");
    // No rates: nothing to rank by, so by code.
    CHECK(order_of(portfolio(all, RankBy::money)) == "ABCD");
    CHECK(portfolio(all, RankBy::money).sites[0].rank == 0);
    CHECK_THAT(by_volume.total.use.value().in(us_gallon),
               WithinAbs(600000 + 153341.85 * 0.5 + 60000, 1e-5));
    CHECK_THAT(by_volume.total.account.value().use().si(),
               Catch::Matchers::WithinRel(by_volume.total.use.value().si(), 1e-12));
}

TEST_CASE("the number of threads changes nothing", "[budget]") {
    std::vector<SeasonInputs> inputs;
    for (int i = 0; i < 20; ++i) inputs.push_back(site_with("A", 150000 + 7000.0 * i, 1.0 + 0.1 * i));
    const auto one = seasons(inputs, 1);
    const auto four = seasons(inputs, 4);
    for (std::size_t i = 0; i < one.size(); ++i) {
        CHECK(one[i].total.account == four[i].total.account);
        CHECK(one[i].total.by_cans->use() == four[i].total.by_cans->use());
    }
    inputs[7].areas[0].size.value = 0.0;
    CHECK_THROWS_AS(seasons(inputs, 4), InputError);
}

TEST_CASE("a portfolio needs the same months everywhere", "[budget]") {
    std::vector inputs{site_with("A", 200000, 1.0), site_with("B", 400000, 2.0)};
    inputs[1].to = month(2023, 7);
    CHECK_THROWS_AS(portfolio(seasons(inputs, 1), RankBy::over_budget), InputError);
    CHECK(portfolio({}, RankBy::over_budget).sites.empty());
}
