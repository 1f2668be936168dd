// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/coefficient_plan.h"

#include "core/input_error.h"
#include "core/reference/table.h"
#include "core/weather/planting.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::weather;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using std::chrono::days;

namespace {

site::Area bermuda() {
    site::Area area;
    area.code = "north";
    area.plant = "bermudagrass";
    return area;
}

/// As in Phoenix: bermuda from 1 April to 14 October, winter rye for the rest.
CoverPeriod winter_rye(const std::string& plant) {
    return {calendar::make_date(2024, 10, 15), calendar::make_date(2025, 3, 31), plant};
}

}  // namespace

// PUBLISHED (from memory). FAO-56 example 28, dry beans: stages of 25, 25, 30 and 20 days, Kc 0.15,
// 1.19 and 0.35; Kc on days 20, 40, 70 and 95 is 0.15, 0.77, 1.19 and 0.56.
TEST_CASE("growth stages, FAO-56 example 28", "[weather][published]") {
    const GrowthStages beans{25, 25, 30, 20, 0.15, 1.19, 0.35, "FAO-56 example 27"};
    CHECK_THAT(stage_coefficient(beans, 20), WithinAbs(0.15, 5e-3));
    CHECK_THAT(stage_coefficient(beans, 40), WithinAbs(0.77, 5e-3));
    CHECK_THAT(stage_coefficient(beans, 70), WithinAbs(1.19, 5e-3));
    CHECK_THAT(stage_coefficient(beans, 95), WithinAbs(0.56, 5e-3));
    CHECK_THAT(stage_coefficient(beans, 100), WithinAbs(0.35, 1e-12));
    CHECK_THAT(stage_coefficient(beans, 400), WithinAbs(0.35, 1e-12));
    CHECK_THROWS_AS(stage_coefficient(beans, 0), InputError);
}

// PUBLISHED. AZMET Phoenix: bermuda 0.73 from 1 April to 14 October, rye 0.70 from 15 October to
// 31 March; October is weighted by its days, which is what the monthly table carries.
TEST_CASE("overseeding by the day", "[weather][published]") {
    auto area = bermuda();
    area.plant = "bermudagrass_phoenix";  // its July is bermuda, its January rye
    CHECK_THAT(landscape_coefficient(area, std::chrono::year{2024} / 10).value.value(),
               WithinAbs((14.0 * 0.73 + 17.0 * 0.70) / 31.0, 5.1e-5));
}

// CONSTRUCTED.
TEST_CASE("a winter under rye", "[weather][constructed]") {
    CoefficientPlan plan;
    plan.covers.push_back(winter_rye("perennial_ryegrass"));
    const auto on = [&](int y, unsigned m, unsigned d) {
        return coefficient_on(bermuda(), plan, calendar::make_date(y, m, d)).value.value();
    };
    CHECK(on(2024, 10, 14) == 0.85);
    CHECK(on(2024, 10, 15) == 0.95);
    CHECK(on(2024, 12, 31) == 0.95);
    CHECK(on(2025, 1, 1) == 0.95);
    CHECK(on(2025, 3, 31) == 0.95);
    CHECK(on(2025, 4, 1) == 0.85);
    const auto october = coefficient_of_month(bermuda(), plan, std::chrono::year{2024} / 10);
    CHECK_THAT(october.value.value(), WithinAbs((14.0 * 0.85 + 17.0 * 0.95) / 31.0, 1e-12));
    CHECK_THAT(october.method.english(), Contains("mean of the days"));

    // A coefficient in the record stands: it was measured or agreed.
    auto area = bermuda();
    area.coefficient = 0.62;
    CHECK(coefficient_on(area, plan, calendar::make_date(2024, 12, 1)).value.value() == 0.62);
    plan.covers.front().plant = "moss";
    CHECK_THROWS_WITH(coefficient_on(bermuda(), plan, calendar::make_date(2024, 12, 1)),
                      Contains("kentucky_bluegrass"));
}

// CONSTRUCTED. From harvest to harvest; between crops the area's own coefficient holds.
TEST_CASE("sod from one harvest to the next", "[weather][constructed]") {
    const auto cut = calendar::make_date(2024, 4, 10);
    CoefficientPlan plan;
    plan.sod.push_back({cut, cut + days{300}, sod_stages("regrown_warm")});
    const auto on = [&](int day) {
        return coefficient_on(bermuda(), plan, cut + days{day - 1}).value.value();
    };
    CHECK(on(1) == 0.80);
    CHECK(on(14) == 0.80);
    CHECK_THAT(on(14 + 25), WithinAbs(0.825, 1e-12));
    CHECK_THAT(on(64), WithinAbs(0.85, 1e-12));
    CHECK(on(299) == 0.85);
    CHECK_THAT(coefficient_on(bermuda(), plan, cut + days{3}).method.english(), Contains("day 4"));
    CHECK_THAT(coefficient_on(bermuda(), plan, cut + days{300}).method.english(), Contains("monthly table"));
    CHECK_THROWS_WITH(sod_stages("hydroponic"), Contains("seeded_cool"));
}

