// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/workflow/schedule_files.h"

#include "app/workflow/whole_file.h"
#include "core/schedule/schedule_text.h"
#include "reports/text/write_csv.h"

namespace evenfall::workflow {

std::string schedule_table_text(const schedule::BaseSchedule& schedule) {
    std::string text;
    for (const auto& row : schedule::schedule_rows(schedule)) {
        for (std::size_t i = 0; i < row.size(); ++i) text += (i == 0 ? "" : ",") + reports::csv_field(row[i]);
        text += "\r\n";
    }
    return text;
}

void write_schedule_table(const schedule::BaseSchedule& schedule, const std::filesystem::path& file) {
    write_whole_file(file, schedule_table_text(schedule));
}

void write_schedule_calendar(const schedule::BaseSchedule& schedule, calendar::Instant made_at,
                             const std::filesystem::path& file) {
    write_whole_file(file, schedule::schedule_calendar(schedule, made_at));
}

}  // namespace evenfall::workflow
