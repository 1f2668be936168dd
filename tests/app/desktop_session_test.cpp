// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/session.h"
#include "app/desktop/task.h"

#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <catch2/catch.hpp>
#include <stdexcept>

using namespace evenfall;
using namespace evenfall::desktop;

TEST_CASE("a book open in one window opens for reading only in the other", "[desktop][constructed]") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.evenfall"));
    Session first;
    first.create_book(path);
    CHECK(first.can_write());
    {
        Session second;
        second.open_book(path);
        CHECK(second.has_book());
        CHECK(!second.can_write());
        CHECK(!second.read_only_reason().isEmpty());
    }
    first.close_book();
    Session third;
    third.open_book(path);
    CHECK(third.can_write());
    CHECK(third.read_only_reason().isEmpty());
}

TEST_CASE("a book that cannot be opened leaves the one that is open", "[desktop][constructed]") {
    const QTemporaryDir folder;
    Session session;
    session.create_book(folder.filePath(QStringLiteral("a.evenfall")));
    CHECK_THROWS_AS(session.open_book(folder.filePath(QStringLiteral("missing.evenfall"))), store::BookError);
    CHECK(session.has_book());
    CHECK(session.can_write());
}

TEST_CASE("recent books are remembered, the newest first, and gone ones left out", "[desktop][constructed]") {
    QSettings().clear();
    const QTemporaryDir folder;
    const QString a = folder.filePath(QStringLiteral("a.evenfall"));
    const QString b = folder.filePath(QStringLiteral("b.evenfall"));
    Session session;
    session.create_book(a);
    session.create_book(b);
    CHECK(session.recent_books() == QStringList{b, a});
    session.open_book(a);
    CHECK(session.recent_books() == QStringList{a, b});
    QFile::remove(b);
    CHECK(session.recent_books() == QStringList{a});
}

TEST_CASE("entries of a crashed run are back in the next one, beside the book", "[desktop][constructed]") {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.evenfall"));
    std::vector<SheetCan> cans;
    {
        Session session;
        session.create_book(path);
        SheetCan can = session.sheet().data().cans[3];
        can.reading = 41.5;
        session.sheet().set_can(3, can, QStringLiteral("reading"));
        cans = session.sheet().data().cans;
        CHECK(QFile::exists(path + QStringLiteral("-entries")));
        // No goodbye: the sheet is neither saved nor given up.
    }
    Session again;
    again.open_book(path);
    CHECK(again.entries_recovered());
    CHECK(again.sheet().data().cans == cans);
    again.sheet_was_saved();
    CHECK(!QFile::exists(path + QStringLiteral("-entries")));
}

TEST_CASE("work runs beside the window, reports, fails and stops", "[desktop][constructed]") {
    Session session;
    Task* task = session.start(QStringLiteral("counting"));
    REQUIRE(task);
    QSignalSpy done(task, &Task::finished);
    QSignalSpy progressed(task, &Task::progressed);
    task->start([](const TaskContext& context) {
        for (int i = 0; i <= 100; ++i) context.report(i / 100.0);
    });
    CHECK(!session.start(QStringLiteral("another")));
    REQUIRE(done.wait(5000));
    CHECK(done.front().front().toString().isEmpty());
    CHECK(progressed.count() >= 1);

    task = session.start(QStringLiteral("failing"));
    REQUIRE(task);
    QSignalSpy failed(task, &Task::finished);
    task->start([](const TaskContext&) { throw std::runtime_error("no paper"); });
    REQUIRE(failed.wait(5000));
    CHECK(failed.front().front().toString() == QStringLiteral("no paper"));

    task = session.start(QStringLiteral("endless"));
    REQUIRE(task);
    QSignalSpy stopped(task, &Task::stopped_by_user);
    task->start([](const TaskContext& context) {
        for (;;) context.check();
    });
    task->stop();
    REQUIRE(stopped.wait(5000));
    CHECK(!task->running());
}
