// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/sample.h"
#include "core/units/ratio.h"

#include <optional>

/// How much of the ground gets enough. The pattern of the test is scaled to another mean depth: a
/// longer run waters every spot in the same proportion.
///
///     adequacy(D, T)   share of the ground with x D / m >= T
///     depth for share  the least D with adequacy(D, T) >= A: T m / (largest catch that a share A of
///                      the ground reaches or exceeds)
///
/// Follows from the definition; no source needed. Tests: tests/audit/adequacy_test.cpp
namespace evenfall::audit {

/// Share of the ground that gets at least `target` when `mean` is applied on average.
/// @throws InputError for a target or mean that is not above zero
units::Share adequacy(const Sample& sample, units::Depth mean, units::Depth target);

/// Mean depth to apply so that a share of the ground gets at least `target`; nothing when less than
/// that share gets any water at all.
/// @throws InputError for a target or share that is not above zero
std::optional<units::Depth> depth_for_adequacy(const Sample& sample, units::Depth target,
                                               units::Share share);

}  // namespace evenfall::audit
