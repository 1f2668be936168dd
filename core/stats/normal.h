// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace evenfall::stats {

/// Standard normal distribution function. Tests: tests/stats/normal_test.cpp
double normal_cdf(double z);

/// Its inverse; minus or plus infinity at 0 and 1. @pre 0 <= p <= 1
double normal_quantile(double p);

}  // namespace evenfall::stats
