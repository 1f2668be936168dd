// SPDX-License-Identifier: GPL-3.0-or-later
// Design plans from the command line: the figures, the drawing and the book.
#include "app/workflow/plans.h"
#include "core/exchange/plan_file.h"
#include "core/input_error.h"
#include "core/store/journal_store.h"
#include "core/store/plan_store.h"
#include "core/store/site_store.h"
#include "tests/plan/plans.h"
#include "tests/support/command_line.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <numbers>

using namespace evenfall;
using evenfall::tests::Scratch;
using Catch::Matchers::WithinAbs;

namespace {

tests::Answer run(const std::vector<std::string>& arguments) { return tests::evenfall(arguments); }

std::string write(const std::filesystem::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary) << text;
    return path.string();
}

}  // namespace

TEST_CASE("overlap prints the keys of the contract", "[plan][cli][constructed]") {
    const Scratch scratch;
    // One quarter circle of 15 ft in the corner of 90 by 45 ft, as in the documentation of the plan form.
    const std::string file = write(scratch / "p.json",
        R"({ "evenfall_plan": 1, "units": {"length": "ft", "flow": "gpm", "pressure": "psi"},
             "outline": [[[0,0],[90,0],[90,45],[0,45]]], "no_water": [],
             "heads": [{"id": "A1", "x": 0, "y": 0, "radius": 15, "flow": 1.1, "arc": 90, "facing": 45, "station": "A", "profile": "cone"}] })");
    const tests::Answer a = run({"overlap", file, "--json"});
    REQUIRE(a.status == 0);
    CHECK(a.err.empty());
    const auto j = nlohmann::json::parse(a.out);
    for (const char* key : {"du_lq", "cu", "mean_rate_mm_h", "coverage", "off_target_share", "heads"}) {
        CAPTURE(key);
        CHECK(j.contains(key));
    }
    CHECK(j["heads"] == 1);
    // DERIVED: the quarter disc over the turf; 96.25 q / A in in/h.
    CHECK_THAT(j["coverage"]["one"].get<double>(), WithinAbs(std::numbers::pi * 225.0 / 4.0 / 4050.0, 2e-4));
    CHECK_THAT(j["mean_rate_in_h"].get<double>(), WithinAbs(96.25 * 1.1 / 4050.0, 2e-5));
    CHECK(j["off_target_share"] == 0.0);
    CHECK(j["coverage"]["two_or_more"] == 0.0);
    CHECK(run({"overlap", file}).out.find("reached by no head") != std::string::npos);
}

TEST_CASE("overlap refuses bad plans with status 3 and leaves no file", "[plan][cli][constructed]") {
    const Scratch scratch;
    const std::string file = write(scratch / "p.json", R"({"evenfall_plan": 1, "heads": [{"arc": "x"}]})");
    const std::string drawing = (scratch / "d.svg").string();
    const tests::Answer a = run({"overlap", file, "--drawing", drawing});
    CHECK(a.status == 3);
    CHECK(a.out.empty());
    CHECK(a.err.find("heads[0].arc") != std::string::npos);
    CHECK_FALSE(std::filesystem::exists(drawing));
    CHECK(run({"overlap", (scratch / "none.json").string()}).status == 3);
    CHECK(run({"overlap"}).status == 2);
    const std::string good = write(scratch / "g.json", exchange::plan_text(plan_test::lawn()));
    CHECK(run({"overlap", good, "--cell", "0m"}).status == 3);
    CHECK(run({"overlap", good, "--wind-shift", "0.1"}).status == 3);
    CHECK(run({"overlap", good, "--wind-shift", "7", "--wind-toward", "0"}).status == 2);
    CHECK(run({"overlap", good, "--compare", good}).status == 2);  // what the turf needs is missing
}

