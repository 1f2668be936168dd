// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/audit/uniformity.h"

#include "core/audit/low_share.h"
#include "core/audit/stations.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace evenfall::audit {
namespace {

struct Sorted {
    std::vector<double> value;  ///< m
    std::vector<double> weight;
};

/// Lowest first, equal catches by weight, so that the order on the sheet cannot matter.
Sorted sorted(const Sample& sample) {
    std::vector<std::pair<double, double>> pairs;
    pairs.reserve(sample.cans.size());
    for (const SampleCan& can : sample.cans) pairs.emplace_back(can.depth.si(), can.weight);
    std::sort(pairs.begin(), pairs.end());
    Sorted s;
    for (const auto& [value, weight] : pairs) {
        s.value.push_back(value);
        s.weight.push_back(weight);
    }
    return s;
}

/// A ratio of two means of the same non-negative numbers, the lower one above: at most one but for
/// rounding.
double at_most_one(double ratio) { return std::min(ratio, 1.0); }

}  // namespace

units::Rate net_rate(units::Depth mean, units::Duration run) {
    if (!(run.si() > 0.0))
        throw InputError(phrase("audit", "run time of zero"), phrase("audit", "a run time above zero minutes"));
    return mean / run;
}

UniformityResult analyse_sample(const Sample& sample, QuarterRule rule) {
    if (sample.cans.size() < 4) {
        throw InputError({phrase("audit", "%1 cans"), sample.cans.size()},
                         phrase("audit", "at least four that count"));
    }
    const Sorted s = sorted(sample);
    const double mean = mean_of(s.value, s.weight);
    if (!(mean > 0.0))
        throw InputError(phrase("audit", "every can dry"), phrase("audit", "water in at least one can"));

    const LowShare quarter = low_share(s.value, s.weight, 0.25, rule);
    const LowShare half = low_share(s.value, s.weight, 0.5, QuarterRule::part_can);
    const double cv = variation_of(s.value, s.weight);

    UniformityResult r;
    r.cans = sample.cans.size();
    r.mean = units::Depth::from_si(mean);
    r.low_quarter_mean = units::Depth::from_si(quarter.mean);
    r.low_half_mean = units::Depth::from_si(half.mean);
    r.high_half_mean = units::Depth::from_si(2.0 * mean - half.mean);
    r.du_lq = units::LowQuarterDu::of(at_most_one(quarter.mean / mean));
    r.quarter_rule = rule;
    r.cans_in_low_quarter = quarter.cans;
    r.du_lh = units::LowHalfDu::of(at_most_one(half.mean / mean));
    r.cu = units::ChristiansenCu::of(mean_deviation_uniformity(s.value, s.weight));
    r.cv = units::Variation::of(cv);
    r.statistical_uniformity = units::StatisticalUniformity::of(1.0 - cv);
    r.layout = sample.layout;
    r.weights = sample.weights;
    r.coefficient = sample.coefficient;
    r.notes = sample.notes;
    const double total = std::accumulate(s.weight.begin(), s.weight.end(), 0.0);
    const double largest = *std::max_element(s.weight.begin(), s.weight.end());
    if (sample.equal_weights && sample.cans.size() % 4 != 0) {
        r.notes.push_back({phrase("audit", "%1 cans do not divide into quarters; low quarter by the rule %2"),
                           sample.cans.size(), text_of(rule)});
    }
    if (largest > 0.25 * total) {
        r.notes.push_back(phrase("audit", "one can stands for more than a quarter of the ground"));
    }
    return r;
}

UniformityResult analyse_uniformity(const CatchTest& test, QuarterRule rule,
                                    const SampleChoices& choices) {
    UniformityResult r = analyse_sample(sample_of(test, choices), rule);
    r.cans_read = test.catches.size();
    r.excluded = static_cast<std::size_t>(
        std::count_if(test.catches.begin(), test.catches.end(),
                      [](const Catch& c) { return !c.excluded.empty(); }));
    const bool stands_still = test.layout == Layout::grid || test.layout == Layout::irregular;
    if (const auto run = run_time(test); stands_still && run) r.net_rate = net_rate(r.mean, *run);
    return r;
}

UniformityResult analyse_uniformity(const CatchTest& test, QuarterRule rule) {
    return analyse_uniformity(test, rule, usual_choices());
}

}  // namespace evenfall::audit
