// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/schedule/day_plan.h"

#include "core/input_error.h"

#include <algorithm>
#include <string>

namespace evenfall::schedule {

DayPlan plan_day(std::span<const DayRunOf> runs, int at_once) {
    if (at_once < 1) throw InputError(at_once, phrase("schedule", "one station at a time or more"));
    std::vector<int> line_free(static_cast<std::size_t>(at_once), 0);
    std::vector<int> ready(runs.size(), 0);
    int rounds = 0;
    for (const DayRunOf& run : runs) rounds = std::max(rounds, run.cycles);
    DayPlan plan;
    for (int cycle = 1; cycle <= rounds; ++cycle) {
        for (std::size_t i = 0; i < runs.size(); ++i) {
            const DayRunOf& run = runs[i];
            if (cycle > run.cycles || run.cycle_minutes <= 0) continue;
            const auto line = std::min_element(line_free.begin(), line_free.end());
            const int start = std::max(*line, ready[i]);
            *line = start + run.cycle_minutes;
            ready[i] = *line + run.soak_minutes;
            plan.starts.push_back({run.station, cycle, start, run.cycle_minutes});
            plan.length = std::max(plan.length, *line);
        }
    }
    std::stable_sort(plan.starts.begin(), plan.starts.end(),
                     [](const StartTime& a, const StartTime& b) { return a.start < b.start; });
    return plan;
}

}  // namespace evenfall::schedule
