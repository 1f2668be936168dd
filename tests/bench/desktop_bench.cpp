// SPDX-License-Identifier: GPL-3.0-or-later
// How long a person waits for the windows, off screen (no display driver is measured):
//   make BOOK     a book of 300 sites, with 600 meters read every week for 5 years and one meter
//                 of a million readings
//   paint BOOK    from the start of main() to the first paint of the list of its sites
//   keys          from a keystroke in the field sheet to painted figures and map, 24 and 96 cans
//   scroll BOOK   from a move of the scroll bar to the painted rows, a million readings
// Each prints medians and worst cases in milliseconds.
#include "app/desktop/appearance.h"
#include "app/desktop/field_sheet/can_grid.h"
#include "app/desktop/field_sheet/depth_map.h"
#include "app/desktop/field_sheet/field_sheet_page.h"
#include "app/desktop/figure.h"
#include "app/desktop/main_window.h"
#include "app/desktop/season/readings_model.h"
#include "app/desktop/sites/sites_page.h"
#include "core/exchange/import.h"
#include "core/store/meter_store.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QHeaderView>
#include <QScrollBar>
#include <QSettings>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <cstdio>
#include <fstream>
#include <functional>
#include <random>

using namespace evenfall;
using namespace evenfall::desktop;

namespace {

constexpr int sites = 300;
constexpr int long_record = 1'000'000;
QElapsedTimer since_start;

double ms(qint64 nanoseconds) { return static_cast<double>(nanoseconds) / 1e6; }

void print(const char* what, std::vector<qint64> times) {
    std::sort(times.begin(), times.end());
    std::printf("%-58s median %7.2f ms, 99 %% %7.2f ms, worst %7.2f ms (%zu)\n", what, ms(times[times.size() / 2]),
                ms(times[times.size() * 99 / 100]), ms(times.back()), times.size());
}

/// Notes when a widget was painted.
class PaintWatch : public QObject {
  public:
    explicit PaintWatch(QWidget* widget) { widget->installEventFilter(this); }
    bool painted = false;

  protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Paint) painted = true;
        return false;
    }
};

/// Lets events run until all of them have been painted; false after two seconds.
bool until_painted(std::initializer_list<PaintWatch*> watches) {
    QElapsedTimer limit;
    limit.start();
    const auto all = [&] { return std::all_of(watches.begin(), watches.end(), [](auto* w) { return w->painted; }); };
    while (!all() && limit.elapsed() < 2000) QCoreApplication::processEvents(QEventLoop::AllEvents, 1);
    return all();
}

std::string stamp(calendar::LocalTime at) { return calendar::format_local_time(at).substr(0, 16); }

int make_book(const char* book_path) {
    const QTemporaryDir folder;
    const auto path = [&folder](const char* name) { return folder.filePath(QLatin1String(name)).toStdString(); };
    std::ofstream site_table(path("sites.csv"));
    std::ofstream area_table(path("areas.csv"));
    std::ofstream meter_table(path("meters.csv"));
    std::ofstream reading_table(path("readings.csv"));
    site_table << "site,name,organisation,latitude,elevation_ft\n";
    area_table << "area,site,name,size_ac,plant,head_type,meter\n";
    meter_table << "meter,site,unit\n";
    reading_table << "meter,time,register\n";
    const auto begin = calendar::LocalTime{std::chrono::local_days{std::chrono::year{2019} / 1 / 1}};
    for (int s = 0; s < sites; ++s) {
        const std::string site = "S" + std::to_string(s);
        site_table << site << ",Site number " << s << ",Organisation " << s % 7 << ",38.5,100\n";
        for (int m = 0; m < 2; ++m) {
            const std::string meter = site + "-M" + std::to_string(m);
            meter_table << meter << ',' << site << ",gal\n";
            area_table << site << "-A" << m << ',' << site << ",Area," << 2 + m << ",cool-season,rotor," << meter << '\n';
            for (int w = 0; w < 5 * 52; ++w) {
                reading_table << meter << ',' << stamp(begin + std::chrono::hours{168 * w}) << ',' << 50000L * w + s << '\n';
            }
        }
    }
    meter_table << "LONG,S0,gal\n";
    for (int i = 0; i < long_record; ++i) {
        reading_table << "LONG," << stamp(begin + std::chrono::minutes{2 * i}) << ',' << i << '\n';
    }
    std::vector<std::filesystem::path> files;
    for (const char* name : {"sites.csv", "areas.csv", "meters.csv", "readings.csv"}) files.emplace_back(path(name));
    for (std::ofstream* out : {&site_table, &area_table, &meter_table, &reading_table}) out->close();
    auto book = store::Book::create(book_path);
    exchange::ImportOptions options;
    options.at = "2025-01-01T00:00:00Z";
    options.who = "bench";
    exchange::require_accepted(exchange::import_files(book, files, options));
    return 0;
}

