// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/planting_store.h"
#include "tests/exchange/import_desk.h"

// All CONSTRUCTED.
using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;

namespace {

struct Desk : tests::ImportDesk {
    Desk()
        : ImportDesk({"site,name,latitude,elevation_m\nS,Site,33.4,330\n",
                      "area,site,size_ac,plant\nA-1,S,2,bermudagrass\nA-2,S,3,bermudagrass\n"}) {}
};

}  // namespace

TEST_CASE("plantings go in, come back and are corrected", "[exchange][constructed]") {
    Desk desk;
    const std::string table = "area,kind,from,to,key,coefficient\n"
                              "A-1,overseeding,2024-10-15,2025-03-31,perennial_ryegrass,\n"
                              "A-2,sod,2024-04-10,,regrown_warm,\n"
                              "A-2,shade,2024-01-01,,,0.8\n";
    const auto first = desk.put(table);
    CHECK(first.kind == Kind::plantings);
    CHECK(first.added == 3);
    CHECK(first.stored);
    const auto all = store::plantings(desk.book, "S");
    REQUIRE(all.size() == 3);
    CHECK(all[0] == weather::Planting{"A-1", weather::PlantingKind::overseeding,
                                      calendar::make_date(2024, 10, 15),
                                      calendar::make_date(2025, 3, 31), "perennial_ryegrass", {}});
    CHECK(all[1].kind == weather::PlantingKind::shade);
    CHECK(all[1].coefficient == 0.8);
    CHECK(desk.put(table).unchanged == 3);

    const std::string later = "area,kind,from,to,key\n"
                              "A-1,overseeding,2024-10-15,2025-04-15,perennial_ryegrass\n";
    const auto refused = desk.put(later);
    CHECK(refused.conflicts == 1);
    CHECK_FALSE(refused.stored);
    CHECK(desk.put(later, ConflictChoice::replace).stored);
    CHECK(store::plantings(desk.book, "S")[0].to == calendar::make_date(2025, 4, 15));
    // The old table again undoes nothing and asks nothing.
    const auto again = desk.put(table);
    CHECK(again.stored);
    CHECK(again.unchanged == 2);
    CHECK(again.decided_before == 1);
    CHECK(store::plantings(desk.book, "S")[0].to == calendar::make_date(2025, 4, 15));
}

TEST_CASE("plantings that cannot be are refused at their column", "[exchange][constructed]") {
    Desk desk;
    const auto result = desk.put(
        "area,kind,from,to,key,coefficient\n"
        "A-1,plugs,2024-10-15,,,\n"
        "A-1,overseeding,2024-10-15,2024-03-31,perennial_ryegrass,\n"
        "A-1,overseeding,2024-10-15,2025-03-31,moss,\n"
        "A-1,shade,2024-10-15,,,80\n"
        "A-9,sod,2024-10-15,,regrown_warm,\n"
        "A-1,sod,15.10.2024,,regrown_warm,\n");
    CHECK(result.rejected == 6);
    CHECK_FALSE(result.stored);
    CHECK(store::plantings(desk.book, "S").empty());
    REQUIRE(result.issues.size() == 6);
    const char* columns[] = {"kind", "to", "key", "coefficient", "area", "from"};
    for (std::size_t i = 0; i < 6; ++i) {
        CAPTURE(result.issues[i].text());
        CHECK(result.issues[i].place.row == i + 2);
        CHECK(result.issues[i].place.column == columns[i]);
    }
}
