// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season_area.h"

#include "core/budget/budget.h"
#include "core/input_error.h"

#include <algorithm>
#include <numeric>

namespace evenfall::budget {

using units::Depth;
using units::Volume;

namespace {

std::optional<DayRun> common(std::optional<DayRun> a, std::optional<DayRun> b) {
    if (!a || !b) return std::nullopt;
    const DayRun both{std::max(a->from, b->from), std::min(a->to, b->to)};
    if (both.from > both.to) return std::nullopt;
    return both;
}

std::optional<DayRun> days_of_weather(const DailyWeather& weather, DayRun month) {
    if (weather.empty()) return std::nullopt;
    return common(month, DayRun{weather.first, weather.last});
}

/// Fills depths, need and budget of the days that count.
void add_need(const SeasonInputs& in, const DailyWeather& weather, const AreaMonthTerms& terms,
              DayRun run, double metered_share, AreaMonth& out) {
    const auto sums = sum_weather(weather, run.from, run.to);
    if (sums.et_filled) add_flag(out.flags, SeasonFlag::eto_filled);
    if (sums.et_assumed) add_flag(out.flags, SeasonFlag::eto_inputs_assumed);
    out.rain = sums.rain;
    if (sums.rain_filled) {
        add_flag(out.flags, sums.rain ? SeasonFlag::rain_filled : SeasonFlag::rain_missing);
    }
    out.reference_et = sums.reference_et;
    if (!sums.reference_et) {
        add_flag(out.flags, SeasonFlag::eto_missing);
        return;
    }
    out.landscape_et = landscape_et(*sums.reference_et, terms.coefficient.value);
    if (in.rain.kind != weather::RainRule::Kind::daily_balance) {
        out.effective_rain =
            effective_rain_of(in.rain, sums.rain, *out.landscape_et, run.days(), out.month);
    } else if (sums.rain) {
        const auto first = static_cast<std::size_t>((run.from - weather.first).count());
        const auto days = terms.effective_rain.subspan(first, static_cast<std::size_t>(run.days()));
        out.effective_rain = std::accumulate(days.begin(), days.end(), Depth{});
    }
    if (!out.effective_rain) return;

    if (terms.setting.salt) {
        out.leaching = weather::leaching_requirement(*terms.setting.salt).value();
        add_flag(out.flags, SeasonFlag::leaching_included);
    }
    out.need_depth = need_with_leaching(*out.landscape_et, *out.effective_rain, out.leaching);
    const units::Area size = terms.area.size.quantity();
    out.need = *out.need_depth * size * metered_share;
    const BudgetTerms budget_terms{*out.reference_et,  *out.need_depth, out.rain,
                                   out.effective_rain, size,            terms.setting.special};
    out.budget = budget(in.program, budget_terms);
    if (out.budget) *out.budget *= metered_share;
}

void add_account(const SeasonInputs& in, const MeteredSite& metered, const AreaMonthTerms& terms,
                 Volume use, DayRun run, AreaMonth& out) {
    const auto leak = metered.own_leak(*terms.meter, out.month);
    if (!leak) add_flag(out.flags, SeasonFlag::leak_not_screened);
    if (!terms.setting.off_target) add_flag(out.flags, SeasonFlag::off_target_assumed);
    const double part_of_month = static_cast<double>(run.days()) / out.days;
    WasteInputs waste{use,
                      *out.need,
                      leak.value_or(Volume{}) * (terms.share * part_of_month),
                      terms.setting.off_target.value_or(units::Share::of(0.0)),
                      terms.uniformity.achieved,
                      in.program.target_multiplier()};
    if (waste.leak > waste.use) add_flag(out.flags, SeasonFlag::leak_above_use);
    out.account = waste_account(waste);
    out.inputs = waste;
    if (out.budget) out.over_budget = std::max(Volume{}, use - *out.budget);
}

void flag_assumptions(const AreaMonthTerms& terms, AreaMonth& out) {
    if (terms.coefficient.assumed) add_flag(out.flags, SeasonFlag::coefficient_assumed);
    if (terms.uniformity.assumed) add_flag(out.flags, SeasonFlag::no_catch_test);
    if (!terms.uniformity.head_type_known) add_flag(out.flags, SeasonFlag::head_type_unknown);
    if (terms.uniformity.date && *terms.uniformity.date > calendar::last_day(out.month)) {
        add_flag(out.flags, SeasonFlag::test_later);
    }
    if (terms.share_assumed) add_flag(out.flags, SeasonFlag::share_assumed);
    if (!terms.meter) add_flag(out.flags, SeasonFlag::no_meter);
}

void flag_use(const OwnUse& use, AreaMonth& out) {
    if (use.submeters_above) add_flag(out.flags, SeasonFlag::submeters_above);
    if (use.estimated_share > 0.0) add_flag(out.flags, SeasonFlag::readings_estimated);
    out.estimated_share = use.estimated_share;
}

}  // namespace

std::optional<Depth> effective_rain_of(const weather::RainRule& rule, std::optional<Depth> rain,
                                       Depth landscape_et, int days, calendar::Month month) {
    using Kind = weather::RainRule::Kind;
    if (rule.kind == Kind::none) return Depth{};
    if (!rain) return std::nullopt;
    if (rule.kind == Kind::share) {
        return weather::effective_rain_share(*rain, landscape_et, rule.share.value());
    }
    if (rule.kind == Kind::nrcs_monthly) {
        const double whole = static_cast<double>(calendar::days_in(month)) / days;
        return weather::effective_rain_nrcs(*rain * whole, landscape_et * whole,
                                            rule.storage.value()) / whole;
    }
    throw InputError(rule.name(), phrase("budget", "a monthly rain rule: none, share or nrcs"));
}

Depth need_with_leaching(Depth landscape_et, Depth effective_rain, double leaching) {
    return weather::with_leaching(need_depth(landscape_et, effective_rain),
                                  weather::LeachingRequirement::of(leaching));
}

AreaMonth area_month(const SeasonInputs& in, const DailyWeather& weather,
                     const MeteredSite& metered, const AreaMonthTerms& terms,
                     calendar::Month month) {
    AreaMonth out;
    out.month = month;
    out.days = calendar::days_in(month);
    out.coefficient = terms.coefficient;
    flag_assumptions(terms, out);

    const DayRun whole{calendar::first_day(month), calendar::last_day(month)};
    const auto weather_days = days_of_weather(weather, whole);
    const auto metered_days = terms.meter ? metered.days_metered(*terms.meter, month) : std::nullopt;
    if (weather_days && *weather_days != whole) {
        add_flag(out.flags, SeasonFlag::weather_part_month);
    }
    if (!weather_days) add_flag(out.flags, SeasonFlag::eto_missing);
    if (terms.meter && !metered_days) add_flag(out.flags, SeasonFlag::no_readings);
    if (metered_days && *metered_days != whole) {
        add_flag(out.flags, SeasonFlag::meter_part_month);
    }

    std::optional<Volume> use;
    if (metered_days) {
        const auto own = metered.own_use(*terms.meter, *metered_days);
        if (own.volume) {
            use = *own.volume * terms.share;
            flag_use(own, out);
        } else {
            add_flag(out.flags, SeasonFlag::no_readings);
        }
    }
    out.use = use;
    const auto both = common(weather_days, metered_days);
    const auto run = use && both ? both : weather_days;
    if (!run) {
        out.outside_account = use;
        return out;
    }

    double metered_share = 1.0;
    std::optional<Volume> counted;
    if (use && both) {
        const auto own = metered.own_use(*terms.meter, *both);
        if (own.volume) counted = *own.volume * terms.share;
        metered_share = std::min(1.0, own.covered_share);
        if (metered_share < 0.9985) {
            add_flag(out.flags, SeasonFlag::meter_gap);
        } else {
            metered_share = 1.0;
        }
    }
    out.counted = run;
    out.metered_share = metered_share;
    out.days_counted = run->days() * metered_share;
    add_need(in, weather, terms, *run, metered_share, out);
    if (counted && *counted < Volume{}) {
        add_flag(out.flags, SeasonFlag::use_negative);
    } else if (counted && out.need) {
        add_account(in, metered, terms, *counted, *run, out);
    }
    if (use) out.outside_account = out.account ? *use - *counted : *use;
    return out;
}

}  // namespace evenfall::budget
