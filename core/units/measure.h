// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/number.h"
#include "core/units/quantity.h"

#include <span>
#include <string>
#include <string_view>

/// A value as a person typed it: the number and its unit, kept as they stand and converted only
/// to compute. "16.61in2", "107 cm2" and "1208.5m" are read here, and unit names are listed here
/// once for the command line, table headers and the book.
/// Tests: tests/units/measure_test.cpp
namespace evenfall::units {

template <class Q>
struct NamedUnit {
    std::string_view name;  ///< stable: stored in books and used in headers, e.g. "ft2"
    Q unit;
};

/// The units known for a quantity, the usual one first. Defined for Length, Area, Volume, Depth,
/// Duration, Speed, Flow, Pressure, Rate and Insolation.
template <class Q>
std::span<const NamedUnit<Q>> known_units();

/// The unit of that name.
/// @throws InputError naming the known ones
template <class Q>
NamedUnit<Q> unit_named(std::string_view name);

/// Value and unit as typed.
template <class Q>
struct Typed {
    double value = 0.0;
    NamedUnit<Q> unit = known_units<Q>().front();

    Q quantity() const { return value * unit.unit; }
    /// "16.61 in2"
    std::string text() const { return format_shortest(value) + " " + std::string(unit.name); }
};

/// Reads "16.61in2" or "16.61 in2".
/// @throws InputError for a missing number, a missing unit or an unknown one
template <class Q>
Typed<Q> parse_measure(std::string_view text);

}  // namespace evenfall::units
