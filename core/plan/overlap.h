// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/rate_field.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <optional>
#include <string>
#include <vector>

/// What a plan should do: the predicted application of all its heads.
///
/// All heads run for the same time. Every turf cell counts once (equal areas):
///     m        mean rate over the turf
///     DU_LQ    mean of the lowest quarter / m; exactly a quarter of the cells, the last in part
///     DU_LH    mean of the lowest half / m
///     CU       1 - sum |x - m| / (n m)
///     SC(s)    m / mean of the driest square window of share s of the turf that lies wholly on turf
///     coverage shares of the turf by the number of heads whose circle and arc reach a cell
///     off-target share  water outside every outline or on no-water ground / all water
/// Water balance: on target + off target against the flow of all heads.
/// A prediction is not a test: it knows no wind, pressure loss or wear beyond what it is told.
/// Source: definitions as in core/audit/uniformity.h; part-circle rule by conservation of volume.
/// Tests: tests/plan/overlap_test.cpp
namespace evenfall::plan {

struct OverlapOptions {
    std::optional<units::Length> cell;    ///< empty: default_cell
    std::optional<Wind> wind;
    std::vector<double> window_shares;    ///< for the scheduling coefficient, of the turf, above 0 to 1
    unsigned threads = 1;
};

struct Coverage {
    units::Share none = units::Share::of(0.0);
    units::Share one = units::Share::of(0.0);           ///< exactly one
    units::Share two_or_more = units::Share::of(0.0);
    units::Share three_or_more = units::Share::of(0.0);
};

struct WindowCoefficient {
    double window_share = 0.0;
    std::optional<units::SchedulingCoefficient> value;  ///< empty: no such window lies on the turf, or it is dry
};

struct Prediction {
    // Empty where no water falls on the turf.
    std::optional<units::LowQuarterDu> du_lq;
    std::optional<units::LowHalfDu> du_lh;
    std::optional<units::ChristiansenCu> cu;
    std::vector<WindowCoefficient> scheduling;
    units::Rate mean_rate;
    units::Rate lowest_rate;
    units::Rate highest_rate;
    Coverage coverage;
    units::Share off_target_share = units::Share::of(0.0);
    units::Share on_no_water_share = units::Share::of(0.0);  ///< part of off target
    units::Flow total_flow;      ///< of all heads, as the plan says
    units::Flow on_target_flow;  ///< found on the turf
    double balance_error = 0.0;  ///< (on + off target found - total) / total
    units::Area turf;
    std::size_t heads = 0;
    units::Length cell_width;
    units::Length cell_height;
    double largest_correction = 0.0;  ///< see RateField
    Sentence method;
    Sentence convention;
    Sentence source;
    std::vector<Sentence> assumed;
};

struct Overlap {
    RateField field;
    std::vector<Surface> ground;
    Prediction prediction;
};

/// @throws InputError  an unsound plan, a cell or window out of range, or no turf cell at all
Overlap overlap_of(const Plan& plan, const OverlapOptions& options);

/// The figures of a field that was edited.
Prediction summarise(const RateField& field, const std::vector<Surface>& ground,
                     const OverlapOptions& options);

}  // namespace evenfall::plan
