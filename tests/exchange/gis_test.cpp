// SPDX-License-Identifier: GPL-3.0-or-later
// Workbooks and maps through the module. All CONSTRUCTED; the files are written here by GDAL.
#include "core/exchange/areas_geojson.h"
#include "core/exchange/gis_loader.h"
#include "core/store/meter_store.h"
#include "core/store/outline_store.h"
#include "core/store/site_store.h"
#include "tests/exchange/import_desk.h"
#include "tests/support/book_rows.h"

#include <cpl_vsi.h>
#include <ogrsf_frmts.h>

#include <algorithm>
#include <cstdlib>

using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;
using Path = std::filesystem::path;

namespace {

/// Takes files of any form, some of them with a map; what does not go in is thrown.
struct Desk : tests::ImportDesk {
    Desk()
        : ImportDesk({"site,name,latitude,elevation_m\nS,Site,40,100\n", "meter,site,unit\nA,S,m3\nB,S,m3\n"}) {
        ::setenv("EVENFALL_MODULES", EVENFALL_BINARY_DIR "/bin", 1);
    }
    ImportResult put(const Path& file, const std::string& map = {}) {
        ImportOptions o = tests::import_options();
        if (!map.empty()) o.map = scratch.write("map.json", map);
        const std::vector results{put_file(file, o)};
        require_accepted(results);
        return results.front();
    }
    std::string refusal(const Path& file, const std::string& map = {}) {
        try {
            put(file, map);
        } catch (const InputError& e) {
            return e.what();
        }
        return "accepted";
    }
};

GDALDatasetUniquePtr create(const Path& file, const char* driver) {
    GDALAllRegister();
    return GDALDatasetUniquePtr(GetGDALDriverManager()->GetDriverByName(driver)->Create(
        file.c_str(), 0, 0, 0, GDT_Unknown, nullptr));
}

/// Readings as a sheet: codes as text, times as real dates, registers as numbers.
void write_readings(const Path& file, const char* driver) {
    const auto data = create(file, driver);
    OGRLayer* layer = data->CreateLayer("Readings", nullptr, wkbNone, nullptr);
    OGRFieldDefn meter("meter", OFTString);
    OGRFieldDefn time("time", OFTDateTime);
    OGRFieldDefn value("register", OFTReal);
    for (OGRFieldDefn* f : {&meter, &time, &value}) layer->CreateField(f);
    for (int i = 0; i < 50; ++i) {
        OGRFeature f(layer->GetLayerDefn());
        f.SetField("meter", i % 2 == 0 ? "A" : "B");
        f.SetField("time", 2024, 7, 1 + i / 2, 6, 30, 0.0F, 0);
        f.SetField("register", 100 + 0.1 * i);
        REQUIRE(layer->CreateFeature(&f) == OGRERR_NONE);
    }
}

std::string readings_as_csv() {
    std::string text = "meter,time,register\n";
    for (int i = 0; i < 50; ++i) {
        text += std::string(i % 2 == 0 ? "A" : "B") + ",2024-07-" + (i / 2 < 9 ? "0" : "") +
                std::to_string(1 + i / 2) + "T06:30," + units::format_shortest(100 + 0.1 * i) + "\n";
    }
    return text;
}

std::string readings_wide() {
    std::string text = "time,A,B\n";
    for (int d = 0; d < 25; ++d) {
        text += std::string("2024-07-") + (d < 9 ? "0" : "") + std::to_string(d + 1) + "T06:30," +
                units::format_shortest(100 + 0.1 * (2 * d)) + "," +
                units::format_shortest(100 + 0.1 * (2 * d + 1)) + "\n";
    }
    return text;
}

constexpr const char* square = R"({"type":"Polygon","coordinates":[[[10,50],[10.01,50],[10.01,50.01],[10,50.01],[10,50]],
    [[10.004,50.004],[10.004,50.006],[10.006,50.006],[10.006,50.004],[10.004,50.004]]]})";

