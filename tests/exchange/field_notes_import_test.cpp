// SPDX-License-Identifier: GPL-3.0-or-later
// Pressures and findings on their way into a book. All CONSTRUCTED.
#include "core/store/catch_test_store.h"
#include "core/store/journal_store.h"
#include "tests/exchange/import_desk.h"

#include <algorithm>

using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;

namespace {

struct Desk : tests::ImportDesk {
    Desk()
        : ImportDesk({"site,name,latitude,elevation_m\nS,Site,40,100\n", "area,site,size_ac\nA,S,2\n",
                      "test,area,date,can,depth_mm\nT1,A,2026-04-20,1,5\nT1,,,2,6\nT2,A,2026-04-21,1,5\n"}) {}
    audit::CatchTest test(const std::string& code) const { return *store::find_catch_test(book, code); }
};

constexpr const char* pressures =
    "test,place,pressure_psi,nozzle_low_psi,nozzle_high_psi\nT1,first head,52,45,60\nT1,last head,44.5,,\n"
    "T2,first head,50,,\n";
constexpr const char* findings =
    "test,finding,place,count,severity,corrected,note\nT1,tilted,row 2,3,minor,yes,\n"
    "T1,leaking_head,B7,,severe,no,seal worn\nT2,none,,,,,\n";

}  // namespace

TEST_CASE("pressures and findings go into the book beside their test", "[exchange][constructed]") {
    Desk desk;
    const auto p = desk.put(pressures);
    CHECK(p.stored);
    CHECK(p.kind == Kind::pressures);
    CHECK(p.added == 3);
    const auto f = desk.put(findings);
    CHECK(f.kind == Kind::findings);
    CHECK(f.added == 3);
    const auto t = desk.test("T1");
    REQUIRE((t.pressures && t.findings));
    REQUIRE(t.pressures->size() == 2);
    CHECK(t.pressures->at(0).pressure.text() == "52 psi");  // as typed
    CHECK(t.pressures->at(0).nozzle_high->text() == "60 psi");
    CHECK_FALSE(t.pressures->at(1).nozzle_low.has_value());
    REQUIRE(t.findings->size() == 2);
    CHECK(t.findings->at(0).corrected);
    CHECK(t.findings->at(1).count == 1);
    CHECK(t.findings->at(1).severity == audit::Severity::severe);
    const auto other = desk.test("T2");
    CHECK((other.findings && other.findings->empty()));  // inspected, nothing found
    const auto journal = store::journal(desk.book);
    const auto entry = [&](const std::string& what) {
        return std::any_of(journal.begin(), journal.end(), [&](const auto& e) { return e.what.find(what) != std::string::npos; });
    };
    CHECK(entry("Imported 3 new and 0 corrected pressures"));
    CHECK(entry("Imported 3 new and 0 corrected findings"));

    SECTION("the same again adds nothing, nor does the test's own sheet take them away") {
        CHECK(desk.put(pressures).unchanged == 3);
        CHECK(desk.put(findings).unchanged == 3);
        CHECK(desk.put("test,area,date,can,depth_mm\nT1,A,2026-04-20,1,5\nT1,,,2,6\n").unchanged == 1);
        CHECK(desk.test("T1").pressures->size() == 2);
        CHECK(store::journal(desk.book).size() == journal.size());
    }
    SECTION("any split and order gives the same notes") {
        Desk parts;
        CHECK(parts.put("test,place,pressure_psi\nT2,first head,50\nT1,last head,44.5\n").added == 2);
        CHECK(parts.put(pressures).added == 1);
        CHECK(parts.test("T1").pressures->size() == 2);
        CHECK(parts.test("T2").pressures->size() == 1);
    }
    SECTION("another value is a conflict, settled only by a choice") {
        const std::string changed = "test,place,pressure_psi\nT1,last head,46\n";
        CHECK_THAT(desk.refusal(changed), Contains("pressure of test T1 at last head") && Contains("44.5 psi") &&
                                              Contains("46 psi"));
        CHECK(desk.put(changed, ConflictChoice::keep).conflicts == 1);
        CHECK(desk.test("T1").pressures->at(1).pressure.value == 44.5);
        CHECK(desk.put(changed, ConflictChoice::replace).replaced == 1);
        CHECK(desk.test("T1").pressures->at(1).pressure.value == 46);
        CHECK(desk.test("T1").pressures->at(0).pressure.value == 52);
        std::size_t both = 0;
        for (const auto& e : store::journal(desk.book)) {
            if (e.record != "pressure of test T1 at last head") continue;
            CHECK_THAT(e.detail, Contains("44.5 psi") && Contains("46 psi"));
            ++both;
        }
        CHECK(both == 2);
        CHECK(desk.put("test,finding,place,severity\nT1,leaking_head,B7,minor\n",
                       ConflictChoice::replace).replaced == 1);
        CHECK(desk.test("T1").findings->at(1).severity == audit::Severity::minor);
        CHECK(desk.test("T1").findings->at(0).severity == audit::Severity::minor);
    }
    SECTION("nothing found, and then something") {
        CHECK_THAT(desk.refusal("test,finding\nT2,tilted\n"), Contains("inspected, nothing found"));
        CHECK_THAT(desk.refusal("test,finding\nT1,none\n"), Contains("a test that has findings"));
        CHECK(desk.put("test,finding\nT2,tilted\n", ConflictChoice::replace).stored);
        CHECK(desk.test("T2").findings->size() == 1);
    }
    CHECK(desk.book.integrity_problems().empty());
}

TEST_CASE("notes with mistakes leave the book alone", "[exchange][constructed]") {
    Desk desk;
    CHECK_THAT(desk.refusal("place,pressure_psi\nhead,50\n"), Contains("a column test"));
    CHECK_THAT(desk.refusal("test,place,pressure_psi\nT9,head,50\n"),
               Contains("row 2, column test: found \"T9\"") && Contains("the code of a catch test"));
    CHECK_THAT(desk.refusal("test,place,pressure_psi\nT1,head,-4\n"),
               Contains("row 2, column pressure_psi") && Contains("above zero"));
    CHECK_THAT(desk.refusal("test,place,pressure_psi,nozzle_low_bar,nozzle_high_bar\nT1,head,50,4,3\n"),
               Contains("row 2, column nozzle_low_bar") && Contains("from low to high"));
    CHECK_THAT(desk.refusal("test,place,pressure_psi\nT1,head,50\nT1,head,51\n"),
               Contains("row 3, column place") && Contains("row 2 says something else"));
    CHECK_THAT(desk.refusal("test,finding,count,severity\nT1,tiltd,2,minor\nT1,tilted,0,awful\n"),
               Contains("the nearest is tilted") && Contains("row 3, column count") && Contains("column severity"));
    CHECK_FALSE(desk.test("T1").pressures.has_value());
    CHECK_FALSE(desk.test("T1").findings.has_value());
}
