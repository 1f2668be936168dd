// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/command_line.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using evenfall::tests::Scratch;
using Json = nlohmann::json;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

auto run(const std::vector<std::string>& arguments) { return evenfall::tests::evenfall(arguments); }

std::string pivot_csv() {
    std::string text = "can,distance_m,depth_mm\n";
    const int mm[] = {30, 28, 26, 25, 27, 24, 25, 26, 22, 29};
    for (int i = 0; i < 10; ++i) {
        text += std::to_string(i + 1) + "," + std::to_string(20 * (i + 1)) + "," + std::to_string(mm[i]) + "\n";
    }
    return text;
}

}  // namespace

// CONSTRUCTED: mean 40 mL in 16.61 in2 in 20 minutes is 0.440870 in/h.
TEST_CASE("uniformity of a grid as JSON", "[app][constructed]") {
    const Scratch scratch;
    std::string text = "can,x_m,y_m,volume_ml\n";
    const int ml[] = {30, 35, 40, 45, 50, 40, 40, 40};
    for (int i = 0; i < 8; ++i) {
        text += std::to_string(i + 1) + "," + std::to_string(i % 4) + "," + std::to_string(i / 4) + "," +
                std::to_string(ml[i]) + "\n";
    }
    const auto file = scratch.write("c.csv", text).string();
    const auto answer = run({"uniformity", file, "--throat-area", "16.61in2", "--minutes", "20min", "--json"});
    REQUIRE(answer.status == 0);
    CHECK(answer.err.empty());
    const Json j = Json::parse(answer.out);
    CHECK(j["cans"] == 8);
    CHECK(j["quarter_rule"] == "whole-cans");
    CHECK_THAT(j["du_lq"].get<double>(), WithinAbs(32.5 / 40.0, 1e-12));
    CHECK_THAT(j["net_rate_in_h"].get<double>(), WithinAbs(0.440870, 5e-7));
    CHECK_THAT(j["net_rate_mm_h"].get<double>(), WithinAbs(11.19810, 5e-6));
    CHECK(j["du_lq_interval"][0].get<double>() < j["du_lq"].get<double>());
    CHECK(j["du_lq_interval"][1].get<double>() > j["du_lq"].get<double>());
    for (const char* key : {"mean_depth_mm", "du_lh", "cu", "cv", "scheduling_coefficient", "multiplier", "quality"}) {
        CAPTURE(key);
        CHECK(j.contains(key));
    }
    CHECK_THAT(j["multiplier"]["linear"].get<double>(), WithinAbs(1.0 / (0.4 + 0.6 * 0.8125), 1e-12));
    for (const Json& rule : j["quality"]) {
        CHECK((rule["met"].is_boolean() || rule["met"].is_null()));
        CHECK_FALSE(rule["source"].get<std::string>().empty());
    }
    for (const Json& s : j["scheduling_coefficient"]) CHECK(s.contains("window_share"));
}

// CONSTRUCTED pivot and traveller of the engine's own tests, through files and arguments.
TEST_CASE("uniformity of moving machines", "[app][constructed]") {
    const Scratch scratch;
    const auto pivot = scratch.write("p.csv", pivot_csv()).string();
    const auto answer = run({"uniformity", pivot, "--layout", "pivot", "--quarter-rule", "part-can",
                             "--inner-share-left-out", "0.2", "--json"});
    REQUIRE(answer.status == 0);
    const Json j = Json::parse(answer.out);
    CHECK_THAT(j["cu"].get<double>(), WithinAbs(0.929217, 5e-7));
    CHECK_THAT(j["du_lq"].get<double>(), WithinAbs(0.885542, 5e-7));
    CHECK(j["net_rate_mm_h"].is_null());

    std::string text = "can,side,distance_m,depth_mm\n";
    const int left[] = {25, 24, 21, 18, 16, 12, 9, 5, 2, 1};
    const int right[] = {24, 23, 22, 20, 17, 13, 8, 4, 1};
    for (int i = 0; i < 10; ++i) {
        text += "L" + std::to_string(i) + ",left," + std::to_string(5 + 10 * i) + "," + std::to_string(left[i]) + "\n";
    }
    for (int i = 0; i < 9; ++i) {
        text += "R" + std::to_string(i) + ",right," + std::to_string(5 + 10 * i) + "," + std::to_string(right[i]) + "\n";
    }
    const auto row = scratch.write("t.csv", text).string();
    const auto moving = run({"uniformity", row, "--lane-spacing", "80m", "--json"});
    REQUIRE(moving.status == 0);
    CHECK_THAT(Json::parse(moving.out)["cu"].get<double>(), WithinAbs(252.0 / 265.0, 1e-9));
    const auto narrow = run({"uniformity", row, "--lane-spacing", "5m"});
    CHECK(narrow.status == 3);
    CHECK(narrow.out.empty());
    CHECK_THAT(narrow.err, Contains("at least the can spacing"));
}

TEST_CASE("uniformity for a field crew", "[app]") {
    const Scratch scratch;
    const auto pivot = scratch.write("p.csv", pivot_csv()).string();
    const auto found = scratch.write("f.csv", "finding,place,count,severity\ntilted,span 3,2,minor\n").string();
    const auto answer = run({"uniformity", pivot, "--findings", found});
    REQUIRE(answer.status == 0);
    for (const char* words : {"Catches, lowest first", "Along the line", "Heermann-Hein coefficient",
                              "DU, low quarter (whole-cans)", "Was it a good test?", "What to do",
                              "head tilted (2, minor; span 3)", "which disagree"}) {
        CAPTURE(words);
        CHECK_THAT(answer.out, Contains(words));
    }
    CHECK(run({"uniformity", pivot, "--least-du-lq", "0.99"}).status == 1);
    const auto bad = scratch.write("g.csv", "finding,place\ntitled,span 3\n").string();
    const auto refused = run({"uniformity", pivot, "--findings", bad});
    CHECK(refused.status == 3);
    CHECK_THAT(refused.err, Contains("row 2") && Contains("nearest is tilted"));
}

TEST_CASE("bad catch tables name the row", "[app]") {
    const Scratch scratch;
    const auto refuse = [&](const std::string& text, const std::vector<std::string>& more,
                            const std::string& words) {
        const auto file = scratch.write("bad.csv", text).string();
        std::vector<std::string> arguments{"uniformity", file};
        arguments.insert(arguments.end(), more.begin(), more.end());
        const auto answer = run(arguments);
        CAPTURE(text, answer.err);
        CHECK(answer.status == 3);
        CHECK(answer.out.empty());
        CHECK_THAT(answer.err, Contains(words));
    };
    refuse("can,depth_mm\n1,5\n2,6\n3,7\n", {}, "at least four");
    refuse("can,depth_mm\n1,0\n2,0\n3,0\n4,0\n", {}, "every can dry");
    refuse("can,depth_mm\n1,5\n2,6\n2,7\n4,8\n", {}, "row 4");
    refuse("can,depth_mm\n1,5\n2,-6\n3,7\n4,8\n", {}, "row 3");
    refuse("can,volume_ml\n1,50\n2,60\n3,70\n4,800\n", {"--throat-area", "100cm2", "--can-size", "500ml"}, "row 5");
    refuse("can,volume_ml\n1,50\n2,60\n3,70\n4,80\n", {}, "throat area");
    refuse("can,side,distance_m,depth_mm\n1,left,1,5\n2,middle,2,5\n3,right,1,5\n4,right,2,5\n",
           {"--lane-spacing", "10m"}, "row 3");
    refuse("can,depth_mm\n1,5\n2,6\n3,7\n4,8\n", {"--minutes", "0min"}, "run time above zero");
}
