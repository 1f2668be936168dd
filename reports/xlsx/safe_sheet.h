// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "reports/content/cell.h"
#include "reports/content/look.h"

#include <xlsxwriter.h>

#include <compare>
#include <cstdint>
#include <map>
#include <string>
#include <string_view>

/// The only way from a value to a workbook cell. libxlsxwriter writes NaN, infinity and bytes that
/// are not UTF-8 without complaint and leaves a file that will not open; here they are refused.
/// Text is always stored as text, also when it starts with = + - or @.
/// Tests: tests/reports/xlsx_test.cpp
namespace evenfall::reports {

/// How a cell looks. Equal looks share one format of the workbook.
struct CellLook {
    NumberFormat number = {};
    bool is_number = false;
    bool assumed = false;
    bool bold = false;
    bool wrap = false;
    bool centred = false;
    bool top_rule = false;
    bool unlocked = false;
    bool unit_in_cell = false;  ///< else the head of the column carries it
    int size = 10;
    Rgb fill = 0xFFFFFF;
    Rgb ink = ink_text;
    auto key() const {
        return std::tuple(number.decimals, number.unit, number.percent, is_number, assumed, bold,
                          wrap, centred, top_rule, unlocked, unit_in_cell, size, fill, ink);
    }
};

/// Formats of one workbook, made once each.
class Formats {
  public:
    explicit Formats(lxw_workbook* book) : book_(book) {}
    lxw_format* of(const CellLook& look);

  private:
    lxw_workbook* book_;
    std::map<decltype(std::declval<CellLook>().key()), lxw_format*> made_;
};

/// "#,##0.00", with the unit as literal text when asked for.
std::string number_format_code(const NumberFormat& format, bool with_unit, bool assumed);

/// A sheet whose cells can only be written well. Throws InputError (naming sheet, row, column)
/// for values that no workbook can hold, std::runtime_error when the library reports an error.
class SafeSheet {
  public:
    SafeSheet(lxw_worksheet* sheet, std::string name) : sheet_(sheet), name_(std::move(name)) {}

    void number(lxw_row_t row, lxw_col_t column, double value, lxw_format* format) const;
    void text(lxw_row_t row, lxw_col_t column, std::string_view value, lxw_format* format) const;
    void blank(lxw_row_t row, lxw_col_t column, lxw_format* format) const;
    /// `formula` starts with "="; `value` is stored beside it for readers that do not recalculate.
    void formula(lxw_row_t row, lxw_col_t column, const std::string& formula, double value,
                 lxw_format* format) const;

    lxw_worksheet* raw() const { return sheet_; }
    const std::string& name() const { return name_; }

  private:
    lxw_worksheet* sheet_;
    std::string name_;
};

/// @throws std::runtime_error with the library's own words
void need(lxw_error error, const std::string& what);

}  // namespace evenfall::reports
