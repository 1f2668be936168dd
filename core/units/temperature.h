// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

namespace evenfall::units {

/// A temperature. Its scales have different zeros, so it is no Quantity: there is nothing to
/// multiply, and a difference is a plain number of kelvin.
/// Celsius and Fahrenheit: NIST SP 811 appendix B.9. Tests: tests/units/quantity_test.cpp
class Temperature {
  public:
    static constexpr Temperature celsius(double t) { return Temperature(t); }
    static constexpr Temperature fahrenheit(double t) { return Temperature((t - 32.0) / 1.8); }
    constexpr double in_celsius() const { return celsius_; }
    constexpr double in_fahrenheit() const { return celsius_ * 1.8 + 32.0; }
    constexpr auto operator<=>(const Temperature&) const = default;

  private:
    explicit constexpr Temperature(double c) : celsius_(c) {}
    double celsius_;
};

}  // namespace evenfall::units
