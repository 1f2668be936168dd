// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

/// Formulas of report cells taken apart: plain text and references, see cell.h for the form.
/// Tests: tests/reports/content_test.cpp
namespace evenfall::reports {

struct SameRow { std::string column; };
struct WholeColumn { std::string table, column; };
struct OneCell { std::string table, row, column; };
struct RowRange { std::string table, first, last, column; };
struct NamedCell { std::string name; };

using FormulaPiece =
    std::variant<std::string, SameRow, WholeColumn, OneCell, RowRange, NamedCell>;

/// @throws std::logic_error  a brace without its partner or a reference of another form
std::vector<FormulaPiece> parse_formula(std::string_view formula);

}  // namespace evenfall::reports