std::string collection(const std::string& features) {
    return R"({"type":"FeatureCollection","features":[)" + features + "]}";
}
std::string feature(const std::string& properties, const std::string& geometry) {
    return R"({"type":"Feature","properties":)" + properties + R"(,"geometry":)" + geometry + "}";
}

}  // namespace

TEST_CASE("the same readings as long CSV, wide CSV, XLSX and ODS give the same book",
          "[exchange][constructed][gis]") {
    Desk plain;
    CHECK(plain.put(plain.scratch.write("r.csv", readings_as_csv())).added == 50);
    const std::string expected = tests::book_rows(plain.book.file());
    CHECK(std::count(expected.begin(), expected.end(), '\n') == 53);  // with the site and two meters
    const auto same = [&](Desk& other) { return tests::book_rows(other.book.file()) == expected; };
    Desk wide;
    wide.put(wide.scratch.write("w.csv", readings_wide()),
             R"({"evenfall_map": 1, "wide": {"time": "time", "meters": {"A": "A", "B": "B"}}})");
    CHECK(same(wide));
    for (const char* driver : {"XLSX", "ODS"}) {
        CAPTURE(driver);
        Desk sheet;
        const Path file = sheet.scratch / (std::string("r.") + (driver[0] == 'X' ? "xlsx" : "ods"));
        write_readings(file, driver);
        const auto r = sheet.put(file);
        CHECK(r.added == 50);
        CHECK(same(sheet));
        CHECK(sheet.put(file).unchanged == 50);
    }
}

TEST_CASE("outlines become areas with their size on the ellipsoid", "[exchange][constructed][gis]") {
    Desk desk;
    const auto file = desk.scratch.write(
        "a.geojson", collection(feature(R"({"area":"N","site":"S","name":"North","colour":"green"})", square)));
    const auto r = desk.put(file);
    CHECK(r.added == 2);  // the area and its outline
    REQUIRE(r.notes.size() == 1);
    CHECK_THAT(r.notes[0].english(), Contains("colour"));
    const auto outline = store::find_outline(desk.book, "N");
    REQUIRE(outline);
    // A hundredth of a degree at 50.005 north is 716.9 m along the parallel and 1112.3 m along the
    // meridian (radii of curvature of WGS 84, by hand to four digits); the hole is 1/25 of it.
    CHECK_THAT(outline->measured.si(), WithinRel(0.96 * 716.9 * 1112.3, 1e-3));
    CHECK_THAT(store::find_area(desk.book, "N")->size.quantity().si(), WithinRel(outline->measured.si(), 1e-12));
    CHECK(desk.put(file).added == 0);

    SECTION("a declared size that is far off is noted") {
        desk.put(desk.scratch.write("a.csv", "area,site,size_ac\nM,S,150\n"));
        const auto again = desk.put(desk.scratch.write(
            "m.geojson", collection(feature(R"({"area":"M"})", square))));
        REQUIRE(again.notes.size() == 1);
        CHECK_THAT(again.notes[0].english(), Contains("given as 150 ac, its outline measures 189."));
        CHECK(store::find_area(desk.book, "M")->size.value == 150);
    }
    SECTION("the same outline in other forms") {
        const auto source = GDALDatasetUniquePtr(GDALDataset::Open(file.c_str(), GDAL_OF_VECTOR));
        REQUIRE(source);
        struct Form { const char* driver; const char* name; };
        for (const Form& form : {Form{"ESRI Shapefile", "n.shp"}, Form{"GPKG", "n.gpkg"}, Form{"KML", "n.kml"}}) {
            CAPTURE(form.driver);
            Desk other;
            const Path target = other.scratch / form.name;
            {
                const auto out = create(target, form.driver);
                REQUIRE(out);
                OGRLayer* layer = source->GetLayer(0);
                layer->ResetReading();
                REQUIRE(out->CopyLayer(layer, "areas") != nullptr);
            }
            other.put(target);
            CHECK_THAT(store::find_outline(other.book, "N")->measured.si(),
                       WithinRel(outline->measured.si(), 1e-6));
        }
    }
}

