// SPDX-License-Identifier: GPL-3.0-or-later
// The invented scenario end to end: its planted faults must come to light in the figures.
#include "app/demo/scenario.h"
#include "tests/support/command_line.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using evenfall::tests::Scratch;
using Json = nlohmann::json;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

evenfall::tests::Answer run(const std::vector<std::string>& arguments) {
    return evenfall::tests::evenfall(arguments);
}

const Json& area_in(const Json& season, const std::string& code) {
    for (const Json& area : season["areas"]) {
        if (area["area"] == code) return area;
    }
    FAIL("no area " << code);
    return season;
}

double waste(const Json& figures, const char* key) { return figures["waste"][key].get<double>(); }

}  // namespace

TEST_CASE("the scenario is the same on every call", "[app]") {
    const auto first = evenfall::demo::scenario_files();
    const auto second = evenfall::demo::scenario_files();
    REQUIRE(first.size() == second.size());
    for (std::size_t i = 0; i < first.size(); ++i) CHECK(first[i].text == second[i].text);
}

TEST_CASE("the demo writes its book and reports, and the planted faults show", "[app]") {
    const Scratch scratch;
    const auto out = (scratch / "demo").string();
    auto answer = run({"demo", "--out", out, "--format", "csv", "--json"});
    INFO(answer.err);
    REQUIRE(answer.status == 0);
    const Json made = Json::parse(answer.out);
    CHECK(made["reports"].size() >= 4);
    for (const Json& file : made["reports"]) CHECK(std::filesystem::file_size(file.get<std::string>()) > 0);
    const auto book = made["book"].get<std::string>();
    CHECK(run({"check", book}).status == 0);

    const auto season = [&](const char* site) {
        const auto a = run({"season", book, "--site", site, "--from", "2025-01", "--to", "2025-12", "--json"});
        INFO(a.err);
        REQUIRE(a.status == 0);
        return Json::parse(a.out);
    };
    const Json campus = season("AV");
    const Json farm = season("HB");

    SECTION("the leak of 1.9 gpm from 10 June to 20 August") {
        // CONSTRUCTED: 72 days at 1.9 gpm are 196,992 gal; the register counts whole gallons an hour.
        CHECK_THAT(waste(campus["total"], "leak_gal"), WithinRel(196992.0, 0.02));
        CHECK_THAT(waste(area_in(campus, "AV-COMMON")["total"], "leak_gal"), WithinRel(196992.0, 0.02));
        CHECK_THAT(campus["findings"].dump(), Catch::Contains("AV-M1"));
    }
    SECTION("the playing field is uneven, its neighbour is not") {
        const auto avoidable = [&](const char* code) {
            const Json& total = area_in(campus, code)["total"];
            return waste(total, "uneven_avoidable_gal") / total["use_gal"].get<double>();
        };
        CHECK(avoidable("AV-PLAY") > 0.10);
        CHECK(avoidable("AV-COMMON") < 0.02);
    }
    SECTION("the walk and the gates are over-scheduled in autumn") {
        for (const char* code : {"AV-WALK", "AV-GATE"}) {
            const Json& area = area_in(campus, code);
            for (const Json& month : area["months"]) {
                const auto name = month["month"].get<std::string>();
                const double over = waste(month, "over_scheduled_gal") / month["use_gal"].get<double>();
                CAPTURE(code, name);
                if (name == "2025-10" || name == "2025-11") CHECK(over > 0.3);
                if (name == "2025-06") CHECK(over < 0.2);
            }
        }
    }
    SECTION("the exchanged meter keeps the season whole") {
        const Json& circle = area_in(farm, "HB-CIRC1");
        for (const Json& month : circle["months"]) {
            CAPTURE(month["month"]);
            REQUIRE(month["use_gal"].is_number());
        }
        // CONSTRUCTED: May and July, on either side of the exchange, were watered alike.
        const auto use = [&](std::size_t i) { return circle["months"][i]["use_gal"].get<double>(); };
        CHECK(use(5) / use(4) > 0.8);
        CHECK(use(5) / use(6) > 0.7);
    }
    SECTION("the account closes to the metered volume in every month of every area") {
        for (const Json* site : {&campus, &farm}) {
            for (const Json& area : (*site)["areas"]) {
                for (const Json& month : area["months"]) {
                    if (!month["waste"].is_object()) continue;
                    double sum = 0.0;
                    for (const auto& [key, value] : month["waste"].items()) {
                        if (key != "short_gal") sum += value.get<double>();
                    }
                    const double use = month["use_gal"].get<double>() - month["outside_account_gal"].get<double>();
                    CAPTURE(area["area"], month["month"]);
                    CHECK_THAT(sum, WithinAbs(use, 1e-9 * std::abs(use) + 1e-6));
                }
            }
        }
    }
    SECTION("running it again replaces what it made, and never another book") {
        CHECK(run({"demo", "--out", out, "--format", "csv"}).status == 0);
        std::filesystem::remove(book);
        REQUIRE(run({"new", book}).status == 0);
        CHECK(run({"demo", "--out", out, "--format", "csv"}).status == 4);
    }
}
