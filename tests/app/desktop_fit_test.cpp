// SPDX-License-Identifier: GPL-3.0-or-later
// Every page fits the smallest screen that the program is made for, in both languages.
#include "app/desktop/main_window.h"
#include "tests/app/desktop_support.h"

#include <catch2/catch.hpp>

using namespace evenfall;
using namespace evenfall::desktop;

// CONSTRUCTED: 1280 x 800 is the size in which the guide shows each page.
TEST_CASE("no page asks for more room than 1280 by 800", "[desktop][constructed]") {
    QSettings().clear();
    for (const char* language : {"en", "es"}) {
        install_language(QLatin1String(language));
        Session session;
        MainWindow window(session);
        session.open_book(desktop::tests::demo_book());
        for (const QString& key : window.page_keys()) {
            window.show_page(key);
            REQUIRE(desktop::tests::wait_for_work(session));
            CAPTURE(language, key.toStdString());
            CHECK(window.minimumSizeHint().width() <= 1280);
            CHECK(window.minimumSizeHint().height() <= 800);
        }
    }
    install_language(QStringLiteral("en"));
}
