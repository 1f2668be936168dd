// SPDX-License-Identifier: GPL-3.0-or-later
// CONSTRUCTED filings through the whole way: written, opened, judged, stored; and the commands.
#include "app/cli/command.h"
#include "app/workflow/review_batch.h"
#include "core/exchange/filing_file.h"
#include "core/input_error.h"
#include "core/store/application_store.h"
#include "core/store/filing_store.h"
#include "core/store/site_store.h"
#include "core/store/catch_test_store.h"
#include "tests/exchange/filing_temporary.h"
#include "tests/review/sample_filing.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <sstream>

using Catch::Matchers::Contains;
using namespace evenfall;
using tests::bytes_of;
using tests::TemporaryFolder;
using tests::write_bytes;

namespace {

/// A folder with sample filings F-1 to F-n, each with an invoice of its own.
void write_samples(const TemporaryFolder& folder, std::uint64_t n) {
    for (std::uint64_t seed = 1; seed <= n; ++seed) {
        tests::SampleChoices choices;
        choices.seed = seed;
        const auto invoice = folder / "invoice.pdf";
        write_bytes(invoice, "invoice of " + std::to_string(seed));
        std::string name = "f";
        name += std::to_string(100 + seed);
        name += ".zip";
        exchange::write_filing(folder / name, tests::sample_filing(choices), {{invoice, "invoice", ""}}, nullptr);
        std::filesystem::remove(invoice);
    }
}

struct Run {
    int status;
    std::string out;
    std::string err;
};

Run run(const std::vector<std::string>& arguments) {
    std::vector<const char*> argv{"evenfall"};
    for (const std::string& a : arguments) argv.push_back(a.c_str());
    std::ostringstream out;
    std::ostringstream err;
    cli::Streams streams{out, err, false, ""};
    const int status = cli::run_command_line(static_cast<int>(argv.size()), argv.data(), streams);
    return {status, out.str(), err.str()};
}

std::string account(const workflow::Batch& batch) {
    std::string text;
    for (const auto& item : batch.items) {
        text += item.file + " " + item.refused;
        if (item.review) {
            text += std::string(review::text_of(item.review->decision));
            for (const auto& q : item.review->questions) text += " " + q.sentence;
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
    CHECK_THAT(batch.items[2].refused, Contains("f103.zip"));
    CHECK(batch.items[batch.order.back()].refused.size() > 0);
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

TEST_CASE("evenfall review", "[app][constructed]") {
    const TemporaryFolder folder;
    write_samples(folder, 2);
    const std::string one = (folder / "f101.zip").string();
    const Run yes = run({"review", one, "--program", "rebate-sport-heads", "--json"});
    INFO(yes.err);
    CHECK(yes.status == 0);
    const auto json = nlohmann::json::parse(yes.out);
    CHECK(json.at("decision") == "approve");
    CHECK(json.at("claims").size() == 4);
    CHECK(json.at("claims")[0].at("agrees") == true);
    CHECK(json.at("rules").size() == 12);
    CHECK(json.at("rules")[0].at("outcome") == "met");
    CHECK(json.at("savings").at("saved_gal").is_number());

    review::Filing wrong = tests::sample_filing({});
    wrong.claims[0].text = "0.95";
    wrong.request.invoices[0].attachment.clear();
    exchange::write_filing(folder / "wrong.zip", wrong, {}, nullptr);
    const Run no = run({"review", (folder / "wrong.zip").string(), "--json"});
    CHECK(no.status == 1);
    CHECK(nlohmann::json::parse(no.out).at("claims")[0].at("agrees") == false);
    CHECK(nlohmann::json::parse(no.out).at("decision").is_null());

    const Run both = run({"review", folder.path().string(), "--program", "rebate-sport-heads"});
    CHECK(both.status == 1);
    CHECK_THAT(both.out, Contains("3 filings"));
    write_bytes(folder / "cut.zip", "PK");
    const Run cut = run({"review", (folder / "cut.zip").string(), "--json"});
    CHECK(cut.status == 3);
    CHECK(cut.out.empty());
    CHECK_THAT(cut.err, Contains("cut.zip"));
    CHECK(run({"review"}).status == 2);

    const Run memo = run({"review", one, "--program", "rebate-sport-heads", "--out", (folder / "memo").string(), "--format", "xlsx,csv"});
    INFO(memo.err);
    CHECK(memo.status == 0);
    CHECK(std::filesystem::exists(folder / "memo/review-F-1.xlsx"));
    CHECK_THAT(bytes_of(folder / "memo/letter-F-1.txt"), Contains("meets every rule"));
}

TEST_CASE("evenfall file, and review of what it wrote", "[app][constructed]") {
    const TemporaryFolder folder;
    const review::Filing sample = tests::sample_filing({});
    const std::string path = (folder / "b.evenfall").string();
    {
        auto book = store::Book::create(path);
        store::Transaction t(book);
        store::add_site(book, sample.site, {});
        site::Area area = sample.areas[0].area;
        area.meter.clear();
        store::add_area(book, area, {});
        for (const auto& test : sample.tests) store::add_catch_test(book, test.test, {});
        t.commit();
    }
    write_bytes(folder / "words.json",
                R"({"applicant":{"name":"R. Osei"},"auditor":{"name":"M. Lindqvist","certification":"X-1182","expires":"2026-06-30"},)"
                R"("sector":"sport","request":{"application":"A-7","program":"rebate-sport-heads","change":"2023-12-31",)"
                R"("devices":[{"kind":"nozzle","count":40}],"invoices":[{"number":"9","amount":800,"currency":"USD","attachment":"attachments/i.pdf"}]}})");
    write_bytes(folder / "i.pdf", "an invoice");
    const std::string out = (folder / "f.zip").string();
    const Run filed = run({"file", path, "--site", "QLANE", "--request", (folder / "words.json").string(), "--attach",
                           "invoice=" + (folder / "i.pdf").string(), "--out", out, "--json"});
    INFO(filed.err);
    REQUIRE(filed.status == 0);
    const auto opened = exchange::open_filing(out);
    CHECK(nlohmann::json::parse(filed.out).at("sha256") == opened.sha256);
    CHECK(opened.filing.tests.size() == 2);
    CHECK(opened.filing.tests[0].phase == review::Phase::before);
    CHECK(opened.filing.results.size() == 10);
    CHECK(opened.filing.results[0].low.has_value());
    CHECK(opened.filing.request.application == "A-7");
    // What Evenfall claims for the sender recomputes.
    const Run reviewed = run({"review", out, "--program", "rebate-sport-heads"});
    INFO(reviewed.out);
    CHECK(reviewed.status == 0);
    {
        const auto book = store::Book::open(path, store::Access::read_only);
        REQUIRE(store::find_filing(book, opened.sha256));
        CHECK(store::find_filing(book, opened.sha256)->json == opened.json);
    }
    // A file that is there stays, and nothing more is frozen.
    CHECK(run({"file", path, "--site", "QLANE", "--out", out}).status == 3);
    CHECK(run({"file", path, "--test", "NONE", "--out", (folder / "g.zip").string()}).status == 3);
    CHECK_FALSE(std::filesystem::exists(folder / "g.zip"));
    CHECK(store::filings(store::Book::open(path, store::Access::read_only)).size() == 1);
    const Run one_test = run({"file", path, "--test", "T-AFTER", "--code", "ONE", "--out", (folder / "one.zip").string()});
    CHECK(one_test.status == 0);
    CHECK(exchange::open_filing(folder / "one.zip").filing.areas.size() == 1);
}
