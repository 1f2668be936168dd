// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <sstream>
#include <string>
#include <vector>

using namespace evenfall;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using tests::Scratch;

namespace {

struct Outcome {
    int status;
    std::string out;
    std::string err;
    nlohmann::json json() const { return nlohmann::json::parse(out); }
};

Outcome evenfall_with(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "evenfall");
    std::vector<const char*> argv;
    for (const auto& a : arguments) argv.push_back(a.c_str());
    std::ostringstream out, err;
    cli::Streams streams{out, err, false, {}};
    const int status = cli::run_command_line(static_cast<int>(argv.size()), argv.data(), streams);
    return {status, out.str(), err.str()};
}

/// Three days of the Fallon record (AgriMet FALN, July 2015).
const std::string fallon =
    "date,tmin_f,tmax_f,tdew_f,rs_langley,wind_mph\n"
    "2015-07-01,66.65,102.80,49.84,674.07,4.80\n"
    "2015-07-02,70.51,100.90,51.47,644.46,5.96\n"
    "2015-07-03,68.62,100.00,54.44,668.58,5.57\n";

std::vector<std::string> reference_et(const std::string& path, std::vector<std::string> more = {}) {
    std::vector<std::string> all{"reference-et", path,           "--latitude", "39.4575",
                                 "--elevation",  "1208.5m", "--wind-height", "3m", "--json"};
    all.insert(all.end(), more.begin(), more.end());
    return all;
}

}  // namespace

// PUBLISHED. AgriMet FALN, 1 to 3 July 2015: ETos 0.31, 0.33, 0.32 in, ETrs 0.42, 0.45, 0.42 in,
// within 0.01 and 0.02 in; 1 July tall is 10.6260877 mm in a public library's test file.
TEST_CASE("reference-et, daily", "[app][published]") {
    const Scratch folder;
    const auto path = folder.write("fallon.csv", fallon).string();
    const auto grass = evenfall_with(reference_et(path));
    REQUIRE(grass.status == 0);
    CHECK(grass.err.empty());
    const auto answer = grass.json();
    REQUIRE(answer["rows"].size() == 3);
    const double published[] = {0.31, 0.33, 0.32};
    double total = 0.0;
    for (std::size_t i = 0; i < 3; ++i) {
        const double mm = answer["rows"][i]["et_mm"];
        CHECK_THAT(mm / 25.4, WithinAbs(published[i], 0.01));
        total += mm;
    }
    CHECK(answer["rows"][0]["date"] == "2015-07-01");
    CHECK(answer["rows"][0]["method"] == "ASCE-EWRI 2005 daily, short surface");
    CHECK(answer["rows"][0]["flags"].empty());
    CHECK_THAT(answer["total_mm"].get<double>(), WithinAbs(total, 1e-12));
    CHECK(answer["rejected"] == 0);
    CHECK_FALSE(answer["sources"].empty());

    const auto tall = evenfall_with(reference_et(path, {"--surface", "tall"})).json();
    CHECK_THAT(tall["rows"][0]["et_mm"].get<double>(), WithinAbs(10.6260877, 5e-8));
}

// CONSTRUCTED.
TEST_CASE("reference-et says what it assumed and what it cannot answer", "[app][constructed]") {
    const Scratch folder;
    const auto path = folder.write("t.csv", "date,tmax_c,tmin_c,wind_m_s\n"
                                            "2024-07-01,31,14,\n2024-07-02,30,13,2.5\n"
                                            "2024-07-03,,13,2.5\n").string();
    const auto answer = evenfall_with(reference_et(path)).json();
    CHECK(answer["rows"][0]["method"] == "Hargreaves-Samani 1985");
    CHECK(answer["rows"][1]["method"] == "ASCE-EWRI 2005 daily, short surface");
    CHECK(answer["rows"][1]["flags"].size() == 2);
    CHECK(answer["rows"][2]["et_mm"].is_null());
    CHECK(answer["rejected"] == 1);
    auto plain = reference_et(path);
    plain.erase(std::find(plain.begin(), plain.end(), "--json"));
    const auto text = evenfall_with(plain);
    CHECK_THAT(text.out, Contains("over 2 of 3 rows") && Contains("temperatures only"));
}

