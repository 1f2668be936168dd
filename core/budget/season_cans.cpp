// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season_cans.h"

#include "core/budget/area_days.h"
#include "core/budget/soil.h"

#include <map>

namespace evenfall::budget {
namespace {

RootZone root_zone_of(const site::Area& area) {
    const auto available = available_water(holding_capacity(area), root_depth(area));
    const auto share = depletion_share(area);
    // Nobody measured the soil on the first day: half of what is readily available is used up.
    return {available, share.p, DepletionRule::adjusted_to_et, available * (share.p * 0.5),
            DayOrder::water_first};
}

/// ET, rain and daily volumes of the whole record; no period yet.
CanCase empty_case(const SeasonInputs& in, const DailyWeather& weather, const MeteredSite& metered,
                   const AreaSeason& season, const site::Area& area) {
    std::vector<units::LandscapeCoefficient> coefficients;
    for (const AreaMonth& month : season.months) coefficients.push_back(month.coefficient->value);
    auto days = area_days(weather, in.from, coefficients);
    CanCase out;
    out.zone = root_zone_of(area);
    out.size = season.size;
    out.crop_et = std::move(days.crop_et);
    out.rain = std::move(days.rain);
    out.target = in.program.target_du;
    const auto place = metered.index_of(season.meter);
    for (const auto volume : metered.own_days(*place, {weather.first, weather.last})) {
        out.by_day.push_back(volume.si());
    }
    return out;
}

void add_period(const DailyWeather& weather, const AreaMonth& month, std::size_t k, AreaCase& out) {
    const WasteAccount& account = *month.account;
    CanPeriod period;
    period.first = static_cast<std::size_t>((month.counted->from - weather.first).count());
    period.days = static_cast<std::size_t>(month.counted->days());
    period.leak = account.leak;
    period.off_target = account.off_target;
    period.reached = account.use() - account.leak - account.off_target;
    out.days.periods.push_back(period);
    out.months.push_back(k);
}

void add_runoff(const AreaCase& one, const site::Area& record, AreaSeason& area) {
    const auto most = runoff_in_one_run(one.days, area.uniformity[one.uniformity].tested,
                                        intake_rate(record).rate, surface_accumulation(record).depth);
    if (most) area.runoff_in_one_run = area.runoff_in_one_run.value_or(units::Volume{}) + *most;
}

}  // namespace

std::vector<AreaCase> area_cases(const SeasonInputs& in, const DailyWeather& weather,
                                 const MeteredSite& metered, const SeasonResult& result) {
    std::vector<AreaCase> cases;
    for (std::size_t i = 0; i < result.areas.size(); ++i) {
        const AreaSeason& area = result.areas[i];
        std::map<std::size_t, AreaCase> by_choice;
        for (std::size_t k = 0; k < area.months.size(); ++k) {
            const AreaMonth& month = area.months[k];
            if (!month.account || area.uniformity[month.uniformity].tested.empty()) continue;
            AreaCase& one = by_choice[month.uniformity];
            if (one.months.empty()) {
                one = {i, month.uniformity, {}, empty_case(in, weather, metered, area, in.areas[i])};
            }
            add_period(weather, month, k, one);
        }
        for (auto& [choice, one] : by_choice) cases.push_back(std::move(one));
    }
    return cases;
}

void add_can_accounts(const SeasonInputs& record, const std::vector<AreaCase>& cases,
                      SeasonResult& result) {
    for (const AreaCase& one : cases) {
        AreaSeason& area = result.areas[one.area];
        const auto accounts = can_accounts(one.days, area.uniformity[one.uniformity].tested);
        for (std::size_t j = 0; j < accounts.size(); ++j) {
            area.months[one.months[j]].by_cans = accounts[j];
        }
        add_runoff(one, record.areas[one.area], area);
    }
}

}  // namespace evenfall::budget
