// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

/// Limits and stand-in values from schemas/reference, looked up by key.
namespace evenfall::weather {

/// A row of weather_limits.csv.
/// @throws std::logic_error for a key that the file does not have
double weather_limit(std::string_view key);

/// A row of reference_et_defaults.csv.
double reference_et_default(std::string_view key);

}  // namespace evenfall::weather
