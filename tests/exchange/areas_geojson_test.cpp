// SPDX-License-Identifier: GPL-3.0-or-later
// Rules of RFC 7946 on constructed outlines. Reading back by GDAL: gis_test.cpp.
#include "core/exchange/areas_geojson.h"

#include "core/site/shapes.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace evenfall;
using namespace evenfall::exchange;
using Json = nlohmann::json;

namespace {

/// Twice the signed area; above zero when the ring runs counter-clockwise.
double turn(const Json& ring) {
    double sum = 0.0;
    for (std::size_t i = 0; i + 1 < ring.size(); ++i) {
        sum += ring[i][0].get<double>() * ring[i + 1][1].get<double>() - ring[i + 1][0].get<double>() * ring[i][1].get<double>();
    }
    return sum;
}

void check_ring(const Json& ring, bool outer) {
    CAPTURE(ring.dump());
    CHECK(ring.size() >= 4);                 // section 3.1.6
    CHECK(ring.front() == ring.back());
    CHECK((turn(ring) > 0.0) == outer);      // the right-hand rule
}

// Clockwise outside, counter-clockwise inside, and open: everything the wrong way round.
const site::Ring outside{{10, 50}, {10, 50.01}, {10.01, 50.01}, {10.01, 50}};
const site::Ring hole{{10.004, 50.004}, {10.006, 50.004}, {10.006, 50.006}, {10.004, 50.006}};
constexpr const char* wrong_way =
    R"({"type":"MultiPolygon","coordinates":[[[[10,50],[10,50.01],[10.01,50.01],[10.01,50]],)"
    R"([[10.004,50.004],[10.006,50.004],[10.006,50.006],[10.004,50.006]]]]})";

}  // namespace

TEST_CASE("an outline becomes a geometry by the rules of RFC 7946", "[exchange][derived]") {
    const auto size = site::area_on_ellipsoid({{outside, hole}});
    const MapOutline one = map_outline(wrong_way, size);
    const Json geometry = Json::parse(one.geometry);
    CHECK(one.why_none.empty());
    CHECK(geometry["type"] == "Polygon");
    CHECK_FALSE(geometry.contains("crs"));  // section 4: WGS 84 and no other
    REQUIRE(geometry["coordinates"].size() == 2);
    check_ring(geometry["coordinates"][0], true);
    check_ring(geometry["coordinates"][1], false);
    CHECK(geometry["coordinates"][0].size() == 5);

    const std::string two = R"({"type":"MultiPolygon","coordinates":[[[[10,50],[10.01,50],[10.01,50.01],[10,50.01],[10,50]]],)"
                            R"([[[11,50],[11,50.01],[11.01,50.01],[11.01,50],[11,50]]]]})";
    const site::Ring east{{11, 50}, {11, 50.01}, {11.01, 50.01}, {11.01, 50}};
    const Json several = Json::parse(map_outline(two, site::area_on_ellipsoid({{outside}, {east}})).geometry);
    CHECK(several["type"] == "MultiPolygon");
    REQUIRE(several["coordinates"].size() == 2);
    for (const Json& polygon : several["coordinates"]) check_ring(polygon[0], true);
}

TEST_CASE("an outline that is on no map has no geometry and says why", "[exchange][constructed]") {
    CHECK(map_outline("", units::Area()).geometry == "null");
    // A drawing of 90 ft by 45 ft: its numbers would do as degrees, its size would not.
    const std::string drawing = R"({"type":"MultiPolygon","coordinates":[[[[0,0],[90,0],[90,45],[0,45],[0,0]]]]})";
    const MapOutline plane = map_outline(drawing, 90.0 * 45.0 * units::square_foot);
    CHECK(plane.geometry == "null");
    CHECK_THAT(plane.why_none, Catch::Contains("drawing"));
    const std::string far = R"({"type":"MultiPolygon","coordinates":[[[[0,0],[900,0],[900,450],[0,450],[0,0]]]]})";
    CHECK(map_outline(far, 1.0 * units::acre).geometry == "null");
    CHECK(map_outline("{", 1.0 * units::acre).geometry == "null");
}

TEST_CASE("a feature file", "[exchange][constructed]") {
    const tests::Scratch scratch;
    FeatureFile file(scratch / "a.geojson");
    file.feature("A-1", "null", {{"area_name", std::string("the \"dry\" corner\n\x01")}, {"du_lq", 0.715}, {"use_gal", {}}});
    file.feature("A-2", R"({"type":"Point","coordinates":[1,2]})", {});
    file.close();
    CHECK(file.features() == 2);
    const Json all = Json::parse(tests::bytes_of(scratch / "a.geojson"));
    CHECK(all["type"] == "FeatureCollection");
    REQUIRE(all["features"].size() == 2);
    const Json& first = all["features"][0];
    CHECK(first["type"] == "Feature");
    CHECK(first["id"] == "A-1");
    CHECK(first["geometry"].is_null());  // section 3.2: a feature without a place has null
    CHECK(first["properties"]["area_name"] == "the \"dry\" corner\n\x01");
    CHECK(first["properties"]["du_lq"] == 0.715);
    CHECK(first["properties"]["use_gal"].is_null());
    FeatureFile none(scratch / "none.geojson");
    none.close();
    CHECK(Json::parse(tests::bytes_of(scratch / "none.geojson"))["features"].empty());
}
