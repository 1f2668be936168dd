// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/plan_store.h"

#include "core/exchange/plan_file.h"
#include "core/input_error.h"
#include "core/store/site_store.h"
#include "tests/plan/plans.h"
#include "tests/support/scratch.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::store;
using evenfall::tests::Scratch;

namespace {

Book book_with_sites(const Scratch& scratch) {
    Book book = Book::create(scratch / "b.evenfall");
    for (const char* code : {"S1", "S2"}) {
        site::Site s;
        s.code = code;
        s.name = code;
        s.latitude = 40.0;
        s.elevation = units::parse_measure<units::Length>("10m");
        add_site(book, s, std::nullopt);
    }
    return book;
}

plan::Plan full_plan() {
    plan::Plan p = plan_test::lawn();
    p.name = "Terrace";
    p.turf[0].push_back({{40.0, 20.0}, {44.0, 20.0}, {44.1, 24.0}});
    p.turf.push_back(plan_test::rectangle(100.0, 0.0, 110.0, 0.1 + 0.2));
    p.no_water = {plan_test::rectangle(1.0, 1.0, 2.0, 2.0), plan_test::rectangle(5.0, 1.0, 6.0, 2.0)};
    p.obstacles = {plan_test::rectangle(3.0, 3.0, 3.5, 3.5)};
    p.nozzles = {{"N4", {{25.0, 13.0, 1.0}, {35.0, 15.0, 1.3}}, 20.0, {}}, {"N8", {{30.0, 15.0, 2.0}}, {}, {}}};
    p.profiles = {{"leg 1", {{0.0, 1.0}, {7.0, 0.8}, {15.0, 0.0}}}};
    p.heads[3].radius.reset();
    p.heads[3].flow.reset();
    p.heads[3].nozzle = "N4";
    p.heads[3].pressure = 30.0;
    p.heads[4].profile = "leg 1";
    p.pipes = {{"P1", {{0.0, 0.0}, {10.0, 0.0}}, "1 in"}, {"", {{0.0, 0.0}, {1.0, 5.0}, {2.0, 5.0}}, ""}};
    p.lanes = {{"L1", {{0.0, 5.0}, {90.0, 5.0}}}};
    p.pivots = {{"V1", {45.0, 20.0}, {10.0, 10.5}}};
    p.assumed = {"heads without an arc are taken as full circles"};
    return p;
}

}  // namespace

TEST_CASE("a design plan comes out of the book as it went in", "[store][plan]") {
    const Scratch scratch;
    Book book = book_with_sites(scratch);
    const plan::Plan p = full_plan();
    {
        Transaction all(book);
        CHECK(add_plan(book, "PLAN-1", "S1", p, std::nullopt) == 0);
        all.commit();
    }
    const auto q = find_plan(book, "PLAN-1");
    REQUIRE(q.has_value());
    CHECK(q->site == "S1");
    CHECK(q->plan.assumed == p.assumed);
    CHECK(q->plan.heads == p.heads);
    CHECK(q->plan.pipes == p.pipes);
    // Everything else by its file form, which tests/plan/plan_file_test.cpp compares field by field.
    CHECK(exchange::plan_text(q->plan) == exchange::plan_text(p));
    CHECK_FALSE(find_plan(book, "PLAN-2").has_value());
    CHECK(plan_codes(book, "") == std::vector<std::string>{"PLAN-1"});
    CHECK(plan_codes(book, "S2").empty());
    CHECK(book.integrity_problems().empty());
}

TEST_CASE("a changed plan is a new revision and the old one stays", "[store][plan]") {
    const Scratch scratch;
    Book book = book_with_sites(scratch);
    plan::Plan p = plan_test::lawn();
    add_plan(book, "P", "S1", p, std::nullopt);
    p.heads.pop_back();
    CHECK(add_plan(book, "P", "S1", p, std::nullopt) == 1);
    CHECK(find_plan(book, "P")->revision == 1);
    CHECK(find_plan(book, "P")->plan.heads.size() == p.heads.size());
    CHECK_THROWS_AS(add_plan(book, "P", "S2", p, std::nullopt), BookError);
    CHECK_THROWS_AS(add_plan(book, "Q", "S9", p, std::nullopt), BookError);
    p.heads[0].arc = 0.0;
    CHECK_THROWS_AS(add_plan(book, "Q", "S1", p, std::nullopt), InputError);
    CHECK(plan_codes(book, "") == std::vector<std::string>{"P"});
}
