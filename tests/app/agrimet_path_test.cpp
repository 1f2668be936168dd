// SPDX-License-Identifier: GPL-3.0-or-later
// The full path on real station data: a book, the ordinary import, the season's monthly figures.
#include "core/units/number.h"
#include "tests/support/command_line.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>
#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <sstream>

using evenfall::tests::Scratch;
using Json = nlohmann::json;
using Catch::Matchers::WithinRel;

namespace {

evenfall::tests::Answer run(const std::vector<std::string>& arguments) {
    return evenfall::tests::evenfall(arguments);
}

/// The station's files hold our columns under the network's names, plus what it published.
struct Station {
    std::string table = "station,date,tmin_f,tmax_f,rs_langley,tdew_f,wind_mph,rain_in\n";
    std::map<std::string, double> published_in;  ///< sum of its ETo by month
};

void read_station(Station& station, const std::string& name) {
    std::istringstream lines(
        evenfall::tests::bytes_of(std::string(EVENFALL_SOURCE_DIR "/tests/data/weather/") + name));
    for (std::string line; std::getline(lines, line);) {
        if (line.empty() || line[0] == '#' || line.starts_with("date")) continue;
        std::vector<std::string> cells;
        std::istringstream row(line);
        for (std::string cell; std::getline(row, cell, ',');) cells.push_back(cell);
        REQUIRE(cells.size() >= 8);
        // date,doy,tmin_F,tmax_F,rs_langley,tdew_F,wind_mph,etos_in_pub,...
        station.table += "FALN," + cells[0] + "," + cells[2] + "," + cells[3] + "," + cells[4] + "," + cells[5] +
                         "," + cells[6] + ",0\n";
        station.published_in[cells[0].substr(0, 7)] +=
            evenfall::units::parse_number(cells[7]).value_or(0.0);
    }
}

}  // namespace

// PUBLISHED. US Bureau of Reclamation AgriMet, station FALN (Fallon, Nevada), 2015: daily inputs and
// the network's own ASCE-EWRI 2005 ETos in inches to two decimals; copied as data from the public
// repository WSWUP/RefET (Apache-2.0). Tolerance of a month: 1 %, or where that is less, the standard
// error of 31 values rounded to 0.01 in, which is sqrt(31) x 0.01 / sqrt(12) = 0.016 in.
TEST_CASE("three real months from CSV through the book to the season", "[app][published]") {
    Station station;
    read_station(station, "agrimet-faln-2015-07.csv");
    read_station(station, "agrimet-faln-2015-01-10.csv");
    const Scratch scratch;
    const auto book = (scratch / "b.evenfall").string();
    REQUIRE(run({"new", book}).status == 0);
    const std::vector<std::string> files = {
        scratch.write("sites.csv", "site,name,latitude,elevation_m,time_zone,weather\n"
                                   "F,Trial field,39.4575,1208.5,\"PST8PDT,M3.2.0,M11.1.0\",FALN\n").string(),
        scratch.write("stations.csv", "station,latitude,elevation_m,wind_height_m\nFALN,39.4575,1208.5,3\n").string(),
        scratch.write("meters.csv", "meter,site,unit\nM,F,acre_ft\n").string(),
        scratch.write("areas.csv", "area,site,size_ac,coefficient,head_type,meter\nA,F,10,0.8,pivot,M\n").string(),
        scratch.write("weather.csv", station.table).string(),
        scratch.write("readings.csv", "meter,time,register\nM,2015-01-01T00:00,0\nM,2015-02-01T00:00,0.5\nM,2015-07-01T00:00,20\n"
                                      "M,2015-08-01T00:00,27.5\nM,2015-10-01T00:00,40\nM,2015-11-01T00:00,43\n").string()};
    std::vector<std::string> import{"import", book};
    import.insert(import.end(), files.begin(), files.end());
    const auto imported = run(import);
    INFO(imported.err);
    REQUIRE(imported.status == 0);

    for (const auto& [month, inches] : station.published_in) {
        const auto answer = run({"season", book, "--site", "F", "--from", month, "--to", month, "--json"});
        INFO(answer.err);
        REQUIRE(answer.status == 0);
        const Json figures = Json::parse(answer.out)["months"][0];
        CAPTURE(month, inches);
        const double share = std::max(0.01, 0.016 / inches);
        CHECK_THAT(figures["reference_et_mm"].get<double>(), WithinRel(25.4 * inches, share));
        // DERIVED from the same published sum: ten acres at 0.8 ETo, no rain, all in this month.
        const double need = 0.8 * inches * 10.0 * 27154.285714;
        CHECK_THAT(figures["need_gal"].get<double>(), WithinRel(need, share));
        CHECK_THAT(figures["budget_gal"].get<double>(), WithinRel(need / 0.85, share));
        const double use_acre_ft = month == "2015-01" ? 0.5 : month == "2015-07" ? 7.5 : 3.0;
        CHECK_THAT(figures["use_gal"].get<double>(), WithinRel(use_acre_ft * 325851.428571, 1e-9));
    }
}
