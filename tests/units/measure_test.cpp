// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/measure.h"

#include "core/input_error.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::units;
using Catch::Matchers::WithinRel;

TEST_CASE("a measure keeps number and unit as typed", "[units]") {
    const auto throat = parse_measure<Area>("16.61in2");
    CHECK(throat.value == 16.61);
    CHECK(throat.text() == "16.61 in2");
    CHECK_THAT(throat.quantity().in(square_centimetre), WithinRel(107.161076, 1e-12));
    CHECK(parse_measure<Length>("1208.5 m").quantity() == 1208.5 * metre);
    CHECK(parse_measure<Length>("1.5e3m").quantity() == 1500.0 * metre);
}

TEST_CASE("a measure without unit or number is refused", "[units]") {
    CHECK_THROWS_AS(parse_measure<Area>("16.61"), InputError);
    CHECK_THROWS_AS(parse_measure<Area>("in2"), InputError);
    CHECK_THROWS_AS(parse_measure<Area>("16.61 mL"), InputError);
    CHECK_THROWS_AS(parse_measure<Area>("1,5 m2"), InputError);
    CHECK_THROWS_AS(parse_measure<Area>(""), InputError);
}
