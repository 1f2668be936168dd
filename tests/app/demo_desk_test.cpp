// SPDX-License-Identifier: GPL-3.0-or-later
// The invented officer's desk: what was planted in it must come to light.
#include "app/demo/desk.h"
#include "app/demo/scenario.h"
#include "app/workflow/review_desk.h"
#include "core/exchange/import.h"
#include "core/plan/plan_against_audit.h"
#include "core/store/catch_test_store.h"
#include "core/store/plan_store.h"
#include "tests/exchange/filing_temporary.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace evenfall;

namespace {

store::Book demo_book(const tests::TemporaryFolder& folder) {
    auto book = store::Book::create(folder / "demo.evenfall");
    std::vector<std::filesystem::path> files;
    for (const auto& table : demo::scenario_files()) {
        files.push_back(folder / table.name);
        tests::write_bytes(files.back(), table.text);
    }
    exchange::ImportOptions options;
    options.at = "2026-01-05T17:00:00Z";
    options.who = "test";
    exchange::require_accepted(exchange::import_files(book, files, options));
    demo::add_desk(book, options.at, options.who);
    return book;
}

}  // namespace

TEST_CASE("the three applications of the demo come out as planted", "[app][constructed]") {
    const tests::TemporaryFolder folder;
    const auto book = demo_book(folder);
    const auto good = workflow::review_case(book, "TR-118", {});
    REQUIRE(good.review);
    CHECK(good.review->decision == review::Decision::approve);
    CHECK(good.review->recomputes());
    CHECK(good.review->questions.empty());
    // CONSTRUCTED: 96 nozzles at 8.00, below every cap of the program.
    CHECK(good.review->payment->total == 768.0);

    const auto uneven = workflow::review_case(book, "TR-121", {});
    REQUIRE(uneven.review);
    CHECK(uneven.review->decision == review::Decision::decline);
    CHECK(!uneven.review->recomputes());

    const auto copied = workflow::review_case(book, "TR-125", {});
    REQUIRE(copied.review);
    const auto& asked = copied.review->questions;
    CHECK(std::any_of(asked.begin(), asked.end(), [](const auto& q) { return q.key == "copied_cans"; }));
    CHECK(std::any_of(copied.review->rules.begin(), copied.review->rules.end(), [](const auto& r) {
        return r.kind == review::RuleKind::wind && r.outcome == review::RuleOutcome::cannot_tell;
    }));
}

TEST_CASE("the plan of the playing field points at the worn head", "[app][constructed]") {
    const tests::TemporaryFolder folder;
    const auto book = demo_book(folder);
    const auto plan = store::find_plan(book, "P-PLAY");
    REQUIRE(plan);
    const auto audit = plan::plan_against_audit(plan->plan, *store::find_catch_test(book, "T-PLAY-25"));
    const auto head = [&](const char* id) {
        const auto at = std::find_if(audit.heads.begin(), audit.heads.end(), [&](const auto& h) { return h.head == id; });
        REQUIRE(at != audit.heads.end());
        return *at;
    };
    INFO(head("C4").evidence << "; " << head("C3").evidence);
    CHECK(head("C4").verdict == plan::Verdict::weak);
    CHECK_THAT(head("C4").output, Catch::Matchers::WithinAbs(0.30, 3.0 * head("C4").error));
    // Sound, so above what the worn heads around it deliver in common.
    CHECK(head("C3").verdict != plan::Verdict::weak);
    CHECK_THAT(head("C3").output, Catch::Matchers::WithinAbs(1.00, 3.0 * head("C3").error));
}
