// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for any catch test, on tests made up from seeds.
#include "core/audit/scheduling_coefficient.h"
#include "core/audit/traveller.h"
#include "core/audit/uniformity.h"
#include "core/stats/random.h"
#include "tests/audit/catches.h"

#include <catch2/catch.hpp>
#include <algorithm>
#include <numeric>

using namespace evenfall;
using namespace evenfall::audit;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

namespace {

constexpr std::uint64_t seeds = 60;
constexpr QuarterRule rules[]{QuarterRule::whole_cans, QuarterRule::nearest, QuarterRule::round_up,
                              QuarterRule::part_can};

/// A grid, a pivot, a lateral, a traveller or irregular cans, by the seed.
CatchTest made_up(std::uint64_t seed) {
    stats::SplitMix64 random(seed);
    const std::size_t n = 5 + random.below(40);
    std::vector<double> mm(n);
    for (double& v : mm) v = random.below(8) == 0 ? 0.0 : 1.0 + random.below(200) / 10.0;
    mm[0] = 7.0;
    if (seed % 5 == 3) {
        const auto half = static_cast<std::ptrdiff_t>(n / 2);
        CatchTest t = test::row_across({mm.begin(), mm.begin() + half}, {mm.begin() + half, mm.end()},
                                       5.0, 20.0 + random.below(60));
        t.opposite_pulls = random.below(2) == 1;
        return t;
    }
    CatchTest t = test::sheet(mm);
    t.layout = seed % 5 == 0   ? Layout::grid
               : seed % 5 == 1 ? Layout::pivot
               : seed % 5 == 2 ? Layout::lateral
                               : Layout::irregular;
    for (std::size_t i = 0; i < n; ++i) {
        if (t.layout == Layout::irregular) {
            t.catches[i].x = 50.0 * random.unit();
            t.catches[i].y = 30.0 * random.unit();
        } else if (t.layout != Layout::grid) {
            t.catches[i].distance = 3.0 * static_cast<double>(i) + 2.0 * random.unit();
        }
    }
    return t;
}

std::vector<double> coefficients(const CatchTest& t) {
    const Sample s = sample_of(t, usual_choices());
    const auto du = analyse_sample(s, QuarterRule::part_can).du_lq;
    std::vector<double> values;
    for (const auto& r : scheduling_coefficients(s, du, std::vector<double>{0.05, 0.2})) {
        values.push_back(r.value ? r.value->value() : -1.0);
    }
    return values;
}

}  // namespace

TEST_CASE("scaling all catches leaves DU, CU, CV and SC alone", "[audit][property]") {
    for (std::uint64_t seed = 0; seed < seeds; ++seed) {
        const CatchTest t = made_up(seed);
        CatchTest scaled = t;
        for (auto& c : scaled.catches) c.reading *= 2.9;
        CAPTURE(seed);
        for (const QuarterRule rule : rules) {
            const auto a = analyse_uniformity(t, rule);
            const auto b = analyse_uniformity(scaled, rule);
            CHECK_THAT(b.du_lq.value(), WithinAbs(a.du_lq.value(), 1e-12));
            CHECK_THAT(b.du_lh.value(), WithinAbs(a.du_lh.value(), 1e-12));
            CHECK_THAT(b.cu.value(), WithinAbs(a.cu.value(), 1e-12));
            CHECK_THAT(b.cv.value(), WithinAbs(a.cv.value(), 1e-12));
            CHECK_THAT(b.mean.si(), WithinRel(2.9 * a.mean.si(), 1e-12));
        }
        const auto a = coefficients(t);
        const auto b = coefficients(scaled);
        for (std::size_t i = 0; i < a.size(); ++i) CHECK_THAT(b[i], WithinRel(a[i], 1e-9));
    }
}

TEST_CASE("the order of the sheet does not matter", "[audit][property]") {
    for (std::uint64_t seed = 0; seed < seeds; ++seed) {
        const CatchTest t = made_up(seed);
        CatchTest shuffled = t;
        stats::SplitMix64 random(seed + 1);
        for (std::size_t i = shuffled.catches.size(); i > 1; --i) {
            std::swap(shuffled.catches[i - 1],
                      shuffled.catches[random.below(static_cast<std::uint32_t>(i))]);
        }
        CAPTURE(seed);
        for (const QuarterRule rule : rules) {
            const auto a = analyse_uniformity(t, rule);
            const auto b = analyse_uniformity(shuffled, rule);
            CHECK_THAT(b.du_lq.value(), WithinAbs(a.du_lq.value(), 1e-12));
            CHECK_THAT(b.du_lh.value(), WithinAbs(a.du_lh.value(), 1e-12));
            CHECK_THAT(b.cu.value(), WithinAbs(a.cu.value(), 1e-12));
        }
        const auto a = coefficients(t);
        const auto b = coefficients(shuffled);
        for (std::size_t i = 0; i < a.size(); ++i) CHECK_THAT(b[i], WithinRel(a[i], 1e-9));
    }
}

TEST_CASE("low quarter is no more than low half, and that no more than the mean", "[audit][property]") {
    for (std::uint64_t seed = 0; seed < seeds; ++seed) {
        const CatchTest t = made_up(seed);
        for (const QuarterRule rule : rules) {
            const auto r = analyse_uniformity(t, rule);
            // A can that stands for more than a quarter of the ground is the stated exception.
            const bool one_rules = std::any_of(r.notes.begin(), r.notes.end(), [](const auto& n) {
                return n.english().find("more than a quarter") != std::string::npos;
            });
            CAPTURE(seed, static_cast<int>(rule));
            if (!one_rules) CHECK(r.du_lq.value() <= r.du_lh.value() + 1e-12);
            CHECK(r.du_lh.value() <= 1.0);
            CHECK(r.cu.value() <= 1.0);
        }
    }
}

TEST_CASE("equal catches are perfectly even in every layout but across a traveller's lane",
          "[audit][property]") {
    for (std::uint64_t seed = 0; seed < seeds; ++seed) {
        CatchTest t = made_up(seed);
        if (t.layout == Layout::traveller) continue;
        for (auto& c : t.catches) c.reading = 6.4;
        for (const QuarterRule rule : rules) {
            const auto r = analyse_uniformity(t, rule);
            CAPTURE(seed);
            CHECK_THAT(r.du_lq.value(), WithinAbs(1.0, 1e-12));
            CHECK_THAT(r.du_lh.value(), WithinAbs(1.0, 1e-12));
            CHECK_THAT(r.cu.value(), WithinAbs(1.0, 1e-12));
        }
    }
}

TEST_CASE("a traveller's overlapped total is left plus right", "[audit][property]") {
    for (std::uint64_t seed = 3; seed < 5 * seeds; seed += 5) {
        CatchTest t = made_up(seed);
        t.opposite_pulls = false;
        // A whole number of spacings, so that a strip and a can stand for the same width.
        t.lane_spacing->value = 5.0 * static_cast<double>(4 + seed % 11);
        double caught = 0.0;
        for (const auto& c : t.catches) caught += c.reading;
        double overlapped = 0.0;
        for (const Strip& s : overlap_lanes(t).strips) overlapped += s.depth.in(units::millimetre);
        CAPTURE(seed, t.lane_spacing->value);
        CHECK_THAT(overlapped, WithinRel(caught, 1e-12));
    }
}
