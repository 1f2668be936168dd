// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season_intervals.h"

#include "core/input_error.h"
#include "tests/budget/season_case.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace evenfall;
using namespace evenfall::budget;
using namespace evenfall::budget::test;
using Catch::Matchers::WithinRel;
using units::us_gallon;

namespace {

IntervalChoice choice(unsigned threads) { return {4000, 100, 20230601, 0.90, threads}; }

bool same(const VolumeInterval& a, const VolumeInterval& b) {
    return a.low == b.low && a.high == b.high;
}

}  // namespace

// DERIVED. Without rain the need is proportional to ETo x K x size, each with its own relative
// standard deviation (0.05, 0.10, 0.02): together 0.1136, so 90 % lie within 1 -+ 1.645 x 0.1136.
// The metered volume is even within 1 -+ 0.015: 90 % within 0.0135. Tolerance: three standard
// errors of a 5 % quantile of 4,000 draws, about 0.7 % of the need.
TEST_CASE("intervals of need and use follow from the sizes of their errors", "[budget][derived]") {
    const auto in = one_area_june();
    const auto result = season(in);
    const auto intervals = season_intervals(in, result, choice(1));
    const auto& total = intervals.total.value();
    const double need = result.total.need->si();
    CHECK_THAT(total.need.low.si() / need, WithinRel(1 - 1.645 * 0.1136, 0.01));
    CHECK_THAT(total.need.high.si() / need, WithinRel(1 + 1.645 * 0.1136, 0.01));
    CHECK_THAT(total.use.low.in(us_gallon), WithinRel(200000 * (1 - 0.0135), 0.001));
    CHECK_THAT(total.use.high.in(us_gallon), WithinRel(200000 * (1 + 0.0135), 0.001));
}

TEST_CASE("every line of both accounts has an interval around its figure", "[budget]") {
    const auto in = one_area_june();
    const auto result = season(in);
    const auto intervals = season_intervals(in, result, choice(2));
    const auto& total = intervals.total.value();
    for (std::size_t i = 0; i < waste_lines().size(); ++i) {
        CAPTURE(waste_lines()[i].key);
        const auto figure = (*result.total.account).*waste_lines()[i].part;
        CHECK(total.lines[i].low <= figure);
        CHECK(total.lines[i].high >= figure);
    }
    REQUIRE(total.by_cans.has_value());
    for (std::size_t i = 0; i < can_lines().size(); ++i) {
        CHECK((*total.by_cans)[i].low <= (*total.by_cans)[i].high);
    }
    // One area, one month: area, month and total are the same thing.
    CHECK(same(intervals.areas.at(0)->lines[5], total.lines[5]));
    CHECK(same(intervals.months.at(0)->lines[5], total.lines[5]));
    CHECK_FALSE(intervals.method.empty());
}

TEST_CASE("intervals depend on the seed alone", "[budget]") {
    auto in = one_area_june();
    in.areas.push_back(area("B", 2.0, 0.7, "M"));
    const auto result = season(in);
    const auto one = season_intervals(in, result, choice(1));
    const auto three = season_intervals(in, result, choice(3));
    std::swap(in.areas[0], in.areas[1]);
    const auto swapped = season_intervals(in, season(in), choice(1));
    for (std::size_t i = 0; i < waste_lines().size(); ++i) {
        CHECK(same(one.total->lines[i], three.total->lines[i]));
        CHECK_THAT(swapped.total->lines[i].high.si(),
                   WithinRel(one.total->lines[i].high.si(), 1e-12));
    }
    CHECK(same((*one.total->by_cans)[2], (*three.total->by_cans)[2]));
    auto other = choice(1);
    other.seed = 7;
    CHECK_FALSE(same(one.total->need, season_intervals(in, season(in), other).total->need));
}

TEST_CASE("an area without a test has wider intervals", "[budget]") {
    auto in = one_area_june();
    // Equal cans: evenness is known exactly.
    for (auto& can : in.tests[0].catches) can.reading = 20.0;
    const auto tested = season_intervals(in, season(in), choice(1));
    in.tests.clear();
    const auto planned = season_intervals(in, season(in), choice(1));
    const auto width = [](const SeasonIntervals& x) {
        return x.total->lines[2].high - x.total->lines[2].low;
    };
    CHECK(width(tested) == units::Volume{});
    CHECK(width(planned).si() > 0.0);
    CHECK_FALSE(planned.total->by_cans.has_value());
}

TEST_CASE("intervals of nothing are absent", "[budget]") {
    auto in = one_area_june();
    in.meters[0].readings.clear();
    const auto intervals = season_intervals(in, season(in), choice(1));
    CHECK_FALSE(intervals.total.has_value());
    CHECK_FALSE(intervals.areas.at(0).has_value());
    auto few = choice(1);
    few.draws = 10;
    CHECK_THROWS_AS(season_intervals(in, season(in), few), InputError);
    few = choice(1);
    few.confidence = 1.0;
    CHECK_THROWS_AS(season_intervals(in, season(in), few), InputError);
}
