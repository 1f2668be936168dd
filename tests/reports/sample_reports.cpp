// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/reports/sample_reports.h"

#include "reports/content/audit_report.h"
#include "reports/content/plan_report.h"
#include "reports/content/portfolio_report.h"
#include "reports/content/season_report.h"

#include "core/budget/program.h"
#include "core/plan/overlap.h"

#include <cmath>

namespace evenfall::reports::samples {
namespace {

audit::Catch can_at(const std::string& label, double x, double y, double reading) {
    audit::Catch c;
    c.can = label;
    c.x = x;
    c.y = y;
    c.reading = reading;
    return c;
}

site::Area area(const std::string& code, const std::string& name, double acres) {
    site::Area a;
    a.code = code;
    a.site = "SH";
    a.name = name;
    a.size = {acres, units::unit_named<units::Area>("ac")};
    a.plant = "cool_season";
    a.head_type = "rotor";
    a.meter = "SH-M1";
    return a;
}

}  // namespace

Frame frame(UnitsShown units) {
    return {units,
            "Sample Hollow Grounds",
            "2025-01-15T09:30:00Z",
            "Evenfall 0.1.0",
            {{"Auditor", "R. Example", "123456", "31 December 2026"},
             {"Owner's representative", "", "", ""}}};
}

audit::CatchTest grid_test() {
    audit::CatchTest t;
    t.code = "T-1";
    t.area = "LAWN";
    t.date = calendar::make_date(2024, 5, 20);
    t.position_unit = units::unit_named<units::Length>("ft");
    t.throat_area = units::parse_measure<units::Area>("16.61in2");
    t.minutes = 20.0;
    t.wind = units::parse_measure<units::Speed>("3mph");
    const double readings[25] = {21, 25, 28, 26, 20, 27, 34, 38, 33, 26, 30, 39, 41,
                                 37, 28, 26, 33, 36, 35, 25, 15, 19, 24, 22, 18};
    for (int i = 0; i < 25; ++i) {
        t.catches.push_back(
            can_at("C" + std::to_string(i + 1), 10.0 * (i % 5), 10.0 * (i / 5), readings[i]));
    }
    t.catches[20].excluded = "knocked over";
    return t;
}

audit::CatchTest grid_of(std::size_t n) {
    audit::CatchTest t = grid_test();
    t.code = "T-" + std::to_string(n);
    t.catches.clear();
    const auto side = static_cast<std::size_t>(std::ceil(std::sqrt(static_cast<double>(n))));
    for (std::size_t i = 0; i < n; ++i) {
        const double x = static_cast<double>(i % side), y = static_cast<double>(i / side);
        t.catches.push_back(can_at(std::to_string(i + 1), 5.0 * x, 5.0 * y,
                                   20.0 + 15.0 * std::sin(0.5 * x) * std::cos(0.4 * y)));
    }
    return t;
}

audit::CatchTest pivot_test() {
    audit::CatchTest t;
    t.code = "T-2";
    t.area = "PIVOT";
    t.date = calendar::make_date(2024, 6, 11);
    t.layout = audit::Layout::pivot;
    t.position_unit = units::unit_named<units::Length>("m");
    t.catch_unit = audit::CatchUnit::millimetre;
    const double depths[14] = {9.1, 11.8, 12.4, 10.6, 12.0, 13.1, 11.2,
                               12.2, 7.4,  12.7, 11.9, 12.3, 10.9, 9.8};
    for (int i = 0; i < 14; ++i) {
        audit::Catch c;
        c.can = "P" + std::to_string(i + 1);
        c.distance = 12.0 * (i + 1);
        c.reading = depths[i];
        t.catches.push_back(c);
    }
    return t;
}

audit::CatchTest traveller_test() {
    audit::CatchTest t;
    t.code = "T-3";
    t.area = "REEL";
    t.date = calendar::make_date(2024, 7, 2);
    t.layout = audit::Layout::traveller;
    t.position_unit = units::unit_named<units::Length>("m");
    t.catch_unit = audit::CatchUnit::millimetre;
    t.lane_spacing = units::parse_measure<units::Length>("60m");
    const double depths[9] = {24, 25, 23, 21, 18, 14, 9, 5, 2};
    for (const auto side : {audit::Side::left, audit::Side::right}) {
        for (int i = 0; i < 9; ++i) {
            audit::Catch c;
            c.can = (side == audit::Side::left ? "L" : "R") + std::to_string(i + 1);
            c.distance = 2.5 + 5.0 * i;
            c.side = side;
            c.reading = depths[i] + (side == audit::Side::left ? 1.0 : 0.0);
            t.catches.push_back(c);
        }
    }
    return t;
}

budget::SeasonInputs season_inputs() {
    const auto month = [](unsigned m) { return std::chrono::year{2024} / std::chrono::month{m}; };
    budget::SeasonInputs in{{}, {}, {}, {}, {}, {}, {}, budget::built_in_program("general"),
                            month(1), month(12), weather::parse_rain_rule("nrcs"),
                            audit::QuarterRule::part_can};
    in.site.code = "SH";
    in.site.name = "Sample Hollow";
    in.site.latitude = 38.0;
    in.station.latitude = 38.0;
    in.areas = {area("LAWN", "Great lawn", 2.0), area("WALK", "Walk verges", 0.6)};
    for (auto d = calendar::make_date(2024, 1, 1); d <= calendar::make_date(2024, 12, 31);
         d += std::chrono::days{1}) {
        weather::WeatherDay day;
        day.date = d;
        const double season = std::sin((calendar::day_of_year(d) - 100) / 365.0 * 6.2831853);
        day.reference_et = (0.14 + 0.10 * season) * units::inch;
        day.rain = (calendar::day_of_year(d) % 9 == 0 ? 0.35 : 0.0) * units::inch;
        in.weather.push_back(day);
    }
    budget::MeterInput m{{}, {}, std::vector<budget::MonthLeak>{{month(7), 21000.0 * units::us_gallon}}};
    m.meter.code = "SH-M1";
    m.meter.site = "SH";
    m.meter.unit = units::unit_named<units::Volume>("gal");
    // Gallons on the register at the start of each month; the meter was read from February on.
    const double registers[12] = {10000,   52000,   174000,  400000,  834000,  1467000,
                                  2257000, 3016000, 3634000, 4032000, 4131000, 4157000};
    for (unsigned i = 0; i < 12; ++i) {
        meter::Reading r;
        r.at = calendar::Instant{i < 11 ? calendar::first_day(month(i + 2))
                                        : calendar::make_date(2025, 1, 1)};
        r.value = registers[i];
        m.readings.push_back(r);
    }
    in.meters = {m};
    in.tests = {grid_test()};
    in.settings = {{"LAWN", units::Share::of(0.04), "gross against net rate", false}};
    return in;
}

Report audit(UnitsShown units) {
    const auto rule = audit::QuarterRule::part_can;
    return audit_report({audited(grid_test(), "Great lawn", rule),
                         audited(pivot_test(), "Pivot field", rule),
                         audited(traveller_test(), "Reel field", rule)},
                        "All tests, Sample Hollow", {}, frame(units));
}

Report season(UnitsShown units) {
    return season_report(budget::season(season_inputs()),
                         WaterPrice{4.85, units::thousand_gallons, "USD", "tariff 2024, block 2"},
                         frame(units));
}

Report portfolio(UnitsShown units, std::size_t n) {
    budget::Portfolio p;
    for (std::size_t i = 0; i < n; ++i) {
        budget::PortfolioSite s;
        s.site = "S" + std::to_string(i + 1);
        s.name = "Sample site " + std::to_string(i + 1);
        const double x = static_cast<double>(i * 7919 % 101);
        s.size = s.size_counted = (1.0 + x / 10.0) * units::acre;
        s.total.days = 366;
        if (i % 7 != 6) {
            s.total.days_counted = i % 3 == 0 ? 366.0 : 335.0;
            s.total.use = (900.0 + 31.0 * x) * units::thousand_gallons;
            s.total.need = 800.0 * units::thousand_gallons;
            s.total.budget = 950.0 * units::thousand_gallons;
            s.total.over_budget = std::max(0.0, 31.0 * x - 400.0) * units::thousand_gallons;
            budget::WasteAccount& a = s.total.account.emplace();
            a.used_by_turf = 700.0 * units::thousand_gallons;
            a.leak = (i % 4 == 0 ? 12.0 : 0.0) * units::thousand_gallons;
            a.over_scheduled = 22.0 * x * units::thousand_gallons;
            s.avoidable_money = 4.85 * 22.0 * x;
            s.currency = "USD";
        }
        p.sites.push_back(s);
    }
    return portfolio_report(p, "Jan 2024 to Dec 2024", "General budget", frame(units));
}

Report plan(UnitsShown units) {
    plan::Plan p;
    p.name = "North lawn";
    p.units.length = units::unit_named<units::Length>("ft");
    p.units.flow = units::unit_named<units::Flow>("gpm");
    p.turf = {{{{0, 0}, {90, 0}, {90, 45}, {0, 45}}}};
    p.no_water = {{{{90, 0}, {100, 0}, {100, 45}, {90, 45}}}};
    const double xs[] = {0, 45, 90};
    for (int i = 0; i < 6; ++i) {
        plan::Head h;
        h.id = "A" + std::to_string(i + 1);
        h.x = xs[i % 3];
        h.y = i < 3 ? 0.0 : 45.0;
        h.radius = 45.0;
        h.arc = i % 3 == 1 ? 180.0 : 90.0;
        const double south[] = {45, 0, 315}, north[] = {135, 180, 225};
        h.facing = i < 3 ? south[i % 3] : north[i % 3];
        h.flow = h.arc / 360.0 * 9.0;
        h.station = "A";
        p.heads.push_back(h);
    }
    plan::OverlapOptions options;
    options.window_shares = {0.05};
    return plan_report(p, plan::overlap_of(p, options), frame(units));
}

}  // namespace evenfall::reports::samples
