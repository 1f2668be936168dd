// SPDX-License-Identifier: GPL-3.0-or-later
// A question in the background: the last one asked is answered, and none that nobody wants any more.
#include "app/desktop/background_question.h"
#include "app/desktop/site_choice.h"
#include "core/store/site_store.h"
#include "tests/app/desktop_support.h"

#include <QComboBox>
#include <atomic>
#include <stdexcept>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;

namespace {

/// Asks for the number `wanted`; the work waits for `go`.
struct Asker {
    Asker() {
        session.open_book(copy_of_demo_book(folder));
        QObject::connect(&question, &BackgroundQuestion::said, &question, [this](const QString& words) { said << words; });
    }
    ~Asker() {
        go = true;
        wait_for_work(session);
    }
    void ask() {
        if (!question.free()) return;
        question.put<int>(
            QStringLiteral("Counting"), QStringLiteral("Counting…"),
            [this, number = wanted](const store::Book& book) {
                while (!go) QThread::msleep(1);
                if (number < 0) throw std::runtime_error("below nothing");
                return number + static_cast<int>(store::sites(book).size());
            },
            [this](std::optional<int> answer, const QString& error) {
                answers.push_back(answer);
                errors << error;
            });
    }

    const QTemporaryDir folder;
    Session session;
    BackgroundQuestion question{session, [this] { ask(); }};
    std::atomic<bool> go{false};
    int wanted = 0;
    std::vector<std::optional<int>> answers;
    QStringList errors;
    QStringList said;
};

bool all_done(Asker& a) {
    a.go = true;
    const bool done = wait_for_work(a.session);
    QCoreApplication::processEvents();
    return done && wait_for_work(a.session);
}

}  // namespace

TEST_CASE("of what is asked while an answer is worked out the last is answered", "[desktop][constructed]") {
    Asker a;
    a.wanted = 10;
    a.ask();
    for (const int later : {20, 30, 40}) {
        a.wanted = later;
        a.ask();
    }
    CHECK(a.answers.empty());
    REQUIRE(all_done(a));
    REQUIRE(QTest::qWaitFor([&a] { return !a.answers.empty(); }, 10000));
    // The demo has two sites.
    CHECK(a.answers == std::vector<std::optional<int>>{42});
    CHECK(a.said == QStringList{QStringLiteral("Counting…"), QStringLiteral("Counting…")});
}

TEST_CASE("an answer that nobody wants any more is not given", "[desktop][constructed]") {
    Asker a;
    a.ask();
    a.question.forget();
    REQUIRE(all_done(a));
    CHECK(a.answers.empty());
    a.wanted = 1;
    a.ask();
    REQUIRE(all_done(a));
    REQUIRE(QTest::qWaitFor([&a] { return !a.answers.empty(); }, 10000));
    CHECK(a.answers == std::vector<std::optional<int>>{3});
}

TEST_CASE("what stops an answer is said, and the next question is free", "[desktop][constructed]") {
    Asker a;
    a.wanted = -1;
    a.ask();
    REQUIRE(all_done(a));
    REQUIRE(QTest::qWaitFor([&a] { return !a.answers.empty(); }, 10000));
    CHECK_FALSE(a.answers.front());
    CHECK(a.errors.front().contains(QStringLiteral("below nothing")));
    CHECK(a.question.free());
    // Stopped by the user: no answer, a word, and what waited is given up with it.
    a.go = false;
    a.wanted = 5;
    a.ask();
    a.ask();
    a.session.task()->stop();
    REQUIRE(all_done(a));
    REQUIRE(QTest::qWaitFor([&a] { return a.said.contains(QStringLiteral("Stopped.")); }, 10000));
    CHECK(a.answers.size() == 1);
    CHECK(a.question.free());
}

TEST_CASE("sites are listed by name and code, and the one chosen stays chosen", "[desktop][constructed]") {
    Session session;
    QComboBox box;
    fill_sites(box, session);
    CHECK(box.count() == 0);
    CHECK(box.currentIndex() == -1);
    session.open_book(demo_book());
    fill_sites(box, session);
    REQUIRE(box.count() == 2);
    CHECK(box.currentIndex() == 0);
    box.setCurrentIndex(1);
    const QString code = box.currentData().toString();
    CHECK(box.currentText().endsWith(QStringLiteral("(") + code + QStringLiteral(")")));
    fill_sites(box, session);
    CHECK(box.currentData().toString() == code);
}
