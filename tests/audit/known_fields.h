// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/sample.h"
#include "core/stats/random.h"

#include <string>
#include <vector>

/// CONSTRUCTED ground whose uniformity is known, to count how often an interval holds it.
namespace evenfall::test {

struct Truth {
    double du_lq;
    double du_lh;
    double cu;
    double mean;  ///< mm
};

/// Depths that follow a distribution, cans placed at random.
///   normal    mean 10, v = 0.2: DU_LQ = 1 - 1.271106 v, DU_LH = CU = 1 - 0.797885 v
///   even      evenly from 5 to 15: DU_LQ = 0.625, DU_LH = CU = 0.75
///   skewed    gamma of shape 4: many light catches, few heavy ones
/// Depths on a piece of ground, cans at random places or in a grid with a random origin.
///   cones     square of sprinklers 0.55 of a diameter apart, cone profiles, all alike
///   uneven    the same with each head's flow off by up to 30 %, on ground of 8 x 8 heads
struct Field {
    std::string name;
    std::string placement;  ///< "random" or "grid"
    Truth truth;
};

/// The fields there are, with their truths; those without a closed form are summed finely.
std::vector<Field> known_fields();

/// A test of n cans on the field (for a grid the next smaller k x k).
audit::Sample drawn_test(const Field& field, std::size_t n, stats::SplitMix64& random);

}  // namespace evenfall::test
