// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/measure.h"

#include <optional>
#include <string>
#include <vector>

/// The places a book answers for. Plain records: what was typed, nothing computed.
/// Codes (`site`, `area`, ...) are the user's own short names, unique in a book per kind.
/// An empty optional or text is "not recorded", never zero.
namespace evenfall::site {

struct Site {
    std::string code;
    std::string name;
    std::string organisation;       ///< empty when not recorded
    double latitude = 0.0;          ///< degrees north, -90 to 90
    std::optional<double> longitude;///< degrees east, -180 to 180
    std::optional<units::Typed<units::Length>> elevation;
    std::string time_zone = "UTC0"; ///< POSIX rule, see core/calendar/time_zone.h
    std::string weather;            ///< code of its weather station, or of several with ";" between
                                    ///< them, mixed by distance; empty when not recorded
    std::optional<double> weather_power;  ///< of the distance, where stations are mixed; empty: 2
};

/// What inverse-distance weighting takes where no power is recorded. [practice]
inline constexpr double usual_weather_power = 2.0;

/// The codes in `Site::weather`, in their order, each once.
std::vector<std::string> weather_codes(const Site& site);

/// A piece of turf that is watered as one.
struct Area {
    std::string code;
    std::string site;
    std::string name;
    units::Typed<units::Area> size;
    std::string plant;              ///< key in schemas/reference/plants.csv, or free text
    std::optional<double> coefficient;  ///< landscape or crop coefficient, replaces the plant's own
    std::string head_type;          ///< key in schemas/reference/head_types.csv
    std::string soil;               ///< USDA texture, key in schemas/reference/soils.csv
    std::optional<units::Typed<units::Depth>> root_depth;
    std::optional<double> slope_percent;
    std::string meter;              ///< code of the meter that feeds it
    std::optional<double> share;    ///< of that meter's volume, 0 to 1; empty: by area x coefficient
};

}  // namespace evenfall::site
