// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/budget/draws.h"
#include "tests/budget/season_case.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace evenfall;
using namespace evenfall::budget;
using namespace evenfall::budget::test;
using calendar::make_date;
using units::inch;

namespace {

/// A season with gaps, shared meters, a submeter, leaks and readings at odd times.
SeasonInputs random_season(Draws& draws) {
    auto in = one_area_june();
    in.to = month(2023, 9);
    in.rain = weather::parse_rain_rule("nrcs");
    in.site.time_zone = "PST8PDT,M3.2.0,M11.1.0";
    in.weather = weather_days(make_date(2023, 6, 1), make_date(2023, 9, 30), 0.2 * inch, {});
    for (auto& day : in.weather) {
        day.reference_et = draws.between(0.05, 0.35) * inch;
        day.rain = draws.between(0.0, 1.0) < 0.2 ? draws.between(0.0, 1.5) * inch : units::Depth{};
        if (draws.below(40) == 0) day.reference_et.reset();
        if (draws.below(40) == 0) day.rain.reset();
    }
    in.areas.clear();
    in.meters.clear();
    in.settings.clear();
    const std::size_t areas = 1 + draws.below(5);
    for (std::size_t i = 0; i < areas; ++i) {
        const std::string code = "A" + std::to_string(i);
        const std::string meter = "M" + std::to_string(draws.below(3));
        in.areas.push_back(area(code, draws.between(0.1, 8.0), draws.between(0.3, 1.0), meter));
        if (draws.below(2) == 0) {
            in.settings.push_back({code, units::Share::of(draws.between(0.0, 0.3)), "made up", false});
        }
    }
    for (int m = 0; m < 3; ++m) {
        std::vector<std::pair<calendar::Date, double>> register_values;
        double value = 0.0;
        auto date = make_date(2023, 5, 20);
        while (date < make_date(2023, 10, 5)) {
            register_values.emplace_back(date, value);
            value += draws.between(0.0, 400000.0);
            date += std::chrono::days{1 + static_cast<int>(draws.below(30))};
        }
        in.meters.push_back(meter_input("M" + std::to_string(m), register_values));
        for (auto& reading : in.meters.back().readings) {
            reading.at += std::chrono::seconds{static_cast<long>(draws.below(86400))};
        }
        in.meters.back().leaks = {{month(2023, 7), draws.between(0.0, 200000.0) * units::us_gallon}};
    }
    if (draws.below(2) == 0) in.meters[1].meter.parent = std::string("M0");
    return in;
}

double relative(units::Volume difference, units::Volume whole) {
    return whole.si() == 0.0 ? std::abs(difference.si()) : std::abs(difference / whole);
}

}  // namespace

TEST_CASE("every month of every area closes to its metered volume",
          "[budget][property][constructed]") {
    Draws draws(31);
    for (int round = 0; round < 300; ++round) {
        const auto result = season(random_season(draws));
        units::Volume sum;
        for (const AreaSeason& area : result.areas) {
            for (const AreaMonth& m : area.months) {
                if (!m.use) continue;
                const auto inside = m.account ? m.account->use() : units::Volume{};
                REQUIRE(relative(inside + m.outside_account.value() - *m.use, *m.use) <= 1e-9);
                if (m.account) sum += m.account->use();
            }
        }
        for (const SeasonMonth& m : result.months) {
            if (!m.use) continue;
            const auto inside = m.account ? m.account->use() : units::Volume{};
            REQUIRE(relative(inside + m.outside_account.value() - *m.use, *m.use) <= 1e-9);
        }
        if (result.total.account) REQUIRE(relative(result.total.account->use() - sum, sum) <= 1e-9);
    }
}

TEST_CASE("shuffling areas and meters changes nothing", "[budget][property][constructed]") {
    Draws draws(32);
    for (int round = 0; round < 100; ++round) {
        auto in = random_season(draws);
        const auto before = season(in);
        for (std::size_t i = in.areas.size(); i > 1; --i) {
            std::swap(in.areas[i - 1], in.areas[draws.below(i)]);
        }
        std::swap(in.meters[0], in.meters[2]);
        const auto after = season(in);
        for (const AreaSeason& area : before.areas) {
            const auto it = std::find_if(after.areas.begin(), after.areas.end(),
                                         [&](const AreaSeason& a) { return a.area == area.area; });
            REQUIRE(it != after.areas.end());
            for (std::size_t k = 0; k < area.months.size(); ++k) {
                REQUIRE(area.months[k].need == it->months[k].need);
                REQUIRE(area.months[k].flags == it->months[k].flags);
                if (!area.months[k].use) continue;
                REQUIRE(relative(*area.months[k].use - it->months[k].use.value(),
                                 *area.months[k].use) <= 1e-12);
            }
        }
        REQUIRE(before.total.flags == after.total.flags);
        if (!before.total.account) continue;
        for (const WasteLine& line : waste_lines()) {
            // Sums in another order may differ in the last bits of the whole volume.
            REQUIRE(relative((*before.total.account).*line.part - (*after.total.account).*line.part,
                             before.total.account->use()) <= 1e-12);
        }
    }
}

TEST_CASE("a wetter month never raises the need", "[budget][property][constructed]") {
    Draws draws(33);
    for (const char* rule : {"nrcs", "share:0.6", "none"}) {
        for (int round = 0; round < 60; ++round) {
            auto in = random_season(draws);
            in.rain = weather::parse_rain_rule(rule);
            const auto dry = season(in);
            for (auto& day : in.weather) {
                if (day.rain) *day.rain += draws.between(0.0, 0.3) * inch;
            }
            const auto wet = season(in);
            for (std::size_t i = 0; i < dry.areas.size(); ++i) {
                for (std::size_t k = 0; k < dry.areas[i].months.size(); ++k) {
                    const auto& a = dry.areas[i].months[k].need;
                    const auto& b = wet.areas[i].months[k].need;
                    REQUIRE(a.has_value() == b.has_value());
                    if (a) REQUIRE(*b <= *a);
                }
            }
        }
    }
}
