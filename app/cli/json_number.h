// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>
#include <optional>

namespace evenfall::cli {

using Json = nlohmann::ordered_json;

/// The number, or null where there is none: absent is never zero.
inline Json number_or_null(std::optional<double> value) {
    return value ? Json(*value) : Json(nullptr);
}

/// A quantity in a unit, or null.
template <class Q>
Json in_or_null(const std::optional<Q>& value, Q unit) {
    return value ? Json(value->in(unit)) : Json(nullptr);
}

/// As JSON on one line, and nothing else. Text that is not UTF-8 cannot stop the answer.
inline std::string print(const Json& json) {
    return json.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace evenfall::cli
