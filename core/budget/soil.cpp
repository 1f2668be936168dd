// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/soil.h"

#include "core/input_error.h"
#include "core/reference/table.h"
#include "core/units/number.h"

#include <algorithm>
#include <array>
#include <span>
#include <stdexcept>
#include <utility>

namespace evenfall::budget {
namespace {

using reference::Row;
using reference::Table;

constexpr std::string_view stand_in_soil = "loam";
constexpr std::string_view stand_in_plant = "cool_season";

const Row& row_of(std::string_view table, std::string_view key) {
    const Row* row = Table::named(table).find("key", key);
    if (row == nullptr) throw std::logic_error(std::string(table) + " has no row " + std::string(key));
    return *row;
}

/// The row of the area's texture, or the stand-in and the note that it was assumed.
std::pair<const Row*, bool> texture_row(std::string_view table, const site::Area& area) {
    if (const Row* row = Table::named(table).find_typed(area.soil)) return {row, false};
    return {&row_of(table, stand_in_soil), true};
}

struct SlopeColumn {
    double from_percent;
    std::string_view name;
};

/// The last column whose class begins at or below the area's slope.
std::string_view column_at(std::span<const SlopeColumn> columns, const site::Area& area) {
    const double slope = area.slope_percent.value_or(0.0);
    if (!(slope >= 0.0 && slope <= 100.0)) {
        throw InputError(units::format_shortest(slope) + " %",
                         {phrase("budget", "a slope from 0 to 100 % for area %1"), area.code});
    }
    std::string_view name = columns.front().name;
    for (const auto& column : columns) {
        if (slope >= column.from_percent) name = column.name;
    }
    return name;
}

std::string source_of(const Row& row, bool assumed) {
    return std::string(row.source()) + (assumed ? " (loam assumed)" : "");
}

}  // namespace

HoldingCapacity holding_capacity(const site::Area& area) {
    const auto [row, assumed] = texture_row("soils.csv", area);
    const auto low = row->maybe_number("available_low");
    const auto high = row->maybe_number("available_high");
    Sentence name = row->words("name");
    if (assumed) {
        const Phrase why =
            area.soil.empty() ? phrase("budget", "soil not recorded") : phrase("budget", "soil not in the data");
        name = Sentence::joined({name, why}, ", ");
    }
    if (low && high) {
        return {0.5 * (*low + *high),
                {phrase("budget", "middle of FAO-56 Table 19, %1"), name},
                row->words("source"),
                assumed};
    }
    const double inches = 0.5 * (row->number("inches_per_foot_low") +
                                 row->number("inches_per_foot_high"));
    return {inches / 12.0, {phrase("budget", "middle of inches per foot, %1"), name}, row->words("source"), assumed};
}

RootDepth root_depth(const site::Area& area) {
    if (area.root_depth) {
        const auto depth = area.root_depth->quantity();
        if (!(depth.si() > 0.0 && depth.si() <= 2.0)) {
            throw InputError(area.root_depth->text(),
                             {phrase("budget", "a root depth above 0 and at most 2 m for area %1"), area.code});
        }
        return {depth, phrase("budget", "the area's record"), false};
    }
    const Row& row = row_of("root_zone_defaults.csv", "managed_root_depth");
    return {units::Depth::from_si(row.number("value")), row.words("source"), true};
}

units::Depth available_water(const HoldingCapacity& capacity, const RootDepth& roots) {
    return capacity.share * roots.depth;
}

DepletionShare depletion_share(const site::Area& area) {
    const Row* row = Table::named("plants.csv").find_typed(area.plant);
    const bool assumed = row == nullptr;
    if (assumed) row = &row_of("plants.csv", stand_in_plant);
    return {row->number("p"), row->words("source"), assumed};
}

double adjusted_depletion_share(double p, units::Depth crop_et) {
    return std::clamp(p + 0.04 * (5.0 - crop_et.in(units::millimetre)), 0.1, 0.8);
}

Intake intake_rate(const site::Area& area) {
    static constexpr std::array columns{SlopeColumn{0.0, "slope_0"}, SlopeColumn{5.0, "slope_5"},
                                        SlopeColumn{8.0, "slope_8"}, SlopeColumn{12.0, "slope_12"},
                                        SlopeColumn{16.0, "slope_16"}};
    const auto [row, assumed] = texture_row("soil_intake.csv", area);
    return {row->number(column_at(columns, area)) * units::inch_per_hour, source_of(*row, assumed),
            assumed || !area.slope_percent};
}

Accumulation surface_accumulation(const site::Area& area) {
    static constexpr std::array columns{SlopeColumn{0.0, "slope_0"}, SlopeColumn{4.0, "slope_4"},
                                        SlopeColumn{7.0, "slope_7"},
                                        SlopeColumn{13.0, "slope_13"}};
    const auto [row, assumed] = texture_row("soil_accumulation.csv", area);
    return {row->number(column_at(columns, area)) * units::inch, source_of(*row, assumed),
            assumed || !area.slope_percent};
}

units::Depth most_infiltrated(units::Depth mean_irrigation, units::Rate mean_rate,
                              units::Rate intake, units::Depth accumulation, int cycles) {
    if (!(mean_rate.si() > 0.0)) {
        throw InputError(units::format_shortest(mean_rate.in(units::millimetre_per_hour)) + " mm/h",
                         phrase("budget", "an application rate above 0"));
    }
    if (cycles < 1) throw InputError(cycles, phrase("budget", "one cycle or more"));
    return intake * (mean_irrigation / mean_rate) + static_cast<double>(cycles) * accumulation;
}

}  // namespace evenfall::budget
