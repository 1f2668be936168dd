// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/filing.h"

#include "app/workflow/filed_outline.h"
#include "core/exchange/import.h"
#include "core/review/use_record.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using evenfall::tests::Scratch;
using Ring = std::vector<std::pair<double, double>>;

namespace {

// CONSTRUCTED: about 87 m by 111 m.
const Ring field{{-121.350, 38.410}, {-121.349, 38.410}, {-121.349, 38.411}, {-121.350, 38.411}};

std::string pairs(const Ring& ring) {
    std::string text;
    for (std::size_t i = 0; i <= ring.size(); ++i) {
        const auto& [x, y] = ring[i % ring.size()];
        text += (i == 0 ? "[" : ",[") + std::to_string(x) + "," + std::to_string(y) + "]";
    }
    return "[" + text + "]";
}

store::AreaOutline outline(const std::string& polygons, units::Area measured) {
    return {R"({"type":"MultiPolygon","coordinates":[)" + polygons + "]}", measured};
}

store::Book book_with_field(const Scratch& scratch) {
    auto book = store::Book::create(scratch / "b.evenfall");
    exchange::ImportOptions options;
    options.at = "2025-08-01T00:00:00Z";
    options.who = "test";
    const std::vector<std::filesystem::path> files{
        scratch.write("sites.csv", "site,name,latitude,elevation_ft\nS,One,38.4,60\n"),
        scratch.write("areas.csv", "area,site,size_ac,coefficient,head_type\nA,S,2.4,0.8,rotor\n"),
        scratch.write("catches.csv", "test,area,date,minutes,can,x_ft,y_ft,depth_in\nT,A,2025-05-20,30,1,0,0,0.2\n"
                                     "T,,,,2,10,0,0.4\nT,,,,3,20,0,0.4\nT,,,,4,30,0,0.6\n")};
    exchange::require_accepted(exchange::import_files(book, files, options));
    return book;
}

exchange::OpenedFiling filed(store::Book& book, const Scratch& scratch) {
    workflow::FilingOrder order{};
    order.site = std::string("S");
    order.quarter_rule = audit::QuarterRule::whole_cans;
    order.rain = std::string("nrcs");
    order.written = std::string("2025-08-02T00:00:00Z");
    order.software = std::string("test");
    order.who = std::string("auditor");
    order.out = scratch / "filing.zip";
    static_cast<void>(workflow::file_filing(book, order));
    return exchange::open_filing(order.out);
}

}  // namespace

TEST_CASE("a filing carries the outline of an area, so that its size can be recomputed", "[app][constructed]") {
    const Scratch scratch;
    auto book = book_with_field(scratch);
    const auto measured = review::outline_area(field).value();
    store::add_outline(book, "A", outline("[" + pairs(field) + "]", measured), std::nullopt);
    const auto opened = filed(book, scratch);
    REQUIRE(opened.filing.areas.size() == 1);
    CHECK(opened.filing.areas[0].outline == field);
}

TEST_CASE("a filing of an area without outline has none", "[app]") {
    const Scratch scratch;
    auto book = book_with_field(scratch);
    CHECK(filed(book, scratch).filing.areas.at(0).outline.empty());
}

TEST_CASE("an outline that a filing has no form for is left out, not bent", "[app][constructed]") {
    const auto measured = review::outline_area(field).value();
    CHECK(workflow::ring_to_file(outline("[" + pairs(field) + "]", measured)) == field);
    // A hole, two pieces, and a drawing in metres whose numbers could be degrees.
    const Ring hole{{-121.3496, 38.4104}, {-121.3494, 38.4104}, {-121.3494, 38.4106}};
    CHECK(workflow::ring_to_file(outline("[" + pairs(field) + "," + pairs(hole) + "]", measured)).empty());
    CHECK(workflow::ring_to_file(outline("[" + pairs(field) + "],[" + pairs(hole) + "]", measured)).empty());
    const Ring metres{{0, 0}, {60, 0}, {60, 40}, {0, 40}};
    CHECK(workflow::ring_to_file(outline("[" + pairs(metres) + "]", 2400.0 * units::square_metre)).empty());
    CHECK(workflow::ring_to_file(outline("[" + pairs({{500, 0}, {560, 0}, {560, 40}}) + "]", measured)).empty());
    CHECK_THROWS_AS(workflow::ring_to_file({"{\"type\":", measured}), store::BookError);
    CHECK_THROWS_AS(workflow::ring_to_file({R"({"coordinates":[[["x"]]]})", measured}), store::BookError);
}
