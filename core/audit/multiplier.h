// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/sentence.h"
#include "core/units/ratio.h"

#include <optional>
#include <string>

namespace evenfall::audit {

/// By how much a run is made longer so that the drier part of the ground is watered enough.
///
///     low half     1 / DU_LH                  from the cans
///     linear       1 / (a + b DU_LQ)          a, b from schemas/reference/multiplier_forms.csv
///     low quarter  1 / DU_LQ                  upper bound
///
/// They answer different questions and disagree, so all are given and a caller names the one used.
struct Multipliers {
    std::optional<units::Multiplier> low_half;     ///< absent when half the ground stayed dry
    units::Multiplier linear;
    std::optional<units::Multiplier> low_quarter;  ///< absent when a quarter stayed dry
    Sentence linear_source;                        ///< of a and b, with its mark
};

/// Where cans exist. Tests: tests/audit/multiplier_test.cpp
Multipliers multipliers(units::LowQuarterDu du_lq, units::LowHalfDu du_lh);

/// Where only DU_LQ is known: 1 / (0.4 + 0.6 DU_LQ), coefficients from the reference file.
units::Multiplier linear_multiplier(units::LowQuarterDu du_lq);

/// DU_LH for a normal distribution of depths with that DU_LQ: a + b DU_LQ. An estimate, never a
/// measured figure.
units::LowHalfDu low_half_if_normal(units::LowQuarterDu du_lq);

}  // namespace evenfall::audit
