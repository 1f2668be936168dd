// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/export.h"

#include "core/exchange/export_run.h"
#include "core/store/book_contents.h"

#include <array>
#include <utility>

namespace evenfall::exchange {
namespace {

using Step = std::pair<const char*, void (*)(ExportRun&)>;

/// In the order in which import takes them.
constexpr std::array steps{
    Step{"sites", export_sites},
    Step{"meters", export_meters},
    Step{"exchanges", export_exchanges},
    Step{"areas", export_areas},
    Step{"outlines", export_outlines},
    Step{"weather stations", export_weather_stations},
    Step{"readings", export_readings},
    Step{"weather", export_weather},
    Step{"hourly weather", export_hourly_weather},
    Step{"catches", export_catches},
    Step{"pressures", export_pressures},
    Step{"findings", export_findings},
    Step{"bills", export_bills},
    Step{"plantings", export_plantings},
    Step{"prices", export_prices},
    Step{"energy", export_energy},
    Step{"pumps", export_pumps},
    Step{"stations", export_controller_stations},
    Step{"watering rules", export_watering_rules},
    Step{"area settings", export_area_settings},
    Step{"plans", export_plans}};

void say_what_stays(const store::Book& book, std::vector<std::string>& left_out) {
    for (const store::KeptRows& rows : store::rows_beside_tables(book)) {
        if (rows.count == 0) continue;
        left_out.push_back(std::string(rows.words) + ": " + std::to_string(rows.count) + " in the book.");
    }
}

}  // namespace

ExportResult export_book(const store::Book& book, const std::filesystem::path& folder,
                         const std::function<void(const std::string&)>& progress) {
    ExportResult result;
    ExportRun run{book, folder, result};
    for (const auto& [name, export_kind] : steps) {
        if (progress) progress(name);
        export_kind(run);
    }
    say_what_stays(book, result.left_out);
    return result;
}

}  // namespace evenfall::exchange
