// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/weather/air.h"

/// Radiation: what the sun sends, what the sky lets through, what the ground keeps.
/// Angles in radians, latitudes in degrees north, J the day of the year (1 on 1 January),
/// energy in MJ/m2 per day or per hour as the function says.
///
/// Source: FAO-56 chapter 3 (equation numbers below) and ASCE-EWRI 2005, whose solar constant
///   4.92 MJ/m2/h is FAO-56's 0.0820 MJ/m2/min.
/// Tests: tests/weather/air_test.cpp
namespace evenfall::weather {

/// Relative distance earth to sun, dr = 1 + 0.033 cos(2 pi J/365) (Eq. 23).
double inverse_sun_distance(int day_of_year);
/// Declination [rad], 0.409 sin(2 pi J/365 - 1.39) (Eq. 24).
double declination(int day_of_year);
/// Sunset hour angle [rad], arccos(-tan(latitude) tan(declination)) (Eq. 25); 0 where the sun
/// stays down all day and pi where it stays up.
double sunset_angle(double latitude, int day_of_year);
/// Hours of daylight (Eq. 34).
double daylight_hours(double latitude, int day_of_year);
/// Extraterrestrial radiation of a day [MJ/m2/d] (Eq. 21).
double extraterrestrial(double latitude, int day_of_year);

/// Where and when an hour is.
struct HourPlace {
    double latitude;         ///< degrees north
    double longitude_west;   ///< degrees west of Greenwich, 0 to 360 (Lm)
    double zone_west;        ///< centre of the local standard time zone, degrees west (Lz)
    int day_of_year;
    double midpoint_hour;    ///< standard clock time at the middle of the period, 14.5 for 14 to 15 h
    double length_hours;     ///< of the period
};
/// Solar hour angle at the middle of the period [rad] (Eq. 31 to 33).
double hour_angle(const HourPlace& place);
/// Sine of the sun's height above the horizon at that moment.
double sine_of_height(const HourPlace& place);
/// Extraterrestrial radiation of the period [MJ/m2 in the period] (Eq. 28), counted only while
/// the sun is up: the hour angles are kept within sunrise and sunset.
double extraterrestrial(const HourPlace& place);

/// Clear-sky radiation (Eq. 37): (0.75 + 2e-5 z) Ra, z in metres.
double clear_sky(double extraterrestrial, double elevation_m);
/// Clear-sky radiation with calibrated coefficients (Eq. 36): (a + b) Ra.
double clear_sky_calibrated(double extraterrestrial, double a, double b);
/// Solar radiation from sunshine hours n of N (Eq. 35): (a + b n/N) Ra.
double solar_from_sunshine(double sunshine_h, double daylight_h, double extraterrestrial, double a,
                           double b);
/// Solar radiation from the temperature range (Eq. 50): k sqrt(Tmax - Tmin) Ra, not above clear sky.
double solar_from_range(double tmax_c, double tmin_c, double extraterrestrial, double clear_sky,
                        double k);

/// Cloud factor 1.35 Rs/Rso - 0.35 of the longwave loss. Rs/Rso is kept at or below 1, and in
/// ASCE-EWRI 2005 at or above 0.3.
double cloud_factor(double solar_to_clear_sky, Equation equation);
/// Net outgoing longwave radiation of a day [MJ/m2/d] (Eq. 39).
double longwave_of_day(double tmax_c, double tmin_c, double vapour_kpa, double cloud,
                       Equation equation);
/// Net outgoing longwave radiation of an hour [MJ/m2/h].
double longwave_of_hour(double celsius, double vapour_kpa, double cloud, Equation equation);

/// Stefan-Boltzmann term of a day [MJ/m2/d], sigma (T + 273.16)^4.
double black_body_of_day(double celsius, Equation equation);

/// Soil heat flux of a month [MJ/m2/d] between the months before and after (Eq. 43) ...
double soil_heat_of_month(double before_c, double after_c);
/// ... or from the month before only (Eq. 44).
double soil_heat_of_month_so_far(double before_c, double this_c);

}  // namespace evenfall::weather
