// SPDX-License-Identifier: GPL-3.0-or-later
// Windows are driven off screen, with settings in a folder of their own.
#define CATCH_CONFIG_RUNNER
#include <QApplication>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <catch2/catch.hpp>
#include <clocale>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("TZ", "UTC");
    const QTemporaryDir home;
    qputenv("XDG_DATA_HOME", home.path().toUtf8());
    qputenv("XDG_CONFIG_HOME", home.path().toUtf8());
    int qt_argc = 1;
    QApplication application(qt_argc, argv);
    std::setlocale(LC_NUMERIC, "C");
    QApplication::setOrganizationName(QStringLiteral("Evenfall"));
    QApplication::setApplicationName(QStringLiteral("evenfall-test"));
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, home.path());
    return Catch::Session().run(argc, argv);
}
