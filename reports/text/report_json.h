// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/report.h"

#include <string>
#include <string_view>

namespace evenfall::reports {

/// The whole report as one JSON object; its raw tables are left out. Numbers in shortest form
/// that reads back as the same double; what is not known is null. Form: the members of
/// report.h, cell.h, table.h and chart.h under their own names. This is what evenfall-print reads.
/// @throws InputError  where check() would
std::string write_json(const Report& report);

/// The report in such a text, checked by check().
/// @throws InputError  naming the place as a path such as sections[2].blocks[0].rows[3].cells[1]
Report read_json(std::string_view text, const std::string& file);

}  // namespace evenfall::reports
