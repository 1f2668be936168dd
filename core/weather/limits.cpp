// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/limits.h"

#include "core/reference/table.h"

#include <stdexcept>
#include <string>

namespace evenfall::weather {
namespace {

double value_of(std::string_view table, std::string_view key) {
    const auto* row = reference::Table::named(table).find("key", key);
    if (row == nullptr) {
        throw std::logic_error(std::string(table) + " has no row " + std::string(key));
    }
    return row->number("value");
}

}  // namespace

double weather_limit(std::string_view key) { return value_of("weather_limits.csv", key); }

double reference_et_default(std::string_view key) {
    return value_of("reference_et_defaults.csv", key);
}

}  // namespace evenfall::weather
