// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/audit/test_analysis.h"

#include <iosfwd>
#include <string>
#include <vector>

namespace evenfall::cli {

/// What a field crew reads: the catches as bars, the map, the figures, the advice.
/// @param remarks  what the reader of the file and the options had to say
void print_uniformity(std::ostream& out, const audit::CatchTest& test, const audit::TestAnalysis& a,
                      const std::vector<std::string>& remarks);

}  // namespace evenfall::cli
