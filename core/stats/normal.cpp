// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stats/normal.h"

#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <limits>

namespace evenfall::stats {
namespace {

constexpr double root_two = 1.41421356237309504880;

}  // namespace

double normal_cdf(double z) { return 0.5 * std::erfc(-z / root_two); }

double normal_quantile(double p) {
    if (p <= 0.0) return -std::numeric_limits<double>::infinity();
    if (p >= 1.0) return std::numeric_limits<double>::infinity();
    return -root_two * boost::math::erfc_inv(2.0 * p);
}

}  // namespace evenfall::stats
