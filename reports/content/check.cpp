// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/formula.h"
#include "reports/content/report.h"
#include "reports/content/utf8.h"

#include "core/input_error.h"
#include "core/units/number.h"

#include <cmath>
#include <set>
#include <stdexcept>

namespace evenfall::reports {
namespace {

[[noreturn]] void mistake(const std::string& what) { throw std::logic_error("report: " + what); }

void need_clean(const std::string& text, const Place& place) {
    if (!is_clean_text(text)) {
        throw InputError(Issue{place, printable(text), "text in UTF-8 without control characters"});
    }
}

bool is_key(std::string_view key) {
    if (key.empty() || key.front() < 'a' || key.front() > 'z') return false;
    return key.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_") == std::string_view::npos;
}

class Checker {
  public:
    explicit Checker(const Report& report) : report_(report) {}

    void run() {
        heads();
        for (const Table* table : report_.tables()) names(*table);
        for (const Table* table : report_.tables()) cells(*table);
        for (const RawTable& raw : report_.raw_tables) {
            if (!is_key(raw.key) || !keys_.insert(raw.key).second) mistake("table key " + raw.key);
            columns(raw.key, raw.columns);
        }
        std::set<std::string> section_keys;
        for (const Section& section : report_.sections) {
            if (!is_key(section.key) || section.key.size() > 31 ||
                !section_keys.insert(section.key).second) {
                mistake("section key " + section.key);
            }
            need_clean(section.title, {report_.title, 0, section.key});
            for (const Block& block : section.blocks) {
                if (const auto* chart = std::get_if<Chart>(&block)) this->chart(*chart);
                if (const auto* p = std::get_if<Paragraph>(&block)) {
                    need_clean(p->text, {report_.title, 0, section.key});
                }
            }
        }
    }

  private:
    void heads() {
        const Place place{"report", 0, "head"};
        for (const std::string* t : {&report_.title, &report_.subtitle, &report_.organisation,
                                     &report_.created, &report_.program, &report_.caution.title}) {
            need_clean(*t, place);
        }
        if (report_.caution.paragraphs.empty()) mistake("no caution page");
        for (const auto& t : report_.caution.paragraphs) need_clean(t, {"report", 0, "caution"});
        for (const auto& t : report_.answer.sentences) need_clean(t, {"report", 0, "answer"});
        for (const Fix& fix : report_.answer.fixes) {
            need_clean(fix.what, {"report", 0, "fixes"});
            need_clean(fix.why, {"report", 0, "fixes"});
            finite(fix.water, {"report", 0, "fixes"});
            finite(fix.money, {"report", 0, "fixes"});
        }
        if (report_.answer.fixes.size() > 3) mistake("more than three things to fix first");
        for (const Note& n : report_.notes) {
            for (const std::string* t : {&n.subject, &n.method, &n.convention, &n.source}) {
                need_clean(*t, {"report", 0, "notes"});
            }
        }
        for (const auto& t : report_.gaps) need_clean(t, {"report", 0, "gaps"});
        for (const Signature& s : report_.signatures) {
            for (const std::string* t : {&s.role, &s.name, &s.certification, &s.expires}) {
                need_clean(*t, {"report", 0, "signatures"});
            }
        }
    }

    static void finite(const Cell& cell, const Place& place) {
        const auto value = cell.number();
        if (value && !std::isfinite(*value)) {
            throw InputError(Issue{place, units::format_shortest(*value), "a finite number"});
        }
        if (cell.format && (cell.format->decimals < 0 || cell.format->decimals > 9)) {
            mistake(place.text() + ": decimals " + std::to_string(cell.format->decimals));
        }
        if (cell.format) need_clean(cell.format->unit, place);
    }

    static void columns(const std::string& table, const std::vector<Column>& columns) {
        std::set<std::string> seen;
        for (const Column& column : columns) {
            if (!is_key(column.key) || !seen.insert(column.key).second) {
                mistake("table " + table + ": column key " + column.key);
            }
            need_clean(column.title, {table, 0, column.key});
            need_clean(column.format.unit, {table, 0, column.key});
            if (column.format.decimals < 0 || column.format.decimals > 9) {
                mistake("table " + table + ": decimals of " + column.key);
            }
        }
    }

