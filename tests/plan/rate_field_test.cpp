// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/rate_field.h"

#include "core/plan/overlap.h"
#include "core/plan/span_kernel.h"
#include "tests/plan/plans.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <random>

using namespace evenfall;
using namespace evenfall::plan;
using namespace evenfall::plan_test;
using Catch::Matchers::WithinAbs;

namespace {

/// Heads of every kind scattered by a fixed generator.
Plan scattered(unsigned seed, int count) {
    std::mt19937_64 draw(seed);
    const auto uniform = [&](double a, double b) {
        return a + (b - a) * static_cast<double>(draw() >> 11) * 0x1p-53;
    };
    Plan p;
    p.units = metric();
    p.turf = {rectangle(0.0, 0.0, 70.0, 50.0)};
    p.profiles = {{"leg", {{0.5, 3.0}, {2.0, 5.0}, {4.0, 4.0}, {8.0, 1.0}}}};
    const char* names[] = {"cone", "flat", "leg"};
    for (int i = 0; i < count; ++i) {
        Head h = head(numbered("H", i), uniform(0.0, 70.0), uniform(0.0, 50.0), uniform(4.0, 12.0),
                      uniform(0.2, 3.0), i % 3 == 0 ? 360.0 : uniform(5.0, 360.0), uniform(0.0, 360.0),
                      names[i % 3]);
        p.heads.push_back(h);
    }
    return p;
}

bool same_bits(std::span<const float> a, std::span<const float> b) {
    return a.size() == b.size() && std::memcmp(a.data(), b.data(), a.size_bytes()) == 0;
}

}  // namespace

TEST_CASE("the field is the sum of the heads' own formula", "[plan][derived]") {
    // rate_at computes in double from the formula alone: another road to the same figures.
    const std::optional<Wind> wind = GENERATE(std::optional<Wind>{}, Wind{130.0, 0.1, 1.2});
    const Plan p = scattered(7, 40);
    OverlapOptions o;
    o.cell = 0.1 * units::metre;
    o.wind = wind;
    const Overlap overlap = overlap_of(p, o);
    const Raster& r = overlap.field.raster();
    const PatternMap map = pattern_map(wind);
    const Sprinklers all = sprinklers_of(p);
    double worst = 0.0;
    double peak = 0.0;
    std::size_t near_edge = 0, seen = 0;
    for (int row = 3; row < r.rows; row += 17) {
        for (int c = 5; c < r.columns; c += 13) {
            double rate = 0.0;
            bool edge = false;
            for (const Sprinkler& s : all.heads) {
                rate += rate_at(all, s, {r.x(c), r.y(row)}, map) * 3.6e6;
                // A cell beside the end of a throw that does not end at zero is softened.
                const double gx = r.x(c) - s.x - map.shift_x * s.radius, gy = r.y(row) - s.y - map.shift_y * s.radius;
                const double d = std::hypot(map.xx * gx + map.xy * gy, map.xy * gx + map.yy * gy);
                edge = edge || (s.profile != 0 && std::abs(d - s.radius) < r.hx) ||
                       // right beside the head a narrow arc is thinner than a cell
                       d < 2.0 * r.hx;
            }
            ++seen;
            if (edge) {
                ++near_edge;
                continue;
            }
            peak = std::max(peak, rate);
            worst = std::max(worst, std::abs(rate - static_cast<double>(overlap.field.rates()[r.index(c, row)])));
        }
    }
    CAPTURE(worst, peak, near_edge, seen, overlap.field.largest_correction());
    CHECK(near_edge < seen / 2);
    CHECK(peak > 5.0);
    // Part circles are scaled to keep their flow on the raster, which moves their rate by up to the
    // largest correction; nothing else may differ.
    CHECK(overlap.field.largest_correction() < 0.15);
    CHECK(worst < 0.02 * peak);
}

TEST_CASE("counts are the heads whose circle and arc hold the cell", "[plan][derived]") {
    const Plan p = scattered(11, 60);
    OverlapOptions o;
    o.cell = 0.2 * units::metre;
    const Overlap overlap = overlap_of(p, o);
    const Raster& r = overlap.field.raster();
    const Sprinklers all = sprinklers_of(p);
    std::size_t seen = 0;
    for (int row = 0; row < r.rows; row += 7) {
        for (int c = 0; c < r.columns; c += 5) {
            int count = 0;
            bool doubtful = false;
            for (const Sprinkler& s : all.heads) {
                const double dx = r.x(c) - s.x, dy = r.y(row) - s.y;
                const double d = std::hypot(dx, dy);
                doubtful = doubtful || std::abs(d - s.radius) < 1e-6;
                if (d <= s.radius && in_arc(s, dx, dy)) ++count;
            }
            if (doubtful) continue;
            ++seen;
            if (count != overlap.field.counts()[r.index(c, row)]) {
                CAPTURE(c, row, count);
                CHECK(count == overlap.field.counts()[r.index(c, row)]);
            }
        }
    }
    CHECK(seen > 5000);
}

