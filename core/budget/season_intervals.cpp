// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/budget/season_intervals.h"

#include "core/budget/budget.h"
#include "core/budget/season_area.h"
#include "core/budget/season_cans.h"
#include "core/budget/season_draws.h"
#include "core/budget/weather_sums.h"
#include "core/calendar/time_zone.h"
#include "core/input_error.h"
#include "core/stats/parallel.h"
#include "core/units/number.h"

#include <algorithm>
#include <cmath>

namespace evenfall::budget {

using units::Volume;

namespace {

/// need, use and the lines of an account, for every draw.
template <std::size_t n>
using Samples = std::vector<std::array<double, n>>;

constexpr std::size_t figures = 9;  ///< need, use, 7 lines
constexpr std::size_t can_figures = 8;

template <std::size_t n>
void add(Samples<n>& sum, const Samples<n>& part) {
    if (sum.empty()) sum.resize(part.size());
    for (std::size_t d = 0; d < part.size(); ++d) {
        for (std::size_t i = 0; i < n; ++i) sum[d][i] += part[d][i];
    }
}

/// Quantiles by linear interpolation between order statistics (type 7).
VolumeInterval interval_of(std::vector<double>& values, double confidence) {
    std::sort(values.begin(), values.end());
    const auto at = [&](double p) {
        const double place = p * static_cast<double>(values.size() - 1);
        const auto below = static_cast<std::size_t>(place);
        const double rest = place - static_cast<double>(below);
        const double low = values[below];
        return rest > 0.0 ? low + rest * (values[below + 1] - low) : low;
    };
    const double tail = (1.0 - confidence) / 2.0;
    return {Volume::from_si(at(tail)), Volume::from_si(at(1.0 - tail))};
}

template <std::size_t n>
std::array<VolumeInterval, n> intervals_of(const Samples<n>& samples, double confidence) {
    std::array<VolumeInterval, n> out;
    std::vector<double> values(samples.size());
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t d = 0; d < samples.size(); ++d) values[d] = samples[d][i];
        out[i] = interval_of(values, confidence);
    }
    return out;
}

std::array<double, figures> drawn_month(const AreaMonth& month, units::Area size,
                                        const AreaDraw& draw) {
    WasteInputs in = *month.inputs;
    const auto need = need_with_leaching(
        *month.landscape_et * draw.et,
        std::min(*month.effective_rain, *month.landscape_et * draw.et), month.leaching);
    in.need = need * size * (draw.size * month.metered_share);
    const double estimated = 1.0 + month.estimated_share * (draw.estimated - 1.0);
    in.use *= draw.meter * estimated;
    in.leak *= draw.meter;
    in.achieved = units::Multiplier::of(draw.multiplier[month.uniformity]);
    const WasteAccount account = waste_account(in);
    std::array<double, figures> out{in.need.si(), in.use.si()};
    for (std::size_t i = 0; i < waste_lines().size(); ++i) {
        out[i + 2] = (account.*waste_lines()[i].part).si();
    }
    return out;
}

std::vector<CanAccount> drawn_cans(const AreaCase& one, const AreaDraw& draw) {
    CanCase days = one.days;
    for (auto& et : days.crop_et) et *= draw.et;
    days.size *= draw.size;
    days.zone.available *= draw.soil;
    days.zone.start_depletion *= draw.soil;
    for (CanPeriod& period : days.periods) {
        period.reached *= draw.meter;
        period.off_target *= draw.meter;
        period.leak *= draw.meter;
    }
    return can_accounts(days, draw.cans[one.uniformity]);
}

/// The draws of one site, area by area, so that memory holds one area at a time besides the sums.
class Run {
  public:
    Run(const SeasonResult& season, std::span<const AreaCase> cases, const IntervalChoice& choice)
        : season_(season), cases_(cases), choice_(choice) {
        for (int d = 0; d < std::max(choice.draws, choice.can_draws); ++d) {
            site_draws_.push_back(draw_site(choice.seed, static_cast<std::uint64_t>(d)));
        }
    }

    SeasonIntervals run() {
        SeasonIntervals out;
        out.choice = choice_;
        months_.resize(season_.months.size());
        can_months_.resize(season_.months.size());
        for (std::size_t i = 0; i < season_.areas.size(); ++i) out.areas.push_back(run_area(i));
        Samples<figures> total;
        Samples<can_figures> can_total;
        for (std::size_t k = 0; k < months_.size(); ++k) {
            out.months.push_back(summary(months_[k], can_months_[k]));
            if (!months_[k].empty()) add(total, months_[k]);
            if (!can_months_[k].empty()) add(can_total, can_months_[k]);
        }
        out.total = summary(total, can_total);
        return out;
    }

