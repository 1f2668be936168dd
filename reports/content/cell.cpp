// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/cell.h"

#include "core/units/number.h"

namespace evenfall::reports {

std::optional<double> Cell::number() const {
    if (const auto* v = std::get_if<double>(&value)) return *v;
    return std::nullopt;
}

Cell unknown() { return Cell{}; }

Cell text(std::string value) {
    Cell cell;
    cell.value = std::move(value);
    return cell;
}

Cell number(double value) {
    Cell cell;
    cell.value = value;
    return cell;
}

Cell number(double value, NumberFormat format) {
    Cell cell = number(value);
    cell.format = std::move(format);
    return cell;
}

Cell number(std::optional<double> value) { return value ? number(*value) : unknown(); }

Cell computed(std::optional<double> value, std::string formula) {
    Cell cell = number(value);
    // Without a value there is nothing to trace: a formula over missing cells would show 0.
    if (value) cell.formula = std::move(formula);
    return cell;
}

std::string printed(const Cell& cell, const NumberFormat& column_format, bool with_unit) {
    if (cell.empty()) return "not known";
    if (const auto* t = std::get_if<std::string>(&cell.value)) return *t;
    const double value = std::get<double>(cell.value);
    const NumberFormat& format = cell.format ? *cell.format : column_format;
    std::string out = units::format_grouped(format.percent ? value * 100.0 : value, format.decimals);
    if (format.percent && (with_unit || cell.format)) out += " %";
    if (!format.percent && !format.unit.empty() && (with_unit || cell.format)) {
        out += " " + format.unit;
    }
    if (cell.assumed) out += "*";
    return out;
}

}  // namespace evenfall::reports
