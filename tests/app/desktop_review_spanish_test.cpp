// SPDX-License-Identifier: GPL-3.0-or-later
// Another language is whole on the pages for reviews and plans: what the core says there is
// translated too. CONSTRUCTED filings, see tests/review/sample_filing.h, and the invented desk of the demo.
#include "app/desktop/core_words.h"
#include "app/desktop/figure_table.h"
#include "app/desktop/main_window.h"
#include "app/desktop/plan/audit_view.h"
#include "app/desktop/review/review_page.h"
#include "app/desktop/review/review_view.h"
#include "core/store/catch_test_store.h"
#include "core/store/plan_store.h"
#include "tests/app/desktop_support.h"
#include "tests/review/sample_filing.h"

#include <QLabel>
#include <QRegularExpression>
#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::desktop;

namespace {

/// The windows in Spanish for one test.
struct InSpanish {
    InSpanish() { install_language(QStringLiteral("es")); }
    ~InSpanish() { install_language(QStringLiteral("en")); }
    InSpanish(const InSpanish&) = delete;
    InSpanish& operator=(const InSpanish&) = delete;
};

/// Words that stand in nearly every English sentence, and in no Spanish one.
bool looks_english(const QString& text) {
    static const QRegularExpression words(QStringLiteral("\\b(the|of|is|are|and|with|was|were|which)\\b"));
    return words.match(text).hasMatch();
}

void check_spanish(const QString& text) {
    INFO(text.toStdString());
    CHECK(!looks_english(text));
}

void check_spanish(const FigureRows& table) {
    CHECK(!table.rows.empty());
    for (const QString& head : table.heads) check_spanish(head);
    for (const auto& row : table.rows) {
        for (const FigureCell& cell : row) {
            check_spanish(cell.text);
            if (!cell.figure) continue;
            const auto& why = cell.figure->why;
            for (const QString& said : QStringList{cell.figure->name, why.formula, why.method, why.convention, why.source} + why.inputs) {
                check_spanish(said);
            }
        }
    }
}

void check_spanish(const workflow::ReviewedCase& c) {
    check_spanish(claims_table(c));
    check_spanish(rules_table(c));
    check_spanish(payment_table(c));
    check_spanish(reasons_of(c));
    if (!c.review->questions.empty()) check_spanish(questions_table(c));
    if (!c.application.history.empty()) check_spanish(history_table(c));
}

workflow::ReviewedCase judged(review::Filing filing, const std::string& program) {
    workflow::ReviewedCase c;
    c.program = review::built_in_rebate(program);
    c.review = review::review_filing(filing, std::string(64, 'a'), false, &*c.program, 1.0);
    for (const auto& print : review::fingerprints(filing)) c.review->questions.push_back(review::shared_with(print, "F-2"));
    c.filing = std::move(filing);
    return c;
}

/// Something to ask about in every way that one filing can hold.
review::Filing odd_filing() {
    evenfall::tests::SampleChoices choices;
    choices.after_unevenness = 0.40;
    review::Filing f = evenfall::tests::sample_filing(choices);
    f.tests[1].test.catches = f.tests[0].test.catches;
    for (auto& day : f.weather.days) {
        if (day.date != f.tests[1].test.date) continue;
        day.rain = 0.6;
        day.wind = 14.0;
    }
    f.areas[0].outline = {{-105.0, 40.0}, {-104.999, 40.0}, {-104.999, 40.001}};
    for (auto& reading : f.meters[0].readings) reading.value = 1000.0 + 40.0 * (reading.value - 1000.0);
    f.request.invoices[0].date = calendar::parse_date("2035-03-01");
    f.attachments.push_back({"attachments/heads.jpg", "photo", std::string(64, 'b'), 10, ""});
    f.claims.push_back({"use_before", "", "5", "m3", ""});
    f.claims.push_back({"area_size", f.areas[0].area.code, "999", "m2", ""});
    f.claims.push_back({"savings", "", "123", "m3", ""});
    f.claims.push_back({"cost", "", "1.5", "USD", ""});
    f.claims.push_back({"devices", "nozzle", "7", "", ""});
    f.claims.push_back({"luck", "", "1", "", ""});
    f.claims.push_back({"cu", "T-NONE", "0.5", "", ""});
    f.claims.push_back({"cu", "T-AFTER", "much", "", ""});
    return f;
}

/// Nearly nothing is in it, so that nearly everything is missing.
review::Filing thin_filing() {
    review::Filing f = evenfall::tests::sample_filing();
    f.tests.clear();
    f.meters.clear();
    f.weather.days.clear();
    f.attachments.clear();
    f.request.invoices.clear();
    f.auditor = {};
    f.areas[0].sector.clear();
    f.claims.push_back({"savings_share", "", "0.2", "", ""});
    return f;
}

}  // namespace

