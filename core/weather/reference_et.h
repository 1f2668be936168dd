// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/weather/penman_monteith.h"
#include "core/weather/weather_day.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Reference evapotranspiration of a day from what the station recorded.
///
/// In this order:
///   1. the station's own ETo column, as recorded and named as such (short surface only);
///   2. Hargreaves-Samani, flagged, when temperatures are all there is (short surface only);
///   3. the combination equation; each missing input is replaced only as FAO-56 chapter 3 says,
///      and each replacement is flagged:
///      humidity   vapour pressure, else dew point, else RHmax with RHmin, else RHmax, else RHmin,
///                 else RHmean, else dew point = Tmin - offset;
///      radiation  measured, else from sunshine hours (Angstrom), else from the temperature range;
///      wind       measured and brought to 2 m, else 2 m/s;
///   4. nothing, with a flag that says why. A gap never becomes a zero.
/// A value that cannot be true (humidity of 180 %, radiation above what arrives outside the
/// atmosphere, a negative wind) counts as not recorded and is flagged.
///
/// Defaults and limits: schemas/reference/reference_et_defaults.csv and weather_limits.csv.
/// Sources: FAO-56 chapters 2 to 4; ASCE-EWRI 2005; Hargreaves & Samani (1985) Applied
///   Engineering in Agriculture 1(2):96-99.
/// Tests: tests/weather/reference_et_test.cpp
namespace evenfall::weather {

/// Whether large water lies near: it sets how radiation is told from the temperature range.
enum class Siting { interior, coastal };

struct StationSetting {
    double latitude = 0.0;                        ///< degrees north, -90 to 90
    units::Length elevation;                      ///< above sea level
    units::Length wind_height = 2.0 * units::metre;  ///< of the anemometer above grass
    Surface surface = Surface::short_grass;       ///< named in every result
    Equation equation = Equation::asce_2005;      ///< named in every result
    std::optional<double> angstrom_a = {};        ///< calibrated; both or neither
    std::optional<double> angstrom_b = {};
    std::optional<double> albedo = {};            ///< empty: 0.23
    std::optional<Siting> siting = {};            ///< empty: taken as interior, flagged where used
    double dew_point_offset = 0.0;                ///< K below Tmin, where humidity is missing; 2 to 3 in arid places
    bool ignore_recorded = false;                 ///< compute even where the station gives ETo
};

struct ReferenceEt {
    calendar::Date date;
    std::optional<units::Depth> et;
    Sentence method;
    std::vector<std::string> flags;  ///< what was assumed or refused; empty: all inputs measured
    Phrase source;                   ///< publication behind the method
};

/// @throws InputError when the setting itself is impossible: latitude beyond 90 degrees, an
///   anemometer below 0.5 m, only one Angstrom coefficient, a tall surface with FAO-56
ReferenceEt reference_et(const WeatherDay& day, const StationSetting& setting);

/// Throws as reference_et does; for callers that want to know before the first day.
void check_setting(const StationSetting& setting);

/// Wind at 2 m in m/s, of a day or an hour: what was recorded at the anemometer's height, or the
/// stand-in for missing wind, flagged; FAO-56 raises a lower one to its least.
double wind_at_two_metres(std::optional<units::Speed> recorded, const StationSetting& setting,
                          std::vector<std::string>& flags);

enum class MethodStep { daily, hourly };
/// "ASCE-EWRI 2005 daily, short surface" and the like: the full method without replacements.
Phrase method_name(Equation equation, Surface surface, MethodStep step);

}  // namespace evenfall::weather
