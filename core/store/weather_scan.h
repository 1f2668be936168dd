// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"
#include "core/weather/weather_sheet.h"

#include <functional>
#include <string>

/// All weather of a book as typed, a day at a time. Tests: tests/exchange/export_test.cpp
namespace evenfall::store {

using TakeTypedDay =
    std::function<void(const std::string& station, const weather::SheetUnits&, const weather::SheetRow&)>;

/// The latest revision of every day, by station and date.
void for_each_typed_day(const Book& book, const TakeTypedDay& take);

}  // namespace evenfall::store
