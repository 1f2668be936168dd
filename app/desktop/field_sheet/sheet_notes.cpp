// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/field_sheet/sheet_notes.h"

#include "core/audit/finding.h"
#include "core/units/number.h"

#include <cmath>
#include <limits>
#include <optional>

namespace evenfall::desktop {
namespace {

using Pressure = units::Typed<units::Pressure>;

/// Nothing, with an issue, when the text is no pressure above zero.
std::optional<Pressure> pressure_in(const std::string& text, std::size_t row, const char* column, std::vector<Issue>& issues) {
    try {
        const Pressure p = units::parse_measure<units::Pressure>(text);
        if (p.value > 0.0 && std::isfinite(p.value)) return p;
        issues.push_back({{"", row, column}, printable(text), phrase("field sheet", "a pressure above 0 with its unit, such as 42 psi")});
    } catch (const InputError& e) {
        Issue issue = e.issues().front();
        issue.place = {"", row, column};
        issue.found = printable(text);  // all of it, not only the part that could not be read
        issues.push_back(std::move(issue));
    }
    return std::nullopt;
}

audit::PressureReading reading_of(const SheetPressure& p, std::size_t row, std::vector<Issue>& issues) {
    audit::PressureReading r;
    r.place = p.place;
    if (p.place.empty()) issues.push_back({{"", row, "place"}, "", phrase("field sheet", "where it was measured")});
    if (const auto v = pressure_in(p.value, row, "pressure", issues)) r.pressure = *v;
    if (!p.nozzle_low.empty()) r.nozzle_low = pressure_in(p.nozzle_low, row, "nozzle from", issues);
    if (!p.nozzle_high.empty()) r.nozzle_high = pressure_in(p.nozzle_high, row, "nozzle to", issues);
    if (r.nozzle_low && r.nozzle_high && r.nozzle_low->quantity().si() > r.nozzle_high->quantity().si()) {
        issues.push_back({{"", row, "nozzle to"}, printable(p.nozzle_high), {phrase("field sheet", "no less than the lower end of the range, %1"), printable(p.nozzle_low)}});
    }
    return r;
}

audit::Finding finding_of(const SheetFinding& f, std::size_t row, std::vector<Issue>& issues) {
    audit::Finding out;
    out.kind = f.what;
    out.place = f.place;
    out.note = f.note;
    out.corrected = f.corrected == "yes";
    if (!audit::finding_kind(f.what)) issues.push_back({{"", row, "what was seen"}, printable(f.what), phrase("field sheet", "one of the list")});
    if (!f.count.empty()) {
        const auto n = units::parse_number(f.count);
        const bool whole = n && *n >= 1.0 && *n <= std::numeric_limits<int>::max() && std::floor(*n) == *n;
        if (whole) out.count = static_cast<int>(*n);
        else issues.push_back({{"", row, "how many"}, printable(f.count), phrase("field sheet", "a whole number, 1 or more")});
    }
    if (!f.severity.empty()) {
        if (const auto s = audit::severity_named(f.severity)) out.severity = *s;
        else issues.push_back({{"", row, "how bad"}, printable(f.severity), phrase("field sheet", "minor, moderate or severe")});
    }
    return out;
}

std::string text_or_nothing(const std::optional<Pressure>& p) { return p ? p->text() : std::string(); }

}  // namespace

std::vector<Issue> issues_of(const SheetPressure& pressure, std::size_t row) {
    std::vector<Issue> issues;
    reading_of(pressure, row, issues);
    return issues;
}

std::vector<Issue> issues_of(const SheetFinding& finding, std::size_t row) {
    std::vector<Issue> issues;
    finding_of(finding, row, issues);
    return issues;
}

void take_notes(const SheetData& sheet, audit::CatchTest& test) {
    std::vector<Issue> issues;
    if (!sheet.pressures.empty()) test.pressures.emplace();
    for (std::size_t i = 0; i < sheet.pressures.size(); ++i) {
        test.pressures->push_back(reading_of(sheet.pressures[i], i + 1, issues));
    }
    if (sheet.inspected || !sheet.findings.empty()) test.findings.emplace();
    for (std::size_t i = 0; i < sheet.findings.size(); ++i) {
        test.findings->push_back(finding_of(sheet.findings[i], i + 1, issues));
    }
    if (!issues.empty()) throw InputError(std::move(issues));
}

void show_notes(const audit::CatchTest& test, SheetData& sheet) {
    sheet.pressures.clear();
    sheet.findings.clear();
    sheet.inspected = test.findings.has_value();
    if (test.pressures) {
        for (const auto& p : *test.pressures) {
            sheet.pressures.push_back({p.place, p.pressure.text(), text_or_nothing(p.nozzle_low), text_or_nothing(p.nozzle_high)});
        }
    }
    if (!test.findings) return;
    for (const auto& f : *test.findings) {
        sheet.findings.push_back({f.kind, f.place, std::to_string(f.count), std::string(audit::text_of(f.severity)),
                                  f.corrected ? "yes" : "", f.note});
    }
}

}  // namespace evenfall::desktop
