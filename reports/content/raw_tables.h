// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/table.h"

#include "core/budget/season.h"

#include <memory>

/// The records a season was made from, streamed into workbook and CSV so that a reader has them.
/// Tests: tests/reports/text_test.cpp
namespace evenfall::reports {

/// Register values or interval volumes, as read, in each meter's own unit, in the order of the
/// meters and then of time.
RawTable readings_table(std::shared_ptr<const budget::SeasonInputs> inputs);

/// Days of weather in metric units, as the calculation took them; a gap is an empty cell.
/// Where days were worked out from hours or several stations, these days with their method.
RawTable weather_table(std::shared_ptr<const budget::SeasonInputs> inputs);

}  // namespace evenfall::reports
