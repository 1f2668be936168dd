// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <string_view>

/// What a mistyped name was probably meant to be. Tests: tests/units/nearest_test.cpp
namespace evenfall {

/// Letters to insert, remove, change or swap with their neighbour to make one word the other
/// (optimal string alignment distance; counted in bytes).
std::size_t letters_apart(std::string_view a, std::string_view b);

/// The first of those known names that are fewest letters apart from `typed`, however many that are.
/// Empty when none is known. No more than the first 64 bytes of `typed` are compared.
std::string_view nearest_of(std::string_view typed, std::span<const std::string_view> known);

}  // namespace evenfall
