// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/columns.h"

#include "core/exchange/row_reader.h"
#include "core/input_error.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using Header = std::vector<std::string>;

namespace {
std::string refusal(Kind kind, const Header& header) {
    try {
        ColumnIndex(spec_of(kind), header, "t.csv", 1);
    } catch (const InputError& e) {
        return e.what();
    }
    return "accepted";
}
}  // namespace

TEST_CASE("the kind of a table is told from its header", "[exchange]") {
    CHECK(kind_of_header(Header{"site", "name", "latitude", "elevation_ft"}, "") == Kind::sites);
    CHECK(kind_of_header(Header{"meter", "site", "unit", "digits"}, "") == Kind::meters);
    CHECK(kind_of_header(Header{"area", "site", "size_ac", "meter"}, "") == Kind::areas);
    CHECK(kind_of_header(Header{"meter", "time", "register"}, "") == Kind::readings);
    CHECK(kind_of_header(Header{" Meter", "START", "end", "volume", "kind"}, "") == Kind::readings);
    CHECK(kind_of_header(Header{"station", "date", "tmax_c", "rain_mm"}, "") == Kind::weather);
    CHECK(kind_of_header(Header{"can", "x_ft", "y_ft", "volume_ml"}, "") == Kind::catches);
    CHECK(kind_of_header(Header{"meter", "time", "final", "first"}, "") == Kind::exchanges);
    CHECK(kind_of_header(Header{"station", "latitude"}, "") == Kind::weather_stations);
    CHECK(kind_of_header(Header{"meter", "from", "to", "billed_ccf"}, "") == Kind::bills);
    CHECK(kind_of_header(Header{"test", "place", "pressure_psi"}, "") == Kind::pressures);
    CHECK(kind_of_header(Header{"test", "finding", "place"}, "") == Kind::findings);
    // With a typing error the nearest kind is meant, so that the message can name the error.
    CHECK(kind_of_header(Header{"meter", "time", "regster"}, "") == Kind::readings);
    CHECK(kind_of_header(Header{"site", "nmae", "latitude", "elevation_ft"}, "") == Kind::sites);
    CHECK_THROWS_AS(kind_of_header(Header{"apples", "pears"}, ""), InputError);
}

TEST_CASE("unknown, missing and doubled columns", "[exchange]") {
    CHECK(refusal(Kind::areas, {"area", "site", "size_ft2"}) == "accepted");
    CHECK_THAT(refusal(Kind::readings, {"meter", "time", "regster"}),
               Contains("t.csv, row 1, column regster") && Contains("nearest is register"));
    CHECK_THAT(refusal(Kind::weather, {"date", "tmax_k"}), Contains("tmax_c or tmax_f"));
    CHECK_THAT(refusal(Kind::weather, {"date", "colour of the sky"}), !Contains("nearest"));
    CHECK_THAT(refusal(Kind::areas, {"area", "site"}),
               Contains("a column size_ft2, size_ac, size_m2 or size_ha"));
    CHECK_THAT(refusal(Kind::areas, {"area", "site", "size_ft2", "size_ac"}),
               Contains("one column for this, and there is size_ft2"));
    CHECK_THAT(refusal(Kind::readings, {"meter", "start", "volume"}), Contains("a column end"));
}

// DERIVED. Distances by hand: one swap, one replacement, one letter missing.
TEST_CASE("the nearest name", "[exchange][derived]") {
    const std::vector<std::string_view> known{"latitude", "longitude", "elevation_m", "site"};
    CHECK(nearest_name("latitdue", known) == "latitude");
    CHECK(nearest_name("longitute", known) == "longitude");
    CHECK(nearest_name("elevation", known) == "elevation_m");
    CHECK(nearest_name("stie", known) == "site");
    CHECK(nearest_name("quite another", known).empty());
    CHECK(nearest_name(std::string(10'000, 'x'), known).empty());
}

TEST_CASE("dates in the order that the map names", "[exchange]") {
    const auto day = calendar::make_date(2024, 6, 5);
    CHECK(parse_date_in("2024-06-05", DateOrder::iso) == day);
    CHECK_FALSE(parse_date_in("06/05/2024", DateOrder::iso));
    CHECK(parse_date_in("5/6/2024", DateOrder::day_month_year) == day);
    CHECK(parse_date_in("05.06.2024", DateOrder::day_month_year) == day);
    CHECK(parse_date_in("6-5-2024", DateOrder::month_day_year) == day);
    CHECK(parse_date_in("2024/06/05", DateOrder::year_month_day) == day);
    for (const char* bad : {"5/6/24", "31/6/2024", "5/6-2024", "5/6/2024 ", "005/6/2024", "5/6/"}) {
        CHECK_FALSE(parse_date_in(bad, DateOrder::day_month_year));
    }
    const auto at = [](const char* text, DateOrder o) {
        const auto t = parse_time_in(text, o);
        return t && t->local ? calendar::format_local_time(*t->local) : std::string("none");
    };
    CHECK(at("6/5/2024 6:05 PM", DateOrder::month_day_year) == "2024-06-05T18:05:00");
    CHECK(at("6/5/2024 12:05 am", DateOrder::month_day_year) == "2024-06-05T00:05:00");
    CHECK(at("5.6.2024 18:05:09", DateOrder::day_month_year) == "2024-06-05T18:05:09");
    CHECK(at("5.6.2024", DateOrder::day_month_year) == "2024-06-05T00:00:00");
    CHECK(at("2024-06-05", DateOrder::iso) == "2024-06-05T00:00:00");
    CHECK(at("5.6.2024 24:00", DateOrder::day_month_year) == "none");
    CHECK(at("5.6.2024 13:05 PM", DateOrder::day_month_year) == "none");
    CHECK(parse_time_in("2024-06-05T18:05-07:00", DateOrder::iso)->instant.has_value());
}
