// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/sample.h"

#include <string>
#include <vector>

namespace evenfall::audit {

/// A can whose catch lies far from that of its neighbours: a reading error, a can that tipped, a
/// head just beside it, or a true dry or wet spot. It is pointed out and never removed.
struct SuspectCan {
    std::string label;
    units::Depth caught;
    units::Depth neighbours;  ///< median of the cans around it, or of all where there are no positions
    double score;             ///< 0.6745 (difference - median difference) / median absolute deviation
};

/// Compares each can with the median of its nearest cans (as many as audit_limits.csv says; without
/// positions with all others). A can is suspect when its score and its distance from the neighbours
/// as a share of the mean are both beyond the limits of that file.
///
/// Source of the score: Iglewicz & Hoaglin 1993 [memory]. Tests: tests/audit/field_checks_test.cpp
std::vector<SuspectCan> suspect_cans(const Sample& sample);

}  // namespace evenfall::audit
