// SPDX-License-Identifier: GPL-3.0-or-later
// Water and energy rates, pumps, controller stations, watering rules, settings of areas.
#include "core/exchange/export_run.h"
#include "core/store/price_store.h"
#include "core/store/site_store.h"
#include "core/store/station_store.h"

#include <array>

namespace evenfall::exchange {
namespace {

using units::format_shortest;

constexpr std::array day_names{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};

std::string days_of(const schedule::WateringRule& rule) {
    std::string text;
    for (std::size_t i = 0; i < rule.days.size(); ++i) {
        if (rule.days[i]) text += (text.empty() ? "" : " ") + std::string(day_names[i]);
    }
    return text;
}

/// "06:30" from minutes after midnight.
std::string clock_of(std::chrono::minutes at) {
    const auto two = [](long n) { return (n < 10 ? "0" : "") + std::to_string(n); };
    return two(static_cast<long>(at.count() / 60)) + ":" + two(static_cast<long>(at.count() % 60));
}

}  // namespace

void export_prices(ExportRun& run) {
    const auto rates = store::water_rates(run.book);
    write_tables(run.folder, Kind::prices, "prices", [&](const TakeRecord& take) {
        for (const budget::WaterRate& r : rates) {
            for (const budget::RateTier& tier : r.tiers) {
                take({{"rate", "", r.code},
                      {"site", "", r.site},
                      {"from", "", calendar::format_date(r.from)},
                      {"to", "", text_of(r.to)},
                      {"unit", "", std::string(r.unit.name)},
                      {"currency", "", r.currency},
                      {"tier_up_to", "", text_of(tier.up_to)},
                      {"price", "", format_shortest(tier.price)},
                      {"fixed_per_month", "", format_shortest(r.fixed_per_month)},
                      {"sewer_price", "", text_of(r.sewer_price)},
                      {"sewer_share", "", format_shortest(r.sewer_share.value())}});
            }
        }
    }, run.result.files);
}

void export_energy(ExportRun& run) {
    const auto rates = store::energy_rates(run.book);
    write_tables(run.folder, Kind::energy, "energy", [&](const TakeRecord& take) {
        for (const budget::EnergyRate& r : rates) {
            take({{"rate", "", r.code},
                  {"site", "", r.site},
                  {"from", "", calendar::format_date(r.from)},
                  {"to", "", text_of(r.to)},
                  {"currency", "", r.currency},
                  {"price_per_kwh", "", format_shortest(r.price_per_kwh)}});
        }
    }, run.result.files);
}

void export_pumps(ExportRun& run) {
    const auto sites = store::sites(run.book);
    write_tables(run.folder, Kind::pumps, "pumps", [&](const TakeRecord& take) {
        for (const site::Site& s : sites) {
            for (const budget::Pump& p : store::pumps(run.book, s.code)) {
                take({{"pump", "", p.code},
                      {"site", "", p.site},
                      field_of("lift", p.lift),
                      field_of("pressure", p.pressure),
                      field_of("friction", p.friction),
                      {"efficiency", "", format_shortest(p.efficiency.value())},
                      {"share", "", format_shortest(p.share)}});
            }
        }
    }, run.result.files);
}

void export_controller_stations(ExportRun& run) {
    const auto sites = store::sites(run.book);
    write_tables(run.folder, Kind::stations, "stations", [&](const TakeRecord& take) {
        for (const site::Site& s : sites) {
            for (const schedule::Station& t : store::stations(run.book, s.code)) {
                take({{"station", "", t.code},
                      {"area", "", t.area},
                      {"name", "", t.name},
                      field_of("rate", t.rate),
                      {"rate_source", "", t.rate_source},
                      {"arc_degrees", "", text_of(t.arc_degrees)},
                      field_of("flow", t.flow)});
            }
        }
    }, run.result.files);
}

void export_watering_rules(ExportRun& run) {
    const auto sites = store::sites(run.book);
    write_tables(run.folder, Kind::watering_rules, "watering_rules", [&](const TakeRecord& take) {
        for (const site::Site& s : sites) {
            const auto rule = store::watering_rule(run.book, s.code);
            if (!rule) continue;
            take({{"site", "", s.code},
                  {"days", "", days_of(*rule)},
                  {"starts", "", clock_of(rule->starts)},
                  {"ends", "", clock_of(rule->ends)},
                  {"stations_at_once", "", std::to_string(rule->stations_at_once)}});
        }
    }, run.result.files);
}

void export_area_settings(ExportRun& run) {
    const auto sites = store::sites(run.book);
    write_tables(run.folder, Kind::area_settings, "area_settings", [&](const TakeRecord& take) {
        for (const site::Site& s : sites) {
            for (const budget::AreaSetting& a : store::area_settings(run.book, s.code)) {
                take({{"area", "", a.area},
                      {"off_target", "", a.off_target ? format_shortest(a.off_target->value()) : std::string()},
                      {"off_target_source", "", a.off_target_source},
                      {"special", "", a.special ? "yes" : "no"},
                      {"water_ec", "", a.salt ? format_shortest(a.salt->water_ec) : std::string()},
                      {"soil_ec_limit", "", a.salt ? format_shortest(a.salt->soil_ec_limit) : std::string()}});
            }
        }
    }, run.result.files);
}

}  // namespace evenfall::exchange
