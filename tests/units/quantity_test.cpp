// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/quantity.h"

#include "core/units/temperature.h"

#include <catch2/catch.hpp>

using namespace evenfall::units;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// PUBLISHED. NIST SP 811 (2008) appendix B and NIST Handbook 44 appendix C: exact definitions
// (inch, US gallon, international foot, pound, standard gravity). Decimals beyond the exact ones
// follow by rational arithmetic from those definitions; each row is checked to its last digit.
TEST_CASE("conversions follow from the exact definitions", "[units][published]") {
    CHECK_THAT(us_gallon.in(litre), WithinAbs(3.785411784, 1e-14));
    struct Row { const char* what; double value; double expected; double half_digit; };
    const auto row = GENERATE(values<Row>({
        {"gal in ft3", cubic_foot.in(us_gallon), 7.48051948052, 5e-12},
        {"gal in ccf", hundred_cubic_feet.in(us_gallon), 748.051948052, 5e-10},
        {"m3 in ccf", hundred_cubic_feet.in(cubic_metre), 2.8316846592, 5e-11},
        {"ft2 in acre", acre.in(square_foot), 43560.0, 1e-9},
        {"m2 in acre", acre.in(square_metre), 4046.8564224, 5e-8},
        {"gal in acre-ft", acre_foot.in(us_gallon), 325851.428571, 5e-7},
        {"m3 in acre-ft", acre_foot.in(cubic_metre), 1233.48183755, 5e-9},
        {"gal in acre-in", acre_inch.in(us_gallon), 27154.2857143, 5e-8},
        {"gal in 1 in on 1 ft2", (1.0 * inch * square_foot).in(us_gallon), 0.623376623377, 5e-13},
        {"gal in m3", cubic_metre.in(us_gallon), 264.172052358, 5e-10},
        {"L in 1 mm on 1 m2", (1.0 * millimetre * square_metre).in(litre), 1.0, 1e-15},
        {"L/s in gpm", gallon_per_minute.in(litre_per_second), 0.0630901964, 5e-11},
        {"m3/h in gpm", gallon_per_minute.in(cubic_metre_per_hour), 0.22712470704, 5e-12},
        {"in/h of 1 gpm on 1 ft2", (1.0 * gallon_per_minute / square_foot).in(inch_per_hour), 96.25, 1e-12},
        {"gpm of 1 in/h on 1 acre", (1.0 * inch_per_hour * acre).in(gallon_per_minute), 452.571428571, 5e-10},
        {"kPa in psi", psi.in(kilopascal), 6.89475729317, 5e-12},
        {"m/s in mph", mile_per_hour.in(metre_per_second), 0.44704, 1e-15},
    }));
    CAPTURE(row.what);
    CHECK_THAT(row.value, WithinAbs(row.expected, row.half_digit));
}

// PUBLISHED. NIST SP 811 appendix B.9: t/C = (t/F - 32)/1.8; ice and steam points.
TEST_CASE("temperature scales", "[units][published]") {
    CHECK(Temperature::fahrenheit(32.0).in_celsius() == 0.0);
    CHECK(Temperature::fahrenheit(212.0).in_celsius() == 100.0);
    CHECK(Temperature::celsius(-40.0).in_fahrenheit() == -40.0);
}

TEST_CASE("products give the right kind of thing", "[units][derived]") {
    const Depth rain = 25.4 * millimetre;
    CHECK_THAT((rain * (1.0 * acre)).in(acre_inch), WithinRel(1.0, 1e-14));
    CHECK_THAT((rain / (12.7 * millimetre_per_hour)).in(hour), WithinRel(2.0, 1e-14));
    CHECK_THAT((8.0 * us_gallon / (4.0 * minute)).in(gallon_per_minute), WithinRel(2.0, 1e-14));
    CHECK_THAT((100.0 * kilopascal * (36.0 * cubic_metre)).in(kilowatt_hour), WithinRel(1.0, 1e-14));
}
