// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/audit_report.h"

namespace evenfall::reports {

/// The sections of one test: its figures, and its catches; `key` ("t1") starts the keys of its tables, charts and named cells.
std::vector<Section> audit_sections(const AuditedTest& tested, const std::string& key, const Shown& shown);

}  // namespace evenfall::reports