    void names(const Table& table) {
        if (!is_key(table.key) || !keys_.insert(table.key).second) {
            mistake("table key " + table.key);
        }
        columns(table.key, table.columns);
        std::set<std::string> rows;
        for (const Row& row : table.rows) {
            if (row.cells.size() != table.columns.size()) {
                mistake("table " + table.key + ", row " + row.key + ": ragged");
            }
            if (row.key.empty() || row.key.find(']') != std::string::npos ||
                row.key.find("..") != std::string::npos || !rows.insert(row.key).second) {
                mistake("table " + table.key + ": row key " + row.key);
            }
            if (row.kind == RowKind::data && &row != &table.rows.front() &&
                (&row - 1)->kind == RowKind::total) {
                mistake("table " + table.key + ": data below a total");
            }
            for (const Cell& cell : row.cells) {
                if (cell.name.empty()) continue;
                // Without the underscore a name such as "du1" would read as a cell address.
                if (!is_key(cell.name) || cell.name.find('_') == std::string::npos ||
                    !cell_names_.insert(cell.name).second) {
                    mistake("cell name " + cell.name);
                }
            }
        }
        need_clean(table.title, {table.key, 0, {}});
        need_clean(table.sentence, {table.key, 0, {}});
        for (const auto& note : table.footnotes) need_clean(note, {table.key, 0, {}});
    }

    void cells(const Table& table) {
        for (std::size_t r = 0; r < table.rows.size(); ++r) {
            for (std::size_t c = 0; c < table.columns.size(); ++c) {
                const Cell& cell = table.rows[r].cells[c];
                const Place place{table.key, r + 1, table.columns[c].key};
                if (const auto* t = std::get_if<std::string>(&cell.value)) need_clean(*t, place);
                finite(cell, place);
                if (cell.role == CellRole::choice && !cell.limits) {
                    mistake(place.text() + ": a cell to be changed needs limits");
                }
                for (const auto& piece : parse_formula(cell.formula)) reference(table, piece);
            }
        }
    }

    void reference(const Table& here, const FormulaPiece& piece) const {
        if (const auto* p = std::get_if<SameRow>(&piece)) column_of(here.key, p->column);
        if (const auto* p = std::get_if<WholeColumn>(&piece)) column_of(p->table, p->column);
        if (const auto* p = std::get_if<OneCell>(&piece)) row_of(p->table, p->row, p->column);
        if (const auto* p = std::get_if<RowRange>(&piece)) {
            row_of(p->table, p->first, p->column);
            row_of(p->table, p->last, p->column);
        }
        if (const auto* p = std::get_if<NamedCell>(&piece)) {
            if (!cell_names_.contains(p->name)) mistake("formula names no cell: " + p->name);
        }
    }

    const Table& column_of(const std::string& table, const std::string& column) const {
        const Table* found = report_.find_table(table);
        if (found == nullptr || !found->column_index(column)) {
            mistake("nothing at " + table + "." + column);
        }
        return *found;
    }

    void row_of(const std::string& table, const std::string& row, const std::string& column) const {
        if (!column_of(table, column).row_index(row)) mistake("no row " + row + " in " + table);
    }

    void chart(const Chart& chart) {
        if (!is_key(chart.key) || !chart_keys_.insert(chart.key).second) {
            mistake("chart key " + chart.key);
        }
        need_clean(chart.title, {chart.key, 0, {}});
        need_clean(chart.sentence, {chart.key, 0, {}});
        if (chart.sentence.empty()) mistake("chart " + chart.key + " says nothing");
        if (const auto* s = std::get_if<SeriesChart>(&chart.content)) {
            series_chart(chart.key, *s);
        } else {
            map_chart(chart.key, std::get<MapChart>(chart.content));
        }
    }

    void series_chart(const std::string& key, const SeriesChart& c) const {
        column_of(c.categories.table, c.categories.column);
        if (c.series.empty()) mistake("chart " + key + " has no series");
        if (c.x.title.empty() || c.y.title.empty()) mistake("chart " + key + ": axis without title");
        for (const Series& s : c.series) {
            need_clean(s.name, {key, 0, {}});
            // The workbook library cannot put bars and lines into one chart.
            if (s.draw != c.series.front().draw) mistake("chart " + key + " mixes bars and lines");
            if (s.values.table != c.categories.table) mistake("chart " + key + ": two tables");
            column_of(s.values.table, s.values.column);
            if (s.low.has_value() != s.high.has_value()) mistake("chart " + key + ": half interval");
            if (s.low) {
                column_of(s.low->table, s.low->column);
                column_of(s.high->table, s.high->column);
                if (s.low->table != c.categories.table || s.high->table != c.categories.table) {
                    mistake("chart " + key + ": two tables");
                }
            }
        }
    }

    void map_chart(const std::string& key, const MapChart& c) const {
        for (const ColumnRef* ref : {&c.x, &c.y, &c.value, &c.label}) {
            column_of(ref->table, ref->column);
            if (ref->table != c.x.table) mistake("chart " + key + ": two tables");
        }
        if (c.field && (c.field->values.size() != c.field->columns * c.field->rows ||
                        !(c.field->dx > 0.0) || !(c.field->dy > 0.0))) {
            mistake("chart " + key + ": field");
        }
    }

    const Report& report_;
    std::set<std::string> keys_, cell_names_, chart_keys_;
};

}  // namespace

void check(const Report& report) { Checker(report).run(); }

}  // namespace evenfall::reports
