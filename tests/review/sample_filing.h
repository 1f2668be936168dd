// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/uniformity.h"
#include "core/calendar/time_zone.h"
#include "core/review/filing.h"
#include "core/units/number.h"
#include "tests/review/simulated_site.h"

#include <algorithm>
#include <cmath>
#include <string>

/// CONSTRUCTED filings for tests: a sports ground whose heads were replaced at the end of 2023,
/// three years of monthly register readings, daily weather with measured reference ET, a catch test
/// before and one after. All names are invented.
namespace evenfall::tests {

struct SampleChoices {
    std::uint64_t seed = 1;
    double true_saving = 0.20;
    double before_unevenness = 0.35;  ///< spread of the catches about their mean
    double after_unevenness = 0.12;
    int cans = 24;
    double catch_step = 1.0;          ///< mL to which a catch was read
    bool metric = false;
};

inline audit::CatchTest sample_test(const std::string& code, const char* date, double unevenness,
                                    const SampleChoices& choices, std::uint64_t seed) {
    Draw draw(seed);
    audit::CatchTest test;
    test.code = code;
    test.area = "FIELD";
    test.date = *calendar::parse_date(date);
    test.layout = audit::Layout::grid;
    test.throat_area = choices.metric ? units::parse_measure<units::Area>("107.16cm2")
                                      : units::parse_measure<units::Area>("16.61in2");
    test.minutes = 30.0;
    test.wind = choices.metric ? units::parse_measure<units::Speed>("1m_s")
                               : units::parse_measure<units::Speed>("2.5mph");
    test.position_unit = units::unit_named<units::Length>(choices.metric ? "m" : "ft");
    test.catch_unit = audit::CatchUnit::millilitre;
    const double spacing = choices.metric ? 3.0 : 10.0;
    for (int i = 0; i < choices.cans; ++i) {
        audit::Catch c;
        // Step by step: g++ 12 warns falsely about a short literal + a temporary text.
        c.can = "C";
        c.can += std::to_string(i + 1);
        c.x = spacing * (i % 6);
        c.y = spacing * (i / 6);
        const double volume = 62.0 * (1.0 + unevenness * std::clamp(draw.normal(), -2.2, 2.2));
        c.reading = choices.catch_step * std::round(std::max(2.0, volume) / choices.catch_step);
        test.catches.push_back(c);
    }
    return test;
}

/// Weather and readings that follow it: use = 0.15 ac-ft a month and 1.25 times the net need.
inline void add_record(review::Filing& filing, const SampleChoices& choices) {
    Draw draw(choices.seed * 131 + 7);
    review::FiledWeather& w = filing.weather;
    w.station = "WX-1";
    w.latitude = 38.5;
    w.elevation = units::parse_measure<units::Length>("120ft");
    w.units = choices.metric ? weather::SheetUnits{"c", "mj_m2", "m_s", "mm", "mm"} : weather::SheetUnits{"f", "langley", "mph", "in", "in"};
    const double mm = choices.metric ? 1.0 : 25.4;
    review::FiledMeter m;
    m.meter.code = "MAIN";
    m.meter.site = filing.site.code;
    m.meter.unit = units::unit_named<units::Volume>(choices.metric ? "m3" : "kgal");
    m.meter.digits = 7;
    m.type = "magnetic";
    const units::Area size = filing.areas.front().area.size.quantity();
    double counts = 1000.0;
    const calendar::TimeZone zone;
    const auto read = [&](calendar::Date day) {
        m.readings.push_back({zone.start_of_day(day), std::chrono::seconds(0), std::round(counts), meter::ReadingKind::measured});
    };
    read(*calendar::parse_date("2022-01-01"));
    for (int i = 0; i < 36; ++i) {
        const calendar::Month month = calendar::plus_months(std::chrono::year{2022} / 1, i);
        const double season = 0.5 - 0.5 * std::cos(2.0 * 3.14159265358979 * (i % 12 + 0.5) / 12.0);
        const double level = (0.8 + 4.6 * season) * (1.0 + 0.1 * draw.normal());
        double et_month = 0.0;
        double rain_month = 0.0;
        for (calendar::Date day = calendar::first_day(month); day <= calendar::last_day(month); day += std::chrono::days(1)) {
            weather::SheetRow d;
            d.date = day;
            const double et = std::round(100.0 * std::max(0.2, level * (1.0 + 0.2 * draw.normal())) / mm) / 100.0;
            const double rain = draw.uniform() < 0.12 * (1.2 - season) ? std::round(100.0 * 18.0 * draw.uniform() / mm) / 100.0 : 0.0;
            d.reference_et = et;
            const bool tested = day == *calendar::parse_date("2023-08-10") || day == *calendar::parse_date("2024-07-18");
            d.rain = tested ? 0.0 : rain;
            d.tmax = choices.metric ? 25.0 : 77.0;
            d.tmin = choices.metric ? 12.0 : 54.0;
            d.wind = choices.metric ? 2.0 : 4.5;
            w.days.push_back(d);
            et_month += et * mm;
            rain_month += *d.rain * mm;
        }
        const double need_mm = std::max(0.0, 0.8 * et_month - 0.6 * rain_month);
        double use_mm = 12.0 + 1.25 * need_mm * (1.0 + 0.05 * draw.normal());
        if (i >= 24) use_mm *= 1.0 - choices.true_saving;
        counts += (use_mm * units::millimetre * size).in(m.meter.unit.unit);
        read(calendar::last_day(month) + std::chrono::days(1));
    }
    filing.meters.push_back(m);
}

/// A figure as a person would write it.
inline review::Claim claim(const std::string& name, const std::string& subject, double value, int decimals,
                           const std::string& unit = "") {
    return {name, subject, units::format_fixed(value, decimals), unit, ""};
}

inline review::Filing sample_filing(const SampleChoices& choices = {}) {
    review::Filing f;
    f.code = "F-";
    f.code += std::to_string(choices.seed);
    f.written = *calendar::parse_instant("2025-01-15T17:00:00Z");
    f.software = "evenfall 0.1.0";
    f.applicant = {"R. Osei", "Quarry Lane Sports Club", "grounds@example.org"};
    f.auditor = {"M. Lindqvist", "X-1182", calendar::parse_date("2026-06-30")};
    f.site.code = "QLANE";
    f.site.name = "Quarry Lane";
    f.site.latitude = 38.5;
    f.site.longitude = -121.5;
    f.site.weather = "WX-1";
    review::FiledArea area;
    area.area.code = "FIELD";
    area.area.site = "QLANE";
    area.area.name = "Main field";
    area.area.size = choices.metric ? units::parse_measure<units::Area>("8000m2") : units::parse_measure<units::Area>("2ac");
    area.area.coefficient = 0.8;
    area.area.head_type = "rotor";
    area.area.meter = "MAIN";
    area.sector = "sport";
    f.areas.push_back(area);
    f.tests.push_back({sample_test("T-BEFORE", "2023-08-10", choices.before_unevenness, choices, choices.seed * 17 + 3), review::Phase::before});
    f.tests.push_back({sample_test("T-AFTER", "2024-07-18", choices.after_unevenness, choices, choices.seed * 19 + 5), review::Phase::after});
    add_record(f, choices);
    for (const review::FiledTest& t : f.tests) {
        const auto u = audit::analyse_uniformity(t.test, f.conventions.quarter_rule);
        f.claims.push_back(claim("du_lq", t.test.code, u.du_lq.value(), 2));
        f.claims.push_back(claim("mean_depth", t.test.code, u.mean.in(units::millimetre), 2, "mm"));
    }
    f.request.application = "A-";
    f.request.application += std::to_string(choices.seed);
    f.request.program = "rebate-sport-heads";
    f.request.change = calendar::parse_date("2023-12-31");
    f.request.devices = {{"nozzle", 120}};
    std::string number = "INV-";
    number += std::to_string(choices.seed);
    f.request.invoices = {{number, "Bright Basin Supply", calendar::parse_date("2023-12-20"), 4200.0, "USD", "attachments/invoice.pdf"}};
    f.attachments = {{"attachments/invoice.pdf", "invoice", std::string(64, '0'), 10, ""}};
    return f;
}

}  // namespace evenfall::tests
