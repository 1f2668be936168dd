// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/budget.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <algorithm>

namespace evenfall::budget {

using units::Area;
using units::Depth;
using units::Volume;

namespace {

void check_depth(Depth depth, Phrase name) {
    if (depth.si() >= 0.0) return;
    throw InputError(units::format_shortest(depth.in(units::millimetre)) + " mm",
                     {phrase("budget", "%1 of zero or more"), name});
}

/// Printed over exact volume: 1 unless the regulation rounds.
double volume_constant(const Program& program) {
    if (!program.gallons_per_ft2_inch) return 1.0;
    const double exact = (units::inch * units::square_foot).in(units::us_gallon);
    return *program.gallons_per_ft2_inch / exact;
}

double factor_of(const Program& program, bool special) {
    if (!program.factor) {
        throw InputError(program.name, phrase("budget", "a program with basis allowance"));
    }
    return special ? program.special_factor.value_or(*program.factor) : *program.factor;
}

}  // namespace

Depth landscape_et(Depth reference_et, units::LandscapeCoefficient coefficient) {
    check_depth(reference_et, phrase("budget", "a reference ET"));
    if (!(coefficient.value() >= 0.0)) {
        throw InputError(units::format_shortest(coefficient.value()),
                         phrase("budget", "a landscape coefficient of zero or more"));
    }
    return reference_et * coefficient.value();
}

Depth need_depth(Depth landscape_et, Depth effective_rain) {
    check_depth(effective_rain, phrase("budget", "an effective rain"));
    return std::max(Depth{}, landscape_et - effective_rain);
}

std::optional<Volume> budget(const Program& program, const BudgetTerms& terms) {
    if (!(terms.size.si() > 0.0)) {
        throw InputError(units::format_shortest(terms.size.si()) + " m2", phrase("budget", "an area above zero"));
    }
    if (program.basis == Basis::need) {
        return terms.need * terms.size / program.divisor_value();
    }
    Depth credit;
    if (program.rain_credit == RainCredit::effective) {
        if (!terms.effective_rain) return std::nullopt;
        credit = *terms.effective_rain;
    } else if (program.rain_credit == RainCredit::share) {
        if (!terms.rain) return std::nullopt;
        credit = *terms.rain * program.rain_share.value();
    }
    const Depth granted =
        need_depth(terms.reference_et * factor_of(program, terms.special), credit);
    return granted * terms.size * volume_constant(program) / program.divisor_value();
}

Volume allowance(const Program& program, Depth reference_et, Area landscape, Area special) {
    check_depth(reference_et, phrase("budget", "a reference ET"));
    if (special > landscape || special < Area{}) {
        throw InputError(units::format_shortest(special.in(units::square_foot)) + " ft2",
                         phrase("budget", "special landscape of zero to the whole landscape area"));
    }
    const double f = factor_of(program, false);
    const double s = factor_of(program, true);
    const Area weighted = landscape * f + special * (s - f);
    return reference_et * weighted * volume_constant(program) / program.divisor_value();
}

Volume estimated_total_use(const Program& program, Depth reference_et,
                           std::span<const Hydrozone> zones, Area special) {
    check_depth(reference_et, phrase("budget", "a reference ET"));
    Area weighted = special;
    for (const Hydrozone& zone : zones) {
        if (zone.plant_factor < 0.0 || !(zone.efficiency.value() > 0.0)) {
            throw InputError(
                units::format_shortest(zone.plant_factor) + " / " + units::format_shortest(zone.efficiency.value()),
                phrase("budget", "a plant factor of zero or more and an efficiency above zero"));
        }
        weighted += zone.size * (zone.plant_factor / zone.efficiency.value());
    }
    return reference_et * weighted * volume_constant(program);
}

}  // namespace evenfall::budget
