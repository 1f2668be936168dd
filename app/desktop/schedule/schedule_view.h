// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/figure.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/shown.h"
#include "app/workflow/schedule.h"

#include <vector>

/// What the schedule page shows of an answer, each figure with how it came about. Values are the
/// core's; nothing is worked out here.
/// Tests: tests/app/desktop_schedule_test.cpp
namespace evenfall::desktop {

/// Minutes a week: a row for each station, a column for each month of the year, and what does not
/// fit below.
FigureRows minutes_table(const workflow::ScheduleAnswer& answer, UnitsShown units);
/// One month: depth, times, days, cycles and soak of each station.
FigureRows month_table(const workflow::ScheduleAnswer& answer, std::size_t month, UnitsShown units);
/// Start times of one month by the site's clock; hours after the opening without a window.
FigureRows starts_table(const workflow::ScheduleAnswer& answer, std::size_t month);
/// Stations, months, and the month that fits worst.
std::vector<Figure> schedule_figures(const workflow::ScheduleAnswer& answer);
/// What a person should look at, one sentence each: shortfalls, too few days, what was left out,
/// what was assumed.
QStringList schedule_findings(const workflow::ScheduleAnswer& answer);

/// "Mon", "Tue" and so on; 0 is Monday.
QString day_title(int weekday);
/// "Mon, Wed, Fri, 22:00–06:00, 2 at once".
QString rule_text(const schedule::WateringRule& rule);

}  // namespace evenfall::desktop
