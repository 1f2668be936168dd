// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/multiplier.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::audit;
using Catch::Matchers::WithinAbs;
using units::LowHalfDu;
using units::LowQuarterDu;

// DERIVED from the forms themselves; no printed table could be read.
TEST_CASE("run-time multipliers", "[audit][derived]") {
    struct Row { double du_lq, low_quarter, normal, linear; };
    const auto row = GENERATE(values<Row>({
        {0.40, 2.500, 1.604, 1.5625}, {0.45, 2.222, 1.527, 1.493}, {0.50, 2.000, 1.457, 1.429},
        {0.55, 1.818, 1.394, 1.370}, {0.60, 1.667, 1.335, 1.316}, {0.65, 1.538, 1.282, 1.266},
        {0.70, 1.429, 1.232, 1.220}, {0.75, 1.333, 1.186, 1.176}, {0.80, 1.250, 1.144, 1.136},
        {0.85, 1.176, 1.104, 1.099}, {0.90, 1.111, 1.067, 1.064}}));
    const LowQuarterDu du = LowQuarterDu::of(row.du_lq);
    const Multipliers m = multipliers(du, low_half_if_normal(du));
    CAPTURE(row.du_lq);
    CHECK_THAT(m.low_quarter->value(), WithinAbs(row.low_quarter, 5e-4));
    CHECK_THAT(m.low_half->value(), WithinAbs(row.normal, 5e-4));
    CHECK_THAT(m.linear.value(), WithinAbs(row.linear, 5e-4));
}

// PART: von Bernuth & Mecham, Defining the Run Time Multiplier, print DU_LQ 0.772 and DU_LH 0.810
// for one pattern; their low-half multiplier is then 1.235, while the line from DU_LQ gives 1.158.
// The two disagree, so where cans exist the low half is measured.
TEST_CASE("measured low half and the line from the low quarter disagree", "[audit][derived]") {
    const Multipliers m = multipliers(LowQuarterDu::of(0.772), LowHalfDu::of(0.810));
    CHECK_THAT(m.low_half->value(), WithinAbs(1.235, 5e-4));
    CHECK_THAT(m.linear.value(), WithinAbs(1.158, 5e-4));
    CHECK(m.linear_source.english().find("[memory]") != std::string::npos);
}

TEST_CASE("dry ground has no multiplier", "[audit][constructed]") {
    const Multipliers m = multipliers(LowQuarterDu::of(0.0), LowHalfDu::of(0.0));
    CHECK_FALSE(m.low_quarter.has_value());
    CHECK_FALSE(m.low_half.has_value());
    CHECK_THAT(m.linear.value(), WithinAbs(2.5, 1e-12));
}
