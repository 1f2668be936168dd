// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"
#include "core/weather/hour_sheet.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

/// Hourly weather in the book, kept in the units it was typed in. As for days, rows are only ever
/// added: corrections and completions are rows of the next revision.
/// Tests: tests/store/weather_join_test.cpp
namespace evenfall::store {

/// Latest revision of each period that starts from `from` on and before `to`, in order of time,
/// converted. Empty when the station is not in the book or has no hours.
std::vector<weather::WeatherHour> weather_hours(const Book& book, const std::string& station,
                                                calendar::Instant from, calendar::Instant to);

/// The latest revision of every period in the book as typed, by station and time.
void for_each_typed_hour(const Book& book,
                         const std::function<void(const std::string& station, const weather::SheetUnits& units,
                                                  const weather::SheetHour& hour)>& take);

/// Adds periods of one station in one table's units. Use within a Transaction.
class HourWriter {
  public:
    enum class Outcome {
        added,
        unchanged,
        completed,
        superseded,
        conflict,
        overlaps  ///< another period of this station reaches into this one; nothing was stored
    };

    /// @throws BookError when the station is not in the book
    HourWriter(Book& book, const std::string& station, const weather::SheetUnits& units,
               std::optional<std::int64_t> import);
    ~HourWriter();
    HourWriter(const HourWriter&) = delete;
    HourWriter& operator=(const HourWriter&) = delete;

    /// As in WeatherWriter.
    Outcome add(const weather::SheetHour& row, bool correct);
    Outcome complete(const weather::SheetHour& row);
    const std::string& in_book() const;
    const std::string& in_row() const;

  private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

}  // namespace evenfall::store
