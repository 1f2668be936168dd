// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/sentence.h"
#include "core/site/site.h"
#include "core/units/ratio.h"

#include <string>
#include <string_view>

/// The share of short-grass reference ET that an area's planting uses.
///
/// Values are data: schemas/reference/monthly_coefficients.csv and plants.csv. A regional set is
/// used only where the area names it ("cool_season_california"); a plain plant name gets the
/// general value of FAO-56, because a coefficient measured in one climate is a guess in another.
/// Tests: tests/weather/landscape_coefficient_test.cpp
namespace evenfall::weather {

struct CoefficientChoice {
    units::LandscapeCoefficient value;
    Sentence method;  ///< "monthly table california_cool, July": joined, the month or day apart
    Sentence source;
    bool assumed;         ///< the area does not say, so the general turf value stands in
};

/// Highest coefficient that can be meant: above it a percentage was typed for a share.
inline constexpr double most_coefficient = 2.0;

/// In this order: the coefficient in the area's own record; the monthly set of its plant; for a
/// plant that is missing or not in the data, cool-season turf, marked as assumed.
/// @throws InputError when the record's coefficient is negative or above 2
CoefficientChoice landscape_coefficient(const site::Area& area, calendar::Month month);

/// One month of a set by its key in monthly_coefficients.csv.
/// @throws InputError for an unknown key, naming the known ones
CoefficientChoice monthly_coefficient(std::string_view set, calendar::Month month);

/// Landscape coefficient method: KL = species x density x microclimate. For plantings other than
/// turf; the guide says to use the turf's own coefficient for turf, and then density is 1 and
/// shade comes in as a microclimate below 1.
/// Source: Costello, Matheny, Clark & Jones (2000), University of California Cooperative
///   Extension; ranges from memory.
/// @throws InputError for a factor outside schemas/reference/landscape_factors.csv
CoefficientChoice landscape_product(double species, double density, double microclimate);

}  // namespace evenfall::weather
