// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv_text.h"

#include "core/units/number.h"

namespace evenfall::exchange {
namespace {

/// A character that starts a formula, behind any number of apostrophes.
bool looks_like_formula(std::string_view text) {
    const std::size_t first = text.find_first_not_of('\'');
    return first != std::string_view::npos &&
           std::string_view("=+-@\t\r").find(text[first]) != std::string_view::npos;
}

}  // namespace

std::string csv_cell(std::string_view text) {
    const bool guard = looks_like_formula(text) && !units::parse_number(text);
    const bool quote = text.find_first_of(",\"\r\n") != std::string_view::npos;
    std::string out;
    if (quote) out += '"';
    if (guard) out += '\'';
    for (const char c : text) {
        if (c == '"') out += '"';
        out += c;
    }
    if (quote) out += '"';
    return out;
}

std::string_view unguarded(std::string_view cell) {
    if (!cell.empty() && cell.front() == '\'' && looks_like_formula(cell)) cell.remove_prefix(1);
    return cell;
}

}  // namespace evenfall::exchange
