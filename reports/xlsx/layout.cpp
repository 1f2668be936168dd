// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/xlsx/layout.h"

#include "reports/content/formula.h"
#include "reports/content/wrap.h"

#include <algorithm>
#include <array>

namespace evenfall::reports {
namespace {

std::string address(std::uint32_t row, std::size_t column, bool absolute) {
    std::array<char, LXW_MAX_CELL_NAME_LENGTH> name{};
    if (absolute) {
        lxw_rowcol_to_cell_abs(name.data(), row, static_cast<lxw_col_t>(column), 1, 1);
    } else {
        lxw_rowcol_to_cell(name.data(), row, static_cast<lxw_col_t>(column));
    }
    return name.data();
}

std::string quoted(const std::string& sheet) { return "'" + sheet + "'!"; }

std::uint32_t lines_of(const std::string& text) {
    return text.empty() ? 0U
                        : static_cast<std::uint32_t>(wrap(text, Layout::line_width).size());
}

}  // namespace

std::string sheet_name(const std::string& key) {
    std::string name = key.substr(0, 31);
    std::replace(name.begin(), name.end(), '_', ' ');
    if (name.front() >= 'a' && name.front() <= 'z') name.front() = static_cast<char>(name.front() - 32);
    return name;
}

std::uint32_t Layout::place_table(const Table& table, const std::string& sheet, std::uint32_t row) {
    TablePlace place;
    place.sheet = sheet;
    place.head_row = row + 1 + lines_of(table.sentence);
    place.first_row = place.head_row + 1;
    for (const Row& r : table.rows) {
        if (r.kind == RowKind::data) ++place.data_rows;
    }
    tables_[table.key] = place;
    std::uint32_t next = place.first_row + static_cast<std::uint32_t>(table.rows.size());
    for (const auto& note : table.footnotes) next += lines_of(note);
    return next + 1;
}

Layout::Layout(const Report& report) : report_(report) {
    // Each sheet starts with two title lines and a blank one.
    std::uint32_t row = 3;
    for (const auto& sentence : report.answer.sentences) row += lines_of(sentence);
    ++row;
    if (!report.answer.figures.rows.empty()) {
        row = place_table(report.answer.figures, sheet_name("answer"), row);
    }
    if (!report.answer.fixes.empty()) {
        place_table(fixes_table(report.answer), sheet_name("answer"), row);
    }
    place_table(notes_table(report.notes), sheet_name("notes"), 3);
    for (const Section& section : report.sections) {
        const std::string sheet = sheet_name(section.key);
        row = 3;
        for (const Block& block : section.blocks) {
            if (const auto* p = std::get_if<Paragraph>(&block)) row += lines_of(p->text) + 1;
            if (const auto* t = std::get_if<Table>(&block)) row = place_table(*t, sheet, row);
        }
        for (const Block& block : section.blocks) {
            const auto* chart = std::get_if<Chart>(&block);
            if (chart == nullptr) continue;
            charts_[chart->key] = row;
            row += lines_of(chart->sentence) + chart_rows + 2;
            const auto* map = std::get_if<MapChart>(&chart->content);
            if (map == nullptr) continue;
            const Table* table = report.find_table(map->value.table);
            const auto grid = table == nullptr ? GridOfCans{} : grid_of_cans(*table, *map);
            const auto needed = static_cast<std::uint32_t>(grid.ys.size()) + map_extra_rows;
            if (needed > chart_rows) row += needed - chart_rows;
        }
    }
}

std::string Layout::cell_address(const Table& table, std::size_t row, std::size_t column) const {
    const TablePlace& place = of(table.key);
    return quoted(place.sheet) +
           address(place.first_row + static_cast<std::uint32_t>(row), column, true);
}

std::string Layout::column_range(const Table& table, std::size_t column) const {
    const TablePlace& place = of(table.key);
    const std::uint32_t last = place.first_row + std::max<std::uint32_t>(place.data_rows, 1) - 1;
    return quoted(place.sheet) + address(place.first_row, column, true) + ":" +
           address(last, column, true);
}

std::string Layout::formula(const std::string& text, const Table& table, std::size_t row) const {
    std::string out = "=";
    const auto other = [&](const std::string& key) -> const Table& {
        return *report_.find_table(key);  // check() has seen that it is there
    };
    for (const FormulaPiece& piece : parse_formula(text)) {
        if (const auto* plain = std::get_if<std::string>(&piece)) {
            out += *plain;
        } else if (const auto* same = std::get_if<SameRow>(&piece)) {
            out += address(of(table.key).first_row + static_cast<std::uint32_t>(row),
                           *table.column_index(same->column), false);
        } else if (const auto* whole = std::get_if<WholeColumn>(&piece)) {
            out += whole->table + "_" + whole->column;
        } else if (const auto* one = std::get_if<OneCell>(&piece)) {
            const Table& t = other(one->table);
            out += cell_address(t, *t.row_index(one->row), *t.column_index(one->column));
        } else if (const auto* range = std::get_if<RowRange>(&piece)) {
            const Table& t = other(range->table);
            const std::size_t column = *t.column_index(range->column);
            const std::uint32_t first = of(t.key).first_row;
            out += quoted(of(t.key).sheet) +
                   address(first + static_cast<std::uint32_t>(*t.row_index(range->first)), column,
                           true) +
                   ":" +
                   address(first + static_cast<std::uint32_t>(*t.row_index(range->last)), column,
                           true);
        } else {
            out += std::get<NamedCell>(piece).name;
        }
    }
    return out;
}

GridOfCans grid_of_cans(const Table& table, const MapChart& map) {
    const auto xs = table.values(map.x.column);
    const auto ys = table.values(map.y.column);
    GridOfCans grid;
    for (std::size_t i = 0; i < xs.size(); ++i) {
        if (!xs[i] || !ys[i]) continue;
        grid.xs.push_back(*xs[i]);
        grid.ys.push_back(*ys[i]);
    }
    for (auto* axis : {&grid.xs, &grid.ys}) {
        std::sort(axis->begin(), axis->end());
        axis->erase(std::unique(axis->begin(), axis->end()), axis->end());
    }
    const bool sparse = grid.xs.size() * grid.ys.size() > 4 * xs.size();
    if (grid.xs.empty() || grid.xs.size() > 60 || grid.ys.size() > 200 || sparse) return {};
    grid.row_of.assign(grid.ys.size(), std::vector<std::size_t>(grid.xs.size(), GridOfCans::none));
    for (std::size_t i = 0; i < xs.size(); ++i) {
        if (!xs[i] || !ys[i]) continue;
        const auto c = std::lower_bound(grid.xs.begin(), grid.xs.end(), *xs[i]) - grid.xs.begin();
        const auto r = std::lower_bound(grid.ys.begin(), grid.ys.end(), *ys[i]) - grid.ys.begin();
        grid.row_of[grid.ys.size() - 1 - static_cast<std::size_t>(r)][static_cast<std::size_t>(c)] = i;
    }
    return grid;
}

}  // namespace evenfall::reports
