// SPDX-License-Identifier: GPL-3.0-or-later
// The season and the schedule of the demo book under Spanish: what the pages show and how each figure
// came about holds no English. English is told by its small words, which Spanish does not have.
#include "app/desktop/figure_table.h"
#include "app/desktop/main_window.h"
#include "app/desktop/schedule/schedule_page.h"
#include "app/desktop/schedule/schedule_view.h"
#include "app/desktop/season/season_page.h"
#include "app/desktop/season/season_view.h"
#include "core/store/site_store.h"
#include "core/store/station_store.h"
#include "tests/app/desktop_support.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QTabWidget>
#include <algorithm>

using namespace evenfall;
using namespace evenfall::desktop;
using namespace evenfall::desktop::tests;

namespace {

/// Titles of publications stay as they were printed, and what the user typed stays as typed.
QStringList left_as_they_are(const store::Book& book) {
    QStringList all{QStringLiteral("UC Center for Landscape and Urban Horticulture"),
                    QStringLiteral("Management Performance and Applications of Micro Irrigation Systems"),
                    QStringLiteral("Landscape Irrigation Scheduling and Water Management")};
    for (const auto& site : store::sites(book)) {
        all << q(site.name) << q(site.organisation);
        for (const auto& area : store::areas(book, site.code)) all << q(area.name);
        for (const auto& station : store::stations(book, site.code)) all << q(station.name) << q(station.rate_source);
    }
    all.removeAll(QString());
    std::sort(all.begin(), all.end(), [](const QString& a, const QString& b) { return a.size() > b.size(); });
    return all;
}

/// The small words of English in a text; empty for Spanish.
QString english_in(QString text, const QStringList& left) {
    for (const QString& words : left) text.remove(words);
    const QString padded = QLatin1Char(' ') + text.simplified() + QLatin1Char(' ');
    QStringList found;
    for (const char* word : {"the", "of", "is", "are", "and", "was", "with", "from", "not", "by", "for"}) {
        if (padded.contains(QStringLiteral(" %1 ").arg(QLatin1String(word)))) found << QLatin1String(word);
    }
    return found.join(QLatin1Char(' '));
}

class PageReader {
  public:
    explicit PageReader(const store::Book& book) : left_(left_as_they_are(book)) {}
    void read(const QString& text) {
        if (text.isEmpty()) return;
        ++seen_;
        CAPTURE(text.toStdString());
        CHECK(english_in(text, left_).toStdString() == "");
    }
    void read(const Figure& figure) {
        read(figure.name);
        read(explanation_text(figure));
    }
    void read(const QStringList& heads, const std::vector<std::vector<FigureCell>>& rows) {
        for (const QString& head : heads) read(head);
        for (const auto& row : rows) {
            for (const FigureCell& cell : row) {
                read(cell.text);
                if (cell.figure) read(*cell.figure);
            }
        }
    }
    void read(const FigureRows& rows) { read(rows.heads, rows.rows); }
    /// What stands on the page itself, with what the mouse and a screen reader find.
    void read_page(const QWidget& page) {
        for (const QWidget* w : page.findChildren<QWidget*>()) {
            read(w->toolTip());
            read(w->accessibleName());
        }
        for (const auto* w : page.findChildren<QLabel*>()) read(w->text());
        for (const auto* w : page.findChildren<QAbstractButton*>()) read(w->text());
        for (const auto* w : page.findChildren<QComboBox*>()) {
            for (int i = 0; i < w->count(); ++i) read(w->itemText(i));
        }
        for (const auto* w : page.findChildren<QTabWidget*>()) {
            for (int i = 0; i < w->count(); ++i) read(w->tabText(i));
        }
        for (const auto* w : page.findChildren<QListWidget*>()) {
            for (int i = 0; i < w->count(); ++i) {
                read(w->item(i)->text());
                read(w->item(i)->toolTip());
            }
        }
    }
    int seen() const { return seen_; }

  private:
    QStringList left_;
    int seen_ = 0;
};

struct DemoInSpanish {
    DemoInSpanish() {
        QSettings().clear();
        install_language(QStringLiteral("es"));
        session.open_book(demo_book());
    }
    ~DemoInSpanish() { install_language(QStringLiteral("en")); }
    DemoInSpanish(const DemoInSpanish&) = delete;
    DemoInSpanish& operator=(const DemoInSpanish&) = delete;
    Session session;
};

}  // namespace

TEST_CASE("the small words of English are found", "[desktop]") {
    CHECK(english_in(QStringLiteral("mean of the days"), {}) == QStringLiteral("the of"));
    CHECK(english_in(QString::fromUtf8("media de los días, in/h"), {}).isEmpty());
    CHECK(english_in(QStringLiteral("Field of the North: 3"), {QStringLiteral("Field of the North")}).isEmpty());
}

TEST_CASE("seasons of the demo book are wholly Spanish under Spanish", "[desktop]") {
    DemoInSpanish place;
    PageReader reader(place.session.book());
    for (const auto& site : store::sites(place.session.book())) {
        CAPTURE(site.code);
        SeasonPage page(place.session);
        page.show_site(site.code);
        REQUIRE(QTest::qWaitFor([&] {
            return (!place.session.task() || !place.session.task()->running()) && page.answer().has_value();
        }, 60000));
        REQUIRE(page.answer()->inputs.site.code == site.code);
        reader.read_page(page);
        const auto& answer = *page.answer();
        CHECK(season_figures(answer, UnitsShown::us).front().name == QStringLiteral("Uso"));
        for (const UnitsShown units : {UnitsShown::us, UnitsShown::metric}) {
            for (const Figure& f : season_figures(answer, units)) reader.read(f);
            const auto months = months_table(answer, units);
            reader.read(months.heads, months.rows);
            const auto areas = areas_table(answer, units);
            reader.read(areas.heads, areas.rows);
            for (const auto& view : {use_chart(answer, units), cumulative_chart(answer, units), waste_chart(answer, units)}) {
                reader.read(view.sentence);
                for (const auto& column : view.table.columns) reader.read(q(column.title));
            }
        }
    }
    CHECK(reader.seen() > 1000);
}

TEST_CASE("schedules of the demo book are wholly Spanish under Spanish", "[desktop]") {
    DemoInSpanish place;
    PageReader reader(place.session.book());
    for (const auto& site : store::sites(place.session.book())) {
        CAPTURE(site.code);
        SchedulePage page(place.session);
        page.show_site(site.code);
        REQUIRE(QTest::qWaitFor([&] {
            return (!place.session.task() || !place.session.task()->running()) &&
                   (page.answer().has_value() || !page.state().isEmpty());
        }, 60000));
        reader.read_page(page);
        if (!page.answer()) continue;
        const auto& answer = *page.answer();
        for (const Figure& f : schedule_figures(answer)) reader.read(f);
        for (const QString& finding : schedule_findings(answer)) reader.read(finding);
        reader.read(minutes_table(answer, UnitsShown::us));
        for (std::size_t m = 0; m < answer.schedule.months.size(); ++m) {
            reader.read(month_table(answer, m, UnitsShown::us));
            reader.read(starts_table(answer, m));
        }
    }
    CHECK(reader.seen() > 500);
}