  private:
    std::optional<AccountIntervals> summary(const Samples<figures>& samples,
                                            const Samples<can_figures>& can_samples) const {
        if (samples.empty()) return std::nullopt;
        AccountIntervals out;
        const auto all = intervals_of(samples, choice_.confidence);
        out.need = all[0];
        out.use = all[1];
        std::copy(all.begin() + 2, all.end(), out.lines.begin());
        if (!can_samples.empty()) out.by_cans = intervals_of(can_samples, choice_.confidence);
        return out;
    }

    std::optional<AccountIntervals> run_area(std::size_t index) {
        const AreaSeason& area = season_.areas[index];
        std::vector<Samples<figures>> months(area.months.size());
        for (std::size_t k = 0; k < months.size(); ++k) {
            if (area.months[k].inputs) months[k].resize(static_cast<std::size_t>(choice_.draws));
        }
        stats::in_pieces(static_cast<std::size_t>(choice_.draws), choice_.threads,
                         [&](std::size_t begin, std::size_t end) {
            for (std::size_t d = begin; d < end; ++d) {
                const auto draw = draw_area(area, site_draws_[d], choice_.seed, d, false);
                for (std::size_t k = 0; k < months.size(); ++k) {
                    if (months[k].empty()) continue;
                    months[k][d] = drawn_month(area.months[k], area.size, draw);
                }
            }
        });
        Samples<figures> total;
        for (std::size_t k = 0; k < months.size(); ++k) {
            if (months[k].empty()) continue;
            add(total, months[k]);
            add(months_[k], months[k]);
        }
        return summary(total, run_cans(index));
    }

    Samples<can_figures> run_cans(std::size_t index) {
        const AreaSeason& area = season_.areas[index];
        const auto draws = static_cast<std::size_t>(choice_.can_draws);
        std::vector<Samples<can_figures>> months(area.months.size());
        for (const AreaCase& one : cases_) {
            if (one.area != index || draws == 0) continue;
            for (const std::size_t k : one.months) months[k].resize(draws);
            stats::in_pieces(draws, choice_.threads, [&](std::size_t begin, std::size_t end) {
                for (std::size_t d = begin; d < end; ++d) {
                    const auto draw = draw_area(area, site_draws_[d], choice_.seed, d, true);
                    const auto accounts = drawn_cans(one, draw);
                    for (std::size_t j = 0; j < accounts.size(); ++j) {
                        for (std::size_t i = 0; i < can_figures; ++i) {
                            months[one.months[j]][d][i] = (accounts[j].*can_lines()[i].part).si();
                        }
                    }
                }
            });
        }
        Samples<can_figures> total;
        for (std::size_t k = 0; k < months.size(); ++k) {
            if (months[k].empty()) continue;
            add(total, months[k]);
            add(can_months_[k], months[k]);
        }
        return total;
    }

    const SeasonResult& season_;
    std::span<const AreaCase> cases_;
    IntervalChoice choice_;
    std::vector<SiteDraw> site_draws_;
    std::vector<Samples<figures>> months_;         ///< of the site; empty without an account
    std::vector<Samples<can_figures>> can_months_;
};

}  // namespace

SeasonIntervals season_intervals(const SeasonInputs& in, const SeasonResult& season,
                                 const IntervalChoice& choice) {
    if (choice.draws < 100 || (choice.can_draws != 0 && choice.can_draws < 100)) {
        throw InputError({phrase("budget", "%1 and %2 draws"), choice.draws, choice.can_draws},
                         phrase("budget", "100 draws or more, or none by cans"));
    }
    if (!(choice.confidence > 0.0 && choice.confidence < 1.0)) {
        throw InputError(units::format_shortest(choice.confidence), phrase("budget", "a confidence between 0 and 1"));
    }
    std::vector<AreaCase> cases;
    if (choice.can_draws > 0) {
        const calendar::TimeZone zone(in.site.time_zone);
        const auto weather = season_weather(in);
        cases = area_cases(in, weather, MeteredSite(in.meters, zone, in.from, in.to), season);
    }
    auto out = Run(season, cases, choice).run();
    out.method = {phrase("budget",
                         "Monte Carlo, %1 draws (%2 by cans), seed %3, quantiles at %4 %; off-target "
                         "share, effective rain and shares of a meter are taken as they are"),
                  choice.draws, choice.can_draws, choice.seed, units::format_fixed(100.0 * choice.confidence, 0)};
    out.source = phrase("budget", "sizes of the uncertainties: schemas/reference/season_uncertainty.csv");
    return out;
}

}  // namespace evenfall::budget
