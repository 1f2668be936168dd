// SPDX-License-Identifier: GPL-3.0-or-later
// CONSTRUCTED filings on an officer's desk: worked out from the book, decided, written down.
#include "app/workflow/review_batch.h"
#include "app/workflow/review_desk.h"
#include "app/workflow/whole_file.h"
#include "core/input_error.h"
#include "core/store/application_store.h"
#include "core/store/journal_store.h"
#include "tests/app/review_samples.h"

#include <catch2/catch.hpp>

using Catch::Matchers::Contains;
using namespace evenfall;
using tests::TemporaryFolder;
using tests::write_samples;
using workflow::OfficerSays;

namespace {

constexpr const char* arrived = "2025-01-20T09:00:00Z";

/// A book that the filings of a folder were brought into.
store::Book desk(const TemporaryFolder& folder) {
    store::Book book = store::Book::create(folder / "office.evenfall");
    const workflow::ReviewOrder order{{folder.path()}, "rebate-sport-heads", false, 2, {}};
    workflow::store_batch(book, workflow::review_batch(order, &book, {}), order, arrived, "mail room");
    return book;
}

workflow::OfficerDecision decline(const std::string& application) {
    return {application, OfficerSays::decline, "The second test was made in the wrong field.", std::nullopt, "P. Navarro",
            "2025-02-03T10:30:00Z"};
}

}  // namespace

TEST_CASE("a case from the book comes out as the filing did when it came in", "[app][constructed]") {
    const TemporaryFolder folder;
    write_samples(folder, 3);
    const auto batch = workflow::review_batch({{folder.path()}, "rebate-sport-heads", false, 2, {}}, nullptr, {});
    const auto book = desk(folder);
    for (const auto& item : batch.items) {
        CAPTURE(item.file);
        REQUIRE(item.review);
        const auto c = workflow::review_case(book, item.review->application, {});
        CHECK(c.problem.empty());
        REQUIRE(c.review);
        CHECK(c.review->sha256 == item.review->sha256);
        CHECK(c.review->decision == item.review->decision);
        CHECK(c.review->risk() == item.review->risk());
        CHECK(c.review->payment->total == item.review->payment->total);
        REQUIRE(c.review->claims.size() == item.review->claims.size());
        for (std::size_t i = 0; i < c.review->claims.size(); ++i) {
            CHECK(c.review->claims[i].recomputed == item.review->claims[i].recomputed);
            CHECK(c.review->claims[i].agreement == item.review->claims[i].agreement);
        }
        CHECK(c.review->rules.size() == item.review->rules.size());
        CHECK(c.review->questions == item.review->questions);
        REQUIRE(c.filing);
        CHECK(c.filing->tests.size() == 2);
    }
    CHECK_THROWS_AS(workflow::review_case(book, "A-77", {}), InputError);
}

TEST_CASE("a decision stands in the history and the journal with who, when and why", "[app][constructed]") {
    const TemporaryFolder folder;
    write_samples(folder, 1);
    auto book = desk(folder);
    const auto before = store::journal(book).size();
    const auto after = workflow::decide(book, decline("A-1"));
    CHECK(after.status() == review::Status::declined);
    REQUIRE(after.history.size() == 3);
    CHECK(after.history.back().who == "P. Navarro");
    CHECK(calendar::format_instant(after.history.back().at) == "2025-02-03T10:30:00Z");
    CHECK(after.history.back().note == "The second test was made in the wrong field.");
    const auto journal = store::journal(book);
    REQUIRE(journal.size() == before + 1);
    CHECK(journal.back().who == "P. Navarro");
    CHECK(journal.back().at == "2025-02-03T10:30:00Z");
    CHECK(journal.back().record == "application A-1");
    CHECK_THAT(journal.back().what, Contains("declined") && Contains("The second test was made in the wrong field."));

    // Decided is decided, until it is opened again, and that needs a reason too.
    CHECK_THROWS_AS(workflow::decide(book, decline("A-1")), store::BookError);
    CHECK(!workflow::can_decide(review::Status::declined, OfficerSays::approve));
    CHECK(workflow::can_decide(review::Status::declined, OfficerSays::open_again));
    auto appeal = decline("A-1");
    appeal.says = OfficerSays::open_again;
    appeal.reason = "Appeal of 2025-02-10.";
    CHECK(workflow::decide(book, appeal).status() == review::Status::under_review);
    CHECK(store::journal(book).size() == before + 2);
}

TEST_CASE("a decision that lacks something is refused and nothing is written", "[app][constructed]") {
    const TemporaryFolder folder;
    write_samples(folder, 1);
    auto book = desk(folder);
    const auto lines = store::journal(book).size();
    const auto refused = [&](auto change) {
        auto d = decline("A-1");
        change(d);
        CHECK_THROWS_AS(workflow::decide(book, d), InputError);
    };
    refused([](auto& d) { d.reason = " \n "; });
    refused([](auto& d) { d.who.clear(); });
    refused([](auto& d) { d.at = "yesterday"; });
    refused([](auto& d) { d.amount = 10.0; });
    refused([](auto& d) { d.says = OfficerSays::approve; });
    refused([](auto& d) {
        d.says = OfficerSays::approve;
        d.amount = -1.0;
    });
    CHECK_THROWS_AS(workflow::decide(book, decline("A-9")), store::BookError);
    CHECK(store::journal(book).size() == lines);
    CHECK(store::find_application(book, "A-1")->history.size() == 2);
}

