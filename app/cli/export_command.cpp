// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/command.h"
#include "app/cli/json_number.h"
#include "app/workflow/export.h"
#include "core/input_error.h"

#include <ostream>

namespace evenfall::cli {
namespace {

Json answer_json(const ExportOptions& o, const workflow::ExportAnswer& answer) {
    Json files = Json::array();
    for (const auto& f : answer.tables.files) files.push_back({{"file", f.name}, {"kind", f.kind}, {"rows", f.rows}});
    Json plans = Json::array();
    for (const auto& p : answer.tables.plans) plans.push_back({{"file", p.file}, {"plan", p.code}, {"site", p.site}});
    return {{"folder", o.out},
            {"files", std::move(files)},
            {"plans", std::move(plans)},
            {"areas_geojson", answer.areas ? Json("areas.geojson") : Json(nullptr)},
            {"gaps", answer.gaps},
            {"left_out", answer.tables.left_out}};
}

void print_text(std::ostream& out, const ExportOptions& o, const workflow::ExportAnswer& answer) {
    for (const auto& f : answer.tables.files) {
        out << f.name << "  " << f.rows << (f.rows == 1 ? " row\n" : " rows\n");
    }
    for (const auto& p : answer.tables.plans) out << p.file << "  plan " << printable(p.code) << '\n';
    if (answer.areas) out << "areas.geojson  " << *answer.areas << (*answer.areas == 1 ? " area\n" : " areas\n");
    for (const auto& gap : answer.gaps) out << "gap: " << gap << '\n';
    for (const auto& sentence : answer.tables.left_out) out << "not written: " << sentence << '\n';
    out << "Written to " << o.out << "; CONTENTS.txt there says how to read it back.\n";
}

}  // namespace

int run(const ExportOptions& o, Streams& streams) {
    const auto rule = audit::quarter_rule_named(o.quarter_rule);
    if (!rule) throw InputError(o.quarter_rule, "a quarter rule");
    workflow::ExportOrder order{o.out, o.areas_geojson, std::nullopt, *rule};
    if (o.from && o.to) order.period = workflow::MapPeriod{*o.from, *o.to, o.program, o.rain};
    const auto book = store::Book::open(o.book, store::Access::read_only);
    const auto answer = workflow::export_to_folder(book, order, [&](const std::string& kind) {
        if (streams.err_is_terminal) streams.err << "\r\033[K" << kind << std::flush;
    });
    if (streams.err_is_terminal) streams.err << "\r\033[K" << std::flush;
    if (o.json) {
        streams.out << print(answer_json(o, answer));
    } else {
        print_text(streams.out, o, answer);
    }
    return done;
}

}  // namespace evenfall::cli
