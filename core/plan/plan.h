// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/units/measure.h"

#include <optional>
#include <string>
#include <vector>

/// A design plan as it was drawn or typed: where the turf lies and which heads water it. Plain
/// records; every length, flow and pressure is a number in the unit that the plan names, kept as
/// typed. x runs east, y runs north, angles are degrees clockwise from north.
/// What a sound plan is: core/plan/check_plan.h. Read from JSON: core/exchange/plan_file.h.
namespace evenfall::plan {

struct Point {
    double x = 0.0;
    double y = 0.0;
    bool operator==(const Point&) const = default;
};
using Ring = std::vector<Point>;     ///< closed by itself: the first point is not repeated
using Polygon = std::vector<Ring>;   ///< the outer ring, then its holes

/// One line of a nozzle table.
struct NozzleRow {
    double pressure = 0.0;
    double radius = 0.0;
    double flow = 0.0;
    bool operator==(const NozzleRow&) const = default;
};

/// What a nozzle throws at each pressure. Rows in order of pressure.
struct Nozzle {
    std::string name;
    std::vector<NozzleRow> rows;
    std::optional<double> lowest;    ///< operating range, where the table states one
    std::optional<double> highest;
    bool operator==(const Nozzle&) const = default;
};

/// One leg of a measured distribution: rate against distance from the head. Only its shape
/// counts; the rate is scaled so that the volume is the head's flow.
struct MeasuredLeg {
    struct Reading {
        double distance = 0.0;
        double rate = 0.0;
        bool operator==(const Reading&) const = default;
    };
    std::string name;
    std::vector<Reading> readings;   ///< in order of distance
    bool operator==(const MeasuredLeg&) const = default;
};

struct Head {
    std::string id;
    double x = 0.0;
    double y = 0.0;
    std::optional<double> radius;    ///< of throw; empty: from the nozzle table
    std::optional<double> flow;      ///< of this head with its arc; empty: from the nozzle table
    std::string nozzle;              ///< empty when radius and flow are given
    std::optional<double> pressure;  ///< at the head
    double arc = 360.0;              ///< degrees, above 0 to 360
    double facing = 0.0;             ///< middle of the arc, degrees clockwise from north
    std::string station;             ///< empty when not assigned
    std::string profile = "cone";    ///< cone, flat, or the name of a measured leg
    bool operator==(const Head&) const = default;
};

/// Drawn, not computed.
struct Pipe {
    std::string id;
    std::vector<Point> path;
    std::string size;                ///< as printed on the drawing
    bool operator==(const Pipe&) const = default;
};

/// The path of a travelling gun. Drawn, not computed; catches from a lane are audited as a traveller.
struct Lane {
    std::string id;
    std::vector<Point> path;
    bool operator==(const Lane&) const = default;
};

/// A centre pivot: its point and the lengths of its spans, from the point outward. Drawn, not
/// computed; catches along it are audited as a pivot.
struct Pivot {
    std::string id;
    Point centre;
    std::vector<double> spans;
    bool operator==(const Pivot&) const = default;
};

struct PlanUnits {
    units::NamedUnit<units::Length> length = units::known_units<units::Length>().front();
    units::NamedUnit<units::Flow> flow = units::known_units<units::Flow>().front();
    units::NamedUnit<units::Pressure> pressure = units::known_units<units::Pressure>().front();
};

struct Plan {
    std::string name;
    PlanUnits units;
    std::vector<Polygon> turf;       ///< what is to be watered; at least one
    std::vector<Polygon> no_water;   ///< paving, roads, buildings: water there is off target
    std::vector<Polygon> obstacles;  ///< trees, poles: drawn; their shadow is not computed
    std::vector<Head> heads;
    std::vector<Nozzle> nozzles;
    std::vector<MeasuredLeg> profiles;
    std::vector<Pipe> pipes;
    std::vector<Lane> lanes;
    std::vector<Pivot> pivots;
    std::vector<Sentence> assumed;     ///< on what the reader had to fill in
};

/// No plan has more heads than this; more is a damaged or hostile file.
inline constexpr std::size_t most_heads = 100'000;
/// Points of one ring, and rings of all kinds in a plan.
inline constexpr std::size_t most_points = 100'000;

}  // namespace evenfall::plan
