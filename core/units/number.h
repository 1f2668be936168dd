// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

/// Reading and printing numbers without the locale of the process.
/// Tests: tests/units/number_test.cpp
namespace evenfall::units {

/// The whole of `text` as a finite decimal number, or nothing. Blanks at both ends are allowed,
/// hexadecimal, "nan", "inf" and thousands separators are not.
/// @param decimal_mark  '.' or ','; the other one is refused
std::optional<double> parse_number(std::string_view text, char decimal_mark = '.');

/// The shortest decimal text that reads back as the same double: 0.1, 1002.71, 1e+300.
std::string format_shortest(double value);

/// Fixed decimals, "-0.00" printed as "0.00".
std::string format_fixed(double value, int decimals);

/// Fixed decimals with a comma between thousands: 1,234,567.8.
std::string format_grouped(double value, int decimals);

}  // namespace evenfall::units
