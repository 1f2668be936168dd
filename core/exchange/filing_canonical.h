// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json_fwd.hpp>

#include <string>

/// The one way in which data/filing.json may be written, so that a digest stands for its meaning:
/// RFC 8785, JSON Canonicalization Scheme. In short:
///   UTF-8; no blanks between tokens; members of an object sorted by name;
///   numbers as ECMAScript prints a double: 0.5, 1e+21, 1e-7, never 1.0 or -0;
///   strings with the escapes \b \t \n \f \r \" \\ and \u00xx below U+0020, all else as it is.
/// Names of members in a filing are ASCII, so sorting by UTF-16 units and by bytes is the same.
/// Tests: tests/exchange/filing_bag_test.cpp
namespace evenfall::exchange {

/// @throws InputError for a number that is not finite or text that is not UTF-8
std::string canonical_text(const nlohmann::json& json);

/// A double as ECMAScript's Number::toString writes it.
std::string canonical_number(double value);

}  // namespace evenfall::exchange
