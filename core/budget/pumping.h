// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/measure.h"
#include "core/units/ratio.h"

#include <optional>
#include <string>

/// Energy that lifts and presses the water.
///
///     E = rho g V H / eta
///       rho  1000 kg/m3          g  9.80665 m/s2          V  volume
///       H    total head: lift + pressure / (rho g) + friction
///       eta  overall efficiency, wire to water
///
/// 1,000 gal by one foot take 0.003143 kWh at full efficiency. Measured at the supply, leaks and
/// all: water that is lost was pumped too.
/// Tests: tests/budget/pumping_test.cpp
namespace evenfall::budget {

struct Pump {
    std::string code;
    std::string site;
    std::optional<units::Typed<units::Length>> lift;      ///< water level to outlet
    std::optional<units::Typed<units::Pressure>> pressure;///< at the outlet
    std::optional<units::Typed<units::Length>> friction;
    units::Efficiency efficiency = units::Efficiency::of(1.0);
    double share = 1.0;  ///< of the site's metered water that this pump moves, 0 to 1
};

/// H. What is not recorded adds nothing.
/// @throws InputError when neither lift nor pressure is recorded, or the sum is not above zero
units::Length total_head(const Pump& pump);

/// @throws InputError for an efficiency of zero or a negative volume or head
units::Energy pump_energy(units::Volume volume, units::Length head, units::Efficiency efficiency);

}  // namespace evenfall::budget
