// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/reference/table.h"

#include "core/reference/word_list.h"
#include "schemas/schemas.h"

#include <catch2/catch.hpp>
#include <stdexcept>

using namespace evenfall;
using reference::Table;

TEST_CASE("a reference table gives cells, source and mark", "[reference]") {
    const Table table("# why\nplant,kc,source,mark\nrye,0.95,\"FAO-56, table 12\",seen\nmoss,,\"he said \"\"so\"\"\",memory\n");
    REQUIRE(table.rows().size() == 2);
    const auto* rye = table.find("plant", "rye");
    REQUIRE(rye != nullptr);
    CHECK(rye->number("kc") == 0.95);
    CHECK(rye->source() == "FAO-56, table 12");
    CHECK(rye->mark() == reference::Mark::seen);
    const auto* moss = table.find("plant", "moss");
    CHECK_FALSE(moss->maybe_number("kc").has_value());
    CHECK(moss->source() == "he said \"so\"");
    CHECK(table.find("plant", "oak") == nullptr);
}

TEST_CASE("words that people type find their row", "[reference]") {
    const Table table("key,source,mark\nclay_loam,x,seen\n");
    CHECK(table.find_typed("Clay loam") == table.find("key", "clay_loam"));
    CHECK(table.find_typed("clay-loam") != nullptr);
    CHECK(table.find_typed("clay") == nullptr);
}

TEST_CASE("a row without source or with an unknown mark is our mistake", "[reference]") {
    CHECK_THROWS_AS(Table("a,source,mark\n1,,seen\n"), std::logic_error);
    CHECK_THROWS_AS(Table("a,source,mark\n1,x,heard\n"), std::logic_error);
    CHECK_THROWS_AS(Table("a,source,mark\n1,x\n"), std::logic_error);
}

TEST_CASE("every compiled-in table has a source and a mark on each row", "[reference]") {
    for (const std::string_view name : schemas::names("reference/")) {
        if (!name.ends_with(".csv")) continue;
        CAPTURE(name);
        const Table& table = Table::named(name.substr(std::string_view("reference/").size()));
        CHECK_FALSE(table.rows().empty());
    }
}

TEST_CASE("a list of words holds whole words only", "[reference]") {
    using reference::lists;
    static_assert(lists("spray rotor", "rotor"));
    CHECK(lists("spray rotor", "spray"));
    CHECK_FALSE(lists("spray rotor", "rot"));
    CHECK_FALSE(lists("solid_set", "solid"));
    CHECK_FALSE(lists("", "spray"));
}
