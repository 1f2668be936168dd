// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/stations.h"

#include "core/audit/uniformity.h"
#include "core/input_error.h"
#include "tests/audit/catches.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::audit;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

/// Two stations side by side: North ran 10 minutes and reaches cans 1 to 3, South 20 and cans 3, 4.
CatchTest two_stations() {
    CatchTest t = test::sheet({6, 8, 9, 12});
    t.stations = {{"North", 10}, {"South", 20}};
    const double north[] = {6, 8, 4, 0};
    for (std::size_t i = 0; i < 4; ++i) {
        t.catches[i].by_station = {{"North", north[i]}, {"South", t.catches[i].reading - north[i]}};
    }
    return t;
}

}  // namespace

TEST_CASE("rates of stations that share an area", "[audit][derived]") {
    const StationSplit s = split_stations(two_stations());
    REQUIRE(s.stations.size() == 2);
    CHECK(s.why_not.empty());
    // North: 18 mm over 4 cans in 10 minutes: 4.5 mm, 27 mm/h; at its 3 cans 6 mm, 36 mm/h.
    CHECK(s.stations[0].wetted == 3);
    CHECK_THAT(s.stations[0].area_rate->in(units::millimetre_per_hour), WithinAbs(27.0, 1e-9));
    CHECK_THAT(s.stations[0].wetted_rate->in(units::millimetre_per_hour), WithinAbs(36.0, 1e-9));
    // South: 17 mm over 4 cans in 20 minutes: 4.25 mm, 12.75 mm/h; at its 2 cans 8.5 mm, 25.5 mm/h.
    CHECK_THAT(s.stations[1].area_rate->in(units::millimetre_per_hour), WithinAbs(12.75, 1e-9));
    CHECK_THAT(s.stations[1].wetted_rate->in(units::millimetre_per_hour), WithinAbs(25.5, 1e-9));
    // The area as a whole: the summed catches, and no net rate, for the stations took turns.
    const UniformityResult r = analyse_uniformity(two_stations(), QuarterRule::whole_cans);
    CHECK_THAT(r.du_lq.value(), WithinAbs(6.0 / 8.75, 1e-12));
    CHECK_FALSE(r.net_rate.has_value());
}

TEST_CASE("an area worked out for other minutes", "[audit][derived]") {
    // South twice as long: 6, 8, 4 + 10, 24.
    const CatchTest longer = with_minutes(two_stations(), {{"South", 40}});
    CHECK_THAT(longer.catches[2].reading, WithinAbs(14.0, 1e-12));
    CHECK_THAT(longer.catches[3].reading, WithinAbs(24.0, 1e-12));
    CHECK(split_stations(longer).stations[1].area_rate ==
          split_stations(two_stations()).stations[1].area_rate);
    // Switched off: what is left is North alone, with a net rate.
    const CatchTest north = with_minutes(two_stations(), {{"South", 0}});
    CHECK(north.stations.size() == 1);
    CHECK_THAT(analyse_uniformity(north, QuarterRule::whole_cans).net_rate->in(units::millimetre_per_hour),
               WithinAbs(27.0, 1e-9));
    CHECK_THROWS_WITH(with_minutes(two_stations(), {{"East", 5}}), Contains("one of the stations"));
    CHECK_THROWS_AS(with_minutes(two_stations(), {{"North", -1}}), InputError);
}

TEST_CASE("cans read once cannot be split, cans read in part are refused", "[audit]") {
    CatchTest once = two_stations();
    for (auto& c : once.catches) c.by_station.clear();
    const StationSplit s = split_stations(once);
    CHECK_THAT(s.why_not, Contains("read once"));
    CHECK_FALSE(s.stations[0].area_rate.has_value());
    CHECK_THROWS_AS(with_minutes(once, {{"North", 5}}), InputError);
    CatchTest part = two_stations();
    part.catches[1].by_station.pop_back();
    part.catches[1].reading = 8;
    CHECK_THROWS_WITH(split_stations(part), Contains("can 2") && Contains("no reading after station South"));
    CatchTest sum = two_stations();
    sum.catches[1].reading = 9;
    CHECK_THROWS_WITH(split_stations(sum), Contains("the sum over the stations"));
}
