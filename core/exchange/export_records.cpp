// SPDX-License-Identifier: GPL-3.0-or-later
// Sites, meters, exchanges, areas, outlines, weather stations, bills and plantings.
#include "core/exchange/export_run.h"
#include "core/store/bill_store.h"
#include "core/store/meter_store.h"
#include "core/store/outline_store.h"
#include "core/store/planting_store.h"
#include "core/store/site_store.h"
#include "core/store/weather_store.h"

#include <algorithm>
#include <map>
#include <set>

namespace evenfall::exchange {
namespace {

using units::format_shortest;

/// A longer cell is refused when it is read.
constexpr std::size_t longest_cell = std::size_t{1} << 20U;

Record record_of(const meter::Meter& m) {
    // The register of an hour counter has the unit h; what it counts is in the rated flow.
    const std::string unit = m.rated_flow ? "h" : std::string(m.unit.name);
    return {{"meter", "", m.code},
            {"site", "", m.site},
            {"unit", "", unit},
            {"multiplier", "", format_shortest(m.multiplier)},
            {"digits", "", text_of(m.digits)},
            {"parent", "", m.parent},
            {"installed", "", text_of(m.installed)},
            {"removed", "", text_of(m.removed)},
            {"replaces", "", m.replaces},
            field_of("size", m.size),
            field_of("rated_flow", m.rated_flow)};
}

/// Whether sizes or flows stand in more than one unit, so that the meters need several tables.
bool several_tables(const std::vector<meter::Meter>& meters) {
    std::set<std::string_view> sizes;
    std::set<std::string_view> flows;
    for (const auto& m : meters) {
        if (m.size) sizes.insert(m.size->unit.name);
        if (m.rated_flow) flows.insert(m.rated_flow->unit.name);
    }
    return sizes.size() > 1 || flows.size() > 1;
}

/// How many steps of "parent" and "replaces" lead up from each meter. A table may name the meters
/// of tables before it, so those of one step go together.
std::map<std::string, std::size_t> steps_of(const std::vector<meter::Meter>& meters) {
    std::map<std::string, std::size_t> steps;
    for (const auto& m : meters) steps[m.code] = 0;
    // A circle cannot be stored: every round settles one step at least.
    for (std::size_t round = 0; round < meters.size(); ++round) {
        bool moved = false;
        for (const auto& m : meters) {
            std::size_t least = 0;
            for (const std::string& above : {m.parent, m.replaces}) {
                if (!above.empty()) least = std::max(least, steps[above] + 1);
            }
            if (steps[m.code] >= least) continue;
            steps[m.code] = least;
            moved = true;
        }
        if (!moved) break;
    }
    return steps;
}

}  // namespace

std::string text_of(const std::optional<double>& value) { return value ? format_shortest(*value) : std::string(); }
std::string text_of(const std::optional<int>& value) { return value ? std::to_string(*value) : std::string(); }
std::string text_of(const std::optional<calendar::Date>& date) {
    return date ? calendar::format_date(*date) : std::string();
}

void export_sites(ExportRun& run) {
    const auto sites = store::sites(run.book);
    write_tables(run.folder, Kind::sites, "sites", [&](const TakeRecord& take) {
        for (const site::Site& s : sites) {
            take({{"site", "", s.code},
                  {"name", "", s.name},
                  {"organisation", "", s.organisation},
                  {"latitude", "", format_shortest(s.latitude)},
                  {"longitude", "", text_of(s.longitude)},
                  field_of("elevation", s.elevation),
                  {"time_zone", "", s.time_zone},
                  {"weather", "", s.weather},
                  {"weather_power", "", text_of(s.weather_power)}});
        }
    }, run.result.files);
}

void export_weather_stations(ExportRun& run) {
    const auto stations = store::weather_stations(run.book);
    write_tables(run.folder, Kind::weather_stations, "weather_stations", [&](const TakeRecord& take) {
        for (const store::WeatherStation& s : stations) {
            if (!s.latitude) continue;  // known by its weather only, which brings it back
            // The height is kept in metres, in whatever unit it was typed.
            take({{"station", "", s.code},
                  {"latitude", "", text_of(s.latitude)},
                  {"longitude", "", text_of(s.longitude)},
                  field_of("elevation", s.elevation),
                  {"wind_height", s.wind_height_m ? "m" : "", text_of(s.wind_height_m)}});
        }
    }, run.result.files);
}

void export_meters(ExportRun& run) {
    const auto meters = store::meters(run.book, "");
    const bool by_step = several_tables(meters);
    const auto steps = steps_of(meters);
    std::size_t last = 0;
    if (by_step) {
        for (const auto& [code, step] : steps) last = std::max(last, step);
    }
    for (std::size_t step = 0; step <= last; ++step) {
        const std::string stem = step == 0 ? "meters" : "meters_step_" + std::to_string(step + 1);
        write_tables(run.folder, Kind::meters, stem, [&](const TakeRecord& take) {
            for (const meter::Meter& m : meters) {
                if (!by_step || steps.at(m.code) == step) take(record_of(m));
            }
        }, run.result.files);
    }
}

void export_exchanges(ExportRun& run) {
    const auto meters = store::meters(run.book, "");
    write_tables(run.folder, Kind::exchanges, "exchanges", [&](const TakeRecord& take) {
        for (const meter::Meter& m : meters) {
            for (const meter::Exchange& x : m.exchanges) {
                take({{"meter", "", m.code},
                      {"time", "", calendar::format_instant(x.at)},
                      {"final", "", format_shortest(x.final_value)},
                      {"first", "", format_shortest(x.first_value)},
                      {"unit", "", x.unit ? std::string(x.unit->name) : std::string()},
                      {"multiplier", "", text_of(x.multiplier)},
                      {"digits", "", text_of(x.digits)}});
            }
        }
    }, run.result.files);
}

void export_areas(ExportRun& run) {
    const auto areas = store::areas(run.book, "");
    write_tables(run.folder, Kind::areas, "areas", [&](const TakeRecord& take) {
        for (const site::Area& a : areas) {
            take({{"area", "", a.code},
                  {"site", "", a.site},
                  {"name", "", a.name},
                  field_of("size", std::optional(a.size)),
                  {"plant", "", a.plant},
                  {"coefficient", "", text_of(a.coefficient)},
                  {"head_type", "", a.head_type},
                  {"soil", "", a.soil},
                  field_of("root_depth", a.root_depth),
                  {"slope_percent", "", text_of(a.slope_percent)},
                  {"meter", "", a.meter},
                  {"share", "", text_of(a.share)}});
        }
    }, run.result.files);
}

void export_outlines(ExportRun& run) {
    // Named so that it is read after the areas in whatever order a shell lists the files.
    const auto areas = store::areas(run.book, "");
    std::set<std::string> too_long;
    write_tables(run.folder, Kind::areas, "areas_outlines", [&](const TakeRecord& take) {
        for (const site::Area& a : areas) {
            const auto outline = store::find_outline(run.book, a.code);
            if (!outline) continue;
            if (outline->geojson.size() >= longest_cell) {
                too_long.insert(a.code);
                continue;
            }
            take({{"area", "", a.code},
                  {"outline", "", outline->geojson},
                  {"outline_m2", "", format_shortest(outline->measured.in(units::square_metre))}});
        }
    }, run.result.files);
    for (const std::string& area : too_long) {
        run.result.left_out.push_back("The outline of area " + area + ": it is longer than the cell of a table may be.");
    }
}

void export_bills(ExportRun& run) {
    const auto meters = store::meters(run.book, "");
    write_tables(run.folder, Kind::bills, "bills", [&](const TakeRecord& take) {
        for (const meter::Meter& m : meters) {
            for (const meter::Bill& b : store::bills(run.book, m.code)) {
                take({{"meter", "", b.meter},
                      {"from", "", calendar::format_date(b.from)},
                      {"to", "", calendar::format_date(b.to)},
                      field_of("billed", std::optional(b.volume))});
            }
        }
    }, run.result.files);
}

void export_plantings(ExportRun& run) {
    const auto sites = store::sites(run.book);
    write_tables(run.folder, Kind::plantings, "plantings", [&](const TakeRecord& take) {
        for (const site::Site& s : sites) {
            for (const weather::Planting& p : store::plantings(run.book, s.code)) {
                take({{"area", "", p.area},
                      {"kind", "", std::string(weather::name_of(p.kind))},
                      {"from", "", calendar::format_date(p.from)},
                      {"to", "", text_of(p.to)},
                      {"key", "", p.key},
                      {"coefficient", "", text_of(p.coefficient)}});
            }
        }
    }, run.result.files);
}

}  // namespace evenfall::exchange
