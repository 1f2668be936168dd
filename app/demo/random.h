// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

namespace evenfall::demo {

/// Numbers for the invented scenario: the same on every machine, since only integer arithmetic
/// and one exact scaling are used. Generator: splitmix64 (Steele, Lea & Flood 2014).
class Random {
  public:
    explicit Random(std::uint64_t seed) : state_(seed) {}

    /// In [0, 1).
    double uniform() {
        state_ += 0x9E3779B97F4A7C15U;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
        z ^= z >> 31U;
        return static_cast<double>(z >> 11U) * 0x1.0p-53;
    }
    double between(double low, double high) { return low + (high - low) * uniform(); }
    /// Mean 0, standard deviation 1, never beyond 6: the sum of twelve uniform numbers.
    double bell() {
        double sum = -6.0;
        for (int i = 0; i < 12; ++i) sum += uniform();
        return sum;
    }

  private:
    std::uint64_t state_;
};

}  // namespace evenfall::demo