TEST_CASE("maps with mistakes", "[exchange][constructed][gis]") {
    Desk desk;
    const std::string bow_tie = R"({"type":"Polygon","coordinates":[[[0,0],[1,1],[1,0],[0,1],[0,0]]]})";
    CHECK_THAT(desk.refusal(desk.scratch.write("bow.geojson",
                   collection(feature(R"({"area":"N","site":"S"})", bow_tie)))),
               Contains("crosses itself"));
    CHECK_THAT(desk.refusal(desk.scratch.write("point.geojson",
                   collection(feature(R"({"area":"N","site":"S"})", R"({"type":"Point","coordinates":[0,0]})")))),
               Contains("a point or an open line"));
    CHECK_THAT(desk.refusal(desk.scratch.write("cut.geojson", R"({"type":"FeatureCollection","features":[{"ty)")),
               Contains("cut.geojson"));
    CHECK_THAT(desk.refusal(desk.scratch.write("false.xlsx", "meter,time,register\n")), Contains("packed file"));
    CHECK_THAT(desk.refusal(desk.scratch.write("vrt.geojson",
                   "<OGRVRTDataSource><OGRVRTLayer name=\"a\"><SrcDataSource>/etc/passwd</SrcDataSource>"
                   "</OGRVRTLayer></OGRVRTDataSource>")), Contains("in the form that its ending says"));
    CHECK_THAT(desk.refusal("/vsicurl/http://127.0.0.1:9/a.geojson"), Contains("ordinary file"));
    // A reference system that is a link would be fetched; the module refuses the network.
    CHECK_THAT(desk.refusal(desk.scratch.write("link.geojson",
                   R"({"type":"FeatureCollection","crs":{"type":"link","properties":{"href":"http://127.0.0.1:9/x","type":"proj4"}},"features":[)" +
                   feature(R"({"area":"N","site":"S"})", square) + "]}")),
               Contains("nothing from the network"));
    CHECK(store::areas(desk.book, "").empty());
}

TEST_CASE("a workbook that would unpack to gigabytes is refused first", "[exchange][constructed][gis]") {
    Desk desk;
    const Path file = desk.scratch / "bomb.xlsx";
    const std::string inside = "/vsizip/" + file.string() + "/xl/worksheets/sheet1.xml";
    VSILFILE* out = VSIFOpenL(inside.c_str(), "wb");
    REQUIRE(out != nullptr);
    const std::string zeros(std::size_t{1} << 20U, '0');
    for (int i = 0; i < 1100; ++i) REQUIRE(VSIFWriteL(zeros.data(), 1, zeros.size(), out) == zeros.size());
    VSIFCloseL(out);
    REQUIRE(std::filesystem::file_size(file) < 4'000'000);
    CHECK_THAT(desk.refusal(file), Contains("at most 1 GiB when unpacked"));
    const Path zip = desk.scratch / "bomb.zip";
    std::filesystem::rename(file, zip);
    CHECK_THAT(desk.refusal(zip), Contains("at most 1 GiB when unpacked"));
}

namespace {

constexpr const char* kml_head = R"(<?xml version="1.0" encoding="UTF-8"?><kml xmlns="http://www.opengis.net/kml/2.2"><Document>)";
constexpr const char* kml_place =
    R"(<Placemark><name>N</name><Polygon><outerBoundaryIs><LinearRing><coordinates>
    10,50 10.01,50 10.01,50.01 10,50.01 10,50</coordinates></LinearRing></outerBoundaryIs></Polygon></Placemark>)";
constexpr const char* kml_tail = "</Document></kml>";
constexpr const char* name_is_area =
    R"({"evenfall_map": 1, "columns": {"Name": "area"}, "constants": {"site": "S"}})";

/// Adds a file to an archive, which is made when it is not there.
void pack(const Path& archive, const std::string& name, const std::string& bytes) {
    const std::string target = "/vsizip/{" + archive.string() + "}/" + name;
    VSILFILE* out = VSIFOpenL(target.c_str(), "wb");
    REQUIRE(out != nullptr);
    REQUIRE(VSIFWriteL(bytes.data(), 1, bytes.size(), out) == bytes.size());
    REQUIRE(VSIFCloseL(out) == 0);
}

/// Writes the square as n.shp and its companions; the stem keeps their names together.
void write_shapefile(const Path& target, const Path& geojson) {
    GDALAllRegister();
    const auto source = GDALDatasetUniquePtr(GDALDataset::Open(geojson.c_str(), GDAL_OF_VECTOR));
    REQUIRE(source);
    const auto out = create(target, "ESRI Shapefile");
    REQUIRE(out);
    REQUIRE(out->CopyLayer(source->GetLayer(0), "n") != nullptr);
}

double measured(Desk& desk) { return store::find_outline(desk.book, "N")->measured.si(); }

}  // namespace

