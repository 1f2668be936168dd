// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/air.h"

#include <cmath>

namespace evenfall::weather {

double pressure_at(double elevation_m) {
    return 101.3 * std::pow((293.0 - 0.0065 * elevation_m) / 293.0, 5.26);
}

double psychrometric_constant(double pressure_kpa) { return 0.000665 * pressure_kpa; }

double saturation_pressure(double celsius) {
    return 0.6108 * std::exp(17.27 * celsius / (celsius + 237.3));
}

double saturation_slope(double celsius, Equation equation) {
    const double t = celsius + 237.3;
    if (equation == Equation::fao_56) return 4098.0 * saturation_pressure(celsius) / (t * t);
    return 2503.0 * std::exp(17.27 * celsius / t) / (t * t);
}

double mean_saturation_pressure(double tmax_c, double tmin_c) {
    return 0.5 * (saturation_pressure(tmax_c) + saturation_pressure(tmin_c));
}

double vapour_from_both_humidities(double tmax_c, double tmin_c, double rhmax, double rhmin) {
    return 0.5 * (saturation_pressure(tmin_c) * rhmax / 100.0 +
                  saturation_pressure(tmax_c) * rhmin / 100.0);
}

double vapour_from_highest_humidity(double tmin_c, double rhmax) {
    return saturation_pressure(tmin_c) * rhmax / 100.0;
}

double vapour_from_lowest_humidity(double tmax_c, double rhmin) {
    return saturation_pressure(tmax_c) * rhmin / 100.0;
}

double vapour_from_mean_humidity(double tmax_c, double tmin_c, double rhmean) {
    return rhmean / 100.0 * mean_saturation_pressure(tmax_c, tmin_c);
}

double vapour_from_wet_bulb(double dry_c, double wet_c, double pressure_kpa, Airing airing) {
    const double a = airing == Airing::ventilated ? 0.000662
                     : airing == Airing::natural  ? 0.000800
                                                  : 0.001200;
    return saturation_pressure(wet_c) - a * pressure_kpa * (dry_c - wet_c);
}

double wind_share_at_two_metres(double height_m) {
    return 4.87 / std::log(67.8 * height_m - 5.42);
}

}  // namespace evenfall::weather
