// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/test_analysis.h"

#include "core/input_error.h"
#include "tests/audit/catches.h"

#include <catch2/catch.hpp>
#include <algorithm>

using namespace evenfall;
using namespace evenfall::audit;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

CatchTest north_green() {
    CatchTest t = test::grid({{10, 11, 12, 11, 10}, {9, 10, 12, 12, 11}, {8, 7, 9, 12, 12},
                              {8, 6, 8, 11, 12}, {9, 8, 9, 10, 11}}, 3.0);
    t.minutes = 30;
    return t;
}

bool says(const std::vector<std::string>& lines, const std::string& words) {
    return std::any_of(lines.begin(), lines.end(), [&](const auto& l) { return l.find(words) != std::string::npos; });
}

}  // namespace

TEST_CASE("everything said of a test fits together", "[audit][derived]") {
    AnalysisChoices choices = usual_analysis(QuarterRule::part_can);
    choices.least_du_lq = 0.65;
    const TestAnalysis a = analyse_test(north_green(), choices);
    const auto& du = *a.intervals.du_lq;
    CHECK(du.low < a.figures.du_lq.value());
    CHECK(du.high > a.figures.du_lq.value());
    CHECK(a.widened.du_lq->low < du.low);
    CHECK(a.widened.du_lq->high > du.high);
    CHECK_THAT(a.intervals.sc_low_quarter->low, WithinRel(1.0 / du.high, 1e-12));
    CHECK_THAT(a.intervals.sc_low_quarter->high, WithinRel(1.0 / du.low, 1e-12));
    // Mean in mm over half an hour is the rate in mm/h times a half.
    CHECK_THAT(a.intervals.net_rate_mm_h->low, WithinRel(2.0 * a.intervals.mean_mm->low, 1e-12));
    CHECK(a.blocks.has_value());
    CHECK(*a.confidence_of_least > 0.9);
    CHECK(a.more_cans.has_value());
    CHECK_THAT(a.multipliers.low_half->value(), WithinRel(1.0 / a.figures.du_lh.value(), 1e-12));
    CHECK(says(advice(a), "No inspection is recorded"));
    CHECK(says(advice(a), "low-half multiplier"));
}

TEST_CASE("figures with and without the cans that were left out", "[audit][constructed]") {
    CatchTest t = north_green();
    t.catches[7].excluded = "kicked over by a mower";
    const TestAnalysis a = analyse_test(t, usual_analysis(QuarterRule::whole_cans));
    REQUIRE(a.excluded.size() == 1);
    CHECK(a.excluded[0].excluded == "kicked over by a mower");
    REQUIRE(a.with_all.has_value());
    CHECK_THAT(a.with_all->mean.si(),
               WithinRel(analyse_uniformity(north_green(), QuarterRule::whole_cans).mean.si(), 1e-12));
    CHECK(a.figures.mean < a.with_all->mean);
    // A can left out for a reading that cannot be is told, not counted.
    t.catches[7].reading = -3;
    const TestAnalysis b = analyse_test(t, usual_analysis(QuarterRule::whole_cans));
    CHECK_FALSE(b.with_all.has_value());
    CHECK_THAT(b.why_not_all, Contains("can 2-3"));
}

TEST_CASE("a traveller's depth by flow beside the caught one", "[audit][derived]") {
    CatchTest t = test::row_across({25, 24, 21, 18}, {24, 23, 22, 17}, 10, 80);
    t.flow = units::parse_measure<units::Flow>("1500l_min");
    t.travel_speed = units::parse_measure<units::Speed>("0.75m_min");
    const TestAnalysis a = analyse_test(t, usual_analysis(QuarterRule::part_can));
    REQUIRE(a.flow_depth.has_value());
    // By flow 1500 / (80 x 0.75) = 25 mm; caught 174 x 10 / 80 = 21.75 mm: 13 % less.
    CHECK_THAT(a.flow_depth->by_flow.in(units::millimetre), WithinAbs(25.0, 1e-9));
    CHECK_THAT(a.flow_depth->caught.in(units::millimetre), WithinAbs(21.75, 1e-9));
    CHECK_THAT(a.flow_depth->caught_less, WithinAbs(0.13, 1e-9));
    CHECK_FALSE(a.more_cans.has_value());
}

TEST_CASE("findings and pressures lead the advice, with their cautions", "[audit][constructed]") {
    CatchTest t = north_green();
    Finding f;
    f.kind = "line_leak";
    f.severity = Severity::severe;
    f.place = "by the pond";
    t.findings = std::vector{f};
    PressureReading p;
    p.place = "end";
    p.pressure = units::parse_measure<units::Pressure>("30psi");
    p.nozzle_low = units::parse_measure<units::Pressure>("45psi");
    t.pressures = std::vector{p};
    const auto lines = advice(analyse_test(t, usual_analysis(QuarterRule::part_can)));
    REQUIRE(lines.size() > 2);
    CHECK_THAT(lines[0], Contains("leak in the line") && Contains("by the pond") && Contains("call before digging"));
    CHECK_THAT(lines[1], Contains("below the nozzle's range"));
}
