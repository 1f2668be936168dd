// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import.h"
#include "core/store/planting_store.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

// All CONSTRUCTED.
using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using tests::Scratch;

namespace {

ImportResult import_one(store::Book& book, const std::filesystem::path& file,
                        ConflictChoice conflicts = ConflictChoice::refuse) {
    ImportOptions options;
    options.at = "2024-11-01T00:00:00Z";
    options.conflicts = conflicts;
    const std::vector files{file};
    return import_files(book, files, options).front();
}

store::Book book_with_areas(const Scratch& folder) {
    auto book = store::Book::create(folder / "b.evenfall");
    import_one(book, folder.write("sites.csv", "site,name,latitude,elevation_m\nS,Site,33.4,330\n"));
    import_one(book, folder.write("areas.csv", "area,site,size_ac,plant\nA-1,S,2,bermudagrass\nA-2,S,3,bermudagrass\n"));
    return book;
}

}  // namespace

TEST_CASE("plantings go in, come back and are corrected", "[exchange][constructed]") {
    const Scratch folder;
    auto book = book_with_areas(folder);
    const auto file = folder.write("p.csv", "area,kind,from,to,key,coefficient\n"
                                            "A-1,overseeding,2024-10-15,2025-03-31,perennial_ryegrass,\n"
                                            "A-2,sod,2024-04-10,,regrown_warm,\n"
                                            "A-2,shade,2024-01-01,,,0.8\n");
    const auto first = import_one(book, file);
    CHECK(first.kind == Kind::plantings);
    CHECK(first.added == 3);
    CHECK(first.stored);
    const auto all = store::plantings(book, "S");
    REQUIRE(all.size() == 3);
    CHECK(all[0] == weather::Planting{"A-1", weather::PlantingKind::overseeding,
                                      calendar::make_date(2024, 10, 15),
                                      calendar::make_date(2025, 3, 31), "perennial_ryegrass", {}});
    CHECK(all[1].kind == weather::PlantingKind::shade);
    CHECK(all[1].coefficient == 0.8);
    CHECK(import_one(book, file).unchanged == 3);

    const auto later = folder.write("q.csv", "area,kind,from,to,key\n"
                                             "A-1,overseeding,2024-10-15,2025-04-15,perennial_ryegrass\n");
    const auto refused = import_one(book, later);
    CHECK(refused.conflicts == 1);
    CHECK_FALSE(refused.stored);
    CHECK(import_one(book, later, ConflictChoice::replace).stored);
    CHECK(store::plantings(book, "S")[0].to == calendar::make_date(2025, 4, 15));
}

TEST_CASE("plantings that cannot be are refused at their column", "[exchange][constructed]") {
    const Scratch folder;
    auto book = book_with_areas(folder);
    const auto result = import_one(book, folder.write("p.csv",
        "area,kind,from,to,key,coefficient\n"
        "A-1,plugs,2024-10-15,,,\n"
        "A-1,overseeding,2024-10-15,2024-03-31,perennial_ryegrass,\n"
        "A-1,overseeding,2024-10-15,2025-03-31,moss,\n"
        "A-1,shade,2024-10-15,,,80\n"
        "A-9,sod,2024-10-15,,regrown_warm,\n"
        "A-1,sod,15.10.2024,,regrown_warm,\n"));
    CHECK(result.rejected == 6);
    CHECK_FALSE(result.stored);
    CHECK(store::plantings(book, "S").empty());
    REQUIRE(result.issues.size() == 6);
    const char* columns[] = {"kind", "to", "key", "coefficient", "area", "from"};
    for (std::size_t i = 0; i < 6; ++i) {
        CAPTURE(result.issues[i].text());
        CHECK(result.issues[i].place.row == i + 2);
        CHECK(result.issues[i].place.column == columns[i]);
    }
}
