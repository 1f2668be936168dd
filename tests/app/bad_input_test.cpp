// SPDX-License-Identifier: GPL-3.0-or-later
// What people get wrong: status 3, the place and the reason, and a book whose bytes are as before.
#include "tests/support/command_line.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

using evenfall::tests::Answer;
using evenfall::tests::bytes_of;
using evenfall::tests::Scratch;

namespace {

Answer run(const std::vector<std::string>& arguments) { return evenfall::tests::evenfall(arguments); }

/// A book with one site, one meter and one area.
std::string some_book(const Scratch& scratch) {
    const auto book = (scratch / "b.evenfall").string();
    REQUIRE(run({"new", book}).status == 0);
    const auto sites = scratch.write("sites.csv", "site,name,latitude,elevation_m\nS,Somewhere,38.5,20\n");
    const auto meters = scratch.write("meters.csv", "meter,site,unit,digits,installed\nM,S,ccf,5,2020-01-15\n");
    const auto areas = scratch.write("areas.csv", "area,site,size_ac,meter\nA,S,2.5,M\n");
    const auto answer = run({"import", book, sites.string(), meters.string(), areas.string()});
    INFO(answer.err);
    REQUIRE(answer.status == 0);
    return book;
}

struct Bad {
    const char* what;
    const char* bytes;
    std::vector<const char*> said;  ///< each must stand in the message
};

}  // namespace

TEST_CASE("bad tables are named by file, row and column, and nothing changes", "[app]") {
    const std::vector<Bad> all = {
        {"unknown unit", "meter,site,unit\nM2,S,bucket\n", {"bad.csv", "row 2", "unit", "bucket", "gal"}},
        {"missing column", "meter,register\nM,12\n", {"bad.csv", "time"}},
        {"unknown column", "meter,time,registr\nM,2024-01-01T06:00,12\n", {"registr", "register"}},
        {"text in a number", "meter,time,register\nM,2024-01-01T06:00,12\nM,2024-01-02T06:00,12x\n",
         {"bad.csv", "row 3", "register", "12x", "number"}},
        {"day 31 in June", "meter,time,register\nM,2024-06-31T06:00,12\n", {"row 2", "time", "2024-06-31"}},
        {"negative catch", "test,area,date,can,x_ft,y_ft,volume_ml,throat_area_in2\n"
                           "T,A,2024-06-01,1,0,0,40,16.61\nT,A,2024-06-01,2,5,0,-3,16.61\n",
         {"row 3", "volume_ml", "-3"}},
        {"duplicate can", "test,area,date,can,x_ft,y_ft,volume_ml,throat_area_in2\n"
                          "T,A,2024-06-01,1,0,0,40,16.61\nT,A,2024-06-01,1,5,0,41,16.61\n",
         {"row 3", "can"}},
        {"reading before the meter existed", "meter,time,register\nM,2019-12-31T06:00,12\n",
         {"row 2", "2019-12-31", "2020-01-15"}},
        {"unknown meter", "meter,time,register\nX,2024-01-01T06:00,12\n", {"row 2", "meter", "\"X\""}},
        {"file cut in mid-row", "meter,time,register\nM,2024-01-01T06:00,12\nM,2024-01-02T06:00,\"13",
         {"bad.csv", "row 3"}},
        {"not UTF-8", "site,name,latitude,elevation_m\nS2,Caf\xe9,38,20\n", {"row 2", "\\xE9", "UTF-8"}},
    };
    for (const Bad& bad : all) {
        const Scratch scratch;
        const auto book = some_book(scratch);
        const auto before = bytes_of(book);
        const auto file = scratch.write("bad.csv", bad.bytes);
        const auto answer = run({"import", book, file.string()});
        CAPTURE(bad.what, answer.err);
        CHECK(answer.status == 3);
        for (const char* part : bad.said) CHECK_THAT(answer.err, Catch::Contains(part));
        CHECK(bytes_of(book) == before);
        CHECK(answer.out.empty());
    }
}

TEST_CASE("an empty file and one good file beside a bad one", "[app]") {
    const Scratch scratch;
    const auto book = some_book(scratch);
    const auto before = bytes_of(book);
    const auto empty = scratch.write("empty.csv", "");
    CHECK(run({"import", book, empty.string()}).status == 3);
    const auto good = scratch.write("good.csv", "meter,time,register\nM,2024-01-01T06:00,12\n");
    const auto bad = scratch.write("bad.csv", "meter,time,register\nM,2024-01-02T06:00,x\n");
    CHECK(run({"import", book, good.string(), bad.string()}).status == 3);
    CHECK(bytes_of(book) == before);
    CHECK(run({"import", book, good.string()}).status == 0);
    CHECK(bytes_of(book) != before);
}
