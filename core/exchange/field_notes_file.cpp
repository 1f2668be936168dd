// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/field_notes_file.h"

#include "core/audit/finding.h"
#include "core/audit/pressure.h"
#include "core/exchange/csv_reader.h"
#include "core/exchange/row_reader.h"

namespace evenfall::exchange {
namespace {

/// These tables belong to a catch test and are no kind of their own in a book.
const KindSpec& pressures_spec() {
    static const KindSpec spec{
        Kind::catches, "pressures",
        {{"place", "place", ""},
         {"pressure_psi", "pressure", "psi"}, {"pressure_kpa", "pressure", "kpa"},
         {"pressure_bar", "pressure", "bar"}, {"nozzle_low_psi", "nozzle_low", "psi"},
         {"nozzle_low_kpa", "nozzle_low", "kpa"}, {"nozzle_low_bar", "nozzle_low", "bar"},
         {"nozzle_high_psi", "nozzle_high", "psi"}, {"nozzle_high_kpa", "nozzle_high", "kpa"},
         {"nozzle_high_bar", "nozzle_high", "bar"}},
        {{"place", "pressure"}}};
    return spec;
}

const KindSpec& findings_spec() {
    static const KindSpec spec{Kind::catches, "findings",
                               {{"finding", "finding", ""}, {"place", "place", ""},
                                {"count", "count", ""}, {"severity", "severity", ""},
                                {"corrected", "corrected", ""}, {"note", "note", ""}},
                               {{"finding"}}};
    return spec;
}

const KindSpec& outline_spec() {
    static const KindSpec spec{Kind::catches, "outline",
                               {{"x_m", "x", "m"}, {"x_ft", "x", "ft"}, {"y_m", "y", "m"}, {"y_ft", "y", "ft"}},
                               {{"x", "y"}}};
    return spec;
}

/// Reads every row, calls `use`, and throws all issues together.
template <class Use>
void each_row(const std::filesystem::path& path, const KindSpec& spec, const Use& use) {
    CsvReader rows(path);
    const ColumnIndex columns(spec, rows.header(), rows.file(), rows.row());
    const CellFormat format;
    RowReader row(rows, columns, format);
    IssueLog log;
    while (rows.next()) {
        row.start();
        if (rows.row_issue()) {
            log.add(*rows.row_issue());
            continue;
        }
        use(row);
        for (const Issue& issue : row.issues()) log.add(issue);
    }
    if (log.count > 0) throw InputError(std::move(log.kept));
}

std::string name_of_file(const std::filesystem::path& path) { return path.string(); }

}  // namespace

std::vector<audit::PressureReading> read_pressures(const std::filesystem::path& path) {
    std::vector<audit::PressureReading> readings;
    each_row(path, pressures_spec(), [&](RowReader& row) {
        audit::PressureReading r;
        r.place = row.needed_text("place");
        static_cast<void>(row.needed_number("pressure"));
        if (const auto p = row.measure<units::Pressure>("pressure")) r.pressure = *p;
        if (row.has("nozzle_low")) r.nozzle_low = row.measure<units::Pressure>("nozzle_low");
        if (row.has("nozzle_high")) r.nozzle_high = row.measure<units::Pressure>("nozzle_high");
        r.row = row.row();
        if (row.ok()) readings.push_back(std::move(r));
    });
    static_cast<void>(audit::check_pressures(readings, name_of_file(path)));
    return readings;
}

std::vector<audit::Finding> read_findings(const std::filesystem::path& path) {
    std::vector<audit::Finding> findings;
    each_row(path, findings_spec(), [&](RowReader& row) {
        audit::Finding f;
        f.kind = row.needed_text("finding");
        f.place = row.text("place");
        f.count = row.whole_number("count", 1, 100000).value_or(1);
        f.note = row.text("note");
        f.row = row.row();
        if (const auto text = row.text("severity"); !text.empty()) {
            const auto severity = audit::severity_named(text);
            if (severity) f.severity = *severity;
            else row.refuse("severity", text, "minor, moderate or severe");
        }
        if (const auto text = row.text("corrected"); !text.empty()) {
            if (text == "yes") f.corrected = true;
            else if (text != "no") row.refuse("corrected", text, "yes or no");
        }
        if (row.ok()) findings.push_back(std::move(f));
    });
    if (auto issues = audit::check(findings, name_of_file(path)); !issues.empty()) {
        throw InputError(std::move(issues));
    }
    return findings;
}

std::vector<std::pair<units::Length, units::Length>> read_outline(const std::filesystem::path& path) {
    std::vector<std::pair<units::Length, units::Length>> corners;
    each_row(path, outline_spec(), [&](RowReader& row) {
        static_cast<void>(row.needed_number("x"));
        static_cast<void>(row.needed_number("y"));
        if (!row.ok()) return;
        corners.emplace_back(row.measure<units::Length>("x")->quantity(),
                             row.measure<units::Length>("y")->quantity());
    });
    return corners;
}

}  // namespace evenfall::exchange
