// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/season.h"
#include "core/schedule/station.h"
#include "core/store/book.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Stations, watering rules and settings of areas in the book.
/// Tests: tests/store/price_store_test.cpp
namespace evenfall::store {

/// Of one site, in alphabetical order of their codes.
std::vector<schedule::Station> stations(const Book& book, const std::string& site);
/// @throws BookError when the code is taken or its area is not in the book
void add_station(Book& book, const schedule::Station& station, std::optional<std::int64_t> import);

std::optional<schedule::WateringRule> watering_rule(const Book& book, const std::string& site);
/// Replaces the site's rule; the caller writes the old one to the journal.
void set_watering_rule(Book& book, const schedule::WateringRule& rule);

/// Of the areas of one site that have any.
std::vector<budget::AreaSetting> area_settings(const Book& book, const std::string& site);
/// Replaces the area's setting; the caller writes the old one to the journal.
void set_area_setting(Book& book, const budget::AreaSetting& setting);

}  // namespace evenfall::store
