// SPDX-License-Identifier: GPL-3.0-or-later
// The demo's book out and in again, as a user would do it. The scenario is CONSTRUCTED; what is
// compared is read from both files with SQLite alone.
#include "tests/support/book_dump.h"
#include "tests/support/command_line.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>

using evenfall::tests::bytes_of;
using evenfall::tests::Scratch;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinRel;
using Json = nlohmann::json;
namespace fs = std::filesystem;

namespace {

evenfall::tests::Answer run(const std::vector<std::string>& arguments) { return evenfall::tests::evenfall(arguments); }

std::vector<std::string> tables_in(const fs::path& folder) {
    std::vector<std::string> files;
    for (const auto& entry : fs::directory_iterator(folder)) {
        if (entry.path().extension() == ".csv") files.push_back(entry.path().string());
    }
    std::sort(files.begin(), files.end());
    return files;
}

/// The demo's tables in a book, without its reports, which take most of its time.
std::string demo_book(const Scratch& scratch) {
    const std::string out = (scratch / "demo").string();
    const auto made = run({"demo", "--out", out, "--format", "csv", "--json"});
    REQUIRE(made.status == 0);
    return Json::parse(made.out)["book"].get<std::string>();
}

const Json& feature_of(const Json& map, const std::string& area) {
    for (const Json& f : map["features"]) {
        if (f["id"] == area) return f;
    }
    FAIL("no area " << area);
    return map;
}

constexpr const char* plan_json = R"({"evenfall_plan":1,"name":"Commons","units":{"length":"ft","flow":"gpm"},
 "outline":[[[0,0],[30,0],[30,30],[0,30]]],
 "heads":[{"id":"A1","x":0,"y":0,"radius":30,"flow":1.1,"arc":90,"facing":45},{"id":"A2","x":30,"y":30,"radius":30,"flow":1.1,"arc":90,"facing":225}]})";

}  // namespace

TEST_CASE("the demo's book comes back from its tables, and gives them again", "[app][constructed]") {
    const Scratch scratch;
    const std::string book = demo_book(scratch);
    const std::string plan = scratch.write("plan.json", plan_json).string();
    REQUIRE(run({"overlap", plan, "--keep-in", book, "--site", "AV", "--code", "P-1"}).status == 0);
    const fs::path out = scratch / "out";
    const auto written = run({"export", book, "--out", out.string(), "--json"});
    INFO(written.err);
    REQUIRE(written.status == 0);
    const Json answer = Json::parse(written.out);
    CHECK(answer["files"].size() >= 7);
    CHECK(answer["plans"].size() >= 1);
    CHECK(answer["areas_geojson"].is_null());
    CHECK_THAT(bytes_of(out / "CONTENTS.txt"), Contains("evenfall overlap plans/P-1.json --keep-in NEW.evenfall --site AV --code P-1"));

    const std::string copy = (scratch / "copy.evenfall").string();
    REQUIRE(run({"new", copy}).status == 0);
    std::vector<std::string> import{"import", copy};
    for (const std::string& table : tables_in(out)) import.push_back(table);
    const auto read = run(import);
    INFO(read.err);
    REQUIRE(read.status == 0);
    for (const Json& p : answer["plans"]) {
        const auto kept = run({"overlap", (out / p["file"].get<std::string>()).string(), "--keep-in", copy, "--site",
                               p["site"].get<std::string>(), "--code", p["plan"].get<std::string>()});
        INFO(kept.err);
        REQUIRE(kept.status == 0);
    }
    CHECK(evenfall::tests::user_records(book) == evenfall::tests::user_records(copy));

    REQUIRE(run({"export", copy, "--out", (scratch / "again").string()}).status == 0);
    for (const std::string& table : tables_in(out)) {
        CAPTURE(table);
        CHECK(bytes_of(table) == bytes_of(scratch / "again" / fs::path(table).filename().string()));
    }
    CHECK(bytes_of(out / "plans/P-1.json") == bytes_of(scratch / "again" / "plans/P-1.json"));
    // Importing once more changes nothing.
    CHECK(run(import).status == 0);
    CHECK(evenfall::tests::user_records(book) == evenfall::tests::user_records(copy));
}