TEST_CASE("the field is the same to the bit for any number of threads", "[plan][constructed]") {
    const std::optional<Wind> wind = GENERATE(std::optional<Wind>{}, Wind{30.0, 0.15, 1.3});
    const Plan p = scattered(3, 300);
    const PatternMap map = pattern_map(wind);
    const Raster r = raster_for(p, sprinklers_of(p), map, 0.1 * units::metre);
    const RateField one(sprinklers_of(p), map, r, 1);
    for (unsigned threads : {2U, 3U, 5U, 16U}) {
        const RateField many(sprinklers_of(p), map, r, threads);
        CHECK(same_bits(one.rates(), many.rates()));
        CHECK(std::equal(one.counts().begin(), one.counts().end(), many.counts().begin()));
    }
}

TEST_CASE("replacing heads leaves the field as one made anew, to the bit", "[plan][constructed]") {
    Plan p = scattered(5, 120);
    const Raster r = raster_for(p, sprinklers_of(p), {}, 0.1 * units::metre);
    RateField field(sprinklers_of(p), {}, r, 2);
    const Plan other = scattered(6, 120);
    for (std::size_t i : {0UL, 17UL, 119UL, 17UL}) {
        p.heads[i] = other.heads[(i + 40) % 120];
        p.heads[i].id = numbered("N", static_cast<int>(i));
        p.heads[i].radius = std::min(*p.heads[i].radius, 11.0);
        const auto block = field.replace(i, sprinklers_of(p).heads[i]);
        REQUIRE(block.has_value());
        const RateField anew(sprinklers_of(p), {}, r, 1);
        CHECK(same_bits(field.rates(), anew.rates()));
        CHECK(std::equal(field.counts().begin(), field.counts().end(), anew.counts().begin()));
    }
    Sprinkler far = sprinklers_of(p).heads[0];
    far.x = 0.0;
    far.radius = 40.0;
    const std::vector<float> before(field.rates().begin(), field.rates().end());
    CHECK_FALSE(field.replace(0, far).has_value());
    CHECK(same_bits(field.rates(), before));
}

TEST_CASE("both copies of the kernel give the same bits", "[plan][constructed]") {
    std::vector<float> table(table_steps + 2, 0.0F);
    for (int i = 0; i < table_steps; ++i) table[static_cast<std::size_t>(i)] = 1.0F / (1.0F + static_cast<float>(i));
    const SpanHead head{0.37F, 1.7F, table.data()};
    std::vector<float> a(300, 0.1F), b(300, 0.1F);
    for (int offset : {-130, -7, 0, 3}) {
        for (float v : {0.0F, 3.3F, 100.0F}) {
            const float u = 240.0F / 180.0F * 0.7F;
            const SpanRow ra{a.data() + 20, offset, 140, u, 0.2F, 0.01F, v};
            SpanRow rb = ra;
            rb.cells = b.data() + 20;
            span_kernel().add_upright(head, ra);
            plain_span_kernel().add_upright(head, rb);
            span_kernel().add_slanted(head, ra);
            plain_span_kernel().add_slanted(head, rb);
        }
    }
    CHECK(same_bits(a, b));
    CHECK(a[10] == 0.1F);
    CHECK(a[100] > 0.1F);
}

TEST_CASE("a full circle adds up to its flow without a correction", "[plan][derived]") {
    // The least number of cells to the radius at which RateField trusts the raster: 24.
    const std::string profile = GENERATE("cone", "flat", "leg");
    Plan p = scattered(1, 3);
    double worst = 0.0;
    for (int i = 0; i < 60; ++i) {
        p.heads = {head("A", 30.0 + 0.037 * i, 20.0 + 0.051 * i, 6.0 + 0.01 * i, 1.0, 360.0, 0.0, profile)};
        OverlapOptions o;
        o.cell = 0.249 * units::metre;
        const Overlap overlap = overlap_of(p, o);
        CHECK(overlap.field.largest_correction() == 0.0);
        worst = std::max(worst, std::abs(overlap.prediction.balance_error));
    }
    CAPTURE(profile, worst);
    CHECK(worst < 1e-3);
}
