// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/program.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace evenfall;
using namespace evenfall::budget;
using Catch::Matchers::Contains;

namespace {

const std::string valid = R"({
  "evenfall_program": 1, "name": "town", "title": "Town", "version": "2", "source": "by-law 7",
  "mark": "constructed", "target_du": 0.7,
  "budget": {"basis": "allowance", "factor": 0.6, "divisor": "none", "period": "month"}})";

std::string with(const std::string& part, const std::string& instead) {
    std::string text = valid;
    const auto at = text.find(part);
    REQUIRE(at != std::string::npos);
    return text.replace(at, part.size(), instead);
}

std::vector<Issue> issues_of(const std::string& text) {
    try {
        read_program(text, "town.json");
    } catch (const InputError& error) {
        return error.issues();
    }
    return {};
}

}  // namespace

TEST_CASE("a program file is read", "[budget]") {
    const Program program = read_program(valid, "town.json");
    CHECK(program.name == "town");
    CHECK(program.basis == Basis::allowance);
    CHECK(program.factor == 0.6);
    CHECK_FALSE(program.special_factor.has_value());
    CHECK(program.rain_credit == RainCredit::none);
    CHECK(program.formula() == "budget = (ETo x 0.6) x area, by the month");
}

TEST_CASE("an unknown key names the nearest known one and its place", "[budget]") {
    const auto issues = issues_of(with("\"factor\"", "\"facter\""));
    REQUIRE(issues.size() == 2);  // the unknown key, and the one that is now missing
    CHECK(issues[0].place.file == "town.json");
    CHECK(issues[0].place.column == "budget.facter");
    CHECK_THAT(issues[0].expected.english(), Contains("the nearest is factor"));
    CHECK(issues[1].place.column == "budget.factor");
}

TEST_CASE("a program file that does not fit is refused", "[budget]") {
    const auto row = GENERATE(values<std::pair<std::string, std::string>>({
        {"\"evenfall_program\": 1", "\"evenfall_program\": 2"},
        {"\"name\": \"town\"", "\"name\": 7"},
        {"\"mark\": \"constructed\"", "\"mark\": \"true\""},
        {"\"target_du\": 0.7", "\"target_du\": 70"},
        {"\"target_du\": 0.7", "\"target_du\": 0"},
        {"\"target_du\": 0.7,", ""},
        {"\"factor\": 0.6", "\"factor\": \"0.6\""},
        {"\"factor\": 0.6", "\"factor\": -0.6"},
        {"\"factor\": 0.6", "\"factor\": 1e999"},
        {"\"factor\": 0.6", "\"factor\": null"},
        {"\"divisor\": \"none\"", "\"divisor\": \"efficiency\""},
        {"\"divisor\": \"none\"", "\"divisor\": \"none\", \"efficiency\": 0.8"},
        {"\"divisor\": \"none\"", "\"divisor\": \"none\", \"rain_credit\": \"share\""},
        {"\"divisor\": \"none\"", "\"divisor\": \"none\", \"gallons_per_ft2_inch\": 62"},
        {"\"basis\": \"allowance\"", "\"basis\": \"need\""},
        {"\"period\": \"month\"", "\"period\": \"week\""},
        {"\"budget\": {", "\"budget\": [{"},
    }));
    CAPTURE(row.first, row.second);
    CHECK_FALSE(issues_of(with(row.first, row.second)).empty());
}

TEST_CASE("a program file from a stranger does no harm", "[budget]") {
    CHECK_FALSE(issues_of("").empty());
    CHECK_FALSE(issues_of("[]").empty());
    CHECK_FALSE(issues_of(valid.substr(0, 80)).empty());
    CHECK_FALSE(issues_of(std::string(2U << 20U, ' ')).empty());
    CHECK_FALSE(issues_of(std::string(200000, '[')).empty());
    CHECK_FALSE(issues_of(with("Town", "T\xffwn")).empty());
    const auto twice = issues_of(with("\"version\": \"2\"", "\"version\": \"2\", \"version\": \"3\""));
    REQUIRE(twice.size() == 1);
    CHECK(twice[0].place.column == "version");
}

TEST_CASE("the programs that come along can all be read", "[budget]") {
    const auto names = built_in_program_names();
    CHECK(std::count(names.begin(), names.end(), "general") == 1);
    for (const auto& name : names) {
        CAPTURE(name);
        const Program& program = built_in_program(name);
        CHECK(program.name == name);
        CHECK(program.target_multiplier().value() >= 1.0);
        CHECK_FALSE(program.formula().empty());
    }
    CHECK_THROWS_WITH(built_in_program("generl"), Contains("general"));
}
