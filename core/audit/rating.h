// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/uniformity.h"
#include "core/reference/table.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace evenfall::audit {

/// What one source calls a figure.
struct Rating {
    std::string system;
    std::string heads;   ///< the kinds of head or machine the row is for
    std::string figure;  ///< "du_lq", "cu" or "statistical"
    double percent;      ///< the figure that was rated
    std::string rating;
    std::optional<double> at_least;  ///< percent
    std::optional<double> below;
    std::string source;
    reference::Mark mark;
};

/// Every band of schemas/reference/rating_bands.csv that the result falls into, side by side: the
/// sources disagree, and no verdict is formed here.
/// @param heads  "spray", "rotor", "impact", "solid_set", "pivot", "lateral" or "traveller"; empty
///               when not known: then the rows for every kind of fixed head are given
/// Tests: tests/audit/field_checks_test.cpp
std::vector<Rating> ratings(const UniformityResult& result, Layout layout, std::string_view heads);

}  // namespace evenfall::audit
