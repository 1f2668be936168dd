// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/audit/quarter_rule.h"

#include <QByteArray>
#include <QString>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

/// The field sheet as it is being filled in: a catch test whose cans may still be empty, laid out
/// in rows and columns as the cans stand on the ground. Plain values, copied freely.
/// Tests: tests/app/desktop_field_sheet_test.cpp
namespace evenfall::desktop {

struct SheetCan {
    std::string label;
    int row = 0;                    ///< on screen, 0 at the top (north, or farthest)
    int column = 0;
    std::optional<double> x, y;     ///< grid, in the sheet's position unit
    std::optional<double> distance; ///< pivot, traveller
    std::optional<audit::Side> side;
    std::optional<double> reading;  ///< in the sheet's catch unit; empty: not read yet
    std::string bad;                ///< what was typed and is no reading; never thrown away
    std::string excluded;           ///< the reason; empty when the can counts
    bool operator==(const SheetCan&) const = default;
};

/// A pressure measured during the test.
struct SheetPressure {
    std::string place;  ///< "head A3", "valve box"
    std::string value;  ///< as typed, with unit: "42 psi"
    std::string nozzle_low;   ///< range its maker gives, as typed; empty: not known
    std::string nozzle_high;
    bool operator==(const SheetPressure&) const = default;
};

/// Something seen in the field.
struct SheetFinding {
    std::string what;       ///< a key of schemas/reference/findings.csv, or what was typed instead
    std::string place;
    std::string count;      ///< as typed; empty: one
    std::string severity;   ///< minor, moderate, severe; empty: moderate
    std::string corrected;  ///< "yes": put right before the test
    std::string note;
    bool operator==(const SheetFinding&) const = default;
};

/// The order in which the cans are read.
enum class Walk : int {
    back_and_forth = 1,  ///< each row the other way round
    row_by_row = 2       ///< each row from the left
};

struct SheetData {
    std::string code;
    std::string area;
    calendar::Date date;
    audit::Layout layout = audit::Layout::grid;
    int rows = 4;
    int columns = 6;
    double spacing = 10.0;            ///< between cans, in the position unit
    double first = 5.0;               ///< pivot, traveller: distance of the first can
    units::NamedUnit<units::Length> position_unit = units::known_units<units::Length>().front();
    Walk walk = Walk::back_and_forth;
    audit::CatchUnit catch_unit = audit::CatchUnit::millilitre;
    std::string throat_area;          ///< as typed: "16.61 in2"
    std::string minutes;              ///< as typed
    std::string wind;                 ///< as typed: "3 mph"
    std::string lane_spacing;         ///< traveller, as typed: "220 ft"
    bool opposite_pulls = false;
    audit::QuarterRule quarter_rule = audit::QuarterRule::whole_cans;
    std::vector<SheetCan> cans;
    std::vector<SheetPressure> pressures;
    std::vector<SheetFinding> findings;
    bool inspected = false;           ///< somebody looked, even if nothing was found
    std::vector<std::string> photos;  ///< file names
    std::string notes;
};

/// A fresh sheet of 24 cans, six across and four deep.
SheetData empty_sheet(calendar::Date date);

/// Lays the cans out anew for the sheet's layout, rows, columns and spacing. Readings stay with
/// the can at the same row and column; those that no longer have a can are lost (and come back
/// with undo).
void lay_out(SheetData& sheet);

/// The sheet's cans in walking order, as indexes.
std::vector<std::size_t> walking_order(const SheetData& sheet);

/// The test as the core takes it, without pressures and findings (see sheet_notes.h). Cans not read yet
/// are left out.
/// @throws InputError for a field that was typed wrongly, naming it
audit::CatchTest to_catch_test(const SheetData& sheet);

/// A test of the book as a sheet, with its pressures and findings; cans at irregular positions are ranked into rows and columns.
SheetData from_catch_test(const audit::CatchTest& test);

QByteArray to_json(const SheetData& sheet);
/// Nothing when the text is no sheet.
std::optional<SheetData> from_json(const QByteArray& json);

}  // namespace evenfall::desktop
