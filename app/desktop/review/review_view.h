// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/figure.h"
#include "app/desktop/figure_table.h"
#include "app/workflow/applications.h"

#include <vector>

/// What the review page shows of a case. Figures and verdicts are the core's; each verdict is a
/// sign and a word.
/// Tests: tests/app/desktop_review_test.cpp
namespace evenfall::desktop {

/// Applications, and behind them, under a heading of their own, the filings that belong to none. The
/// name of a case stands above that of its applicant, its status above what the rules say.
FigureRows queue_table(const std::vector<workflow::ReviewedCase>& queue, const std::vector<workflow::WaitingFiling>& waiting);
/// Claims beside our figures.
FigureRows claims_table(const workflow::ReviewedCase& c);
FigureRows rules_table(const workflow::ReviewedCase& c);
FigureRows questions_table(const workflow::ReviewedCase& c);
FigureRows payment_table(const workflow::ReviewedCase& c);
FigureRows history_table(const workflow::ReviewedCase& c);

FigureRows filings_table(const std::vector<store::StoredFiling>& filings);

/// Text from outside, fit to be shown.
QString stranger_text(const std::string& text);
/// Words of a program or a history: those that come with Evenfall in the language shown.
QString data_words(const std::string& text);
/// Where evidence stands in a filing.
QString place_words(const Sentence& evidence);
QString money_text(double amount, const std::string& currency);

QString status_title(review::Status status);
QString decision_title(review::Decision decision);
QString agreement_title(review::Agreement agreement);
QString outcome_title(review::RuleOutcome outcome);
/// "DU, low quarter" of "du_lq".
QString claim_name(const std::string& claim);
/// The reasons by the rules, to start from: what is not met, or what is missing.
QString reasons_of(const workflow::ReviewedCase& c);

}  // namespace evenfall::desktop
