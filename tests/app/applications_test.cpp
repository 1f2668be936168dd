// SPDX-License-Identifier: GPL-3.0-or-later
// CONSTRUCTED filings that came without a number, and what an officer does with them by hand.
#include "app/workflow/applications.h"
#include "app/workflow/review_batch.h"
#include "core/input_error.h"
#include "core/store/application_store.h"
#include "core/store/journal_store.h"
#include "tests/app/review_samples.h"

#include <catch2/catch.hpp>

using Catch::Matchers::Contains;
using namespace evenfall;
using review::Status;
using tests::TemporaryFolder;
using workflow::OfficerSays;

namespace {

constexpr const char* arrived = "2025-01-20T09:00:00Z";
constexpr const char* later = "2025-01-22T15:00:00Z";

void write_filing(const TemporaryFolder& folder, std::uint64_t seed, const std::string& number) {
    tests::SampleChoices choices;
    choices.seed = seed;
    review::Filing filing = tests::sample_filing(choices);
    filing.request.application = number;
    const auto invoice = folder / "invoice.pdf";
    tests::write_bytes(invoice, "invoice of " + std::to_string(seed));
    exchange::write_filing(folder / ("f" + std::to_string(seed) + ".zip"), filing, {{invoice, "invoice", ""}}, nullptr);
    std::filesystem::remove(invoice);
}

/// A book that the filings of a folder were brought into.
store::Book desk(const TemporaryFolder& folder) {
    auto book = store::Book::create(folder / "office.evenfall");
    const workflow::ReviewOrder order{{folder.path()}, "rebate-sport-heads", false, 2, {}};
    workflow::store_batch(book, workflow::review_batch(order, &book, {}), order, arrived, "mail room");
    return book;
}

workflow::OpenedByHand paper(const std::string& number) {
    workflow::OpenedByHand o;
    o.number = number;
    o.applicant = "R. Osei";
    o.site = "QLANE";
    o.program = review::built_in_rebate("rebate-sport-heads");
    o.received = *calendar::parse_date("2025-01-17");
    o.note = "Came on paper.";
    o.who = "P. Navarro";
    o.at = later;
    return o;
}

}  // namespace

TEST_CASE("an application on paper is opened by hand, from the day it came in", "[app][constructed]") {
    const TemporaryFolder folder;
    auto book = store::Book::create(folder / "office.evenfall");
    const auto a = workflow::open_application(book, paper(" P-1 "));
    CHECK(a.code == "P-1");
    CHECK(a.currency == "USD");
    REQUIRE(a.history.size() == 1);
    CHECK(a.status() == Status::received);
    CHECK(calendar::format_instant(a.history.front().at) == "2025-01-17T00:00:00Z");
    CHECK(a.history.front().note == "Came on paper.");
    // The journal says when it was written down, and from which day it stands.
    const auto line = store::journal(book).back();
    CHECK(line.at == later);
    CHECK(line.who == "P. Navarro");
    CHECK(line.record == "application P-1");
    CHECK_THAT(line.what, Contains("received on 2025-01-17") && Contains("Came on paper."));
    // Of today: at the very moment.
    auto today = paper("P-2");
    today.received = *calendar::parse_date("2025-01-22");
    CHECK(calendar::format_instant(workflow::open_application(book, today).history.front().at) == later);
    // Nothing to work out yet, and said so.
    const auto c = workflow::review_case(book, "P-1", {});
    CHECK(!c.review);
    CHECK_THAT(c.problem.english(), Contains("P-1"));
}

TEST_CASE("an application that lacks something is not opened", "[app][constructed]") {
    const TemporaryFolder folder;
    write_filing(folder, 1, "A-1");
    auto book = desk(folder);
    const auto lines = store::journal(book).size();
    const auto refused = [&](auto change) {
        auto o = paper("P-1");
        change(o);
        CHECK_THROWS_AS(workflow::open_application(book, o), InputError);
    };
    refused([](auto& o) { o.number = "  "; });
    refused([](auto& o) { o.number = "P\n1"; });
    refused([](auto& o) { o.number = "A-1"; });  // taken
    refused([](auto& o) { o.applicant.clear(); });
    refused([](auto& o) { o.site.clear(); });
    refused([](auto& o) { o.who.clear(); });
    refused([](auto& o) { o.at = "yesterday"; });
    refused([](auto& o) { o.received = *calendar::parse_date("2025-01-23"); });
    refused([](auto& o) { o.filings = {"NONE"}; });
    refused([](auto& o) { o.filings = {"F-1"}; });  // belongs to A-1
    CHECK(store::journal(book).size() == lines);
    CHECK(store::applications(book, "").size() == 1);
}

TEST_CASE("a filing without a number waits, and opened by hand it stands as if it had carried one", "[app][constructed]") {
    const TemporaryFolder folder;
    write_filing(folder, 1, "A-1");
    const TemporaryFolder other;
    write_filing(other, 1, "");
    const auto numbered = desk(folder);
    auto book = desk(other);
    CHECK(store::filings_without_application(numbered).empty());
    CHECK(store::applications(book, "").empty());
    const auto waiting = workflow::waiting_filings(book, {}, {});
    REQUIRE(waiting.size() == 1);
    CHECK(waiting.front().filing.code == "F-1");
    CHECK(waiting.front().reviewed.application.code.empty());
    CHECK(!waiting.front().reviewed.filing);
    const auto one = workflow::waiting_filing(book, waiting.front().filing.sha256, {});
    REQUIRE(one.reviewed.review);
    REQUIRE(one.reviewed.filing);
    const auto as_numbered = workflow::review_case(numbered, "A-1", {});
    CHECK(one.reviewed.review->decision == as_numbered.review->decision);
    CHECK(one.reviewed.review->risk() == as_numbered.review->risk());

    auto opened = paper("A-1");
    opened.applicant.clear();
    opened.site.clear();
    opened.filings = {"F-1"};
    const auto a = workflow::open_application(book, opened);
    const auto expected = *store::find_application(numbered, "A-1");
    CHECK(a.applicant == expected.applicant);
    CHECK(a.site == expected.site);
    CHECK(a.program == expected.program);
    REQUIRE(a.history.size() == expected.history.size());
    for (std::size_t i = 0; i < a.history.size(); ++i) CHECK(a.history[i].status == expected.history[i].status);
    CHECK(a.history.back().note == expected.history.back().note);
    CHECK(store::filings_without_application(book).empty());
}

