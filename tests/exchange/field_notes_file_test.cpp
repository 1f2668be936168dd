// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/field_notes_file.h"

#include "core/input_error.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using tests::Scratch;

TEST_CASE("pressures with their nozzle ranges", "[exchange]") {
    const Scratch scratch;
    const auto p = read_pressures(scratch.write(
        "p.csv", "place,pressure_psi,nozzle_low_psi,nozzle_high_psi\nstart,52,45,60\nend,41,,\n"));
    REQUIRE(p.size() == 2);
    CHECK(p[0].pressure.text() == "52 psi");
    CHECK(p[0].nozzle_high->text() == "60 psi");
    CHECK_FALSE(p[1].nozzle_low.has_value());
    CHECK(p[1].row == 3);
    CHECK_THROWS_WITH(read_pressures(scratch.write("q.csv", "place,pressure_psi\na,52\nb,-4\nc,x\n")),
                      Contains("row 4") && Contains("x"));
    CHECK_THROWS_WITH(read_pressures(scratch.write("r.csv", "place,pressure_psi\na,52\nb,-4\n")),
                      Contains("row 3") && Contains("above zero"));
    CHECK_THROWS_WITH(read_pressures(scratch.write("s.csv", "place,presure_psi\na,52\n")),
                      Contains("pressure_psi"));
}

TEST_CASE("findings, and an inspection that found nothing", "[exchange]") {
    const Scratch scratch;
    const auto f = read_findings(scratch.write(
        "f.csv", "finding,place,count,severity,corrected,note\ntilted,A3,2,minor,no,\nbroken,B1,,severe,yes,gusher\n"));
    REQUIRE(f.size() == 2);
    CHECK(f[0].count == 2);
    CHECK(f[1].count == 1);
    CHECK(f[1].corrected);
    CHECK(f[1].severity == audit::Severity::severe);
    CHECK(read_findings(scratch.write("none.csv", "finding,place\n")).empty());
    CHECK(read_findings(scratch.write("none.csv", "test,finding\nT,none\n")).empty());
    CHECK_THROWS_WITH(read_findings(scratch.write("both.csv", "finding\nnone\ntilted\n")),
                      Contains("row 3") && Contains("either findings or none"));
    CHECK_THROWS_WITH(read_findings(scratch.write("two.csv", "test,finding\nT,tilted\nU,broken\n")),
                      Contains("row 3, column test") && Contains("the same test"));
    CHECK_THROWS_WITH(read_findings(scratch.write("g.csv", "finding,count,severity\ntilted,0,minor\nbroken,1,awful\n")),
                      Contains("row 2") && Contains("row 3") && Contains("minor, moderate or severe"));
}

TEST_CASE("an outline in feet", "[exchange]") {
    const Scratch scratch;
    const auto o = read_outline(scratch.write("o.csv", "x_ft,y_ft\n0,0\n10,0\n10,20\n"));
    REQUIRE(o.size() == 3);
    CHECK(o[2].second == 20.0 * units::foot);
    CHECK_THROWS_AS(read_outline(scratch.write("p.csv", "x_ft,y_ft\n0,\n10,0\n")), InputError);
}
