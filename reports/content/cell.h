// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <variant>

/// One cell of a report table: a value, how it is printed, and, where a reader should be able to
/// follow it in the workbook, the live formula that gives it.
/// Tests: tests/reports/content_test.cpp
namespace evenfall::reports {

/// How a number is printed. The unit belongs to the figure: "1,234 gal", "62.5 %", "3.10 USD".
struct NumberFormat {
    int decimals = 0;        ///< 0 to 9
    std::string unit;        ///< empty for a plain number
    bool percent = false;    ///< the value is a share; 0.625 is printed as 62.5 %
    bool operator==(const NumberFormat&) const = default;
};

/// What a reader of the workbook may do with a cell.
enum class CellRole : int {
    plain = 1,    ///< a figure that stands for itself
    input = 2,    ///< measured or typed; the start of a calculation
    working = 3,  ///< a step between
    result = 4,   ///< what the calculation is for
    choice = 5    ///< meant to be changed by the reader; carries limits
};

/// The values a reader may type into a cell whose role is `choice`.
struct Limits {
    double low = 0.0;
    double high = 0.0;
    std::string prompt;  ///< one sentence: what the figure is and where it comes from
    bool operator==(const Limits&) const = default;
};

/// `formula` uses the functions and operators of ECMA-376 part 1, section 18.17 (the formulas of
/// Office Open XML workbooks), with references that know no sheet and no address:
///
///     {use}                    column `use` in the same row of the same table
///     {months.use}             column `use`, all data rows of table `months` (totals left out)
///     {months[2024-05].use}    one cell, by the key of its row
///     {sorted[1..6].depth}     the rows from key 1 to key 6
///     {=mean_depth}            the cell that carries that name
///
/// The value beside it is what the core computed, never what a writer computed. A test lets a
/// spreadsheet program recalculate each workbook and compares.
struct Cell {
    std::variant<std::monostate, std::string, double> value;  ///< monostate: not known
    std::optional<NumberFormat> format = std::nullopt;        ///< empty: that of the column
    std::string formula = {};
    std::string name = {};  ///< defined name in the workbook: a-z, 0-9 and at least one "_"
    CellRole role = CellRole::plain;
    std::optional<Limits> limits = std::nullopt;
    bool assumed = false;   ///< rests on an assumed or estimated input; printed with "*"

    bool operator==(const Cell&) const = default;
    bool empty() const { return std::holds_alternative<std::monostate>(value); }
    /// The number, or nothing for text and for what is not known.
    std::optional<double> number() const;
};

Cell unknown();
Cell text(std::string value);
Cell number(double value);
Cell number(double value, NumberFormat format);
Cell number(std::optional<double> value);
/// A value with the formula that gives it.
Cell computed(std::optional<double> value, std::string formula);

/// "1,234.5 gal", "62.5 %", "not known" for an empty cell; "*" behind what rests on an assumption.
/// @param with_unit  false where the head of the column carries it
std::string printed(const Cell& cell, const NumberFormat& column_format, bool with_unit);

}  // namespace evenfall::reports
