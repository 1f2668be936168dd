// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/figure.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/shown.h"
#include "app/workflow/season.h"
#include "reports/content/chart.h"

#include <vector>

/// What the season page shows of an answer: figures, charts and the months, each figure with how
/// it came about. Values are the core's; only cumulative use is summed here for the drawing.
/// Tests: tests/app/desktop_paths_test.cpp, tests/app/desktop_spanish_test.cpp
namespace evenfall::desktop {

/// Use, need, budget, over budget, what could be saved, leak: totals of the site.
std::vector<Figure> season_figures(const workflow::SeasonAnswer& answer, UnitsShown units);

struct ChartView {
    reports::SeriesChart chart;
    reports::Table table;
    QString sentence;
};
ChartView use_chart(const workflow::SeasonAnswer& answer, UnitsShown units);
ChartView cumulative_chart(const workflow::SeasonAnswer& answer, UnitsShown units);
ChartView waste_chart(const workflow::SeasonAnswer& answer, UnitsShown units);

struct MonthsTable {
    QStringList heads;
    std::vector<std::vector<FigureCell>> rows;
};
MonthsTable months_table(const workflow::SeasonAnswer& answer, UnitsShown units);
MonthsTable areas_table(const workflow::SeasonAnswer& answer, UnitsShown units);

/// How a kind of figure of a season comes about, for the period in question.
enum class SeasonColumn { use, need, budget, over_budget, reference_et, rain, leak, avoidable };
Figure season_figure(const workflow::SeasonAnswer& answer, const budget::SeasonFigures& period,
                     const QString& when, SeasonColumn column, UnitsShown units);

}  // namespace evenfall::desktop
