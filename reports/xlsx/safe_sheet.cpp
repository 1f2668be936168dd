// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/xlsx/safe_sheet.h"

#include "reports/content/utf8.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <cmath>
#include <stdexcept>

namespace evenfall::reports {
namespace {

constexpr std::size_t longest_text = 32767;  // of a cell, in characters: the format's own limit

Place place(const std::string& sheet, lxw_row_t row, lxw_col_t column) {
    return {"sheet " + sheet, row + 1U, std::to_string(column + 1U)};
}

void need_finite(double value, const Place& where) {
    if (!std::isfinite(value)) {
        throw InputError(Issue{where, units::format_shortest(value), "a finite number"});
    }
}

}  // namespace

void need(lxw_error error, const std::string& what) {
    if (error != LXW_NO_ERROR) {
        throw std::runtime_error("workbook, " + what + ": " + lxw_strerror(error));
    }
}

std::string number_format_code(const NumberFormat& format, bool with_unit, bool assumed) {
    std::string code = format.percent ? "0" : "#,##0";
    if (format.decimals > 0) {
        code += '.';
        code.append(static_cast<std::size_t>(format.decimals), '0');
    }
    if (format.percent) code += "%";
    std::string behind;
    if (with_unit && !format.percent && !format.unit.empty()) {
        behind += ' ';
        behind += format.unit;
    }
    if (assumed) behind += "*";
    if (behind.empty()) return code;
    code += '"';
    for (const char c : behind) code += c == '"' ? '\'' : c;
    code += '"';
    return code;
}

lxw_format* Formats::of(const CellLook& look) {
    const auto found = made_.find(look.key());
    if (found != made_.end()) return found->second;
    lxw_format* f = workbook_add_format(book_);
    if (f == nullptr) throw std::runtime_error("workbook: no room for a format");
    format_set_font_name(f, "Arial");
    format_set_font_size(f, look.size);
    format_set_font_color(f, look.ink);
    format_set_align(f, LXW_ALIGN_VERTICAL_TOP);
    if (look.bold) format_set_bold(f);
    if (look.wrap) format_set_text_wrap(f);
    if (look.centred) format_set_align(f, LXW_ALIGN_CENTER);
    if (look.fill != 0xFFFFFF) {
        format_set_pattern(f, LXW_PATTERN_SOLID);
        format_set_bg_color(f, look.fill);
    }
    if (look.top_rule) format_set_top(f, LXW_BORDER_THIN);
    if (look.unlocked) {
        format_set_unlocked(f);
        format_set_border(f, LXW_BORDER_THIN);
    }
    if (look.is_number) {
        format_set_num_format(
            f, number_format_code(look.number, look.unit_in_cell, look.assumed).c_str());
    }
    made_.emplace(look.key(), f);
    return f;
}

void SafeSheet::number(lxw_row_t row, lxw_col_t column, double value, lxw_format* format) const {
    if (!std::isfinite(value)) need_finite(value, place(name_, row, column));
    const lxw_error error = worksheet_write_number(sheet_, row, column, value, format);
    if (error != LXW_NO_ERROR) need(error, place(name_, row, column).text());
}

void SafeSheet::text(lxw_row_t row, lxw_col_t column, std::string_view value,
                     lxw_format* format) const {
    if (value.empty()) return blank(row, column, format);
    if (!is_clean_text(value)) {
        throw InputError(Issue{place(name_, row, column), printable(std::string(value)),
                               "text in UTF-8 without control characters"});
    }
    if (value.size() > longest_text && length_in_characters(value) > longest_text) {
        throw InputError(Issue{place(name_, row, column), printable(std::string(value)),
                               "text of at most 32,767 characters"});
    }
    const std::string terminated(value);
    const lxw_error error =
        worksheet_write_string(sheet_, row, column, terminated.c_str(), format);
    if (error != LXW_NO_ERROR) need(error, place(name_, row, column).text());
}

void SafeSheet::blank(lxw_row_t row, lxw_col_t column, lxw_format* format) const {
    const lxw_error error = worksheet_write_blank(sheet_, row, column, format);
    if (error != LXW_NO_ERROR) need(error, place(name_, row, column).text());
}

void SafeSheet::formula(lxw_row_t row, lxw_col_t column, const std::string& formula, double value,
                        lxw_format* format) const {
    need_finite(value, place(name_, row, column));
    need(worksheet_write_formula_num(sheet_, row, column, formula.c_str(), format, value),
         place(name_, row, column).text());
}

}  // namespace evenfall::reports