TEST_CASE("the map shows each area with the figures that the other commands give", "[app][constructed]") {
    const Scratch scratch;
    const std::string book = demo_book(scratch);
    // One area gets an outline, drawn clockwise with a hole.
    const auto outline = scratch.write("o.csv",
        "area,outline,outline_m2\nAV-PLAY,\"{\"\"type\"\":\"\"MultiPolygon\"\",\"\"coordinates\"\":[[[[-121.18,38.62],[-121.18,38.621],"
        "[-121.179,38.621],[-121.179,38.62],[-121.18,38.62]]]]}\",9664\n").string();
    const auto put = run({"import", book, outline});
    INFO(put.err);
    REQUIRE(put.status == 0);
    const auto written = run({"export", book, "--out", (scratch / "out").string(), "--areas-geojson", "--from", "2025-01", "--to", "2025-12", "--json"});
    INFO(written.err);
    REQUIRE(written.status == 0);
    CHECK(Json::parse(written.out)["areas_geojson"] == "areas.geojson");
    const Json map = Json::parse(bytes_of(scratch / "out" / "areas.geojson"));
    CHECK(map["features"].size() == 10);
    const Json& play = feature_of(map, "AV-PLAY");
    CHECK(play["geometry"]["type"] == "Polygon");
    CHECK(play["properties"]["no_outline_because"].is_null());
    CHECK(feature_of(map, "AV-WALK")["geometry"].is_null());
    CHECK(feature_of(map, "AV-WALK")["properties"]["no_outline_because"].is_string());
    const auto season = run({"season", book, "--site", "AV", "--from", "2025-01", "--to", "2025-12", "--json"});
    REQUIRE(season.status == 0);
    for (const Json& area : Json::parse(season.out)["areas"]) {
        const Json& shown = feature_of(map, area["area"])["properties"];
        CAPTURE(area["area"], shown.dump());
        CHECK_THAT(shown["use_gal"].get<double>(), WithinRel(area["use_gal"].get<double>(), 1e-9));
        CHECK_THAT(shown["need_gal"].get<double>(), WithinRel(area["need_gal"].get<double>(), 1e-9));
        CHECK_THAT(shown["budget_gal"].get<double>(), WithinRel(area["budget_gal"].get<double>(), 1e-9));
        CHECK_THAT(shown["leak_gal"].get<double>() + 1.0, WithinRel(area["waste"]["leak_gal"].get<double>() + 1.0, 1e-9));
        // A cubic metre is 264.172 gal (NIST Handbook 44, appendix C).
        CHECK_THAT(shown["use_gal"].get<double>() / shown["use_m3"].get<double>(), WithinRel(264.172, 1e-6));
    }
    CHECK(play["properties"]["du_lq"].get<double>() > 0.2);
    CHECK(play["properties"]["du_lq"].get<double>() < 0.75);  // its planted fault: worn nozzles
    CHECK(play["properties"]["net_rate_mm_h"].is_number());
}

TEST_CASE("an export overwrites nothing and leaves no half", "[app][constructed]") {
    const Scratch scratch;
    const std::string book = (scratch / "b.evenfall").string();
    REQUIRE(run({"new", book}).status == 0);
    REQUIRE(run({"import", book, scratch.write("s.csv", "site,name,latitude,elevation_m\nS,Site,40,100\n").string()}).status == 0);
    const fs::path taken = scratch / "taken";
    fs::create_directories(taken);
    scratch.write("taken/mine.txt", "mine");
    const auto refused = run({"export", book, "--out", taken.string()});
    CHECK(refused.status == 3);
    CHECK_THAT(refused.err, Contains("taken"));
    CHECK(bytes_of(taken / "mine.txt") == "mine");
    CHECK(std::distance(fs::directory_iterator(taken), fs::directory_iterator()) == 1);
    fs::create_directories(scratch / "empty");
    CHECK(run({"export", book, "--out", (scratch / "empty").string() + "/"}).status == 0);
    CHECK(fs::exists(scratch / "empty" / "sites.csv"));
    // A program that is none is said before anything is written.
    const auto program = run({"export", book, "--out", (scratch / "new").string(), "--areas-geojson", "--from", "2025-01", "--to", "2025-02",
                              "--program", "nonesuch"});
    CHECK(program.status == 3);
    CHECK_FALSE(fs::exists(scratch / "new"));
    // A season that cannot be worked out is a gap and stops nothing.
    REQUIRE(run({"import", book, scratch.write("a.csv", "area,site,size_m2\nA,S,10\n").string()}).status == 0);
    const auto gap = run({"export", book, "--out", (scratch / "gap").string(), "--areas-geojson", "--from", "2025-01", "--to", "2025-02", "--json"});
    CHECK(gap.status == 0);
    const Json map = Json::parse(bytes_of(scratch / "gap" / "areas.geojson"));
    REQUIRE(map["features"].size() == 1);
    CHECK(map["features"][0]["properties"]["use_gal"].is_null());
    CHECK(map["features"][0]["properties"]["du_lq"].is_null());
    for (const auto& entry : fs::directory_iterator(scratch.folder())) {
        CHECK(entry.path().string().find(".part-") == std::string::npos);
    }
    CHECK(run({"export", book}).status == 2);
    CHECK(run({"export", book, "--out", "x", "--from", "2025-01"}).status == 2);
    CHECK(run({"export", (scratch / "none.evenfall").string(), "--out", (scratch / "x").string()}).status == 4);
    CHECK_FALSE(fs::exists(scratch / "x"));
}
