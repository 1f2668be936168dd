// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/audit_notes.h"

#include "core/units/number.h"

namespace evenfall::reports {
namespace {

std::string row_key(const Table& t) { return std::to_string(t.rows.size() + 1); }

Table pressure_table(const audit::PressureCheck& check, const std::string& key, const Shown& shown) {
    const units::Pressure unit = shown.us() ? units::psi : units::kilopascal;
    const NumberFormat format = shown.us() ? NumberFormat{1, "psi"} : NumberFormat{0, "kPa"};
    Table t{key + "_pressures",
            "Pressures read during the test",
            "Flow at each head over that at the mean pressure, by the square root of the pressure; a "
            "head or nozzle that regulates follows it less.",
            {{"place", "Place", {}, true},
             {"pressure", "Pressure", format},
             {"nozzle_low", "Nozzle from", format},
             {"nozzle_high", "Nozzle to", format},
             {"verdict", "Against the nozzle", {}, true},
             {"flow", "Relative flow", {3, ""}}},
            {}};
    const auto limit = [&](const std::optional<units::Typed<units::Pressure>>& p) {
        return p ? number(p->quantity().in(unit)) : text("");
    };
    for (const audit::JudgedPressure& p : check.readings) {
        Cell pressure = number(p.reading.pressure.quantity().in(unit));
        pressure.role = CellRole::input;
        t.add(row_key(t), {text(p.reading.place), pressure, limit(p.reading.nozzle_low),
                           limit(p.reading.nozzle_high), text(std::string(audit::text_of(p.verdict))),
                           computed(p.relative_flow, "SQRT({pressure}/AVERAGE({" + t.key + ".pressure}))")});
    }
    const std::string name = " " + format.unit;
    t.footnotes.push_back("Mean " + units::format_fixed(check.mean.in(unit), format.decimals) + name +
                          ", lowest " + units::format_fixed(check.lowest.in(unit), format.decimals) + name +
                          ", highest " + units::format_fixed(check.highest.in(unit), format.decimals) + name +
                          "; the flows spread over " + percent(check.flow_spread) + " of their mean.");
    return t;
}

Table system_table(const audit::TestAnalysis& a, const std::string& key) {
    Table t{key + "_whole_system",
            "From the tested area to the whole system",
            "What the figures would be where the pressure is at its lowest; each form as its source "
            "has it.",
            {{"figure", "Figure", {}, true},
             {"tested", "Tested", {3, ""}},
             {"whole_system", "Whole system", {3, ""}},
             {"form", "Form", {}, true},
             {"source", "Source", {}, true}},
            {}};
    for (const audit::SystemFigure& f : a.whole_system) {
        t.add(row_key(t), {text(f.figure == "cu" ? "CU" : "DU_LQ"), number(f.tested), number(f.whole_system),
                           text(f.form), text(f.source + " [" + std::string(reference::text_of(f.mark)) + "]")});
    }
    return t;
}

Table finding_table(const audit::TestAnalysis& a, const std::string& key) {
    Table t{key + "_findings",
            "What was found on the ground",
            "Worst first. Corrected means put right before the test.",
            {{"finding", "Finding", {}, true},
             {"places", "Where", {}, true},
             {"count", "Count", {0, ""}},
             {"corrected", "Corrected", {0, ""}},
             {"severity", "Worst", {}, true},
             {"remedy", "What to do", {}, true}},
            {}};
    for (const audit::FindingSummary& f : a.findings) {
        std::string places;
        for (const std::string& p : f.places) places += (places.empty() ? "" : ", ") + p;
        t.add(row_key(t), {text(f.kind.name), text(places), number(f.count), number(f.corrected),
                           text(std::string(audit::text_of(f.worst))),
                           text(f.kind.remedy + (f.kind.caution.empty() ? "" : "; " + f.kind.caution))});
    }
    return t;
}

}  // namespace

std::vector<Block> note_blocks(const audit::TestAnalysis& a, const std::string& key, const Shown& shown) {
    std::vector<Block> out;
    if (a.pressures) out.emplace_back(pressure_table(*a.pressures, key, shown));
    if (!a.whole_system.empty()) out.emplace_back(system_table(a, key));
    if (!a.findings.empty()) out.emplace_back(finding_table(a, key));
    else if (a.inspected) out.emplace_back(Paragraph{"The ground was inspected and nothing was found."});
    return out;
}

}  // namespace evenfall::reports
