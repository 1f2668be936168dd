// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reference/table.h"
#include "core/units/quantity.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// A rebate program as validated data: who may apply, what must be shown and how surely, what is
/// paid. Parameters only, no expressions. The form is described in schemas/rebates/rebate.md.
/// Tests: tests/review/verdict_test.cpp
namespace evenfall::review {

enum class RuleKind {
    sector,          ///< the area's sector is one of `any_of`
    area,            ///< turf that applies, at_least / at_most (m2)
    meter_type,      ///< every meter's type is one of `any_of`
    evidence,        ///< at_least so many attachments of kind `what`
    invoice,         ///< at_least so many invoices, each with its attachment
    signed_filing,   ///< signed by the auditor's key
    certified,       ///< certification number given and valid on the date of every test
    test_before,     ///< at_least so many tests before the change
    test_after,      ///< and after
    cans,            ///< every test has at_least so many cans that count
    wind,            ///< every test's wind was recorded and at_most (m/s)
    mean_catch,      ///< every test's mean depth is at_least (m)
    audit_age,       ///< days from the newest test after the change to the filing, at_most
    du_after,        ///< DU_LQ of the tests after the change, area-weighted, at_least, with certainty
    du_improvement,  ///< DU_LQ after less before, at_least
    savings_share,   ///< weather-normalised saving as a share, at_least, with certainty
    claims           ///< no claim differs from our figure
};

struct ProgramRule {
    RuleKind kind{};
    std::string words;                  ///< the rule for a person
    std::vector<std::string> any_of;
    std::string what;
    std::optional<double> at_least;     ///< SI where the rule has a unit
    std::optional<double> at_most;
    /// How sure a threshold must be: empty for the plain value, else a probability from the interval.
    std::optional<double> certainty;
};

enum class PaymentKind { per_device, share_of_cost, per_volume };

struct PaymentRule {
    PaymentKind kind{};
    std::string words;
    std::string device;                 ///< per_device
    double amount = 0.0;                ///< per device or per `per`; a share for share_of_cost
    std::optional<double> most;         ///< devices, or money for share_of_cost
    units::Volume per;                  ///< per_volume
    std::string per_text;               ///< as typed
};

struct RebateProgram {
    std::string name;
    std::string title;
    std::string version;
    std::string source;
    reference::Mark mark = reference::Mark::constructed;
    std::string currency;
    std::vector<ProgramRule> rules;
    std::vector<PaymentRule> payment;           ///< lines are added up
    std::optional<double> cap_application;      ///< money
    std::optional<double> cap_per_area;         ///< money per m2
    double cap_area_amount = 0.0;               ///< as typed, per `cap_area_text`
    std::string cap_area_text;                  ///< the area as typed
    std::optional<double> cap_share_of_cost;
    double budget = 0.0;                        ///< money set aside
};

/// @throws InputError with every problem and its JSON path
RebateProgram read_rebate_program(std::string_view json, const std::string& file);

/// A program that comes with Evenfall. @throws InputError naming those there are
RebateProgram built_in_rebate(std::string_view name);
std::vector<std::string> built_in_rebate_names();

std::string_view text_of(RuleKind kind);

}  // namespace evenfall::review
