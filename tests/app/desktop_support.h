// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/demo/scenario.h"
#include "app/desktop/demo_book.h"
#include "app/desktop/session.h"
#include "app/desktop/task.h"

#include <QDir>
#include <QFile>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <catch2/catch.hpp>

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

inline QString write_file(const QTemporaryDir& folder, const QString& name, const std::string& text) {
    const QString path = folder.filePath(name);
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write(text.data(), static_cast<qint64>(text.size()));
    return path;
}

inline QByteArray read_file(const QString& path) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

/// One of the tables that the demo book is made of.
inline std::string demo_table(const std::string& name) {
    for (const auto& table : demo::scenario_files()) {
        if (table.name == name) return table.text;
    }
    FAIL("no table " << name);
    return {};
}

/// Waits until no background work is going on. False after a minute.
inline bool wait_for_work(Session& session) {
    return QTest::qWaitFor([&session] { return !session.task() || !session.task()->running(); }, 60000);
}

/// The field of that name, as a screen reader would find it.
template <class Widget>
Widget* field(const QWidget& in, const QString& name) {
    for (Widget* w : in.findChildren<Widget*>()) {
        if (w->accessibleName() == name) return w;
    }
    FAIL("no field " << name.toStdString());
    return nullptr;
}

/// Types a text into a field, as at the keyboard.
inline void type_into(QWidget* widget, const QString& text) {
    widget->setFocus();
    QTest::keyClick(widget, Qt::Key_A, Qt::ControlModifier);
    QTest::keyClicks(widget, text);
}

template <class Button>
Button* button(const QWidget& in, const QString& text) {
    for (Button* b : in.findChildren<Button*>()) {
        if (b->text() == text) return b;
    }
    FAIL("no button " << text.toStdString());
    return nullptr;
}

}  // namespace evenfall::desktop::tests