TEST_CASE("a zipped Shapefile gives the same outline as the loose one", "[exchange][constructed][gis]") {
    Desk desk;
    const auto geojson = desk.scratch.write("a.geojson", collection(feature(R"({"area":"N","site":"S"})", square)));
    write_shapefile(desk.scratch / "n.shp", geojson);
    desk.put(geojson);
    for (const char* folder : {"", "some folder/"}) {
        CAPTURE(folder);
        Desk other;
        const Path zip = other.scratch / "areas of the farm.zip";
        for (const char* ending : {".shp", ".shx", ".dbf", ".prj"}) {
            pack(zip, std::string(folder) + "n" + ending, tests::bytes_of(desk.scratch / (std::string("n") + ending)));
        }
        pack(zip, "__MACOSX/._n.shp", "a companion that some systems pack");
        CHECK(other.put(zip).added == 2);
        CHECK_THAT(measured(other), WithinRel(measured(desk), 1e-9));
        CHECK(other.put(zip).added == 0);
    }
    SECTION("without its reference system it needs a map") {
        Desk other;
        const Path zip = other.scratch / "n.zip";
        for (const char* ending : {".shp", ".shx", ".dbf"}) {
            pack(zip, std::string("n") + ending, tests::bytes_of(desk.scratch / (std::string("n") + ending)));
        }
        CHECK_THAT(other.refusal(zip), Contains("a reference system"));
        other.put(zip, R"({"evenfall_map": 1, "crs": "EPSG:4326"})");
        CHECK_THAT(measured(other), WithinRel(measured(desk), 1e-9));
    }
    SECTION("a zip with no Shapefile in it, and one that was cut") {
        Desk other;
        const Path zip = other.scratch / "t.zip";
        pack(zip, "readme.geojson", tests::bytes_of(geojson));
        CHECK_THAT(other.refusal(zip), Contains("a zip with a Shapefile"));
        const Path whole = other.scratch / "n.zip";
        pack(whole, "n.shp", tests::bytes_of(desk.scratch / "n.shp"));
        std::filesystem::resize_file(whole, std::filesystem::file_size(whole) - 30);
        CHECK_THAT(other.refusal(whole), Contains("packed file that can be opened"));
        const Path half = other.scratch / "half.zip";
        const std::string shp = tests::bytes_of(desk.scratch / "n.shp");
        pack(half, "n.shp", shp.substr(0, shp.size() / 2));
        CHECK(other.refusal(half) != "accepted");
        CHECK(store::areas(other.book, "").empty());
    }
}

