// SPDX-License-Identifier: GPL-3.0-or-later
// Rates, pumps, stations, rules and settings: the example tables of schemas/tables go in as they are.
#include "core/store/price_store.h"
#include "core/store/site_store.h"
#include "core/store/station_store.h"
#include "tests/exchange/import_desk.h"

// All CONSTRUCTED.
using namespace evenfall;
using namespace evenfall::exchange;
using Catch::Matchers::Contains;
using Path = std::filesystem::path;

namespace {

struct Desk : tests::ImportDesk {
    Desk() {
        site::Site site;
        site.code = std::string("S-1");
        site.name = std::string("One");
        store::add_site(book, site, std::nullopt);
        site::Area area;
        area.code = std::string("A-1");
        area.site = std::string("S-1");
        area.size = units::parse_measure<units::Area>("2ac");
        store::add_area(book, area, std::nullopt);
    }
};

std::vector<Path> examples() {
    std::vector<Path> files;
    for (const char* name : {"prices", "energy", "pumps", "stations", "watering_rules", "area_settings"}) {
        files.push_back(Path(EVENFALL_SOURCE_DIR) / "schemas" / "tables" / (std::string(name) + ".csv"));
    }
    return files;
}

const std::string price_header = "rate,site,from,to,unit,currency,tier_up_to,price\n";

}  // namespace

TEST_CASE("the example tables go into a book, and a second time change nothing", "[exchange]") {
    Desk desk;
    const auto first = import_files(desk.book, examples(), tests::import_options());
    require_accepted(first);
    CHECK(first[0].added == 2);
    const auto rates = store::water_rates(desk.book);
    REQUIRE(rates.size() == 2);
    CHECK(rates[0].tiers.size() == 3);
    CHECK(rates[0].sewer_share.value() == 0.2);
    CHECK_FALSE(rates[1].to.has_value());
    const budget::WaterRates checked(rates, "S-1");
    CHECK(checked.currency() == "USD");
    CHECK(store::energy_rates(desk.book).size() == 2);
    CHECK(store::pumps(desk.book, "S-1").at(0).pressure->text() == "70 psi");
    CHECK(store::stations(desk.book, "S-1").at(0).arc_degrees == 180.0);
    CHECK(store::watering_rule(desk.book, "S-1")->days_a_week() == 3);
    CHECK(store::watering_rule(desk.book, "S-1")->window() == std::chrono::hours{8});
    CHECK(store::area_settings(desk.book, "S-1").at(0).off_target->value() == 0.06);
    CHECK(store::area_settings(desk.book, "S-1").at(0).salt.value().water_ec == 1.2);

    const auto second = import_files(desk.book, examples(), tests::import_options());
    require_accepted(second);
    for (const auto& result : second) {
        CAPTURE(result.file);
        CHECK(result.added == 0);
        CHECK(result.unchanged > 0);
    }
}

TEST_CASE("price rows that cannot be are refused with their place", "[exchange]") {
    Desk desk;
    struct Row { std::string cells; std::string column; };
    const auto row = GENERATE(values<Row>({
        {"R,,2024-01-01,,ccf,USD,,-1\n", "price"},
        {"R,,2024-01-01,,barrel,USD,,1\n", "unit"},
        {"R,,2024-01-01,,ccf,dollars,,1\n", "currency"},
        {"R,,2024-01-01,2023-01-01,ccf,USD,,1\n", "to"},
        {"R,X,2024-01-01,,ccf,USD,,1\n", "site"},
        {"R,,2024-01-01,,ccf,USD,10,1\n", "rate"},                                  // no open tier
        {"R,,2024-01-01,,ccf,USD,10,1\nR,,2024-02-01,,ccf,USD,,2\n", "rate"},       // other dates
        {"R,,2024-01-01,,ccf,USD,20,1\nR,,2024-01-01,,ccf,USD,10,2\nR,,2024-01-01,,ccf,USD,,3\n",
         "rate"},                                                                   // falling limits
    }));
    CAPTURE(row.cells);
    const auto result = desk.put(price_header + row.cells);
    CHECK_FALSE(result.stored);
    REQUIRE_FALSE(result.issues.empty());
    CHECK(result.issues[0].place.column == row.column);
    CHECK(result.issues[0].place.row > 1);
    CHECK(store::water_rates(desk.book).empty());
}

TEST_CASE("a rate keeps what it said", "[exchange]") {
    Desk desk;
    CHECK(desk.put(price_header + "R,,2024-01-01,,ccf,USD,,1\n").added == 1);
    const auto result = desk.put(price_header + "R,,2024-01-01,,ccf,USD,,2\n");
    REQUIRE(result.issues.size() == 1);
    CHECK_THAT(result.issues[0].expected.english(), Contains("a code of its own"));
    CHECK(store::water_rates(desk.book).at(0).tiers.at(0).price == 1.0);
}

TEST_CASE("a watering rule changes only where the user says so", "[exchange]") {
    Desk desk;
    const std::string header = "site,days,starts,ends\n";
    CHECK(desk.put(header + "S-1,mon,22:00,06:00\n").added == 1);
    CHECK(desk.put(header + "S-1,tue,22:00,06:00\n").conflicts == 1);
    CHECK(store::watering_rule(desk.book, "S-1")->days[0]);
    CHECK_FALSE(desk.put(header + "S-1,monday,22:00,06:00\n").issues.empty());
    CHECK_FALSE(desk.put(header + "S-1,mon,25:00,06:00\n").issues.empty());
    CHECK_FALSE(desk.put(header + "S-1,mon,06:00,06:00\n").issues.empty());
}

TEST_CASE("salt of the water comes with the salt the soil is kept at", "[exchange]") {
    Desk desk;
    const std::string header = "area,water_ec_ds_m,soil_ec_limit_ds_m\n";
    for (const char* wrong : {"A-1,1.2,\n", "A-1,,4\n", "A-1,-1,4\n", "A-1,61,4\n", "A-1,30,4\n", "A-1,x,4\n"}) {
        CAPTURE(wrong);
        CHECK_FALSE(desk.put(header + wrong).issues.empty());
    }
    CHECK(store::area_settings(desk.book, "S-1").empty());
    CHECK(desk.put(header + "A-1,1.2,4\n").added == 1);
    CHECK(desk.put(header + "A-1,1.2,4\n").unchanged == 1);
    CHECK(desk.put(header + "A-1,1.3,4\n").conflicts == 1);
}
