// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/test_analysis.h"

#include "core/audit/adequacy.h"
#include "core/audit/traveller.h"
#include "core/units/number.h"

#include <algorithm>
#include <utility>

namespace evenfall::audit {
namespace {

using stats::Interval;

std::optional<Interval> times(std::optional<Interval> i, double factor) {
    if (i) {
        i->low *= factor;
        i->high *= factor;
    }
    return i;
}

/// Of 1 / x, where x stays above zero.
std::optional<Interval> inverse(std::optional<Interval> i) {
    if (!i || !(i->low > 0.0)) return std::nullopt;
    i->low = 1.0 / std::exchange(i->high, 1.0 / i->low);
    return i;
}

FigureIntervals intervals_of(const ResampledFigures& r, double level, std::size_t cans, bool widened,
                             std::optional<units::Duration> run) {
    const auto widening = [&](std::string_view figure) {
        return widened ? widening_for(figure, cans) : 1.0;
    };
    FigureIntervals f;
    f.scheme = r.scheme;
    f.du_lq = r.du_lq.interval(level, widening("du_lq"));
    f.du_lh = r.du_lh.interval(level, widening("du_lh"));
    f.cu = r.cu.interval(level, widening("cu"));
    f.sc_low_quarter = inverse(f.du_lq);
    f.sc_driest_can = r.driest_can.interval(level, 1.0);
    const auto mean = r.mean.interval(level, widening("mean"));
    f.mean_mm = times(mean, 1.0 / units::millimetre.si());
    if (run) f.net_rate_mm_h = times(mean, 1.0 / (units::millimetre_per_hour * *run).si());
    return f;
}

void add_intervals(const CatchTest& test, const AnalysisChoices& choices, TestAnalysis& a) {
    const auto plain = resample_cans(a.sample, choices.quarter_rule, choices.resampling);
    const std::size_t cans = a.sample.cans.size();
    const auto run = a.figures.net_rate ? run_time(test) : std::nullopt;
    const double level = choices.resampling.level;
    a.intervals = intervals_of(plain, level, cans, false, run);
    a.widened = intervals_of(plain, level, cans, true, run);
    if (const auto b = resample_blocks(a.sample, choices.quarter_rule, choices.resampling, std::nullopt)) {
        a.blocks = intervals_of(*b, level, cans, false, run);
    }
    a.resamples = plain.resamples;
    a.seed = plain.seed;
    if (choices.least_du_lq) {
        a.confidence_of_least = plain.du_lq.confidence_of_at_least(*choices.least_du_lq);
    }
    a.more_cans = more_cans_to_halve(a.sample, choices.quarter_rule, choices.resampling);
}

void add_all_cans(const CatchTest& test, const AnalysisChoices& choices, TestAnalysis& a) {
    CatchTest all = test;
    for (Catch& c : all.catches) {
        if (c.excluded.empty()) continue;
        a.excluded.push_back(c);
        c.excluded.clear();
    }
    if (a.excluded.empty()) return;
    try {
        a.with_all = analyse_uniformity(all, choices.quarter_rule, choices.sample);
    } catch (const InputError& e) {
        a.why_not_all = e.what();
    }
}

void add_adequacy(TestAnalysis& a) {
    const units::Depth one = 1.0 * units::millimetre;
    a.share_at_mean = adequacy(a.sample, one, one).value();
    for (const double share : {0.5, 0.75, 0.8, 0.9, 0.95}) {
        AdequacyLine line{share, std::nullopt};
        if (const auto d = depth_for_adequacy(a.sample, one, units::Share::of(share))) {
            line.times_target = *d / one;
        }
        a.adequacy.push_back(line);
    }
}

void add_flow_depth(const CatchTest& test, TestAnalysis& a) {
    if (test.layout != Layout::traveller || !test.flow || !test.travel_speed || !test.lane_spacing) return;
    const units::Depth by_flow = depth_from_flow(test.flow->quantity(), test.lane_spacing->quantity(),
                                                 test.travel_speed->quantity());
    if (!(by_flow.si() > 0.0)) {
        throw InputError({phrase("audit", "%1 at %2"), test.flow->text(), test.travel_speed->text()},
                         phrase("audit", "a flow and a travel speed above zero"));
    }
    a.flow_depth = {by_flow, a.figures.mean, 1.0 - a.figures.mean / by_flow};
}

}  // namespace

AnalysisChoices usual_analysis(QuarterRule rule) {
    return {rule, usual_choices(), usual_resampling(), usual_window_shares(), "", std::nullopt};
}

TestAnalysis analyse_test(const CatchTest& test, const AnalysisChoices& choices) {
    TestAnalysis a;
    a.figures = analyse_uniformity(test, choices.quarter_rule, choices.sample);
    a.sample = sample_of(test, choices.sample);
    a.multipliers = multipliers(a.figures.du_lq, a.figures.du_lh);
    add_all_cans(test, choices, a);
    add_intervals(test, choices, a);
    a.scheduling = scheduling_coefficients(a.sample, a.figures.du_lq, choices.window_shares);
    add_adequacy(a);
    a.rules = judge_test(test, choices.heads);
    a.suspects = suspect_cans(a.sample);
    a.ratings = ratings(a.figures, test.layout, choices.heads);
    if (test.pressures && !test.pressures->empty()) {
        a.pressures = check_pressures(*test.pressures, test.file);
        a.whole_system = whole_system_figures(a.figures.du_lq, a.figures.cu, *a.pressures);
    }
    a.inspected = test.findings.has_value();
    if (test.findings) a.findings = summarise(*test.findings, test.file);
    a.stations = split_stations(test);
    add_flow_depth(test, a);
    return a;
}

}  // namespace evenfall::audit
