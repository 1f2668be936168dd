// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"
#include "core/weather/planting.h"

#include <optional>
#include <string>
#include <vector>

/// Sod harvests, new turf, overseeding and shade in the book. Only ever added: a correction is the
/// next revision. Tests: tests/exchange/planting_import_test.cpp
namespace evenfall::store {

/// superseded: an earlier revision says the same, and was corrected since.
enum class PlantingOutcome { added, unchanged, superseded, conflict, replaced };

/// A record is known by its area, kind and first day.
/// @param correct  what differs from the latest revision becomes the next one; else it is only reported
/// @throws BookError when the area is not in the book
PlantingOutcome add_planting(Book& book, const weather::Planting& planting, bool correct,
                             std::optional<std::int64_t> import);

/// Latest revisions of a site's areas, in order of area and first day.
std::vector<weather::Planting> plantings(const Book& book, const std::string& site);

}  // namespace evenfall::store
