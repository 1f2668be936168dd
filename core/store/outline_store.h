// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"
#include "core/units/quantity.h"

#include <optional>
#include <string>

/// Outlines of areas in the book. Only ever added: the latest one stands.
/// Tests: tests/exchange/gis_test.cpp
namespace evenfall::store {

struct AreaOutline {
    std::string geojson;    ///< a MultiPolygon
    units::Area measured;   ///< from the outline, not the size that was typed
};

/// @throws BookError when the area is not in the book
std::optional<AreaOutline> find_outline(const Book& book, const std::string& area);
void add_outline(Book& book, const std::string& area, const AreaOutline& outline,
                 std::optional<std::int64_t> import);

}  // namespace evenfall::store
