// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/weather/air.h"

#include <string_view>

/// The combination equation of both papers, one step at a time:
///
///     ET = [0.408 D (Rn - G) + g Cn/(T + 273) u2 (es - ea)] / [D + g (1 + Cd u2)]
///       D   slope of the saturation curve [kPa/C]     g  psychrometric constant [kPa/C]
///       Rn  net radiation, G soil heat [MJ/m2/step]   u2 wind at 2 m [m/s]
///       es, ea  saturation and actual vapour pressure [kPa];  T mean air temperature [C]
///
/// Cn, Cd and the hourly G share depend on paper, step, surface and daylight and are data:
/// schemas/reference/reference_surfaces.csv.
///
/// Source: FAO-56 Eq. 6 and 53; ASCE-EWRI 2005 Eq. 1 and its table of constants.
/// Tests: tests/weather/reference_et_test.cpp, tests/weather/hourly_et_test.cpp
namespace evenfall::weather {

/// Where a method stands: the same words in every language.
constexpr Phrase citation(const char* words) { return {"", words}; }
/// The method of a figure that there is not.
inline constexpr Phrase no_method = phrase("weather", "none");

/// The reference crop: clipped grass of 0.12 m, or alfalfa of 0.50 m (ASCE-EWRI 2005 only).
enum class Surface { short_grass, tall_alfalfa };
enum class Step { day, hour_in_daylight, hour_at_night };

struct SurfaceConstants {
    double cn;
    double cd;
    double soil_heat_share;  ///< G/Rn; 0 for a day
    Phrase source;
};

/// @throws InputError for a pair the papers do not define: a tall surface with FAO-56
const SurfaceConstants& surface_constants(Equation equation, Surface surface, Step step);

/// What the equation needs, in the units above.
struct CombinationTerms {
    double slope;
    double psychrometric;
    double net_radiation;
    double soil_heat;
    double celsius;
    double wind_two_metres;
    double saturation;
    double vapour;
};

/// ET in mm per step. Below zero when dew forms; the caller decides what that means.
double combination_et(const CombinationTerms& terms, const SurfaceConstants& constants);

/// Hargreaves-Samani (1985) as FAO-56 Eq. 52 gives it [mm/d]: 0.0023 (Tmean + 17.8)
/// sqrt(Tmax - Tmin) Ra with Ra as water, 0.408 x its MJ/m2/d. Short grass only.
/// Left in MJ, Ra would make the result 2.45 times too large.
double hargreaves_samani(double tmax_c, double tmin_c, double extraterrestrial_mj);

}  // namespace evenfall::weather
