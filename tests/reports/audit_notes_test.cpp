// SPDX-License-Identifier: GPL-3.0-or-later
#include "reports/content/audit_report.h"
#include "tests/reports/sample_reports.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::reports;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

audit::PressureReading reading(const char* place, const char* pressure, const char* low) {
    audit::PressureReading r;
    r.place = place;
    r.pressure = units::parse_measure<units::Pressure>(pressure);
    if (low[0] != '\0') r.nozzle_low = units::parse_measure<units::Pressure>(low);
    return r;
}

Report report_of(const audit::CatchTest& test) {
    auto report = audit_report({audited(test, "Lawn", audit::QuarterRule::part_can)}, "Test T-1", {},
                               samples::frame(UnitsShown::us));
    check(report);
    return report;
}

}  // namespace

// CONSTRUCTED: 36 and 64 psi have the mean 50, so the flows are sqrt(0.72) and sqrt(1.28) of the
// flow at the mean pressure.
TEST_CASE("the audit report shows pressures and findings", "[reports][constructed]") {
    auto test = samples::grid_test();
    CHECK(report_of(test).find_table("t1_pressures") == nullptr);
    test.pressures = std::vector{reading("far end", "36psi", "45psi"), reading("near end", "64psi", "")};
    audit::Finding tilted;
    tilted.kind = "tilted";
    tilted.place = "row 2";
    tilted.count = 3;
    audit::Finding leak;
    leak.kind = "leaking_head";
    leak.severity = audit::Severity::severe;
    test.findings = std::vector{tilted, leak};
    const Report report = report_of(test);
    const Table* pressures = report.find_table("t1_pressures");
    REQUIRE(pressures != nullptr);
    REQUIRE(pressures->rows.size() == 2);
    const auto flows = pressures->values("flow");
    CHECK_THAT(*flows[0], WithinAbs(0.848528, 5e-7));
    CHECK_THAT(*flows[1], WithinAbs(1.131371, 5e-7));
    CHECK(pressures->labels("verdict")[0] == "below the nozzle's range");
    CHECK_THAT(*pressures->values("pressure")[1], WithinAbs(64.0, 1e-9));
    REQUIRE(report.find_table("t1_whole_system") != nullptr);
    const Table* findings = report.find_table("t1_findings");
    REQUIRE(findings != nullptr);
    CHECK(findings->labels("severity")[0] == "severe");  // worst first
    CHECK(findings->labels("places")[1] == "row 2");
    CHECK(*findings->values("count")[1] == 3);

    test.findings->clear();
    const Report none = report_of(test);
    CHECK(none.find_table("t1_findings") == nullptr);
    bool said = false;
    for (const Section& s : none.sections) {
        for (const Block& b : s.blocks) {
            const auto* paragraph = std::get_if<Paragraph>(&b);
            said = said || (paragraph != nullptr && paragraph->text.find("nothing was found") != std::string::npos);
        }
    }
    CHECK(said);
}
