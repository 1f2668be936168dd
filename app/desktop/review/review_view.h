// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/figure.h"
#include "app/desktop/figure_table.h"
#include "app/workflow/review_desk.h"

#include <vector>

/// What the review page shows of a case. Figures and verdicts are the core's; each verdict is a
/// sign and a word.
/// Tests: tests/app/desktop_review_test.cpp
namespace evenfall::desktop {

FigureRows queue_table(const std::vector<workflow::ReviewedCase>& queue);
/// Claims beside our figures.
FigureRows claims_table(const workflow::ReviewedCase& c);
FigureRows rules_table(const workflow::ReviewedCase& c);
FigureRows questions_table(const workflow::ReviewedCase& c);
FigureRows payment_table(const workflow::ReviewedCase& c);
FigureRows history_table(const workflow::ReviewedCase& c);

/// Where in the filing the evidence of a row stands: "tests, T-1"; empty when nothing is said.
QString claim_evidence(const workflow::ReviewedCase& c, int row);
QString rule_evidence(const workflow::ReviewedCase& c, int row);
QString question_evidence(const workflow::ReviewedCase& c, int row);

QString status_title(review::Status status);
QString decision_title(review::Decision decision);
/// The reasons by the rules, to start from: what is not met, or what is missing.
QString reasons_of(const workflow::ReviewedCase& c);

/// The raw data that a piece of evidence points at: catch tests side by side, readings, invoices,
/// devices, attachments. Empty when it points at nothing that can be laid out.
std::vector<TitledRows> evidence_tables(const review::Filing& filing, const QString& evidence);

}  // namespace evenfall::desktop
