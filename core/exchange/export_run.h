// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/date.h"
#include "core/exchange/export.h"
#include "core/units/measure.h"

#include <optional>
#include <string>
#include <string_view>

/// Shared by the files that write the tables of a book; not for use outside core/exchange.
namespace evenfall::exchange {

struct ExportRun {
    const store::Book& book;
    const std::filesystem::path& folder;
    ExportResult& result;
};

void export_sites(ExportRun& run);
void export_weather_stations(ExportRun& run);
void export_meters(ExportRun& run);
void export_exchanges(ExportRun& run);
void export_areas(ExportRun& run);
void export_outlines(ExportRun& run);
void export_bills(ExportRun& run);
void export_plantings(ExportRun& run);
void export_readings(ExportRun& run);
void export_weather(ExportRun& run);
void export_hourly_weather(ExportRun& run);
void export_catches(ExportRun& run);
void export_pressures(ExportRun& run);
void export_findings(ExportRun& run);
void export_prices(ExportRun& run);
void export_energy(ExportRun& run);
void export_pumps(ExportRun& run);
void export_controller_stations(ExportRun& run);
void export_watering_rules(ExportRun& run);
void export_area_settings(ExportRun& run);
void export_plans(ExportRun& run);

/// "12.5"; empty where not recorded.
std::string text_of(const std::optional<double>& value);
std::string text_of(const std::optional<int>& value);
std::string text_of(const std::optional<calendar::Date>& date);

/// A value with the unit it was typed in.
template <class Q>
Field field_of(std::string_view group, const std::optional<units::Typed<Q>>& value) {
    if (!value) return {group, "", ""};
    return {group, value->unit.name, units::format_shortest(value->value)};
}

}  // namespace evenfall::exchange
