// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/catch_test.h"
#include "core/input_error.h"
#include "core/sentence.h"

#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// A catch test as the statistics see it: depths, and how much ground each one stands for.
/// Tests: tests/audit/resample_test.cpp, tests/audit/property_test.cpp, tests/audit/traveller_test.cpp
namespace evenfall::audit {

/// How a can on a centre pivot's radius is weighted. Published coefficients assume the first with
/// equal spacing; with unequal spacing only the second stands for the ground.
enum class PivotWeights : int {
    distance = 1,  ///< Heermann-Hein: the distance from the pivot point
    ring_area = 2  ///< the ring between the circles half way to the neighbouring cans
};

/// How cans at irregular positions are weighted.
enum class IrregularWeights : int {
    voronoi = 1,  ///< the part of the tested ground that is nearer to this can than to any other
    equal = 2
};

/// Every choice that turns catches into weighted depths. No defaults inside the engine: the caller
/// names them and they come back in the result.
struct SampleChoices {
    PivotWeights pivot_weights;
    double inner_share_left_out;  ///< pivot: of the largest distance, 0 to below 1
    IrregularWeights irregular_weights;
    /// Ground that was tested, in the test's position unit, a ring of x and y. Without it the
    /// cans' convex hull, widened by half the usual distance between neighbours, is taken.
    std::vector<std::pair<double, double>> outline;
};

/// The choices of the trade's own forms: distance weights on pivots and nothing left out, Voronoi
/// weights at irregular positions.
SampleChoices usual_choices();

struct Point {
    units::Length x;
    units::Length y;
};

/// One depth with its weight. For a traveller it is a strip across the lane, not a can.
struct SampleCan {
    std::string label;
    units::Depth depth;
    double weight = 1.0;
    std::optional<Point> position;  ///< pivot, lateral, traveller: along x
};

struct Sample {
    std::vector<SampleCan> cans;  ///< in the order of the sheet
    Phrase layout;                ///< "solid-set grid", "centre pivot" ...
    Phrase weights;               ///< "each can the same area", "distance from the pivot point" ...
    Phrase coefficient;           ///< what 1 - mean deviation / mean is called here
    bool equal_weights = true;
    std::vector<Sentence> notes;  ///< assumptions a report has to print
};

/// Cans that are left out by their reason are not in the sample; weights are those of the rest.
/// @throws InputError with every issue that check() finds, or when what the layout needs is absent
Sample sample_of(const CatchTest& test, const SampleChoices& choices);

/// Everything wrong with a test: fewer than four cans that count, every can dry, a label twice, a
/// reading that is negative, not finite, over the can's size or beyond any sprinkler, a missing
/// position, side or throat area, a run time of zero, a lane narrower than the can spacing.
std::vector<Issue> check(const CatchTest& test);

/// The depth of one can. @throws InputError when the throat area is needed and absent
units::Depth depth_of(const CatchTest& test, const Catch& can);

/// Depths of the cans that count, in the order of the sheet, without any overlap or weight.
std::vector<units::Depth> depths_of(const CatchTest& test);

}  // namespace evenfall::audit
