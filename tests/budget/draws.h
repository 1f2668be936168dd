// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <random>

namespace evenfall::budget::test {

/// Draws that are the same on every library: std::mt19937_64 is fixed by the standard, its
/// distributions are not.
class Draws {
  public:
    explicit Draws(std::uint64_t seed) : engine_(seed) {}
    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(engine_() >> 11U) * 0x1p-53;
    }
    std::size_t below(std::size_t n) {
        return static_cast<std::size_t>(between(0.0, static_cast<double>(n)));
    }

  private:
    std::mt19937_64 engine_;
};

}  // namespace evenfall::budget::test
