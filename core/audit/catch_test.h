// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/units/measure.h"

#include <optional>
#include <string>
#include <vector>

/// A catch test as it stands on the field sheet.
namespace evenfall::audit {

enum class Layout : int { grid = 1, pivot = 2, traveller = 3, irregular = 4 };  ///< stored: frozen
enum class Side : int { left = 1, right = 2 };  ///< of a traveller's path, looking along its pull

/// One catch can. What was read is a volume in a can of known throat, or a depth directly.
struct Catch {
    std::string can;                 ///< label on the sheet, unique in the test
    std::optional<double> x;         ///< grid: in the test's position unit
    std::optional<double> y;
    std::optional<double> distance;  ///< pivot: from the pivot point; traveller: from the path
    std::optional<Side> side;        ///< traveller only
    double reading = 0.0;            ///< in the test's catch unit
    std::string excluded;            ///< the reason; empty when the can counts
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
};

}  // namespace evenfall::audit
