// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"
#include "core/units/measure.h"
#include "core/weather/weather_sheet.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

/// Weather stations and days in the book, kept in the units they were typed in. Days are only
/// ever added: a correction, and a row that completes a day with columns it did not have, is a row of
/// the next revision that holds everything known of the day.
/// Tests: tests/store/records_test.cpp, tests/store/weather_join_test.cpp
namespace evenfall::store {

struct WeatherStation {
    std::string code;
    std::optional<double> latitude;
    std::optional<double> longitude;
    std::optional<units::Typed<units::Length>> elevation;
    std::optional<double> wind_height_m;  ///< of the anemometer
};

std::vector<WeatherStation> weather_stations(const Book& book);
std::optional<WeatherStation> find_weather_station(const Book& book, const std::string& code);
/// @throws BookError when the code is taken
void add_weather_station(Book& book, const WeatherStation& station);
/// Puts new values in place of the old ones; the caller writes the old ones to the journal.
void replace_weather_station(Book& book, const WeatherStation& station);

/// Latest revision of each day from `from` to `to`, both included, in order of date, converted.
/// Empty when the station is not in the book.
std::vector<weather::WeatherDay> weather_days(const Book& book, const std::string& station,
                                              calendar::Date from, calendar::Date to);

/// Adds days of one station in one table's units. Use within a Transaction.
class WeatherWriter {
  public:
    enum class Outcome { added, unchanged, completed, superseded, conflict };

    /// @throws BookError when the station is not in the book
    WeatherWriter(Book& book, const std::string& station, const weather::SheetUnits& units,
                  std::optional<std::int64_t> import);
    ~WeatherWriter();
    WeatherWriter(const WeatherWriter&) = delete;
    WeatherWriter& operator=(const WeatherWriter&) = delete;

    /// unchanged: all values of the row are there, in the same units. completed: it has values where
    /// nothing was recorded, and contradicts none. conflict: other values are there, or values in
    /// other units, and nothing was stored unless `correct` is set; then the row's values stand.
    /// superseded: the same, but each such value of the row is one that the book had and replaced.
    Outcome add(const weather::SheetRow& row, bool correct);
    /// Where the book's values are to stand: stores those of the row that contradict none of them.
    /// unchanged or completed.
    Outcome complete(const weather::SheetRow& row);
    /// After conflict and superseded: what differs, "tmax 90 f, rain 0 in".
    const std::string& in_book() const;
    const std::string& in_row() const;

  private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

}  // namespace evenfall::store
