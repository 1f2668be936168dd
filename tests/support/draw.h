// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

/// A generator for property tests: the same numbers from the same seed on every machine.
namespace evenfall::tests {

class Draw {
  public:
    explicit Draw(std::uint64_t seed) : state_(seed) {}
    /// 0 to bound - 1
    std::size_t below(std::size_t bound) {
        state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<std::size_t>(state_ >> 33U) % bound;
    }
    template <class T>
    void shuffle(std::vector<T>& values) {
        for (std::size_t i = values.size(); i > 1; --i) std::swap(values[i - 1], values[below(i)]);
    }

  private:
    std::uint64_t state_;
};

}  // namespace evenfall::tests
