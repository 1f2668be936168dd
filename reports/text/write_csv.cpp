// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/text/write_csv.h"

#include "core/units/number.h"

#include <algorithm>
#include <ostream>
#include <stdexcept>

namespace evenfall::reports {
namespace {

/// "use_gal": the unit goes into the header, with what is no letter or digit as "_".
std::string header(const Column& column) {
    std::string out = column.key;
    if (column.format.unit.empty()) return out;
    out += '_';
    for (const char c : column.format.unit) {
        const bool fit = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        out += fit ? c : '_';
    }
    return out;
}

}  // namespace

std::string csv_field(std::string_view text) {
    std::string body;
    if (!text.empty() && std::string_view("=+-@\t\r\n").find(text.front()) != std::string_view::npos) {
        body += '\'';
    }
    body += text;
    if (body.find_first_of(",\"\r\n;\t") == std::string::npos) return body;
    std::string out = "\"";
    for (const char c : body) {
        if (c == '"') out += '"';
        out += c;
    }
    return out + '"';
}

std::string write_csv(const Table& table) {
    const bool totals = std::any_of(table.rows.begin(), table.rows.end(),
                                    [](const Row& row) { return row.kind == RowKind::total; });
    std::string out;
    for (const Column& column : table.columns) {
        if (&column != &table.columns.front()) out += ',';
        out += header(column);
    }
    if (totals) out += ",row_kind";
    out += "\r\n";
    for (const Row& row : table.rows) {
        for (std::size_t c = 0; c < row.cells.size(); ++c) {
            if (c > 0) out += ',';
            if (const auto value = row.cells[c].number()) {
                out += units::format_shortest(*value);
            } else if (const auto* t = std::get_if<std::string>(&row.cells[c].value)) {
                out += csv_field(*t);
            }
        }
        if (totals) out += row.kind == RowKind::total ? ",total" : ",data";
        out += "\r\n";
    }
    return out;
}

void write_csv(const RawTable& table, std::ostream& out) {
    for (const Column& column : table.columns) {
        if (&column != &table.columns.front()) out << ',';
        out << header(column);
    }
    out << "\r\n";
    std::string line;
    table.produce([&](std::span<const RawValue> values) {
        line.clear();
        for (std::size_t c = 0; c < values.size(); ++c) {
            if (c > 0) line += ',';
            if (const auto* v = std::get_if<double>(&values[c])) line += units::format_shortest(*v);
            if (const auto* t = std::get_if<std::string_view>(&values[c])) line += csv_field(*t);
        }
        line += "\r\n";
        out << line;
    });
    out.flush();
    if (!out) throw std::runtime_error("cannot write the table \"" + table.title + "\"");
}

}  // namespace evenfall::reports
