// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/page_pictures.h"

#include "app/desktop/import/import_page.h"
#include "app/desktop/main_window.h"
#include "app/desktop/plan/plan_page.h"
#include "app/desktop/plan/plan_scene.h"
#include "app/desktop/schedule/schedule_page.h"
#include "app/desktop/season/season_page.h"
#include "app/desktop/task.h"

#include <QAbstractScrollArea>
#include <QComboBox>
#include <QDir>
#include <QEventLoop>
#include <QFile>
#include <QPrintPreviewWidget>
#include <QScrollBar>
#include <QTemporaryDir>
#include <QTimer>
#include <stdexcept>

namespace evenfall::desktop {
namespace {

void settle(int ms) {
    QEventLoop loop;
    QTimer::singleShot(ms, &loop, &QEventLoop::quit);
    loop.exec();
}

/// A table as a logger of another make might write it, half pointed at and tried, with a row that
/// is refused. Invented.
void try_a_foreign_table(ImportPage& page, Session& session, const QTemporaryDir& folder) {
    const QString path = folder.filePath(QStringLiteral("logger export.csv"));
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly)) throw std::runtime_error(utf8(file.errorString()));
    file.write("Unit;Read on;Counter;Battery\n");
    for (int day = 1; day <= 28; ++day) {
        const QString counter = day == 4 ? QStringLiteral("88 3o1") : QString::number(88000 + 131 * day);
        file.write(QStringLiteral("AV-M2;%1/02/2026 06:00;%2;ok\n").arg(day, 2, 10, QLatin1Char('0')).arg(counter).toUtf8());
    }
    file.close();
    page.add_files({path});
    set_kind(*page.shown(), exchange::Kind::readings);
    page.point_at(0, QStringLiteral("meter"));
    page.point_at(1, QStringLiteral("time"));
    page.point_at(2, QStringLiteral("register"));
    page.dates()->setCurrentIndex(1);
    page.run(true);
    wait_until_quiet(session);
}

/// Another size of the window leaves the pages of a report somewhere in their middle.
void show_top(const QPrintPreviewWidget& paper) {
    if (auto* view = paper.findChild<QAbstractScrollArea*>()) view->verticalScrollBar()->setValue(0);
}

/// Shows the page with something on it.
void prepare(MainWindow& window, Session& session, const QString& key, const QTemporaryDir& folder) {
    window.show_page(key);
    if (key == QStringLiteral("field_sheet") || key == QStringLiteral("plan")) window.show_test(QStringLiteral("T-PLAY-25"));
    if (auto* season = qobject_cast<SeasonPage*>(window.page())) season->show_site("AV");
    if (auto* schedule = qobject_cast<SchedulePage*>(window.page())) {
        schedule->show_site("AV");
        schedule->set_rule({true, false, true, false, true, false, false}, QTime(22, 0), QTime(6, 0), 1);
    }
    if (auto* plan = qobject_cast<PlanPage*>(window.page())) plan->scene().choose(5);
    auto* import = qobject_cast<ImportPage*>(window.page());
    if (import && !import->shown()) try_a_foreign_table(*import, session, folder);
    window.page()->setFocus();
}

}  // namespace

void wait_until_quiet(Session& session) {
    settle(120);
    while (session.task() && session.task()->running()) settle(30);
    settle(200);
    while (session.task() && session.task()->running()) settle(30);
}

void write_picture(QWidget& window, const QString& file) {
    if (!window.grab().save(file)) throw std::runtime_error("could not write " + utf8(file));
}

int write_page_pictures(MainWindow& window, Session& session, const QString& book, const QString& folder,
                        const QStringList& pages) {
    if (!QDir().mkpath(folder)) throw std::runtime_error("could not make " + utf8(folder));
    const QTemporaryDir files;
    int written = 0;
    for (const QString& key : pages.isEmpty() ? window.page_keys() : pages) {
        if (key != QStringLiteral("start") && !session.has_book()) window.open_book(book);
        session.set_theme(Theme::light);
        prepare(window, session, key, files);
        // What is worked out for a page is kept while its tone and size change.
        for (const Theme tone : {Theme::light, Theme::dark}) {
            session.set_theme(tone);
            for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
                window.resize(size);
                wait_until_quiet(session);
                if (auto* paper = window.page()->findChild<QPrintPreviewWidget*>()) show_top(*paper);
                const QString name = QStringLiteral("%1-%2x%3-%4.png")
                                         .arg(key).arg(size.width()).arg(size.height())
                                         .arg(tone == Theme::dark ? QStringLiteral("dark") : QStringLiteral("light"));
                write_picture(window, folder + QLatin1Char('/') + name);
                ++written;
            }
        }
    }
    return written;
}

}  // namespace evenfall::desktop