TEST_CASE("a review with findings is said in Spanish", "[desktop][constructed]") {
    const InSpanish spanish;
    std::size_t asked = 0;
    for (const std::string& program : review::built_in_rebate_names()) {
        CAPTURE(program);
        for (review::Filing& f : std::vector<review::Filing>{odd_filing(), thin_filing(), evenfall::tests::sample_filing()}) {
            const workflow::ReviewedCase c = judged(std::move(f), program);
            check_spanish(c);
            for (const auto& question : c.review->questions) {
                ++asked;
                CHECK(core_words(question.sentence) != q(question.sentence.english()));
                CHECK(place_words(question.evidence) != q(question.evidence.english()));
            }
            for (const auto& rule : c.review->rules) {
                CHECK(core_words(rule.why) != q(rule.why.english()));
                CHECK((rule.evidence == "auditor" || place_words(rule.evidence) != q(rule.evidence.english())));  // the same word
            }
            for (const auto& sentences : {c.review->missing, c.review->record_remarks, c.review->savings.refused, c.review->savings.remarks}) {
                for (const Sentence& one : sentences) check_spanish(core_words(one));
            }
        }
    }
    CHECK(asked > 20);
}

TEST_CASE("the words of the rebate programs that come along are known in Spanish", "[desktop]") {
    const InSpanish spanish;
    for (const std::string& name : review::built_in_rebate_names()) {
        const review::RebateProgram program = review::built_in_rebate(name);
        std::vector<std::string> words{program.title};
        for (const auto& rule : program.rules) words.push_back(rule.words);
        for (const auto& line : program.payment) words.push_back(line.words);
        for (const std::string& text : words) {
            CAPTURE(text);
            CHECK(core_words(text) != q(text));
        }
    }
}

TEST_CASE("the demo's desk is worked through in Spanish", "[desktop][constructed]") {
    const InSpanish spanish;
    const QTemporaryDir folder;
    Session session;
    session.open_book(evenfall::desktop::tests::copy_of_demo_book(folder));
    MainWindow window(session);
    window.show_page(QStringLiteral("review"));
    window.show();
    auto* page = qobject_cast<ReviewPage*>(window.page());
    REQUIRE(page);
    REQUIRE(QTest::qWaitFor([page] { return !page->queue().empty() && page->queue().front().review.has_value(); }, 60000));
    const auto queue = page->queue();
    CHECK(queue.size() >= 3);
    std::size_t findings = 0;
    for (const auto& entry : queue) {
        page->show_application(q(entry.application.code));
        REQUIRE(page->shown_case());
        CAPTURE(entry.application.code);
        check_spanish(*page->shown_case());
        for (const QLabel* label : page->findChildren<QLabel*>()) check_spanish(label->text());
        for (const auto& rule : entry.review->rules) findings += rule.outcome == review::RuleOutcome::met ? 0U : 1U;
    }
    CHECK(findings > 0);
}

TEST_CASE("a plan held against a test is said in Spanish", "[desktop][constructed]") {
    const InSpanish spanish;
    const QTemporaryDir folder;
    const auto book = store::Book::open(evenfall::desktop::tests::copy_of_demo_book(folder).toStdString(), store::Access::read_only);
    const auto stored = store::find_plan(book, "P-PLAY");
    REQUIRE(stored);
    std::size_t heads = 0;
    for (const auto& test : store::catch_tests_of_site(book, stored->site)) {
        try {
            const auto found = plan::plan_against_audit(stored->plan, test);
            check_spanish(heads_table(found));
            for (const auto& head : found.heads) {
                ++heads;
                check_spanish(core_words(head.evidence));
                CHECK(core_words(head.evidence) != q(head.evidence.english()));
            }
            for (const Sentence& note : found.notes) check_spanish(core_words(note));
        } catch (const InputError& e) {
            check_spanish(error_words(e));
        }
    }
    CHECK(heads > 0);
}