TEST_CASE("an incomplete application that is approved is taken up again first", "[app][constructed]") {
    const TemporaryFolder folder;
    write_samples(folder, 1);
    auto book = desk(folder);
    auto more = decline("A-1");
    more.says = OfficerSays::send_more;
    CHECK(workflow::decide(book, more).status() == review::Status::incomplete);
    auto yes = decline("A-1");
    yes.says = OfficerSays::approve;
    yes.amount = 900.0;
    const auto after = workflow::decide(book, yes);
    REQUIRE(after.history.size() == 5);
    CHECK(after.history[3].status == review::Status::under_review);
    CHECK(after.history[4].status == review::Status::approved);
    CHECK(after.history[4].amount == 900.0);
}

TEST_CASE("the letter follows the officer, and never says that the rules led there when they did not", "[app][constructed]") {
    const TemporaryFolder folder;
    write_samples(folder, 1);
    auto book = desk(folder);
    auto c = workflow::review_case(book, "A-1", {});
    REQUIRE(c.review->decision == review::Decision::approve);
    CHECK_THAT(workflow::case_letter(c), Contains("meets every rule"));
    workflow::decide(book, decline("A-1"));
    c = workflow::review_case(book, "A-1", {});
    const auto letter = workflow::case_letter(c);
    CHECK_THAT(letter, !Contains("meets every rule"));
    CHECK_THAT(letter, Contains("Decided on 2025-02-03 by P. Navarro: declined."));
    CHECK_THAT(letter, Contains("Reason: The second test was made in the wrong field."));
    // The memo and the letter as files.
    const auto files = workflow::write_review_papers(*c.review, letter, {folder / "out", {"txt"}, reports::UnitsShown::us, arrived, "Evenfall", {}});
    REQUIRE(files.size() == 2);
    CHECK(tests::bytes_of(files.back()) == letter);
}

TEST_CASE("the queue: what waits comes first, by risk and money, and one bad case stops nothing", "[app][constructed]") {
    const TemporaryFolder folder;
    write_samples(folder, 3);
    // A claim that nothing leads to makes the riskiest case.
    tests::SampleChoices choices;
    choices.seed = 7;
    review::Filing wrong = tests::sample_filing(choices);
    wrong.claims.front().text = "0.99";
    tests::write_bytes(folder / "invoice.pdf", "invoice of 7");
    exchange::write_filing(folder / "f700.zip", wrong, {{folder / "invoice.pdf", "invoice", ""}}, nullptr);
    auto book = desk(folder);
    workflow::decide(book, decline("A-2"));
    {
        store::Transaction all(book);
        store::add_application(book, {"A-LOST", "Nobody", "S", "no-such-program", "USD", {},
                                      {{*calendar::parse_instant(arrived), "mail room", review::Status::received, "", {}}}});
        all.commit();
    }
    std::size_t told = 0;
    const auto queue = workflow::review_queue(book, {}, [&](std::size_t done, std::size_t all) {
        CHECK(all == 5);
        told = done;
    });
    CHECK(told == 5);
    REQUIRE(queue.size() == 5);
    CHECK(queue.front().application.code == "A-7");
    CHECK(queue.back().application.code == "A-2");
    for (const auto& c : queue) {
        CHECK(!c.filing);
        CHECK(c.review.has_value() == (c.application.code != "A-LOST"));
        if (c.application.code == "A-LOST") CHECK_THAT(c.problem.english(), Contains("A-LOST"));
    }
}

TEST_CASE("what two applications share is asked about on the desk too", "[app][constructed]") {
    const TemporaryFolder folder;
    write_samples(folder, 1);
    review::Filing copy = tests::sample_filing({});
    copy.code = "F-COPY";
    copy.request.application = "A-99";
    tests::write_bytes(folder / "invoice.pdf", "invoice of 1");
    exchange::write_filing(folder / "f300.zip", copy, {{folder / "invoice.pdf", "invoice", ""}}, nullptr);
    std::filesystem::remove(folder / "invoice.pdf");
    const auto book = desk(folder);
    // Attachment, invoice number and both runs of catches, as in review_batch_test.cpp.
    CHECK(workflow::review_case(book, "A-1", {}).review->questions.size() == 4);
    CHECK(workflow::review_case(book, "A-99", {}).review->questions.size() == 4);
}

TEST_CASE("a file that cannot be written leaves what was there", "[app][constructed]") {
    const TemporaryFolder folder;
    workflow::write_whole_file(folder / "a.txt", "one");
    workflow::write_whole_file(folder / "a.txt", "two");
    CHECK(tests::bytes_of(folder / "a.txt") == "two");
    CHECK_THROWS_WITH(workflow::write_whole_file(folder / "none" / "a.txt", "x"), Contains("a.txt"));
    std::filesystem::create_directory(folder / "a.txt.part");
    CHECK_THROWS(workflow::write_whole_file(folder / "a.txt", "three"));
    CHECK(tests::bytes_of(folder / "a.txt") == "two");
}
