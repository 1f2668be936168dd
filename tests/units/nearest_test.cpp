// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/nearest.h"

#include <catch2/catch.hpp>

#include <array>
#include <string>

using namespace evenfall;

// DERIVED from the definition; kitten and sitting are the usual example of three changes.
TEST_CASE("letters between two words", "[units][derived]") {
    CHECK(letters_apart("", "") == 0);
    CHECK(letters_apart("", "abc") == 3);
    CHECK(letters_apart("abc", "") == 3);
    CHECK(letters_apart("kitten", "sitting") == 3);
    CHECK(letters_apart("ab", "ba") == 1);  // a swap of neighbours is one slip
    CHECK(letters_apart("tilted", "titled") == 1);
    CHECK(letters_apart("same", "same") == 0);
}

TEST_CASE("the nearest of known names", "[units][derived]") {
    constexpr std::array<std::string_view, 3> known{"factor", "period", "basis"};
    CHECK(nearest_of("fcator", known) == "factor");
    CHECK(nearest_of("basi", known) == "basis");
    CHECK(nearest_of("", known) == "basis");  // the shortest
    CHECK(nearest_of("x", {}).empty());
    CHECK(nearest_of(std::string(100'000, 'p'), known) == "period");
}
