// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/task.h"
#include "app/workflow/season.h"
#include "core/store/book.h"

#include <optional>
#include <string>
#include <vector>

/// One line per site for the sites page: what the book holds at once, and what a season's answer
/// adds in the background.
/// Tests: tests/app/desktop_window_test.cpp
namespace evenfall::desktop {

struct SiteRow {
    std::string code;
    std::string name;
    std::string organisation;
    std::size_t areas = 0;
    units::Area size{};
    std::size_t meters = 0;
    std::optional<calendar::Instant> last_reading;

    bool judged = false;                       ///< the answer below has been worked out
    std::optional<units::Volume> over_budget;
    std::vector<meter::MeterFinding> attention;  ///< the most pressing first
    QString not_judged_because;                  ///< such as no elevation; empty with no reading at all
};

/// Everything but the answers. @throws store::BookError
std::vector<SiteRow> site_rows(const store::Book& book);
/// Fills in the answer of the last year with readings.
void judge(const store::Book& book, SiteRow& row);

}  // namespace evenfall::desktop
