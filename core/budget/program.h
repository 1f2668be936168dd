// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/reference/table.h"
#include "core/sentence.h"
#include "core/units/quantity.h"
#include "core/units/ratio.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The rules by which water is allowed, as data: a budget of one's own, a share of reference ET,
/// an ordinance, a utility. A program holds parameters only, no expressions, so that a file from
/// a stranger can be read and judged line by line.
///
///     basis need:       budget = need / divisor
///     basis allowance:  budget = max(0, ETo x factor - rain credit) x area x c / divisor
///
///   need    max(0, ETo x landscape coefficient - effective rain) x area
///   factor  the program's own; `special_factor` on areas marked as special landscape
///   c       1, or (gallons per ft2 and inch) / exact where a regulation prints a rounded one
///   divisor 1; or an efficiency; or 0.4 + 0.6 DU at the program's target DU (its `target_du`),
///           the linear form of the run-time multiplier
///
/// The file format is described in schemas/tables/program.md.
/// Tests: tests/budget/program_test.cpp
namespace evenfall::budget {

enum class Basis { need, allowance };
enum class Divisor { none, efficiency, target_du };
enum class RainCredit { none, effective, share };  ///< of an allowance; share: of all rain
enum class Period { month, year };                 ///< over which use is held against the budget

struct Program {
    std::string name;      ///< stable key, such as "general"
    std::string title;
    std::string version;   ///< of the rules, such as "2015"
    std::string source;
    reference::Mark mark = reference::Mark::constructed;

    Basis basis = Basis::need;
    std::optional<double> factor;           ///< with basis allowance
    std::optional<double> special_factor;   ///< absent: special areas get `factor`
    RainCredit rain_credit = RainCredit::none;
    std::optional<double> rain_share;       ///< with rain credit by share
    Divisor divisor = Divisor::none;
    std::optional<units::Efficiency> efficiency;
    std::optional<double> gallons_per_ft2_inch;  ///< absent: exact
    Period period = Period::month;

    /// What even application is held to be attainable: splits unevenness in the waste account.
    units::LowQuarterDu target_du = units::LowQuarterDu::of(1.0);

    /// T = 1 / (0.4 + 0.6 target_du).
    units::Multiplier target_multiplier() const;
    /// What the need or the allowance is divided by.
    double divisor_value() const;
    /// Title and source; those of a built-in program are translated.
    Sentence title_words() const;
    Sentence source_words() const;
    /// One sentence for a report: the formula with its numbers.
    Sentence formula() const;
};

/// Reads a program file.
/// @param file  its name, for messages
/// @throws InputError for text that is not JSON, a key that is not known (the nearest known one is
///   named), one that is missing or does not fit the basis, a value of the wrong kind or out of
///   range; each with its JSON path, all of them at once
Program read_program(std::string_view json, const std::string& file);

/// A program that comes with Evenfall, such as "general".
/// @throws InputError naming those there are
const Program& built_in_program(std::string_view name);
std::vector<std::string> built_in_program_names();

}  // namespace evenfall::budget
