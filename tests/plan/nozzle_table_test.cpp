// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/nozzle_table.h"

#include "core/input_error.h"
#include "tests/plan/plans.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>

using namespace evenfall;
using Catch::Matchers::WithinRel;

namespace {

std::filesystem::path written(const std::string& text) {
    const auto folder = std::filesystem::path(EVENFALL_BINARY_DIR) / "plan_test_files";
    std::filesystem::create_directories(folder);
    const auto path = folder / "nozzles.csv";
    std::ofstream(path, std::ios::binary) << text;
    return path;
}

void check_refused(const std::string& text, std::size_t row, const std::string& column) {
    CAPTURE(text, row, column);
    try {
        static_cast<void>(exchange::read_nozzles(written(text), plan_test::metric()));
        FAIL("accepted");
    } catch (const InputError& e) {
        for (const Issue& i : e.issues()) UNSCOPED_INFO(i.text());
        CHECK(std::any_of(e.issues().begin(), e.issues().end(), [&](const Issue& i) {
            return i.place.row == row && i.place.column == column;
        }));
    }
}

}  // namespace

TEST_CASE("a nozzle table is read into the units of the plan", "[plan][exchange][constructed]") {
    const auto n = exchange::read_nozzles(std::filesystem::path(EVENFALL_SOURCE_DIR) / "schemas/tables/nozzles.csv",
                                          plan_test::lawn().units);
    REQUIRE(n.size() == 4);
    CHECK(n[0].name == "amber 15 quarter");
    CHECK(n[0].rows == std::vector<plan::NozzleRow>{{20, 12, 0.78}, {30, 15, 0.95}, {40, 16, 1.10}});
    CHECK(n[0].lowest == 20.0);
    const auto m = exchange::read_nozzles(written("nozzle,pressure_bar,radius_m,flow_l_min\nA,3,10,20\nA,2,9,16\n"),
                                          plan_test::metric());
    REQUIRE(m.size() == 1);
    REQUIRE(m[0].rows.size() == 2);
    CHECK_THAT(m[0].rows[0].pressure, WithinRel(200.0, 1e-12));  // sorted, kPa
    CHECK_THAT(m[0].rows[0].flow, WithinRel(0.96, 1e-12));       // m3/h
    CHECK_FALSE(m[0].lowest.has_value());
}

TEST_CASE("bad nozzle tables are refused with row and column", "[plan][exchange][constructed]") {
    const std::string head = "nozzle,pressure_psi,radius_ft,flow_gpm\n";
    check_refused(head + "A,30,15,x\n", 2, "flow_gpm");
    check_refused(head + "A,30,15,1\nA,40,,1\n", 3, "radius_ft");
    check_refused(head + "A,-30,15,1\n", 2, "pressure_psi");
    check_refused(head + "A,30,15,1\nA,30,15,2\n", 3, "pressure_psi");
    check_refused(head + ",30,15,1\n", 2, "nozzle");
    check_refused("nozzle,pressure_psi,radius_ft\nA,30,15\n", 1, "flow_gpm, flow_l_min, flow_l_s or flow_m3_h");
    CHECK_THROWS_AS(exchange::read_nozzles(written(head), plan_test::metric()), InputError);
}
