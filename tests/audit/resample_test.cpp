// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/resample.h"

#include "core/audit/resample_kernel.h"
#include "core/audit/uniformity.h"
#include "core/input_error.h"
#include "core/stats/random.h"
#include "tests/audit/catches.h"
#include "tests/audit/known_fields.h"

#include <catch2/catch.hpp>
#include <algorithm>

using namespace evenfall;
using namespace evenfall::audit;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

Sample sample(std::size_t n, bool weighted, std::uint64_t seed) {
    stats::SplitMix64 random(seed);
    Sample s;
    s.layout = phrase("audit", "solid-set grid");
    s.equal_weights = !weighted;
    for (std::size_t i = 0; i < n; ++i) {
        // Whole millimetres, so that ties happen.
        s.cans.push_back({std::to_string(i), (5.0 + random.below(20)) * units::millimetre,
                          weighted ? 1.0 + random.below(9) : 1.0, std::nullopt});
    }
    return s;
}

}  // namespace

// The kernel works on counts; drawing the cans out in full and analysing them must give the same.
TEST_CASE("a draw by counts equals the same cans written out", "[audit][property]") {
    const bool weighted = GENERATE(false, true);
    const auto rule = GENERATE(QuarterRule::whole_cans, QuarterRule::nearest, QuarterRule::round_up,
                               QuarterRule::part_can);
    for (std::uint64_t seed = 0; seed < 40; ++seed) {
        stats::SplitMix64 random(seed + 1000);
        const std::size_t n = 4 + random.below(30);
        const Sample s = sample(n, weighted, seed);
        const ResampleKernel kernel(s, rule);
        std::vector<std::int32_t> times(n, 0);
        Sample drawn = s;
        drawn.cans.clear();
        for (std::size_t d = 0; d < n + seed % 3; ++d) {
            const std::size_t i = random.below(static_cast<std::uint32_t>(n));
            ++times[kernel.rank()[i]];
            drawn.cans.push_back(s.cans[i]);
        }
        const DrawnFigures f = kernel.figures(times, drawn.cans.size());
        const UniformityResult r = analyse_sample(drawn, rule);
        CAPTURE(seed, n, weighted, static_cast<int>(rule));
        CHECK_THAT(f.mean, WithinRel(r.mean.si(), 1e-12));
        CHECK_THAT(f.du_lq, WithinRel(r.du_lq.value(), 1e-12));
        CHECK_THAT(f.du_lh, WithinRel(r.du_lh.value(), 1e-12));
        CHECK_THAT(f.cu, WithinAbs(r.cu.value(), 1e-12));
    }
}

TEST_CASE("the answer is the same for any number of threads and any order", "[audit][property]") {
    Sample s = sample(37, GENERATE(false, true), 5);
    Resampling how = usual_resampling();
    how.resamples = 2000;
    how.threads = 1;
    const auto one = resample_cans(s, QuarterRule::part_can, how).du_lq.interval(0.9);
    how.threads = 3;
    const auto three = resample_cans(s, QuarterRule::part_can, how).du_lq.interval(0.9);
    std::reverse(s.cans.begin(), s.cans.end());
    const auto reversed = resample_cans(s, QuarterRule::part_can, how).du_lq.interval(0.9);
    REQUIRE((one && three && reversed));
    CHECK(one->low == three->low);
    CHECK(one->high == three->high);
    CHECK(one->low == reversed->low);
    CHECK(one->high == reversed->high);
    CHECK(one->low < one->high);
    how.seed += 1;
    CHECK(resample_cans(s, QuarterRule::part_can, how).du_lq.interval(0.9)->low != one->low);
}

TEST_CASE("scaling all catches leaves the intervals alone", "[audit][property]") {
    Sample s = sample(30, false, 9);
    const auto before = resample_cans(s, QuarterRule::nearest, usual_resampling());
    for (SampleCan& c : s.cans) c.depth *= 3.7;
    const auto after = resample_cans(s, QuarterRule::nearest, usual_resampling());
    CHECK_THAT(after.du_lq.interval(0.9)->low, WithinRel(before.du_lq.interval(0.9)->low, 1e-9));
    CHECK_THAT(after.cu.interval(0.9)->high, WithinRel(before.cu.interval(0.9)->high, 1e-9));
    CHECK_THAT(after.mean.interval(0.9)->high, WithinRel(3.7 * before.mean.interval(0.9)->high, 1e-9));
}

