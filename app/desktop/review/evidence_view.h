// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/figure_table.h"
#include "app/workflow/review_desk.h"
#include "core/sentence.h"

#include <QString>
#include <vector>

/// The raw data that a claim, a rule or a question of a case speaks of.
/// Tests: tests/app/desktop_review_test.cpp
namespace evenfall::desktop {

struct Evidence {
    QString about;  ///< "DU, low quarter of T-1: claimed 0.84, recomputed 0.6989, ≠ differs"
    QString why;
    Sentence where; ///< where it stands in the filing: "tests, T-1"; empty when nothing is said
};

/// Of a row of claims_table, rules_table and questions_table; nothing for a row that is not there.
Evidence claim_evidence(const workflow::ReviewedCase& c, int row);
Evidence rule_evidence(const workflow::ReviewedCase& c, int row);
Evidence question_evidence(const workflow::ReviewedCase& c, int row);

/// The row to look at first: a claim that differs, a rule that is not met, else the first.
int telling_claim(const workflow::ReviewedCase& c);
int telling_rule(const workflow::ReviewedCase& c);

/// Catch tests side by side, readings, invoices, devices, attachments: what `where`, in English, points at. Days and
/// areas that it names stand out. Empty when it points at nothing that can be laid out.
std::vector<TitledRows> evidence_tables(const review::Filing& filing, const QString& where);

}  // namespace evenfall::desktop
