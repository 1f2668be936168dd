// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/demo_book.h"
#include "app/desktop/session.h"
#include "app/desktop/task.h"

#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

/// What the tests of the windows share: a demo book in a folder of its own, settings put back.
namespace evenfall::desktop::tests {

inline QString demo_book() {
    static const QTemporaryDir folder;
    static const QString path = [] {
        const QString file = folder.filePath(QStringLiteral("demo.evenfall"));
        write_demo_book(file, TaskContext());
        return file;
    }();
    return path;
}

/// A copy that a test may change.
inline QString copy_of_demo_book(const QTemporaryDir& folder) {
    const QString to = folder.filePath(QStringLiteral("demo.evenfall"));
    QFile::copy(demo_book(), to);
    return to;
}

/// Waits until no background work is going on. False after a minute.
inline bool wait_for_work(Session& session) {
    return QTest::qWaitFor([&session] { return !session.task() || !session.task()->running(); }, 60000);
}

}  // namespace evenfall::desktop::tests
