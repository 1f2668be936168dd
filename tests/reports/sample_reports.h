// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/frame.h"

#include "core/audit/catch_test.h"
#include "core/budget/season.h"

#include <string>
#include <vector>

/// Reports over constructed inputs that the tests of all writers share. Constructed here: nothing
/// in them is a published figure.
namespace evenfall::reports::samples {

Frame frame(UnitsShown units);

/// 5 x 5 cans on a 10 ft grid, one of them left out.
audit::CatchTest grid_test();
/// `n` cans on a square grid with catches that rise across it.
audit::CatchTest grid_of(std::size_t n);
/// 14 cans along a pivot.
audit::CatchTest pivot_test();
/// 2 x 9 cans of a hose reel on 60 m lanes.
audit::CatchTest traveller_test();

/// One site, two areas (one with a catch test) on one meter, 2024, with a month without readings.
budget::SeasonInputs season_inputs();

Report audit(UnitsShown units);
Report season(UnitsShown units);
/// `n` sites with figures that differ; every seventh cannot be judged.
Report portfolio(UnitsShown units, std::size_t n);
/// Six heads on a small lawn with a path beside it.
Report plan(UnitsShown units);

}  // namespace evenfall::reports::samples
