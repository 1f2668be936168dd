// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/hourly_weather.h"

#include "core/input_error.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

// All CONSTRUCTED.
using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using tests::Scratch;

namespace {

HourlyFile read(const std::string& text, HourMark mark = HourMark::start,
                std::optional<std::chrono::minutes> offset = {}) {
    const Scratch folder;
    return read_hourly_weather(folder.write("h.csv", text), mark, offset);
}

std::string refusal(const std::string& text) {
    try {
        static_cast<void>(read(text));
    } catch (const InputError& e) {
        return std::to_string(e.issues().size()) + " issues: " + e.what();
    }
    return "accepted";
}

}  // namespace

TEST_CASE("hours in the site's standard time", "[exchange][constructed]") {
    const auto file = read("time,tmean_f,rhmean_percent,rs_w_m2,wind_mph,rain_in\n"
                           "2024-07-01T14:00,100.4,52,680.5,7.4,0\n"
                           "2024-07-01T13:00,95,,,,\n",
                           HourMark::start, std::chrono::hours{-7});
    REQUIRE(file.hours.size() == 2);
    CHECK_FALSE(file.has_offsets);
    const auto& h = file.hours[1];
    CHECK(calendar::format_instant(h.start) == "2024-07-01T21:00:00Z");
    CHECK_THAT(h.temperature->in_celsius(), WithinAbs(38.0, 1e-9));
    CHECK(h.rh_percent == 52.0);
    // 680.5 W/m2 for an hour: 680.5 x 3600 J.
    CHECK_THAT(h.solar->in(units::megajoule_per_m2), WithinAbs(2.4498, 1e-9));
    CHECK_THAT(h.wind->in(units::metre_per_second), WithinAbs(7.4 * 0.44704, 1e-12));
    CHECK(h.rain == units::Depth{});
    CHECK_FALSE(file.hours[0].solar);
    CHECK_FALSE(file.hours[0].rain);
}

TEST_CASE("times may mark the end of the hour and carry an offset", "[exchange][constructed]") {
    const auto file = read("time,tmax_c,tmin_c,rs_mj_m2\n"
                           "2024-07-01T13:00:00-07:00,31,29,1.1\n"
                           "2024-07-01T13:15:00-07:00,31,29,1.2\n",
                           HourMark::end);
    CHECK(file.has_offsets);
    CHECK(file.offset == std::chrono::minutes{-420});
    CHECK(calendar::format_instant(file.hours[0].start) == "2024-07-01T19:45:00Z");
    CHECK(file.hours[0].length == 15.0 * units::minute);
    CHECK_THAT(file.hours[0].temperature->in_celsius(), WithinAbs(30.0, 1e-12));
    CHECK_FALSE(read("time,tmean_c\n2024-07-01T13:00:00Z,31\n").offset);
}

TEST_CASE("a night's small negative radiation is darkness", "[exchange][constructed]") {
    CHECK(read("time,tmean_c,rs_w_m2\n2024-07-01T02:00,20,-3.1\n").hours[0].solar ==
          units::Insolation{});
    CHECK_THAT(refusal("time,tmean_c,rs_w_m2\n2024-07-01T02:00,20,-999\n"),
               Contains("row 2, column rs_w_m2"));
}

TEST_CASE("hourly tables that cannot be read say where", "[exchange][constructed]") {
    CHECK_THAT(refusal("time,tmean_c\n2024-07-01T02:00,20\n2024-07-01T02:00,21\n"),
               Contains("row 3, column time") && Contains("stands in row 2 too"));
    CHECK_THAT(refusal("time,tmean_c\n2024-07-01T02:00,20\n2024-07-01T05:00,21\n"),
               Contains("180 minutes"));
    CHECK_THAT(refusal("time,tmean_c\n2024-07-01,20\n"), Contains("a time of day"));
    CHECK_THAT(refusal("time,tmean_c\n2024-07-01T02:00,warm\n2024-07-01T03:00,120\n"),
               Contains("2 issues") && Contains("warm"));
    CHECK_THAT(refusal("time,tmean_c\n2024-07-01T02:00Z,20\n2024-07-01T03:00,21\n"),
               Contains("row 3") && Contains("offset"));
    CHECK_THAT(refusal("station,time,tmean_c\nA,2024-07-01T02:00,20\nB,2024-07-01T03:00,21\n"),
               Contains("one station"));
    CHECK_THAT(refusal("time,tmean_c\n"), Contains("at least one row"));
}

TEST_CASE("daily and hourly tables are told apart", "[exchange][constructed]") {
    const Scratch folder;
    CHECK(is_hourly(folder.write("h.csv", "time,tmean_c\n")));
    CHECK_FALSE(is_hourly(folder.write("d.csv", "date,tmax_c\n")));
}
