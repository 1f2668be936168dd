// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/plan_file.h"

#include "core/input_error.h"
#include "core/plan/overlap.h"
#include "tests/plan/plans.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>
#include <fstream>

using namespace evenfall;
using namespace evenfall::plan;
using Catch::Matchers::WithinAbs;

namespace {

std::string text_of(const std::string& heads, const std::string& more = "",
                    const std::string& outline = "[[[0,0],[90,0],[90,45],[0,45]]]") {
    return R"({ "evenfall_plan": 1, "units": {"length": "ft", "flow": "gpm", "pressure": "psi"},
  "outline": )" + outline + R"(, "no_water": [], "heads": [)" + heads + "]" + more + "}";
}

const std::string good = R"({"id": "A1", "x": 0, "y": 0, "radius": 15, "flow": 1.1, "arc": 90, "facing": 45, "station": "A", "profile": "cone"})";

/// The issues of a text that must be refused.
std::vector<Issue> refused(const std::string& text) {
    try {
        static_cast<void>(exchange::parse_plan(text, "p.json"));
    } catch (const InputError& e) {
        return e.issues();
    }
    return {};
}

void check_refused(const std::string& text, const std::string& path, const std::string& found) {
    const auto issues = refused(text);
    CAPTURE(text.substr(0, 400), path, found);
    REQUIRE_FALSE(issues.empty());
    for (const Issue& i : issues) UNSCOPED_INFO(i.text());
    CHECK(std::any_of(issues.begin(), issues.end(), [&](const Issue& i) {
        return i.place.file == "p.json" && i.place.column == path && i.found.english().find(found) != std::string::npos;
    }));
}

}  // namespace

TEST_CASE("a plan file is read with its units as typed", "[plan][exchange][constructed]") {
    const Plan p = exchange::parse_plan(text_of(good), "p.json");
    REQUIRE(p.heads.size() == 1);
    CHECK(p.units.length.name == "ft");
    CHECK(p.heads[0].id == "A1");
    CHECK(p.heads[0].radius == 15.0);
    CHECK(p.heads[0].flow == 1.1);
    CHECK(p.heads[0].arc == 90.0);
    CHECK(p.heads[0].facing == 45.0);
    CHECK(p.heads[0].station == "A");
    CHECK(p.turf.size() == 1);
    CHECK(p.assumed.empty());
    const Sprinklers all = sprinklers_of(p);
    CHECK_THAT(all.heads[0].radius, WithinAbs(4.572, 1e-12));  // 15 international feet
}

TEST_CASE("a plan written and read again is the same plan", "[plan][exchange][constructed]") {
    Plan p = plan_test::lawn();
    p.name = "Lawn \"north\" of Quayle House";
    p.turf[0].push_back({{40.0, 20.0}, {44.0, 20.0}, {44.1, 24.0}});
    p.turf.push_back(plan_test::rectangle(100.0, 0.0, 110.0, 0.1 + 0.2));
    p.no_water = {plan_test::rectangle(1.0, 1.0, 2.0, 2.0)};
    p.obstacles = {plan_test::rectangle(3.0, 3.0, 3.5, 3.5)};
    p.nozzles = {{"N4", {{25.0, 13.0, 1.0}, {35.0, 15.0, 1.3}}, 20.0, {}}, {"N8", {{30.0, 15.0, 2.0}}, {}, {}}};
    p.profiles = {{"leg 1", {{0.0, 1.0}, {7.0, 0.8}, {15.0, 0.0}}}};
    p.heads[3].radius.reset();
    p.heads[3].flow.reset();
    p.heads[3].nozzle = "N4";
    p.heads[3].pressure = 30.0;
    p.heads[4].profile = "leg 1";
    p.pipes = {{"P1", {{0.0, 0.0}, {10.0, 0.0}}, "1 in"}};
    p.lanes = {{"L1", {{0.0, 5.0}, {90.0, 5.0}}}};
    p.pivots = {{"V1", {45.0, 20.0}, {10.0, 10.5}}};
    p.assumed = {"heads without an arc are taken as full circles"};
    const Plan q = exchange::parse_plan(exchange::plan_text(p), "p.json");
    CHECK(q.name == p.name);
    CHECK(q.turf == p.turf);
    CHECK(q.no_water == p.no_water);
    CHECK(q.obstacles == p.obstacles);
    CHECK(q.heads == p.heads);
    CHECK(q.nozzles == p.nozzles);
    CHECK(q.profiles == p.profiles);
    CHECK(q.pipes == p.pipes);
    CHECK(q.lanes == p.lanes);
    CHECK(q.pivots == p.pivots);
    REQUIRE(q.assumed.size() == 1);
    CHECK(q.assumed.front().form().form != nullptr);  // and can be said in another language again
    CHECK(q.assumed == p.assumed);  // what was filled in stays an assumption, though it now stands there
    CHECK(exchange::plan_text(q) == exchange::plan_text(p));
}

