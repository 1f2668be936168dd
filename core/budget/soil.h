// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/site/site.h"
#include "core/units/quantity.h"

#include <string>
#include <string_view>

/// What an area's soil holds and takes in, each figure with its source and whether it was assumed.
///
/// Data: schemas/reference/soils.csv, soil_intake.csv, soil_accumulation.csv, plants.csv and
/// root_zone_defaults.csv. Sources: FAO-56 Tables 19 and 22, Eq. 82 and 83; UC Davis soil
/// characteristics table; intake and accumulation tables from memory, marked so in the data.
/// Tests: tests/budget/soil_test.cpp
namespace evenfall::budget {

/// Water between field capacity and wilting point, as depth of water over depth of soil.
struct HoldingCapacity {
    double share;        ///< m3/m3; 1 in/ft is 1/12
    Sentence method;
    Sentence source;
    bool assumed;        ///< the soil is not recorded or not in the data: loam stands in
};

/// Middle of the texture's range in FAO-56 Table 19, or of the extension table in inches per foot
/// where FAO-56 has no such texture.
HoldingCapacity holding_capacity(const site::Area& area);

/// Depth of the managed roots.
struct RootDepth {
    units::Depth depth;
    Sentence source;
    bool assumed;        ///< not recorded: 0.20 m
};
/// @throws InputError when the recorded depth is not above 0 or is beyond 2 m
RootDepth root_depth(const site::Area& area);

/// TAW = share x root depth (Eq. 82).
units::Depth available_water(const HoldingCapacity& capacity, const RootDepth& roots);

/// Share p of the available water that the plant can use before it suffers, at ETc 5 mm/d.
struct DepletionShare {
    double p;
    Sentence source;
    bool assumed;        ///< the plant is not recorded or not in the data: cool-season turf
};
DepletionShare depletion_share(const site::Area& area);

/// p at another ETc: p + 0.04 (5 - ETc), ETc in mm/d, kept within 0.1 and 0.8 (FAO-56 Table 22
/// note; the limits from memory).
double adjusted_depletion_share(double p, units::Depth crop_et);

/// Rate at which the ground takes in water under sprinklers.
struct Intake {
    units::Rate rate;
    std::string source;
    bool assumed;        ///< texture not in the table (loam) or slope not recorded (flat)
};
/// By texture and slope.
/// @throws InputError for a slope below 0 or above 100 %
Intake intake_rate(const site::Area& area);

/// Water that may stand on the ground before it runs.
struct Accumulation {
    units::Depth depth;
    std::string source;
    bool assumed;
};
/// By texture and slope. @throws InputError as intake_rate
Accumulation surface_accumulation(const site::Area& area);

/// The most that one day's irrigation can put into the ground, run as `cycles` equal parts with time
/// to soak between: intake x run time + cycles x what may stand. What is applied above it runs off.
///     run time = mean depth / mean rate, the same at every can
/// @throws InputError when rate or cycles are not above zero
units::Depth most_infiltrated(units::Depth mean_irrigation, units::Rate mean_rate,
                              units::Rate intake, units::Depth accumulation, int cycles);

}  // namespace evenfall::budget
