// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/import_run.h"
#include "core/store/planting_store.h"
#include "core/store/site_store.h"
#include "core/units/number.h"

#include <algorithm>

namespace evenfall::exchange {
namespace {

/// A row as a record; what the record's own rules refuse is refused at its column.
weather::Planting read_planting(RowReader& row) {
    weather::Planting p;
    p.area = row.needed_text("area");
    const std::string kind = row.needed_text("kind");
    p.from = row.needed_date("from").value_or(calendar::Date{});
    p.to = row.date("to");
    p.key = row.text("key");
    p.coefficient = row.number("coefficient");
    if (!row.ok()) return p;
    try {
        p.kind = weather::planting_kind_named(kind);
    } catch (const InputError& e) {
        row.refuse("kind", kind, e.issues().front().expected);
        return p;
    }
    try {
        weather::check_planting(p);
    } catch (const InputError& e) {
        const Sentence& found = e.issues().front().found;
        const bool date = p.to && found == calendar::format_date(*p.to);
        const bool number = p.coefficient && found == units::format_shortest(*p.coefficient);
        row.refuse(date ? "to" : number ? "coefficient" : "key", found,
                   e.issues().front().expected);
    }
    return p;
}

std::string text_of(const weather::Planting& p) {
    std::string text = "to " + (p.to ? calendar::format_date(*p.to) : std::string("no last day"));
    if (!p.key.empty()) text += ", " + p.key;
    if (p.coefficient) text += ", coefficient " + units::format_shortest(*p.coefficient);
    return text;
}

}  // namespace

void import_plantings(ImportRun& run) {
    run.each_row([&](RowReader& row) {
        const weather::Planting p = read_planting(row);
        if (!row.ok()) return;
        const auto area = store::find_area(run.book, p.area);
        if (!area) {
            row.refuse("area", p.area, area_expected);
            return;
        }
        const auto outcome = store::add_planting(run.book, p, false, run.import);
        switch (outcome) {
            case store::PlantingOutcome::added: ++run.result.added; return;
            case store::PlantingOutcome::unchanged: ++run.result.unchanged; return;
            default: break;
        }
        const auto stored = store::plantings(run.book, area->site);
        const auto old = std::find_if(stored.begin(), stored.end(), [&](const weather::Planting& s) {
            return s.area == p.area && s.kind == p.kind && s.from == p.from;
        });
        if (run.settle({run.rows.file(), row.row(), ""},
                       Sentence(record_form::planting, name_of(p.kind), p.area, calendar::format_date(p.from)).english(),
                       text_of(*old), text_of(p), outcome == store::PlantingOutcome::superseded)) {
            store::add_planting(run.book, p, true, run.import);
        }
    });
}

}  // namespace evenfall::exchange