TEST_CASE("heads take radius and flow from a nozzle table", "[plan][exchange][constructed]") {
    const std::string nozzle_head = R"({"id": "A1", "x": 0, "y": 0, "nozzle": "N4", "pressure": 30, "arc": 90, "facing": 45})";
    const Plan p = exchange::parse_plan(text_of(nozzle_head, R"(, "nozzles": {"N4": [[25, 13, 1.0], [35, 15, 1.3]]})"), "p.json");
    const Sprinklers all = sprinklers_of(p);
    CHECK_THAT(all.heads[0].radius, WithinAbs(14.0 * 0.3048, 1e-12));
    CHECK_THAT(all.heads[0].flow, WithinAbs(1.15 * 231.0 * 0.0254 * 0.0254 * 0.0254 / 60.0, 1e-15));
    REQUIRE(p.assumed.size() == 1);
    CHECK(p.assumed.front() == "heads without a profile are taken as cones");

    const std::string one_row = R"(, "nozzles": {"N4": {"rows": [[40, 15, 2.0]], "lowest": 20, "highest": 60}})";
    const Sprinklers law = sprinklers_of(exchange::parse_plan(text_of(nozzle_head, one_row), "p.json"));
    CHECK_THAT(law.heads[0].flow / units::gallon_per_minute.si(), WithinAbs(2.0 * std::sqrt(0.75), 1e-12));
    CHECK(std::any_of(law.assumed.begin(), law.assumed.end(),
                      [](const evenfall::Sentence& s) { return s.english().find("square-root law") != std::string::npos; }));

    const auto at = [&](const std::string& pressure) {
        return text_of(R"({"id": "A1", "x": 0, "y": 0, "nozzle": "N4", "pressure": )" + pressure + "}",
                       R"(, "nozzles": {"N4": [[25, 13, 1.0], [35, 15, 1.3]]})");
    };
    check_refused(at("24.9"), "heads[0].pressure", "24.9 psi");
    check_refused(at("35.1"), "heads[0].pressure", "35.1 psi");
    check_refused(at("-5"), "heads[0].pressure", "-5");
    check_refused(at("0"), "heads[0].pressure", "0");
    check_refused(text_of(R"({"id": "A1", "x": 0, "y": 0, "nozzle": "N5", "pressure": 30})"), "heads[0].nozzle", "N5");
}

TEST_CASE("bad plans are refused with the place and the offending text", "[plan][exchange][constructed]") {
    const auto head_with = [](const std::string& key, const std::string& value) {
        std::string h = good;
        const auto at = h.find("\"" + key + "\": ");
        const auto end = h.find_first_of(",}", at);
        return h.replace(at, end - at, "\"" + key + "\": " + value);
    };
    check_refused(text_of(head_with("arc", "0")), "heads[0].arc", "0");
    check_refused(text_of(head_with("arc", "-90")), "heads[0].arc", "-90");
    check_refused(text_of(head_with("arc", "361")), "heads[0].arc", "361");
    check_refused(text_of(head_with("radius", "0")), "heads[0].radius", "0");
    check_refused(text_of(head_with("radius", "-3")), "heads[0].radius", "-3");
    check_refused(text_of(head_with("radius", "1e9")), "heads[0].radius", "1e+09");
    check_refused(text_of(head_with("flow", "0")), "heads[0].flow", "0");
    check_refused(text_of(head_with("flow", "\"1.1\"")), "heads[0].flow", "\"1.1\"");
    check_refused(text_of(head_with("x", "true")), "heads[0].x", "true");
}

