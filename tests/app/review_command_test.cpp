// SPDX-License-Identifier: GPL-3.0-or-later
// CONSTRUCTED filings; the commands file, review and application.
#include "app/cli/command.h"
#include "core/store/application_store.h"
#include "core/store/catch_test_store.h"
#include "core/store/filing_store.h"
#include "core/store/site_store.h"
#include "tests/app/review_samples.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <sstream>

#include <stdlib.h>

using Catch::Matchers::Contains;
using namespace evenfall;
using tests::bytes_of;
using tests::TemporaryFolder;
using tests::write_bytes;
using tests::write_samples;

namespace {

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

}  // namespace

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
    ::setenv("SOURCE_DATE_EPOCH", "1736960400", 1);  // 2025-01-15, half a year after the test
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
    ::unsetenv("SOURCE_DATE_EPOCH");
    CHECK(exchange::open_filing(folder / "one.zip").filing.areas.size() == 1);
}

TEST_CASE("evenfall application", "[app][constructed]") {
    const TemporaryFolder folder;
    const TemporaryFolder place;
    write_samples(folder, 1);
    const std::string book = (place / "b.evenfall").string();
    CHECK(run({"new", book}).status == 0);
    CHECK(run({"review", (folder / "f101.zip").string(), "--program", "rebate-sport-heads", "--book", book, "--by", "officer"}).status == 0);
    const Run shown = run({"application", book, "A-1", "--json"});
    INFO(shown.err);
    REQUIRE(shown.status == 0);
    CHECK(nlohmann::json::parse(shown.out).at("applications")[0].at("status") == "under review");
    CHECK(run({"application", book, "A-1", "--set", "approved", "--by", "officer"}).status == 2);  // no amount
    CHECK(run({"application", book, "A-1", "--set", "approved", "--amount", "960", "--by", "officer"}).status == 0);
    CHECK(run({"application", book, "A-1", "--set", "declined", "--by", "officer"}).status == 4);
    CHECK(run({"application", book, "A-9"}).status == 3);
    CHECK_THAT(run({"application", book, "A-1"}).out, Contains("approved") && Contains("960.00 USD"));
}

TEST_CASE("evenfall application opens by hand and moves filings", "[app][constructed]") {
    const TemporaryFolder folder;
    const TemporaryFolder place;
    review::Filing sample = tests::sample_filing({});
    sample.request.application.clear();
    sample.request.invoices[0].attachment.clear();
    exchange::write_filing(folder / "f.zip", sample, {}, nullptr);
    const std::string book = (place / "b.evenfall").string();
    REQUIRE(run({"new", book}).status == 0);
    run({"review", (folder / "f.zip").string(), "--program", "rebate-sport-heads", "--book", book, "--by", "officer"});
    // It carries no number, and is listed all the same.
    const Run listed = run({"application", book, "--json"});
    REQUIRE(listed.status == 0);
    const auto json = nlohmann::json::parse(listed.out);
    CHECK(json.at("applications").empty());
    REQUIRE(json.at("filings_without_application").size() == 1);
    CHECK(json.at("filings_without_application")[0].at("filing") == "F-1");
    CHECK_THAT(run({"application", book}).out, Contains("Filings without an application") && Contains("F-1"));

    const std::vector<std::string> open{"application", book, "P-1", "--open", "--program", "rebate-sport-heads", "--by", "officer"};
    const auto with = [&open](std::vector<std::string> more) {
        more.insert(more.begin(), open.begin(), open.end());
        return run(more);
    };
    CHECK(with({}).status == 3);  // of nobody
    CHECK(with({"--applicant", "R. Osei", "--site", "QLANE", "--received", "2025-13-01"}).status == 2);
    CHECK(with({"--applicant", "R. Osei", "--site", "QLANE", "--set", "paid"}).status == 2);
    CHECK(with({"--applicant", "R. Osei", "--site", "QLANE", "--received", "2099-01-01"}).status == 3);
    CHECK(run({"application", book, "P-1", "--open", "--applicant", "x", "--site", "QLANE"}).status == 2);  // no program
    const Run opened = with({"--applicant", "R. Osei", "--site", "QLANE", "--received", "2025-01-17", "--note", "on paper"});
    INFO(opened.err);
    CHECK(opened.status == 0);
    CHECK_THAT(opened.out, Contains("P-1  received") && Contains("2025-01-17") && Contains("on paper"));
    CHECK(with({"--applicant", "R. Osei", "--site", "QLANE"}).status == 3);  // taken

    CHECK(run({"application", book, "P-1", "--add-filing", "NONE", "--by", "officer"}).status == 3);
    const Run added = run({"application", book, "P-1", "--add-filing", "F-1", "--by", "officer", "--json"});
    INFO(added.err);
    CHECK(added.status == 0);
    CHECK(nlohmann::json::parse(added.out).at("applications")[0].at("filings").size() == 1);
    CHECK(nlohmann::json::parse(run({"application", book, "--json"}).out).at("filings_without_application").empty());
    CHECK(run({"application", book, "P-1", "--add-filing", "F-1"}).status == 3);  // there already
    CHECK(run({"application", book, "P-1", "--take-out", "F-1"}).status == 0);
    CHECK(run({"application", book, "P-1", "--take-out", "F-1"}).status == 3);
    // Opened with it: applicant and site come from the filing, and it is reviewed at once.
    const Run from_filing = run({"application", book, "P-2", "--open", "--program", "rebate-sport-heads", "--add-filing", "F-1", "--json"});
    INFO(from_filing.err);
    REQUIRE(from_filing.status == 0);
    const auto a = nlohmann::json::parse(from_filing.out).at("applications")[0];
    CHECK(a.at("applicant") == "R. Osei");
    CHECK(a.at("status") == "incomplete");
}

