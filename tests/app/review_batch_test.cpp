// SPDX-License-Identifier: GPL-3.0-or-later
// CONSTRUCTED filings through the whole way: written, opened, judged, stored.
#include "app/workflow/review_batch.h"
#include "core/exchange/filing_file.h"
#include "core/input_error.h"
#include "core/store/application_store.h"
#include "core/store/filing_store.h"
#include "tests/app/review_samples.h"

#include <catch2/catch.hpp>

using Catch::Matchers::Contains;
using namespace evenfall;
using tests::bytes_of;
using tests::TemporaryFolder;
using tests::write_bytes;
using tests::write_samples;

namespace {

std::string account(const workflow::Batch& batch) {
    std::string text;
    for (const auto& item : batch.items) {
        text += item.file + " " + item.refused.english();
        if (item.review) {
            text += std::string(review::text_of(item.review->decision));
            for (const auto& q : item.review->questions) text += " " + q.sentence.english();
        }
        text += "\n";
    }
    return text;
}

}  // namespace

TEST_CASE("one bad file never stops the rest", "[app][constructed]") {
    const TemporaryFolder folder;
    write_samples(folder, 5);
    write_bytes(folder / "f103.zip", bytes_of(folder / "f103.zip").substr(0, 4000));
    write_bytes(folder / "f200.zip", "not a zip at all, and long enough to hold an end record");
    workflow::ReviewOrder order{{folder.path()}, "rebate-sport-heads", false, 2, {}};
    const auto batch = workflow::review_batch(order, nullptr, {});
    INFO(account(batch));
    REQUIRE(batch.items.size() == 6);
    CHECK(batch.refused == 2);
    CHECK(batch.approve == 4);
    CHECK(batch.money == 4 * 960.0);
    CHECK_THAT(batch.items[2].refused.english(), Contains("f103.zip"));
    CHECK(batch.items[batch.order.back()].refused.english().size() > 0);
    order.threads = 1;
    CHECK(account(workflow::review_batch(order, nullptr, {})) == account(batch));
    CHECK_THROWS_AS(workflow::review_batch({{folder / "none"}, "no-such-program", false, 1, {}}, nullptr, {}), InputError);
}

TEST_CASE("what two filings share is asked about", "[app][constructed]") {
    const TemporaryFolder folder;
    write_samples(folder, 2);
    review::Filing third = tests::sample_filing({});
    third.code = "F-COPY";
    third.request.application = "A-99";
    write_bytes(folder / "invoice.pdf", "invoice of 1");
    exchange::write_filing(folder / "f300.zip", third, {{folder / "invoice.pdf", "invoice", ""}}, nullptr);
    const auto batch = workflow::review_batch({{folder.path()}, "rebate-sport-heads", false, 2, {}}, nullptr, {});
    INFO(account(batch));
    REQUIRE(batch.items.size() == 3);
    // Attachment, invoice number and both runs of catches.
    CHECK(batch.items[0].review->questions.size() == 4);
    CHECK(batch.items[1].review->questions.empty());
    CHECK(batch.items[2].review->questions.size() == 4);
    CHECK(batch.order.back() == 1);
}

TEST_CASE("a batch into the book", "[app][constructed]") {
    const TemporaryFolder folder;
    const TemporaryFolder place;
    write_samples(folder, 3);
    auto book = store::Book::create(place / "b.evenfall");
    const workflow::ReviewOrder order{{folder.path()}, "rebate-sport-heads", false, 2, {}};
    const auto batch = workflow::review_batch(order, &book, {});
    CHECK(workflow::store_batch(book, batch, order, "2025-03-01T00:00:00Z", "officer") == 3);
    CHECK(store::filings(book).size() == 3);
    REQUIRE(store::find_application(book, "A-2"));
    CHECK(store::find_application(book, "A-2")->status() == review::Status::under_review);
    // Once more: nothing is added, nothing is asked about itself.
    const auto again = workflow::review_batch(order, &book, {});
    CHECK(workflow::store_batch(book, again, order, "2025-03-02T00:00:00Z", "officer") == 0);
    CHECK(account(again) == account(batch));
    store::add_status(book, "A-1", {*calendar::parse_instant("2025-03-03T00:00:00Z"), "officer", review::Status::approved, "", 960.0});
    CHECK(*workflow::review_batch(order, &book, {}).budget_left == 250000.0 - 960.0);
}
