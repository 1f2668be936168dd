// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// The state of the air in the units and symbols of the papers, so that each line can be laid
/// beside its equation. Plain numbers with the unit in brackets; typed quantities stop one level
/// up, at core/weather/reference_et.h.
///
/// Source: Allen, Pereira, Raes & Smith (1998) FAO Irrigation and Drainage Paper 56, chapters 2
///   and 3 (equation numbers below); ASCE-EWRI (2005) The ASCE standardized reference
///   evapotranspiration equation.
/// Tests: tests/weather/air_test.cpp
namespace evenfall::weather {

/// Which publication's constants are used. They differ in the slope, in the Stefan-Boltzmann
/// constant, in the lower limit of the cloud factor and in the hourly aerodynamic terms.
enum class Equation { asce_2005, fao_56 };

/// Atmospheric pressure [kPa] at an elevation [m]: P = 101.3 [(293 - 0.0065 z)/293]^5.26 (Eq. 7).
double pressure_at(double elevation_m);

/// Psychrometric constant [kPa/C]: 0.665e-3 P (Eq. 8).
double psychrometric_constant(double pressure_kpa);

/// Saturation vapour pressure e0 [kPa] at T [C]: 0.6108 exp[17.27 T/(T + 237.3)] (Eq. 11).
double saturation_pressure(double celsius);

/// Slope of that curve [kPa/C] (Eq. 13): 4098 e0/(T + 237.3)^2 in FAO-56,
/// 2503 exp[17.27 T/(T + 237.3)]/(T + 237.3)^2 in ASCE-EWRI 2005.
double saturation_slope(double celsius, Equation equation);

/// Mean saturation pressure of a day [kPa]: [e0(Tmax) + e0(Tmin)]/2 (Eq. 12).
double mean_saturation_pressure(double tmax_c, double tmin_c);

/// Actual vapour pressure [kPa] from both relative humidities [%] (Eq. 17).
double vapour_from_both_humidities(double tmax_c, double tmin_c, double rhmax, double rhmin);
/// From the highest humidity alone (Eq. 18).
double vapour_from_highest_humidity(double tmin_c, double rhmax);
/// From the lowest humidity alone: e0(Tmax) RHmin/100. ASCE-EWRI 2005, from memory.
double vapour_from_lowest_humidity(double tmax_c, double rhmin);
/// From the mean humidity (Eq. 19), the least preferred.
double vapour_from_mean_humidity(double tmax_c, double tmin_c, double rhmean);

/// How the wet bulb of a psychrometer is aired (Eq. 16).
enum class Airing { ventilated, natural, indoor };
/// Actual vapour pressure [kPa] from dry and wet bulb [C] (Eq. 15).
double vapour_from_wet_bulb(double dry_c, double wet_c, double pressure_kpa, Airing airing);

/// Share of the wind at z [m] above grass that blows at 2 m: 4.87/ln(67.8 z - 5.42) (Eq. 47).
/// Good from about 0.5 m up.
double wind_share_at_two_metres(double height_m);

}  // namespace evenfall::weather
