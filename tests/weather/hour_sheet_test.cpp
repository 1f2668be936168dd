// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/hour_sheet.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::weather;
using Catch::Matchers::WithinAbs;

// CONSTRUCTED.
TEST_CASE("an hour as typed becomes an hour to compute with", "[weather][constructed]") {
    SheetHour row;
    row.start = calendar::make_date(2024, 7, 1) + std::chrono::hours{13};
    row.length = std::chrono::minutes{15};
    row.temperature = 77.0;
    row.tdew = 50.0;
    row.rh_percent = 40.0;
    row.solar = 800.0;
    row.wind = 10.0;
    row.rain = 0.0;
    const auto hour = converted(row, {"f", "w_m2", "mph", "in", ""});
    CHECK(hour.start == row.start);
    CHECK(hour.length.in(units::minute) == 15.0);
    CHECK_THAT(hour.temperature->in_celsius(), WithinAbs(25.0, 1e-9));
    CHECK_THAT(hour.tdew->in_celsius(), WithinAbs(10.0, 1e-9));
    CHECK(hour.rh_percent == 40.0);
    // 800 W/m2 for 900 s are 0.72 MJ/m2; a sum stands as it is.
    CHECK_THAT(hour.solar->in(units::megajoule_per_m2), WithinAbs(0.72, 1e-12));
    CHECK_THAT(converted(row, {"f", "langley", "mph", "in", ""}).solar->in(units::langley), WithinAbs(800.0, 1e-9));
    CHECK_THAT(hour.wind->in(units::metre_per_second), WithinAbs(4.4704, 1e-12));
    REQUIRE(hour.rain);
    CHECK(hour.rain->si() == 0.0);
    CHECK_FALSE(hour.vapour_pressure.has_value());
    CHECK_THROWS_AS(converted(row, {"k", "w_m2", "mph", "in", ""}), InputError);
}
