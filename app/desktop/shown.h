// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"
#include "reports/content/report.h"

#include <QString>
#include <optional>

/// Quantities as the user wants to see them, US customary or metric, with their unit.
/// Nothing is computed here but the change of unit at the exit.
/// Tests: tests/app/desktop_look_test.cpp
namespace evenfall::desktop {

using reports::UnitsShown;

/// A number with its unit, apart, for axes and table heads.
struct UnitChoice {
    QString name;
    double per_si;  ///< SI amount of one unit
};

UnitChoice volume_unit(UnitsShown units);  ///< gal, m³
UnitChoice area_unit(UnitsShown units);    ///< ac, ha
UnitChoice depth_unit(UnitsShown units);   ///< in, mm
UnitChoice rate_unit(UnitsShown units);    ///< in/h, mm/h
UnitChoice length_unit(UnitsShown units);  ///< ft, m
UnitChoice flow_unit(UnitsShown units);    ///< gpm, L/min
UnitChoice pressure_unit(UnitsShown units);///< psi, kPa
UnitChoice speed_unit(UnitsShown units);   ///< mph, m/s

/// Digits that suit the unit: gallons whole, inches to two decimals, millimetres to one.
QString shown(units::Volume v, UnitsShown units);
QString shown(units::Area a, UnitsShown units);
QString shown(units::Depth d, UnitsShown units);
QString shown(units::Rate r, UnitsShown units);
QString shown(units::Length l, UnitsShown units);
QString shown(units::Flow q, UnitsShown units);
QString shown(units::Pressure p, UnitsShown units);
QString shown(units::Speed s, UnitsShown units);
/// "62.5 %"
QString shown_percent(double share, int decimals = 1);
QString shown_number(double value, int decimals);
/// "not recorded", in the language shown.
QString not_recorded();
template <class Q>
QString shown(const std::optional<Q>& value, UnitsShown units) {
    return value ? shown(*value, units) : not_recorded();
}

inline QString q(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}
inline std::string utf8(const QString& text) { return text.toStdString(); }

}  // namespace evenfall::desktop
