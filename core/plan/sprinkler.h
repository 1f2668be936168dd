// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "core/plan/profile.h"

#include <optional>
#include <string>
#include <vector>

/// The heads of a plan ready to compute: metres and cubic metres per second, nozzle tables looked
/// up, profiles built. Also the rate of one head at one point, by the formula of profile.h.
/// Tests: tests/plan/profile_test.cpp
namespace evenfall::plan {

struct Sprinkler {
    double x = 0.0;             ///< m
    double y = 0.0;             ///< m
    double radius = 0.0;        ///< m
    double flow = 0.0;          ///< m3/s
    double arc = 360.0;         ///< degrees
    double facing = 0.0;        ///< degrees clockwise from north
    std::size_t profile = 0;    ///< into Sprinklers::profiles
};

/// An approximate picture of wind: each pattern moves downwind and is drawn out along the wind.
/// It keeps the volume; it does not model drops. Not fitted to any measurement: the user states it.
struct Wind {
    double toward = 0.0;        ///< degrees clockwise from north, where the wind blows to
    double shift = 0.0;         ///< as a share of the radius
    double stretch = 1.0;       ///< along the wind; across it 1 / stretch
};

/// The linear map from an offset on the ground to the still-air pattern; symmetric.
struct PatternMap {
    double xx = 1.0, xy = 0.0, yy = 1.0;
    double shift_x = 0.0, shift_y = 0.0;  ///< share of the radius
    double reach = 1.0;                    ///< farthest water from a head, as a share of its radius
    bool still = true;                     ///< no stretch
};

struct Sprinklers {
    std::vector<Sprinkler> heads;           ///< in the order of the plan
    std::vector<RadialProfile> profiles;
    std::vector<Sentence> assumed;          ///< each once
};

/// @throws InputError when the plan is not sound, see check_plan.h
Sprinklers sprinklers_of(const Plan& plan);

/// @throws InputError  shift outside 0 to 1, stretch outside 1 to 2, or not finite
PatternMap pattern_map(const std::optional<Wind>& wind);

/// Rate of one head at a point, m/s. The end of the throw and the edges of the arc belong to it.
double rate_at(const Sprinklers& all, const Sprinkler& head, Point metres, const PatternMap& map);

/// Whether a direction (dx east, dy north) lies in the arc.
bool in_arc(const Sprinkler& head, double dx, double dy);

}  // namespace evenfall::plan
