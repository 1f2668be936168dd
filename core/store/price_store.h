// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/pumping.h"
#include "core/budget/water_rate.h"
#include "core/store/book.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Prices and pumps in the book. What overlaps is refused when rates are used, see
/// core/budget/water_rate.h: a book may be filled in any order.
/// Tests: tests/store/price_store_test.cpp
namespace evenfall::store {

/// In alphabetical order of their codes.
std::vector<budget::WaterRate> water_rates(const Book& book);
std::vector<budget::EnergyRate> energy_rates(const Book& book);
std::vector<budget::Pump> pumps(const Book& book, const std::string& site);

/// @throws BookError when the code is taken or its site is not in the book
void add_water_rate(Book& book, const budget::WaterRate& rate, std::optional<std::int64_t> import);
void add_energy_rate(Book& book, const budget::EnergyRate& rate,
                     std::optional<std::int64_t> import);
void add_pump(Book& book, const budget::Pump& pump, std::optional<std::int64_t> import);

}  // namespace evenfall::store
