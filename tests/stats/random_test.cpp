// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/random.h"

#include "core/stats/normal.h"
#include "core/stats/parallel.h"

#include <catch2/catch.hpp>
#include <array>
#include <cmath>
#include <stdexcept>

using namespace evenfall::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// PUBLISHED [memory]: the first outputs of SplitMix64 from seed 1234567, given with the reference
// C code (Vigna, prng.di.unimi.it) and repeated in several language libraries.
TEST_CASE("generator follows its reference sequence", "[stats][published]") {
    SplitMix64 random(1234567);
    for (const std::uint64_t expected :
         {6457827717110365317ULL, 3203168211198807973ULL, 9817491932198370423ULL,
          4593380528125082431ULL, 16408922859458223821ULL}) {
        CHECK(random() == expected);
    }
}

// DERIVED: with 700,000 draws from 7 the count of each has a standard deviation of 293.
TEST_CASE("bounded draws are even", "[stats][derived]") {
    SplitMix64 random(42);
    std::array<int, 7> count{};
    for (int i = 0; i < 700'000; ++i) ++count.at(random.below(7));
    for (const int c : count) CHECK(std::abs(c - 100'000) < 5 * 293);
    CHECK(SplitMix64(1).below(1) == 0);
}

TEST_CASE("each resample has a generator of its own", "[stats][derived]") {
    CHECK(generator_for(1, 0)() != generator_for(1, 1)());
    CHECK(generator_for(1, 0)() != generator_for(2, 0)());
    CHECK(generator_for(1, 5)() == generator_for(1, 5)());
}

// PUBLISHED: 1.96 and 1.645 are the rounded 97.5 % and 95 % points of any table of the normal
// distribution; the long decimals are R 4.2 qnorm(0.975) and pnorm(-1.5).
TEST_CASE("normal distribution and its inverse", "[stats][published]") {
    CHECK_THAT(normal_quantile(0.975), WithinAbs(1.95996398454005, 5e-15));
    CHECK_THAT(normal_quantile(0.05), WithinAbs(-1.645, 5e-4));
    CHECK_THAT(normal_cdf(-1.5), WithinAbs(0.0668072012688581, 5e-17));
    CHECK(normal_cdf(0.0) == 0.5);
    CHECK(std::isinf(normal_quantile(0.0)));
    CHECK(normal_quantile(1.0) > 0.0);
    for (const double p : {1e-6, 0.01, 0.3, 0.5, 0.9, 0.999}) {
        CHECK_THAT(normal_cdf(normal_quantile(p)), WithinRel(p, 1e-12));
    }
}

TEST_CASE("work in pieces covers everything once and passes on failures", "[stats]") {
    const unsigned threads = GENERATE(0U, 1U, 2U, 3U, 16U);
    std::vector<int> touched(10, 0);
    in_pieces(touched.size(), threads, [&](std::size_t begin, std::size_t end) {
        for (std::size_t i = begin; i < end; ++i) ++touched[i];
    });
    CHECK(touched == std::vector<int>(10, 1));
    CHECK_THROWS_AS(in_pieces(10, threads,
                              [](std::size_t, std::size_t) { throw std::runtime_error("no"); }),
                    std::runtime_error);
    in_pieces(0, threads, [](std::size_t begin, std::size_t end) { CHECK(begin == end); });
}