TEST_CASE("a plan is kept, drawn and compared", "[plan][cli][constructed]") {
    const Scratch scratch;
    const std::string book_file = (scratch / "b.evenfall").string();
    {
        store::Book book = store::Book::create(book_file);
        site::Site s;
        s.code = "S1";
        s.name = "Sorrel Green";
        s.latitude = 40.0;
        s.elevation = units::parse_measure<units::Length>("10m");
        store::add_site(book, s, std::nullopt);
    }
    plan::Plan worse = plan_test::lawn();
    worse.name = "Sorrel Green, lawn";
    worse.heads.erase(worse.heads.begin() + 9);
    const std::string before = write(scratch / "before.json", exchange::plan_text(worse));
    const std::string after = write(scratch / "after.json", exchange::plan_text(plan_test::lawn()));
    const std::string drawing = (scratch / "d.svg").string();
    const tests::Answer a = run({"overlap", before, "--json", "--compare", after, "--season-need", "24in", "--price", "5", "--price-per",
                          "1kgal", "--cost", "800", "--drawing", drawing, "--view", "islands", "--keep-in", book_file, "--site", "S1",
                          "--code", "LAWN", "--by", "tester"});
    CAPTURE(a.err);
    REQUIRE(a.status == 0);
    const auto j = nlohmann::json::parse(a.out);
    CHECK(j["revision"] == 0);
    CHECK(j["change"]["saved_gal"].get<double>() > 0.0);
    CHECK_THAT(j["change"]["money_saved"].get<double>(), WithinAbs(j["change"]["saved_gal"].get<double>() * 0.005, 1e-6));
    CHECK(j["change"]["payback_seasons"].get<double>() > 0.0);
    CHECK(std::filesystem::file_size(drawing) > 1000);

    const auto book = store::Book::open(book_file, store::Access::read_only);
    CHECK(store::find_plan(book, "LAWN")->plan.heads == worse.heads);
    CHECK(store::journal(book).back().record == "plan LAWN");

    CHECK(workflow::plan_named(book, "LAWN").plan.heads == worse.heads);
    CHECK(workflow::plan_named(book, after).code == "after");
    CHECK_THROWS_AS(workflow::plan_named(book, "NONE"), InputError);

    // The report takes the plan from the book by its code, and says the same as from its file.
    const std::string by_code = (scratch / "by-code").string(), by_file = (scratch / "by-file").string();
    const tests::Answer r = run({"report", book_file, "plan", "--plan", "LAWN", "--format", "csv", "--out", by_code, "--json"});
    CAPTURE(r.err);
    REQUIRE(r.status == 0);
    REQUIRE(run({"report", book_file, "plan", "--plan", before, "--format", "csv", "--out", by_file}).status == 0);
    std::size_t tables = 0;
    for (const auto& entry : std::filesystem::directory_iterator(by_code)) {
        const std::string name = entry.path().filename().string();
        REQUIRE(name.starts_with("plan-LAWN-"));
        CHECK(tests::bytes_of(entry.path()) == tests::bytes_of(std::filesystem::path(by_file) / ("plan-before-" + name.substr(10))));
        ++tables;
    }
    CHECK(tables > 2);
    CHECK(run({"report", book_file, "plan", "--plan", "NONE", "--out", by_code}).status == 3);
}

TEST_CASE("a layout fitted to an outline is a plan that overlap reads", "[plan][cli][constructed]") {
    const Scratch scratch;
    const std::string outline = write(scratch / "o.json",
        R"({"evenfall_plan": 1, "units": {"length": "ft", "flow": "gpm"}, "outline": [[[0,0],[300,0],[300,120],[0,120]]]})");
    const std::string out = (scratch / "laid.json").string();
    const tests::Answer a = run({"layout", outline, "--pattern", "equilateral", "--smallest-radius", "20ft", "--largest-radius", "32ft",
                                 "--rate", "0.5in_h", "--station-flow", "40gpm", "--out", out, "--json"});
    CAPTURE(a.err);
    REQUIRE(a.status == 0);
    const auto j = nlohmann::json::parse(a.out);
    CHECK(j["heads"].get<int>() > 20);
    CHECK_THAT(j["row_spacing_m"].get<double>() / j["spacing_m"].get<double>(), WithinAbs(0.866, 0.05));
    for (const auto& s : j["stations"]) CHECK(s["flow_gpm"].get<double>() <= 40.0 + 1e-9);
    const auto again = nlohmann::json::parse(run({"overlap", out, "--json"}).out);
    CHECK(again["heads"] == j["heads"]);
    CHECK_THAT(again["du_lq"].get<double>(), WithinAbs(j["du_lq"].get<double>(), 1e-9));
    CHECK(run({"layout", outline, "--smallest-radius", "20ft", "--largest-radius", "10ft", "--rate", "0.5in_h", "--out", out}).status == 3);
    CHECK(run({"layout", outline, "--smallest-radius", "20ft", "--largest-radius", "32ft", "--rate", "0.5in_h", "--wind", "20mph", "--out", out}).status == 3);
}
