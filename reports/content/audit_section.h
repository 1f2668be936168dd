// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/audit_report.h"

namespace evenfall::reports {

/// The section of one test; `key` ("t1") starts the keys of its tables, charts and named cells.
Section audit_section(const AuditedTest& tested, const std::string& key, const Shown& shown);

}  // namespace evenfall::reports
