// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/formula.h"

#include <stdexcept>

namespace evenfall::reports {
namespace {

[[noreturn]] void refuse(std::string_view formula, const char* why) {
    throw std::logic_error("report formula \"" + std::string(formula) + "\": " + why);
}

/// What stands between the braces.
FormulaPiece parse_reference(std::string_view formula, std::string_view inside) {
    if (inside.empty()) refuse(formula, "empty reference");
    if (inside.front() == '=') return NamedCell{std::string(inside.substr(1))};
    const auto open = inside.find('[');
    if (open == std::string_view::npos) {
        const auto point = inside.find('.');
        if (point == std::string_view::npos) return SameRow{std::string(inside)};
        return WholeColumn{std::string(inside.substr(0, point)),
                           std::string(inside.substr(point + 1))};
    }
    const auto close = inside.find(']', open);
    if (close == std::string_view::npos || close + 2 > inside.size() || inside[close + 1] != '.') {
        refuse(formula, "expected table[row].column");
    }
    const std::string table(inside.substr(0, open));
    const std::string_view rows = inside.substr(open + 1, close - open - 1);
    const std::string column(inside.substr(close + 2));
    const auto dots = rows.find("..");
    if (dots == std::string_view::npos) return OneCell{table, std::string(rows), column};
    return RowRange{table, std::string(rows.substr(0, dots)), std::string(rows.substr(dots + 2)),
                    column};
}

}  // namespace

std::vector<FormulaPiece> parse_formula(std::string_view formula) {
    std::vector<FormulaPiece> pieces;
    std::size_t at = 0;
    while (at < formula.size()) {
        const auto open = formula.find('{', at);
        const auto plain = formula.substr(at, open == std::string_view::npos ? open : open - at);
        if (plain.find('}') != std::string_view::npos) refuse(formula, "closing brace alone");
        if (!plain.empty()) pieces.emplace_back(std::string(plain));
        if (open == std::string_view::npos) break;
        const auto close = formula.find('}', open);
        if (close == std::string_view::npos) refuse(formula, "opening brace alone");
        pieces.push_back(parse_reference(formula, formula.substr(open + 1, close - open - 1)));
        at = close + 1;
    }
    return pieces;
}

}  // namespace evenfall::reports