int paint(const char* book) {
    Session session;
    apply_theme(*qApp, Theme::light);
    MainWindow window(session);
    window.open_book(QString::fromLocal8Bit(book));
    window.show();
    auto* page = qobject_cast<SitesPage*>(window.page());
    if (!page || page->table()->model()->rowCount() != sites) return 1;
    PaintWatch watch(page->table()->viewport());
    if (!until_painted({&watch})) return 1;
    std::printf("%.1f ms from the start of main() to the first paint of %d sites\n", ms(since_start.nsecsElapsed()), sites);
    return 0;
}

void keys(int rows, int columns) {
    Session session;
    FieldSheetPage page(session);
    SheetData shape = session.sheet().data();
    shape.rows = rows;
    shape.columns = columns;
    session.sheet().reshape(shape, QStringLiteral("rows"));
    page.resize(1094, 740);
    page.show();
    (void)QTest::qWaitForWindowExposed(&page);
    QApplication::setActiveWindow(&page);
    page.grid()->setFocus();
    PaintWatch map(page.map());
    std::vector<qint64> digits;
    std::vector<qint64> enters;
    for (int round = 0; round < 240; ++round) {
        for (const char c : std::to_string(30 + round % 30)) {
            QElapsedTimer timer;
            timer.start();
            QTest::keyClick(QApplication::focusWidget(), c);
            QCoreApplication::processEvents();
            digits.push_back(timer.nsecsElapsed());
        }
        map.painted = false;
        QElapsedTimer timer;
        timer.start();
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Enter);
        const bool last = session.sheet().cans_read() == session.sheet().data().cans.size();
        if (until_painted({&map})) enters.push_back(timer.nsecsElapsed());
        if (last) page.grid()->setCurrentIndex(page.grid()->model()->index(0, 0));
    }
    const std::string cans = std::to_string(rows * columns) + " cans";
    print((cans + ": a digit into the cell").c_str(), digits);
    print((cans + ": Enter to painted figures and map").c_str(), enters);
    session.sheet_was_saved();
}

int scroll(const char* path) {
    const auto book = store::Book::open(path, store::Access::read_only);
    QElapsedTimer timer;
    timer.start();
    ReadingsModel model(book, *store::find_meter(book, "LONG"), calendar::TimeZone("UTC0"));
    std::printf("%.1f ms to open a record of %d readings\n", ms(timer.nsecsElapsed()), model.rowCount());
    QTableView view;
    view.setModel(&model);
    view.verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    view.verticalHeader()->setDefaultSectionSize(24);
    view.resize(720, 560);
    view.show();
    (void)QTest::qWaitForWindowExposed(&view);
    PaintWatch watch(view.viewport());
    const auto measure = [&](const char* what, int moves, const std::function<int(int)>& place) {
        std::vector<qint64> times;
        const int before = model.fetches();
        for (int i = 0; i < moves; ++i) {
            watch.painted = false;
            QElapsedTimer one;
            one.start();
            view.verticalScrollBar()->setValue(place(i));
            if (until_painted({&watch})) times.push_back(one.nsecsElapsed());
        }
        print(what, times);
        std::printf("    %d pages of %d fetched\n", model.fetches() - before, static_cast<int>(ReadingsModel::page_size));
    };
    const int last = view.verticalScrollBar()->maximum();
    measure("scrolling on by a screen", 500, [](int i) { return 20 * (i + 1); });
    std::mt19937 random(1);
    measure("dragging the bar anywhere", 500, [&](int) { return static_cast<int>(random() % static_cast<unsigned>(last)); });
    return 0;
}

}  // namespace

int main(int argc, char** argv) {
    since_start.start();
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("TZ", "UTC");
    const QTemporaryDir home;
    qputenv("XDG_DATA_HOME", home.path().toUtf8());
    qputenv("XDG_CONFIG_HOME", home.path().toUtf8());
    QApplication application(argc, argv);
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, home.path());
    const QStringList arguments = QApplication::arguments();
    const QString what = arguments.value(1);
    if (what == QStringLiteral("make") && argc == 3) return make_book(argv[2]);
    if (what == QStringLiteral("paint") && argc == 3) return paint(argv[2]);
    if (what == QStringLiteral("scroll") && argc == 3) return scroll(argv[2]);
    if (what == QStringLiteral("keys") && argc == 2) {
        apply_theme(application, Theme::light);
        keys(4, 6);
        keys(8, 12);
        return 0;
    }
    std::fprintf(stderr, "usage: desktop_bench make BOOK | paint BOOK | keys | scroll BOOK\n");
    return 2;
}