TEST_CASE("a filing is put into an application and taken out again, each with a line of the journal", "[app][constructed]") {
    const TemporaryFolder folder;
    write_filing(folder, 1, "A-1");
    write_filing(folder, 2, "");
    auto book = desk(folder);
    const auto lines = store::journal(book).size();
    const workflow::FilingMove move{"A-1", {"F-2"}, "P. Navarro", later};
    CHECK(workflow::attach_filings(book, move).filings.size() == 2);
    CHECK(store::filings_without_application(book).empty());
    REQUIRE(store::journal(book).size() == lines + 1);
    CHECK(store::journal(book).back().who == "P. Navarro");
    CHECK(store::journal(book).back().at == later);
    CHECK_THAT(store::journal(book).back().what, Contains("A-1") && Contains("got the filing"));
    CHECK_THROWS_AS(workflow::attach_filings(book, move), InputError);  // there already

    CHECK(workflow::take_out_filings(book, move).filings.size() == 1);
    CHECK(store::filings_without_application(book).size() == 1);
    CHECK(store::journal(book).size() == lines + 2);
    CHECK_THAT(store::journal(book).back().what, Contains("taken out of application A-1"));
    CHECK_THROWS_AS(workflow::take_out_filings(book, move), InputError);

    const auto refused = [&](auto change) {
        auto m = move;
        change(m);
        CHECK_THROWS_AS(workflow::attach_filings(book, m), InputError);
    };
    refused([](auto& m) { m.application = "A-9"; });
    refused([](auto& m) { m.filings = {"F-2", "NONE"}; });
    refused([](auto& m) { m.who = " "; });
    refused([](auto& m) { m.at = "soon"; });
    CHECK(store::filings_without_application(book).size() == 1);
    CHECK(store::journal(book).size() == lines + 2);

    // What is decided keeps the filings that it was decided on.
    workflow::decide(book, {"A-1", OfficerSays::decline, "No.", std::nullopt, "P. Navarro", later});
    CHECK_THROWS_AS(workflow::take_out_filings(book, {"A-1", {"F-1"}, "P. Navarro", later}), InputError);
}

TEST_CASE("a filing of another site does not get into an application", "[app][constructed]") {
    const TemporaryFolder folder;
    write_filing(folder, 1, "");
    auto book = desk(folder);
    auto elsewhere = paper("P-1");
    elsewhere.site = "ELSEWHERE";
    workflow::open_application(book, elsewhere);
    CHECK_THROWS_WITH(workflow::attach_filings(book, {"P-1", {"F-1"}, "x", later}), Contains("QLANE") && Contains("ELSEWHERE"));
    elsewhere.number = "P-2";
    elsewhere.filings = {"F-1"};
    CHECK_THROWS_AS(workflow::open_application(book, elsewhere), InputError);
    CHECK(store::filings_without_application(book).size() == 1);
}

TEST_CASE("every step that the rules allow can be decided: taken up, put back, paid", "[app][constructed]") {
    const TemporaryFolder folder;
    auto book = store::Book::create(folder / "office.evenfall");
    workflow::open_application(book, paper("P-1"));
    const auto say = [&](OfficerSays says, std::optional<double> amount = {}) {
        return workflow::decide(book, {"P-1", says, needs_reason(says) ? "Because." : "", amount, "P. Navarro", later}).status();
    };
    CHECK(say(OfficerSays::take_up) == Status::under_review);
    CHECK_THROWS_AS(say(OfficerSays::put_back), store::BookError);
    CHECK(say(OfficerSays::send_more) == Status::incomplete);
    CHECK(say(OfficerSays::put_back) == Status::received);
    CHECK_THROWS_AS(say(OfficerSays::pay, 900.0), store::BookError);  // not approved
    CHECK(say(OfficerSays::approve, 900.0) == Status::approved);
    CHECK_THROWS_AS(say(OfficerSays::pay), InputError);  // no amount
    CHECK(say(OfficerSays::pay, 900.0) == Status::paid);
    CHECK_THROWS_AS(say(OfficerSays::open_again), store::BookError);
    // Whatever may follow can be reached by one of the answers, from every status.
    for (const auto from : {Status::received, Status::incomplete, Status::under_review, Status::approved, Status::declined, Status::paid}) {
        for (const auto to : {Status::received, Status::incomplete, Status::under_review, Status::approved, Status::declined, Status::paid}) {
            if (!review::may_follow(from, to)) continue;
            bool reached = false;
            for (std::size_t i = 0; i < workflow::officer_answers; ++i) {
                const auto says = static_cast<OfficerSays>(i);
                reached = reached || (workflow::can_decide(from, says) && workflow::status_after(says) == to);
            }
            CAPTURE(review::text_of(from), review::text_of(to));
            CHECK(reached);
        }
    }
}
