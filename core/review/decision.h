// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/filing.h"
#include "core/review/question.h"
#include "core/review/rebate_program.h"
#include "core/review/recompute.h"
#include "core/review/rule_table.h"
#include "core/review/savings.h"
#include "core/sentence.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A filing reviewed from end to end: figures, questions, rules, payment, what is missing.
/// Tests: tests/review/verdict_test.cpp
namespace evenfall::review {

/// approve    every rule is met
/// decline    a rule is not met
/// send_more  no rule is broken, and something is missing or cannot be told
/// none       no program was named, so nothing is decided
enum class Decision { approve, decline, send_more, none };
std::string_view text_of(Decision decision);

struct PaymentLine {
    std::string words;     ///< of the program; our own stand in room "Core", with words of data
    Sentence working;      ///< "120 x 8.00"
    double amount = 0.0;   ///< below zero for what a cap takes off
};

struct Payment {
    std::vector<PaymentLine> lines;
    double total = 0.0;
    std::string currency;
};

struct Review {
    std::string filing;       ///< code
    std::string sha256;
    std::string application;
    std::string applicant;
    std::string site;
    std::string program;      ///< name and version; empty when none was named
    bool is_signed = false;
    std::vector<CheckedClaim> claims;
    SavingsAnswer savings;
    std::vector<Sentence> record_remarks;
    std::vector<Question> questions;
    std::vector<JudgedRule> rules;
    std::optional<Payment> payment;      ///< were it approved; absent without a program
    Decision decision = Decision::none;
    std::vector<Sentence> missing;       ///< what the applicant can send, once each

    /// Points: 3 for each claim that differs, 2 for each question, 1 for each rule that cannot be
    /// told. Chosen for this project; they only order the work.
    double risk() const;
    /// Whether every claim agrees or is explained.
    bool recomputes() const;
};

/// @param sha256      name of the filing
/// @param budget_left money the program has left; payment is not cut to it, a line says so
Review review_filing(const Filing& filing, const std::string& sha256, bool is_signed,
                     const RebateProgram* program, std::optional<double> budget_left);

/// Works a payment out line by line, caps last.
Payment work_out_payment(const RebateProgram& program, const Filing& filing, const SavingsAnswer& savings);

/// The letter that asks for what is missing, or tells the outcome; plain text, no figures of its own.
/// It is a document that is sent and kept, so it is in English whatever the language of the windows.
std::string letter(const Review& review, const RebateProgram* program);

}  // namespace evenfall::review