TEST_CASE("a KMZ gives the outline of its document", "[exchange][constructed][gis]") {
    Desk desk;
    const Path kmz = desk.scratch / "n.kmz";
    pack(kmz, "doc.kml", std::string(kml_head) + kml_place + kml_tail);
    CHECK(desk.put(kmz, name_is_area).added == 2);
    // The square of the GeoJSON test without its hole.
    CHECK_THAT(measured(desk), WithinRel(716.9 * 1112.3, 1e-3));
    SECTION("a link to the network or to another file is not followed") {
        for (const char* href : {"http://127.0.0.1:9/a.kml", "/etc/passwd", "/vsicurl/http://127.0.0.1:9/a.kml"}) {
            CAPTURE(href);
            Desk other;
            const Path linked = other.scratch / "l.kmz";
            pack(linked, "doc.kml", std::string(kml_head) + "<NetworkLink><Link><href>" + href +
                                        "</href></Link></NetworkLink>" + kml_tail);
            CHECK(other.refusal(linked, name_is_area) != "accepted");
            CHECK(store::areas(other.book, "").empty());
        }
    }
    SECTION("an entity that grows is refused") {
        Desk other;
        const Path bomb = other.scratch / "e.kmz";
        pack(bomb, "doc.kml", R"(<?xml version="1.0"?><!DOCTYPE kml [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;">]>)"
                              R"(<kml xmlns="http://www.opengis.net/kml/2.2"><Document><name>&b;</name></Document></kml>)");
        CHECK(other.refusal(bomb, name_is_area) != "accepted");
    }
}

TEST_CASE("packed maps that would unpack to too much are refused first", "[exchange][constructed][gis]") {
    Desk desk;
    const std::string zeros(std::size_t{1} << 20U, '0');
    const Path kmz = desk.scratch / "b.kmz";
    VSILFILE* out = VSIFOpenL(("/vsizip/{" + kmz.string() + "}/doc.kml").c_str(), "wb");
    REQUIRE(out != nullptr);
    for (int i = 0; i < 140; ++i) REQUIRE(VSIFWriteL(zeros.data(), 1, zeros.size(), out) == zeros.size());
    VSIFCloseL(out);
    REQUIRE(std::filesystem::file_size(kmz) < 1'000'000);
    CHECK_THAT(desk.refusal(kmz), Contains("at most 128 MiB when unpacked"));
    const Path large = desk.scratch.write("large.kml", kml_head);
    std::filesystem::resize_file(large, std::uintmax_t{200} << 20U);  // sparse
    CHECK_THAT(desk.refusal(large), Contains("at most 128 MiB"));
}

TEST_CASE("names that mean something special to the reader are not taken from the user", "[exchange][constructed][gis]") {
    Desk desk;
    for (const char* name : {"/vsizip//tmp/a.zip/n.shp", "/vsizip/{/tmp/a.zip}/n.shp", "/vsimem/a.zip", "/vsitar//tmp/a.kmz",
                             "/vsistdin/a.kml", "http://127.0.0.1:9/a.kmz", "zip:/tmp/a.zip"}) {
        CAPTURE(name);
        CHECK_THAT(desk.refusal(name), Contains("ordinary file"));
    }
    const Path braces = desk.scratch / "a}b.zip";
    pack(desk.scratch / "ab.zip", "n.shp", "x");
    std::filesystem::rename(desk.scratch / "ab.zip", braces);
    CHECK_THAT(desk.refusal(braces), Contains("in the form that its ending says"));
}

TEST_CASE("a plane drawing needs its unit", "[exchange][constructed][gis]") {
    Desk desk;
    const Path file = desk.scratch / "plan.dxf";
    {
        const auto out = create(file, "DXF");
        REQUIRE(out);
        OGRLayer* layer = out->CreateLayer("entities", nullptr, wkbUnknown, nullptr);
        OGRFeature f(layer->GetLayerDefn());
        OGRPolygon polygon;
        OGRLinearRing ring;
        for (const auto& [x, y] : {std::pair{0, 0}, {100, 0}, {100, 50}, {0, 50}, {0, 0}}) ring.addPoint(x, y);
        polygon.addRing(&ring);
        f.SetGeometry(&polygon);
        REQUIRE(layer->CreateFeature(&f) == OGRERR_NONE);
    }
    CHECK_THAT(desk.refusal(file), Contains("a reference system"));
    desk.put(file, R"({"evenfall_map": 1, "drawing_unit": "ft", "constants": {"area": "D", "site": "S"}})");
    CHECK_THAT(store::find_outline(desk.book, "D")->measured.in(units::square_foot), WithinRel(5000.0, 1e-9));
}