TEST_CASE("equal cans have nothing to estimate, dry cans no scheduling coefficient",
          "[audit][constructed]") {
    const Sample equal = sample_of(test::sheet(std::vector<double>(8, 6.0)), usual_choices());
    const auto r = resample_cans(equal, QuarterRule::part_can, usual_resampling());
    CHECK_THAT(r.du_lq.interval(0.9)->low, WithinAbs(1.0, 1e-12));
    CHECK(r.du_lq.interval(0.9)->low == r.du_lq.interval(0.9)->high);
    CHECK(r.du_lq.interval(0.9)->method == stats::IntervalMethod::point);
    CHECK_FALSE(more_cans_to_halve(equal, QuarterRule::part_can, usual_resampling()).has_value());
    const Sample dry = sample_of(test::sheet({0, 0, 5, 6, 7, 8, 9, 10}), usual_choices());
    const auto d = resample_cans(dry, QuarterRule::part_can, usual_resampling());
    CHECK_FALSE(d.driest_can.interval(0.9).has_value());
    CHECK(d.driest_can.undefined() > 5000);
    // One wet can of four: a third of the draws are all dry and have no uniformity.
    const Sample one = sample_of(test::sheet({0, 0, 0, 9}), usual_choices());
    CHECK_FALSE(resample_cans(one, QuarterRule::part_can, usual_resampling())
                    .du_lq.interval(0.9).has_value());
}

// DERIVED: the width of an interval falls as one over the square root of the cans, so about three
// times as many more are needed; the search may miss that by the noise of its 4000 resamples.
TEST_CASE("cans to halve an interval", "[audit][derived]") {
    stats::SplitMix64 random(3);
    const Sample s = test::drawn_test(test::known_fields().front(), 60, random);
    const auto more = more_cans_to_halve(s, QuarterRule::part_can, usual_resampling());
    REQUIRE(more.has_value());
    CHECK(*more > 130);
    CHECK(*more < 240);
}

TEST_CASE("blocks of neighbours", "[audit][derived]") {
    // Ten rows of ten, each row of one depth and little different from the next: cans beside each other say the same thing, so there
    // is far less to go by than 100 cans and the block interval must be wider.
    std::vector<std::vector<double>> rows;
    for (int r = 0; r < 10; ++r) rows.emplace_back(10, 8.0 + 0.5 * r);
    const Sample striped = sample_of(test::grid(rows, 3.0), usual_choices());
    const auto cans = resample_cans(striped, QuarterRule::part_can, usual_resampling());
    const auto blocks = resample_blocks(striped, QuarterRule::part_can, usual_resampling(),
                                        12.0 * units::metre);
    REQUIRE(blocks.has_value());
    const auto narrow = cans.du_lq.percentile_interval(0.9);
    const auto wide = blocks->du_lq.interval(0.9);
    CHECK(wide->method == stats::IntervalMethod::percentile);
    CHECK(wide->high - wide->low > narrow->high - narrow->low);
    // A window of one can is no block: the same as drawing cans one by one, to the noise.
    const auto single = resample_blocks(striped, QuarterRule::part_can, usual_resampling(),
                                        3.0 * units::metre);
    REQUIRE(single.has_value());
    CHECK_THAT(single->du_lq.interval(0.9)->low, WithinAbs(narrow->low, 0.005));
    CHECK_THAT(single->du_lq.interval(0.9)->high, WithinAbs(narrow->high, 0.005));
    // No positions, or a window as large as the ground: nothing.
    const Sample bare = sample_of(test::sheet({1, 2, 3, 4, 5, 6, 7, 8}), usual_choices());
    CHECK_FALSE(resample_blocks(bare, QuarterRule::part_can, usual_resampling(), std::nullopt));
    CHECK_FALSE(resample_blocks(striped, QuarterRule::part_can, usual_resampling(),
                                25.0 * units::metre));
}

TEST_CASE("resampling that makes no sense is refused", "[audit]") {
    const Sample s = sample(10, false, 1);
    Resampling how = usual_resampling();
    how.level = 1.0;
    CHECK_THROWS_AS(resample_cans(s, QuarterRule::part_can, how), InputError);
    how = usual_resampling();
    how.resamples = 10;
    CHECK_THROWS_AS(resample_cans(s, QuarterRule::part_can, how), InputError);
}

// CONSTRUCTED fields, a bounded version of tests/bench/coverage_table: 600 tests of 24 random cans
// on each. The standard error of a coverage of 0.90 is 0.012; the widened intervals must lie within
// four of it, and the plain ones must not be above them.
TEST_CASE("nine of ten widened 90 % intervals hold the truth", "[audit][constructed]") {
    for (const test::Field& field : test::known_fields()) {
        if (field.placement != "random" || field.name == "skewed") continue;
        constexpr std::size_t tests = 600;
        std::size_t plain = 0;
        std::size_t widened = 0;
        for (std::size_t t = 0; t < tests; ++t) {
            stats::SplitMix64 random = stats::generator_for(77, t);
            const Sample s = test::drawn_test(field, 24, random);
            const auto r = resample_cans(s, QuarterRule::part_can, {1000, t, 0.90, 1});
            const auto holds = [&](const std::optional<stats::Interval>& i) {
                return i && i->low <= field.truth.du_lq && field.truth.du_lq <= i->high;
            };
            plain += holds(r.du_lq.interval(0.90)) ? 1 : 0;
            widened += holds(r.du_lq.interval(0.90, widening_for("du_lq", 24))) ? 1 : 0;
        }
        CAPTURE(field.name, plain, widened);
        CHECK(widened >= plain);
        CHECK_THAT(static_cast<double>(widened) / tests, WithinAbs(0.90, 4 * 0.0123));
    }
}
