// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/portfolio.h"
#include "app/workflow/season.h"
#include "core/exchange/import.h"
#include "core/store/site_store.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <set>

using namespace evenfall;
using Catch::Matchers::Contains;
using evenfall::tests::Scratch;

namespace {

constexpr int site_count = 9;

std::string code(const char* kind, int number) { return kind + std::to_string(number); }

/// Nine sites on three weather stations, each with its own use, and a tenth without elevation.
store::Book many_sites(const Scratch& scratch) {
    std::string sites = "site,name,latitude,elevation_ft,weather\n";
    std::string meters = "meter,site,unit\n";
    std::string areas = "area,site,size_ac,coefficient,head_type,meter\n";
    std::string readings = "meter,time,register\n";
    for (int i = 0; i < site_count; ++i) {
        sites += code("S", i) + ",Site," + std::to_string(30 + i) + ",60," + code("W", i % 3) + "\n";
        meters += code("M", i) + "," + code("S", i) + ",gal\n";
        areas += code("A", i) + "," + code("S", i) + "," + std::to_string(1 + i) + ",0.8,rotor," + code("M", i) + "\n";
        readings += code("M", i) + ",2024-06-01T00:00Z,0\n" + code("M", i) + ",2024-07-01T00:00Z," +
                    std::to_string(150000 + 70000 * i) + "\n";
    }
    std::string weather = "station,date,eto_in,rain_in\n";
    for (int day = 1; day <= 30; ++day) {
        for (int w = 0; w < 3; ++w) {
            weather += code("W", w) + ",2024-06-" + (day < 10 ? "0" : "") + std::to_string(day) + ",0." +
                       std::to_string(18 + w) + ",0\n";
        }
    }
    auto book = store::Book::create(scratch / "b.evenfall");
    std::vector<std::filesystem::path> files;
    for (const auto& [name, text] : {std::pair{"sites.csv", sites}, {"meters.csv", meters},
                                     {"areas.csv", areas}, {"weather.csv", weather},
                                     {"readings.csv", readings}}) {
        files.push_back(scratch.write(name, text));
    }
    exchange::ImportOptions options;
    options.at = "2024-08-01T00:00:00Z";
    options.who = "test";
    exchange::require_accepted(exchange::import_files(book, files, options));
    site::Site low;
    low.code = "LOW";
    low.latitude = 38.0;
    store::add_site(book, low, std::nullopt);
    return book;
}

workflow::PortfolioQuestion june() {
    const auto month = std::chrono::year{2024} / std::chrono::June;
    return {month, month, "general", "nrcs", audit::QuarterRule::whole_cans, budget::RankBy::over_budget};
}

}  // namespace

// CONSTRUCTED: ten sites. The portfolio reads by several connections and threads and keeps weather at
// hand; each site must come out as when it is asked alone.
TEST_CASE("a portfolio gives each site what its own season gives", "[app][constructed]") {
    const Scratch scratch;
    const auto book = many_sites(scratch);
    std::set<std::size_t> seen;
    const auto answer = workflow::answer_portfolio(book, june(), [&](std::size_t finished, std::size_t all) {
        CHECK(all == site_count + 1);
        seen.insert(finished);
    });
    CHECK(seen.size() == site_count + 1);
    REQUIRE(answer.portfolio.sites.size() == site_count);
    for (const auto& site : answer.portfolio.sites) {
        CAPTURE(site.site);
        const auto q = june();
        const auto alone = workflow::answer_season(book, {site.site, q.from, q.to, q.program, q.rain, q.quarter_rule});
        REQUIRE(site.total.need);
        CHECK(*site.total.need == *alone.result.total.need);
        CHECK(*site.total.use == *alone.result.total.use);
        CHECK(site.total.over_budget == alone.result.total.over_budget);
    }
    REQUIRE(answer.problems.size() == 1);
    CHECK(answer.problems[0].site == "LOW");
    CHECK_THAT(answer.problems[0].reason, Contains("elevation"));
}

TEST_CASE("what is wrong for every site is said once", "[app]") {
    const Scratch scratch;
    const auto book = many_sites(scratch);
    auto question = june();
    question.program = "no-such-program";
    CHECK_THROWS_AS(workflow::answer_portfolio(book, question, [](std::size_t, std::size_t) {}), InputError);
}
