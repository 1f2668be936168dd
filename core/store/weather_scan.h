// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"
#include "core/weather/weather_sheet.h"

#include <functional>
#include <string>
#include <vector>

/// All weather of a book as typed, a day at a time. Tests: tests/exchange/export_test.cpp
namespace evenfall::store {

/// Each set of units in which days stand, in the order in which they first came in.
std::vector<weather::SheetUnits> weather_units(const Book& book);

/// The latest revision of every day that was typed in these units, by station and date.
void for_each_typed_day(const Book& book, const weather::SheetUnits& units,
                        const std::function<void(const std::string& station, const weather::SheetRow&)>& take);

}  // namespace evenfall::store
