// SPDX-License-Identifier: GPL-3.0-or-later
// Books that hold next to nothing: the answer says what is missing, and one bad sheet spoils no season.
// All CONSTRUCTED.
#include "app/workflow/reports.h"
#include "core/store/book.h"
#include "reports/text/write_text.h"
#include "tests/support/command_line.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace evenfall;
using Catch::Matchers::Contains;
using tests::Scratch;

namespace {

tests::Answer run(const std::vector<std::string>& arguments) { return tests::evenfall(arguments); }

/// Site S with an area, a meter and readings; site E with nothing; a test of one can.
std::string thin_book(const Scratch& scratch) {
    const auto book = (scratch / "b.evenfall").string();
    REQUIRE(run({"new", book}).status == 0);
    const auto answer = run(
        {"import", book, scratch.write("s.csv", "site,name,latitude,elevation_m\nS,Somewhere,38.5,20\nE,Empty,38.5,20\n").string(),
         scratch.write("m.csv", "meter,site,unit\nM,S,ccf\n").string(),
         scratch.write("a.csv", "area,site,size_ac,meter,plant\nA,S,2.5,M,cool-season\n").string(),
         scratch.write("r.csv", "meter,time,register\nM,2024-01-01T00:00,0\nM,2024-03-01T00:00,120\n").string(),
         scratch.write("c.csv", "test,area,date,throat_area_in2,minutes,can,x_ft,y_ft,volume_ml\nONE,A,2024-01-20,16.61,30,1,0,0,50\n").string()});
    INFO(answer.err);
    REQUIRE(answer.status == 0);
    return book;
}

std::string season_text(const std::string& file, const std::string& site) {
    const auto book = store::Book::open(file, store::Access::read_only);
    const workflow::SeasonQuestion question{site,      {std::chrono::year{2024} / 1}, {std::chrono::year{2024} / 2},
                                            "general", "nrcs",                        audit::QuarterRule::whole_cans};
    const reports::Frame frame{reports::UnitsShown::us, "", "2024-04-01T12:00:00Z", "Evenfall", {}};
    return reports::write_text(workflow::season_report_of(book, question, frame));
}

/// Lines are broken to the width of a page; a sentence is looked for without its breaks.
std::string in_one_line(std::string text) {
    std::string out;
    for (const char c : text) {
        const bool blank = c == ' ' || c == '\n';
        if (!blank) out += c;
        else if (!out.empty() && out.back() != ' ') out += ' ';
    }
    return out;
}

}  // namespace

TEST_CASE("a site without anything gets a report that says what it needs", "[app][constructed]") {
    const Scratch scratch;
    const std::string text = in_one_line(season_text(thin_book(scratch), "E"));
    CHECK_THAT(text, Contains("To judge this season the book still needs its areas with their size and plants; its meters, with readings"));
    CHECK_THAT(text, Contains("weather of nearly every day"));
    CHECK_THAT(text, Contains("No area of the site is recorded."));
    CHECK_THAT(text, Contains("No metered use of these months is recorded."));
}

TEST_CASE("a catch test of one can is left out of a season and named", "[app][constructed]") {
    const Scratch scratch;
    const std::string book = thin_book(scratch);
    const auto season = run({"season", book, "--site", "S", "--from", "2024-01", "--to", "2024-02", "--json"});
    INFO(season.err);
    REQUIRE(season.status == 0);
    // DERIVED: 120 ccf in the two months are 12000 cubic feet, 7.480519 gal each.
    CHECK_THAT(nlohmann::json::parse(season.out)["total"]["use_gal"].get<double>(), Catch::Matchers::WithinRel(12000.0 * 7.480519, 1e-6));
    const std::string text = in_one_line(season_text(book, "S"));
    CHECK_THAT(text, Contains("Catch test ONE: Not used, because it cannot be worked out"));
    CHECK_THAT(text, Contains("a planning value of the head type stands for the uniformity"));
    // The map of areas and the portfolio of sites go on as well.
    const auto map = run({"export", book, "--out", (scratch / "out").string(), "--areas-geojson", "--from", "2024-01", "--to", "2024-02"});
    CHECK(map.status == 0);
    CHECK_THAT(map.out, Contains("gap: Catch test ONE"));
    CHECK(run({"portfolio", book, "--from", "2024-01", "--to", "2024-02"}).status == 0);
}

TEST_CASE("an audit report of a site without tests says so", "[app][constructed]") {
    const Scratch scratch;
    const std::string book = thin_book(scratch);
    CHECK(run({"report", book, "audit", "--site", "E", "--format", "csv", "--out", (scratch / "o").string()}).status == 0);
    const auto opened = store::Book::open(book, store::Access::read_only);
    const reports::Frame frame{reports::UnitsShown::us, "", "2024-04-01T12:00:00Z", "Evenfall", {}};
    const auto none = workflow::audit_report_of_site(opened, "E", audit::QuarterRule::whole_cans, frame);
    CHECK_THAT(in_one_line(reports::write_text(none)), Contains("No catch test is recorded here"));
    const auto one = workflow::audit_report_of_test(opened, "ONE", audit::QuarterRule::whole_cans, frame);
    CHECK_THAT(in_one_line(reports::write_text(one)), Contains("Test ONE (A) could not:") && Contains("at least four"));
    CHECK(run({"report", book, "audit", "--site", "NONE", "--out", (scratch / "o").string()}).status == 3);
}