// CONSTRUCTED. Bad arguments are status 2, bad input status 3 with its place; no answer is printed.
TEST_CASE("reference-et refuses what cannot be", "[app][constructed]") {
    const Scratch folder;
    const auto good = folder.write("good.csv", fallon).string();
    const auto with = [&](const std::string& text) {
        return evenfall_with(reference_et(folder.write("bad.csv", text).string()));
    };
    auto far = reference_et(good);
    far[3] = "394.575";
    CHECK(evenfall_with(far).status == 2);
    CHECK(evenfall_with(reference_et(good, {"--equation", "fao-56", "--surface", "tall"})).status == 3);
    CHECK(evenfall_with(reference_et(good, {"--angstrom-a", "0.2"})).status == 3);
    CHECK(evenfall_with({"reference-et", good, "--latitude", "39", "--elevation", "1208.5"}).status == 2);

    const auto fahrenheit = with("date,tmax_c,tmin_c\n2024-07-01,102.8,66.7\n");
    CHECK(fahrenheit.status == 3);
    CHECK(fahrenheit.out.empty());
    CHECK_THAT(fahrenheit.err, Contains("row 2, column tmax_c") && Contains("102.8"));
    const auto swapped = with("date,tmax_c,tmin_c\n2024-07-01,12,31\n");
    CHECK(swapped.status == 3);
    CHECK_THAT(swapped.err, Contains("column tmin_c"));
    CHECK(with("date,tmax_c,tmin_c,rain_mm\n2024-07-01,31,12,-1\n").status == 3);
    const auto twice = with("date,tmax_c,tmin_c\n2024-07-01,31,12\n2024-07-01,31,12\n");
    CHECK(twice.status == 3);
    CHECK_THAT(twice.err, Contains("row 3"));
    CHECK(evenfall_with(reference_et((folder.write("x", "").string()) + ".none")).status == 3);

    const auto gap = evenfall_with(reference_et(folder.write("gap.csv",
        "date,tmax_c,tmin_c\n2024-07-01,31,12\n2024-07-05,31,13\n").string())).json();
    REQUIRE(gap["findings"].size() == 1);
    CHECK(gap["findings"][0]["kind"] == "gap");
    CHECK(gap["findings"][0]["from"] == "2024-07-02");
}

// PUBLISHED. FAO-56 example 19, 14 to 15 h: 0.63 mm.
TEST_CASE("reference-et, hourly", "[app][published]") {
    const Scratch folder;
    const auto path = folder.write("ndiaye.csv",
        "time,tmean_c,rhmean_percent,wind_m_s,rs_mj_m2\n"
        "2015-10-01T02:00,28,90,1.9,0\n2015-10-01T14:00,38,52,3.3,2.450\n"
        "2015-10-01T15:00,38,52,3.3,\n").string();
    const auto run = [&](std::vector<std::string> more) {
        std::vector<std::string> all{"reference-et", path, "--latitude", "16.2167", "--elevation",
                                     "8m", "--equation", "fao-56", "--night-clearness", "0.8", "--json"};
        all.insert(all.end(), more.begin(), more.end());
        return evenfall_with(all);
    };
    const auto answer = run({"--longitude", "-16.25", "--utc-offset", "-1"}).json();
    REQUIRE(answer["rows"].size() == 3);
    CHECK(answer["rows"][1]["time"] == "2015-10-01T14:00:00");
    CHECK_THAT(answer["rows"][0]["et_mm"].get<double>(), WithinAbs(0.00, 5e-3));
    CHECK_THAT(answer["rows"][1]["et_mm"].get<double>(), WithinAbs(0.63, 5e-3));
    CHECK(answer["rows"][2]["et_mm"].is_null());
    CHECK(answer["rejected"] == 1);

    // Without a longitude the clock stands for it, and each row says so. Rs is given, so all it
    // changes is the clear sky of the cloud factor: 0.01 mm.
    const auto near = run({}).json();
    CHECK_THAT(near["rows"][1]["et_mm"].get<double>(), WithinAbs(0.63, 0.015));
    CHECK_THAT(near["rows"][1]["flags"].back().get<std::string>(), Contains("longitude not given"));
    CHECK(run({"--longitude", "-16.25"}).status == 3);
}

// PUBLISHED (cells from memory, agreeing with the published equation). NEH part 623 table 2-43:
// 3 in of rain, 4 in of crop ET, 2.05 in.
TEST_CASE("effective-rain", "[app][published]") {
    const auto us = evenfall_with({"effective-rain", "--rain", "3.0in", "--crop-et", "4in", "--json"});
    REQUIRE(us.status == 0);
    CHECK_THAT(us.json()["effective_rain_in"].get<double>(), WithinAbs(2.05, 5e-3));
    CHECK_THAT(us.json()["effective_rain_mm"].get<double>(), WithinAbs(25.4 * 2.05, 0.127));
    CHECK(us.json()["storage_assumed"] == true);
    const auto metric = evenfall_with({"effective-rain", "--rain", "76.2mm", "--crop-et", "101.6mm",
                                       "--depletion", "76.2mm", "--json"});
    CHECK_THAT(metric.json()["effective_rain_in"].get<double>(), WithinAbs(2.05, 5e-3));
    CHECK(metric.json()["storage_assumed"] == false);
    CHECK_THAT(evenfall_with({"effective-rain", "--rain", "3in", "--crop-et", "4in"}).out,
               Contains("2.05 in (52.1 mm)"));
    CHECK(evenfall_with({"effective-rain", "--rain", "-3in", "--crop-et", "4in"}).status == 3);
    CHECK(evenfall_with({"effective-rain", "--rain", "3", "--crop-et", "4in"}).status == 2);
    CHECK(evenfall_with({"effective-rain", "--rain", "3in"}).status == 2);
}
