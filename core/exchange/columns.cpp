// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/columns.h"

#include "core/input_error.h"
#include "core/nearest.h"

#include <algorithm>
#include <array>

namespace evenfall::exchange {
namespace {

std::vector<KindSpec> make_kinds() {
    return {
        {Kind::sites, "sites",
         {{"site", "site", ""}, {"name", "name", ""}, {"organisation", "organisation", ""},
          {"latitude", "latitude", ""}, {"longitude", "longitude", ""},
          {"elevation_m", "elevation", "m"}, {"elevation_ft", "elevation", "ft"},
          {"time_zone", "time_zone", ""}, {"weather", "weather", ""},
          {"weather_power", "weather_power", ""}},
         {{"site", "name", "latitude", "elevation"}}},
        {Kind::meters, "meters",
         {{"meter", "meter", ""}, {"site", "site", ""}, {"unit", "unit", ""},
          {"multiplier", "multiplier", ""}, {"digits", "digits", ""}, {"parent", "parent", ""},
          {"installed", "installed", ""}, {"removed", "removed", ""}, {"replaces", "replaces", ""},
          {"size_in", "size", "in"}, {"size_mm", "size", "mm"},
          {"rated_flow_gpm", "rated_flow", "gpm"}, {"rated_flow_l_min", "rated_flow", "l_min"},
          {"rated_flow_l_s", "rated_flow", "l_s"}, {"rated_flow_m3_h", "rated_flow", "m3_h"}},
         {{"meter", "site", "unit"}}},
        {Kind::exchanges, "exchanges",
         {{"meter", "meter", ""}, {"time", "time", ""}, {"final", "final", ""},
          {"first", "first", ""}, {"unit", "unit", ""}, {"multiplier", "multiplier", ""},
          {"digits", "digits", ""}},
         {{"meter", "time", "final", "first"}}},
        {Kind::areas, "areas",
         {{"area", "area", ""}, {"site", "site", ""}, {"name", "name", ""},
          {"size_ft2", "size", "ft2"}, {"size_ac", "size", "ac"}, {"size_m2", "size", "m2"},
          {"size_ha", "size", "ha"}, {"shape_ft", "shape", "ft"}, {"shape_m", "shape", "m"},
          {"outline", "outline", ""}, {"outline_m2", "outline_m2", ""}, {"plant", "plant", ""}, {"coefficient", "coefficient", ""},
          {"head_type", "head_type", ""}, {"soil", "soil", ""},
          {"root_depth_in", "root_depth", "in"}, {"root_depth_mm", "root_depth", "mm"},
          {"slope_percent", "slope_percent", ""}, {"meter", "meter", ""}, {"share", "share", ""}},
         {{"area", "site", "size"}, {"area", "site", "shape"}, {"area", "outline", "outline_m2"}}},
        {Kind::weather_stations, "weather_stations",
         {{"station", "station", ""}, {"latitude", "latitude", ""}, {"longitude", "longitude", ""},
          {"elevation_m", "elevation", "m"}, {"elevation_ft", "elevation", "ft"},
          {"wind_height_m", "wind_height", "m"}, {"wind_height_ft", "wind_height", "ft"}},
         {{"station", "latitude"}}},
        {Kind::readings, "readings",
         {{"meter", "meter", ""}, {"time", "time", ""}, {"register", "register", ""},
          {"start", "start", ""}, {"end", "end", ""}, {"volume", "volume", ""},
          {"minutes", "minutes", ""}, {"kind", "kind", ""}},
         {{"meter", "time", "register"},
          {"meter", "start", "end", "volume"},
          {"meter", "time", "minutes", "volume"}}},
        {Kind::weather, "weather",
         {{"station", "station", ""}, {"date", "date", ""}, {"time", "time", ""},
          {"tmax_c", "tmax", "c"}, {"tmax_f", "tmax", "f"}, {"tmin_c", "tmin", "c"},
          {"tmin_f", "tmin", "f"}, {"tmean_c", "tmean", "c"}, {"tmean_f", "tmean", "f"},
          {"tdew_c", "tdew", "c"}, {"tdew_f", "tdew", "f"},
          {"rhmax_percent", "rhmax", "percent"}, {"rhmin_percent", "rhmin", "percent"},
          {"rhmean_percent", "rhmean", "percent"}, {"ea_kpa", "ea", "kpa"},
          {"rs_mj_m2", "rs", "mj_m2"}, {"rs_w_m2", "rs", "w_m2"}, {"rs_langley", "rs", "langley"},
          {"sunshine_h", "sunshine", "h"}, {"wind_m_s", "wind", "m_s"}, {"wind_mph", "wind", "mph"},
          {"wind_km_d", "wind", "km_d"}, {"rain_mm", "rain", "mm"}, {"rain_in", "rain", "in"},
          {"eto_mm", "eto", "mm"}, {"eto_in", "eto", "in"}},
         {{"date"}, {"time"}}},
        {Kind::hourly_weather, "hourly_weather",
         {{"station", "station", ""}, {"hour_start", "hour_start", ""}, {"hour_end", "hour_end", ""},
          {"utc_offset", "utc_offset", ""}, {"minutes", "minutes", ""}, {"tmax_c", "tmax", "c"},
          {"tmax_f", "tmax", "f"}, {"tmin_c", "tmin", "c"}, {"tmin_f", "tmin", "f"},
          {"tmean_c", "tmean", "c"}, {"tmean_f", "tmean", "f"}, {"tdew_c", "tdew", "c"},
          {"tdew_f", "tdew", "f"}, {"rhmean_percent", "rhmean", "percent"}, {"ea_kpa", "ea", "kpa"},
          {"rs_mj_m2", "rs", "mj_m2"}, {"rs_w_m2", "rs", "w_m2"}, {"rs_langley", "rs", "langley"},
          {"wind_m_s", "wind", "m_s"}, {"wind_mph", "wind", "mph"}, {"wind_km_d", "wind", "km_d"},
          {"rain_mm", "rain", "mm"}, {"rain_in", "rain", "in"}},
         {{"station", "hour_start"}, {"station", "hour_end"}}},
        {Kind::catches, "catches",
         {{"test", "test", ""}, {"area", "area", ""}, {"date", "date", ""},
          {"throat_area_cm2", "throat_area", "cm2"}, {"throat_area_in2", "throat_area", "in2"},
          {"minutes", "minutes", ""}, {"wind_mph", "wind", "mph"}, {"wind_m_s", "wind", "m_s"},
          {"lane_spacing_m", "lane_spacing", "m"}, {"lane_spacing_ft", "lane_spacing", "ft"},
          {"layout", "layout", ""}, {"can_size_ml", "can_size", "ml"},
          {"flow_gpm", "flow", "gpm"}, {"flow_l_min", "flow", "l_min"}, {"flow_l_s", "flow", "l_s"},
          {"flow_m3_h", "flow", "m3_h"}, {"travel_speed_ft_min", "travel_speed", "ft_min"},
          {"travel_speed_m_min", "travel_speed", "m_min"}, {"travel_speed_m_h", "travel_speed", "m_h"},
          {"edge_offset_ft", "edge_offset", "ft"}, {"edge_offset_m", "edge_offset", "m"},
          {"station", "station", ""}, {"station_minutes", "station_minutes", ""},
          {"opposite_pulls", "opposite_pulls", ""}, {"can", "can", ""}, {"x_m", "x", "m"},
          {"x_ft", "x", "ft"}, {"y_m", "y", "m"}, {"y_ft", "y", "ft"},
          {"distance_m", "distance", "m"}, {"distance_ft", "distance", "ft"}, {"side", "side", ""},
          {"volume_ml", "catch", "ml"}, {"depth_mm", "catch", "mm"}, {"depth_in", "catch", "in"},
          {"excluded", "excluded", ""}},
         {{"can", "catch"}}},
        {Kind::pressures, "pressures",
         {{"test", "test", ""}, {"place", "place", ""},
          {"pressure_psi", "pressure", "psi"}, {"pressure_kpa", "pressure", "kpa"},
          {"pressure_bar", "pressure", "bar"}, {"nozzle_low_psi", "nozzle_low", "psi"},
          {"nozzle_low_kpa", "nozzle_low", "kpa"}, {"nozzle_low_bar", "nozzle_low", "bar"},
          {"nozzle_high_psi", "nozzle_high", "psi"}, {"nozzle_high_kpa", "nozzle_high", "kpa"},
          {"nozzle_high_bar", "nozzle_high", "bar"}},
         {{"place", "pressure"}}},
        {Kind::findings, "findings",
         {{"test", "test", ""}, {"finding", "finding", ""}, {"place", "place", ""},
          {"count", "count", ""}, {"severity", "severity", ""}, {"corrected", "corrected", ""},
          {"note", "note", ""}},
         {{"finding"}}},
        {Kind::bills, "bills",
         {{"meter", "meter", ""}, {"from", "from", ""}, {"to", "to", ""},
          {"billed_gal", "billed", "gal"}, {"billed_kgal", "billed", "kgal"},
          {"billed_ccf", "billed", "ccf"}, {"billed_ft3", "billed", "ft3"},
          {"billed_m3", "billed", "m3"}, {"billed_acre_ft", "billed", "acre_ft"}},
         {{"meter", "from", "to", "billed"}}},
        {Kind::plantings, "plantings",
         {{"area", "area", ""}, {"kind", "kind", ""}, {"from", "from", ""}, {"to", "to", ""},
          {"key", "key", ""}, {"coefficient", "coefficient", ""}},
         {{"area", "kind", "from"}}},
        {Kind::prices, "prices",
         {{"rate", "rate", ""}, {"site", "site", ""}, {"from", "from", ""}, {"to", "to", ""},
          {"unit", "unit", ""}, {"currency", "currency", ""}, {"tier_up_to", "tier_up_to", ""},
          {"price", "price", ""}, {"fixed_per_month", "fixed_per_month", ""},
          {"sewer_price", "sewer_price", ""}, {"sewer_share", "sewer_share", ""}},
         {{"rate", "from", "unit", "currency", "price"}}},
        {Kind::energy, "energy",
         {{"rate", "rate", ""}, {"site", "site", ""}, {"from", "from", ""}, {"to", "to", ""},
          {"currency", "currency", ""}, {"price_per_kwh", "price_per_kwh", ""}},
         {{"rate", "from", "currency", "price_per_kwh"}}},
        {Kind::pumps, "pumps",
         {{"pump", "pump", ""}, {"site", "site", ""}, {"lift_ft", "lift", "ft"},
          {"lift_m", "lift", "m"}, {"pressure_psi", "pressure", "psi"},
          {"pressure_kpa", "pressure", "kpa"}, {"pressure_bar", "pressure", "bar"},
          {"friction_ft", "friction", "ft"}, {"friction_m", "friction", "m"},
          {"efficiency", "efficiency", ""}, {"share", "share", ""}},
         {{"pump", "site", "efficiency"}}},
        {Kind::stations, "stations",
         {{"station", "station", ""}, {"area", "area", ""}, {"name", "name", ""},
          {"rate_in_h", "rate", "in_h"}, {"rate_mm_h", "rate", "mm_h"},
          {"rate_source", "rate_source", ""}, {"arc_degrees", "arc_degrees", ""},
          {"flow_gpm", "flow", "gpm"}, {"flow_l_min", "flow", "l_min"},
          {"flow_l_s", "flow", "l_s"}, {"flow_m3_h", "flow", "m3_h"}},
         {{"station", "area"}}},
        {Kind::watering_rules, "watering_rules",
         {{"site", "site", ""}, {"days", "days", ""}, {"starts", "starts", ""},
          {"ends", "ends", ""}, {"stations_at_once", "stations_at_once", ""}},
         {{"site", "days", "starts", "ends"}}},
        {Kind::area_settings, "area_settings",
         {{"area", "area", ""}, {"off_target", "off_target", ""},
          {"off_target_source", "off_target_source", ""}, {"special", "special", ""},
          {"water_ec_ds_m", "water_ec", ""}, {"soil_ec_limit_ds_m", "soil_ec_limit", ""}},
         {{"area", "off_target"}, {"area", "special"}, {"area", "water_ec"}}},
    };
}

const std::vector<KindSpec>& kinds() {
    static const std::vector<KindSpec> all = make_kinds();
    return all;
}

const ColumnSpec* column_named(const KindSpec& spec, std::string_view key) {
    for (const ColumnSpec& c : spec.columns) {
        if (c.name == key) return &c;
    }
    return nullptr;
}

std::vector<std::string_view> names_of(const KindSpec& spec) {
    std::vector<std::string_view> names;
    for (const ColumnSpec& c : spec.columns) names.push_back(c.name);
    return names;
}

/// "size_ft2, size_ac or size_m2"
Sentence names_of_group(const KindSpec& spec, std::string_view group) {
    std::vector<std::string_view> names;
    for (const ColumnSpec& c : spec.columns) {
        if (c.group == group) names.push_back(c.name);
    }
    std::string out;
    for (std::size_t i = 0; i + 1 < names.size(); ++i) {
        if (i != 0) out += ", ";
        out += names[i];
    }
    return out.empty() ? Sentence(names.back()) : Sentence(phrase("exchange", "%1 or %2"), out, names.back());
}

struct Fit {
    std::size_t known = 0;
    std::size_t unknown = 0;
    std::size_t missing = 0;
};

std::size_t missing_in(const std::vector<std::string_view>& set,
                       const std::vector<std::string_view>& groups) {
    std::size_t missing = 0;
    for (std::string_view g : set) {
        if (std::find(groups.begin(), groups.end(), g) == groups.end()) ++missing;
    }
    return missing;
}

Fit fit_of(const KindSpec& spec, std::span<const std::string> header) {
    Fit fit;
    std::vector<std::string_view> groups;
    for (const std::string& h : header) {
        const ColumnSpec* c = column_named(spec, column_key(h));
        if (c == nullptr) {
            ++fit.unknown;
        } else {
            ++fit.known;
            groups.push_back(c->group);
        }
    }
    fit.missing = spec.columns.size();
    for (const auto& set : spec.needed) fit.missing = std::min(fit.missing, missing_in(set, groups));
    return fit;
}

std::string header_text(std::span<const std::string> header) {
    std::string out;
    for (const std::string& h : header) {
        if (!out.empty()) out += ", ";
        out += h;
    }
    return out;
}

std::string kind_names() {
    std::string out;
    for (const KindSpec& k : kinds()) {
        if (!out.empty()) out += ", ";
        out += k.name;
    }
    return out;
}

Issue unknown_column(const KindSpec& spec, const std::string& header, const Place& place) {
    const auto names = names_of(spec);
    const std::string_view near = nearest_name(column_key(header), names);
    Sentence expected(phrase("exchange", "a column of the %1 table"), spec.name);
    if (!near.empty()) {
        expected = Sentence(phrase("exchange", "a column of the %1 table; the nearest is %2"), spec.name, near);
        const Sentence all = names_of_group(spec, column_named(spec, near)->group);
        if (all != near) expected = Sentence(phrase("exchange", "%1 (known: %2)"), expected, all);
    }
    return {place, header, expected};
}

std::vector<Issue> missing_columns(const KindSpec& spec, const std::vector<std::string_view>& groups,
                                   const Place& place) {
    const std::vector<std::string_view>* best = &spec.needed.front();
    for (const auto& set : spec.needed) {
        if (missing_in(set, groups) < missing_in(*best, groups)) best = &set;
    }
    std::vector<Issue> issues;
    for (std::string_view g : *best) {
        if (std::find(groups.begin(), groups.end(), g) != groups.end()) continue;
        const Sentence names = names_of_group(spec, g);
        issues.push_back({{place.file, place.row, names.english()},
                          phrase("exchange", "no such column"),
                          {phrase("exchange", "a column %1 in a %2 table"), names, spec.name}});
    }
    return issues;
}

}  // namespace

std::string_view name_of(Kind kind) { return spec_of(kind).name; }

Kind kind_named(std::string_view name) {
    for (const KindSpec& k : kinds()) {
        if (k.name == name) return k.kind;
    }
    throw InputError(std::string(name), {phrase("exchange", "one of the kinds %1"), kind_names()});
}

std::span<const KindSpec> all_kinds() { return kinds(); }

const KindSpec& spec_of(Kind kind) {
    return *std::find_if(kinds().begin(), kinds().end(),
                         [&](const KindSpec& k) { return k.kind == kind; });
}

std::string column_key(std::string_view header) {
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    while (!header.empty() && blank(header.front())) header.remove_prefix(1);
    while (!header.empty() && blank(header.back())) header.remove_suffix(1);
    std::string key(header);
    for (char& c : key) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return key;
}

std::string_view nearest_name(std::string_view typed, std::span<const std::string_view> known) {
    // Beyond this length it is no typing error, and the table of distances must stay small.
    if (typed.size() > 64) return {};
    std::string_view best;
    std::size_t least = std::max<std::size_t>(2, typed.size() / 3) + 1;
    for (std::string_view k : known) {
        const std::size_t d = letters_apart(typed, k);
        if (d < least) {
            least = d;
            best = k;
        }
    }
    return best;
}

ColumnIndex::ColumnIndex(const KindSpec& spec, std::span<const std::string> header,
                         const std::string& file, std::size_t header_row)
    : spec_(&spec) {
    std::vector<Issue> issues;
    std::vector<std::string_view> groups;
    for (std::size_t i = 0; i < header.size(); ++i) {
        const Place place{file, header_row, header[i]};
        const ColumnSpec* c = column_named(spec, column_key(header[i]));
        if (c == nullptr) {
            issues.push_back(unknown_column(spec, header[i], place));
            continue;
        }
        if (const Found* other = find(c->group)) {
            issues.push_back({place, header[i],
                              {phrase("exchange", "one column for this, and there is %1"), other->name}});
            continue;
        }
        groups.push_back(c->group);
        found_.emplace_back(c->group, Found{i, c->unit, c->name});
    }
    const auto missing = missing_columns(spec, groups, {file, header_row, ""});
    issues.insert(issues.end(), missing.begin(), missing.end());
    if (!issues.empty()) throw InputError(std::move(issues));
}

const ColumnIndex::Found* ColumnIndex::find(std::string_view group) const {
    for (const auto& [name, found] : found_) {
        if (name == group) return &found;
    }
    return nullptr;
}

Kind kind_of_header(std::span<const std::string> header, const std::string& file) {
    const KindSpec* fitting = nullptr;
    const KindSpec* nearest = nullptr;
    std::size_t most = 0;
    for (const KindSpec& k : kinds()) {
        const Fit fit = fit_of(k, header);
        if (fit.unknown == 0 && fit.missing == 0) {
            if (fitting != nullptr) {
                throw InputError(Issue{{file, 1, ""}, header_text(header),
                                       {phrase("exchange", "a kind of table; both %1 and %2 have these columns, so name it"),
                                        fitting->name, k.name}});
            }
            fitting = &k;
        }
        // Needed columns weigh more: a table without them is hardly of that kind.
        const std::size_t weight = 3 * fit.known >= fit.missing ? 3 * fit.known - fit.missing : 0;
        if (fit.known > 0 && weight > most) {
            most = weight;
            nearest = &k;
        }
    }
    if (fitting != nullptr) return fitting->kind;
    if (nearest != nullptr) return nearest->kind;
    throw InputError(Issue{{file, 1, ""}, header_text(header),
                           {phrase("exchange", "the header of one of the tables %1"), kind_names()}});
}

}  // namespace evenfall::exchange
