// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/quarter_rule.h"
#include "core/audit/sample.h"
#include "core/sentence.h"
#include "core/units/ratio.h"

#include <optional>
#include <string>
#include <vector>

namespace evenfall::audit {

/// How evenly the water fell. Symbols: x catch as a depth, w its weight, m = sum w x / sum w.
///
///     DU_LQ = mean of the lowest quarter / m         the quarter by QuarterRule
///     DU_LH = mean of the lowest half / m            exactly half; the middle can counts in part
///     CU    = 1 - sum w |x - m| / (m sum w)          Christiansen; with w the distance from a
///                                                    pivot point it is Heermann and Hein's
///     CV    = s / m, s the sample standard deviation; statistical uniformity = 1 - CV
///     net rate = m / run time                        where the sprinklers stand still
///
/// low half, high half = means of the drier and the wetter half of the ground
///
/// In skewed data DU_LQ above CU is possible, and CU may be negative: neither is an error.
/// DU_LQ <= DU_LH holds unless one can stands for more than a quarter of the ground.
///
/// Sources: CU, Zoldoske & Solomon 1988; DU_LQ, Irrigation Association landscape auditor worksheet;
/// Heermann & Hein 1968 as the method of ANSI/ASAE S436.1. Tests: tests/audit/uniformity_test.cpp
struct UniformityResult {
    std::size_t cans = 0;        ///< that count: strips for a traveller
    std::size_t cans_read = 0;   ///< on the sheet
    std::size_t excluded = 0;    ///< left out, each with its reason
    units::Depth mean;
    units::Depth low_quarter_mean;
    units::Depth low_half_mean;
    units::Depth high_half_mean;
    units::LowQuarterDu du_lq = units::LowQuarterDu::of(0.0);
    QuarterRule quarter_rule = QuarterRule::part_can;
    double cans_in_low_quarter = 0.0;
    units::LowHalfDu du_lh = units::LowHalfDu::of(0.0);
    units::ChristiansenCu cu = units::ChristiansenCu::of(0.0);
    units::Variation cv = units::Variation::of(0.0);
    units::StatisticalUniformity statistical_uniformity = units::StatisticalUniformity::of(0.0);
    std::optional<units::Rate> net_rate;  ///< absent without a run time and for moving machines
    Phrase layout;
    Phrase weights;
    Phrase coefficient;           ///< what `cu` is called under these weights
    std::vector<Sentence> notes;  ///< assumptions and conventions to print
};

/// @throws InputError with every issue found, see check()
UniformityResult analyse_uniformity(const CatchTest& test, QuarterRule rule);
UniformityResult analyse_uniformity(const CatchTest& test, QuarterRule rule,
                                    const SampleChoices& choices);
/// The figures of a sample alone; counts of the sheet and net rate are left empty.
/// @throws InputError for fewer than four cans or when all are dry
UniformityResult analyse_sample(const Sample& sample, QuarterRule rule);

/// Net rate = mean depth / run time: 600 V (mL) / (t (min) A (cm2)) in mm/h.
units::Rate net_rate(units::Depth mean, units::Duration run);

}  // namespace evenfall::audit
