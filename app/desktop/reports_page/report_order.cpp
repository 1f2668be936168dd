// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/reports_page/report_order.h"

#include "app/workflow/reports.h"
#include "app/workflow/write_report.h"
#include "core/store/site_store.h"

namespace evenfall::desktop {

reports::Report build_report(const store::Book& book, const ReportOrder& order) {
    reports::Frame frame;
    frame.units = order.units;
    frame.created = order.created;
    frame.program = order.made_by;
    if (const auto site = store::find_site(book, order.site)) frame.organisation = site->organisation;
    switch (order.kind) {
        case ReportKind::season:
            return workflow::season_report_of(
                book, {order.site, order.from, order.to, order.program, "nrcs", order.quarter_rule}, frame);
        case ReportKind::audit_of_site:
            return workflow::audit_report_of_site(book, order.site, order.quarter_rule, frame);
        case ReportKind::audit_of_test:
            break;
    }
    return workflow::audit_report_of_test(book, order.test, order.quarter_rule, frame);
}

std::string report_file_name(const ReportOrder& order) {
    switch (order.kind) {
        case ReportKind::season:
            return workflow::file_name_of("season-" + order.site + "-" + calendar::format_month(order.from) + "-" +
                                          calendar::format_month(order.to));
        case ReportKind::audit_of_site:
            return workflow::file_name_of("audit-" + order.site);
        case ReportKind::audit_of_test:
            break;
    }
    return workflow::file_name_of("audit-" + order.test);
}

}  // namespace evenfall::desktop
