// SPDX-License-Identifier: GPL-3.0-or-later
// CONSTRUCTED filings.
#include "reports/content/review_report.h"

#include "tests/review/sample_filing.h"

#include <catch2/catch.hpp>

using namespace evenfall;

namespace {
reports::Report made(const review::Filing& filing, bool with_program) {
    const auto program = review::built_in_rebate("rebate-sport-heads");
    const auto r = review::review_filing(filing, std::string(64, 'a'), true, with_program ? &program : nullptr, std::nullopt);
    return reports::review_report(r, {reports::UnitsShown::us, "District", "2025-02-01T00:00:00Z", "Evenfall 0.1.0", {}});
}
}  // namespace

TEST_CASE("the review memo says what was found", "[reports][constructed]") {
    const auto report = made(tests::sample_filing(), true);
    CHECK_NOTHROW(reports::check(report));
    CHECK(report.answer.sentences.front() == "Every rule of the program is met: approve.");
    REQUIRE(report.find_table("claims") != nullptr);
    CHECK(report.find_table("claims")->rows.size() == 4);
    CHECK(report.find_table("rules")->rows.size() == 12);
    CHECK(report.find_table("payment")->rows.back().cells.back().number() == 960.0);
    CHECK(report.find_table("savings") != nullptr);
    CHECK(report.find_table("questions") == nullptr);
}

TEST_CASE("a memo on poor and hostile words still holds", "[reports][constructed]") {
    review::Filing f = tests::sample_filing();
    f.code = "F-1";
    f.applicant.name = "=cmd|' /C calc'!A0 \xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D " + std::string(300, 'n');
    f.claims[0].text = "lots";
    f.weather = {};
    f.meters.clear();
    f.areas[0].area.meter.clear();
    f.tests.pop_back();
    const auto report = made(f, true);
    CHECK_NOTHROW(reports::check(report));
    CHECK_FALSE(report.gaps.empty());
    CHECK(report.find_table("savings") == nullptr);
    CHECK_NOTHROW(reports::check(made(f, false)));
    f.claims.clear();
    CHECK_NOTHROW(reports::check(made(f, true)));
}