// GDAL is the outside reader: what it makes of our file must be what the book holds.
TEST_CASE("the map of areas as GDAL reads it, and back into a book", "[exchange][constructed][gis]") {
    Desk desk;
    const std::string two = R"({"type":"MultiPolygon","coordinates":[[[[11,50],[11,50.01],[11.01,50.01],[11.01,50],[11,50]]],
        [[[12,50],[12,50.01],[12.01,50.01],[12.01,50],[12,50]]]]})";
    desk.put(desk.scratch.write("a.geojson", collection(feature(R"({"area":"N","site":"S"})", square) + "," +
                                                        feature(R"({"area":"M","site":"S"})", two))));
    desk.put(desk.scratch.write("b.csv", "area,site,size_m2\nB,S,10\n"));
    const Path map = desk.scratch / "map.geojson";
    FeatureFile file(map);
    for (const char* code : {"N", "M", "B"}) {
        const auto outline = store::find_outline(desk.book, code);
        const auto shown = map_outline(outline ? outline->geojson : "", outline ? outline->measured : units::Area());
        file.feature(code, shown.geometry, {{"area", std::string(code)}, {"site", std::string("S")}, {"du_lq", 0.625},
                                            {"use_gal", std::monostate()}});
    }
    file.close();

    GDALAllRegister();
    const auto read = GDALDatasetUniquePtr(GDALDataset::Open(map.c_str(), GDAL_OF_VECTOR));
    REQUIRE(read);
    OGRLayer* layer = read->GetLayer(0);
    REQUIRE(layer->GetFeatureCount() == 3);
    REQUIRE(layer->GetSpatialRef() != nullptr);
    CHECK(std::string(layer->GetSpatialRef()->GetAuthorityCode(nullptr)) == "4326");
    std::size_t with_place = 0;
    for (const auto& f : *layer) {
        CHECK(f->GetFieldAsDouble("du_lq") == 0.625);
        CHECK(f->IsFieldNull(f->GetFieldIndex("use_gal")));
        const OGRGeometry* geometry = f->GetGeometryRef();
        if (std::string(f->GetFieldAsString("area")) == "B") {
            CHECK(geometry == nullptr);
            continue;
        }
        ++with_place;
        REQUIRE(geometry != nullptr);
        CHECK(geometry->IsValid());
        const bool one = std::string(f->GetFieldAsString("area")) == "N";
        CHECK(wkbFlatten(geometry->getGeometryType()) == (one ? wkbPolygon : wkbMultiPolygon));
        const OGRPolygon* polygon = one ? geometry->toPolygon() : geometry->toMultiPolygon()->getGeometryRef(0);
        CHECK_FALSE(polygon->getExteriorRing()->isClockwise());
        CHECK(polygon->getNumInteriorRings() == (one ? 1 : 0));
        if (one) CHECK(polygon->getInteriorRing(0)->isClockwise());
    }
    CHECK(with_place == 2);

    // Into another book by our own reader: the same sizes.
    Desk other;
    const Path again = other.scratch.write("only.geojson", tests::bytes_of(map));
    CHECK_THAT(other.refusal(again), Contains("outline"));  // B has none
    const auto n = store::find_outline(desk.book, "N");
    other.put(other.scratch.write("n.geojson", collection(feature(R"({"area":"N","site":"S"})",
                                                                  map_outline(n->geojson, n->measured).geometry))));
    CHECK_THAT(store::find_outline(other.book, "N")->measured.si(), WithinRel(n->measured.si(), 1e-12));
}
