// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/field_notes_file.h"

#include "core/audit/finding.h"
#include "core/audit/pressure.h"
#include "core/exchange/csv_reader.h"
#include "core/input_error.h"

#include <span>
#include <string>

namespace evenfall::exchange {
namespace {

/// An outline belongs to a catch test and is no kind of its own in a book.
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

/// Refuses a row of another test than the first row's.
class OneTest {
  public:
    void check(RowReader& row) {
        const std::string test(row.text("test"));
        if (!test_) test_ = test;
        if (test != *test_) row.refuse("test", test, phrase("exchange", "the same test in every row of this file"));
    }

  private:
    std::optional<std::string> test_;
};

/// What the audit refuses about a single record, at the columns of its row.
void refuse_all(RowReader& row, const std::vector<Issue>& issues) {
    for (const Issue& i : issues) {
        row.refuse(i.place.column == "nozzle range" ? "nozzle_low" : i.place.column, i.found, i.expected);
    }
}

}  // namespace

audit::PressureReading read_pressure(RowReader& row) {
    audit::PressureReading r;
    r.place = row.needed_text("place");
    r.row = row.row();
    static_cast<void>(row.needed_number("pressure"));
    if (!row.ok()) return r;
    r.pressure = *row.measure<units::Pressure>("pressure");
    if (row.has("nozzle_low")) r.nozzle_low = row.measure<units::Pressure>("nozzle_low");
    if (row.has("nozzle_high")) r.nozzle_high = row.measure<units::Pressure>("nozzle_high");
    if (!row.ok()) return r;
    try {
        static_cast<void>(audit::check_pressures(std::span(&r, 1), ""));
    } catch (const InputError& e) {
        refuse_all(row, e.issues());
    }
    return r;
}

std::optional<audit::Finding> read_finding(RowReader& row) {
    audit::Finding f;
    f.kind = row.needed_text("finding");
    f.place = row.text("place");
    f.count = row.whole_number("count", 1, 100000).value_or(1);
    f.note = row.text("note");
    f.row = row.row();
    if (const auto text = row.text("severity"); !text.empty()) {
        const auto severity = audit::severity_named(text);
        if (severity) f.severity = *severity;
        else row.refuse("severity", text, phrase("exchange", "minor, moderate or severe"));
    }
    if (const auto text = row.text("corrected"); !text.empty()) {
        if (text == "yes") f.corrected = true;
        else if (text != "no") row.refuse("corrected", text, phrase("exchange", "yes or no"));
    }
    if (f.kind == no_finding || f.kind.empty()) return std::nullopt;
    refuse_all(row, audit::check(std::span(&f, 1), ""));
    if (!row.ok()) return std::nullopt;
    return f;
}

std::vector<audit::PressureReading> read_pressures(const std::filesystem::path& path) {
    std::vector<audit::PressureReading> readings;
    OneTest test;
    each_row(path, spec_of(Kind::pressures), [&](RowReader& row) {
        test.check(row);
        auto r = read_pressure(row);
        if (row.ok()) readings.push_back(std::move(r));
    });
    static_cast<void>(audit::check_pressures(readings, path.string()));
    return readings;
}

std::vector<audit::Finding> read_findings(const std::filesystem::path& path) {
    std::vector<audit::Finding> findings;
    OneTest test;
    std::size_t none = 0;
    each_row(path, spec_of(Kind::findings), [&](RowReader& row) {
        test.check(row);
        auto f = read_finding(row);
        if (f) findings.push_back(*std::move(f));
        else if (row.ok()) none = row.row();
        if (none != 0 && !findings.empty()) {
            row.refuse("finding", row.text("finding"), phrase("exchange", "either findings or none, in one table"));
        }
    });
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