TEST_CASE("bad places and texts are refused", "[plan][exchange][constructed]") {
    std::string outside = good;
    outside.replace(outside.find("\"x\": 0"), 6, "\"x\": -1");
    check_refused(text_of(good + "," + outside.replace(outside.find("A1"), 2, "A2")), "heads[1]", "-1, 0");
    check_refused(text_of(good + "," + good), "heads[1].id", "A1");
    check_refused(text_of(""), "heads", "no head");
    check_refused(text_of(good, "", "[[[0,0],[90,45],[90,0],[0,45]]]"), "outline", "crosses itself");
    check_refused(text_of(good, "", "[[[0,0],[90,0]]]"), "outline", "fewer than three points");
    check_refused(text_of(good, "", "[[[0,0],[90,0],[45,0]]]"), "outline", "an outline that");
    check_refused(text_of(good, "", "[[[0,0],[90,0],[90,45],[0,45]],[[200,200],[210,200],[210,210]]]"), "outline", "hole");
    check_refused(text_of(good, "", "[[[0,0],[1e300,0],[90,45],[0,45]]]"), "outline", "1e12");
    check_refused(text_of(good, "", "[[[0,0],[1e7,0],[1e7,1e7],[0,45]]]"), "outline", "long");
    check_refused(text_of(good, "", "[[[0,0],[90],[90,45]]]"), "outline[0][1]", "a list of 1");
    check_refused(text_of(good, "", "7"), "outline", "7");
    check_refused(text_of(good, R"(, "oultine": 3)"), "oultine", "not known");
    check_refused(text_of(R"({"id": "A1", "x": 0, "y": 0, "radius": 15, "flow": 1, "arch": 90})"), "heads[0].arch", "not known");
    check_refused(text_of(R"({"id": "A1", "x": 0, "y": 0, "radius": 15, "flow": 1, "arc": 90})"), "heads[0].facing", "nothing");
    check_refused(text_of(R"({"id": "A1", "y": 0, "radius": 15, "flow": 1})"), "heads[0].x", "nothing");
    check_refused(text_of(R"({"id": "A1", "x": 0, "y": 0, "flow": 1})"), "heads[0].radius", "nothing");
    check_refused(text_of(R"({"id": "A1", "x": 0, "y": 0, "radius": 15, "flow": 1, "profile": "bell"})"), "heads[0].profile", "bell");
    check_refused(text_of(good, R"(, "profiles": {"flat": [[0,1],[1,0]]})"), "profiles.flat", "flat");
    check_refused(text_of(good, R"(, "profiles": {"a": [[0,1],[1,-1]]})"), "profiles.a", "rate -1");
    check_refused(text_of(good, R"(, "profiles": {"a": [[0,1],[0,1]]})"), "profiles.a", "distance 0");
    check_refused(text_of(good, R"(, "profiles": {"a": [[0,0],[5,0]]})"), "profiles.a", "profile a");
    check_refused(text_of(good, R"(, "nozzles": {"N": [[30,15,1],[20,15,1]]})"), "nozzles.N[1].pressure", "20");
    check_refused(text_of(good, R"(, "nozzles": {"N": []})"), "nozzles.N", "no row");
    check_refused(R"({"evenfall_plan": 2})", "evenfall_plan", "2");
    check_refused("[]", "", "a list of 0");
    check_refused(R"({"evenfall_plan": 1, "evenfall_plan": 1})", "evenfall_plan", "twice");
}

TEST_CASE("text that is not JSON is refused with row and character", "[plan][exchange][constructed]") {
    const std::string nan = text_of(R"({"id": "A1", "x": NaN, "y": 0, "radius": 15, "flow": 1})");
    const auto issues = refused(nan);
    REQUIRE(issues.size() == 1);
    CHECK(issues[0].place.row == 2);
    CHECK(issues[0].expected.english().find("JSON") != std::string::npos);
    const auto big = refused(text_of(R"({"id": "A1", "x": 1e999, "y": 0, "radius": 15, "flow": 1})"));
    REQUIRE(big.size() == 1);
    CHECK(big[0].expected.english().find("finite") != std::string::npos);
    const auto cut = refused(text_of(good).substr(0, 150));
    REQUIRE(cut.size() == 1);
    CHECK(cut[0].expected.english().find("cut short") != std::string::npos);
    CHECK_FALSE(refused("").empty());
    CHECK_FALSE(refused(std::string(100'000, '[')).empty());
    CHECK_FALSE(refused("{\"evenfall_plan\": 1, \"name\": \"\xff\xfe\"}").empty());
}

TEST_CASE("a plan of ten million heads ends quickly with an error", "[plan][exchange][constructed]") {
    const auto start = std::chrono::steady_clock::now();
    std::string heads;
    heads.reserve(60'000'000);
    for (int i = 0; i < 10'000'000; ++i) heads += "{\"x\":1},";
    heads.pop_back();
    const auto issues = refused(text_of(heads));
    REQUIRE(issues.size() == 1);
    CHECK(issues[0].place.column == "heads");
    CHECK(issues[0].found.english().find("100000") != std::string::npos);
    Plan p = plan_test::lawn();
    p.heads.resize(10'000'000, p.heads.front());
    CHECK_THROWS_AS(sprinklers_of(p), InputError);
    CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(60));
}

TEST_CASE("a missing file and a folder are refused", "[plan][exchange][constructed]") {
    CHECK_THROWS_AS(exchange::read_plan("no-such-plan.json"), InputError);
    CHECK_THROWS_AS(exchange::read_plan("/"), InputError);
}
