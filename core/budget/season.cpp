// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season.h"

#include "core/budget/area_days.h"
#include "core/budget/season_area.h"
#include "core/budget/season_cans.h"
#include "core/budget/season_notes.h"
#include "core/budget/season_sums.h"
#include "core/budget/soil.h"
#include "core/input_error.h"
#include "core/meter/split.h"

#include <algorithm>
#include <map>
#include <set>

namespace evenfall::budget {

using calendar::Month;
using units::Volume;

namespace {

void check(const SeasonInputs& in) {
    if (in.from > in.to) {
        throw InputError(
            {phrase("budget", "%1 to %2"), calendar::format_month(in.from), calendar::format_month(in.to)},
            phrase("budget", "a range of months that runs forward"));
    }
    std::set<std::string> codes;
    for (const site::Area& area : in.areas) {
        if (!codes.insert(area.code).second) {
            throw InputError({phrase("budget", "area %1 twice"), area.code}, phrase("budget", "each area once"));
        }
        if (!(area.size.quantity().si() > 0.0)) {
            throw InputError({phrase("budget", "area %1 of %2"), area.code, area.size.text()},
                             phrase("budget", "an area above zero"));
        }
    }
}

const AreaSetting& setting_of(const SeasonInputs& in, const std::string& area) {
    static const AreaSetting none{};
    for (const AreaSetting& setting : in.settings) {
        if (setting.area == area) return setting;
    }
    return none;
}

struct Share {
    double value = 1.0;
    bool assumed = false;
};

/// The share of its meter that each area gets in a month, in the order of the areas.
std::vector<Share> shares_of(const SeasonInputs& in, const MeteredSite& metered,
                             const std::vector<weather::CoefficientChoice>& coefficients) {
    std::map<std::size_t, std::vector<std::size_t>> by_place;
    for (std::size_t i = 0; i < in.areas.size(); ++i) {
        if (const auto place = metered.index_of(in.areas[i].meter)) by_place[*place].push_back(i);
    }
    std::vector<Share> shares(in.areas.size());
    for (const auto& [place, members] : by_place) {
        if (members.size() == 1 && !in.areas[members.front()].share) continue;
        double all_weights = 0.0;
        for (const std::size_t i : members) all_weights += coefficients[i].value.value();
        std::vector<meter::SplitInput> parts;
        for (const std::size_t i : members) {
            const site::Area& area = in.areas[i];
            // In a month in which nothing grows the sizes alone have to do.
            const double k = all_weights > 0.0 ? coefficients[i].value.value() : 1.0;
            parts.push_back({area.code, area.size.quantity(), k, area.share});
        }
        const auto split = meter::split_meter(parts, meter::SplitRule::given_shares);
        for (std::size_t k = 0; k < members.size(); ++k) {
            shares[members[k]] = {split[k].share.value(), split[k].assumed};
        }
    }
    return shares;
}

/// A mean of a depth over areas, weighted by size, over those that know it.
struct WeightedDepth {
    units::Volume sum;
    units::Area size;
    void add(const std::optional<units::Depth>& depth, units::Area area) {
        if (!depth) return;
        sum += *depth * area;
        size += area;
    }
    std::optional<units::Depth> mean() const {
        if (!(size.si() > 0.0)) return std::nullopt;
        return sum / size;
    }
};

/// The month of several areas together. Need and budget are those of the areas that have an account,
/// so that they stand beside the use; where no area has one, those of all areas.
SeasonMonth month_together(std::span<const AreaSeason* const> areas, std::size_t k) {
    SeasonMonth out;
    const bool any_account = std::any_of(areas.begin(), areas.end(), [&](const AreaSeason* a) {
        return a->months[k].account.has_value();
    });
    WeightedDepth et, rain, landscape, effective, need;
    bool budget_known = true;
    double days = 0.0;
    units::Area counted_size;
    for (const AreaSeason* area : areas) {
        const AreaMonth& part = area->months[k];
        add_volumes(out, part);
        et.add(part.reference_et, area->size);
        rain.add(part.rain, area->size);
        landscape.add(part.landscape_et, area->size);
        effective.add(part.effective_rain, area->size);
        need.add(part.need_depth, area->size);
        if (any_account && !part.account) {
            add_flag(out.flags, SeasonFlag::areas_missing);
            continue;
        }
        add_if_known(out.need, part.need);
        add_if_known(out.budget, part.budget);
        budget_known = budget_known && part.budget.has_value();
        days += part.days_counted * area->size.si();
        counted_size += area->size;
    }
    out.reference_et = et.mean();
    out.rain = rain.mean();
    out.landscape_et = landscape.mean();
    out.effective_rain = effective.mean();
    out.need_depth = need.mean();
    if (counted_size.si() > 0.0) out.days_counted = days / counted_size.si();
    if (!budget_known) out.budget.reset();
    if (out.account && out.budget) {
        out.over_budget = std::max(Volume{}, out.account->use() - *out.budget);
    }
    return out;
}

/// Own use of meters that feed no area: the site's water, but nobody's account.
void add_unassigned(const SeasonInputs& in, const MeteredSite& metered, SeasonMonth& month) {
    for (std::size_t i = 0; i < metered.size(); ++i) {
        const bool feeds = std::any_of(in.areas.begin(), in.areas.end(), [&](const site::Area& a) {
            return metered.index_of(a.meter) == i;
        });
        if (feeds) continue;
        const auto run = metered.days_metered(i, month.month);
        if (!run) continue;
        const auto own = metered.own_use(i, *run);
        SeasonFigures figures;
        figures.use = own.volume;
        figures.outside_account = own.volume;
        figures.estimated_share = own.estimated_share;
        if (own.submeters_above) add_flag(figures.flags, SeasonFlag::submeters_above);
        add_volumes(month, figures);
    }
}

/// The site's months, and those of each meter that feeds areas.
void add_groups(const SeasonInputs& in, const MeteredSite& metered, SeasonResult& out) {
    std::vector<const AreaSeason*> all;
    std::map<std::string, std::vector<const AreaSeason*>> by_meter;
    for (const AreaSeason& area : out.areas) {
        all.push_back(&area);
        if (!area.place.empty()) by_meter[area.place].push_back(&area);
    }
    const auto add_month = [&](std::span<const AreaSeason* const> areas, std::size_t k,
                               std::vector<SeasonMonth>& months) {
        months.push_back(month_together(areas, k));
        months.back().month = calendar::plus_months(in.from, static_cast<int>(k));
        months.back().days = calendar::days_in(months.back().month);
    };
    for (const auto& [meter, areas] : by_meter) {
        out.meters.push_back({meter, {}, {}});
        for (std::size_t k = 0; k < areas.front()->months.size(); ++k) {
            add_month(areas, k, out.meters.back().months);
        }
        out.meters.back().total = total_of_all(out.meters.back().months);
    }
    for (std::size_t k = 0; in.from + std::chrono::months{k} <= in.to; ++k) {
        add_month(all, k, out.months);
        add_unassigned(in, metered, out.months.back());
    }
}

std::vector<YearAllowance> years_of(const std::vector<SeasonMonth>& months) {
    std::vector<YearAllowance> years;
    for (const SeasonMonth& month : months) {
        if (!month.account || !month.budget) continue;
        const int year = static_cast<int>(month.month.year());
        if (years.empty() || years.back().year != year) years.push_back({year, 0, {}, {}, {}});
        YearAllowance& sum = years.back();
        ++sum.months;
        sum.use += month.account->use();
        sum.allowance += *month.budget;
        sum.over = std::max(Volume{}, sum.use - sum.allowance);
    }
    return years;
}

AreaSeason start_area(const SeasonInputs& in, const site::Area& area) {
    AreaSeason out;
    out.area = area.code;
    out.name = area.name;
    out.meter = area.meter;
    out.size = area.size.quantity();
    out.special = setting_of(in, area.code).special;
    out.uniformity = uniformity_choices(area, in.tests, in.quarter_rule);
    return out;
}

/// Coefficients of every area, month by month.
std::vector<std::vector<weather::CoefficientChoice>> coefficients_of(const SeasonInputs& in) {
    std::vector<std::vector<weather::CoefficientChoice>> all;
    for (const site::Area& area : in.areas) {
        const auto plan = weather::plan_of(in.plantings, area.code);
        auto& months = all.emplace_back();
        for (Month m = in.from; m <= in.to; m = calendar::plus_months(m, 1)) {
            months.push_back(weather::coefficient_of_month(area, plan, m));
        }
    }
    return all;
}

/// Effective rain by day of each area under the daily rule; else nothing.
std::vector<std::vector<units::Depth>> daily_effective_rain(
    const SeasonInputs& in, const DailyWeather& weather,
    const std::vector<std::vector<weather::CoefficientChoice>>& coefficients) {
    std::vector<std::vector<units::Depth>> all(in.areas.size());
    if (in.rain.kind != weather::RainRule::Kind::daily_balance) return all;
    for (std::size_t i = 0; i < in.areas.size(); ++i) {
        std::vector<units::LandscapeCoefficient> values;
        for (const auto& choice : coefficients[i]) values.push_back(choice.value);
        const auto available =
            available_water(holding_capacity(in.areas[i]), root_depth(in.areas[i]));
        all[i] = effective_rain_by_balance(area_days(weather, in.from, values), available,
                                           depletion_share(in.areas[i]).p);
    }
    return all;
}

void add_area_months(const SeasonInputs& in, const DailyWeather& weather,
                     const MeteredSite& metered, SeasonResult& out) {
    const auto coefficients = coefficients_of(in);
    const auto effective = daily_effective_rain(in, weather, coefficients);
    std::size_t k = 0;
    for (Month month = in.from; month <= in.to; month = calendar::plus_months(month, 1), ++k) {
        std::vector<weather::CoefficientChoice> of_month;
        for (const auto& area : coefficients) of_month.push_back(area[k]);
        const auto shares = shares_of(in, metered, of_month);
        for (std::size_t i = 0; i < in.areas.size(); ++i) {
            AreaSeason& area = out.areas[i];
            const std::size_t choice = choice_for(area.uniformity, month);
            area.months.push_back(area_month(
                in, weather, metered,
                {in.areas[i], setting_of(in, area.area), of_month[i], area.uniformity[choice],
                 metered.index_of(area.meter), shares[i].value, shares[i].assumed, effective[i]},
                month));
            area.months.back().uniformity = choice;
        }
    }
}

}  // namespace

DailyWeather season_weather(const SeasonInputs& in) {
    const auto first = calendar::first_day(in.from);
    const auto last = calendar::last_day(in.to);
    if (in.place_days) return daily_weather(*in.place_days, first, last);
    return daily_weather(in.weather, in.station, first, last);
}

SeasonResult season(const SeasonInputs& in) {
    check(in);
    const calendar::TimeZone zone(in.site.time_zone);
    const auto weather = season_weather(in);
    const MeteredSite metered(in.meters, zone, in.from, in.to);
    SeasonResult out;
    out.site = in.site.code;
    out.name = in.site.name;
    out.from = in.from;
    out.to = in.to;
    out.program = in.program;
    for (const site::Area& area : in.areas) out.areas.push_back(start_area(in, area));

    for (AreaSeason& area : out.areas) {
        if (const auto place = metered.index_of(area.meter)) area.place = metered.name(*place);
    }
    add_area_months(in, weather, metered, out);
    if (in.account_by_cans) add_can_accounts(in, area_cases(in, weather, metered, out), out);
    add_groups(in, metered, out);
    for (AreaSeason& area : out.areas) area.total = total_of_all(area.months);
    out.total = total_of_all(out.months);
    if (in.program.period == Period::year) out.years = years_of(out.months);
    out.notes = season_notes(in, weather, out);
    out.findings = season_findings(in, metered, out);
    return out;
}

}  // namespace evenfall::budget
