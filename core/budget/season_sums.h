// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/budget/season.h"

#include <optional>
#include <span>
#include <vector>

/// Adding up figures of areas, months and sites.
namespace evenfall::budget {

/// Adds use, accounts, the estimated share weighted by use, and flags.
void add_volumes(SeasonFigures& sum, const SeasonFigures& part);

void add_if_known(std::optional<units::Volume>& sum, const std::optional<units::Volume>& part);
void add_if_known(std::optional<units::Depth>& sum, const std::optional<units::Depth>& part);

/// Sum of months; nothing is netted between them.
SeasonFigures total_of(std::span<const SeasonMonth* const> months);

template <class M>
SeasonFigures total_of_all(const std::vector<M>& months) {
    std::vector<const SeasonMonth*> pointers;
    for (const M& month : months) pointers.push_back(&month);
    return total_of(pointers);
}

}  // namespace evenfall::budget
