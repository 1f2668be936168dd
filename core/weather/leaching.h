// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <optional>
#include <string_view>

/// Salt in the water, and the extra water that carries it below the roots.
/// Conductivities are in dS/m: ECw of the irrigation water, ECe of the saturated soil extract.
/// Sources disagree on how much salt a turf bears (perennial ryegrass is "moderately tolerant" in
/// FAO-56 and "sensitive" in Uddin & Juraimi 2013), so the threshold is an argument; the plant's own
/// stands in schemas/reference/plants.csv where a source gives one.
/// Reclaimed water falls under local health rules on use, signs and cross connections; this page
/// answers only how much of it passes the roots.
///
/// Source: Rhoades (1974) as Ayers & Westcot (1985) FAO Irrigation and Drainage Paper 29 rev. 1 Eq. 9
///   and FAO-56 chapter 8 give it; FAO-56 Eq. 92 and 93, Table 23.
/// Tests: tests/weather/leaching_test.cpp
namespace evenfall::weather {

struct LeachingTag {
    static constexpr Phrase name = phrase("weather", "leaching requirement");
};
using LeachingRequirement = units::Fraction<LeachingTag>;

struct SaltCase {
    double water_ec;      ///< ECw
    double soil_ec_limit; ///< ECe that the turf is to be kept at
};

/// LR = ECw/(5 ECe - ECw), the share of the water that has to pass below the roots.
/// @throws InputError for a conductivity below zero or above 60 (sea water has about 50), or water
///   too salty for the limit: LR of 1 or more means no amount of it would do
LeachingRequirement leaching_requirement(const SaltCase& salt);

/// Water to apply for a need: ET/(1 - LR). Rain that drains counts towards leaching, so this is the
/// upper figure in a wet season.
units::Depth with_leaching(units::Depth need, LeachingRequirement requirement);

/// ECe that a leaching fraction LF leads to in the long run: (1 + LF)/LF x ECw/5 (Eq. 93).
/// @throws InputError when LF is not above 0
double soil_ec_at(double water_ec, LeachingRequirement fraction);

struct SaltTolerance {
    double threshold;  ///< ECe where growth starts to fall
    double slope;      ///< percent of growth per dS/m above it
};

/// The plant's row in plants.csv; nothing where the source gives no threshold.
std::optional<SaltTolerance> salt_tolerance(std::string_view plant);

/// Growth as a share of that without salt: 1 - slope (ECe - threshold)/100, within 0 and 1.
units::Share growth_under_salt(double soil_ec, const SaltTolerance& tolerance);

/// Stress factor on ET: 1 - slope/(100 Ky) (ECe - threshold) (Eq. 92), within 0 and 1; it multiplies
/// the water-stress factor where both act.
/// @param response  yield response factor Ky, above 0; 1 where not known
units::Share salt_stress(double soil_ec, const SaltTolerance& tolerance, double response);

}  // namespace evenfall::weather
