// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/report.h"

#include <algorithm>

namespace evenfall::reports {

bool Field::operator==(const Field& o) const {
    if (x0 != o.x0 || y0 != o.y0 || dx != o.dx || dy != o.dy || columns != o.columns ||
        rows != o.rows || method != o.method || values.size() != o.values.size()) {
        return false;
    }
    for (std::size_t i = 0; i < values.size(); ++i) {
        const bool both_outside = values[i] != values[i] && o.values[i] != o.values[i];
        if (!both_outside && values[i] != o.values[i]) return false;
    }
    return true;
}

std::vector<const Table*> Report::tables() const {
    std::vector<const Table*> out;
    if (!answer.figures.rows.empty()) out.push_back(&answer.figures);
    for (const Section& section : sections) {
        for (const Block& block : section.blocks) {
            if (const auto* table = std::get_if<Table>(&block)) out.push_back(table);
        }
    }
    return out;
}

const Table* Report::find_table(std::string_view key) const {
    for (const Table* table : tables()) {
        if (table->key == key) return table;
    }
    return nullptr;
}

std::string worth(const Fix& fix) {
    if (fix.water.empty() && fix.money.empty()) return "What it is worth is not known";
    std::string out = "Worth";
    if (!fix.water.empty()) out += " " + printed(fix.water, {}, true) + " of water";
    if (!fix.water.empty() && !fix.money.empty()) out += ",";
    if (!fix.money.empty()) out += " " + printed(fix.money, {}, true);
    return out;
}

Table fixes_table(const Answer& answer) {
    Table table{"fixes",
                "What to fix first",
                "The three things worth most, and what each is worth.",
                {{"rank", "Rank", {}, false},
                 {"what", "What to do", {}, true},
                 {"why", "Why", {}, true},
                 {"water", "Water", {}, false},
                 {"money", "Money", {}, false}},
                {}};
    double rank = 1.0;
    for (const Fix& fix : answer.fixes) {
        table.add(std::to_string(table.rows.size() + 1),
                  {number(rank), text(fix.what), text(fix.why), fix.water, fix.money});
        rank += 1.0;
    }
    return table;
}

Table notes_table(const std::vector<Note>& notes) {
    Table table{"notes",
                "Methods, conventions and sources",
                "How each figure came about.",
                {{"subject", "Figure", {}, true},
                 {"method", "Method", {}, true},
                 {"convention", "Convention", {}, true},
                 {"source", "Source", {}, true},
                 {"basis", "Basis", {}, true}},
                {}};
    for (const Note& n : notes) {
        table.add(std::to_string(table.rows.size() + 1),
                  {text(n.subject), text(n.method), text(n.convention), text(n.source),
                   text(n.assumed ? "an input was assumed" : "as recorded")});
    }
    return table;
}

bool has_values(const Chart& chart, const Report& report) {
    const auto any = [&](const ColumnRef& ref) {
        const Table* table = report.find_table(ref.table);
        if (table == nullptr) return false;
        const auto values = table->values(ref.column);
        return std::any_of(values.begin(), values.end(), [](const auto& v) { return v.has_value(); });
    };
    if (const auto* map = std::get_if<MapChart>(&chart.content)) return any(map->value);
    const auto& series = std::get<SeriesChart>(chart.content).series;
    return std::any_of(series.begin(), series.end(), [&](const Series& s) { return any(s.values); });
}

}  // namespace evenfall::reports
