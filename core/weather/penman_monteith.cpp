// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/weather/penman_monteith.h"

#include "core/input_error.h"
#include "core/reference/table.h"

#include <cmath>
#include <map>
#include <stdexcept>
#include <tuple>

namespace evenfall::weather {
namespace {

/// Joules to water: the inverse of the latent heat 2.45 MJ/kg as both papers print it.
constexpr double mm_per_mj = 0.408;

using Key = std::tuple<Equation, Surface, Step>;

Step step_named(std::string_view name) {
    if (name == "day") return Step::day;
    if (name == "hour_in_daylight") return Step::hour_in_daylight;
    if (name == "hour_at_night") return Step::hour_at_night;
    throw std::logic_error("reference_surfaces.csv: unknown step " + std::string(name));
}

std::map<Key, SurfaceConstants> read_constants() {
    std::map<Key, SurfaceConstants> all;
    for (const auto& row : reference::Table::named("reference_surfaces.csv").rows()) {
        const auto equation =
            row.text("equation") == "fao_56" ? Equation::fao_56 : Equation::asce_2005;
        const auto surface =
            row.text("surface") == "tall" ? Surface::tall_alfalfa : Surface::short_grass;
        all.emplace(
            Key{equation, surface, step_named(row.text("step"))},
            SurfaceConstants{row.number("cn"), row.number("cd"), row.number("soil_heat_share"), row.words("source")});
    }
    return all;
}

}  // namespace

const SurfaceConstants& surface_constants(Equation equation, Surface surface, Step step) {
    static const auto all = read_constants();
    const auto it = all.find({equation, surface, step});
    if (it == all.end()) {
        throw InputError(phrase("weather", "tall surface with FAO-56"),
                         phrase("weather", "the short surface; a tall reference is defined by ASCE-EWRI 2005 only"));
    }
    return it->second;
}

double combination_et(const CombinationTerms& t, const SurfaceConstants& c) {
    return (mm_per_mj * t.slope * (t.net_radiation - t.soil_heat) +
            t.psychrometric * c.cn / (t.celsius + 273.0) * t.wind_two_metres *
                (t.saturation - t.vapour)) /
           (t.slope + t.psychrometric * (1.0 + c.cd * t.wind_two_metres));
}

double hargreaves_samani(double tmax_c, double tmin_c, double extraterrestrial_mj) {
    return 0.0023 * (0.5 * (tmax_c + tmin_c) + 17.8) * std::sqrt(tmax_c - tmin_c) * mm_per_mj *
           extraterrestrial_mj;
}

}  // namespace evenfall::weather
