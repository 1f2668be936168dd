// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/appearance.h"
#include "app/desktop/demo_book.h"
#include "app/desktop/main_window.h"
#include "app/desktop/page_pictures.h"
#include "app/desktop/session.h"
#include "app/desktop/task.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QTemporaryDir>
#include <clocale>
#include <cstdio>

int main(int argc, char** argv) {
    // Chart axes label times in the machine's zone; ours are days at the site, kept as UTC.
    qputenv("TZ", "UTC");
    QApplication application(argc, argv);
    // The application object has set the user's locale; files are written in the "C" one.
    std::setlocale(LC_NUMERIC, "C");
    QApplication::setOrganizationName(QStringLiteral("Evenfall"));
    QApplication::setApplicationName(QStringLiteral("evenfall"));
    QApplication::setApplicationDisplayName(QStringLiteral("Evenfall"));
    QApplication::setApplicationVersion(QStringLiteral(EVENFALL_VERSION));
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/pictures/evenfall.svg")));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.evenfall.Evenfall"));

    QCommandLineParser arguments;
    arguments.setApplicationDescription(QStringLiteral("Record book and calculator for the water on large turf"));
    arguments.addHelpOption();
    arguments.addVersionOption();
    arguments.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("book to open"), QStringLiteral("[BOOK]"));
    const QCommandLineOption page(QStringLiteral("page"), QStringLiteral("page to show first"), QStringLiteral("NAME"));
    const QCommandLineOption picture(QStringLiteral("picture"),
                                     QStringLiteral("write a picture of the window and end"), QStringLiteral("FILE"));
    const QCommandLineOption size(QStringLiteral("size"), QStringLiteral("of the window, such as 1280x800"),
                                  QStringLiteral("WxH"));
    const QCommandLineOption dark(QStringLiteral("dark"), QStringLiteral("dark colours, this time"));
    const QCommandLineOption language(QStringLiteral("language"), QStringLiteral("en or es, this time"),
                                      QStringLiteral("CODE"));
    const QCommandLineOption test(QStringLiteral("test"), QStringLiteral("catch test to show on the field sheet"),
                                  QStringLiteral("CODE"));
    const QCommandLineOption pictures(
        QStringLiteral("pictures"),
        QStringLiteral("write pictures of all pages (or of --page) to a folder, with a demo book of their own, and end"),
        QStringLiteral("FOLDER"));
    arguments.addOptions({page, picture, pictures, size, dark, language, test});
    arguments.process(application);

    using namespace evenfall::desktop;
    const QTemporaryDir demo;  // goes after the session that may have a book in it
    Session session;
    install_language(arguments.isSet(language) ? arguments.value(language) : session.language());
    apply_theme(application, arguments.isSet(dark) ? Theme::dark : session.theme());
    MainWindow window(session);
    const QStringList wanted = arguments.value(size).split(QLatin1Char('x'));
    if (wanted.size() == 2) window.resize(wanted[0].toInt(), wanted[1].toInt());
    window.show_page(QStringLiteral("start"));
    QString book = arguments.positionalArguments().value(0);
    if (arguments.isSet(pictures) && book.isEmpty()) {
        book = demo.filePath(QStringLiteral("demo.evenfall"));
        write_demo_book(book, TaskContext());
    }
    if (!book.isEmpty() && !arguments.isSet(pictures)) window.open_book(book);
    if (arguments.isSet(page) && !arguments.isSet(pictures)) window.show_page(arguments.value(page));
    if (arguments.isSet(test)) window.show_test(arguments.value(test));
    window.show();
    if (!arguments.isSet(picture) && !arguments.isSet(pictures)) return QApplication::exec();
    try {
        if (arguments.isSet(pictures)) {
            write_page_pictures(window, session, book, arguments.value(pictures), arguments.values(page));
        } else {
            wait_until_quiet(session);
            write_picture(window, arguments.value(picture));
        }
    } catch (const std::exception& e) {
        std::fprintf(stderr, "evenfall-desktop: %s\n", e.what());
        return 1;
    }
    return 0;
}
