// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/landscape_coefficient.h"

#include "core/input_error.h"
#include "core/reference/table.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::weather;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

calendar::Month month(unsigned m) { return std::chrono::year{2024} / static_cast<int>(m); }

site::Area area_with(const std::string& plant) {
    site::Area area;
    area.code = "north";
    area.plant = plant;
    return area;
}

}  // namespace

// PUBLISHED. UC Center for Landscape and Urban Horticulture, turfgrass crop coefficients, table 1.
// Plain means of the months are 0.79 and 0.65; the table prints 0.80 and 0.60 a year, so its warm
// annual value is not the mean of its months: the months are what is checked here.
TEST_CASE("monthly coefficients for California", "[weather][published]") {
    const double cool[] = {0.61, 0.64, 0.75, 1.04, 0.95, 0.88, 0.94, 0.86, 0.74, 0.75, 0.69, 0.60};
    const double warm[] = {0.61, 0.54, 0.76, 0.72, 0.79, 0.68, 0.71, 0.71, 0.62, 0.54, 0.58, 0.55};
    for (unsigned m = 1; m <= 12; ++m) {
        CAPTURE(m);
        const auto c = landscape_coefficient(area_with("cool_season_california"), month(m));
        CHECK(c.value.value() == cool[m - 1]);
        CHECK_FALSE(c.assumed);
        CHECK_THAT(c.source.english(), Contains("Meyer, Gibeault & Youngner"));
        CHECK(landscape_coefficient(area_with("warm_season_california"), month(m)).value.value() ==
              warm[m - 1]);
    }
}

// PUBLISHED. FAO-56 table 12; Jia, Dukes & Jacobs (2009), abstract.
TEST_CASE("general and Florida coefficients", "[weather][published]") {
    CHECK(landscape_coefficient(area_with("kentucky_bluegrass"), month(7)).value.value() == 0.95);
    CHECK(landscape_coefficient(area_with("bermudagrass"), month(7)).value.value() == 0.85);
    const auto bahia = landscape_coefficient(area_with("bahiagrass_florida"), month(5));
    CHECK(bahia.value.value() == 0.90);
    CHECK(bahia.method == "monthly table florida_bahia, May");
}

// PUBLISHED. AZMET Phoenix report, 18 March 2024, winter rye, 7 days: ETos 0.81 in gives 0.57
// acceptable and 0.65 high; 0.85 in gives 0.60 and 0.68. 0.595 rounds up, hence 0.005 + 1e-9.
TEST_CASE("Phoenix turf report, March 2024", "[weather][published]") {
    const double acceptable =
        landscape_coefficient(area_with("bermudagrass_phoenix"), month(3)).value.value();
    const double high =
        landscape_coefficient(area_with("bermudagrass_phoenix_high"), month(3)).value.value();
    CHECK_THAT(0.81 * acceptable, WithinAbs(0.57, 0.005 + 1e-9));
    CHECK_THAT(0.81 * high, WithinAbs(0.65, 0.005 + 1e-9));
    CHECK_THAT(0.85 * acceptable, WithinAbs(0.60, 0.005 + 1e-9));
    CHECK_THAT(0.85 * high, WithinAbs(0.68, 0.005 + 1e-9));
}

// CONSTRUCTED. What the area's record says comes first; a missing plant is marked as assumed.
TEST_CASE("coefficient of an area", "[weather][constructed]") {
    auto area = area_with("bermudagrass");
    area.coefficient = 0.62;
    const auto own = landscape_coefficient(area, month(7));
    CHECK(own.value.value() == 0.62);
    CHECK(own.method == "coefficient of the area's record");

    const auto unknown = landscape_coefficient(area_with("moss"), month(7));
    CHECK(unknown.assumed);
    CHECK(unknown.value.value() == 0.95);
    CHECK_THAT(unknown.method.english(), Contains("plant not in the data"));
    CHECK(landscape_coefficient(area_with(""), month(7)).assumed);

    area.coefficient = 85.0;
    CHECK_THROWS_WITH(landscape_coefficient(area, month(7)), Contains("north"));
    area.coefficient = -0.1;
    CHECK_THROWS_AS(landscape_coefficient(area, month(7)), InputError);
    CHECK_THROWS_WITH(monthly_coefficient("atlantis", month(1)), Contains("california_cool"));
}

// CONSTRUCTED. Products of the landscape coefficient method.
TEST_CASE("species x density x microclimate", "[weather][constructed]") {
    CHECK_THAT(landscape_product(0.5, 1.3, 1.4).value.value(), WithinAbs(0.91, 1e-12));
    CHECK_THAT(landscape_product(0.5, 1.0, 1.0).value.value(), WithinAbs(0.50, 1e-12));
    CHECK_THROWS_AS(landscape_product(0.5, 1.4, 1.0), InputError);
    CHECK_THROWS_AS(landscape_product(1.2, 1.0, 1.0), InputError);
    CHECK_THROWS_AS(landscape_product(0.5, 1.0, 0.4), InputError);
}

// CONSTRUCTED. Every plant names a set that exists, and p lies within FAO-56's limits.
TEST_CASE("plants and coefficient sets fit together", "[weather][constructed]") {
    for (const auto& row : reference::Table::named("plants.csv").rows()) {
        CAPTURE(std::string(row.text("key")));
        CHECK_NOTHROW(monthly_coefficient(row.text("coefficients"), month(1)));
        CHECK(row.number("p") >= 0.1);
        CHECK(row.number("p") <= 0.8);
    }
}
