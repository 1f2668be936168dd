// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/finding.h"
#include "core/audit/multiplier.h"
#include "core/audit/pressure.h"
#include "core/audit/rating.h"
#include "core/audit/resample.h"
#include "core/audit/scheduling_coefficient.h"
#include "core/audit/stations.h"
#include "core/audit/suspect.h"
#include "core/audit/test_quality.h"
#include "core/audit/uniformity.h"
#include "core/sentence.h"

#include <optional>
#include <string>
#include <vector>

/// Everything that is said of one catch test, worked out once for the command line, reports and
/// filings. Tests: tests/audit/test_analysis_test.cpp
namespace evenfall::audit {

struct AnalysisChoices {
    QuarterRule quarter_rule;
    SampleChoices sample;
    Resampling resampling;
    std::vector<double> window_shares;       ///< for the scheduling coefficient
    std::string heads;                       ///< "spray", "rotor" ...; empty when not known
    std::optional<double> least_du_lq;       ///< a program's threshold, to weigh
};

/// The usual sample choices, resampling and window shares, heads not known, nothing to weigh.
AnalysisChoices usual_analysis(QuarterRule rule);

/// Intervals of the figures by one scheme. Net rate in mm/h, mean in mm.
struct FigureIntervals {
    Sentence scheme;
    std::optional<stats::Interval> du_lq, du_lh, cu, sc_low_quarter, sc_driest_can, mean_mm, net_rate_mm_h;
};

/// What has to be applied on average so that a share of the ground gets the target.
struct AdequacyLine {
    double share;
    std::optional<double> times_target;  ///< mean depth over target; absent where too much stays dry
};

/// A traveller's mean depth by its flow beside the caught one.
struct FlowDepth {
    units::Depth by_flow;
    units::Depth caught;
    double caught_less;  ///< share of the water by flow that the cans did not catch; negative: more
};

struct TestAnalysis {
    UniformityResult figures;
    Multipliers multipliers{std::nullopt, units::Multiplier::of(1.0), std::nullopt, ""};
    Sample sample;
    std::vector<Catch> excluded;                  ///< cans left out, with their reasons
    std::optional<UniformityResult> with_all;     ///< as if none had been left out
    std::string why_not_all;
    FigureIntervals intervals;                    ///< BCa
    FigureIntervals widened;                      ///< BCa, widened for few cans
    std::optional<FigureIntervals> blocks;        ///< neighbouring cans drawn together
    std::size_t resamples = 0;
    std::uint64_t seed = 0;
    std::optional<double> confidence_of_least;    ///< that the true DU_LQ reaches the threshold
    std::optional<std::size_t> more_cans;         ///< to halve the interval of DU_LQ
    std::vector<SchedulingResult> scheduling;
    double share_at_mean = 0.0;                   ///< of the ground that gets the mean depth or more
    std::vector<AdequacyLine> adequacy;
    std::vector<RuleOutcome> rules;
    std::vector<SuspectCan> suspects;
    std::vector<Rating> ratings;
    std::optional<PressureCheck> pressures;
    std::vector<SystemFigure> whole_system;
    std::vector<FindingSummary> findings;
    bool inspected = false;                       ///< findings were recorded, even if none
    StationSplit stations;
    std::optional<FlowDepth> flow_depth;
};

/// @throws InputError with every issue of the test, its pressures and findings
TestAnalysis analyse_test(const CatchTest& test, const AnalysisChoices& choices);

/// What to do next, most pressing first, one sentence each; cautions included.
std::vector<std::string> advice(const TestAnalysis& analysis);

}  // namespace evenfall::audit