// CONSTRUCTED. Establishment stands before everything, shade multiplies everything.
TEST_CASE("establishment and shade", "[weather][constructed]") {
    const auto laid = calendar::make_date(2024, 5, 20);
    CoefficientPlan plan;
    plan.establishments.push_back(establishment("sod", laid));
    plan.covers.push_back(winter_rye("perennial_ryegrass"));
    auto area = bermuda();
    area.coefficient = 0.62;
    CHECK(coefficient_on(area, plan, laid).value.value() == 1.0);
    CHECK(coefficient_on(area, plan, laid + days{20}).value.value() == 1.0);
    CHECK(coefficient_on(area, plan, laid + days{21}).value.value() == 0.62);
    const auto may = coefficient_of_month(area, plan, std::chrono::year{2024} / 5);
    CHECK_THAT(may.value.value(), WithinAbs((19.0 * 0.62 + 12.0 * 1.0) / 31.0, 1e-12));

    plan.shades.push_back({laid, laid + days{40}, 0.7});
    const auto shaded = coefficient_on(area, plan, laid);
    CHECK_THAT(shaded.value.value(), WithinAbs(0.7, 1e-12));
    CHECK_THAT(shaded.method.english(), Contains("x 0.7"));
    CHECK(coefficient_on(area, plan, laid + days{41}).value.value() == 0.62);
    plan.shades.front().factor = 0.3;
    CHECK_THROWS_AS(coefficient_on(area, plan, laid), InputError);
    CHECK_THROWS_AS(establishment("plugs", laid), InputError);
}

// CONSTRUCTED. Records of a book become a plan; the next harvest ends the crop before it.
TEST_CASE("a plan from the records of an area", "[weather][constructed]") {
    const auto day = [](int m, unsigned d) { return calendar::make_date(2024, static_cast<unsigned>(m), d); };
    const std::vector<Planting> records{
        {"north", PlantingKind::sod, day(9, 1), {}, "regrown_warm", {}},
        {"north", PlantingKind::sod, day(4, 10), {}, "regrown_warm", {}},
        {"south", PlantingKind::establishment, day(5, 1), {}, "seed_warm", {}},
        {"south", PlantingKind::establishment, day(8, 1), day(8, 10), "", 0.9},
        {"south", PlantingKind::overseeding, day(10, 15), day(12, 31), "perennial_ryegrass", {}},
        {"south", PlantingKind::shade, day(1, 1), {}, "", 0.8}};
    const auto north = plan_of(records, "north");
    REQUIRE(north.sod.size() == 2);
    CHECK(north.sod[0].harvested == day(4, 10));
    CHECK(north.sod[0].next_harvest == day(9, 1));
    CHECK_FALSE(north.sod[1].next_harvest);
    CHECK_THAT(coefficient_on(bermuda(), north, day(9, 2)).method.english(), Contains("day 2"));
    const auto south = plan_of(records, "south");
    REQUIRE(south.establishments.size() == 2);
    CHECK(south.establishments[0].days == 40);
    CHECK(south.establishments[1].days == 10);
    CHECK(south.establishments[1].coefficient == 0.9);
    CHECK_THAT(coefficient_on(bermuda(), south, day(10, 20)).value.value(), WithinAbs(0.76, 1e-12));
    CHECK(plan_of(records, "east").empty());

    CHECK(planting_kind_named("sod") == PlantingKind::sod);
    CHECK_THROWS_WITH(planting_kind_named("plugs"), Contains("overseeding"));
    const auto refused = [&](Planting p) { CHECK_THROWS_AS(check_planting(p), InputError); };
    refused({"a", PlantingKind::sod, day(4, 1), {}, "hydroponic", {}});
    refused({"a", PlantingKind::overseeding, day(4, 1), {}, "perennial_ryegrass", {}});
    refused({"a", PlantingKind::overseeding, day(4, 1), day(3, 1), "perennial_ryegrass", {}});
    refused({"a", PlantingKind::overseeding, day(4, 1), day(5, 1), "moss", {}});
    refused({"a", PlantingKind::shade, day(4, 1), {}, "", {}});
    refused({"a", PlantingKind::shade, day(4, 1), {}, "", 0.2});
    refused({"a", PlantingKind::establishment, day(4, 1), {}, "", 0.9});
    refused({"a", PlantingKind::establishment, day(4, 1), {}, "sod", 90.0});
    CHECK_NOTHROW(check_planting({"a", PlantingKind::establishment, day(4, 1), {}, "sod", {}}));
}
