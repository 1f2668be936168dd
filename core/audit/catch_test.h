// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/field_notes.h"
#include "core/calendar/date.h"
#include "core/units/measure.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

/// A catch test as it stands on the field sheet.
namespace evenfall::audit {

/// Stored: frozen. lateral: a machine that moves in a straight line, cans along its length.
enum class Layout : int { grid = 1, pivot = 2, traveller = 3, irregular = 4, lateral = 5 };
enum class Side : int { left = 1, right = 2 };  ///< of a traveller's path, looking along its pull

/// What one of several stations left in a can, when the cans are read after every station.
struct StationCatch {
    std::string station;
    double reading = 0.0;            ///< in the test's catch unit
};

/// One station that ran during the test.
struct StationRun {
    std::string station;
    double minutes = 0.0;
};

/// One catch can. What was read is a volume in a can of known throat, or a depth directly.
struct Catch {
    std::string can;                 ///< label on the sheet, unique in the test
    std::optional<double> x;         ///< grid: in the test's position unit
    std::optional<double> y;
    std::optional<double> distance;  ///< pivot: from the pivot point; traveller: from the path;
                                     ///< lateral: along the machine
    std::optional<Side> side;        ///< traveller only
    double reading = 0.0;            ///< in the test's catch unit
    std::string excluded;            ///< the reason; empty when the can counts
    std::vector<StationCatch> by_station;  ///< when read after every station; they add to `reading`
    std::size_t row = 0;             ///< of the file it came from; 0 when not from a file
};

enum class CatchUnit : int { millilitre = 1, millimetre = 2, inch = 3 };  ///< stored: frozen

struct CatchTest {
    std::string code;
    std::string area;                ///< area code
    calendar::Date date;
    Layout layout = Layout::grid;
    std::optional<units::Typed<units::Area>> throat_area;  ///< needed with volumes
    std::optional<double> minutes;   ///< run time of the test
    std::optional<units::Typed<units::Speed>> wind;
    std::optional<units::Typed<units::Length>> lane_spacing;  ///< traveller
    bool opposite_pulls = false;     ///< traveller: neighbouring lanes pulled the other way
    units::NamedUnit<units::Length> position_unit = units::known_units<units::Length>().front();
    CatchUnit catch_unit = CatchUnit::millilitre;
    std::vector<Catch> catches;
    std::vector<StationRun> stations;  ///< when several stations water the area, in running order
    std::optional<units::Typed<units::Volume>> can_size;      ///< what a can holds when full
    std::optional<units::Typed<units::Flow>> flow;            ///< traveller: of the machine
    std::optional<units::Typed<units::Speed>> travel_speed;   ///< traveller
    std::optional<units::Typed<units::Length>> edge_offset;   ///< outer cans to the zone's edge
    std::optional<std::vector<PressureReading>> pressures;  ///< nothing: none were taken or noted
    std::optional<std::vector<Finding>> findings;  ///< nothing: no inspection; empty: nothing found
    std::string file;                ///< it came from, for messages; empty when from a book
};

}  // namespace evenfall::audit
