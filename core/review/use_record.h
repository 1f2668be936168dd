// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/filing.h"
#include "core/review/savings.h"
#include "core/sentence.h"

#include <string>
#include <vector>

/// From the raw readings and weather of a filing to months that savings can be fitted on.
/// Tests: tests/review/verdict_test.cpp
namespace evenfall::review {

/// Months on both sides of the change for which use and need are known, and what was left out.
struct UseRecord {
    std::vector<UseSpell> before;
    std::vector<UseSpell> after;
    std::vector<Sentence> remarks;
    Sentence method;      ///< reference ET, coefficient, effective rain, months counted
};

/// Use: all meters without a parent, linear between readings, in the site's own months; a month
/// counts when all its days are covered. Need: by month, max(0, ETc - effective rain) x area over
/// all areas; a month counts when at most three days lack reference ET, the rest standing for them.
/// The month of the change belongs to neither side unless the change is on its first or last day.
/// Without a change date both sides are empty.
/// @throws InputError for a time zone or rain rule that cannot be read
UseRecord use_record(const Filing& filing);

/// The area that an outline of longitudes and latitudes encloses on the WGS 84 ellipsoid
/// (GeographicLib); nothing for fewer than three points.
std::optional<units::Area> outline_area(const std::vector<std::pair<double, double>>& outline);

}  // namespace evenfall::review
