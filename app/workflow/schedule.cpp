// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/schedule.h"

#include "core/audit/uniformity.h"
#include "core/budget/soil.h"
#include "core/input_error.h"
#include "core/store/station_store.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace evenfall::workflow {
namespace {

/// Need and ET of a day of a calendar month, over the years that know them.
struct MonthMean {
    units::Depth need;
    units::Depth landscape_et;
    int years = 0;
};

std::map<unsigned, MonthMean> means_of(const budget::AreaSeason& area) {
    std::map<unsigned, MonthMean> means;
    for (const budget::AreaMonth& month : area.months) {
        if (!month.need_depth || !month.landscape_et || !month.counted) continue;
        const double days = month.counted->days();
        MonthMean& mean = means[static_cast<unsigned>(month.month.month())];
        mean.need += *month.need_depth / days;
        mean.landscape_et += *month.landscape_et / days;
        ++mean.years;
    }
    return means;
}

/// Calendar months that are known for every area that knows any.
std::set<unsigned> common_months(const std::vector<std::map<unsigned, MonthMean>>& all) {
    std::set<unsigned> common;
    for (unsigned m = 1; m <= 12; ++m) common.insert(m);
    bool any = false;
    for (const auto& means : all) {
        if (means.empty()) continue;
        any = true;
        for (unsigned m = 1; m <= 12; ++m) {
            if (means.count(m) == 0) common.erase(m);
        }
    }
    if (!any) common.clear();
    return common;
}

std::optional<units::Rate> tested_rate(const budget::SeasonInputs& inputs, const std::string& area,
                                       Sentence& source) {
    const audit::CatchTest* latest = nullptr;
    for (const audit::CatchTest& test : inputs.tests) {
        if (test.area == area && test.minutes && (latest == nullptr || latest->date < test.date)) {
            latest = &test;
        }
    }
    if (latest == nullptr) return std::nullopt;
    source = {phrase("workflow", "net rate of catch test %1"), latest->code};
    return audit::analyse_uniformity(*latest, inputs.quarter_rule).net_rate;
}

schedule::AreaPlan plan_of(const budget::SeasonInputs& inputs, const site::Area& area,
                           const budget::AreaSeason& season,
                           const std::map<unsigned, MonthMean>& means,
                           const std::set<unsigned>& months, int year) {
    schedule::AreaPlan plan;
    plan.area = area.code;
    for (const unsigned m : months) {
        const MonthMean& mean = means.at(m);
        const calendar::Month month = std::chrono::year{year} / std::chrono::month{m};
        const double scale = static_cast<double>(calendar::days_in(month)) / mean.years;
        plan.months.push_back({month, mean.need * scale, mean.landscape_et * scale});
    }
    const budget::UniformityChoice& choice = season.uniformity.back();
    plan.multiplier = choice.achieved;
    plan.multiplier_method = choice.method;
    const auto capacity = budget::holding_capacity(area);
    const auto roots = budget::root_depth(area);
    const auto share = budget::depletion_share(area);
    const auto intake = budget::intake_rate(area);
    const auto standing = budget::surface_accumulation(area);
    plan.available = budget::available_water(capacity, roots);
    plan.depletion_share = share.p;
    plan.intake = intake.rate;
    plan.accumulation = standing.depth;
    plan.soil_assumed = capacity.assumed || roots.assumed || share.assumed || intake.assumed ||
                        standing.assumed;
    plan.full_circle_rate = tested_rate(inputs, area.code, plan.rate_source);
    return plan;
}

int clock_minutes(const std::string& text) {
    const auto time = calendar::parse_local_time("2000-01-01T" + text);
    if (!time) throw InputError(text, phrase("workflow", "a time such as 22:00"));
    return static_cast<int>(
        std::chrono::duration_cast<std::chrono::minutes>(
            *time - std::chrono::floor<std::chrono::days>(*time)).count());
}

}  // namespace

schedule::WateringRule watering_rule_from(const std::string& site, const std::string& days,
                                          const std::string& window, int stations_at_once) {
    static constexpr std::array names{"mon", "tue", "wed", "thu", "fri", "sat", "sun"};
    schedule::WateringRule rule;
    rule.site = site;
    rule.stations_at_once = stations_at_once;
    for (std::size_t at = 0; at <= days.size();) {
        const std::size_t end = std::min(days.find(',', at), days.size());
        const auto day = std::find(names.begin(), names.end(), days.substr(at, end - at));
        if (day == names.end()) {
            throw InputError(days, phrase("workflow", "days such as mon,wed,fri"));
        }
        rule.days[static_cast<std::size_t>(day - names.begin())] = true;
        at = end + 1;
    }
    const std::size_t dash = window.find('-');
    if (dash == std::string::npos) throw InputError(window, phrase("workflow", "a window such as 22:00-06:00"));
    rule.starts = std::chrono::minutes{clock_minutes(window.substr(0, dash))};
    rule.ends = std::chrono::minutes{clock_minutes(window.substr(dash + 1))};
    if (rule.starts == rule.ends) throw InputError(window, phrase("workflow", "a window that ends after it starts"));
    return rule;
}

ScheduleAnswer answer_schedule(const store::Book& book, const ScheduleQuestion& question) {
    const auto inputs =
        season_inputs(book, {question.site, question.from, question.to, question.program,
                             question.rain, question.quarter_rule});
    const auto result = budget::season(inputs);
    std::vector<std::map<unsigned, MonthMean>> means;
    for (const auto& area : result.areas) means.push_back(means_of(area));
    const auto months = common_months(means);
    if (months.empty()) {
        throw InputError({phrase("workflow", "no month from %1 to %2 with a known need at site %3"),
                          calendar::format_month(question.from), calendar::format_month(question.to), question.site},
                         phrase("workflow", "weather of the site for at least one month"));
    }
    std::vector<schedule::AreaPlan> plans;
    auto stations = store::stations(book, question.site);
    for (std::size_t i = 0; i < inputs.areas.size(); ++i) {
        if (means[i].empty()) continue;
        const site::Area& area = inputs.areas[i];
        plans.push_back(plan_of(inputs, area, result.areas[i], means[i], months, question.year));
        const bool has_station = std::any_of(stations.begin(), stations.end(), [&](const auto& s) {
            return s.area == area.code;
        });
        if (has_station || !plans.back().full_circle_rate) continue;
        schedule::Station whole_area;
        whole_area.code = area.code;
        whole_area.area = area.code;
        stations.push_back(std::move(whole_area));
    }
    const auto rule = question.rule ? question.rule : store::watering_rule(book, question.site);
    return {schedule::base_schedule(question.site, plans, stations, rule), result.notes};
}

}  // namespace evenfall::workflow
