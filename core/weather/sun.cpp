// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/sun.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace evenfall::weather {
namespace {

using std::numbers::pi;

constexpr double solar_constant = 4.92;  // MJ/m2/h
constexpr double kelvin_offset = 273.16; // as both papers print it for this term

double radians(double degrees) { return degrees * pi / 180.0; }

/// Ra between two hour angles [rad], MJ/m2: (12/pi) Gsc dr [(w2 - w1) sin sin + cos cos (...)].
double between(double latitude, int day_of_year, double w1, double w2) {
    const double phi = radians(latitude);
    const double delta = declination(day_of_year);
    return 12.0 / pi * solar_constant * inverse_sun_distance(day_of_year) *
           ((w2 - w1) * std::sin(phi) * std::sin(delta) +
            std::cos(phi) * std::cos(delta) * (std::sin(w2) - std::sin(w1)));
}

double fourth_power(double x) { return x * x * x * x; }

double sigma_of_day(Equation equation) {
    return equation == Equation::fao_56 ? 4.903e-9 : 4.901e-9;
}

double sigma_of_hour(Equation equation) {
    return equation == Equation::fao_56 ? 4.903e-9 / 24.0 : 2.042e-10;
}

/// Seasonal correction of solar time [h] (Eq. 32, 33).
double solar_time_correction(int day_of_year) {
    const double b = 2.0 * pi * (day_of_year - 81) / 364.0;
    return 0.1645 * std::sin(2.0 * b) - 0.1255 * std::cos(b) - 0.025 * std::sin(b);
}

double emissivity(double vapour_kpa) { return 0.34 - 0.14 * std::sqrt(vapour_kpa); }

}  // namespace

double inverse_sun_distance(int day_of_year) {
    return 1.0 + 0.033 * std::cos(2.0 * pi / 365.0 * day_of_year);
}

double declination(int day_of_year) {
    return 0.409 * std::sin(2.0 * pi / 365.0 * day_of_year - 1.39);
}

double sunset_angle(double latitude, int day_of_year) {
    const double c = -std::tan(radians(latitude)) * std::tan(declination(day_of_year));
    return std::acos(std::clamp(c, -1.0, 1.0));
}

double daylight_hours(double latitude, int day_of_year) {
    return 24.0 / pi * sunset_angle(latitude, day_of_year);
}

double extraterrestrial(double latitude, int day_of_year) {
    const double phi = radians(latitude);
    const double delta = declination(day_of_year);
    const double ws = sunset_angle(latitude, day_of_year);
    return 24.0 / pi * solar_constant * inverse_sun_distance(day_of_year) *
           (ws * std::sin(phi) * std::sin(delta) + std::cos(phi) * std::cos(delta) * std::sin(ws));
}

double hour_angle(const HourPlace& p) {
    // Both longitudes run from 0 to 360 west, so their difference is brought back to +-180.
    const double ahead = std::remainder(p.zone_west - p.longitude_west, 360.0);
    return pi / 12.0 *
           (p.midpoint_hour + 0.06667 * ahead + solar_time_correction(p.day_of_year) - 12.0);
}

double sine_of_height(const HourPlace& p) {
    const double phi = radians(p.latitude);
    const double delta = declination(p.day_of_year);
    return std::sin(phi) * std::sin(delta) +
           std::cos(phi) * std::cos(delta) * std::cos(hour_angle(p));
}

double extraterrestrial(const HourPlace& p) {
    const double ws = sunset_angle(p.latitude, p.day_of_year);
    const double middle = std::remainder(hour_angle(p), 2.0 * pi);
    const double half = pi * p.length_hours / 24.0;
    // The period may reach over solar midnight, where a second daylight window begins.
    double total = 0.0;
    for (const double turn : {-2.0 * pi, 0.0, 2.0 * pi}) {
        const double w1 = std::clamp(middle - half, turn - ws, turn + ws);
        const double w2 = std::clamp(middle + half, turn - ws, turn + ws);
        if (w2 > w1) total += between(p.latitude, p.day_of_year, w1 - turn, w2 - turn);
    }
    return std::max(0.0, total);
}

double clear_sky(double extraterrestrial, double elevation_m) {
    return (0.75 + 2e-5 * elevation_m) * extraterrestrial;
}

double clear_sky_calibrated(double extraterrestrial, double a, double b) {
    return (a + b) * extraterrestrial;
}

double solar_from_sunshine(double sunshine_h, double daylight_h, double extraterrestrial, double a,
                           double b) {
    return (a + b * sunshine_h / daylight_h) * extraterrestrial;
}

double solar_from_range(double tmax_c, double tmin_c, double extraterrestrial, double clear_sky,
                        double k) {
    return std::min(clear_sky, k * std::sqrt(tmax_c - tmin_c) * extraterrestrial);
}

double cloud_factor(double solar_to_clear_sky, Equation equation) {
    const double low = equation == Equation::asce_2005 ? 0.3 : 0.0;
    return 1.35 * std::clamp(solar_to_clear_sky, low, 1.0) - 0.35;
}

double black_body_of_day(double celsius, Equation equation) {
    return sigma_of_day(equation) * fourth_power(celsius + kelvin_offset);
}

double longwave_of_day(double tmax_c, double tmin_c, double vapour_kpa, double cloud,
                       Equation equation) {
    return cloud * emissivity(vapour_kpa) * 0.5 *
           (black_body_of_day(tmax_c, equation) + black_body_of_day(tmin_c, equation));
}

double longwave_of_hour(double celsius, double vapour_kpa, double cloud, Equation equation) {
    return cloud * emissivity(vapour_kpa) * sigma_of_hour(equation) *
           fourth_power(celsius + kelvin_offset);
}

double soil_heat_of_month(double before_c, double after_c) { return 0.07 * (after_c - before_c); }

double soil_heat_of_month_so_far(double before_c, double this_c) {
    return 0.14 * (this_c - before_c);
}

}  // namespace evenfall::weather