TEST_CASE("evenfall report review works the memo out from the book", "[app][constructed]") {
    const TemporaryFolder folder;
    const TemporaryFolder place;
    write_samples(folder, 1);
    const std::string filing = (folder / "f101.zip").string();
    const std::string book = (place / "b.evenfall").string();
    REQUIRE(run({"new", book}).status == 0);
    ::setenv("SOURCE_DATE_EPOCH", "1736960400", 1);
    const Run received = run({"review", filing, "--program", "rebate-sport-heads", "--book", book, "--by", "officer", "--json",
                              "--out", (place / "from-file").string(), "--format", "csv"});
    REQUIRE(received.status == 0);
    const Run memo = run({"report", book, "review", "--application", "A-1", "--format", "csv", "--out", (place / "from-book").string(), "--json"});
    ::unsetenv("SOURCE_DATE_EPOCH");
    INFO(memo.err);
    REQUIRE(memo.status == 0);
    // Table for table what the file itself gave.
    std::size_t tables = 0;
    for (const auto& entry : std::filesystem::directory_iterator(place / "from-file")) {
        const std::string name = entry.path().filename().string();
        if (entry.path().extension() != ".csv") continue;
        ++tables;
        CAPTURE(name);
        REQUIRE(name.starts_with("review-F-1-"));
        CHECK(bytes_of(entry.path()) == bytes_of(place / "from-book" / ("review-A-1-" + name.substr(11))));
    }
    CHECK(tables >= 3);
    const std::string sha256 = nlohmann::json::parse(received.out).at("sha256");
    for (const std::string& name : {std::string("F-1"), sha256}) {
        const Run one = run({"report", book, "review", "--filing", name, "--format", "csv", "--out", (place / name).string()});
        INFO(one.err);
        CHECK(one.status == 0);  // no program named, so figures only
    }
    CHECK(run({"report", book, "review", "--application", "A-9", "--out", place.path().string()}).status == 3);
    CHECK(run({"report", book, "review", "--filing", "F-9", "--out", place.path().string()}).status == 3);
    CHECK(run({"report", book, "review", "--filing", "F-1", "--program", "nonesuch", "--out", place.path().string()}).status == 3);
    CHECK(run({"report", book, "review"}).status == 2);
    CHECK(run({"report", book, "review", "--application", "A-1", "--filing", "F-1"}).status == 2);
}
