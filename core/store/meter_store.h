// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/meter/meter.h"
#include "core/store/book.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

/// Meters and their readings in the book. Readings are only ever added: a correction is a row of
/// the next revision, and what is read back is the latest one of each.
/// Tests: tests/store/records_test.cpp
namespace evenfall::store {

/// Meters of one site, or of all when `site` is empty, in alphabetical order of their codes.
std::vector<meter::Meter> meters(const Book& book, const std::string& site);
std::optional<meter::Meter> find_meter(const Book& book, const std::string& code);
/// @throws BookError when the code is taken or its site or another meter it names is missing
void add_meter(Book& book, const meter::Meter& meter, std::optional<std::int64_t> import);
void replace_meter(Book& book, const meter::Meter& meter, std::optional<std::int64_t> import);

/// Adds an exchange of the meter's register. @throws BookError when there is one at that instant
void add_exchange(Book& book, const std::string& meter, const meter::Exchange& exchange,
                  std::optional<std::int64_t> import);

/// The id by which readings are stored. @throws BookError when the meter is not in the book
std::int64_t meter_id(const Book& book, const std::string& code);

/// Latest revisions from `from` to `to`, both included, in order of time, and the one reading on
/// either side, so that use at the edges can be told.
std::vector<meter::Reading> readings_around(const Book& book, const std::string& meter,
                                            calendar::Instant from, calendar::Instant to);
/// Every latest revision of a meter, in order of time, one by one.
void for_each_reading(const Book& book, const std::string& meter,
                      const std::function<void(const meter::Reading&)>& take);
/// The same, at once.
std::vector<meter::Reading> all_readings(const Book& book, const std::string& meter);
std::int64_t count_readings(const Book& book, const std::string& meter);

}  // namespace evenfall::store
