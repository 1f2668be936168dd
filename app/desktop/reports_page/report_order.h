// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/shown.h"
#include "app/workflow/season.h"
#include "reports/content/report.h"

#include <filesystem>
#include <string>

namespace evenfall::desktop {

enum class ReportKind { season, audit_of_site, audit_of_test };

/// What the user has chosen on the reports page.
struct ReportOrder {
    ReportKind kind = ReportKind::season;
    std::string site;
    std::string test;
    calendar::Month from{};
    calendar::Month to{};
    std::string program = "general";
    audit::QuarterRule quarter_rule = audit::QuarterRule::whole_cans;
    UnitsShown units = UnitsShown::us;
    std::string created;
    std::string made_by;  ///< program and version
};

/// Builds the report from a book. @throws InputError, store::BookError
reports::Report build_report(const store::Book& book, const ReportOrder& order);
/// "season-HB-2025-01-2025-12": the name of its files.
std::string report_file_name(const ReportOrder& order);

}  // namespace evenfall::desktop
