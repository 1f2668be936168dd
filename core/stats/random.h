// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

/// Random numbers that are the same on every machine, library and number of threads.
/// Tests: tests/stats/random_test.cpp
namespace evenfall::stats {

/// The 64-bit finaliser that SplitMix64 applies to its counter.
constexpr std::uint64_t mixed(std::uint64_t z) {
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31U);
}

/// SplitMix64: a counter with a strong finaliser, so seeding costs nothing and each resample can
/// have a generator of its own.
/// Source: Steele, Lea & Flood, Fast splittable pseudorandom number generators, OOPSLA 2014.
class SplitMix64 {
  public:
    explicit constexpr SplitMix64(std::uint64_t seed) : state_(seed) {}
    constexpr std::uint64_t operator()() { return mixed(state_ += step); }

    /// Evenly one of 0 .. n - 1, without the small bias of a remainder: Lemire, Fast random integer
    /// generation in an interval, ACM TOMACS 29(1), 2019. @pre n > 0
    constexpr std::uint32_t below(std::uint32_t n) {
        std::uint64_t product = (operator()() >> 32U) * n;
        if (static_cast<std::uint32_t>(product) < n) {
            const std::uint32_t unfair = (0U - n) % n;
            while (static_cast<std::uint32_t>(product) < unfair) {
                product = (operator()() >> 32U) * n;
            }
        }
        return static_cast<std::uint32_t>(product >> 32U);
    }

    /// In [0, 1), 53 bits.
    constexpr double unit() { return static_cast<double>(operator()() >> 11U) * 0x1.0p-53; }

  private:
    static constexpr std::uint64_t step = 0x9E3779B97F4A7C15ULL;
    std::uint64_t state_;
};

/// A generator for resample `number` of a run with `seed`: independent of who draws it and when.
constexpr SplitMix64 generator_for(std::uint64_t seed, std::uint64_t number) {
    return SplitMix64(mixed(seed + 0xD1B54A32D192ED03ULL * (number + 1)));
}

}  // namespace evenfall::stats
