// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/leaching.h"

#include "core/input_error.h"
#include "core/reference/table.h"
#include "core/units/number.h"

#include <algorithm>

namespace evenfall::weather {
namespace {

void check_conductivity(double ec, Phrase expected) {
    if (!(ec >= 0.0 && ec <= 60.0)) {
        throw InputError({phrase("weather", "%1 dS/m"), units::format_shortest(ec)}, expected);
    }
}

constexpr Phrase water_expected =
    phrase("weather", "a conductivity of the water from 0 to 60 dS/m (1 dS/m is 1000 uS/cm)");
constexpr Phrase soil_expected =
    phrase("weather", "a conductivity of the soil extract from 0 to 60 dS/m (1 dS/m is 1000 uS/cm)");

}  // namespace

LeachingRequirement leaching_requirement(const SaltCase& salt) {
    check_conductivity(salt.water_ec, water_expected);
    check_conductivity(salt.soil_ec_limit, soil_expected);
    const double rest = 5.0 * salt.soil_ec_limit - salt.water_ec;
    if (!(rest > salt.water_ec)) {
        throw InputError(
            {phrase("weather", "water of %1 dS/m for a soil limit of %2 dS/m"), units::format_shortest(salt.water_ec),
             units::format_shortest(salt.soil_ec_limit)},
            phrase("weather", "water below 2.5 times the limit: above it no amount of leaching is enough"));
    }
    return LeachingRequirement::of(salt.water_ec / rest);
}

units::Depth with_leaching(units::Depth need, LeachingRequirement requirement) {
    return need / (1.0 - requirement.value());
}

double soil_ec_at(double water_ec, LeachingRequirement fraction) {
    check_conductivity(water_ec, water_expected);
    const double lf = fraction.value();
    if (!(lf > 0.0))
        throw InputError("0", phrase("weather", "a leaching fraction above 0: without leaching salt only grows"));
    return (1.0 + lf) / lf * water_ec / 5.0;
}

std::optional<SaltTolerance> salt_tolerance(std::string_view plant) {
    const auto* row = reference::Table::named("plants.csv").find_typed(plant);
    if (row == nullptr) return std::nullopt;
    const auto threshold = row->maybe_number("salt_threshold");
    const auto slope = row->maybe_number("salt_slope");
    if (!threshold || !slope) return std::nullopt;
    return SaltTolerance{*threshold, *slope};
}

units::Share growth_under_salt(double soil_ec, const SaltTolerance& tolerance) {
    return salt_stress(soil_ec, tolerance, 1.0);
}

units::Share salt_stress(double soil_ec, const SaltTolerance& tolerance, double response) {
    check_conductivity(soil_ec, soil_expected);
    if (!(response > 0.0)) {
        throw InputError(units::format_shortest(response), phrase("weather", "a yield response factor above 0"));
    }
    const double above = std::max(0.0, soil_ec - tolerance.threshold);
    return units::Share::of(std::clamp(1.0 - tolerance.slope / (100.0 * response) * above, 0.0, 1.0));
}

}  // namespace evenfall::weather
